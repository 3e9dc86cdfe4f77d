/**
 * What SCORM 1.2 lets an element be set to (Run-Time Environment 1.2, section 3.4.4 and its data types), written out strictly:
 * the host software takes longer and other values for the sake of old content. Sections from memory of the standard.
 */
const ASCII = (most: number) => new RegExp(`^[\\x20-\\x7e]{0,${most}}$`);
const IDENTIFIER = /^[\x21-\x7e]{1,255}$/;
const DECIMAL = /^-?\d{1,10}(\.\d+)?$/;
const TIMESPAN = /^\d{2,4}:[0-5]\d:[0-5]\d(\.\d{1,2})?$/;

const ELEMENTS: readonly (readonly [element: RegExp, value: RegExp, most?: number])[] = [
  [/^cmi\.core\.lesson_status$/, /^(passed|completed|failed|incomplete|browsed)$/],
  [/^cmi\.core\.score\.(raw|min|max)$/, DECIMAL, 100],
  [/^cmi\.core\.lesson_location$/, ASCII(255)],
  [/^cmi\.core\.session_time$/, TIMESPAN],
  [/^cmi\.core\.exit$/, /^(time-out|suspend|logout|)$/],
  [/^cmi\.suspend_data$/, ASCII(4096)],
  [/^cmi\.interactions\.\d+\.id$/, IDENTIFIER],
  [/^cmi\.interactions\.\d+\.type$/, /^(true-false|choice|fill-in|matching|performance|sequencing|likert|numeric)$/],
  [/^cmi\.interactions\.\d+\.correct_responses\.\d+\.pattern$/, ASCII(255)],
  [/^cmi\.interactions\.\d+\.weighting$/, DECIMAL, 100],
  [/^cmi\.interactions\.\d+\.student_response$/, ASCII(255)],
  [/^cmi\.interactions\.\d+\.result$/, /^(correct|wrong|unanticipated|neutral)$/],
  [/^cmi\.interactions\.\d+\.latency$/, TIMESPAN],
];

/** What is wrong with setting an element to a value; undefined where nothing is. */
export function wrongIn12(element: string, value: string): string | undefined {
  const known = ELEMENTS.find(([name]) => name.test(element));
  if (known === undefined) return `${element} is no element that may be set`;
  const [, form, most] = known;
  if (!form.test(value)) return `${element} may not be "${value}"`;
  if (most !== undefined && Math.abs(Number(value)) > most) return `${element} is at most ${most}, not ${value}`;
  return undefined;
}
