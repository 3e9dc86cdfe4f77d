/** The files of the shipped calls and routine visits. A new one is one import here; a call also a line of `scenarios/course.json`. */
import afterTheElectrician from '../../scenarios/calls/after-the-electrician.json';
import cleanOutLifts from '../../scenarios/calls/clean-out-lifts.json';
import dampOutlet from '../../scenarios/calls/damp-outlet.json';
import deadLamp from '../../scenarios/calls/dead-lamp.json';
import dropsInside from '../../scenarios/calls/drops-inside.json';
import emptyBottle from '../../scenarios/calls/empty-bottle.json';
import fogAndLamp from '../../scenarios/calls/fog-and-lamp.json';
import frostMorning from '../../scenarios/calls/frost-morning.json';
import guestBath from '../../scenarios/calls/guest-bath.json';
import heavyFloat from '../../scenarios/calls/heavy-float.json';
import hotWall from '../../scenarios/calls/hot-wall.json';
import hummer from '../../scenarios/calls/hummer.json';
import hungTablets from '../../scenarios/calls/hung-tablets.json';
import leverHalfway from '../../scenarios/calls/lever-halfway.json';
import looseHose from '../../scenarios/calls/loose-hose.json';
import mowerPassed from '../../scenarios/calls/mower-passed.json';
import noonSprinklers from '../../scenarios/calls/noon-sprinklers.json';
import quietCompressor from '../../scenarios/calls/quiet-compressor.json';
import rainGuest from '../../scenarios/calls/rain-guest.json';
import slowStarter from '../../scenarios/calls/slow-starter.json';
import softLawn from '../../scenarios/calls/soft-lawn.json';
import stormLight from '../../scenarios/calls/storm-light.json';
import stumpInTheLawn from '../../scenarios/calls/stump-in-the-lawn.json';
import sunnyLine from '../../scenarios/calls/sunny-line.json';
import tiredSpray from '../../scenarios/calls/tired-spray.json';
import tornSheet from '../../scenarios/calls/torn-sheet.json';
import tripsAgain from '../../scenarios/calls/trips-again.json';
import twoDaysDark from '../../scenarios/calls/two-days-dark.json';
import twoLampsOneCause from '../../scenarios/calls/two-lamps-one-cause.json';
import washDayLight from '../../scenarios/calls/wash-day-light.json';
import weakLungs from '../../scenarios/calls/weak-lungs.json';
import wontStop from '../../scenarios/calls/wont-stop.json';
import cloudyCorner from '../../scenarios/visits/cloudy-corner.json';
import dryBottle from '../../scenarios/visits/dry-bottle.json';
import dryWeather from '../../scenarios/visits/dry-weather.json';
import marchRound from '../../scenarios/visits/march-round.json';
import threeYearsOn from '../../scenarios/visits/three-years-on.json';
import underTheSod from '../../scenarios/visits/under-the-sod.json';

export const CALL_FILES: readonly { readonly id: string }[] = [
  afterTheElectrician,
  cleanOutLifts,
  dampOutlet,
  deadLamp,
  dropsInside,
  emptyBottle,
  fogAndLamp,
  frostMorning,
  guestBath,
  heavyFloat,
  hotWall,
  hummer,
  hungTablets,
  leverHalfway,
  looseHose,
  mowerPassed,
  noonSprinklers,
  quietCompressor,
  rainGuest,
  slowStarter,
  softLawn,
  stormLight,
  stumpInTheLawn,
  sunnyLine,
  tiredSpray,
  tornSheet,
  tripsAgain,
  twoDaysDark,
  twoLampsOneCause,
  washDayLight,
  weakLungs,
  wontStop,
];

/** Routine visits, in the order of the list. */
export const VISIT_FILES: readonly { readonly id: string }[] = [
  marchRound,
  dryBottle,
  threeYearsOn,
  cloudyCorner,
  dryWeather,
  underTheSod,
];
