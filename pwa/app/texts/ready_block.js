/** Ready criteria of block, oil, timing and fasteners; how lines are read stands in ready_crank.js. */
export const texts = {
  'ready.block-bore': `Block bore|block bores||piston, piston ring set
? Free of a ridge?|top, a nail upwards|even|nail catches|ridge
? Walls smooth?|thrust sides|cross-hatch|long scores|scored
? Free of rust pits?|whole wall|smooth|pits|rust
? Free of cracks?|top and bottom|whole|line|crack
= Bore|diameter|mm|bore gauge|top, middle, bottom|along, across
! |ridge, scored|cracked`,
  'ready.block-deck': `Block deck|block decks||head gasket, dowel
? Face free of rust?|round the water holes|smooth|eaten away|rust
? Free of cracks?|between the bores|whole|line|crack
? Threads whole?|each hole|even|drawn out|thread
= Flatness|flatness|mm|straightedge, feeler|along, across, diagonal
= Deck height|length|mm|depth gauge|corners
! |warped, threads drawn|cracked`,
  'ready.camshaft-bearing': `Camshaft bearing|camshaft bearings|own|camshaft
? Oil hole lined up?|light through it|open|covered
? Face smooth?|under the lamp|even|scored|scored
? Lining still grey?|in daylight|grey|copper shows|copper
= Bore|diameter|mm|bore gauge|front, rear|along, across
! ||scored, turned`,
  'ready.oil-pump': `Oil pump|oil pumps||oil pick-up, drive shaft, pump gasket
? Housing smooth?|bore and cover|smooth|nail catches|scored
? Relief valve free?|push with a rod|springs back|sticks
? Gears whole?|or rotors, each tooth|even|chipped|teeth
? Shaft steady?|move it sideways|steady|loose
= Tip clearance|clearance|mm|feeler
= End clearance|clearance|mm|feeler, straightedge
! ||scored, seized`,
  'ready.oil-pick-up': `Oil pick-up|oil pick-ups||pick-up seal, bracket bolt
? Screen clean and whole?|against the light|open|clogged, torn
? Free of cracks?|at the joint and bracket|whole|line|crack
? Tight in its bore?|twist by hand|firm|loose
= Height above the pan floor|length|mm|rule
! ||cracked, clogged`,
  'ready.oil-pan': `Oil pan|oil pans||pan gasket, drain plug, drain washer
? Rail flat?|on a flat plate|flat|bent at the holes|warped
? Drain thread whole?|plug by hand|even|drawn out|thread
? Floor even?|near the pick-up|even|dent
! |rail bent|rusted through`,
  'ready.timing-chain': `Timing chain|timing chains|own|timing gear, tensioner
? Free of slack?|held sideways|stays level|sags
? Rollers whole?|each one|even|cracked|crack
= Slack|length|mm|rule
! ||slack`,
  'ready.timing-gear': `Timing gear|timing gears|own|timing chain, key, gear bolt
? Teeth even?|look from the side|even|hooked|teeth
? Marks readable?|front face|readable|none
? Key way sharp?|inside the hub|sharp|rolled over|keyway
= Backlash|clearance|mm|dial indicator
! ||hooked, cracked`,
  'ready.head-bolt': `Head bolt|head bolts||washer, thread compound
? Thread whole?|nut runs down by hand|even|drawn out|thread
? Shank without a waist?|against a new one|even|thin place|thread
? Free of rust pits?|under the lamp|smooth|pits|rust
= Free length|length|mm|caliper
! ||necked, pitted, drawn`,
  'ready.bolt': `Bolt|bolts||washer
? Thread whole?|nut runs down by hand|even|drawn out|thread
? Head sharp?|corners|sharp|rounded
? Straight?|roll on glass|no light|light comes and goes|bent
= Length|length|mm|caliper
! rusty||drawn, rounded, bent`,
  'ready.stud': `Stud|studs||nut
? Both threads whole?|nut by hand|even|drawn out|thread
? Straight?|roll on glass|no light|light comes and goes|bent
? Free of rust pits?|under the lamp|smooth|pits|rust
= Length|length|mm|caliper
! ||drawn, bent`,
  'ready.key': `Key|keys|own|
? Edges sharp?|all four|sharp|stepped|keyway
? Fits its way snugly?|push by thumb|snug|loose
! ||stepped`,
};
