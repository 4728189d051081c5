/** The form of an instrument, new or changed. */
import { html } from '../frame/index.js';
import { ToolForm } from '../instruments/edit.js';

/** @param {any} props */
export const screen = (props) => html`<${ToolForm} ...${props} heading="instrument" />`;
