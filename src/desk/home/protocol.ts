/** What the household's screen and its worker say to each other. */
import type { Drop } from '../../home/drop.ts';
import type { Chlorine } from '../../home/month.ts';
import type { QuantityId } from '../../home/quantities.ts';
import type { ScenarioId } from '../../home/scenarios.ts';
import type { SeasonId } from '../../home/seasons.ts';
import type { NeglectId, Year } from '../../home/year.ts';
import type { Scene } from '../../scene/types.ts';
import type { LocalText, Message } from '../../service/message.ts';

export interface Home {
  readonly unit: string;
  readonly household: string;
}

export interface Named {
  readonly id: string;
  readonly name: LocalText;
}

export type HomeRequest =
  | { readonly kind: 'open'; readonly home: Home }
  | {
      readonly kind: 'what-if';
      readonly home: Home;
      readonly scenario: ScenarioId;
      readonly season: SeasonId;
      readonly span_d: number;
    }
  | { readonly kind: 'drop'; readonly home: Home; readonly season: SeasonId }
  | { readonly kind: 'year'; readonly home: Home; readonly neglect: NeglectId }
  | { readonly kind: 'month'; readonly home: Home };

/** A quantity of both twins over time, thinned out for a small drawing. */
export interface HomeCurve {
  readonly id: QuantityId;
  readonly touched: readonly (readonly [at_s: number, value: number])[];
  readonly twin: readonly (readonly [at_s: number, value: number])[];
}

export interface Came {
  readonly scenario: ScenarioId;
  readonly begins_s: number;
  readonly over_s?: number;
  readonly end_s: number;
  readonly curves: readonly HomeCurve[];
  readonly effects: readonly Message[];
}

export type HomeReply =
  | { readonly kind: 'progress'; readonly share: number }
  | {
      readonly kind: 'open';
      readonly scene: Scene;
      readonly units: readonly Named[];
      readonly households: readonly Named[];
    }
  | { readonly kind: 'what-if'; readonly came: Came }
  | { readonly kind: 'drop'; readonly drop: Drop }
  | { readonly kind: 'year'; readonly year: Year<Scene> }
  /** No chlorine where the unit has a lamp. */
  | { readonly kind: 'month'; readonly water_m3: number; readonly chlorine: Chlorine | undefined }
  | { readonly kind: 'failed' };
