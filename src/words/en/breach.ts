/** Life-safety steps that were skipped: what happened, what the rule is, and whose word comes first. */
export const breach = {
  'breach.danger-not-asked':
    'A hand was sent to the panel before danger was asked about. Sewage out, a burning smell, water in the panel, lightning or a shock mean: touch nothing, keep away, visit now. Danger is asked first on every call. Local code, the maker’s instructions and licensed practice come before anything here.',
  'breach.householder-opens-panel':
    'A householder was told to open the panel. Behind a screwed cover parts stay live, even with every lever off. A householder works handles and buttons, with dry hands on dry ground; the rest belongs to licensed practice, under local code and the maker’s instructions.',
  'breach.householder-opens-tank':
    'A householder was told to open a tank. The gas below kills without warning, and an open riser is deep water a child can fall into. A householder never lifts a lid; opening belongs to licensed practice, under local code and the maker’s instructions.',
  'breach.site-not-made-safe':
    'Work began before the site was made safe. Sewage, wet ground near live parts, loose lids, gas and animals are looked for first, people and pets kept back, gloves and eye protection on. Local code, the maker’s instructions and licensed practice come before anything here.',
  'breach.not-locked-out':
    'A hand went in while the circuit was not locked out. A lever pushed off is not dead: off, lock, tag, prove the tester, test dead, prove it again. Other circuits stay live, and a capacitor keeps its charge. Local code, the maker’s instructions and licensed practice come first.',
  'breach.lid-left-open':
    'The site was left with a lid off. An open riser is gas and deep water in a yard where children play. Every opening is guarded while open, and closed and fastened before anyone leaves. Local code, the maker’s instructions and licensed practice come before anything here.',
  'breach.chlorine-mixed':
    'Fresh tablets went onto pool tablets. Calcium hypochlorite and trichlor together can explode and give off chlorine gas. The label is read first; the wrong kind comes out dry, with gloves, eye protection and fresh air, and stays apart. Local code, the maker’s instructions and licensed practice come first.',
};
