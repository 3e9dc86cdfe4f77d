/** Of each fault how it is noticed, and what misleads: the debrief says it. */
export const shows = {
  'shows.line-split':
    'The hum turns light, the gauge at the tee drops, and soap foams on the tube wall. A small split alarms nobody: the depth of water holds the pressure up while half the air is lost.',
  'shows.joint-leak':
    'Bubbles weaken, and the gauge at the tee reads only a little low, so no lamp lights. The eye finds nothing; soap at every joint does.',
  'shows.line-off-fitting':
    'Light hum, gauge at nothing, no bubbles: a torn diaphragm looks alike until it is dead-headed. The eye finds the loose end.',
  'shows.line-pinched':
    'High gauge, few bubbles, hot case, no lamp. Fouled diffusers raise the gauge too, so follow the line before lifting them.',
  'shows.diffuser-fouled':
    'The gauge reads high and oxygen runs short, while the surface still rolls and no lamp lights. The line looks whole; lift the diffusers.',
  'shows.drop-line-broken':
    'It boils in one spot and oxygen is low, yet the gauge stays within its label. Only a look under the lid tells.',
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
  'shows.trap-dry':
    'Sewer smell indoors only, weeks after a drain was last used; the works are sound. Too little air is smelt outdoors.',
  'shows.toilet-leaking':
    'Water runs in at all hours, at night too; doses come often, nothing is broken. Dye in the cistern tells.',
  'shows.crowd': 'Much water in hours, as on a wash day; nothing is broken. Ask before the pump gets the blame.',
  'shows.grease':
    'For weeks nothing shows but a little less oxygen; the scum grows by a quarter of a millimetre a day. Asking comes first.',
  'shows.disinfectant-shock':
    'White foam after days, with oxygen high and ammonia left: the sludge is ill, not the air. Young sludge foams too; ask what was poured.',
  'shows.air-switch-drifted':
    'The alarm comes back after every reset over a sound gauge at the tee: the switch turns far above its label. The line gets the blame; the pressure at which it turns tells.',
  'shows.air-switch-stuck':
    'Stuck closed, the lamp is lit over good air; stuck open, a stopped compressor alarms nobody. Test lights the lamp all the same, so prove the switch, not the lamp.',
  'shows.alarm-float-misset':
    'Everything works when lifted by hand, yet water reaches the inlet before the lamp. Only a tape on the tether, held against the label, finds it.',
  'shows.breaker-retrips':
    'The lever trips again the moment it is pushed on, whatever runs or stands. One reset is evidence enough: leave it off and test the insulation.',
  'shows.buzzer-dead':
    'The lamp is lit and nothing sounds, so nobody looks. A silenced buzzer is as quiet, but Test makes that one sound.',
  'shows.compressor-unplugged':
    'Silent with its breaker on, after somebody mowed or used the outlet. The compressor is condemned by those who never looked at the plug.',
  'shows.cord-chafed':
    'Its breaker, or an outlet that trips on a leak, lets go as soon as the cord is fed. A short in the panel’s wire does the same and the compressor gets the blame; the bare copper is seen at the outlet.',
  'shows.dialler-no-line':
    'Lamp and buzzer do their work and no call goes out. Nobody misses it until an alarm stood for days.',
  'shows.float-flooded':
    'It hangs under water that should lift it, and is heavy in the hand; lifted, its contact works, which misleads. A caught cord looks alike from above.',
  'shows.float-on-scum':
    'It stands up over water too low for it and drops late, so the pump or the alarm comes at odd levels. The contact is sound; a look shows the raft.',
  'shows.floats-swapped':
    'After somebody worked in the panel, one float does the next one’s work: alarms where the pump should start, or doses at the wrong height. Renewing floats changes nothing, for each of their switches is sound.',
  'shows.gfci-tripped':
    'Silent compressor, breaker on, no voltage beyond the outlet’s button. Damp after rain trips it once; tripping again at once is a leak to be found.',
  'shows.housing-hot':
    'A reset seems to cure it: it restarts cooled, and alarms again an hour later in the sun. The hand on the case tells; the diaphragms get the blame.',
  'shows.insects-in-contacts':
    'Nobody notices until the air is lost and no lamp comes: the contacts cannot close. Looks like a stuck switch until its case is opened.',
  'shows.low-voltage':
    'The hum is weak, each dose is cut short and the pump’s protector opens warm. A new pump will do the same: volts at the panel, under load, come first.',
  'shows.outage':
    'Nothing hums and no lamp can light, so a dark panel says nothing of air or water. After a long one a fault may stand unshown for a minute, and a digital clock blinks.',
  'shows.panel-wet':
    'A high-water alarm over low water, worse after rain; neither lifting the float nor a new one ends it. Drops stand on the terminals: no hand goes in before all is tested dead.',
  'shows.protector-open':
    'Voltage at the terminals, nothing runs, the winding reads open and stays so when cold. An overheated motor reads the same until it has cooled.',
  'shows.pump-cord-chafed':
    'The pump’s breaker holds all day and trips at the first call for the pump. A short in the panel’s wire trips at every on; this one waits for the dose.',
  'shows.pump-seized':
    'It hums for seconds, draws five times its current and stops for ten minutes, again and again. Between two tries no current is drawn and the winding reads open, which misleads.',
  'shows.impeller-worn':
    'Weak spray and low current, as with a clogged filter. But its pressure is low against a shut valve too, which no filter does; out of the tank the vanes show it.',
  'shows.impeller-clogged':
    'It rattles and shakes, and the spray is weak. A gauge alone takes it for wear; the ear and the lifted pump tell. Find where the debris came from, or it comes again.',
  'shows.intake-screened':
    'Flow falls over days while pressure against a shut valve stays full: the pump starves. Filter and heads get the blame; lift the pump and look at its screen.',
  'shows.capacitor-weak':
    'It hums, stands, lets its protector open, and hours later starts as if sound. Its current is a seized pump’s, which misleads; the capacitor reads far under its rating.',
  'shows.check-valve-stuck-open':
    'Nothing alarms. Right after each run water comes back down the pipe, and the level rises some millimetres; house water does that too, so look at once.',
  'shows.check-valve-stuck-shut':
    'The pump runs, draws little and moves nothing: full pressure over the pump, none at the filter. A dead pump has none anywhere; the opened valve shows its flap.',
  'shows.weep-hole-blocked':
    'Weak spray with a whole pump: trapped air takes its head. Bleeding helps for a while, which misleads. During a run a sound hole squirts; this one is dry.',
  'shows.air-locked':
    'Runs light, draws little, moves nothing, often after the tank was pumped empty. It looks like a ruined pump; its weep hole spits foam, and bleeding ends it.',
  'shows.siphoning':
    'The tank stands at the pump’s intake, doses stay away and the counter rests, yet the low end of the lawn is wet. A leaking tank looks alike; this one leaves by the line.',
  'shows.discharge-broken':
    'Heads hardly rise while the tank empties fast: much flow, high current, little pressure. A weak pump has little flow too. Soft ground over the buried line shows where.',
  'shows.nozzle-clogged':
    'One head stays dry and the rest throw farther: pressure up, flow down. A tired pump has both down. In a drip field only opened emitters show it.',
  'shows.head-broken':
    'A geyser at one head, the others weak, the tank soon empty. From the house it is just weak spray: a walk shows the hole, before anybody starts the pump.',
  'shows.lateral-broken':
    'The zone does not fill, the pump moves more than ever, one strip of lawn is wet. A clogged filter has low pressure too, but little flow.',
  'shows.zone-valve-stuck':
    'Half of the field takes every dose and turns wet, the other half dries. The open zone’s pressure looks healthy, which misleads: gauge both in one run.',
  'shows.soil-saturated':
    'Pump, gauges and heads are sound, and the dose stands on the ground. A broken line is wet in one place; this is wet all over, most after rain.',
  'shows.relay-open':
    'Neither Auto nor Hand runs the pump, yet winding and breaker are sound: the coil is fed and the contact stays open. The pump is often renewed for it.',
  'shows.relay-welded':
    'The pump runs on in Off and past every float, until the tank is empty. Only its breaker stops it: off first, then think.',
  'shows.sensing-tube-wet':
    'The lamp comes and goes with good bubbles, mostly on cold mornings. The gauge at the tee is right while the switch sits behind a slug of water.',
  'shows.splice-corroded':
    'The float rises and falls freely and the panel never hears of it, lifted or not. A float held by its cord does as little, but that one is seen.',
  'shows.terminal-loose':
    'Some doses run and some do not, or none at all, with voltage at the terminals and a whole winding. The pump gets the blame; a tug at the leads, locked out, shows the one that moves.',
  'shows.tethers-tangled':
    'Two floats hang together under water that should lift them: high water brings neither pump nor alarm, until drains run slow. Each lid looks peaceful; look at the floats, not at the lamp.',
  'shows.timer-dead':
    'No dose comes, and the override pumps by day or the water climbs to the alarm. Hand pumps, so the floats get the blame; the timer, advanced to a dose, starts nothing.',
  'shows.timer-lost-clock':
    'After a long outage the clock blinks and doses nothing; the override does the work by day. Setting it mends it, a reset does not.',
  'shows.uv-lamp-out':
    'The air lamp is lit over good air: on this panel it stands for the ultraviolet lamp too. Water looks as clear as ever and is not disinfected; the shielded port tells, never an eye on the lamp.',
  'shows.reservoir-empty':
    'The strip finds nothing while the water looks as clear as ever, and nothing alarms. A clogged feed reads alike on the strip; a look at the level tells.',
  'shows.feed-clogged':
    'A full reservoir misleads: the strip finds next to nothing, and a cup of water brings a drop now and then. Filling up changes nothing.',
  'shows.feed-air-locked':
    'Often after a filling: reservoir full, no chlorine, air standing in the feed’s tube. It needs priming, not chlorine.',
  'shows.overfeed':
    'Chlorine smell, brown grass, a reservoir soon empty, a strip far up its colours. Good news to whoever fears germs only; a cup of water shows the stream.',
  'shows.hypochlorite-stale':
    'Reservoir full, feed dripping as it should, and the strip weak, with little or no free chlorine. Heat and age took the strength: only a thinned sample under a strip tells.',
  'shows.tablets-bridged':
    'Tablets in plenty and no chlorine: damp swelled them and they hang dry over the water. The tube looks full from above; a cup poured in leaves them dry.',
  'shows.tablets-used-up':
    'No colour on the strip, clear water, no alarm. Tablets go with the water used, not with the calendar: the tube is looked into.',
  'shows.tablets-drowned':
    'Chlorine smell, brown grass, tablets soon gone, most of all where little water is used. Fewer tablets change little: slime holds water in the tube, and a cup poured in stays there.',
  'shows.wrong-tablets':
    'Right in the tube and wet, yet the strip is weak: pool tablets dissolve too slowly. Nothing but the label tells, and the right kind on top of them can explode.',
  'shows.uv-sleeve-dirty':
    'The port glows and no lamp alarms, so all looks well; little light gets through the coat. Seen with the feed locked out and the sleeve in hand.',
  'shows.line-water-frozen':
    'High gauge, few bubbles, no lamp, in frost; by noon it may be gone. A pinched line and fouled diffusers raise the gauge too; along the line it gurgles where it is cold and sags.',
  'shows.scum-heavy':
    'Nothing shows for months, then less is kept back and the air has more to do. The level is ordinary, so only the probe tells; much of it points to the kitchen.',
  'shows.sludge-high':
    'The tank keeps back less and less, and the mixed liquor thickens sooner. Level and lamp stay ordinary; the air gets the blame for poor water. Probe before the outlet is reached.',
  'shows.outlet-baffle-lost':
    'Scum is thin here and turns up in the aeration chamber; the liquor thickens in weeks. Pumping out looks like the cure and hides it; a look at the outlet tee tells.',
  'shows.inlet-blocked':
    'Drains slow, then sewage at the clean-out within a day, while the trash tank stands at its outlet. The sewer gets snaked and it comes back: wipes hang in the inlet tee.',
  'shows.outlet-blocked':
    'Only the trash tank stands over its outlet; aeration chamber and pump tank are ordinary. A dead pump backs everything up alike, so look into the next chamber first.',
  'shows.mixed-liquor-old':
    'Dark, greasy foam and a jar that hardly settles, with oxygen good and no lamp. Bulking sludge fills the jar too, but it is light and brown; old sludge is thick.',
  'shows.return-slot-blocked':
    'In days the blanket climbs to the outlet and sludge goes over into the riser, while the chamber’s liquor thins. Bulking gets the blame; the jar settles well, and a rod finds the slot packed.',
  'shows.blanket-rising':
    'The jar stays nearly full under clear water, the blanket stands high, and a wash day sends sludge over. Much old sludge fills a jar too; look whether the air was short lately.',
  'shows.pump-tank-sludge':
    'Quiet: the pump keeps its own spot bare and the water looks clear. One core beside the pump misleads; three spots averaged tell. What lies here came over from the clarifier: look there too.',
  'shows.drain-leak':
    'Sewer smell indoors at once and always, also with water in every trap; the works are sound. A dry trap smells alike, so look at the traps first; the toilet rocks.',
  'shows.vent-blocked':
    'Drains gurgle and traps lose half of their water, yet the clean-out is empty. A blocked sewer gurgles too, but water stands in it.',
  'shows.softener-brine':
    'Nothing is seen or smelt and treatment is hardly slower. Chloride far over the supply’s tells; ask where the softener’s drain goes, since local code may forbid it here.',
  'shows.vacation':
    'Few pump hours, much oxygen, little food for the sludge, low water. It looks like a leak or a dead float; ask who was at home, and for how long.',
  'shows.storm-infiltration':
    'High water only in rain, and many doses with a water meter that stands still. Pump and floats get the blame; in dry weather a brown streak under the riser’s joint is all there is.',
  'shows.clear-water-connected':
    'High water within an hour of rain, clear water running past the clean-out, tanks tight. Leaking risers look alike; follow the downspouts.',
  'shows.lid-unsealed':
    'A smell of rotten eggs by the tanks at all hours, with the air good. Too little air smells alike, so measure oxygen; backing up, it lets water out before the clean-out does.',
  'shows.lid-unsafe':
    'Nothing alarms, smells or fails: a cracked or loose lid over deep water and gas is only seen by looking. It is mended before anything else on the visit.',
  'shows.tank-leaks':
    'Quiet: fewer doses than people, and the trash tank below its outlet. A tank pumped out last week stands low too, and so does one whose family was away: ask first.',
  'shows.sewer-blocked':
    'Slow drains, then sewage at the clean-out or indoors; no lamp, since the tanks are ordinary. A dead pump backs up too, but then the trash tank stands full.',
  'shows.kit-stale':
    'Strips hardly colour anywhere, in a unit whose feed drips and whose bleach is fresh. Filling up or feeding more comes next and burns the lawn; try the strips on water of known strength first.',
};
