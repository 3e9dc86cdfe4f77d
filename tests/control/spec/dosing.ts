/** Dosing as a specification: by night, on demand, or timed all day, with the override and the clock. */
import { type DosingWords, dosingWords } from './dosing-words.ts';
import { floatRegions, type Ladder } from './floats.ts';
import { handleOff, handleOn, type Says } from './vocabulary.ts';

export type DosingKind = 'night' | 'demand' | 'timed';
export type ClockKind = 'digital' | 'mechanical';

/** Power, breaker, selector and pump: the same for every way of dosing. */
function common(words: DosingWords) {
  const region = words.createStateConfig;
  return {
    'power supply': region({
      initial: 'there',
      states: {
        there: { on: { 'power fails': 'out', 'power sags': 'low' } },
        low: { on: { 'power fails': 'out', 'power returns': 'there' } },
        out: { on: { 'power returns': 'there' } },
      },
    }),
    'pump breaker': region({
      initial: 'on',
      states: {
        on: {
          meta: handleOn('pumpHandle'),
          on: {
            'pump breaker pushed off': 'off',
            'pump breaker trips': { guard: 'power is there', target: 'tripped' },
          },
          always: { guard: 'shorted, and power is there', target: 'tripped' },
        },
        // Pushed onto a short it does not even hold for an instant: the clock does not notice.
        off: {
          meta: handleOff('pumpHandle'),
          on: { 'pump breaker pushed on': [{ guard: 'shorted, and power is there', target: 'tripped' }, 'on'] },
        },
        tripped: { meta: handleOff('pumpHandle'), on: { 'pump breaker pushed off': 'off' } },
      },
    }),
    'pump wire': region({
      initial: 'sound',
      states: {
        sound: { on: { 'pump circuit shorted': 'shorted' } },
        shorted: { on: { 'pump circuit cleared': 'sound' } },
      },
    }),
    selector: region({
      initial: 'Auto',
      states: {
        Auto: { on: { 'selector to Hand': 'Hand', 'selector to Off': 'Off' } },
        Hand: { on: { 'selector to Auto': 'Auto', 'selector to Off': 'Off' } },
        Off: { on: { 'selector to Auto': 'Auto', 'selector to Hand': 'Hand' } },
      },
    }),
    pump: region({
      initial: 'stands',
      states: {
        stands: {
          meta: { says: 'the pump stands where nothing asks for it', sees: { pump: false } } satisfies Says,
          always: { guard: 'the pump is asked for', target: 'runs' },
        },
        runs: {
          meta: { says: 'asked for by hand, dose or override, the pump runs', sees: { pump: true } } satisfies Says,
          always: { guard: 'the pump is not asked for', target: 'stands' },
        },
      },
    }),
  };
}

/** A clock that lives on its reserve while it is not fed, and stands once that is used up. */
function clock(words: DosingWords, kind: ClockKind) {
  const goes = { says: 'the clock goes', sees: { clock: true } } satisfies Says;
  const stands = { says: 'a clock without its time asks for no dose', sees: { clock: false } } satisfies Says;
  return words.createStateConfig({
    initial: 'goes',
    states: {
      goes: {
        meta: goes,
        always: { guard: 'the tap is dead', target: 'on its reserve' },
        on: { 'timer loses its time': 'stands', 'timer dies': 'dead' },
      },
      'on its reserve': {
        meta: {
          says: 'not fed, the clock lives on its reserve',
          sees: { clock: true },
          runs: ['timerReserve'],
        } satisfies Says,
        always: { guard: 'the tap is live', target: 'goes' },
        on: { 'the reserve ends': 'stands', 'timer loses its time': 'stands', 'timer dies': 'dead' },
      },
      stands: {
        meta: stands,
        on: { 'timer dies': 'dead', 'timer set': { guard: 'the tap is live', target: 'goes' } },
        ...(kind === 'mechanical' ? { always: { guard: 'the tap is live', target: 'goes' } as const } : {}),
      },
      dead: { meta: stands, on: { 'timer renewed': 'goes' } },
    },
  });
}

