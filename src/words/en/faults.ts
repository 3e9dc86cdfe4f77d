/** Names of the faults, and of each how it is noticed and what misleads. */
export const faults = {
  'fault.line-split': 'Air line split',
  'fault.joint-leak': 'Air joint leaking',
  'fault.diaphragm-worn': 'Diaphragms worn',
  'fault.diaphragm-torn': 'Diaphragm torn',
  'fault.intake-clogged': 'Intake filter clogged',
  'fault.compressor-stopped': 'Compressor failed',
  'fault.breaker-tripped': '{^part} tripped',
  'fault.surge-latch': 'Alarm latched by a surge',
  'fault.selector-left': 'Selector left in {part}',
  'fault.timer-misset': 'Timer clock wrong',
  'fault.lamp-dead': '{^part} dead',
  'fault.stuck-up': '{^part} held up',
  'fault.stuck-down': '{^part} held down',
  'fault.winding-open': 'Pump winding open',
  'fault.disc-filter-clogged': 'Disc filter clogged',
  'fault.wash-day': 'Wash day',
  'shows.line-split':
    'The hum turns light, the gauge at the tee drops, and soap foams on the tube wall. A small split alarms nobody: the depth of water holds the pressure up while half the air is lost.',
  'shows.joint-leak':
    'Bubbles weaken, and the gauge at the tee reads only a little low, so no lamp lights. The eye finds nothing; soap at every joint does.',
  'shows.diaphragm-worn':
    'Weak bubbles with an even hum. Dead-headed it still reaches full pressure, which misleads: the flow is gone, and the open housing shows why.',
  'shows.diaphragm-torn':
    'It rattles, and dead-headed it builds no pressure: pump bad, line good. The gauge at the tee alone cannot tell it from a split line.',
  'shows.intake-clogged':
    'The case runs hot and the bubbles are weak, yet no lamp lights. Line and diaphragms get the blame; a look at the filter costs two minutes.',
  'shows.compressor-stopped':
    'Silent with its breaker on, and the meter finds voltage at its outlet. A tripped breaker is just as silent, so levers and volts come before the part.',
  'shows.breaker-tripped':
    'A lever midway between on and off is the evidence, and a reset wipes it out. With the alarm breaker tripped the lamp is dark whatever happens: a quiet panel misleads.',
  'shows.surge-latch':
    'Lamp lit after a storm, while air and water are ordinary; one reset clears it for good. A standing fault looks the same at first: only five minutes of watching tell them apart.',
  'shows.selector-left':
    'In Off no dose runs and the water climbs with a sound pump; in Hand the pump runs past every float. It is read in a second, and missed when the pump is suspected first.',
  'shows.timer-misset':
    'The spray comes at the wrong hours, and nothing alarms. An override by day looks alike; the panel clock beside a watch tells them apart.',
  'shows.lamp-dead':
    'The buzzer sounds under a dark lamp, or, once silenced, nothing shows at all. Only Test tells a dead lamp from a sound unit.',
  'shows.stuck-up':
    'The float stands up over water too low for it, and its contact stays closed. A stop float held up hides behind sound doses; an override pumps on, a high-water float alarms over an ordinary level.',
  'shows.stuck-down':
    'The float hangs under water that should lift it; for the stop float, Hand pumps and Auto never does. Pump, timer or a wash day get the blame, so look at the cords first.',
  'shows.winding-open':
    'Voltage reaches the terminals and nothing runs; the winding reads open. A float that holds the pump back is just as quiet, but then the voltage is missing.',
  'shows.disc-filter-clogged':
    'Weak spray, and the override pumping by day. A tired pump looks the same until the discs have been opened.',
  'shows.wash-day':
    'Much water in a few hours, so override or alarm come early. Nothing is broken by it, but it brings a dead pump circuit to light.',
};
