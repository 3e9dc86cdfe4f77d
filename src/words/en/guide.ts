/** What a guide says: why a step comes now, and what is worth a thought before it. Of the works, not of the person. */
export const guide = {
  'guide.ask-danger':
    'Sewage out, a burning smell, water in the panel, lightning or a shock: with any of them nobody goes near. So this comes before all else.',
  'guide.ask-history':
    'What happened shortly before often points at the side that failed: a storm, a mower, work at the panel, guests.',
  'guide.ask-use':
    'Much water in a few hours raises every level with nothing broken. Better known before the pump gets the blame.',
  'guide.ask-hum':
    'A compressor that hums has power; a silent one has none, or is done for. A rattle speaks for its diaphragms.',
  'guide.ask-smell': 'Where it smells tells which side falls short: outdoors the air, indoors a trap or the drains.',
  'guide.ask-drains':
    'Slow drains mean that water stands somewhere and rises. That decides how soon somebody must come.',
  'guide.ask-breakers':
    'A lever midway between on and off is evidence, and a reset wipes it out. So levers are read before they are touched.',
  'guide.guide-silence': 'Silent, the buzzer lets people talk. The lamp stays lit and goes on telling.',
  'guide.guide-reset': 'What had only latched clears for good; what still stands comes back. Once is enough to tell.',
  'guide.guide-watch':
    'A standing fault takes minutes to show again. Five with a dark lamp are needed before it counts as gone.',
  'guide.decide-close':
    'The lamp stayed dark and nothing else speaks for a fault. The follow-up sees to it that a second trip is not missed.',
  'guide.decide-visit':
    'What still stands cannot be mended by phone. How soon follows from what is at risk, the load from what is still likely.',
  'guide.make-safe': 'Sewage, wet ground near live parts, loose lids, gas, people and pets come before the first look.',
  'guide.clear-field': 'From now on any test may bring the heads up. People and pets are off the field before that.',
  'guide.open-lid':
    'What comes next lies under it. The opening is guarded as long as it is open, and closed before anyone leaves.',
  'guide.close-lid': 'Every opening is closed and fastened before anyone leaves.',
  'guide.lock-out':
    'Next a hand goes where power can come: off, lock, tag and test dead. The other circuits stay live.',
  'guide.unlock': 'The hand is out again. Whoever put the lock on takes it off.',
  'guide.breaker-on': 'With its power back the circuit can show what it does.',
  'guide.look-at-traps': 'A drain that is seldom used dries out and lets sewer smell in, with the works quite sound.',
  'guide.look-into-clean-out':
    'It parts house from tank: water standing in it is held back further down, an empty one puts the trouble in the house.',
  'guide.look-at-tees': 'Each tee is clear or packed: that tells whether the tank itself holds the water back.',
  'guide.look-at-risers': 'Clear water runs in where a riser meets its tank. A wet or stained joint shows it.',
  'guide.look-into-aeration': 'Whether it bubbles, where, and how high it stands tells air and water at one glance.',
  'guide.watch-feed':
    'A cup of water makes the feed work: what then comes tells an empty store, a clogged feed and a sound one apart.',
  'guide.look-at-disinfectant': 'Nothing is fed from an empty store. One look tells, before the feed is taken apart.',
  'guide.look-at-ultraviolet':
    'Water tells nothing by its looks. Through the shielded port the lamp is seen lit or dark, never with a bare eye.',
  'guide.look-into-pump-tank': 'The level beside the floats tells whether the pump was called, and what comes next.',
  'guide.lift-float': 'Lifted by hand a float shows whether the panel hears it, whatever the water does.',
  'guide.look-at-splices':
    'Splices and cord lie between panel and pump. Bare copper and corrosion are seen, not measured.',
  'guide.filter-pressures':
    'A pressure before the filter and one behind it tell whether the filter holds the flow back, or the pump gives little.',
  'guide.open-disc-filter': 'The discs themselves show whether they hold the flow back.',
  'guide.walk-field':
    'Soft ground, a hole, one wet strip: what leaks shows itself on foot, before the pump is started.',
  'guide.read-panel': 'A lever or selector left where it should not be explains much, and is read in a minute.',
  'guide.read-timer': 'The panel’s clock beside a watch tells doses at an odd hour from doses at an odd level.',
  'guide.read-counters': 'Hours and starts tell what the pump did while nobody was there.',
  'guide.press-test': 'Test feeds lamp and buzzer by itself: what stays dark or mute here is at fault itself.',
  'guide.look-into-panel':
    'Drops, loose leads and leads that changed places show under the cover only, with everything dead.',
  'guide.advance-timer': 'A dose started by hand asks timer, relay and pump at once: what does not follow lies beyond.',
  'guide.set-timer': 'The lock kept power from the clock too, and it lost its time. Until it is set no dose starts.',
  'guide.selector-hand':
    'Hand runs the pump past its floats and its timer, to draw the water down while somebody stands by.',
  'guide.selector-off': 'In Off the pump must stand. One that runs on is fed past its selector.',
  'guide.selector-auto': 'Auto gives the pump back to its floats and timer. No other place is right to leave it in.',
  'guide.reset-panel': 'What latched meanwhile is cleared, so that a lamp from now on means something new.',
  'guide.pump-volts':
    'Volts at the pump’s terminals part the two sides: without them the panel holds back, with them the pump does.',
  'guide.winding-ohms': 'An open winding never runs again, a whole one puts the fault elsewhere. It is measured dead.',
  'guide.amps-in-hand':
    'The current tells what the motor does: none, its own, or several times that while it stands still.',
  'guide.test-capacitor': 'A weak capacitor and a seized pump hum alike. The meter tells them apart.',
  'guide.insulation-test':
    'A lever that trips again has a path to ground. The insulation tells whether it lies in this circuit.',
  'guide.compressor-volts': 'With voltage at its outlet a silent compressor is done for; without it the supply is.',
  'guide.listen-compressor':
    'Silence, a light hum, an even one, a rattle: the ear parts power, line and diaphragms in half a minute.',
  'guide.feel-compressor': 'A hot case works against something: a clogged filter, a line that holds back, or the sun.',
  'guide.look-at-outlet': 'Plug and outlet stand between a breaker that is on and a compressor that is silent.',
  'guide.look-at-intake-filter':
    'A clogged filter takes the air away before the compressor, and costs two minutes to see.',
  'guide.follow-air-line': 'The eye finds a split, a loose end or a pinch, before anything is taken apart.',
  'guide.tee-pressure':
    'Low at the tee, the air is lost or never made; high, something holds it back. One gauge halves the list.',
  'guide.dead-head-compressor':
    'Shut off from the line the compressor shows what it can do by itself: pump bad, or line bad.',
  'guide.soap-air-line': 'Soap foams where a leak is too small to be seen.',
  'guide.test-air-switch':
    'The pressure at which the switch turns, held against its label, tells a bad switch from bad air.',
  'guide.open-air-switch': 'Water in its tube and insects in its contacts are seen only with the case open.',
  'guide.state-cause': 'Named before it is mended, with the notes that show it: so the mend is no guess.',
  'guide.drawing-down':
    'Drawing the water down takes time. At the panel it shows at once if something trips meanwhile.',
  'guide.proof': 'A cure counts once it has been shown after the mend: {proof}.',
  'guide.write-record': 'The next person on this lot knows only what stands in the record, and so does the permit.',
  'guide.tell-household':
    'The household is there when the lamp comes next: it needs to know what it means, and what to leave shut.',
  'guide.leave-site': 'Mended, shown, closed, on, in Auto and written down: nothing is left to do here.',
  'guide.kind.look': 'A look or a listen costs little and often settles much.',
  'guide.kind.measure': 'A reading tells what the senses cannot.',
  'guide.kind.operate': 'Worked by hand, it shows whether the works answer.',
  'guide.kind.mend': 'The cause is named and shown. This ends it; nothing else is renewed.',
  'guide.kind.say': 'Said now, it spares people and works until somebody comes.',
  'guide.think.look': 'A thought first: which causes would look or sound different here?',
  'guide.think.measure': 'A thought first: which reading would speak for which cause?',
  'guide.think.operate': 'A thought first: what would each cause that is still open let happen here?',
};
