/** What a debrief comes back to: what happened, what it means, the next useful question. At most 60 words each. */
export const flags = {
  'flag.reset-before-reading':
    'The panel was reset before its levers were read. A tripped lever is evidence, and a reset wipes it out: which circuit had opened can no longer be told. What would the three levers have shown?',
  'flag.reset-twice':
    'The panel was reset a second time by phone. One reset and five minutes had already told whether the cause still stands; another adds nothing and may feed a short. What did the lamp do after the first?',
  'flag.closed-unwatched':
    'The call was closed without five minutes of watching after a reset. Low air takes a minute of delay and the run-up to show, so a dark lamp meant little yet. What could the lamp still have done?',
  'flag.closed-needing-visit':
    'The call was closed by phone while a cause stood that no phone call mends. Until somebody comes, treatment or dosing stays at risk. Which answer on the phone spoke for a visit?',
  'flag.no-follow-up':
    'The close lacks a call tomorrow, the counted trip, or a visit at the next one. An unexplained trip is harmless only if it stays alone. How would a second one within 30 days come to light?',
  'flag.wrong-urgency':
    'The visit was set for another time than the answers called for. Danger or sewage out means now; treatment or dosing lost means before tonight’s dosing; the rest can wait. Which of the three did the answers describe?',
  'flag.needless-visit':
    'A visit was sent for an alarm that one reset clears and five minutes of watching confirm. The drive tells nothing more, and another call waits for it. Which sign would have made the visit necessary?',
  'flag.part-not-on-truck':
    'A part had to be fetched because it was not on the truck. While somebody drove, the cause went on working. Which answer on the phone pointed to this part?',
  'flag.part-not-needed':
    'A repair found nothing of its kind to mend. Time and part are spent, and the readings that led there still want an explanation. Which check tells this part from its neighbours?',
  'flag.no-suspect':
    'A repair began with no suspect ticked and no cause stated. A mend without a suspect cannot be tested: whatever follows fits it. Which causes did the readings still allow at that moment?',
  'flag.repeated-check':
    'The same check was made twice running, with nothing changed in between. The second reading can only repeat the first, within the instrument’s scatter. Which other check would have split what was left?',
  'flag.cause-after-mend':
    'The repair came before the cause was stated. A mend takes evidence with it, so what had been wrong then rests on memory. Which reading showed the cause while it still stood?',
  'flag.wrong-cause':
    'The cause stated is not what was wrong, or not the whole of it. At least one reading does not follow from it. Which reading would have come out otherwise if it were the whole cause?',
  'flag.unverified-close':
    'The visit ended before the cure was proved. After the last mend some part of the cycle was never seen working, and a fault can stand behind a dark lamp. Which proof was still missing?',
  'flag.left-unready':
    'The unit was left unable to run by itself: a breaker off, the selector out of Auto, a lock still on, or the lamp lit. Air or the next dose depends on it. What does a last look at the panel take in?',
  'flag.record-short':
    'The record lacks lines. The permit and the next technician need findings, readings, mend, parts, proof, how the unit was left, and what comes next. Which of these can nobody find out afterwards?',
  'flag.household-not-told':
    'The household did not hear all it needs: what was wrong, what the alarm means, that lids stay shut. They meet the next alarm alone. What should happen in its first five minutes?',
  'flag.told-to-open':
    'The household was told to open a lid and look next time. Gas and deep water lie under it, and neither gives a warning. What can be seen, heard and told by phone with every lid closed?',
  'flag.sprayed-uncleared':
    'The pump ran before the spray field had been cleared. Heads come up without warning, and people or pets may stand in the water. Which actions can start the pump, and what belongs before each?',
  'flag.over-limit':
    'The call went over its limit of time or money. The time line shows each step’s cost beside what it could tell. Which step cost most, and which cheaper check would have told the same?',
  'flag.label-unsigned':
    'The label inside the panel was left without name and date. Whoever opens that door next sees no visit. Where would the next person look for it?',
};
