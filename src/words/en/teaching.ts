/** Why what a trainer asks for cannot be done. */
export const teaching = {
  'why.not-in-round': 'A trainer has no hand in the round: its lots live on.',
  'why.no-such-moment': 'There is no such moment to go back to.',
  'why.no-such-fault': 'This unit cannot have such a fault.',
  'why.no-such-ramp': 'It grows or fades over {most} hours at most.',
  'why.fault-there': 'That fault is there already.',
  'why.fault-not-there': 'That fault is not there.',
};
