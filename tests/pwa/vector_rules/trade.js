// Shared cases of trade: named facts to the rule and back to plain JSON.
import * as label from '../../../pwa/trade/label.js';
import * as sequence from '../../../pwa/trade/sequence.js';
import * as units from '../../../pwa/trade/units.js';
import * as wrench from '../../../pwa/trade/wrench.js';

const measured = (given) => given && units.measured(given.value, given.unit);

function fault({ typed }) {
  try {
    return { code: label.parse(typed) };
  } catch (refused) {
    return { code: refused.code, says: refused.says };
  }
}

export const rules = {
  'label.parse': (g) => label.parse(g.typed),
  'label.fault': fault,
  'label.check': (g) => label.check(g.seven),
  'label.value': (g) => label.value(g.sign),
  'label.code_from_text': (g) => label.codeFromText(g.text),
  'label.grouped': (g) => label.grouped(g.code),
  'sequence.order': (g) => sequence.order(g.pattern, g.count, g.rows),
  'sequence.loosening': (g) => sequence.loosening(g.tightening),
  'sequence.positions': (g) => sequence.positions(g.pattern, g.count, g.rows),
  'wrench.permitted': (g) => wrench.permitted(measured(g.most), g.own),
  'wrench.fit': (g) => wrench.fit(measured(g.wanted), measured(g.least), measured(g.most)),
  'wrench.in_range': (g) => wrench.inRange(measured(g.wanted), measured(g.least), measured(g.most)),
  'wrench.deviation': (g) => wrench.deviation(g.indicated, g.reference),
  'wrench.applied': (g) => wrench.applied(g.setting, g.share),
  'wrench.settable': (g) => wrench.settable(g.wanted, g.graduation),
  'wrench.days_since': (g) => wrench.daysSince(g.calibrated, g.today),
};
