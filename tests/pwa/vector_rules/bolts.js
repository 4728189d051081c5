// Shared cases of bolts: units, what people type, threads, torque, preload and stretch.
import * as amounts from '../../../pwa/trade/amounts.js';
import * as strength from '../../../pwa/trade/strength.js';
import * as thread from '../../../pwa/trade/thread.js';
import { parse } from '../../../pwa/trade/thread_text.js';
import * as torque from '../../../pwa/trade/torque.js';
import * as typed from '../../../pwa/trade/typed.js';
import * as unitSpelled from '../../../pwa/trade/unit_spelled.js';
import * as units from '../../../pwa/trade/units.js';

const measured = (given) => given && units.measured(given.value, given.unit);

function read(given) {
  const { text, value, unit, number } = typed.read(given.typed, given.wanted, {
    unit: given.unit,
    decimalSign: given.decimal_sign,
  });
  return { text, value, unit, number };
}

export const rules = {
  'units.convert': (g) => units.convert(g.value, g.unit, g.to),
  'units.shown': (g) => units.shown(measured(g.measured), g.to),
  'units.compare': (g) => units.compare(measured(g.one), measured(g.other)),
  'units.parse_number': (g) =>
    units.parseNumber(g.typed, { oneDecimalKey: g.one_decimal_key, signed: g.signed }),
  'units.quantity_of': (g) => units.quantityOf(g.unit),
  'torque.deviation': (g) => torque.deviation(measured(g.reading), measured(g.target)),
  'torque.against': (g) => torque.against(measured(g.reading), measured(g.target), g.permitted),
  'torque.asks_unit': (g) => torque.asksUnit(measured(g.reading), measured(g.target)),
  'torque.out_of_reason': (g) => torque.outOfReason(measured(g.reading), measured(g.target)),
  'amounts.finite': (g) => amounts.finite(g.number, 'bore'),
  'amounts.above_zero': (g) => amounts.aboveZero(g.number, 'bore'),
  'amounts.not_below_zero': (g) => amounts.notBelowZero(g.number, 'bore'),
  'amounts.share': (g) => amounts.share(g.number, 'bore'),
  'amounts.count': (g) => amounts.count(g.number, 'bore', g.least),
  'units.convert_difference': (g) => units.convertDifference(g.value, g.unit, g.to),
  'units.rounded': (g) => units.rounded(g.amount, g.decimals),
  'typed.read': read,
  'thread_text.parse': (g) => parse(g.designation),
  'thread.sizes': (g) => thread.sizes(parse(g.designation)),
  'thread.stress_area_mm2': (g) => thread.stressAreaMm2(parse(g.designation), g.formula),
  'strength.class_of': (g) => strength.classOf(g.typed, g.standard),
  'strength.stresses': (g) => strength.stresses(g.property_class, g.diameter_mm),
  'strength.loads': (g) => strength.loads(parse(g.designation), g.property_class),
  'unit_spelled.unit_word': (g) => unitSpelled.unitWord(g.typed, g.wanted),
};
