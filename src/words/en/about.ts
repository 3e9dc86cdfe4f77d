/** What each part is for, in one or two sentences, and the cautions where they bite. */
export const about = {
  'about.phone': 'The householder is on the line. Dry hands and closed covers set what can be done.',
  'about.house': 'Where the water comes from, and where people hear what was found.',
  'about.clean-out':
    'Spring-lidded pipe on the sewer, between house and tank. What backs up comes out here before it comes out indoors.',
  'about.trash-tank': 'Holds back what floats and what sinks. The water in between flows on.',
  'about.aeration': 'Air from the diffusers stirs the mixed liquor and feeds the life that does the cleaning.',
  'about.clarifier':
    'Still water hung inside the aeration chamber: solids settle and slide back below, clear water leaves on top.',
  'about.disinfection': 'Here chlorine joins the clear water on its way to the pump tank.',
  'about.pump-tank': 'Stores about a day of water until the night doses. Four floats tell how high it stands.',
  'about.disc-filter': 'Last strainer before the spray heads: stacked discs keep solids out of the nozzles.',
  'about.spray-field': 'Spray heads spread the treated water over the lawn at night.',
  'about.panel': 'Feeds and watches everything: three breakers, timer, air switch, pump relay, lamp and buzzer.',
  'about.compressor': 'Pushes air down the line to the diffusers. A tee feeds the low-air switch in the panel.',
  'caution.phone':
    'Danger first. Then dry hands, dry ground, handles and buttons only. Nobody opens a screwed cover or lifts a lid.',
  'caution.arrive':
    'Look before you walk in: sewage, wet ground near live parts, loose lids, dog, wasps, snakes, heat. Local code and licensed practice come first.',
  'caution.open-tank':
    'Never enter, never lean in: the gas kills without warning. Guard the opening, never leave it, close and fasten it. Local code and licensed practice come first.',
  'caution.pump-cord': 'Lock out before a hand goes in. Never lift a pump by its cord.',
  'caution.chlorine':
    'Never mix kinds of chlorine, nor chlorine with anything else. Gloves, eye protection, fresh air. The label and the maker’s instructions come first.',
  'caution.pressure': 'Under pressure while the pump runs. Stop the pump and let the pressure off before opening.',
  'caution.spray':
    'The heads come up without warning. Keep people and pets off, and off the wet grass. Local code comes first.',
  'caution.live-parts':
    'Live parts. Switch off, lock, tag and test dead before a hand goes in; the other circuits stay live. Local code and a licence may reserve this work.',
  'caution.sewage': 'Sewage carries germs: gloves, eye protection, wash after. Keep people and pets off wet ground.',
  'lid.trash': 'trash tank lid',
  'lid.aeration': 'aeration lid',
  'lid.riser': 'disinfection lid',
  'lid.pump': 'pump tank lid',
  'circuit.alarmBreaker': 'alarm',
  'circuit.compressorBreaker': 'compressor',
  'circuit.pumpBreaker': 'pump',
  'float.redundantOffFloat': 'redundant float',
  'float.startStopFloat': 'start/stop float',
  'float.stopFloat': 'stop float',
  'float.doseFloat': 'dose float',
  'float.overrideFloat': 'override float',
  'float.highWaterFloat': 'high-water float',
  'part.stopFloat': 'stop float',
  'part.doseFloat': 'dose float',
  'part.overrideFloat': 'override float',
  'part.highWaterFloat': 'high-water float',
  'part.alarmBreaker': 'alarm breaker',
  'part.compressorBreaker': 'compressor breaker',
  'part.pumpBreaker': 'pump breaker',
  'part.redundantOffFloat': 'redundant float',
  'part.startStopFloat': 'start/stop float',
  'part.lamp': 'lamp',
  'part.airLamp': 'air lamp',
  'part.waterLamp': 'water lamp',
  'part.off': 'Off',
  'part.hand': 'Hand',
};
