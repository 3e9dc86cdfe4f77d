/** What the readings of a call make together. */
export const together = {
  'together.sound': 'A sound works would have shown all of it: nothing that was read speaks for a fault.',
  'together.only': 'Only “{one}” shows all of it.',
  'together.two': '“{one}” and “{other}” each show all of it: nothing that was read tells them apart.',
  'together.many': '{n} faults still show all of it; more would have to be read before one can be named.',
  'together.pair': 'No single fault shows all of it; “{one}” together with “{other}” does.',
  'together.pairs':
    'No single fault shows all of it; “{one}” together with “{other}” does, and so {n:does|do} {n} other {n:pair|pairs}.',
  'together.none': 'No fault of the list shows all of it, and no two together do.',
};
