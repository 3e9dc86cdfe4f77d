/** What a coach says: hints, each plainer than the one before, help that comes unasked, and words before an unsafe act. */
export const hints = {
  'cause.sound': 'Nothing wrong now',
  'cause.something-else': 'Something else',
  'hint.symptom': 'Start from what was reported: “{said}” Which parts could make that happen?',
  'hint.cue': '{symptom} Those who have met it notice first: {cue}',
  'hint.account': 'Whoever made this call would do next: {check}',
  'hint.area': 'What is still open lies best apart at: {part}.',
  'hint.kind.look': 'A look or a listen at this part tells most now: {part}.',
  'hint.kind.measure': 'A reading with an instrument tells most now, at: {part}.',
  'hint.kind.operate': 'Working something by hand and watching tells most now, at: {part}.',
  'hint.check': '“{check}”: it tells “{one}” from “{other}”.',
  'hint.enough': 'No further check is worth its time: enough is known.',
  'hint.name-it': 'Say what it was, with the note that shows it, then mend it.',
  'hint.cause': 'All that was seen points to: {cause}.',
  'hint.works-changed': 'The trainer has changed the works since the report: no hint can be reckoned from it any more.',
  'hint.again':
    '“{check}” was just done and nothing has changed since. What else could it be, and what would show that?',
  'before.danger-not-asked':
    'Danger has not been asked about yet. Sewage out, a burning smell, water in the panel, lightning or a shock would mean that nobody goes near it.',
  'before.householder-opens-panel':
    'Behind a screwed cover parts stay live. A householder works handles and buttons and opens nothing.',
  'before.householder-opens-tank':
    'Gas and deep water lie under a lid. A householder never lifts one, whatever is to be seen there.',
  'before.site-not-made-safe':
    'The site is not made safe yet: sewage, wet ground near live parts, loose lids, gas, people and pets come first.',
  'before.not-locked-out':
    'The {circuit} circuit is not locked out. Off, lock, tag and test dead before a hand goes in.',
  'before.lid-left-open': 'A lid is still off. Every opening is closed and fastened before anyone leaves.',
};
