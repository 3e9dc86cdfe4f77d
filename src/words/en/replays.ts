/** What becomes of kept calls and of records that are done again. */
export const replays = {
  'trouble.progress-broken': 'The kept call cannot be read. Start it over.',
  'trouble.progress-older':
    'This was kept by an older Underlawn (engine {made}, here {here}) and would not come out the same. It stays kept; the call can be started over.',
  'trouble.progress-newer':
    'This was kept by a newer Underlawn (engine {made}, here {here}). It stays as it is: reload the page to get the newer one.',
  'trouble.progress-other-version':
    'The call has changed since this was kept, and it would not come out the same. It stays kept; the call can be started over.',
  'trouble.progress-differs': 'The kept call does not come out as it was. Start it over. {what}',
  'replay.engine': 'The record was made with engine {made}; this is engine {here}.',
  'replay.call-changed': 'The call {call} is not the one this record was made on.',
  'replay.seed': 'The record names seed {claimed}; its call has {came}.',
  'replay.instant': 'Action {n} ({id}) cannot be done at its instant.',
  'replay.refused': 'Action {n} ({id}) cannot be done: {why}',
  'replay.state': 'After action {n} ({id}) the unit is in another state than recorded.',
  'replay.claim': 'The record claims {claim} = {claimed}; the replay gives {came}.',
  'replay.end': 'The record ends at another instant than the replay.',
  'trouble.no-call': 'There is no call open. Choose one from the list.',
  'trouble.call-unknown': 'This call is not on the list any more.',
};
