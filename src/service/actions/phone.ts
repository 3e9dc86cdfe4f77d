/** By phone: danger first, then questions, then what a householder may do with dry hands at the closed panel. */
import type { ActionDef, Doing } from '../action.ts';
import { quantity, say } from '../message.ts';
import { sewageLies } from '../noticed.ts';
import { rattles } from '../perceive.ts';
import { LOADS, TRUCK_HOLDS } from '../person.ts';
import { drainsSlow, drainWords, smellsTold } from './drains.ts';
import { actionsAt, lampWords, leverFacts, leverWords, off, optionsOf, resetPanel } from './shared.ts';

const at = actionsAt('phone');

function ask(id: string, minutes: number, perform: (doing: Doing) => void): ActionDef {
  return at(id, 'look', minutes, perform, { handsOff: true });
}

function guide(id: string, minutes: number, perform: (doing: Doing) => void, more: Partial<ActionDef> = {}): ActionDef {
  return at(id, 'operate', minutes, perform, { handsOff: true, touches: true, ...more });
}

function tell(id: string, minutes: number, more: Partial<ActionDef> = {}): ActionDef {
  return at(id, 'say', minutes, (d) => d.note(say(`note.${id}`), say('reading.told')), { handsOff: true, ...more });
}

/** Somebody goes to the panel with the phone: from now on the lamp is in sight. */
function toThePanel(d: Doing): void {
  d.person.seesLamp = true;
}

export const PHONE_ACTIONS: readonly ActionDef[] = [
  ask('ask-danger', 1, (d) => {
    const now = d.read();
    const sewage = now.flows.underLid > 0 || sewageLies(now);
    d.learn({ backingUp: now.flows.indoors > 0, relief_Ls: now.flows.relieved * 1000 });
    d.note(
      say('note.danger'),
      say(sewage ? 'reading.sewage-out' : 'reading.no-danger'),
      sewage ? off('remark.danger') : undefined,
    );
  }),
  ask('ask-history', 2, (d) => d.note(say('note.history'), say('reading.said', { text: d.answers.history }))),
  ask('ask-use', 1, (d) => d.note(say('note.use'), say('reading.said', { text: d.answers.use }))),
  ask('ask-hum', 2, (d) => {
    const now = d.read();
    const runs = now.control.outputs.compressorRuns;
    d.learn({ compressorRuns: runs, ...(runs ? { rattle: rattles(d.unit, now) } : {}) });
    d.note(say('note.hum'), say(!runs ? 'reading.silent' : rattles(d.unit, now) ? 'reading.rattles' : 'reading.hums'));
  }),
  ask('ask-smell', 1, (d) => {
    for (const smell of smellsTold(d)) d.note(say('note.smell'), smell);
  }),
  ask('ask-drains', 1, (d) => {
    d.learn({ backingUp: drainsSlow(d) });
    d.note(say('note.drains'), drainWords(d));
  }),
  ask('ask-lamp', 1, (d) => {
    toThePanel(d);
    d.note(say('note.lamp'), lampWords(d));
  }),
  guide('guide-silence', 1, (d) => {
    toThePanel(d);
    d.unit.send('silence.pressed');
    d.note(say('note.silence'), lampWords(d));
  }),
  ask('ask-breakers', 2, (d) => {
    toThePanel(d);
    d.learn(leverFacts(d));
    d.note(say('note.breakers'), leverWords(d));
  }),
  guide(
    'guide-reset',
    4,
    (d) => {
      toThePanel(d);
      resetPanel(d);
      d.note(say('note.reset'), lampWords(d));
    },
    { inner_s: 60 },
  ),
  guide(
    'guide-watch',
    5,
    (d) => {
      toThePanel(d);
      d.note(say('note.watch', { minutes: quantity('duration_min', 5, 1) }), lampWords(d));
    },
    { touches: false },
  ),
  tell('advise-save-water', 1),
  tell('advise-keep-away', 1),
  tell('advise-spare-drains', 1),
  tell('advise-run-water', 1),
  tell('tell-open-panel', 3, { breach: 'householder-opens-panel' }),
  tell('tell-open-tank', 3, { breach: 'householder-opens-tank' }),
  tell('decide-close', 2, {
    form: [
      {
        id: 'follow-up',
        kind: 'many',
        options: optionsOf('follow', ['call-tomorrow', 'count-trip', 'visit-if-again', 'nothing']),
      },
    ],
    perform: (d) => d.note(say('note.decide-close'), say('reading.closed-by-phone')),
  }),
  tell('decide-visit', 2, {
    form: [
      { id: 'urgency', kind: 'one', options: optionsOf('urgency', ['now', 'before-dosing', 'next-visit']) },
      { id: 'load', kind: 'many', most: TRUCK_HOLDS, options: optionsOf('load', LOADS) },
    ],
    perform: (d) => d.note(say('note.decide-visit'), say(`urgency.${String(d.fill.urgency ?? '')}`)),
  }),
];