/** The float on the stop terminals hangs for an instant when it is freed or let go, and that ends the dose. */
function stopOpens<T extends string>(target: T) {
  return {
    'stop float freed': { guard: 'freeing the stop float opens the stop contact', target },
    'dose float freed': { guard: 'freeing the dose float opens the stop contact', target },
    'redundant-off float freed': { guard: 'freeing the redundant-off float opens the stop contact', target },
    'stop float let go': { guard: 'letting go of the stop float opens the stop contact', target },
    'dose float let go': { guard: 'letting go of the dose float opens the stop contact', target },
    'redundant-off float let go': { guard: 'letting go of the redundant-off float opens the stop contact', target },
  } as const;
}

function nightDose(words: DosingWords) {
  return words.createStateConfig({
    initial: 'none',
    states: {
      none: {
        on: {
          'a start hour comes': { guard: 'the clock goes and the dose float is made', target: 'dosing' },
        },
      },
      dosing: {
        meta: { says: 'a dose lasts its minutes', runs: ['dose'] } satisfies Says,
        on: {
          'the dose minutes end': 'none',
          ...stopOpens('none'),
        },
        always: [
          { guard: 'the stop float breaks', target: 'none' },
          { guard: 'the timer does not go', target: 'none' },
          { guard: 'the tap is dead', target: 'none' },
        ],
      },
    },
  });
}

/**
 * Rest in two halves: with the override float made the second one is left out, and the dose float is not asked. A dose
 * due waits for one of the two.
 */
function timedDose(words: DosingWords) {
  const off = { guard: 'the timer does not go', target: 'not fed' } as const;
  const dead = { guard: 'the tap is dead', target: 'not fed' } as const;
  const byHand = { 'a start by hand': { guard: 'there is water for a dose', target: 'dosing' } } as const;
  return words.createStateConfig({
    initial: 'first half of the rest',
    states: {
      'not fed': { always: { guard: 'the timer goes', target: 'first half of the rest' } },
      'first half of the rest': {
        meta: { says: 'after a dose the timer rests', runs: ['restFirst'] } satisfies Says,
        on: { 'half the rest passes': 'second half of the rest', ...byHand },
        always: [off, dead],
      },
      'second half of the rest': {
        meta: { says: 'the rest goes on unless the override float is made', runs: ['restSecond'] } satisfies Says,
        on: { 'the rest ends': 'due', ...byHand },
        always: [off, dead, { guard: 'the override float is made over a sound stop', target: 'due' }],
      },
      due: {
        always: [off, dead, { guard: 'there is water for a dose', target: 'dosing' }],
      },
      dosing: {
        meta: { says: 'a dose lasts its minutes', runs: ['dose'] } satisfies Says,
        on: {
          'the dose minutes end': 'first half of the rest',
          ...stopOpens('first half of the rest'),
        },
        always: [off, dead, { guard: 'the stop float breaks', target: 'first half of the rest' }],
      },
    },
  });
}

/** A timer without a clock: it counts, or is dead. */
function interval(words: DosingWords) {
  return words.createStateConfig({
    initial: 'goes',
    states: { goes: { on: { 'timer dies': 'dead' } }, dead: { on: { 'timer renewed': 'goes' } } },
  });
}

export function dosingMachine(id: string, kind: DosingKind, ladder: Ladder, ailing: Ladder, clockKind: ClockKind) {
  const words = dosingWords(ladder);
  const states = { ...common(words), ...floatRegions(ladder, ailing) };
  const base = { id, type: 'parallel', context: {} } as const;
  if (kind === 'demand') return words.createMachine({ ...base, states });
  if (kind === 'night') {
    return words.createMachine({
      ...base,
      states: { ...states, timer: clock(words, clockKind), dose: nightDose(words) },
    });
  }
  return words.createMachine({ ...base, states: { ...states, timer: interval(words), dose: timedDose(words) } });
}
