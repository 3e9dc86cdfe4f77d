/** The weather of the picture in words. */
export const sky = {
  'sky.dry': 'Sky: {cloud} under cloud, no rain; {wind}.',
  'sky.rain': 'Sky: {cloud} under cloud, {rain} of rain an hour; {wind}.',
  'sky.calm': 'no wind',
  'sky.light': 'a light breeze from the {from}, {speed}',
  'sky.breeze': 'a breeze from the {from}, {speed}',
  'sky.strong': 'a strong wind from the {from}, {speed}',
  'sky.east': 'east',
  'sky.west': 'west',
} as const;
