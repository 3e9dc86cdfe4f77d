/** The picture in words, and the statement on access: what was aimed at, what works how, what does not, how to tell us. */
export const access = {
  'access.yard.lead': 'In the order the water takes, then the dry parts. It says what the picture draws, and no more.',
  'access.yard.go': '{n} {n:thing|things} to do',
  'access.title': 'Access for everybody',
  'access.aim':
    'Underlawn aims at level AA of the Web Content Accessibility Guidelines (WCAG) 2.2. Every screen is tested against it by program. No person who uses a screen reader every day has tested it yet, so we call it partly conforming.',
  'access.keys': 'By keyboard',
  'access.keys.tab': 'Everything works with Tab, Shift + Tab, arrow keys, Enter, Space and Escape.',
  'access.keys.skip': 'The first press of Tab offers a way past the bar; on a call it leads to the part at hand.',
  'access.keys.arrows':
    'The parts are one stop, and so is the picture: arrow keys go along them. So do the terminals under a meter.',
  'access.keys.space':
    'Space stops and starts the clock only where no control has the focus. There are no other single keys.',
  'access.reader': 'With a screen reader',
  'access.reader.words':
    'The yard can be had in words instead of the picture: the parts in order, what is known of each and from when.',
  'access.reader.news': 'What happens is said once. While the clock runs fast, only the newest is said.',
  'access.reader.lists': 'Wherever one points in a picture, a list beside it asks the same.',
  'access.eyes': 'For eyes and hands',
  'access.eyes.zoom': 'It can be enlarged until the window is as narrow as a phone, without moving it sideways.',
  'access.eyes.colour': 'Nothing is told by colour alone. Targets are 24 pixels wide and high or more.',
  'access.eyes.drag': 'Nothing has to be dragged: whatever can be dragged also has buttons, fields or keys.',
  'access.ears': 'For ears',
  'access.ears.captions': 'Each sound stands in words over the picture, whether it is switched on or not.',
  'access.calm': 'For calm',
  'access.calm.still': 'A button on each picture makes it still. A wish for less motion in your system is kept.',
  'access.calm.flash': 'Nothing flashes; what pulses does so less than once a second.',
  'access.calm.time':
    'The clock of a call can be stopped at any time. Drills and the exam go without a clock, and the exam takes more time whenever it is asked for.',
  'access.not': 'What is not good enough yet',
  'access.not.people': 'It was tested by program, not by people with disabilities.',
  'access.not.picture':
    'Shapes and shades of the picture, such as the colour of the water, are told only once they were read.',
  'access.not.canvas':
    'The picture itself does not follow a high-contrast mode or larger text. The words beside it do.',
  'access.not.drills':
    'A few figures of the drills are described in less detail than they are drawn, so as not to give the answer away.',
  'access.not.hum':
    'A hum that is lower or higher than usual is told in words only once it was listened to on purpose.',
  'access.tell': 'Something is in your way?',
  'access.tell.how':
    'Tell whoever gave you Underlawn or looks after this copy: on which screen, with which browser and which aid, and what you wanted to do.',
};
