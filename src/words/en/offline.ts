/** What the page says of the copy of itself that the browser keeps: fetched with what keeps it, in both languages. */
export const offline = {
  'offline.coming': 'Being made ready to work without a network: {done} of {of} MB.',
  'offline.kept': 'Ready to work without a network. This browser keeps {n} MB for it.',
  'offline.not.network':
    'Not ready to work without a network yet: fetching broke off. All else works; it is tried again when the network is back.',
  'offline.not.full':
    'There is no room to keep the page for work without a network. All else works. Free some space and try again.',
  'offline.not.changed':
    'The host does not serve the page as it was built, or is just being renewed. So it is not kept for work without a network; all else works.',
  'offline.not.denied':
    'This browser does not keep the page here (a private window, or an address without https?), so it needs a network. All else works.',
  'offline.newer.full': 'There is a newer version, but no room to fetch it. This one works as before.',
  'offline.again': 'Try again',
  'offline.update': 'A new version is ready',
  'offline.update.waits': 'It waits until you take it up, or come back later. Calls and records stay.',
  'offline.update.ends':
    'You left {what} half way, and the new version cannot go on with it. Finish it first, or begin it anew afterwards.',
  'offline.update.unsure':
    'What you left half way could not be read just now, and the new version may not be able to go on with it.',
  'offline.update.take': 'Take it up now',
  'offline.call': '“{title}”',
  'offline.round': 'the round',
  'offline.and': '{a} and {b}',
};
