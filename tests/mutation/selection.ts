/** What is run against every mutant, the quickest killers first. */
import '../control/logic.test.ts';
import '../control/rules.test.ts';
import '../control/delays.test.ts';
import '../unit/timer.test.ts';
import '../unit/panel.test.ts';
import '../control/finite.test.ts';
import '../control/remembered.test.ts';
import './walks.ts';
import { run } from './harness.ts';

process.exitCode = run();
