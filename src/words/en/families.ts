/** The families that faults are sorted into. */
export const families = {
  'family.air': 'Air',
  'family.power': 'Power and panel',
  'family.floats': 'Floats',
  'family.pump': 'Pump',
  'family.field': 'Field',
  'family.solids': 'Solids',
  'family.disinfection': 'Disinfection',
  'family.house': 'House drains',
  'family.ground': 'Ground and tanks',
  'family.use': 'Use of the house',
  'family.kit': 'Instruments',
};
