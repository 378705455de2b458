"""Pumps and their pressures, what drives them, what they draw from, tanks and how pipes lie, told in
more ways; and traps; as ``phrasings`` says."""

SAID = (
    (
        "pump.cut_in",
        "30 psi",
        (
            "Well pump, pressure tank. On at 30, off at 50.",
            "The pump kicks in at thirty pounds and quits at fifty.",
            "Switch settings are 30 and 50 psi.",
            "The needle on the gauge goes between 30 and 50.",
            "Off at 50 psi, back on at 30.",
            "The pump shuts off at 50 and comes back at 30.",
            "The pump stops at 50. Start is 30.",
            "Pressure tank, 30 psi in, 50 psi out.",
            "It's a jet pump, works between 30 and 50 psi.",
            "Cuts in 30, cuts out 50 psi.",
            "The pressure switch closes at 30 psi and opens at 50 psi.",
            "Our booster does 30-50 psi.",
            "The gauge climbs to 50 and the pump shuts off; at 30 it comes back.",
            "It fills to 50 psi then the pump stops, starts again at 30.",
            "The pressure range of the pump is 30 to 50 psi.",
        ),
    ),
    (
        "pump.cut_out",
        "50 psi",
        (
            "Well pump, pressure tank. On at 30, off at 50.",
            "The pump kicks in at thirty pounds and quits at fifty.",
            "50 psi switch off, 30 on, the pump cycles.",
            "Off at 50 psi, back on at 30.",
            "The pump stops at 50. Start is 30.",
            "The submersible starts at 30 psi, stops at 50 psi.",
            "The pressure switch closes at 30 psi and opens at 50 psi.",
        ),
    ),
    (
        "pump.cut_out",
        "3.25 bar",
        (
            "The pump starts at two bar and stops at three and a quarter.",
            "The pump runs on at 2 and off at 3.25 bar.",
        ),
    ),
    (
        "pump.cut_in",
        "250 kPa",
        (
            "Switch comes on at 250 and goes off at 400 kPa.",
            "Pressure pump's cutting in at 250 kPa and out at 400.",
            "Pressure switch 250/400 kPa.",
        ),
    ),
    (
        "pressure_tank.precharge",
        "1.8 bar",
        (
            "The vessel's air I set to 1.8 bar, the pump starts at 2 bar.",
            "There is an 80 litre vessel, blown up to 1.8 bar.",
            "Pressure tank of 60 L, inflated to 1.8 bar.",
        ),
    ),
    (
        "pressure_tank.precharge",
        "38 psi",
        (
            "44 gallon tank precharge 38 switch 40-60.",
            "Pressure tank 20 gal, precharged to 38 psi.",
        ),
    ),
    (
        "pump.placement",
        "in",
        (
            "Well 165 deep, static 52, pump at 145.",
            "400 ft deep, 6 in casing, pump at 380, no dry run protection.",
            "The driller hung the pump on 125 ft of drop pipe.",
            "My husband hung the pump at fifty-two feet in the well.",
            "Drilled well, 95 m deep, pump at 80 m.",
            "A borehole, pump hanging at 60.",
            "The pump sits in the spring box under water.",
            "Our pump stays under water all year.",
            "Well 260 feet, water 150, pump 230.",
            "Bore pump hung at 45 m.",
        ),
    ),
    (
        "pump.placement",
        "out",
        (
            "The pump is in the caretaker's room.",
            "The pump below my kitchen counter draws from a tank.",
            "The pump's in the old oil store, it draws from the cistern.",
            "A pressure pump in the milkhouse draws from it.",
            "Pump on the pier, lake 1.2 m below it.",
            "Centrifugal on a skid, end suction.",
            "A centrifugal by the canal, 60 gpm.",
            "The pump stands 2 m over the water surface.",
            "Two pumps stand on the ground near the canal.",
            "The pump is out of the well, beside the house.",
            "Shallow well jet on 115 V, suction 22 ft.",
            "The pump is indoors, and the suction pipe is 18 m.",
            "Pump 1,5 m over the water of the river.",
            "The machine is in the scullery, a pump of the old kind.",
        ),
    ),
    (
        "water.kind",
        "well",
        (
            "Bore pump sits at 22 m.",
            "Bore's fine, 70 L/min.",
            "source - bore, flows 1.5 L/s",
            "Drilled hole 180 ft, water at 60.",
            "Hole of 130 m, pump to 100 m.",
            "There's a burn, but we don't drink from that, we have the well above the byre.",
            "We have a creek, but nobody drinks from it, we use a drilled well.",
        ),
    ),
    (
        "water.kind",
        "cistern",
        (
            "We live off rain.",
            "Off grid, all rain. Two tanks joined.",
            "They rely on rainwater up there.",
            "Tank 46,000 litres, rain only.",
            "A 1,000 L tank underneath, filled off the roof.",
            "We collect the rain from a roof of 48 m2.",
        ),
    ),
    (
        "water.kind",
        "spring",
        (
            "My goats get their water from a little soak (call it a spring) that trickles 1.8 L/min.",
            "Spring pond is 240 vertical feet above us.",
        ),
    ),
    (
        "power.source",
        "sun",
        (
            "It is the sun that drives it.",
            "Two strings of 400 W mods.",
            "We wish to pump with sun to a tank.",
            "A single hundred amp hour battery and one panel, 160 watts.",
        ),
    ),
    (
        "power.source",
        "grid",
        (
            "Pump's a plain one in the pump house, plugged in.",
            "The pump runs off a 120/240 grid panel.",
            "Electricity comes only 6 hours.",
        ),
    ),
    ("power.source", "none", ("Want a shower and a sink, nothing electric.",)),
    ("power.source", "generator", ("No mains there; a diesel generator runs 5 hours per day.",)),
    (
        "power.strings",
        "2",
        (
            "It runs off two 100 W panels in parallel, 12 V.",
            "Solar, two 120 W panels side by side facing east.",
            "Two strings of 400 W mods on the roof.",
        ),
    ),
    (
        "power.series",
        "4",
        (
            "Solar outfit, two strings, four panels to the string.",
            "I have 2 strings with 4 panels each one, 550 Wp.",
            "Panels: four, of 420 watt, all in series.",
        ),
    ),
    (
        "power.capacity",
        "300 Ah",
        (
            "Three 100 Ah AGMs in parallel on a 12 volt system.",
            "Two 150 Ah batteries in parallel.",
        ),
    ),
    ("power.panel", "160 W", ("One panel, hundred and sixty watts.",)),
    (
        "pump.dry_run",
        "yes",
        (
            "Dry-run cut-out fitted.",
            "Protection against dry running is fitted.",
            "Pump at 280 w/ dry-run shutoff.",
        ),
    ),
    ("pump.guard", "switch", ("Diaphragm pump, own pressure switch, no relief valve.",)),
    ("pump.starts", "20", ("Motor maximum 20 starts/h.",)),
    (
        "pump.count",
        "2",
        (
            "2 identical boosters in parallel off a 3000 gal cistern.",
            "Beside it two pumps the same, side by side.",
        ),
    ),
    (
        "pump.present",
        "no",
        (
            "No pump no power, two sinks.",
            "No pump!! 30 ft of garden hose.",
            "The tank is 9 meters above, no pump exists.",
            "I have not pump and I do not want one.",
            "There has never been a pump.",
        ),
    ),
    (
        "pipes.held",
        "buried",
        (
            "Pipe 32 mm MDPE already in the trench.",
            "240 m of 32 mm MDPE under a field.",
            "50 mm poly under the meadow.",
            "Pipe of 50 mm polyethylene, 730 m, dug down below frost.",
            "2 m below the tank, then 55 m of buried 25 mm poly.",
            "The spring chamber is 31 m above the house, 900 m of 32 mm polythene buried.",
        ),
    ),
    (
        "tank.volume",
        "5000 L",
        (
            "The pump lifts it to a tank up top, 5,000 gal, no sorry litres, on the hill.",
            "It climbs 33 m to a 5000 L tank.",
            "A tank of 5000 L stands on a frame, its water 2.2 m above the beds.",
            "Lift 85 m to reservoir 5000 L.",
        ),
    ),
    (
        "store.volume",
        "22 m³",
        (
            "Rain: roof 140 m2, tank 22 m3.",
            "Off a 22 m3 break tank, two pumps.",
        ),
    ),
    (
        "store.reserve",
        "4 m³",
        (
            "The tank holds 20 m³. We keep 4 m³ in it for the fire brigade.",
            "The tank is 20 m3, keep 4 m3 always in it for fire.",
        ),
    ),
    (
        "store.fills",
        "always",
        (
            "A reservoir which is filled day and night by a spring.",
            "It trickles 1.8 L/min day and night into a 3,000 litre tank.",
        ),
    ),
    (
        "pipes.hottest",
        "45 °C",
        ("The pipe lies over the ground. In summer the pipe heats to 45 degrees.",),
    ),
    (
        "pump.npsh",
        "9 ft",
        (
            "NPSH required is 9 ft per the submittal.",
            "NPSHr 9 ft on the sheet of the pump.",
        ),
    ),
    ("pump.motor", "71 %", ("Plate on the pump: 230 V 50 Hz, eta motor 71 %.",)),
    (
        "water.kind",
        "spring",
        (
            "The neighbour draws from the creek; we have a spring.",
            "Cottage on the pond. Spring up the hill, 40 ft above the sink.",
            "The pipe crosses a stream on its way from the spring.",
            "Kids play in the creek by our spring.",
            "The stream freezes, so the spring it is.",
            "Beaver dam on the creek floods our spring.",
            "The spring gives 2 l/min in August, the stream far more, but the stream is dirty.",
            "Dam's out, we'll draw from the spring: 20 L/min.",
            "Dam is 30 m from the house, stocked with trout. Spring is our water.",
        ),
    ),
    (
        "water.kind",
        "well",
        (
            "The garden runs down to the river, but our water is from a bore.",
            "We'd love a spring but there is none, so a well it is.",
            "Source is a pond no, excuse me, a well, 2.5 m3/h.",
            "It's in the lake cabin's well at 55 ft.",
        ),
    ),
    (
        "water.kind",
        "cistern",
        ("Our pond-side cistern (2,500 gallons) is the low point of the property.",),
    ),
    (
        "water.kind",
        "stream",
        ("Spring-fed pond, pump beside it.",),
    ),
    (
        "power.source",
        "grid",
        (
            "We have solar on the roof but it is grid tied, pump is on the mains.",
            "I've been told solar is best. We have mains.",
        ),
    ),
    (
        "power.source",
        "generator",
        (
            "There is mains in the village, 2 km off. Here we have a generator.",
            "My wife says solar, I say generator.",
        ),
    ),
    (
        "tank.volume",
        "1500 L",
        ("The rainwater tank is 1500 liters and it stands 3 metres above the beds.",),
    ),
    (
        "pipes.held",
        "laid",
        ("The pipe is buried where it crosses the road, the rest lies on the ground.",),
    ),
    (
        "power.battery",
        "agm",
        ("Lithium can't be charged below freezing here, so we have AGM.",),
    ),
    (
        "suction.pipe",
        "25 mm hose",
        ("Suction hose 12 metre long 25mm.",),
    ),
    (
        "suction.pipe",
        "32 mm PE",
        ("The blue polythene suction from the well is 14 metres of 32 mm.",),
    ),
    (
        "pump.placement",
        "out",
        ("Submersible no good, the well is dug and shallow, so pump's by the well.",),
    ),
    (
        "way.pipe",
        "32 mm PE",
        ("The pipe is 280 metres of 32mm alkathine.",),
    ),
)

