/** What the household's part says, in English: short words, short sentences. `tests/unit/home-words.test.ts` holds its reading grade. */
export const homeWords = {
  'home.lead':
    'This part is for you who live with the unit. See how it works, try what could go wrong, and print a card for the wall. Nothing here asks you to open a tank or a box with wires.',
  'home.advice':
    'The numbers come from a model of one yard, not from yours. Local code and your licensed service decide what is done.',
  'home.go.card': 'Card to print',

  'home.walk': 'The way of the water',
  'home.walk.lead': 'Follow the water from the house to the lawn. The picture shows a sound unit at noon.',
  'home.walk.list': 'Parts, in the order the water takes',
  'home.walk.picture': 'The yard cut open, with a sound unit at work',
  'home.walk.step': 'Part {n} of {all}',
  'home.walk.trade': 'The trade says: {name}',
  'home.walk.does': 'What it does',
  'home.walk.notice': 'What you may notice',
  'home.walk.never': 'What never to do',
  'home.walk.back': 'Back',
  'home.walk.next': 'Next',

  'home.part.house': 'Your house',
  'home.part.house.does':
    'All your used water leaves by one pipe. Each drain has a bend that holds water. That water keeps sewer air out of your rooms.',
  'home.part.house.notice':
    'A drain you never use can dry out and smell. Run water there for half a minute each month. If all drains are slow at once, use no more water and call.',
  'home.part.house.never':
    'No wipes, pads, hair, grease, paint, or drugs down any drain. Do not mix bleach with other cleaners: the gas can kill.',
  'home.part.trash-tank': 'First tank',
  'home.part.trash-tank.does':
    'Here the water slows down. Heavy things sink, and grease floats. The rest moves on to the air tank.',
  'home.part.trash-tank.notice':
    'You should notice next to nothing. A bad smell or wet soil near the lid is a reason to call.',
  'home.part.trash-tank.never':
    'Never lift the lid. The gas inside can knock you out, and people have died. Keep children, pets, and cars off all lids.',
  'home.part.aeration': 'Air tank',
  'home.part.aeration.does':
    'Air bubbles up here day and night. Tiny living things breathe it and eat the dirt in the water. They are the heart of the unit.',
  'home.part.aeration.notice':
    'A soft hum and a faint smell of earth are fine. A smell of rotten eggs means there has been no air for hours.',
  'home.part.aeration.never':
    'Never turn off the air to save power. Do not pour strong cleaners down the drain in large doses.',
  'home.part.clarifier': 'Quiet part',
  'home.part.clarifier.does':
    'Here the water stands still. The living things sink and slide back to the air. Clear water stays on top.',
  'home.part.clarifier.notice':
    'Too much water at once stirs it up. Then the water on the lawn turns cloudy. Spread your wash over the week.',
  'home.part.clarifier.never': 'Never rinse it or stir it. It lies under a lid that stays shut.',
  'home.part.disinfection': 'Germ stop',
  'home.part.disinfection.does':
    'Chlorine or a strong lamp kills germs here. It is the last step before the water goes out.',
  'home.part.disinfection.notice':
    'If the store runs empty, you will see nothing at all. So ask your service how it gets filled, and by whom.',
  'home.part.disinfection.never':
    'Never use pool tablets. They can blow up when they meet the right kind. Never touch tablets with bare hands or breathe the dust.',
  'home.part.pump-tank': 'Pump tank',
  'home.part.pump-tank.does': 'Clean water waits here. Floats feel how high it stands. A pump sends it to the lawn.',
  'home.part.pump-tank.notice':
    'If the water stands too high, the alarm lamp comes on. Use as little water as you can, and call.',
  'home.part.pump-tank.never':
    'Never reach in for a float or the pump. There is power in the water, and the gas can kill.',
  'home.part.spray-field': 'Lawn',
  'home.part.spray-field.does': 'The lawn takes the water up. Some units spray it. Some let it drip under the grass.',
  'home.part.spray-field.notice': 'Wet spots, bad smells, or spray at odd hours are worth a call.',
  'home.part.spray-field.never':
    'No food plants, no play in the spray, no cars, and no drink from it. Do not water this lawn as well.',
  'home.part.compressor': 'Air pump',
  'home.part.compressor.does': 'This small pump blows the air into the air tank. It runs all the time.',
  'home.part.compressor.notice': 'It should hum. If it is silent, or loud, or rattles, call your service.',
  'home.part.compressor.never':
    'Do not pull its plug, and do not cover it. Leave its case shut: there is power inside.',
  'home.part.panel': 'Control box',
  'home.part.panel.does':
    'It runs the pumps and watches the unit. Its lamp and its buzzer call you when something is wrong.',
  'home.part.panel.notice':
    'A red lamp means: call soon. You may press the silence button on the outside. The lamp will stay on.',
  'home.part.panel.never':
    'Never open the box past its outer door. The wires inside can kill, with the lamp on or off.',

  'home.whatif': 'What if',
  'home.whatif.lead':
    'Choose what happens. The same home then lives twice: once with it, and once without. What you read is how the two differ.',
  'home.whatif.scenario': 'What happens',
  'home.whatif.unit': 'Unit',
  'home.whatif.household': 'Who lives there',
  'home.whatif.season': 'Season',
  'home.season.mild': 'Mild',
  'home.season.cold': 'Cold',
  'home.season.hot': 'Hot',
  'home.whatif.span': 'For how long to look',
  'home.whatif.run': 'Let it happen',
  'home.whatif.cancel': 'Stop',
  'home.whatif.progress': 'Days lived through',
  'home.whatif.stopped': 'Stopped. Nothing was kept.',
  'home.whatif.effects': 'What came of it',
  'home.whatif.caution':
    'This is one yard in a model, in a mild season. It is no leave to pour more, and no proof for your yard. Local code and your licensed service decide.',
  'home.whatif.curves': 'Two curves: with it, and without',
  'home.whatif.with': 'with it',
  'home.whatif.without': 'without it',
  'home.whatif.begins': 'starts',
  'home.whatif.over': 'over',
  'home.whatif.low-high': 'With it from {a} to {b}. Without it from {c} to {d}.',
  'home.span.3': '3 days',
  'home.span.14': '2 weeks',
  'home.span.60': '2 months',
  'home.span.182': '6 months',

  'home.scenario.bleach': 'A week of bleach: three loads of wash a day',
  'home.scenario.cleaners': 'A week of strong germ killers down the drain',
  'home.scenario.toilet': 'A toilet that runs for a month',
  'home.scenario.wipes': 'Wipes and grease',
  'home.scenario.power': 'Two days with no power',
  'home.scenario.guests': 'Four guests for a week',
  'home.scenario.away': 'A month away',
  'home.scenario.bath': 'A bath that no one uses',
  'home.scenario.softener': 'Salt water from a softener',
  'home.scenario.storm': 'A big storm, and a lid pipe that leaks',
  'home.over.bleach': 'the bleach stopped',
  'home.over.cleaners': 'the germ killers stopped',
  'home.over.toilet': 'the toilet was fixed',
  'home.over.wipes': 'the drain was free',
  'home.over.power': 'the power came back',
  'home.over.guests': 'the guests left',
  'home.over.away': 'you came home',
  'home.over.bath': 'the bath was used',
  'home.over.softener': 'the salt stopped',
  'home.over.storm': 'the rain stopped',

  'home.sign.sewage': 'sewage on the ground or in the house',
  'home.sign.drains': 'slow drains',
  'home.sign.lamp': 'the alarm',
  'home.sign.clock': 'trouble with the clock in the control box',
  'home.sign.germs': 'live germs in the water that goes out',
  'home.sign.smellIndoors': 'a bad smell in the house',
  'home.sign.smellOutdoors': 'a bad smell in the yard',
  'home.sign.chlorine': 'a smell of chlorine in the yard',
  'home.sign.cloudy': 'cloudy water going out',
  'home.sign.airless': 'lack of air in the air tank',
  'home.on-and-off': 'came and went',
  'home.all-along': 'did not let up',
  'home.hours': '{n} {n:hour|hours}',
  'home.days': '{n} {n:day|days}',
  'home.effect.gone': '{^sign} began after {began} and {how}. It was gone {d} after {over}.',
  'home.effect.lasted': '{^sign} began after {began} and {how} for {d}. Then it was gone.',
  'home.effect.stays': '{^sign} began after {began} and {how}. It was still there at the end.',
  'home.effect.water-more': 'The unit had to take {v} more water.',
  'home.effect.water-less': 'The unit got {v} less water.',
  'home.effect.astray': '{^q}: {a} after {t}. Without it: {b}. The two were not alike by the end.',
  'home.effect.astray-back': '{^q}: {a} after {t}. Without it: {b}. The two were alike again {d} after the start.',
  'home.effect.astray-over': '{^q}: {a} after {t}. Without it: {b}. The two were alike again {d} after {over}.',
  'home.effect.none': 'Nothing that you would see or smell. No test of the water would tell the two apart.',
  'home.effect.most': 'What changed most is {q}: {a} with it, {b} without it.',
  'home.quantity.oxygen': 'air in the water of the air tank',
  'home.quantity.solids': 'dirt in the water that goes out',
  'home.quantity.food': 'food for germs in the water that goes out',
  'home.quantity.chlorine': 'chlorine in the water that goes out',
  'home.quantity.tank': 'depth of water in the pump tank',
  'home.quantity.seal': 'depth of water in the least used drain',

  'home.cost': 'Cost of keeping it clean',
  'home.cost.lead':
    'What a month of chlorine costs, as tablets or as liquid, for the water that this home really sends. Choose the unit and the home, and type your price.',
  'home.cost.tablet': 'Price of one tablet of 140 g, in dollars',
  'home.cost.liquid': 'Price of liquid a {per}, in dollars',
  'home.cost.gallon': 'gallon',
  'home.cost.litre': 'litre',
  'home.cost.run': 'Work it out',
  'home.cost.light': 'This unit kills germs with a lamp. It needs no chlorine.',
  'home.cost.flow': 'Water in 30 days, as the model lived them: {v}.',
  'home.cost.dose': 'Dose of this unit: {c}. So it takes {g} g of chlorine.',
  'home.cost.tablets': 'As tablets of 68 %: {g} g of it are in {whole} g, which is {n} {n:tablet|tablets} of 140 g.',
  'home.cost.liquids': 'As liquid with {s} g in a litre: {g} g of it are in {v}.',
  'home.cost.total': 'At your price: {usd}.',
  'home.cost.source':
    'Sources: the dose is in the file of the unit. The 68 % and the strength of liquid are what labels say. Real use goes up and down with the flow, and old bleach gets weak. This is no advice on what to use: your permit and your service tell you that.',

  'home.card': 'When the alarm sounds',
  'home.card.lead': 'Hang this by the control box. It fits on one page.',
  'home.card.print': 'Print',
  'home.card.back': 'Back to the household page',
  'home.card.do': 'Do this',
  'home.card.do.1':
    'If sewage stands in a room, keep all people and pets out. If it is near an outlet, stay away: shock can kill. Call at once.',
  'home.card.do.2': 'Press the silence button on the outside of the box. The lamp stays on.',
  'home.card.do.3': 'Use as little water as you can: no wash, no bath, few flushes.',
  'home.card.do.4': 'Look from the outside: is there power in the house? Does the air pump hum? Is the lawn wet?',
  'home.card.do.5': 'Write down the time and what you saw, heard, and smelled.',
  'home.card.do.6':
    'Call your service. If they ask you to look at a breaker, do only what they say. Never reset it again and again.',
  'home.card.never': 'Never do this',
  'home.card.never.1':
    'Never open a tank, lean over one, or climb in. The gas kills fast, and those who go in to help die too.',
  'home.card.never.2': 'Never open the inside of the control box or touch its wires.',
  'home.card.never.3': 'Never turn off the air or the pump to stop the noise.',
  'home.card.never.4': 'Never mix bleach with other cleaners. Never put pool tablets in the unit.',
  'home.card.never.5':
    'Never let children or pets play on wet lawn or on a lid. A lid that is cracked or loose is a deadly trap: keep all away and call.',
  'home.card.call': 'Whom to call',
  'home.card.call.service': 'Service',
  'home.card.call.night': 'Service at night',
  'home.card.call.power': 'Power company',
  'home.card.call.county': 'Local permit office',
  'home.card.call.danger': 'Fire or rescue',
  'home.card.noticed': 'What we noticed, and when',
  'home.card.foot': 'Local code and licensed practice decide.',
};
