// Shared cases of trade: named facts to the rule and back to plain JSON.
import * as label from '../../../pwa/trade/label.js';

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
};
