/** The page of the camera test: starts a scan and keeps what it was told. */
import { readImage, readWedge, startScan } from '/scan/index.js';

const told = { reads: [], states: [], others: [], typed: [] };
const scan = startScan(document.querySelector('video'), {
  onRead: (read) => told.reads.push(read),
  onState: (state) => told.states.push(state),
  onOther: (other) => told.others.push(other),
});
readWedge(document, (code) => told.typed.push(code));
Object.assign(window, { told, scan, readImage });
