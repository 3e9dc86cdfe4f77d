/** What shows that a mend holds. */
export const proofs = {
  'proof.pressure': 'pressure at the tee within the label',
  'proof.watched': 'five minutes at the panel with the lamp dark',
  'proof.air-alarm': 'the low-air alarm, made on purpose',
  'proof.water-alarm': 'the lamp lit by the high-water float',
  'proof.floats': 'each float lifted in turn',
  'proof.dosing': 'a dose started by the timer',
  'proof.spray': 'the field dosed at full pressure',
  'proof.clock': 'the panel clock right',
  'proof.lamp': 'lamp and buzzer at Test',
  'proof.stops': 'the pump still with the selector in Off',
  'proof.disinfects': 'chlorine fed, or the UV lamp lit, once mended',
};
