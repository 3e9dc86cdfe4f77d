/** What changes and sounds during a call. */
export const happenings = {
  'change.arrived': 'arrived on site',
  'change.breach': 'stopped: a life-safety step was skipped',
  'sound.buzzer': 'Buzzer sounding',
  'sound.hum': 'Compressor humming',
  'sound.rattle': 'Compressor rattling',
  'sound.hiss': 'Air hissing',
  'sound.pump': 'Pump running',
  'sound.spray': 'Spray on the lawn',
  'sound.bubbles': 'Bubbles rising',
  'sound.click': 'Switch clicks',
  'sound.ring': 'Phone rings',
};
