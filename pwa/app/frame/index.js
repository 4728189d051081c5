/** The pieces that screens are made of. */

export { Icon } from '../icons.js';
export { Act, Dock, Key } from './act.js';
export { demo } from './demo.js';
export { html } from './html.js';
export { say } from './live.js';
export { DemoLine, Doors, Page, Top, useArrival } from './page.js';
export { Photo, Shots } from './photo.js';
export { Scanner } from './scanner.js';
export { Sheet } from './sheet.js';
export { useAnswer, useSlice, useStore } from './store.js';
export { SyncMark } from './sync_mark.js';
export { Caution, Code, codeGroups, Panel, Source, Unsourced, Verdict } from './told.js';
export { Empty, Missing, Wait } from './wait.js';
