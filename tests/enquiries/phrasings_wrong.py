"""What was once told wrong, of our own: corrections, what was rejected, doubted, never wanted; as ``phrasings`` says."""

SAID = (
    ("outlets.toilet", "1", (
        "There's a kitchen sink, a shower, a toilet and one outside spigot with a hose on it.",
        "Two basins, a shower, a loo and one outside hydrant for the garden.",
    )),
    ("outlets.toilet", "2", (
        "A toilet downstairs and another one upstairs.",
        "A bath, a toilet and one outside toilet.",
    )),
    ("outlets.shower", "1", (
        "There's a kitchen sink, a shower, a toilet and one outside spigot with a hose on it.",
    )),
    ("outlets.shower", "2", (
        "A shower inside and one outside.",
        "There is a shower in the barn and one in the house.",
        "We have a sink, a shower and one outdoor shower.",
    )),
    ("outlets.shower", "8", (
        "There are six showers, uh, no, eight since last year.",
    )),
    ("outlets.sink", "2", (
        "One sink inside and one outside sink.",
        "A sink in the kitchen and one in the bathroom.",
    )),
    ("outlets.sink", "9", (
        "Eight sinks, my mistake, nine sinks.",
    )),
    ("outlets.hose", "1", (
        "There's a toilet and one outside spigot with a hose on it.",
        "A standpipe with a hose on it, and a sink.",
        "An outdoor tap with a garden hose attached.",
        "The garden tap has its hose. One shower.",
    )),
    ("outlets.hose", "2", (
        "Two spigots with hoses on them and one sink.",
    )),
    ("animals.cattle", "72", (
        "We've got about sixty head of beef cattle, ah no, make that seventy-two since the sale.",
    )),
    ("animals.cattle", "14", (
        "Twelve cows, or rather fourteen, on the hill.",
    )),
    ("animals.goats", "55", (
        "Forty ewes, hang on, make that fifty-two, and three rams.",
    )),
    ("animals.hens", "35", (
        "Thirty hens, erm, no, thirty-five now.",
    )),
    ("use.people", "7", (
        "Five people, scratch that, seven live here.",
    )),
    ("outlets.shower.together", "5", (
        "I run a campsite, twelve showers, eight toilets, ten basins, five of the showers run at once.",
    )),
    ("outlets.shower.together", "2", (
        "Two showers, three sinks, at worst two of the showers are on together.",
    )),
    ("power.source", "grid", (
        "The pump is on the mains. A well.",
        "Everything here is on the mains. A well.",
        "A small pump in the cellar, which sucks up 4 m of water and is on the mains.",
    )),
    ("power.source", "sun", (
        "It is fed by the generator, no sorry, by panels.",
        "Power is from the grid, correction, from panels.",
    )),
    ("well.static", "88 ft", (
        "Well: static 88 ft, pumping level 132 ft.",
    )),
    ("water.level", "-31 m", (
        "Borehole: standing level 31 m, pump at 50 m.",
    )),
    ("water.level", "-23 m", (
        "The bore is 48 m deep, water at 19 m, no wait, 19 was last winter, it's 23 m now.",
    )),
    ("water.level", "-5.5 m", (
        "Cistern 2,600 gal, top of water -3 m, lowest -5.5 m relative to the pump.",
    )),
    ("tank.volume", "5000 L", (
        "The tank on the hill holds 3000 L, wait, 3000 was the old one, it is 5000 L.",
    )),
    ("pump.height", "-36 m", (
        "The pump hangs at 30 m, wait, 30 m was before we lowered it, it is at 36 m now.",
    )),
    ("water.yield", "7 L/min", (
        "Spring gives 12 L/min, hang on, 12 was in May, it's 7 L/min now.",
    )),
    ("water.kind", "well", (
        "Dam is dry so back to the bore.",
        "The creek has dried up, so we drilled a well.",
        "The creek is polluted so the bore it is.",
        "We pump from the river, no wait, from the well.",
    )),
    ("water.kind", "stream", (
        "The well ran dry, so we carry from the river.",
        "The spring is too weak, so we draw from the lake.",
        "The old well is dry. We use the creek.",
        "Our creek goes dry in August.",
        "Water is from a stock tank no sorry from the stream.",
    )),
    ("water.kind", "spring", (
        "It comes out of the pond, sorry, out of the spring.",
        "Water's from a well, correction, a spring.",
    )),
    ("pump.placement", "in", (
        "The pump is in the shed, no wait, in the well.",
    )),
    ("pump.placement", "out", (
        "We have a submersible, sorry, a jet pump.",
    )),
    ("pump.present", "no", (
        "There is a spring house. There is no pump that I have ever seen.",
        "They have no pump at the moment, they carry buckets from the stream.",
    )),
    ("way.climb", "-70 m", (
        "From the spring box a gravity main of 1.4 km runs down to the village, which lies 70 m lower.",
    )),
    ("way.pipe", "63 mm PE", (
        "Between the borehole and the house it makes 650 metres of PEHD pipe of 63 mm.",
    )),
    ("suction.pipe", "1 1/4 in PE", (
        "Suction lift 21 ft, pipe straight down the well is 1 1/4 poly. Pump is in the well house.",
    )),
    ("power.source", "sun", (
        "I've only got the sun. A creek.", "So it shall be the sun. A well.", "The sun must make the current. A spring.",
    )),
    ("power.source", "none", (
        "There isn't any pump or power up there.",
    )),
    ("tank.volume", "50000 L", (
        "Up to reservoir 42 m, pipe 1100 m, 63 mm PE. Reservoir 50 000 L.",
    )),
    ("water.level", "-6 m", (
        "River 6 m under pump. Suction 10 m, 2 inch hose.",
    )),
    ("way.climb", "28 m", (
        "From the spring until the house it goes 28 m upwards.", "Lift is 28 m from the stream to the garden.",
        "Well 55 m, pump 48 m. House +28 m, 75 m away.",
    )),
    ("outlets.hose.together", "2", (
        "Pressure is gone when two hoses run.", "Four hoses, never more than two running.",
    )),
)  # fmt: skip
NOT_SAID = (
    ("outlets.hose", (
        "The hose is three hundred feet of two inch lay flat. From the stream.",
        "A hose runs 80 m from the spring to the garden.",
        "The hose goes up the hill to the barn. One sink.",
        "We laid a hose from the creek to the house, 60 m.",
        "She never liked a hose.",
    )),
    ("outlets.washer", (
        "I have one sink and I have never wanted a washing machine.",
        "We never owned a washer.",
        "We decided against a washing machine. One sink.",
        "We gave the washing machine away. Two sinks.",
        "It feeds the washing machine, no sorry, the shower.",
    )),
    ("outlets.toilet", (
        "We never needed a toilet indoors.",
        "Two more toilets were talked about and dropped.",
    )),
    ("outlets.shower", (
        "I never saw the need for a shower. One sink.",
        "A second shower was discussed but we decided against it.",
        "I have no wish for a shower. One sink.",
    )),
    ("outlets.sink.together", (
        "Four toilets and six sinks, and two of the guests shower at once.",
        "We have twelve showers, ten basins, five of the showers run at once.",
    )),
    ("outlets.shower.together", (
        "Three of the cabins shower at once. Six showers.",
        "Two pumps, three showers. Both of the pumps run at once.",
    )),
    ("use.troughs", (
        "Water is from a stock tank no sorry from the stream.",
    )),
    ("power.source", (
        "The toilets run off the cistern, the shower is on the mains.",
        "The kitchen tap stays on the mains.",
        "Toilets are on the mains. The rainwater tank is for the garden.",
        "Solar was looked into and turned down.",
    )),
    ("pump.count", (
        "Two pumps in parallel were considered but rejected. A well.",
        "Three pumps in parallel had been ruled out. A well.",
        "We ruled out two pumps in parallel.",
    )),
    ("tank.volume", (
        "A 5000 L tank on the hill was looked at and turned down.",
        "A windmill and a 2000 L tank were proposed, but both were declined.",
    )),
    ("pressure_tank.volume", (
        "A pressure tank of 80 litres was proposed and rejected.",
    )),
    ("power.panel", (
        "A 300 W panel was priced but found too dear. We have a generator.",
    )),
    ("way.length", (
        "He has the pipe as 150 m, but I paced it at 190 m, and I trust neither. A spring.",
    )),
    ("way.climb", (
        "My son makes it 20 m up to the house, the map 35 m, and I don't trust either.",
    )),
    ("well.depth", (
        "The log says 60 ft deep and my string says 48 ft, I believe neither. A well.",
        "Well: static 88 ft, pumping level 132 ft.",
        "Borehole: resting 18 m, pump 30 m.",
        "We've never had a well deeper than 30 m around here. A spring.",
    )),
    ("pump.present", (
        "He never had a pump with more than 3 bar. A spring.",
        "We never had a pump that lasted. A well.",
        "We have no pump like that. A well.",
    )),
    ("pump.set", (
        "He never had a pump with more than 3 bar.",
        "We turned down a pump of 4 bar.",
    )),
    ("water.yield", (
        "Cavitation noise above 9 gpm. The well is 40 ft deep.",
        "It starts to whine past 30 L/min. A well.",
        "Above 20 L/min the pipe hums. We have a spring.",
        "The spring gives 8 or 11 L/min, I do not trust either number.",
    )),
    ("pressure_tank.precharge", (
        "Water heater 80 gal, expansion tank 4.5 gal precharged to 60 psi.",
    )),
    ("way.pipe", (
        "Pipe straight down the well is 1 1/4 poly. Pump is in the well house.",
    )),
    ("power.source", (
        "The sun must be hot there.", "We sit in the sun.",
    )),
    ("outlets.hose.together", (
        "When two hoses run out of water we stop. One shower.",
    )),
)  # fmt: skip
