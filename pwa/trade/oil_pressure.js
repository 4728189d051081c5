/** Oil pressure against speed and temperature; only the owner's limits judge. */
import { TradeError } from '../errors.js';
import { finite, notBelowZero } from './amounts.js';

const HAIR = 1e-9;

/** A least above a most. */
export class LimitsCrossed extends TradeError {
  static code = 'oil-limits-crossed';
  static says = 'The least pressure is above the most.';
  static nextStep = 'Look which is which, and type both again.';
}

/** Two limits for one speed. */
export class LimitDoubled extends TradeError {
  static code = 'oil-limit-doubled';
  static says = 'There are two limits for {speed} 1/min.';
  static nextStep = 'Leave one out.';
}

/**
 * The owner's limits at one speed, from the manual.
 * @typedef {object} OilLimit
 * @property {number} speedPerMin
 * @property {number | null} [leastKPa]
 * @property {number | null} [mostKPa]
 */

/**
 * Where oil pressure lies against the owner's limits: "inside", "below", "above" or why not.
 * Between two speeds the limits run straight; outside them there is none: "no-limit". Colder than
 * warmFromC nothing is judged: "too-cold"; so too where the temperature is not known.
 * @param {number} pressureKPa
 * @param {number} speedPerMin
 * @param {readonly OilLimit[]} limits
 * @param {number | null} [temperatureC]
 * @param {number | null} [warmFromC]
 */
export function judge(pressureKPa, speedPerMin, limits, temperatureC = null, warmFromC = null) {
  const found = notBelowZero(pressureKPa, 'pressure');
  const turning = notBelowZero(speedPerMin, 'speed');
  const rows = limits.map(row).sort((a, b) => a.speed - b.speed);
  refuseDoubled(rows.map((each) => each.speed));
  if (tooCold(temperatureC, warmFromC)) return 'too-cold';
  const least = along(rows, turning, 'least');
  const most = along(rows, turning, 'most');
  if (least === null && most === null) return 'no-limit';
  if (least !== null && found < least - HAIR * least) return 'below';
  return most !== null && found > most + HAIR * most ? 'above' : 'inside';
}

/**
 * @param {number | null} temperature
 * @param {number | null} warm
 */
function tooCold(temperature, warm) {
  if (warm === null) return false;
  return temperature === null || finite(temperature, 'amount') < finite(warm, 'amount') - HAIR;
}

/** @typedef {{speed: number, least: number | null, most: number | null}} Row */

/**
 * @param {OilLimit} limit
 * @returns {Row}
 */
function row({ speedPerMin, leastKPa = null, mostKPa = null }) {
  const least = leastKPa === null ? null : notBelowZero(leastKPa, 'limit');
  const most = mostKPa === null ? null : notBelowZero(mostKPa, 'limit');
  if (least !== null && most !== null && least > most) throw new LimitsCrossed();
  return { speed: notBelowZero(speedPerMin, 'speed'), least, most };
}

/** @param {readonly number[]} speeds in order */
function refuseDoubled(speeds) {
  const again = speeds.find((each, i) => each === speeds[i + 1]);
  if (again !== undefined) throw new LimitDoubled({ speed: again });
}

/**
 * The limit at a speed, straight between the two beside it that have one.
 * @param {readonly Row[]} rows
 * @param {number} speed
 * @param {'least' | 'most'} end
 */
function along(rows, speed, end) {
  const known = rows.flatMap((each) => {
    const size = each[end];
    return size === null ? [] : [{ speed: each.speed, size }];
  });
  const at = known.find((each) => each.speed === speed);
  if (at) return at.size;
  const next = known.findIndex((each) => each.speed > speed);
  const [low, high] = [known[next - 1], known[next]];
  if (!low || !high) return null;
  return low.size + ((high.size - low.size) * (speed - low.speed)) / (high.speed - low.speed);
}
