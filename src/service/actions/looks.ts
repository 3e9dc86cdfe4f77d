/** What an eye and a nose tell over an open chamber, in words. */
import { type EffluentColour, effluentColour } from '../../plant/index.ts';
import type { Readout, Sensed } from '../../unit/index.ts';
import type { Doing } from '../action.ts';
import { type Message, say } from '../message.ts';
import type { Note } from '../person.ts';
import { good, off, plain } from './shared.ts';

type Chamber = 'aeration' | 'clarifier' | 'riser' | 'pump';

/** What is looked at from above: mixed liquor, or water that should be clear. */
function colourOf(now: Readout, chamber: Chamber): EffluentColour {
  if (chamber === 'aeration') return now.sensed.liquor;
  if (chamber === 'pump') return now.sensed.effluent;
  return effluentColour({ ...now.water[chamber], hoursWithoutOxygen: now.hoursWithoutOxygen });
}

function waterRemark(chamber: Chamber, colour: EffluentColour, smell: string): Note['remark'] {
  const stale = ['grey-brown', 'grey', 'black'].includes(colour) || smell === 'musty' || smell === 'rotten-eggs';
  if (stale) return off('remark.without-oxygen');
  if (smell === 'chlorine') return off('remark.too-much-chlorine');
  if (chamber !== 'aeration') return colour === 'clear' ? good('remark.ordinary') : off('remark.solids-carried');
  return colour === 'chocolate-brown' ? good('remark.ordinary') : plain('remark.thin-liquor');
}

/** Water that has settled, as one looks at it: what is clear may hold fine specks. */
export function settledWords(colour: EffluentColour, specks: boolean): Message {
  return say(specks && colour === 'clear' ? 'word.specks' : `word.${colour}`);
}

/** Notes colour and smell of the water in an open chamber, and returns the colour. */
export function noteWater(d: Doing, chamber: Chamber): EffluentColour {
  const now = d.read();
  const colour = colourOf(now, chamber);
  const smell = now.sensed.overLid.kind;
  const specks = now.sensed.specks && chamber !== 'aeration';
  d.note(
    say(chamber === 'aeration' ? 'note.liquor' : 'note.water'),
    say('reading.water', { colour: settledWords(colour, specks), smell: say(`word.smell-${smell}`) }),
    waterRemark(chamber, colour, smell),
  );
  return colour;
}

/** Bubbling, of a healthy unit's, under which a surface is still, and under which its bubbles are few (convention). */
const STILL = 0.015;
const FEW = 0.55;
/** How high foam stands, of the way up to the lid, that is more than a little, and that is nearly there (convention). */
const MUCH = 0.3;
const HIGH = 0.8;

function foamWords({ kind, amount }: Sensed['foam']): Message {
  const much = amount < MUCH ? 'little' : amount < HIGH ? 'much' : 'to-the-lid';
  return say('word.foam', { kind: say(`word.foam-${kind}`), much: say(`word.foam-${much}`) });
}

function boils(bubbles: number, oneSpot: boolean): Message {
  if (bubbles < STILL) return say('reading.still');
  if (oneSpot) return say('reading.one-spot');
  return say(bubbles < FEW ? 'reading.weak-bubbles' : 'reading.bubbles');
}

function surfaceRemark(bubbles: number, oneSpot: boolean, foam: string): Note['remark'] {
  if (bubbles >= STILL && oneSpot) return off('remark.coarse-bubbles');
  if (bubbles < FEW) return off('remark.too-little-air');
  if (foam === 'billowing-white') return off('remark.foam-white');
  return foam === 'dark-greasy' ? off('remark.foam-dark') : good('remark.ordinary');
}

/** Notes how the aeration chamber's surface boils and foams. */
export function noteSurface(d: Doing): void {
  const { bubbles, foam } = d.read().sensed;
  const oneSpot = d.unit.has('drop-line-broken');
  const air = boils(bubbles, oneSpot);
  const reading = foam.kind === 'none' ? air : say('reading.surface', { boils: air, foam: foamWords(foam) });
  d.note(say('note.aeration'), reading, surfaceRemark(bubbles, oneSpot, foam.kind));
}
