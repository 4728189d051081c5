/** Torque plus angle: what a turn of the fastener after the snug torque does. */
import { TradeError } from '../errors.js';
import { aboveZero, numbers, share, TooLarge } from './amounts.js';

const MOST_TURNS = 100;

/** A joint that would take the whole travel, so that nothing stretches the bolt. */
export class JointTakesAll extends TradeError {
  static code = 'joint-takes-all';
  static says = 'If the joint gives way by the whole travel, the bolt does not stretch.';
  static nextStep = 'Type the share of the joint as less than 1.';
}

/** @param {number} jointShare_ */
function shareOfJoint(jointShare_) {
  if (share(jointShare_, 'share of the joint') >= 1) throw new JointTakesAll();
  return jointShare_;
}

/**
 * How far the thread travels: pitch × angle/360°, shared by stretch and compression of the joint.
 * @param {number} pitchMm
 * @param {number} angleDegrees
 */
export function travel(pitchMm, angleDegrees) {
  numbers({ pitch: pitchMm, angle: angleDegrees });
  const step = aboveZero(pitchMm, 'pitch');
  const turns = aboveZero(angleDegrees, 'angle') / 360;
  if (turns > MOST_TURNS) throw new TooLarge({ what: 'angle' });
  return step * turns;
}

/**
 * What of the travel stretches the bolt, when the joint takes a share of it.
 * @param {number} pitchMm
 * @param {number} angleDegrees
 * @param {number} ofJoint
 */
export function stretchByAngle(pitchMm, angleDegrees, ofJoint) {
  return travel(pitchMm, angleDegrees) * (1 - shareOfJoint(ofJoint));
}

/**
 * The angle after snug that gives a stretch, when the joint takes a share of the travel.
 * @param {number} stretchMm
 * @param {number} pitchMm
 * @param {number} [ofJoint]
 */
export function angleByStretch(stretchMm, pitchMm, ofJoint = 0) {
  numbers({ stretch: stretchMm, pitch: pitchMm });
  const longer = aboveZero(stretchMm, 'stretch');
  const step = aboveZero(pitchMm, 'pitch');
  return (360 * longer) / (1 - shareOfJoint(ofJoint)) / step;
}

/**
 * The share of the travel that the joint takes: k_bolt/(k_bolt + k_joint), both in N/mm.
 * @param {number} boltNPerMm
 * @param {number} jointNPerMm
 */
export function jointShare(boltNPerMm, jointNPerMm) {
  numbers({ 'stiffness of the bolt': boltNPerMm, 'stiffness of the joint': jointNPerMm });
  const own = aboveZero(boltNPerMm, 'stiffness of the bolt');
  return own / (own + aboveZero(jointNPerMm, 'stiffness of the joint'));
}
