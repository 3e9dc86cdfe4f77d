/** Why a number is what it is: its parts, the equation, where that comes from. */
export const because = {
  'because.title': 'The numbers here, and why',
  'because.lead':
    'Each is what the simulation had at this instant. Open one for its parts, the equation and the source.',
  'because.sum': 'It is made of',
  'because.plus': 'plus',
  'because.minus': 'less',
  'because.source': 'Source: {s}',
  'because.air': 'Air pressure in the line',
  'because.air-flow': 'Air that reaches the diffusers',
  'because.oxygen': 'Oxygen in the aeration chamber',
  'because.liquor': 'Mixed liquor solids',
  'because.head': 'Pressure the pump makes',
  'because.current': 'Pump current',
  'because.tank': 'Level in the pump tank',
  'because.stay': 'Stay before disinfection',
  'because.sludge': 'Sludge in the trash tank',
  'because.part.air-depth': 'water over the diffusers',
  'because.part.air-cracking': 'opening of the diffusers',
  'because.part.air-line-water': 'water standing in the line',
  'because.part.air-loss': 'flow through the diffusers',
  'because.part.air-moved': 'moved by the compressor',
  'because.part.air-leaks': 'lost through holes in the line',
  'because.part.oxygen-full': 'as much as the water would hold',
  'because.part.oxygen-breathed': 'breathed faster than air brings it',
  'because.part.living': 'living',
  'because.part.remains': 'remains of what has died',
  'because.part.inert': 'came in and cannot be eaten',
  'because.part.uneaten': 'not eaten yet',
  'because.part.head-lift': 'lift to the field',
  'because.part.head-filter': 'check valve and disc filter',
  'because.part.head-pipe': 'friction in the pipe',
  'because.part.head-end': 'left at the field',
  'because.part.current-turning': 'turning an impeller in air',
  'because.part.current-water': 'moving water',
  'because.part.stay-trash': 'trash tank',
  'because.part.stay-aeration': 'aeration chamber',
  'because.part.stay-clarifier': 'clarifier',
  'because.how.air':
    'p = ρ g d + what opens the diffusers + k Q², with {d} of water over them and {q} through them. Splits, holes and worn diaphragms change Q, and so the last part.',
  'because.how.air-standing':
    'The compressor stands. What is left in the line leaks back through it and out of any hole: √p falls evenly with time.',
  'because.how.air-short': 'The diffusers would open at {p}. The line does not reach that, so no air comes out.',
  'because.how.air-flow':
    'The compressor moves Q where its curve p = p₀ (1 − Q / Q₀)^(1/n), with Q₀ {free} and p₀ {dead}, meets what diffusers and holes take at p.',
  'because.how.oxygen':
    'dC/dt = KLa (C* − C) − r. At {t} the air renews the water’s oxygen {k} times an hour; what is missing to C* is what the living use, about {r} an hour.',
  'because.how.oxygen-none': 'No air comes in: what oxygen there was is soon breathed, and nothing brings more.',
  'because.how.liquor': 'Solids count 0.75 g for each g of COD that is not dissolved.',
  'because.how.head':
    'H = H₀ − a Q²: {h} against a shut valve, less what {q} takes within the pump. Pipe friction by Hazen and Williams, openings by Q = Cd A √(2p/ρ).',
  'because.how.current':
    'Rated {a}. A third of it turns the impeller; the rest grows with the flow, to its most at run-out.',
  'because.how.current-stalled': 'The rotor is locked: 5.5 times the rated {a}, until a breaker or protector opens.',
  'because.how.tank':
    'It holds {v}. At {q} a day, the mean of the last days, the {left} up to the high-water float last {h}, if nothing is dosed.',
  'because.how.tank-high': 'It holds {v}, and the high-water float is up.',
  'because.how.stay': 'θ = V / Q, with Q the mean inflow of the last days, {q} a day.',
  'because.how.sludge':
    '{v} over the tank’s floor. A cubic metre of lying sludge is taken to hold 90 kg of dry solids; it grows by what settles, and shrinks by what digests.',
  'because.source.air': 'hydrostatics; losses common practice, no source',
  'because.source.air-flow': 'holes: nozzle equation in the form of ISO 6358; the compressor is invented (convention)',
  'because.source.oxygen':
    'two-film transfer after ASCE’s standard; saturation Benson and Krause 1984; demand IWA ASM1',
  'because.source.liquor': 'IWA ASM1 with the ratios of BSM1',
  'because.source.head': 'Hazen-Williams and the orifice law, hydraulics handbooks; the pump is invented (convention)',
  'because.source.current': 'readings of the trade for air, shut valve and run-out; shares are a convention',
  'because.source.tank': 'volume balance',
  'because.source.stay': 'definition of the mean residence time',
  'because.source.sludge': 'dry solids of 40 to 90 kg/m³ are common practice, no source; 90 is a convention',
  'because.stroke': 'Stroke of the compressor',
  'because.blanket': 'Sludge blanket over the clarifier’s slot',
  'because.solids-out': 'Solids in the stored water',
  'because.residual': 'Chlorine in the stored water',
  'because.passage': 'Flow the disc filter lets through',
  'because.sediment': 'Sediment in the pump tank',
  'because.scum': 'Scum in the trash tank',
  'because.part.stroke-open': 'whole stroke of an open line',
  'because.part.stroke-held': 'held back by the line’s pressure',
  'because.part.chlorine-free': 'free',
  'because.part.chlorine-bound': 'bound to ammonia',
  'because.how.stroke':
    's = 1 − (p / p₀)ⁿ, with p {p}, p₀ {dead} and n {n}: its swings a second are the mains’, so what one of them moves falls as the flow does along its curve.',
  'because.how.blanket':
    'Its top is where solids pass half of the liquor’s {x}. Liquor falls {falls} an hour, slower the thicker it is; the day’s flow rises {up} an hour. Air carries what reaches the slot back.',
  'because.how.solids-out':
    'What the clarifier lets over and the pump tank has not settled yet. The blanket stands {b} over its slot; the nearer it comes to the outlet, the more goes over.',
  'because.how.residual':
    '{n} of ammonia nitrogen bind up to {most} of chlorine as monochloramine; only well beyond that is any free. What is there fades by first order, faster in dirty water.',
  'because.how.passage':
    'Of what it passes when clean. At {q} it now takes {p} of the pump’s pressure: Δp = k Q², k growing as its slots close.',
  'because.how.passage-rests': 'Of what it passes when clean. The pump rests, so nothing is lost in it now.',
  'because.how.sediment':
    '{v} over the floor, from {least} to {most} by spot: the pump keeps its own corner clear. A cubic metre of it is taken to hold {g} kg of dry solids.',
  'because.how.scum':
    '{v} over the tank’s surface of {a} m². A cubic metre of scum is taken to hold 400 kg of grease and solids.',
  'because.source.stroke': 'the compressor is invented (convention)',
  'because.source.blanket':
    'Takács, Patry and Nolasco 1991 as in BSM1; velocities by volume index of a public calculator; half the liquor is a convention',
  'because.source.solids-out': 'the layered settler of BSM1',
  'because.source.residual':
    'breakpoint stoichiometry, 5.07 g of chlorine to 1 g of nitrogen; decay a convention within textbook ranges',
  'because.source.passage': 'losses as the square of flow, hydraulics handbooks; the filter is invented (convention)',
  'because.source.sediment': '40 kg/m³ is a convention',
  'because.source.scum': '400 kg/m³ is a convention',
  'because.intake': 'Intake filter blocked',
  'because.jar': 'Settled sludge of a litre in half an hour',
  'because.rise': 'Rise rate in the clarifier',
  'because.clarified': 'Solids on top of the clarifier',
  'because.field': 'Pressure at the field',
  'because.flow': 'Flow to the field',
  'because.aeration-level': 'Water over the clarifier’s slot',
  'because.part.level-outlet': 'from the slot to the way out',
  'because.part.level-over': 'over the way out, for water to run',
  'because.part.level-short': 'short of the way out',
  'because.how.intake':
    'It takes {p} of the compressor’s pressure at {q}: Δp = k Q². Drawn as blocked from k = 0.03 kPa per (L/min)².',
  'because.how.jar':
    'A litre of {x} with a volume index of {i} mL/g, settled in 60 layers by the clarifier’s own law; the line is where solids pass half of the liquor’s.',
  'because.how.rise': 'v = Q / A: {q} through a surface of {a} m².',
  'because.how.clarified':
    'What falls more slowly than the water rises, and what never settles, goes up to the outlet.',
  'because.how.field': 'Openings pass Q = n Cd A √(2p/ρ): {q} at this pressure. The field is made for {d}.',
  'because.how.flow':
    'Where the pump’s falling curve, {h} against a shut valve, meets what the line asks for: {l} of lift, losses with Q² and Q^1.852, and {p} at the field.',
  'because.how.aeration-level':
    'Chamber and clarifier stand level. {q} runs out; the pipe takes more the higher it stands over the way out.',
  'because.source.intake': 'losses as the square of flow, handbooks; 0.03 is a convention',
  'because.source.jar': 'Takács, Patry and Nolasco 1991 as in BSM1; velocities by volume index of a public calculator',
  'because.source.rise': 'definition of the overflow rate',
  'because.source.clarified': 'the layered settler of BSM1',
  'because.source.field': 'orifice law, hydraulics handbooks',
  'because.source.flow': 'Hazen-Williams and the orifice law, hydraulics handbooks; the pump is invented (convention)',
  'because.source.aeration-level': 'volume balance',
};
