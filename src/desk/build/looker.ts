/** Looks at a draft: what is wrong with it, the days it makes, and what can be chosen from. Runs in a worker. */
// Has the validator keep to the page's policy.
import '../resume.ts';
import { problemsOf, propertyOf } from '../../build/checked.ts';
import { type Draft, valueAt } from '../../build/draft.ts';
import { draftText, readDraft } from '../../build/file.ts';
import { PreviewDays } from '../../build/preview.ts';
import { canWithhold } from '../../calls/allowed.ts';
import type { Library } from '../../calls/check.ts';
import { placeWords } from '../../calls/places.ts';
import { callSchema } from '../../calls/schema.ts';
import { faultName, STATE_CAUSE } from '../../calls/session-actions.ts';
import { faultsOf, type PlacedFault } from '../../faults/index.ts';
import { xray } from '../../scene/xray.ts';
import { ACTION_BY_ID, ACTIONS, actionOn, type Message, SYMPTOM_IDS, say } from '../../service/index.ts';
import { linkOf } from '../../share/link.ts';
import { readShared } from '../../share/read.ts';
import { fileText } from '../../share/text.ts';
import { calendarDay, numberAt, type UnitSpec } from '../../unit/index.ts';
import { OFFERED_NUMBERS } from './numbers.ts';
import type { Looked, LookReply, LookRequest, Offered, OfferedFault } from './protocol.ts';

export class Looker {
  private readonly library: () => Promise<Library>;
  private days: PreviewDays | undefined;
  private draft: Draft = {};

  constructor(library: () => Promise<Library>) {
    this.library = library;
  }

  async answer(request: LookRequest): Promise<LookReply> {
    switch (request.kind) {
      case 'look':
        return { kind: 'look', looked: this.look(request.draft, await this.library()) };
      case 'open':
        return { kind: 'open', scene: this.open(request.at_s) };
      case 'text':
        return { kind: 'text', text: draftText(request.draft) };
      case 'read':
        return { kind: 'read', read: readDraft(request.text) };
      case 'set': {
        const set = { set: 1, title: request.title, calls: request.drafts };
        const read = readShared(JSON.stringify(set), await this.library());
        return { kind: 'set', set: read.ok ? { text: fileText(read.file) } : { problems: read.problems } };
      }
      case 'link': {
        const whole = callSchema.safeParse(request.draft);
        return { kind: 'link', link: whole.success ? await linkOf(whole.data) : undefined };
      }
    }
  }

  private look(draft: Draft, library: Library): Looked {
    const prepared = propertyOf(draft, library);
    this.draft = draft;
    this.days = prepared && new PreviewDays(prepared);
    return {
      problems: problemsOf(draft, library),
      preview: this.days?.preview,
      offered: offeredOn(draft, library),
      steps: stepNames(draft),
    };
  }

  private open(at_s: number) {
    const { days, draft } = this;
    if (!days) return undefined;
    const unit = days.unitAt(at_s);
    const wind = valueAt(draft, 'weather.wind_ms');
    const sky = {
      cloud: Number(valueAt(draft, 'weather.cloud')),
      rain: Number(valueAt(draft, 'weather.rain')),
      wind_ms: typeof wind === 'number' ? wind : undefined,
    };
    const day = calendarDay(days.preview.firstDay + Math.floor(at_s / 86_400));
    return xray(unit, Math.max(unit.t, Math.min(at_s, unit.horizon())), { day, secondOfDay: at_s % 86_400, ...sky });
  }
}

/** The first unit stands in where a draft names none. */
function offeredOn(draft: Draft, { units, households }: Library): Offered {
  const [first] = units.values();
  const spec = units.get(String(draft.unit)) ?? first;
  if (!spec) throw new Error('no unit ships');
  return {
    unit: spec.id,
    units: [...units].map(([id, unit]) => ({ id, name: nameOf(unit) })),
    households: [...households].map(([id, household]) => ({ id, name: nameOf(household) })),
    faults: faultsOf(spec).map(offeredFault),
    checks: ACTIONS.flatMap(({ id }) => {
      const def = actionOn(spec, id);
      return def && canWithhold(def) ? [{ id, label: def.label, part: placeWords(def.place, spec).name }] : [];
    }),
    symptoms: SYMPTOM_IDS,
    numbers: numbersOf(spec),
  };
}

function nameOf(file: object) {
  return (file as { readonly name: { readonly en: string; readonly es: string } }).name;
}

function numbersOf(spec: UnitSpec): Readonly<Record<string, number>> {
  return Object.fromEntries(
    OFFERED_NUMBERS.flatMap(({ path }) => {
      const value = numberAt(spec, path);
      return value === undefined ? [] : [[path, value]];
    }),
  );
}

function offeredFault({
  key,
  id,
  part,
  family,
  place,
  severity,
  ramp_h = 0,
  spells,
  ...by
}: PlacedFault): OfferedFault {
  return {
    key,
    fault: id,
    ...(part === undefined ? {} : { part }),
    family,
    place,
    name: faultName(key),
    severity,
    ramp_h,
    ...(spells ? { spells } : {}),
    shownBy: labelsOf(by.shownBy),
    mendedBy: labelsOf(by.mendedBy),
    hiddenBy: labelsOf(by.hiddenBy),
  };
}

function labelsOf(ids: readonly string[]): readonly Message[] {
  return ids.flatMap((id) => ACTION_BY_ID.get(id)?.label ?? []);
}

function stepNames({ solution }: Draft): readonly Message[] {
  if (!Array.isArray(solution)) return [];
  return solution.map((step) => {
    const id = String(valueAt(step, 'do'));
    if (id === STATE_CAUSE) return say(`act.${STATE_CAUSE}`);
    return ACTION_BY_ID.get(id)?.label ?? say('word.nothing');
  });
}
