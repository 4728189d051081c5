/** Ready criteria of the valve train and head; how lines are read stands in ready_crank.js. */
export const texts = {
  'ready.camshaft': `Camshaft|camshafts||camshaft bearing, lifter, key, retainer plate
? Lobes smooth?|nose of each, under the lamp|smooth|pits|rust
? Noses pointed?|beside each other|same shape|rounded off|lobe
? Journals smooth?|each, across|smooth|nail catches|scored
? Gear teeth even?|drive gear|even|hooked|teeth
= Lobe lift|lift|mm|dial indicator|each lobe
= Journal|diameter|mm|micrometer|each|along, across
= Run-out|run-out|mm|dial indicator|middle journal
! ||lobe worn, pitted`,
  'ready.flat-lifter': `Flat lifter|flat lifters|own|camshaft, pushrod
? Face crowned?|straightedge must rock|rocks|light in the middle|dished
? Face smooth?|under the lamp|smooth|flakes out|rust
? Plunger moves?|press with a pushrod|springs|stuck
= Diameter|diameter|mm|micrometer|middle|along, across
! ||face dished, pitted`,
  'ready.roller-lifter': `Roller lifter|roller lifters|own|link bar, pushrod
? Roller turns free?|by hand|even|rough
? Roller round?|all the way round|round|flat spot|dished
? Link and pin tight?|shake it|no play|loose
= Diameter|diameter|mm|micrometer|middle|along, across
= Roller play|clearance|mm|feeler
! ||roller flat, loose pin`,
  'ready.pushrod': `Pushrod|pushrods|own|lifter, rocker arm
? Ends round?|both, under the lamp|even and round|flat, with a step|ball-end
? Rolls true?|on the glass plate|no light under it|light comes and goes|bent
? Passage clear?|wire or light through it|clear|blocked
? Free of rub marks?|where it passes the head|even|bright groove|scored
= Length|length|mm|caliper
= Run-out|run-out|mm|dial indicator|middle
! lightly polished||end worn, bent, blocked`,
  'ready.rocker-arm': `Rocker arm|rocker arms|own|rocker ball, rocker shaft, rocker nut
? Tip even?|where it meets the valve|even|groove|tip
? Seat smooth?|ball seat or bush|smooth|scored|scored
? Free of cracks?|web and oil hole|whole|line in the web|crack
? Oil hole clear?|wire through it|clear|blocked
= Tip wear|depth|mm|depth gauge
= Bush|diameter|mm|bore gauge||along, across
! |tip grooved|cracked`,
  'ready.rocker-shaft': `Rocker shaft|rocker shafts||rocker stand, spacer, rocker shaft bolt
? Free of steps?|under the rockers, a nail along|even|step|scored
? Plugs tight?|both ends|tight|loose
? Oil holes clear?|each one|clear|blocked
? Straight?|roll on glass|no light|light comes and goes|bent
= Worn place|diameter|mm|micrometer|each rocker|along, across
! ||stepped, bent`,
  'ready.valve': `Valve|valves|own|valve spring, retainer, keepers, valve stem seal
? Edge whole?|round the head|even edge|burnt notch|valve-edge
? Stem straight?|roll it, watch the head|runs true|head wobbles|bent
? Tip flat?|and grooves sharp|sharp|mushroomed|tip
? Stem even?|a nail along it|even|step|scored
= Stem|diameter|mm|micrometer|top, middle, bottom|along, across
= Margin|length|mm|caliper
= Run-out|run-out|mm|dial indicator|face
! |wants grinding|burnt, bent`,
  'ready.valve-spring': `Valve spring|valve springs||retainer, keepers, spring seat
? Stands upright?|against a square, turn it|no gap|leans|spring
? Whole?|each coil|whole|broken|crack
? Free of rust pits?|under the lamp|smooth|pits|rust
= Free length|length|mm|caliper
= Load at installed height|force|N|spring scale
! ||tilted, broken, weak`,
  'ready.valve-guide': `Valve guide|valve guides|own|valve stem seal
? Holds the valve without a rock?|valve 10 mm open|steady|rocks
? Free of cracks?|both ends|whole|line|crack
= Bore|diameter|mm|small-hole gauge|top, middle, bottom|along, across
! |bell mouthed|cracked`,
  'ready.valve-seat': `Valve seat|valve seats|own|valve
? Ring of contact even?|marking blue|closed ring|broken ring
? Surface without pits?|under the lamp|smooth|eaten|rust
? Sits firm in the head?|tap it lightly|firm|moves
= Contact width|length|mm|rule
! |wants cutting|loose, burnt`,
  'ready.cylinder-head': `Cylinder head|cylinder heads||head gasket, head bolt, dowel
? Free of cracks?|between the valve seats|whole|line|crack
? Face free of rust?|round the water holes|smooth|eaten away|rust
? Threads whole?|plugs and studs|even|drawn out|thread
? Face flat?|straightedge, light behind|no light|light in the middle|warped
= Flatness|flatness|mm|straightedge, feeler|along, across, diagonal
= Chamber|volume|cm³|burette|each
= Thickness|length|mm|micrometer|corners
! |warped, guides worn|cracked`,
};
