/** What Stryker runs against every mutant, quickest first. */
import '../control/rules.test.ts';
import '../control/delays.test.ts';
import '../control/finite.test.ts';
import './walks.ts';
import '../control/table.test.ts';
