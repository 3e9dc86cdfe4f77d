/** Answers the household's screen, in a worker: opens a sound unit, lives through what happens, reckons a month. */
import { drained } from '../../calls/drained.ts';
import { followDrop } from '../../home/drop.ts';
import { chlorineFor, monthOfWater } from '../../home/month.ts';
import { SCENARIOS } from '../../home/scenarios.ts';
import { type WhatIf, whatIf } from '../../home/what-if.ts';
import { yearOf } from '../../home/year.ts';
import { householdSource, steadyWeather } from '../../plant/index.ts';
import type { Scene } from '../../scene/types.ts';
import { xray } from '../../scene/xray.ts';
import { type CalendarDay, calendarDay } from '../../unit/calendar.ts';
import { dayNumber, Unit } from '../../unit/index.ts';
import { fetched } from '../fetched.ts';
import { fetchProperty, HOUSEHOLDS, UNITS } from '../shipped-files.ts';
import { stormAt } from '../surroundings.ts';
import type { Came, Home, HomeReply, HomeRequest, Named } from './protocol.ts';

/** One home is looked at: its draws are the same each time (convention). */
const SEED = 1;
/** Noon of the third day, in early summer (convention). */
const NOON_s = 2.5 * 86_400;
const SUMMER = dayNumber({ year: 2026, month: 6, day: 15 });
/** Share of the sky under cloud on a day without rain (convention). */
const FAIR = 0.2;
/** Most points of a curve. */
const MOST = 360;

export async function answerHome(request: HomeRequest, progress: (share: number) => void): Promise<HomeReply> {
  const { spec, household } = await propertyOf(request.home);
  switch (request.kind) {
    case 'open': {
      const unit = new Unit({
        spec,
        source: householdSource(household, SEED),
        faults: [],
        seed: SEED,
        weather: steadyWeather(20),
      });
      unit.cutAt(NOON_s);
      const scene = xray(unit, NOON_s, { day: calendarDay(SUMMER), secondOfDay: 43_200, cloud: 0.1, rain: 0 });
      const [units, households] = await Promise.all([namesOf(UNITS), namesOf(HOUSEHOLDS)]);
      return { kind: 'open', scene, units, households };
    }
    case 'what-if': {
      const { scenario, season, span_d } = request;
      const came = drained(whatIf({ scenario, spec, household, season, span_d, seed: SEED }), progress);
      return { kind: 'what-if', came: shownOf(came, spec.panel.ultraviolet) };
    }
    case 'drop':
      return {
        kind: 'drop',
        drop: drained(followDrop({ spec, household, season: request.season, seed: SEED }), progress),
      };
    case 'year': {
      const climate = await fetched(import('../../../scenarios/weather/ridge.json'));
      const asked = { neglect: request.neglect, spec, household, climate, seed: SEED };
      return { kind: 'year', year: drained(yearOf(asked, atNoon), progress) };
    }
    case 'month': {
      const water_m3 = drained(monthOfWater(spec, household, SEED), progress);
      return { kind: 'month', water_m3, chlorine: chlorineFor(spec.plant.disinfection, water_m3) };
    }
  }
}

/** The works cut open at noon, under the sky of that day. */
function atNoon(unit: Unit, t: number, day: CalendarDay): Scene {
  return xray(unit, t, { day, secondOfDay: 43_200, cloud: FAIR, rain: 0, storm: stormAt(unit.weather, t) });
}

async function propertyOf({ unit, household }: Home) {
  const property = await fetchProperty(unit, household);
  if (property === undefined) throw new Error(`no unit ${unit} or household ${household}`);
  return property;
}

/** Where a lamp disinfects there is no chlorine to draw: what the water still carries stands in. */
function shownOf({ touched, twin, spells: _, ...came }: WhatIf, lamp: boolean): Came {
  const nth = Math.ceil(touched.at_s.length / MOST);
  const points = (at_s: readonly number[], values: readonly number[]) =>
    at_s.flatMap((at, i): [number, number][] => (i % nth === 0 ? [[at, values[i] ?? 0]] : []));
  return {
    ...came,
    curves: SCENARIOS[came.scenario].curves
      .map((id) => (lamp && id === 'chlorine' ? 'food' : id))
      .map((id) => ({
        id,
        touched: points(touched.at_s, touched.values[id]),
        twin: points(twin.at_s, twin.values[id]),
      })),
  };
}

/** The files carry the name by which people choose; the smaller household comes first. */
async function namesOf(files: Readonly<Record<string, () => Promise<object>>>): Promise<readonly Named[]> {
  const all = await Promise.all(Object.values(files).map((open) => fetched(open())));
  return (all as Named[])
    .map(({ id, name }) => ({ id, name }))
    .sort((a, b) => (a.id < b.id ? -1 : Number(a.id > b.id)));
}
