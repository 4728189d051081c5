/** Words of even weights: pieces of several kinds put together so that the totals agree. */
import { addTexts } from './index.js';

export const texts = {
  'even.title': 'Even weights',
  'even.kinds': 'Which kinds go together',
  'even.none': 'No kind has a weight yet.',
  'even.none.then': 'Add a measure in grams to the kind, and weigh its pieces.',
  'even.two': 'Choose two kinds at least.',
  'even.empty': 'No weighed piece of {kinds} can be taken.',
  'even.from': 'Which {kind}',
  'even.from.free': 'Those in no set',
  'even.measure': 'Which weight of the {kind}',
  'even.count': 'How many places',
  'even.taken': 'Taken: the {count} of {n} {kind} closest in weight.',
  'even.off': {
    one: '{n} of the {kind} is not weighed or may not be used.',
    other: '{n} of the {kind} are not weighed or may not be used.',
  },
  'even.keeps': {
    one: 'The set {name} keeps its other one; those used become a new set.',
    other: 'The set {name} keeps its other {n}; those used become a new set.',
  },
  'even.span': 'The totals span {span} {unit}: {low} to {high} {unit}.',
  'even.equal': 'All totals are {low} {unit}.',
  'even.proved': 'No other arrangement is more even. Worked out on this device.',
  'even.found': 'The best this device found; another one may be a little more even.',
  'even.working': 'Working it out…',
  'even.places': 'Places',
  'even.hint': 'Tap a place to see its pieces.',
  'even.hold': 'Tap two pieces that must stay together.',
  'even.held': '{name}: tap the piece it stays with.',
  'even.place': 'Place {place}: {total} {unit}',
  'even.off.from': 'take off {off} {unit}',
  'even.lightest': 'the lightest',
  'even.stays': 'stays with {name}',
  'even.keep-together': 'Keep these together',
  'even.let-go': 'Let them go',
  'even.act': 'Keep these places',
  'even.kept': { one: 'Kept: {n} place', other: 'Kept: {n} places' },
  'even.set-says': '{kinds} together: {says}',
  'even.note': 'Put at place {place} for even weights, not at its own place {own}: {why}',
};
addTexts(texts);