NOT_SAID = (
    (
        "pump.cut_in",
        (
            "The heating comes on at 15 and goes off at 22.",
            "The timer starts the pump at 8 and stops at 17.",
            "I paid $1,249 on 3/14 for this pump.",
            "The pump is on for 4 seconds, off for 30.",
            "The pump starts at 6 in the morning and stops at 22.",
        ),
    ),
    (
        "pump.cut_out",
        (
            "The pump runs off a 120/240 grid panel.",
            "The timer starts the pump at 8 and stops at 17.",
        ),
    ),
    (
        "pump.placement",
        (
            "We pump 520 m up to a tank 41 m over the pump house, the bore is 60 m deep.",
            "The pump house man says the well is good.",
            "The pump house burnt down with the pump. The well is 30 m deep.",
            "Dale across the bay has a 10 gpm sub at 140 feet.",
            "What I can read of the label: 3 m3/h at 22 m, 1.8 m3/h at 35 m.",
            "The cold comes from the pump set at 3.5 bar.",
            "The cable from the panels to the pump is 70 m. Well 40 m deep.",
            "The pipe from the pump is 290 ft of poly. We have a well.",
        ),
    ),
    (
        "water.kind",
        (
            "Want to fill the farm pond of 40 m3.",
            "The water falls to it out of a pond tank of 8 m3.",
            "He says there is a reservoir, a pond with a sheet in it.",
            "By Thursday the stream from the spout is as thin as a pencil.",
            "That's the county's pond, not ours.",
            "Drip line, bore 13.6 mm, emitters 20 cm apart.",
        ),
    ),
    (
        "power.source",
        (
            "Someone else wants solar.",
            "My wife would like to go solar.",
            "It's 225 feet of wire from the panel to the wellhead, next to the breaker panel.",
        ),
    ),
    (
        "power.panel",
        (
            "I'm running a 750 W jet pump off the genny.",
            "Line of 64 m with heating cable 10 W/m.",
        ),
    ),
    (
        "power.voltage",
        (
            "One 300 W panel 24 volt.",
            "There's one in your list that says 3.5 gpm, 60 psi shutoff, 12 volt.",
            "The last job I did had 12 V and 50 psi.",
        ),
    ),
    (
        "power.battery",
        (
            "Two golf cart batteries, no, sold those.",
            "Two gel batteries which I've already scrapped.",
        ),
    ),
    ("pump.set", ("The other pump that they lent us was of 4 bar, returned already.",)),
    ("pump.guard", ("There is a relief valve at the heater, no pressure switch of mine.",)),
    (
        "pressure_tank.volume",
        (
            "The old one was 82 gal.",
            "It's a 180 L cylinder at 65 degrees, the relief valve says 500 kPa.",
            "Hot water is a 160 L storage unit.",
            "Would one of those little pressure tanks, 2 litres or so, calm it?",
        ),
    ),
    ("store.volume", ("Scratch what I said about the 5000 gal tank and the booster.",)),
    (
        "store.reserve",
        (
            "The insurance man mentioned 10,000 gallons for fire but that's the county's pond, not ours.",
        ),
    ),
    ("store.days", ("We've had no rain for seven weeks and the spring is down to a dribble.",)),
    (
        "pipes.held",
        (
            "5 ft of 1 inch suction to a cistern, 3000 gallon, buried, pump is 7 ft above the water.",
            "Tank 5000 L (buried), 25 m above us, line 300 m of 25 mm PE.",
            "40mm poly, half of it clipped along the fence.",
            "The pipe burst under the driveway again.",
        ),
    ),
    ("tank.volume", ("The tank on the crag is 3000 litres, no, sorry, I have to look.",)),
    (
        "water.kind",
        (
            "The line goes under the creek and up to the tank.",
            "We could take from the lake or from the well, what's better?",
            "Buried except at the creek crossing.",
            "There was a well; we sealed it in 2019.",
        ),
    ),
    (
        "power.source",
        (
            "Don't want anything plugged into the house.",
            "I don't want anything plugged into the mains.",
            "We have the grid at the road but it costs too much to bring in.",
            "The generator is only for the welder.",
            "Too shady for panels.",
            "Panels are out of the question.",
            "Our solar panels only charge phones.",
            "A tank that we top up from the mains hose on the farm.",
            "Barn tank fed by mains trickle, 4 L/min.",
            "My neighbour holds 4.5 bar but he has the mains.",
            "Mains ends at the neighbour's.",
            "Four panels 400 W in the quote.",
        ),
    ),
    (
        "power.voltage",
        (
            "Panels on the roof, 96 V system... wait, that is wrong, skip the voltage.",
            "Forget the voltage I gave, 36 V, it was wrong.",
            "Two 12 V batteries in series.",
            "Panels are 36 V nominal, pump controller wants 90 to 150 V.",
            "Bank of eight 6 V 225 Ah golf cart batteries.",
        ),
    ),
    (
        "power.panel",
        (
            "How many 400 W panels do I need?",
            "I can get 300 W panels used. Is that enough?",
        ),
    ),
    (
        "power.tilt",
        (
            "Slope of the land is 20 degrees; panels flat.",
            "Panels tilt: 15 in summer, 50 in winter.",
        ),
    ),
    (
        "power.facing",
        ("The house faces west. Panels on the ground.",),
    ),
    (
        "power.battery",
        ("Batteries are three years old, 12 V. New ones will be lithium.",),
    ),
    (
        "pump.placement",
        (
            "The foot valve hangs at 20 ft.",
            "A probe hangs at 15 m.",
            "Pump at the house end of nowhere, sorry, at the cistern, 3 bar set on it.",
            "We keep a spare pump in the cellar.",
            "The pump is in a box in the garage, not installed yet.",
            "Where would the pump go, in the well or above?",
            "They told me to hang the pump in the well but I prefer the shed.",
            "The sump pump in the basement works fine.",
            "The pump was in the well, now it's in the shed.",
            "Well pump gives 8 gpm at the house by my bucket.",
        ),
    ),
    (
        "pump.works",
        (
            "A helical rotor pump is what the dealer wants to sell us.",
            "Centrifugal clutch on the mower.",
        ),
    ),
    (
        "pump.control",
        (
            "Pump with a variable speed drive costs too much.",
            "I'd like constant pressure with a VFD.",
            "The pump has no pressure switch, I turn it on by hand.",
            "We don't have a pressure tank and there isn't a pressure switch either, the pump just runs when I flip it on.",
        ),
    ),
    (
        "pump.cut_in",
        (
            "The pump starts at 6 and stops at 8.",
            "Can I set 50/70 instead of 30/50?",
        ),
    ),
    (
        "pump.cut_out",
        ("Switch on at dawn off at 10.",),
    ),
    (
        "pressure_tank.precharge",
        (
            "Precharge was 40, I let it down to 28.",
            "The regulator after the tank is at 45 psi; the switch 40/60.",
            "Precharge should be 28 psi they say.",
            "A tank pre-charged to 25 would be better they tell me.",
            "The plumber's flyer shows a 4.4 gallon one with 40 psi in it.",
            "Old precharge 2.0, now 1.4 bar.",
        ),
    ),
    (
        "pressure_tank.volume",
        (
            "The man at the shop showed me an 86 gallon pressure tank.",
            "Old tank 300 L went to scrap. Switch 2 to 3 bar.",
        ),
    ),
    (
        "store.volume",
        (
            "The tank truck is 1000 gallons and the cistern is full.",
            "The cistern filled 3000 litres in one storm.",
            "The cistern holds 3000 gallons says dad, I measured 2600.",
            "My brother-in-law swears our cistern is 1,500 gallons but I just read the plate and its less.",
        ),
    ),
    (
        "tank.volume",
        (
            "One tank is 1000 l and the other 2000 l, both on the hill.",
            "The dip tank holds 8000 l. Header tank on the hill.",
        ),
    ),
    (
        "store.days",
        ("Mate's got 200 W and a lithium. Lasts two days then flat.",),
    ),
    (
        "way.pipe",
        (
            "I have half a roll of 40 mm poly in the barn.",
            "We have leftover 25 mm pipe, is it enough?",
            "Old 1/2 inch galvanised will be torn out.",
            "Overflow pipe is 50 mm. Outlet 25 mm.",
            "The drain is 4 inch PVC.",
            "Gravel 20 mm around the pipe.",
            "The casing is 4 inch PVC.",
            "The chimney pipe is 100 mm.",
            "Insulation 50 mm on the pipe.",
            "It starts maybe 20 times an hour when the hose is on.",
            "The pipe is half buried.",
        ),
    ),
    (
        "pipes.held",
        (
            "Was buried, now dug up.",
            "The septic line is buried 2 ft.",
            "The pipe is half buried.",
        ),
    ),
)
