/** What is kept in the browser: what may be wrong with it, a second tab, and copies of all of it. */
export const kept = {
  'trouble.store.memory':
    'This browser keeps nothing for this page (private mode?). Calls work, but a reload loses them.',
  'trouble.store.unread':
    'Something kept from an earlier visit could not be read. It was set aside; the rest is as you left it.',
  'trouble.store.full': 'The browser refused to keep the latest state. Free some space, or a reload may lose it.',
  'trouble.store.newer':
    'This browser holds data of a newer Underlawn. It is not touched: reload the page to get the newer one. Calls work meanwhile, but nothing of them is kept.',
  'trouble.store.shut':
    'The browser’s store did not open; another tab of Underlawn may be in the way. What is kept is not touched: close the other tabs and reload. Until then nothing is kept.',
  'trouble.store.left':
    'Another tab opened a newer Underlawn or cleared what was kept. Reload this tab: until then nothing more is kept from it.',
  'trouble.store.missed':
    'Something that is kept could not be fetched just now. It is left as it is: reload the page to try again.',
  'trouble.store.failed':
    'The latest state could not be kept. The next step tries again; a reload before that may lose it.',
  'trouble.round-newer':
    'The kept round is from a newer Underlawn. It stays as it is: reload the page to get the newer one.',
  'trouble.brought-broken': 'The kept file of this call cannot be read. Open its link or its file again.',
  'trouble.noRecord': 'This record is not in this browser.',
  'elsewhere.open': 'Open in another tab',
  'elsewhere.open.text':
    'One tab at a time can write to it. Go on in that tab, or take it over: all that was done there comes along, and that tab lets go of it.',
  'elsewhere.open.take': 'Take it over',
  'elsewhere.taken': 'Taken over in another tab',
  'elsewhere.taken.text': 'All that was seen done here is kept, and goes on there.',
  'elsewhere.taken.take': 'Take it back',
  'elsewhere.back': 'Back to the calls',
  'copy.and': '{a}, {b}',
  'copy.made': 'The file {file} was handed to the browser’s downloads. It holds {all}.',
  'copy.empty': 'There is nothing to copy yet.',
  'copy.came': 'Brought back: {all}.',
  'copy.nothing-new': 'All that is in {file} is here already.',
  'copy.count.settings': 'the settings',
  'copy.count.progress': '{n} {n:call|calls} left half way',
  'copy.count.finished': '{n} finished {n:call|calls}',
  'copy.count.lines': '{n} {n:line|lines} for next time',
  'copy.count.drills': '{n} {n:drill|drills}',
  'copy.count.round': 'the round',
  'copy.count.brought': '{n} {n:call|calls} from elsewhere',
  'copy.count.drafts': '{n} {n:call|calls} being made',
  'copy.count.moments': '{n} {n:moment|moments} to begin from',
  'copy.count.cards': 'the practice of {n} {n:skill|skills}',
  'copy.count.exam': 'the mock exam',
  'copy.count.unread': '{n} {n:entry|entries} set aside',
  'copy.what.progress': 'Call “{title}”',
  'copy.what.brought': 'Call from elsewhere “{title}”',
  'copy.what.line': 'Line for next time',
  'copy.what.round': 'Round',
  'copy.what.cards': 'Practice of a skill',
  'copy.what.exam': 'Mock exam',
  'copy.later.copy': '{what}: the one in the copy is the later and was taken; the one from here was set aside.',
  'copy.later.here': '{what}: the one here is the later and stays; the earlier one is still in the file.',
  'copy.later.more': 'So it was with {n} more.',
  'copy.settings-stay': 'Language, units, sound and motion stay as they are set here.',
  'copy.wrong.unread': '{file} could not be read. Choose it again.',
  'copy.wrong.kind':
    '{file} is not a copy of what Underlawn keeps. Choose a file that “Keep a copy” wrote. Nothing was changed.',
  'copy.wrong.newer':
    '{file} was written by a newer Underlawn. Reload the page to get the newer one, then bring the copy back. Nothing was changed.',
  'copy.wrong.value':
    '{file}: {path} should be {wants}. Mend that place or take its entry out, then bring the copy back. Nothing was changed.',
  'copy.wrong.full':
    'The browser has no room for what {file} holds. Free some space and try again. Nothing was changed.',
  'copy.wrong.failed': '{file} could not be taken in. Reload the page and try again. Nothing was changed.',
  'copy.wants.text': 'a text',
  'copy.wants.number': 'a number',
  'copy.wants.flag': 'true or false',
  'copy.wants.fields': 'an object',
  'copy.wants.list': 'a list',
  'copy.wants.other': 'a value that Underlawn writes there',
};
