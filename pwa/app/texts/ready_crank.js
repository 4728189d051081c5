/**
 * Ready criteria of what turns: crankshaft, rods, pistons, bearings. Common practice, no source.
 *
 * A kind is lines: name | several | own place, once | goes with. Then `?` question | where to look |
 * good | not good | drawing; `=` measure | quantity | unit | instrument | positions | directions;
 * `!` reasons for spare | machine | scrap, parted by commas. A question is asked so that yes is good.
 */

/** What is written beside every ready kind. */
export const NO_SOURCE = 'common practice, no source';

export const texts = {
  'ready.crankshaft': `Crankshaft|crankshafts||main bearing shell, thrust washer, key, seal
? Journals smooth?|each, a nail across|smooth|nail catches|scored
? Free of cracks?|fillets and oil holes, with dye|whole fillet|line in the fillet|crack
? Free of blue?|journals, in daylight|grey|blue or brown
? Key way sharp?|front end, thread too|sharp edges|edge rolled over|keyway
= Main journal|diameter|mm|micrometer|front, rear|along, across
= Rod journal|diameter|mm|micrometer|front, rear|along, across
= Run-out|run-out|mm|dial indicator|middle main
! |scored, bent|cracked`,
  'ready.main-cap': `Main cap|main caps|own|main cap bolt, dowel
? Parting face flat?|both faces|even|polished spots|warped
? Number readable?|side and front|readable|none
? Free of cracks?|round the bolt holes|whole|line from a hole|crack
= Housing bore, tightened|diameter|mm|bore gauge|front, rear|upright, left, right
! |fretted|cracked`,
  'ready.connecting-rod': `Connecting rod|connecting rods|own|rod bolt, rod nut, rod bearing shell, piston pin
? Beam even?|both edges|even|nick across|crack
? Straight?|sight along it|in line|leans|bent
? Bolt seats clean?|under head and nut|flat|dug in
? Numbers match?|rod and cap, same side|match|differ
= Big end, tightened|diameter|mm|bore gauge||upright, left, right
= Small end|diameter|mm|bore gauge|front, rear|along, across
= Weight|mass|g|scale
! |big end oval, bent|nicked, cracked`,
  'ready.rod-bolt': `Rod bolt|rod bolts|own|rod nut
? Thread whole?|nut runs down by hand|even|drawn out|thread
? Shank without a waist?|against a new one|even|thin place|thread
? Free of rust pits?|under the lamp|smooth|pits|rust
= Free length|length|mm|micrometer
! ||stretched, pitted`,
  'ready.piston': `Piston|pistons|own|piston ring set, piston pin, pin lock
? Skirt smooth?|both thrust sides|fine marks|nail catches|scored
? Ring lands whole?|all the way round|sharp|broken|lands
? Free of cracks?|pin bosses and crown|whole|line at the boss|crack
? Crown smooth?|top, cleaned|smooth|eaten away|rust
= Skirt|diameter|mm|micrometer|gauge height|across the pin
= Ring groove with new ring|clearance|mm|feeler|top, second
= Weight|mass|g|scale
! scuffed lightly||land broken, cracked`,
  'ready.piston-pin': `Piston pin|piston pins|own|pin lock
? Smooth all over?|a nail along it|no step|ridge|scored
? Without blue or rust?|in daylight|bright|blue or pits|rust
= Pin|diameter|mm|micrometer|front, middle, rear|along, across
! ||ridged, blue`,
  'ready.piston-ring-set': `Piston ring set|piston ring sets|own|piston
? All rings whole?|flex gently|whole|broken|lands
? Top marks readable?|near the gap|readable|none
? Faces without scores?|outside edge|even|scored|scored
= End gap|gap|mm|feeler|lowest travel
= Side clearance|clearance|mm|feeler|top, second
! ||broken, scored`,
  'ready.main-bearing-shell': `Main bearing shell|main bearing shells|own|main bearing shell
? Grey all over?|lining, in daylight|grey|copper shows|copper
? Free of dirt?|tilt it in the light|even|specks, lines|rust
? Lug square?|back edge|square|flattened
= Wall|thickness|mm|ball micrometer|middle, edges
! even polish||copper shows, dirt in it`,
  'ready.rod-bearing-shell': `Rod bearing shell|rod bearing shells|own|rod bearing shell
? Grey all over?|lining, in daylight|grey|copper shows|copper
? Free of dirt?|tilt it in the light|even|specks, lines|rust
? Holds in its seat?|press it in|stays|falls out
= Wall|thickness|mm|ball micrometer|middle, edges
! even polish||copper shows, dirt in it`,
  'ready.vibration-damper': `Vibration damper|vibration dampers||key, damper bolt, front seal
? Rubber whole?|ring, both sides|even|cracked, bulging|crack
? Seal track smooth?|hub, a nail across|smooth|groove|scored
? Mark in place?|against top of piston 1|on the mark|has crept
? Key way sharp?|inside the hub|sharp|rolled over|keyway
= Run-out|run-out|mm|dial indicator|face
! |track grooved|rubber cracked`,
  'ready.flywheel': `Flywheel|flywheels|own|flywheel bolt, dowel
? Face without cracks?|clutch side|smooth|star of cracks|crack
? Teeth whole?|all the way round|square|chewed|teeth
? Bolt holes round?|engine side|round|oval
= Face run-out|run-out|mm|dial indicator|outer edge
= Thickness|length|mm|caliper
! |heat checks, teeth worn|cracked`,
  'ready.flexplate': `Flexplate|flexplates||flexplate bolt, spacer
? Free of cracks?|round the bolt holes|whole|line from a hole|crack
? Teeth whole?|all the way round|square|chewed|teeth
? Lies flat?|on a flat plate|flat|rocks|warped
= Run-out|run-out|mm|dial indicator|outer edge
! ||cracked, bent`,
};
