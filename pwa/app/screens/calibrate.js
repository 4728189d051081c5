/** A calibration of a wrench or an instrument: its day, when it is due again, what the certificate says. */
import { html } from '../frame/index.js';
import { ToolForm } from '../instruments/edit.js';

/** @param {any} props */
export const screen = (props) => html`<${ToolForm} ...${props} certificate />`;
