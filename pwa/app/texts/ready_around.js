/** Ready criteria of what is bolted on; how lines are read stands in ready_crank.js. */
export const texts = {
  'ready.intake-manifold': `Intake manifold|intake manifolds||intake gasket, end seal
? Flange flat?|straightedge|no light|light in the middle|warped
? Free of cracks?|flanges and stubs|whole|line|crack
? Threads whole?|each hole|even|drawn out|thread
= Flatness|flatness|mm|straightedge, feeler|left, right
! |warped|cracked`,
  'ready.exhaust-manifold': `Exhaust manifold|exhaust manifolds||exhaust gasket, stud, nut, lock tab
? Free of cracks?|between the ports|whole|line|crack
? Flange flat?|straightedge|no light|light in the middle|warped
? Studs whole?|each one|even|broken, drawn|thread
= Flatness|flatness|mm|straightedge, feeler|along
! |warped, stud broken|cracked`,
  'ready.injector': `Injector|injectors||upper seal, lower seal, clip
? Tip clean?|under the lamp|clean|burnt, caked
? Pins bright?|in the plug|bright|green, bent
? Body whole?|seams|whole|cracked|crack
= Flow|flow|cm³/min|flow bench
= Coil|resistance|Ω|meter
! |wants cleaning|leaks, coil open`,
  'ready.carburettor': `Carburettor|carburettors||base gasket, linkage
? Shaft steady?|throttle, shake it|steady|loose
? Base flat?|straightedge|no light|light in the middle|warped
? Passages clean?|jets against the light|open|gum
= Float level|length|mm|rule
! |shaft loose|body cracked`,
  'ready.fuel-pump': `Fuel pump|fuel pumps||pump gasket, hose, clip
? Dry outside?|weep hole and seams|dry|wet
? Arm even?|where it rubs|even|groove|tip
= Pressure|pressure|bar|gauge
! ||weeps, arm worn`,
  'ready.spark-plug': `Spark plug|spark plugs||plug washer, lead
? Insulator whole?|inside and out|whole|cracked|crack
? Electrodes square?|under the lamp|sharp|rounded|tip
? Thread whole?|by hand|even|damaged|thread
? Tan or grey, dry?|nose|tan, dry|oily, white
= Gap|gap|mm|wire gauge
! ||cracked, worn`,
  'ready.distributor': `Distributor|distributors||hold-down, base ring, rotor, cap
? Shaft steady?|move it sideways|steady|loose
? Gear teeth even?|all round|even|worn sharp|teeth
? Cap clean?|inside, tilt it|clean|black lines|crack
= End play|clearance|mm|feeler
! |shaft loose|gear worn`,
  'ready.starter': `Starter|starters||starter bolt, shim, cable
? Pinion teeth whole?|ends of the teeth|square|chewed|teeth
? Nose whole?|round the bolts|whole|line|crack
? Turns free?|by hand|even|rough
= Free current|current|A|clamp meter
! |brushes worn|nose cracked`,
  'ready.alternator': `Alternator|alternators||bracket, spacer, belt
? Bearing quiet?|spin by hand|quiet|rumbles
? Ears whole?|mounting holes|whole|cracked|crack
? Pulley in line?|straightedge|in line|off
= Charging voltage|voltage|V|meter
! |bearing rumbles|ear broken`,
  'ready.water-pump': `Water pump|water pumps||pump gasket, pulley
? Weep hole dry?|under the shaft|dry|stained
? Shaft steady?|rock the flange|steady|loose
? Impeller whole?|vanes|even|eaten away|rust
! |seal weeps|shaft loose`,
  'ready.thermostat': `Thermostat|thermostats|once|thermostat gasket
? Closed when cold?|against the light|closed|light through
? Opens in hot water?|pot and thermometer|opens|stuck
= Opens at|temperature|°C|thermometer
! ||stuck`,
  'ready.gasket': `Gasket|gaskets|once|sealant
? The right one?|lay it on|all holes meet|hole covered
? Lies flat?|both sides|flat|kinked|warped
! ||kinked, used`,
  'ready.sensor': `Sensor|sensors||plug washer
? Thread whole?|by hand|even|damaged|thread
? Pins bright?|in the plug|bright|green
? Cable whole?|bend it gently|whole|cracked|crack
= Resistance|resistance|Ω|meter|cold, hot
! ||cable broken, no reading`,
};
