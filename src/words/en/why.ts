/** Why something cannot be done now, and what would make it possible. */
export const why = {
  'why.on-site': 'This goes by phone, and the call is on site now.',
  'why.on-the-phone': 'Only on site: send a visit first.',
  'why.lid': 'Open the {lid} first.',
  'why.lid-open': 'It is open already.',
  'why.lid-closed': 'It is closed already.',
  'why.locked': 'This circuit is locked out. Take the lock off first.',
  'why.not-locked': 'There is no lock on this circuit.',
  'why.compressor-silent': 'Only while the compressor runs.',
  'why.pump-runs': 'Only while the pump stands still.',
  'why.not-spraying': 'Only while the pump doses the field.',
  'why.call-over': 'The call is over.',
  'why.withheld': 'This cannot be done on this call.',
  'why.no-such-action': 'There is no action “{id}”.',
  'why.no-such-answer': 'The form has no such answer under “{field}”.',
  'why.choose-one': 'Choose one: {field}.',
  'why.too-many': 'At most {most} of them.',
};
