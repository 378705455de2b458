"""Ways in which each fact may be said, of our own: (path, value, sentences that tell it).

A range is a pair. A sentence stands alone, so what it says must be decisive by itself.
"""

SAID = (
    ("way.length", "300 ft", (
        "I have 300 ft of pipe, 120 of it uphill, the rest on the flat. The rise is 35 ft.",
    )),
    ("way.climb", "35 ft", (
        "I have 300 ft of pipe, 120 of it uphill, the rest on the flat. The rise is 35 ft.",
        "The road is 400 ft away. The creek is 150 ft from the cabin and 35 ft down.",
    )),
    ("tank.level", "60 ft", (
        "The tank is 60 ft above the well and the house is 20 ft below the tank.",
    )),
    ("well.depth", "92 m", (
        "Borehole 92 m, pump 78 m, water 41 m. House 12 m higher, 160 m away.",
    )),
    ("pump.height", "-78 m", (
        "Borehole 92 m, pump 78 m, water 41 m. House 12 m higher, 160 m away.",
    )),
    ("water.level", "-41 m", (
        "Borehole 92 m, pump 78 m, water 41 m. House 12 m higher, 160 m away.",
    )),
    ("way.climb", "12 m", (
        "Borehole 92 m, pump 78 m, water 41 m. House 12 m higher, 160 m away.",
        "The run is 100 m (328 ft) and the climb 12 m (39 ft).",
    )),
    ("way.length", "160 m", (
        "Borehole 92 m, pump 78 m, water 41 m. House 12 m higher, 160 m away.",
    )),
    ("tank.level", "3 m", (
        "The tank stands on a 3 m tower and holds 2000 litres; under the house is another one of 5000 litres from which the pump draws.",
    )),
    ("tank.volume", "2000 L", (
        "The tank stands on a 3 m tower and holds 2000 litres; under the house is another one of 5000 litres from which the pump draws.",
        "Overhead tank 2 kL at 9 m; sump 12 kL below the car park.",
    )),
    ("way.length", "90 m", (
        "From the pump it's 90 metres to the house; a second line of 150 m goes to the trough. The house is 7 m up, trough 11 m up.",
    )),
    ("way.climb", "7 m", (
        "From the pump it's 90 metres to the house; a second line of 150 m goes to the trough. The house is 7 m up, trough 11 m up.",
        "From pump to shower head 7 m vertical (4 m slope + 3 m house).",
        "The house stands 50 m off the stream and 7 m above.",
    )),
    ("tank.volume", "20 m³", (
        "The reservoir, 20 cubic metres, sits 55 m above the river. The lodge is 15 m below the reservoir and 400 m further along.",
    )),
    ("tank.level", "55 m", (
        "The reservoir, 20 cubic metres, sits 55 m above the river. The lodge is 15 m below the reservoir and 400 m further along.",
    )),
    ("suction.length", "15 ft", (
        "Suction is 15 ft of 1-1/4 hose with a lift of 8 ft; delivery is 350 ft and rises 45 ft.",
    )),
    ("water.level", "-8 ft", (
        "Suction is 15 ft of 1-1/4 hose with a lift of 8 ft; delivery is 350 ft and rises 45 ft.",
    )),
    ("way.length", "350 ft", (
        "Suction is 15 ft of 1-1/4 hose with a lift of 8 ft; delivery is 350 ft and rises 45 ft.",
    )),
    ("way.climb", "45 ft", (
        "Suction is 15 ft of 1-1/4 hose with a lift of 8 ft; delivery is 350 ft and rises 45 ft.",
    )),
    ("tank.volume", "1500 gal", (
        "There is a 1,500 gallon tank up on the hill, 85 ft above the cabin, and a 300 gallon one at the spring.",
    )),
    ("tank.level", "85 ft", (
        "There is a 1,500 gallon tank up on the hill, 85 ft above the cabin, and a 300 gallon one at the spring.",
    )),
    ("store.volume", "300 gal", (
        "There is a 1,500 gallon tank up on the hill, 85 ft above the cabin, and a 300 gallon one at the spring.",
    )),
    ("water.yield", "3 gpm", (
        "Our well makes 3 gpm. The driller said 7 gpm when it was new.",
    )),
    ("way.length", "180 m", (
        "Total length of pipe 180 m: 40 m from the well up to the tank and 140 m down to the house.",
    )),
    ("way.length", "487 ft", (
        "It's about 500 ft to the house, to be exact 487 ft by the tape.",
    )),
    ("way.climb", "43 ft", (
        "The house is maybe 40 feet higher. I shot it with a level: 43 feet.",
    )),
    ("way.length", "100 m", (
        "The run is 100 m (328 ft) and the climb 12 m (39 ft).",
    )),
    ("well.depth", "61 m", (
        "The well is 61 m (200 ft) deep.",
    )),
    ("way.climb", "30 m", (
        "We live 200 m up a track, our well is at the bottom, 30 m below us in height. The pipe follows the track.",
    )),
    ("well.static", "38 ft", (
        "Static water level is 38 ft, after an hour of pumping it is at 72 ft.",
    )),
    ("water.level", "-72 ft", (
        "Static water level is 38 ft, after an hour of pumping it is at 72 ft.",
    )),
    ("power.shade", "20 %", (
        "Four panels on the roof. We lose about 20 % to the oak.",
        "The array is shaded by a ridge; it costs us 20 % in winter.",
        "A chimney's shadow takes maybe 20% of what the panels make.",
        "Panels on the barn lose 20 percent to trees, I would guess.",
        "Solar pump. Pines stand south of it and we are losing roughly 20 %.",
    )),
    ("tank.level", "9 ft", (
        "A 55 gallon drum on a 9 ft stand feeds my shower.",
        "The tank sits on a 9 ft tower, no pump.",
        "IBC on a platform of 9 ft, hose to the cabin, no pump.",
        "We put the barrel up on a 9 foot scaffold and it runs by gravity.",
        "My tote stands on a tower 9 ft high. Gravity only.",
    )),
    ("tank.volume", "55 gal", (
        "A 55 gallon drum on a 9 ft stand feeds my shower.",
        "55 gal barrel on the roof, no pump.",
        "I have a 55-gallon drum up on a tower.",
        "Water comes from a 55 gallon tote on stilts.",
    )),
    ("water.level", "-4 m", (
        "Well 11 m deep, water down 4 m.",
        "Jet pump at the top of the well. It is 4 m down to water.",
        "Dug well, 4 m straight down to the water, pump in the shed.",
        "The pump stands on the bank, 4 m above low water.",
        "Our pump on the shore sits about 4 m over the lowest water.",
    )),
    ("well.pumping", "36 m", (
        "The bore has water at 29 m and it pulls down to 36 m when we pump.",
        "Well: water stands at 29 m, drops to 36 m while pumping.",
        "Borehole. In the test it gave 1.4 L/s with the water at 36 m.",
        "Our well was tested: at 12 L/min the level is 36 m.",
        "In the well the level falls to 36 m when the pump runs.",
    )),
    ("well.static", "29 m", (
        "The bore: water stands at 29 m and pulls down to 36 m when we pump.",
        "Borehole 95 m deep, level at rest 29 m.",
        "Bore 80 m, at rest the water is at 29 m.",
        "Well 60 m, water level at rest 29 m, pumping level 41 m.",
    )),
    ("well.tested", "0.9 L/s", (
        "The bore pulls down to 36 m when we pump at 0.9 L/s.",
        "The well drops to 36 m while we pump 0.9 litres a second.",
        "In the test the borehole gave 0.9 L/s with the water at 63 m.",
        "Level in the bore goes to 40 m as the driller draws 0.9 L/s.",
    )),
    ("well.bore", "110 mm", (
        "Ours is a bore of 72 m, cased in 110 mm.",
        "Borehole 60 m. Casing is 110 mm inside.",
        "The well has a casing of 110 mm inside diameter.",
        "Bore, cased with 110 mm, 40 m deep.",
    )),
    ("well.bore", "1 m", (
        "The dug well is 9 m deep, ring diameter 1 m.",
        "Well 11 m deep, 1 m inside.",
        "Dug well with rings, 1 m inside, 8 m deep.",
        "The shaft's diameter is 1 m; the well is 7 m deep.",
    )),
    ("pump.height", "-22 m", (
        "Own well, pump in the well at 22 m depth.",
        "The pump hangs in the borehole at 22 m.",
        "Submersible in a borehole, set 22 m below ground.",
        "Bore pump, down the well at 22 m.",
        "A submersible, hung at 22 m, in our bore.",
    )),
    ("outlets.hose", "2", (
        "I used to have 4 hoses; I only use two now.",
        "We had four hoses, now just two.",
        "There were five hoses once, only two left.",
        "Hoses: we planned four but it will be two now.",
    )),
    ("outlets.shower", "1", (
        "We planned two showers but it will be only one now. Also a sink.",
        "There were three showers, only one left.",
        "We had two showers, now only one.",
    )),
    ("water.yield", "7 gpm", (
        "My neighbour gets 30 gpm from his well. Mine gives 7 and that is that.",
        "The seller said our well does 10 gpm but the log says 7.",
        "Next door they pump 20 gpm. Ours makes only 7.",
        "The agent promised 15 gpm from the well, however the driller's log shows 7.",
    )),
    ("drip.spacing", "1 m", (
        "Drip lines with drippers every metre, 2 L/h.",
        "Drippers 2.3 L/h each metre, pressure compensating.",
        "One dripper per metre on the drip line.",
        "Emitters at every metre along the drip line.",
    )),
    ("drip.filter", "no", (
        "Drip for the beds. Do I need a filter? There is none now.",
        "We drip tomatoes. Would a mesh filter help? I don't have one.",
        "Is a filter needed for the drippers? We haven't got one.",
        "Drip irrigation. What filter do you advise? None so far.",
    )),
    ("drip.rows", "3 ft", (
        "Drip tape on peppers, 3 ft rows.",
        "Tomatoes on drip, 3 foot rows, emitters every foot.",
        "Drip in 3 ft rows, 6 zones.",
    )),
    ("drip.pressure", "1.5 bar", (
        "The drip lines start at 1.5 bar.",
        "Drippers; the laterals begin with 1.5 bar.",
        "Drip irrigation: 2 m³/h at the garden at 1.5 bar.",
        "There's a 1.5 bar regulator before the drip tape.",
        "A 1.5 bar reducer ahead of the drip lines.",
    )),
    ("beds.area", "60 m²", (
        "60 m² of strawberries on drip.",
        "Raspberries on 60 m², drip lines.",
        "Peppers, 60 m² in all, all on drip.",
        "I drip 60 m² of vegetables.",
    )),
    ("beds.area", "0.75 acre", (
        "Three quarters of an acre, all of it on drip tape.",
        "I have 0.75 acre of lettuce on drip.",
        "We're on 3/4 acre of garden. Drip everywhere.",
    )),
    ("drip.crop", "pepper", (
        "Drip tape, peppers mostly, 6 zones.",
        "Peppers, 0.4 ha. Drip lines of 80 m.",
        "I grow peppers on drip tape.",
    )),
    ("drip.zones", "6", (
        "Peppers on drip tape, 3 ft rows, 6 zones. Can I run two zones at once?",
        "Drippers 2 L/h, 6 zones.",
        "Emitters everywhere, split in 6 zones.",
    )),
    ("pump.control", "switch", (
        "It has a switch that starts it at 2 bar and stops it at 3.5.",
        "The pump has its own switch that cuts out at 45 psi.",
        "A switch which turns the pump on at 2 bar.",
    )),
    ("pump.cut_in", "1.5 bar", (
        "The pump switches on at 1.5 bar, off at 3.",
        "Switches on 1.5 bar, off 3 bar.",
        "It turns on at 1.5 bar and off at 3 bar.",
    )),
    ("pump.cut_out", "3 bar", (
        "The pump switches on at 1.5 bar, off at 3.",
        "Switches on 1.5 bar, off 3.",
        "The pump starts at 1.5 bar, stops at 3.",
    )),
    ("pressure_tank.precharge", "1.9 bar", (
        "Pressure tank 300 L in the stable, preset 1.9 bar.",
        "The vessel was preset to 1.9 bar.",
        "Pressure switch 2 to 3.5 bar, 24 L tank at 1.9 bar.",
    )),
    ("pump.placement", "out", (
        "Rainwater cistern and the pump beside it holds 2.5 bar.",
        "Reservoir 400 m³ with the pump alongside.",
        "It is a multistage in the cellar.",
        "The centrifugal pump sits in the shed.",
    )),
    ("pipes.held", "laid", (
        "The line is strung along the ground.",
        "400 ft of poly laid on top, black.",
        "The pipe is just rolled out over the ground.",
        "One inch poly, lying on top.",
        "The hose is dragged across the ground.",
    )),
    ("power.source", "generator", (
        "The solar pump idea is off, we're running it off a generator.",
        "We dropped the solar plan; a generator runs the pump.",
        "The solar idea is dead. A generator drives it.",
        "We run a generator. My brother fixed it. He has 12 panels on his workshop.",
    )),
    ("power.source", "grid", (
        "Power is grid but goes out a lot.",
        "The power is from the grid.",
        "Electricity comes from the mains.",
    )),
    ("power.cable", "200 ft", (
        "I've strung 200 feet of 12 gauge wire down to the pump.",
        "200 ft of cable to the pump.",
        "From the panels it is 200 feet of 10 AWG wire.",
        "200 ft of copper wire from the panels to the pump.",
    )),
    ("use.people", "4", (
        "My wife and I run the place and we have two kids.",
        "My husband and I bought it last year. We have 2 children.",
        "I have a cabin with my wife and two sons.",
    )),
    ("use.people", "3", (
        "I have a small house with my wife and our baby.",
        "Dry months June to September, four in all. We are 3.",
    )),
    ("animals.dairy", "4", (
        "I milk forty goats and four Jersey cows.",
        "We milk four cows.",
        "I milk four brown cows by hand.",
    )),
    ("animals.goats", "23", (
        "22 does and a buck, all dairy goats.",
        "22 ewes and a ram.",
    )),
    ("use.troughs", "8", (
        "Eight drinking bowls with floats for the cows.",
        "8 water bowls for the horses.",
        "Eight tire tanks for the cattle.",
    )),
    ("place.altitude", "9100 ft", (
        "Cabin at Sawback, 9,100'.",
        "Hut near Sawback Pass, 9,100 ft.",
        "Our place at Sawback, 9100 feet.",
    )),
    ("way.length", "190 m", (
        "Brook below, push water up 27 m to a tank, way is 190 m.",
        "House up 23 m, way 190 m, nothing laid yet.",
        "House 5 m above the borehole, 190 m.",
        "The cabin is 12 m higher than the spring, 190 m.",
        "Push water 40 m up and 190 m over.",
    )),
    ("way.climb", "23 m", (
        "Water at 6 m, house up 23 m, way 210 m.",
        "Pipe from the well to the tent 75 mm PE, 300 m, +23 m.",
        "Club house on a lake, 23 m up the bank, 80 m of 1 inch PE.",
    )),
    ("way.climb", "-52 m", (
        "The spring line is 640 metres and arrives 52 metres lower in the house. No pump.",
        "No pump: the pipe from the spring comes out 52 m lower.",
    )),
    ("drip.dripper", "2 gph", (
        "Half an acre on drip, two-gallon-per-hour emitters.",
        "Drip, 2-gallon-per-hour drippers.",
        "Emitters are 2 gal-per-hour ones on drip line.",
    )),
    ("water.yield", "4 gpm", (
        "The spring fills a 5 gallon bucket in a minute and fifteen seconds.",
        "Spring fills a five gallon pail in one minute and 15 seconds.",
    )),
    ("water.yield", "25 L/min", (
        "I held a bucket under the spring: 20 litres were full in 48 seconds.",
        "At the spring 20 litres was caught in 48 seconds.",
    )),
    ("well.depth", "160 ft", (
        "The well isn't 200 feet, it's 160.",
        "The bore is not 200 ft, it is 160 ft.",
        "Well is 200 ft, sorry, 160.",
    )),
    ("well.drawn", "600 L", (
        "Well test: bailing 600 litres took 30 minutes, then about 9 L/min came in.",
        "We bailed out 600 L from the well in 30 minutes.",
        "The well: pumped out, it was 600 L.",
    )),
    ("well.drawn_for", "30 min", (
        "Well test: bailing 600 litres took 30 minutes, then about 9 L/min came in.",
        "After 30 minutes the pump sucks air; we pumped out 600 L from the well.",
    )),
    ("well.steady", "9 L/min", (
        "Well test: bailing 600 litres took 30 minutes, then about 9 L/min came in.",
        "We emptied the well, 600 L. Afterwards it comes back at 9 L/min.",
    )),
    ("store.volume", "12000 L", (
        "IBCs: 12 x 1000 L, a pump draws from them.",
    )),
    ("store.volume", "4000 L", (
        "Spring water collected in a 4000 L tank in the cellar. From there a pressure set.",
        "Reservoir 4000 L with the pump alongside.",
        "A 4000 L tank, the pump next to it.",
    )),
    ("hot.volume", "200 L", (
        "Well pump with VFD; water heater 200 L per tent.",
        "Boiler 200 L in each cabin.",
    )),
    ("use.each", "25 L/day", (
        "180 people at 25 litres a day, and 60 goats.",
        "We reckon 25 L per person a day.",
    )),
    ("use.daily", "85 gal/day", (
        "The greenhouse drinks 85 gallons a day, metered.",
        "We use 85 gallons a day by the meter.",
    )),
    ("pump.works", "centrifugal", (
        "One 12 volt pump with an impeller in the shed.",
        "An impeller pump in the cellar.",
    )),
    ("pump.present", "no", (
        "It runs by gravity, never had a pump.",
        "Spring above us, we never had any pump.",
    )),
    ("outlets.micro", "120", (
        "120 young pear trees, each with a micro sprinkler.",
        "120 trees, each has a microjet.",
        "120 microsprinklers in the orchard.",
    )),
    ("outlets.hose.together", "2", (
        "3 hoses, often two on together.",
        "Three hoses, two running at once.",
    )),
    ("drip.month", "jul", (
        "Drippers. ET here 5 mm a day in July.",
        "Drip; evapotranspiration is 6 mm per day in July.",
    )),
    ("rain.dry_count", "4", (
        "Roof 130 m² and cistern. Dry months June to September, four in all.",
    )),
    ("drip.hours", "3", (
        "40x60 ft garden, I drip it at night for 3 hours.",
        "We irrigate everything by drip for 3 hours.",
    )),
    ("water.temperature", "14 °C", (
        "The brook is brown after rain and 14 °C now.",
        "The creek is cold, 14 °C.",
        "Our spring is 14 °C all year.",
    )),
    ("pipes.hottest", "50 °C", (
        "Poly pipe laid on top, black and hot as hell, say 50 °C in summer.",
    )),
    ("pump.set", "2.5 bar", (
        "I'd want a pressure of 2.5 bar set on the pump.",
        "2.5 bar is set at the pump.",
    )),
    ("rain.roof", "480 ft²", (
        "Rain barrel. The roof over it is 24 x 20 feet.",
        "Cistern, fed off a roof, 24 x 20 feet.",
    )),
    ("well.bore", "5 in", (
        "Casing is 5 inch PVC and the drop pipe is 1-1/4 inch, 160 ft of it.",
    )),
    ("well.drop_pipe", "160 ft", (
        "Casing is 5 inch PVC and the drop pipe is 1-1/4 inch, 160 ft of it.",
    )),
    ("well.depth", "85 ft", (
        "The neighbours' well is 300 ft deep; ours is only 85 ft with water at 40.",
    )),
    ("water.level", "-40 ft", (
        "The neighbours' well is 300 ft deep; ours is only 85 ft with water at 40.",
    )),
    ("way.length", "150 ft", (
        "The road is 400 ft away. The creek is 150 ft from the cabin and 35 ft down.",
    )),
    ("store.volume", "5000 L", (
        "I have two tanks: 5000 L by the shed that the pump draws from, and 1000 L on the hill.",
    )),
    ("tank.volume", "1000 L", (
        "I have two tanks: 5000 L by the shed that the pump draws from, and 1000 L on the hill.",
    )),
    ("water.level", "-2 m", (
        "The pump stands 2 m above the stream and pushes up to a tank 40 m higher, 3000 L, 250 m of pipe.",
    )),
    ("tank.level", "40 m", (
        "The pump stands 2 m above the stream and pushes up to a tank 40 m higher, 3000 L, 250 m of pipe.",
    )),
    ("tank.volume", "3000 L", (
        "The pump stands 2 m above the stream and pushes up to a tank 40 m higher, 3000 L, 250 m of pipe.",
    )),
    ("way.length", "250 m", (
        "The pump stands 2 m above the stream and pushes up to a tank 40 m higher, 3000 L, 250 m of pipe.",
    )),
    ("way.length", "250 ft", (
        "Pipe goes 90 ft down the well and then 250 ft to the house.",
        "From the well it's 250 ft to the house plus 120 ft from the house to the garden.",
    )),
    ("way.length", "85 m", (
        "Frost goes down 1.2 m here, so pipe is at 1.4 m depth for all 85 m to the house.",
    )),
    ("pump.height", "-140 ft", (
        "The well pit is 5 ft deep. The well itself is 160 ft. Pump at 140 ft.",
    )),
    ("well.depth", "400 ft", (
        "They drilled 400 ft, hit water at 310 ft, and it rose to 120 ft.",
    )),
    ("water.level", "-120 ft", (
        "They drilled 400 ft, hit water at 310 ft, and it rose to 120 ft.",
    )),
    ("well.depth", "240 ft", (
        "Hit water at 180 ft, went on to 240 ft. Static now 75 ft. Pump hung at 200 ft.",
    )),
    ("water.level", "-75 ft", (
        "Hit water at 180 ft, went on to 240 ft. Static now 75 ft. Pump hung at 200 ft.",
    )),
    ("pump.height", "-200 ft", (
        "Hit water at 180 ft, went on to 240 ft. Static now 75 ft. Pump hung at 200 ft.",
    )),
    ("way.length", "800 ft", (
        "The pump could lift 200 ft but I need only 90 ft to the tank, which is 800 ft away.",
    )),
    ("pump.cut_in", "40 psi", (
        "Switch was 20/40, I turned it up to 40/60.",
    )),
    ("pump.cut_out", "60 psi", (
        "Switch was 20/40, I turned it up to 40/60.",
    )),
    ("pump.cut_in", "30 psi", (
        "The switch is set 30-50 (2 to 3.4 bar).",
    )),
    ("pump.cut_out", "50 psi", (
        "The switch is set 30-50 (2 to 3.4 bar).",
    )),
    ("water.level", "-15 m", (
        "In the well the water is to 15 m, the pump is to 25 m and the well goes to 30 m. The house is more high 6 m.",
    )),
    ("pump.height", "-25 m", (
        "In the well the water is to 15 m, the pump is to 25 m and the well goes to 30 m. The house is more high 6 m.",
    )),
    ("well.depth", "30 m", (
        "In the well the water is to 15 m, the pump is to 25 m and the well goes to 30 m. The house is more high 6 m.",
    )),
    ("way.climb", "6 m", (
        "In the well the water is to 15 m, the pump is to 25 m and the well goes to 30 m. The house is more high 6 m.",
        "It goes underground 110 m, 80 cm deep, from the shaft to the house, with 6 m of rise.",
    )),
    ("water.level", "-6 ft", (
        "The intake is 2 ft under the surface and the pump 6 ft above the surface.",
    )),
    ("water.yield", "9 gpm", (
        "Yield of the well per the driller 12 gpm, I measured 9 gpm.",
        "Yield was 15 gpm in 1988, last measured at 9 gpm this June.",
    )),
    ("way.length", "420 ft", (
        "I bought 500 ft of pipe but only 420 ft was needed to reach the house.",
    )),
    ("way.climb", "30 ft", (
        "House: 30 ft above well. Barn: 45 ft above well. House 200 ft from well. Barn 380 ft from well.",
    )),
    ("way.length", "200 ft", (
        "House: 30 ft above well. Barn: 45 ft above well. House 200 ft from well. Barn 380 ft from well.",
    )),
    ("way.length", "95 m", (
        "Sorry I said 80 m before, it's 95 m to the house. And the climb is not 10 but 13 m.",
    )),
    ("well.depth", "112 ft", (
        "I said the well's 100 ft. The log in the drawer says 112 ft, so go with that.",
    )),
    ("way.climb", "14.2 m", (
        "House is about 15 m up. More precisely 14.2 m.",
    )),
    ("way.length", "238 ft", (
        "Length: 250 ft or so. Exactly 238 ft when I paced it with the wheel.",
    )),
    ("way.climb", "25 ft", (
        "There's a 10 ft dip halfway but end to end the rise is 25 ft.",
    )),
    ("way.climb", "18 m", (
        "Net rise is 18 m, though the pipe climbs 30 m and comes back down 12.",
        "Vertical lift: 18 m from pump to house + 6 m suction.",
    )),
    ("well.depth", "48 m", (
        "Bore: dia 125, depth 48 m, SWL 11 m, pump 40 m.",
    )),
    ("well.static", "11 m", (
        "Bore: dia 125, depth 48 m, SWL 11 m, pump 40 m.",
    )),
    ("water.level", "-11 m", (
        "Bore: dia 125, depth 48 m, SWL 11 m, pump 40 m.",
    )),
    ("pump.height", "-40 m", (
        "Bore: dia 125, depth 48 m, SWL 11 m, pump 40 m.",
    )),
    ("well.bore", "8 in", (
        "It's an 8\" well, 96 ft deep; water to within 20 ft of the top.",
    )),
    ("well.depth", "96 ft", (
        "It's an 8\" well, 96 ft deep; water to within 20 ft of the top.",
    )),
    ("water.level", "-20 ft", (
        "It's an 8\" well, 96 ft deep; water to within 20 ft of the top.",
    )),
    ("well.bore", "1 m", (
        "The concrete rings are 1 m in diameter and the well is 7 m deep.",
    )),
    ("well.depth", "7 m", (
        "The concrete rings are 1 m in diameter and the well is 7 m deep.",
    )),
    ("well.depth", "11 m", (
        "We have 22 rings of half a metre, so the well's 11 m.",
    )),
    ("tank.level", "6 m", (
        "Our tower is 6 m. The tank on it takes 1500 liters.",
    )),
    ("tank.volume", "1500 L", (
        "Our tower is 6 m. The tank on it takes 1500 liters.",
    )),
    ("way.climb", "36 ft", (
        "The slope is 22 ft and then the second-floor bath is another 14, so 36 ft in all above the pump.",
    )),
    ("way.length", "375 ft", (
        "Pipe buried 4 ft deep for 375 ft.",
    )),
    ("suction.length", "20 ft", (
        "Creek to pump: 20 ft of hose, 7 ft lift. Pump to cabin: 310 ft, 52 ft of rise.",
    )),
    ("water.level", "-7 ft", (
        "Creek to pump: 20 ft of hose, 7 ft lift. Pump to cabin: 310 ft, 52 ft of rise.",
    )),
    ("way.length", "310 ft", (
        "Creek to pump: 20 ft of hose, 7 ft lift. Pump to cabin: 310 ft, 52 ft of rise.",
    )),
    ("way.climb", "52 ft", (
        "Creek to pump: 20 ft of hose, 7 ft lift. Pump to cabin: 310 ft, 52 ft of rise.",
    )),
    ("suction.length", "6 m", (
        "Suction side 6 m with 3 m height, pressure side 80 m with 14 m height.",
    )),
    ("way.length", "80 m", (
        "Suction side 6 m with 3 m height, pressure side 80 m with 14 m height.",
    )),
    ("way.climb", "14 m", (
        "Suction side 6 m with 3 m height, pressure side 80 m with 14 m height.",
    )),
    ("well.depth", "22 m", (
        "the well he is deep 22 meter, the water stay at 9 meter, the pump i put at 18 meter, for the house must go 70 meter and up 5 meter",
    )),
    ("water.level", "-9 m", (
        "the well he is deep 22 meter, the water stay at 9 meter, the pump i put at 18 meter, for the house must go 70 meter and up 5 meter",
    )),
    ("pump.height", "-18 m", (
        "the well he is deep 22 meter, the water stay at 9 meter, the pump i put at 18 meter, for the house must go 70 meter and up 5 meter",
    )),
    ("way.length", "70 m", (
        "the well he is deep 22 meter, the water stay at 9 meter, the pump i put at 18 meter, for the house must go 70 meter and up 5 meter",
    )),
    ("way.climb", "5 m", (
        "the well he is deep 22 meter, the water stay at 9 meter, the pump i put at 18 meter, for the house must go 70 meter and up 5 meter",
    )),
    ("tank.level", "14 m", (
        "Height of tank: 14 m. Height of the tank itself 1.8 m. Volume 4000 L.",
    )),
    ("tank.level", "9 m", (
        "Overhead tank 2 kL at 9 m; sump 12 kL below the car park.",
    )),
    ("store.volume", "12000 L", (
        "Overhead tank 2 kL at 9 m; sump 12 kL below the car park.",
    )),
    ("pump.height", "-24 m", (
        "The pump lowers the water from 12 m to 17 m when it runs for an hour. It hangs at 24 m.",
    )),
    ("water.level", "-17 m", (
        "The pump lowers the water from 12 m to 17 m when it runs for an hour. It hangs at 24 m.",
        "Water is struck at 24 m in these parts, ours stands at 17 m.",
    )),
    ("well.depth", "155 ft", (
        "The first 20 ft is through clay, the rest rock, 155 ft in total for the well.",
    )),
    ("pump.height", "-250 ft", (
        "It was 280 ft deep and 6 gpm when drilled, the pump is at 250 ft.",
    )),
    ("way.length", "330 ft", (
        "Length of run 330 ft (100 m), rise 26 ft (8 m), well 130 ft (40 m).",
    )),
    ("way.climb", "26 ft", (
        "Length of run 330 ft (100 m), rise 26 ft (8 m), well 130 ft (40 m).",
    )),
    ("well.depth", "130 ft", (
        "Length of run 330 ft (100 m), rise 26 ft (8 m), well 130 ft (40 m).",
    )),
    ("water.level", "-6 m", (
        "Vertical lift: 18 m from pump to house + 6 m suction.",
    )),
    ("water.level", "-7.2 m", (
        "The well was measured last August: water at 7.2 m, bottom at 11.5 m.",
    )),
    ("well.depth", "11.5 m", (
        "The well was measured last August: water at 7.2 m, bottom at 11.5 m.",
    )),
    ("well.depth", "46 ft", (
        "Bottom of well 46 ft, water surface 33 ft, foot valve 42 ft down.",
    )),
    ("water.level", "-33 ft", (
        "Bottom of well 46 ft, water surface 33 ft, foot valve 42 ft down.",
    )),
    ("well.depth", "310 ft", (
        "It's cased in 6-5/8 steel down to 62 ft and is 310 ft deep.",
        "Depth 310', static 112', pump 280', yield 4 gpm per the log.",
    )),
    ("water.level", "-112 ft", (
        "Depth 310', static 112', pump 280', yield 4 gpm per the log.",
    )),
    ("well.static", "112 ft", (
        "Depth 310', static 112', pump 280', yield 4 gpm per the log.",
    )),
    ("pump.height", "-280 ft", (
        "Depth 310', static 112', pump 280', yield 4 gpm per the log.",
    )),
    ("water.yield", "4 gpm", (
        "Depth 310', static 112', pump 280', yield 4 gpm per the log.",
    )),
    ("water.level", "-4 m", (
        "The pump house is 20 m from the river and 4 m above it; from there 300 m and 32 m up to the tank.",
    )),
    ("tank.level", "32 m", (
        "The pump house is 20 m from the river and 4 m above it; from there 300 m and 32 m up to the tank.",
    )),
    ("water.yield", "5.5 L/min", (
        "Spring yields 5.5 L/min at the box but only 4 L/min gets to the tank.",
    )),
    ("way.length", "50 m", (
        "The house stands 50 m off the stream and 7 m above.",
    )),
    ("way.length", "1000 ft", (
        "About 1000 feet of pipe, which loses 60 feet from spring to house, then the house plumbing goes up 10.",
    )),
    ("way.climb", "-60 ft", (
        "About 1000 feet of pipe, which loses 60 feet from spring to house, then the house plumbing goes up 10.",
    )),
    ("way.length", "110 m", (
        "It goes underground 110 m, 80 cm deep, from the shaft to the house, with 6 m of rise.",
    )),
    ("water.level", "-34 ft", (
        "Depth to water: 34 ft. Depth of well: 60 ft. Depth of pump: 50 ft. Depth of frost: 4 ft.",
    )),
    ("well.depth", "60 ft", (
        "Depth to water: 34 ft. Depth of well: 60 ft. Depth of pump: 50 ft. Depth of frost: 4 ft.",
    )),
    ("pump.height", "-50 ft", (
        "Depth to water: 34 ft. Depth of well: 60 ft. Depth of pump: 50 ft. Depth of frost: 4 ft.",
    )),
    ("use.people", "8", (
        "On your form I'd put 6 people, sorry, it's 8 since the in-laws moved in.",
        "We have 5 guests and 3 staff when full.",
        "Six of us plus two lodgers.",
        "Our school: 8 children, each taking 15 litres a day.",
    )),
    ("use.people", "3", (
        "Two of us plus the mother-in-law.",
        "I live in a yurt with my wife and the small daughter.",
    )),
    ("outlets.shower", "8", (
        "We have 8 chalets. Every chalet has a shower, toilet and two basins.",
        "Each room has a shower; there are 8 rooms.",
    )),
    ("outlets.sink", "1", (
        "Two sinks, well, one really, the other drains.",
        "There is one toilet, no shower yet, a kitchen sink and washing machine.",
    )),
    ("water.yield", "3 L/min", (
        "Our spring was at 12 litres a minute in May and now gives 3.",
        "The spring gave 10 L/min when we bought it, now it's 3.",
        "I put a bucket under the spring last week: 6 litres in 120 seconds.",
        "The contractor promised 5 L/min, measured were 3 L/min from the spring.",
    )),
    ("pump.dry_run", "no", ("Dry-run protection: none.",)),
    ("pump.relief", "yes", ("The pump is a jet. Relief valve: yes.",)),
    ("place.latitude", "54.2 °", ("Off-grid, 54.2 N.",)),
    ("place.altitude", "1780 m", ("Alp in summer only, 1'780 m.",)),
    ("way.pipe", "1 in poly", (
        "Pipe's 1 inch, PVC I thought but it's poly.",
        "My brother-in-law thinks 2 inch pipe is needed. I have 1 inch poly.",
    )),
    ("tank.volume", "3000 gal", (
        "It goes to two steel tanks on the ridge, 3,000 gallons between them.",
    )),
    ("animals.cattle", "39", (
        "We agist 9 horses and run 30 weaner cattle.",
    )),
    ("animals.cattle", "22", ("Steers, 22 head.",)),
    ("well.depth", "84 m", (
        "Data: one borehole, 84 m, yield 3 m³/h.",
        "A submersible in a borehole of 84 m.",
        "The well is 84 m to the bottom.",
        "A borehole was made for us, and the paper of the contractor says 84 metres deep.",
        "The hole is 84 m, lined with plastic.",
        "The bottom of the well is at 84 m.",
        "The borehole has 84 m, pump at 70 m.",
    )),
    ("well.tested", "8 gpm", (
        "Static is 88 ft in our well and it pulls down to 120 ft at 8 gpm.",
        "Casing 6 inch, static 72 ft, pumped 8 gpm for 4 hours and the level settled at 205 ft.",
        "Borehole: static 21 m, pumping level 33 m at 8 gpm.",
    )),
    ("water.level", "-6 m", (
        "The water of the well is at 4.5 m in spring but only 6 m down in August.",
        "Water of the well is at 4 metres, maximum 6 in summer.",
        "The well is 9 m deep and the water normally at 4 m, in August at 6.",
        "The water in the well stands 6 m below the yard at worst.",
    )),
    ("water.level", "1.5 m", (
        "Our spring is 1.5 m above the pump.",
    )),
    ("pump.height", "-52 m", (
        "Bore pump 1.1 kW at 52 m, bore 60 m deep.",
        "The pump is a good one. It hangs 52 m below ground.",
    )),
    ("pump.set", "3.2 bar", (
        "The pump sits in the cellar. It is set to 3.2 bar.",
        "The pump feeds the house and is adjusted to 3.2 bar.",
    )),
    ("pressure_tank.precharge", "2.8 bar", (
        "The 35 litre vessel has 2.8 bar.",
        "Tank membrane 100 litres with 2.8 bar.",
        "A bladder tank, and I put 2.8 bar in.",
    )),
    ("pump.cut_in", "1.8 bar", (
        "Vessel 24 l, switch 1,8 / 3,2 bar.",
        "The pump shuts off at 3.2 bar, comes back at 1.8 bar.",
    )),
    ("tank.level", "12 m", (
        "The pump fills a tank of 10 000 litres, 12 m above ground.",
        "Elevated tank 20 m³, bottom is 12 m high.",
    )),
    ("store.inflow", "25 L/min", (
        "A concrete tank, which gets 25 L/min from the town line.",
        "The cistern receives 25 L/min day and night.",
    )),
    ("store.reserve", "500 gal", (
        "The cistern is 2,200 gallons, I keep 500 of it for fire.",
    )),
    ("store.floor", "18 m²", (
        "Floor of the cistern 18 m².",
    )),
    ("use.leak", "0.4 L/min", (
        "At night with all taps closed the meter turns, I count 0.4 litre per minute.",
    )),
    ("use.each", "70 L/day", (
        "Twelve brothers drink from the spring, 70 litres each daily.",
        "We are 2 in family. Each drinks and washes 70 litres per day.",
    )),
    ("use.people", "5", (
        "We are 4, with my mother 5.",
        "Nine of us at Christmas, normally 5.",
        "A couple with three kids rents it.",
        "Me, my wife, my son and my parents live here.",
        "The village has 400 people but only us five use this spring.",
    )),
    ("drip.zones", "4", (
        "Drippers of 1.6 l/h, lines 60 m, 4 zones one after the other.",
    )),
    ("drip.least", "0.5 bar", (
        "Drip lines, 0.5 bar is the least they need.",
    )),
    ("drip.fed", "middle", (
        "The manifold of the drip lines is fed in the middle.",
    )),
    ("power.shade", "20 %", (
        "Panels 400 W, and a walnut tree takes a fifth of the light.",
        "Six panels, one fifth of the sun is lost in shade.",
    )),
    ("power.facing", "sw", (
        "Six panels of 275 W, south-west, thirty degrees.",
        "Array of 4 modules. Tilt 35°, facing south-west.",
    )),
    ("power.tilt", "30 °", (
        "Six panels of 275 W, south, thirty degrees.",
        "Panels tilt 30 to the south.",
    )),
    ("power.source", "sun", (
        "System: 2 strings of 3 modules.",
        "The pump runs straight from a single 200 W panel, no battery.",
    )),
    ("power.series", "4", (
        "Array is 4 panels, all in one series string.",
    )),
    ("pump.diameter", "98 mm", (
        "Submersible pump, outside diameter 98 mm.",
    )),
    ("pump.grade", "2B", (
        "Plate of the pump: tolerance class 2B.",
    )),
    ("pump.least_flow", "6 L/min", (
        "The pump wants at least 6 l/min for its cooling.",
    )),
    ("pipes.weakest", "6 bar", (
        "Weakest part in the line is PN 6.",
    )),
    ("pipes.hottest", "50 °C", (
        "The pipe of 63 mm PE lies in the sun and has 50 degrees.",
    )),
    ("pipes.held", "laid", (
        "A hose 19 mm lying loose to the cabin.",
    )),
    ("rain.roof", "96 m²", (
        "The roof of 12 x 8 m fills the cistern.",
    )),
    ("rain.dry_count", "5", (
        "Rain from the roof only. Dry months are five, from May.",
    )),
    ("store.fills", "none", (
        "The cistern is filled only by the rain of the roof.",
    )),
    ("store.fills", "always", (
        "The spring gives 6 l/min which fills it day and night.",
    )),
    ("place.altitude", "1965 m", (
        "Small hut, 1965 m, 12 beds.",
    )),
    ("water.yield", "15 L/min", (
        "The spring fills a bucket of 20 litres in 80 seconds.",
        "My neighbour's spring gives 40 L/min, ours gives 15.",
    )),
    ("animals.cattle", "25", (
        "He has 25 young stock at the spring.",
    )),
    ("use.troughs", "2", (
        "Two troughs, ball valve each.",
    )),
    ("outlets.sink", "4", (
        "2 toilets 4 sinks washer.",
    )),
    ("way.climb", "9 m", (
        "Up to the house 48 metres and 9 metres high.",
        "Up to the roof floor are 9 m.",
        "Highest tap 9 m over pump.",
    )),
    ("way.length", "48 m", (
        "Up to the house 48 metres and 9 metres high.",
        "Way to kitchen 48 m, 4 m higher.",
    )),
    ("suction.length", "60 ft", (
        'Lake intake 60 ft of 1" line, pump in the shed.',
    )),
    ("beds.area", "0.5 acre", (
        "A half acre of drip.",
    )),
    ("way.length", "150 m", (
        "The house is 150 m from the well.",
        "It is 150 m from the pump to the house.",
        "From the spring to the cabin is 150 m.",
        "From the spring to the cabin it's a 150 metre run.",
        "We ran 150 m of pipe to the house.",
        "The well lies 150 m away from the house.",
        "The distance between pump and house is 150 m.",
        "Distance well to house: 150 m",
        "Pipe run: 150 m",
        "There are 150 metres between the tank and the kitchen.",
        "The line to the barn is 150 m long.",
        "A 150 m pipe leads from the creek to the garden.",
        "150 m of 32 mm poly from the pump up to the house.",
        "The trench from the well to the house is 150 m.",
        "The cabin stands 150 m off from the spring.",
        "Our spring is about 150 m from the house.",
        "The water travels 150 m to the house.",
        "The pipe is 150 m in total.",
        "We have 150 m of 1 inch pipe between the well and the house.",
        "The pipeline covers 150 m before it reaches the house.",
        "From there it is another 150 m of pipe to the house.",
        "It would be 150 m of pipe from the well to the house.",
        "The house sits 150 m from where the pump is.",
        "The well is a good 150 m from the house.",
        "I paced the distance to the house at 150 m.",
    )),
    ("way.length", "320 ft", (
        "It's 320 ft of 1\" poly to the house.",
        "Pump to house 320 ft.",
        "The house is 320 feet away.",
        "We need to go 320 feet to reach the cabin.",
        "320' of 3/4 pipe to the barn.",
        "The run to the barn is 320 feet.",
        "Total length of the pipe is 320 ft.",
        "Length of run = 320 ft",
        "House is 320 ft across the field from the well.",
        "A 320-foot run of 1 inch PVC.",
        "The pipe goes 320 ft along the fence to the house.",
        "There's 320 ft of buried line from the wellhead to the house.",
    )),
    ("way.climb", "18 m", (
        "The house is 18 m above the well.",
        "The house is 18 m higher than the pump.",
        "The well is 18 m below the house.",
        "The spring lies 18 m lower than the house.",
        "The pump is 18 m below the level of the house.",
        "From the well to the house it rises 18 m.",
        "The climb from the pump to the house is 18 m.",
        "There is an 18 m climb from the creek to the house.",
        "The water has to be lifted 18 m from the creek to the house.",
        "Height difference between pump and house: 18 m",
        "Vertical rise from the creek to the cabin is 18 m.",
        "The cabin is 18 m uphill in elevation from the well.",
        "Elevation gain from the pump to the house is 18 m.",
        "The land rises 18 m from the pump to the house.",
        "The garden is 18 m above the creek.",
        "The trough sits 18 m above the pump.",
        "It climbs 18 m from the pump to the house.",
        "The lift from the pump to the kitchen tap is 18 m.",
        "The house stands 18 m above the pump house.",
        "The highest tap is 18 m above the pump.",
        "The creek runs 18 m below the house.",
        "We must pump 18 m uphill to the house.",
        "The cottage is 18 vertical metres above the well.",
        "The pipe climbs 18 m to the house.",
        "It is 120 m from the well to the house, with a rise of 18 m.",
        "The house is 120 m from the well and 18 m higher.",
        "The house is 120 m from the well and 18 m above it.",
        "The house is 120 m away and 18 m up from the well.",
        "The house is 120 m from the well, 18 m uphill.",
        "The house is 120 m from the well, up 18 m.",
    )),
    ("way.climb", "-25 ft", (
        "The house is 25 ft below the spring.",
        "The spring is 25 ft above the house.",
        "The spring is 25 ft higher than the house.",
        "The house lies 25 feet lower than the spring.",
        "From the spring to the house it drops 25 ft.",
        "There is a drop of 25 ft from the spring to the house.",
        "The fall from the spring to the cabin is 25 feet.",
        "We have 25 ft of fall between the spring and the house.",
        "The pipe falls 25 ft from the spring to the house.",
        "The creek intake is 25 ft above the garden.",
        "The spring comes out 25 ft up from the house in height.",
        "Spring to house: 300 ft of pipe, 25 ft of drop.",
        "The garden is 25 ft downhill in elevation from the spring.",
        "Vertical drop from spring to house: 25 ft",
        "The spring sits 25 ft above the cabin roof.",
    )),
    ("way.climb", "0 m", (
        "The house is level with the well.",
        "The house is on the same level as the pump.",
        "The house and the well are at the same height.",
        "It is flat ground between the well and the house, no climb.",
        "There is no height difference between the pump and the house.",
    )),
    ("water.level", "-9 m", (
        "The water in the well is at 9 m.",
        "The water stands 9 m below the top of the well.",
        "The water level is 9 m below ground.",
        "Static water level: 9 m",
        "The static level is 9 m down.",
        "Water is 9 m down.",
        "The water table is at 9 m.",
        "Standing water at 9 m below the surface.",
        "It's 9 m down to the water.",
        "Depth to water is 9 m.",
        "In the well the water stands at 9 m.",
        "The well has water at 9 m.",
        "The pump has to suck the water up 9 m from the well.",
        "The pump sits 9 m above the water.",
        "The creek is 9 m below the pump.",
        "The water surface is 9 m below the pump.",
        "The lowest water level in the well is 9 m.",
        "SWL 9 m",
        "The suction lift is 9 m.",
        "The water is 9 m below the pump.",
        "In a dry summer the water drops to 9 m.",
        "Pumping level is 9 m.",
        "The dynamic level is 9 m below the casing.",
        "The well water is 9 metres under the lid.",
        "The water sits 9 m below the well cap.",
        "The water in the well never falls lower than 9 m.",
    )),
    ("pump.height", "-30 m", (
        "The pump hangs at 30 m.",
        "The submersible is set at 30 m.",
        "A submersible pump hangs 30 m down the well.",
        "The pump is 30 m down.",
        "The pump sits 30 m down in the well.",
        "Pump depth: 30 m",
        "The pump is installed at a depth of 30 m.",
        "Our submersible was lowered to 30 m.",
        "Pump setting 30 m.",
        "The pump is hanging 30 metres below ground.",
        "Submersible at 30 m.",
        "The pump is at 30 m depth.",
    )),
    ("pump.placement", "in", (
        "We have a submersible pump.",
        "The pump hangs in the well.",
        "The pump is down the well.",
        "The pump is in the borehole.",
        "There is a pump inside the cistern, under water.",
        "The well pump is a submersible.",
        "The pump sits at the bottom of the well.",
        "Our pump is submerged in the well.",
        "The pump is set at 30 m in the borehole.",
        "A deep well submersible feeds it.",
        "The pump lies in the pond on a float.",
    )),
    ("pump.placement", "out", (
        "A jet pump stands in the shed.",
        "The pump is in the basement.",
        "The pump sits beside the well.",
        "The pump stands next to the well.",
        "We have a surface pump.",
        "The pump is on the bank of the creek.",
        "Our pump lives in the crawl space.",
        "The pump is mounted on the wall of the garage.",
        "A booster pump in the cellar feeds the house.",
        "The pump is 2 m above the water.",
        "There is a centrifugal pump on a slab by the pond.",
        "The pump is in a small shed near the well.",
        "The pump sits on top of the well.",
        "The pump sucks through 6 m of hose.",
        "The pump stands on the lid of the well.",
        "The pump is up top beside the well.",
        "The pump is under the kitchen sink.",
        "A self-priming pump draws from the pond.",
    )),
    ("way.pipe", "1 in poly", (
        "The pipe to the house is 1 inch poly.",
        "We have 1\" polyethylene pipe.",
        "300 ft of 1-inch black poly.",
        "It runs through one inch poly pipe.",
        "The line is 1\" PE.",
        "Pipe: 1 in HDPE",
        "1\" black poly from the well to the house",
        "The poly pipe is 1 inch.",
        "a 1 in. polyethylene line",
        "inch poly pipe runs to the barn",
    )),
    ("way.pipe", "32 mm pe", (
        "The pipe is 32 mm PE.",
        "We laid 32mm HDPE.",
        "The pipe is PE 32.",
        "140 m of 32 mm polyethylene pipe",
        "PE pipe, 32 mm outside",
        "a 32 mm poly line",
        "Pipe: PE 32 mm",
        "a PE pipe of 32 mm diameter",
        "MDPE 32 mm blue",
        "32mm alkathene",
    )),
    ("way.pipe", "3/4 in copper", (
        "The pipe is 3/4\" copper.", "3/4 inch copper pipe to the house", "three-quarter inch copper",
        "three quarter copper line", "Pipe: copper, 3/4 in",
    )),
    ("way.pipe", "1 1/4 in pvc", (
        "The line is 1 1/4\" PVC.", "1-1/4 inch PVC pipe", "1.25 inch PVC", "inch and a quarter PVC",
        "an inch-and-a-quarter PVC line", "PVC pipe, 1 1/4 in", "1¼\" PVC",
    )),
    ("way.pipe", "1/2 in pex", (
        "half inch PEX to the cabin", "1/2\" PEX pipe", "half-inch pex line", "The pipe is 1/2 in PEX.",
    )),
    ("suction.length", "6 m", (
        "The suction pipe is 6 m long.", "6 m of suction hose", "The pump draws through 6 m of pipe from the pond.",
        "The intake hose is 6 m.", "Suction line: 6 m", "A 6 m suction line runs to the creek.",
        "The pump sucks through a 6 m hose.", "Length of the suction pipe 6 m.",
        "On the suction side there are 6 m of pipe.",
    )),
    ("suction.pipe", "1 1/4 in pe", (
        "The suction line is 1 1/4 in poly.", "suction: 1 1/4\" poly, 20 ft",
        "It sucks through 1 1/4 inch poly.", "The intake pipe is 1 1/4 in PE.",
    )),
    ("pump.cut_in", "40 psi", (
        "The switch is 40/60.", "a 40/60 pressure switch", "It cuts in at 40 psi and out at 60 psi.",
        "The pump comes on at 40 and goes off at 60 psi.", "pressure switch set 40-60", "Cut-in 40 psi",
        "The pump kicks in at 40 psi.", "The switch turns the pump on at 40 psi and off at 60.",
        "It starts at 40 psi and stops at 60 psi.", "The pump runs between 40 and 60 psi on a switch.",
        "pump kicks on at 40 psi, shuts off at 60",
    )),
    ("pump.cut_out", "4 bar", (
        "The switch is set 2.5/4 bar.", "The pump cuts out at 4 bar.", "It stops at 4 bar and starts at 2.5 bar.",
        "Cut-out pressure: 4 bar", "Pressure switch: on at 2.5 bar, off at 4 bar.",
        "The pressure switch opens at 4 bar.", "The pump switches off at 4 bar.",
        "The pressure switch works between 2.5 and 4 bar.",
    )),
    ("pump.set", "3 bar", (
        "The pump holds a constant 3 bar.", "The variable speed pump is set to 3 bar.",
        "Set pressure 3 bar.", "The inverter keeps 3 bar.", "constant pressure pump at 3 bar",
        "The frequency drive holds it at 3 bar.", "The pump's controller is set for 3 bar.",
    )),
    ("pump.control", "switch", (
        "It has a pressure switch.", "The pump is on a pressure switch.", "A 30/50 switch runs it.",
        "The pump is controlled by a pressostat.",
    )),
    ("pump.control", "speed", (
        "It is a variable speed pump.", "The pump has a VFD.", "It's a constant pressure system.",
        "The pump is inverter driven.", "The pump has a frequency converter.", "a speed-controlled pump",
        "It has one of those inverter drives.",
    )),
    ("pump.present", "no", (
        "There is no pump.", "No pump, all gravity.", "It is gravity fed.", "We have no pump.",
        "It comes down by gravity alone.", "It runs on gravity, we do not have a pump.",
        "Gravity only.", "The water flows by gravity, no pump involved.", "without a pump",
    )),
    ("water.yield", "12 L/min", (
        "The well yields 12 L/min.", "The spring gives 12 litres a minute.", "The spring flows at 12 L/min.",
        "Yield: 12 L/min", "The well gives 12 L per minute.", "The driller measured 12 L/min in the well.",
        "The well was tested at 12 L/min.", "The borehole produces 12 L/min.", "The well recovers at 12 L/min.",
        "The spring puts out 12 L/min.", "a 12 L/min spring", "The spring fills a 12 litre bucket in 60 seconds.",
        "At the spring a 6 litre bucket is full in 30 seconds.",
        "The spring runs about 12 L/min all year.", "Flow at the spring: 12 L/min",
        "We timed the spring: 12 litres in 60 seconds.",
        "The source delivers 12 litres per minute.", "The well makes 12 litres a minute.",
    )),
    ("water.kind", "well", (
        "We have a drilled well.", "Water comes from a borehole.", "Our well is 40 ft deep.", "a hand-dug well",
        "Source: well", "The water is from a shallow dug well.", "It's pumped from our bore.",
        "Our water comes from a sand point.",
    )),
    ("water.kind", "spring", (
        "Our water comes from a spring.", "We have a spring on the hill.", "Source: spring",
        "There's a spring above the house.", "a spring box on the slope feeds us", "We tap a hillside spring.",
    )),
    ("water.kind", "stream", (
        "We pump from the creek.", "The water is taken from a stream.", "Source: pond", "We draw from the river.",
        "A small brook is our source.", "The pump takes from the lake.",
    )),
    ("water.kind", "cistern", (
        "We catch rain in a cistern.", "All our water is rainwater.", "We pump from a rainwater tank.",
        "Our water is rain from the roof.", "Source: cistern",
    )),
    ("pressure_tank.volume", "80 L", (
        "The pressure tank holds 80 L.", "an 80 L pressure tank", "Pressure tank: 80 litres", "an 80 litre bladder tank",
        "The pressure vessel is 80 L.", "The expansion vessel has 80 litres.", "accumulator 80 L",
        "We have a pressure tank of 80 litres.", "80 litre pressure vessel with the pump",
        "The pressure tank is an 80 litre one.",
    )),
    ("pressure_tank.precharge", "28 psi", (
        "The precharge is 28 psi.", "Precharge: 28 psi", "The tank is precharged to 28 psi.",
        "There is 28 psi of air in the tank.", "The air in the pressure tank is at 28 psi.",
        "The bladder has 28 psi in it.", "I pumped the pressure tank up to 28 psi.", "pre-charge pressure 28 psi",
        "The pressure tank air charge is 28 psi.", "pressure tank, 28 psi of air",
    )),
    ("tank.volume", "2000 L", (
        "The tank on the hill holds 2000 L.", "A 2000 L tank stands above the house.",
        "We have a 2000 litre header tank.", "The hill tank is 2,000 litres.", "The header tank: 2000 L",
        "There's a 2000 L tank up the hill.", "The gravity tank is 2000 L.", "The upper tank holds 2 m3.",
        "The tank, 2000 litres, sits 12 m above the house.", "A tank of 2000 litres feeds the house by gravity.",
        "The pump fills a 2000 L tank above the house.",
    )),
    ("tank.level", "12 m", (
        "The tank is 12 m above the house.", "The tank stands 12 m above the taps.",
        "A tank 12 m above the house.", "The header tank is 12 m higher than the house.",
        "The house is 12 m below the tank.", "The tank on the hill is 12 m above the kitchen.",
        "The bottom of the tank is 12 m above the shower.",
        "Tank height above house: 12 m", "The drop from the tank to the house is 12 m.",
        "From the tank to the house it falls 12 m.", "It is pumped to a tank 12 m above the house.",
    )),
    ("store.volume", "5000 L", (
        "The cistern holds 5000 L.", "a 5000 litre cistern", "The cistern is 5 m3.", "Cistern: 5000 L",
        "The rainwater tank has 5000 litres.", "The pump draws from a 5000 L storage tank beside it.",
        "The underground tank holds 5,000 litres.",
    )),
    ("store.days", "5 days", (
        "We want 5 days of storage.", "Storage for 5 days.", "enough water for 5 days", "It should last 5 days without rain.",
        "We need to get through 5 days without the pump.", "five days' reserve", "We want to store five days of water.",
        "a reserve of 5 days", "five days of water in store",
    )),
    ("use.people", "4", (
        "There are four of us.", "We are 4 people.", "We are four.", "a family of four", "4 persons",
        "Four people live here.", "People: 4", "two adults and two children", "My wife, I and our two kids live here.",
        "The household is four.", "We're a household of 4.", "four people in the house", "There's 4 of us.",
        "my husband and I and two teenagers", "Four of us use the water.", "us: 2 adults, 2 kids",
    )),
    ("use.daily", "600 L/day", (
        "We use 600 L a day.", "Our consumption is 600 litres per day.", "Daily use: 600 L/day",
        "We get through 600 litres a day.", "The meter says 600 L a day.", "about 600 litres per day for the house",
        "Consumption, metered, is 600 L a day.", "We need 600 litres daily.",
    )),
    ("use.troughs", "3", (
        "Three troughs with float valves.", "3 stock troughs", "We have three water troughs.", "troughs: 3",
    )),
    ("outlets.shower", "2", (
        "Two showers.", "We have 2 showers.", "showers: 2", "There are two showers in the house.", "2 x shower",
        "2 bathrooms with a shower each", "two bathrooms, each with a shower", "a shower upstairs and one downstairs",
        "There is a second shower now.", "shower x 2", "showers 2, sinks 3",
    )),
    ("outlets.sink", "3", (
        "three sinks", "3 sinks", "sinks: 3", "a kitchen sink and two bathroom sinks", "three wash basins",
        "a kitchen sink and two basins", "Three taps in the house: kitchen, bath and utility sinks, 3 sinks in all.",
    )),
    ("outlets.toilet", "1", (
        "one toilet", "a toilet", "1 WC", "toilet: 1", "We have a flush toilet.", "one loo", "1 flush toilet",
    )),
    ("outlets.washer", "1", (
        "a washing machine", "one washer", "We have a washing machine.", "1 clothes washer", "washing machine: 1",
        "a washer", "a laundry machine",
    )),
    ("outlets.hose", "2", (
        "two hoses", "2 garden hoses", "two hose bibs", "two outside taps", "hoses: 2", "a couple of hoses",
        "two garden taps", "2 spigots", "two hydrants in the yard",
    )),
    ("outlets.sprinkler", "4", (
        "four sprinklers", "4 sprinkler heads", "sprinklers: 4", "We run four lawn sprinklers.", "4 impact sprinklers",
    )),
    ("outlets.shower.together", "2", (
        "Two showers run at the same time.", "We want to run two showers at once.", "both showers together",
        "When two showers are on together it drops.", "two showers simultaneously",
        "Both showers should work at the same time.", "two showers at a time",
    )),
    ("outlets.sprinkler.together", "3", (
        "We have 6 sprinklers, three at a time.", "6 sprinklers, 3 run at once.", "Of 6 sprinklers three run together.",
        "three sprinklers at once",
    )),
    ("animals.goats", "20", (
        "20 goats", "We keep twenty goats.", "goats: 20", "a herd of 20 goats", "20 sheep", "twenty ewes", "20 dairy goats",
        "goats, 20 of them", "a flock of 20 sheep", "20 head of sheep", "a score of goats, 20 goats to be exact",
    )),
    ("animals.cattle", "12", (
        "12 cows", "a dozen steers", "12 head of cattle", "cattle: 12", "twelve horses", "12 beef cows", "12 heifers",
        "12 dry cows", "a herd of 12 cattle", "12 head",
    )),
    ("animals.hens", "40", ("40 hens", "40 chickens", "about forty laying hens", "hens: 40", "40 layers", "a flock of 40 chickens")),
    ("animals.dairy", "6", ("6 dairy cows", "six milking cows", "6 milkers", "dairy cows: 6", "6 cows in milk")),
    ("beds.area", "200 m²", (
        "200 m2 of drip", "We water 200 m² of garden by drip.", "a garden of 200 square metres",
        "The vegetable garden is 200 m2.", "drip on 200 sqm", "Garden: 200 m2", "200 square metres of vegetables",
        "a vegetable plot of 10 x 20 m", "irrigated area 200 m2", "The beds cover 200 m².", "200 m2 under drip irrigation",
        "The orchard is 200 m2.", "200 m2 greenhouse",
    )),
    ("outlets.drip", "4", ("four drip zones", "4 zones of drip", "The drip is split into 4 zones.", "drip: 4 zones", "drip irrigation in four zones")),
    ("place.altitude", "1500 m", (
        "We are at 1500 m above sea level.", "Altitude 1500 m", "The place is at an altitude of 1500 m.",
        "Elevation: 1500 m", "We live at 1,500 m.", "at 1500 m elevation", "1500 m asl", "The cabin is at 1500 metres above the sea.",
        "We sit at 1500 metres.", "1500 m.a.s.l.", "The farm lies 1500 m above sea level.",
    )),
    ("power.source", "sun", (
        "It is solar powered.", "The pump runs on solar.", "Power comes from solar panels.", "Power: solar", "off-grid solar",
        "We have panels on the roof.", "It runs straight off a PV array.",
    )),
    ("power.source", "grid", (
        "There is mains power.", "We are on the grid.", "Power: mains", "grid power at the well", "We have grid electricity.",
        "The pump is on mains electricity.", "There's utility power at the pump.", "mains at the house",
    )),
    ("power.source", "generator", ("The pump runs off a generator.", "Power comes from a generator.", "Power: generator", "only a genset for power", "We run it with a diesel generator.")),
    ("power.source", "none", ("There is no power at the site.", "no electricity there", "Power: none", "There's no power up there.", "We have no electricity.")),
    ("power.panel", "400 W", ("two 400 W panels", "Panels are 400 W each.", "4 x 400 W panels", "a 400 watt solar panel", "400W modules", "The panels are rated 400 W.", "six panels of 400 W", "panels: 4, 400 W each")),
    ("power.voltage", "24 V", ("a 24 V system", "The battery is 24 V.", "24 volt batteries", "a 24 V pump", "The system runs at 24 V.", "24V bank", "System voltage: 24 V", "a 24 volt battery bank")),
    ("power.capacity", "200 Ah", ("200 Ah of batteries", "a 200 Ah battery", "Battery: 200 Ah", "200 amp hours", "The bank is 200Ah.")),
    ("power.battery", "lfp", ("a LiFePO4 battery", "lithium iron phosphate", "LFP batteries", "lithium batteries")),
    ("power.battery", "agm", ("AGM batteries", "The batteries are AGM.")),
    ("power.battery", "flooded", ("lead-acid batteries", "golf cart batteries", "flooded lead acid")),
    ("power.series", "3", ("three panels in series", "Panels: 3 in series", "all three panels in series", "3 panels wired in series")),
    ("power.strings", "2", ("two strings of three panels", "panels in 2 strings", "2 strings of panels")),
    ("power.tilt", "35 °", ("The panels are tilted 35 degrees.", "panel tilt 35°", "panels at a 35 degree tilt", "panels at 35 degrees tilt", "The panels slope at 35°.")),
    ("power.facing", "s", ("The panels face south.", "panels facing south", "south-facing panels", "panels point due south", "panels are aimed south")),
    ("power.facing", "se", ("The panels face south-east.", "panels facing southeast", "panels look to the south-east", "Panels: tilt 35°, facing south-east")),
    ("power.cable", "60 m", ("The cable to the pump is 60 m.", "60 m of cable", "60 m of wire to the pump", "Cable run: 60 m", "cable from the batteries to the pump: 60 m", "a 60 m cable")),
    ("power.controller", "mppt", ("an MPPT controller", "MPPT charge controller")),
    ("place.latitude", "44 °", ("We are at 44° N.", "latitude 44", "Latitude: 44 N", "44 degrees north", "lat 44°N")),
    ("pipes.held", "buried", ("The pipe is buried.", "The line is underground.", "buried 2 ft deep", "The pipe lies in a trench.", "The pipe is dug in.", "The pipe runs underground.", "below the frost line")),
    ("pipes.held", "laid", ("The pipe lies on the ground.", "laid on the surface", "pipe lying on top of the ground", "The pipe is above ground.", "The line runs along the surface.", "The hose lies in the grass, not buried.")),
    ("pump.count", "2", ("two identical pumps in parallel", "two pumps in parallel", "2 identical pumps")),
    ("way.climb", "18 m", (
        "house 18 m up the hill", "The barn is 18 m up the hill from it.", "The house is 120 m away, 18 m up the hill.",
        "The home is 55 m away and 18 m more up.", "Pump is in a little house beside the cistern and the home is 18 m more up.",
        "We have a spring and a pump, and run it up to the house which is 90 m away and 18 m higher.",
        "We have a well and we want to bring the water to the cabin, 90 m away and 18 m higher.",
        "There is a well and we want to run it up to the house which is 90 m away and 18 m higher there is four of us",
        "well 4 m down, house 18 m up the hill, 140 m of pipe, two showers and a hose at once, some drip lines",
    )),
    ("way.length", "140 m", (
        "well 4 m down, house 18 m up the hill, 140 m of pipe, two showers and a hose at once, some drip lines",
        "140 m of pipe", "There is 140 m of 32 mm poly pipe.", "140 m of 32 mm poly pipe",
    )),
    ("way.length", "160 m", (
        "It is 140 m from the spring to the house. No, 160 m, I paced it again.",
        "There is 140 m of 32 mm poly pipe, no sorry 160 m.",
        "The house is 140 m from the well. Oh, no, it's 160 m.",
    )),
    ("way.length", "150 ft", ("the run is a hundred and sixty no sorry one hundred and fifty feet",)),
    ("way.pipe", "32 mm PE", ("There is 140 m of 32 mm poly pipe, no sorry 160 m.", "There is 140 m of 32 mm poly pipe.")),
    ("water.level", "-160 ft", ("Water at 180 ft. No, sorry, 160 ft.", "The water is at 180 ft. No, 160 ft.")),
    ("water.level", "-12.5 ft", ("From the pump down to the water it's 12'6\".", "It is 12'6\" from the pump down to the water.")),
    ("outlets.shower.together", "2", ("well 4 m down, house 18 m up the hill, 140 m of pipe, two showers and a hose at once, some drip lines",)),
    ("outlets.hose.together", "1", ("well 4 m down, house 18 m up the hill, 140 m of pipe, two showers and a hose at once, some drip lines",)),
    ("hot.tank", "2 gal", ("Our water heater has a 2 gallon expansion tank on it.", "There is a 2 gallon expansion tank by the boiler.")),
    ("hot.precharge", "40 psi", ("The heater has a 2 gallon expansion tank on it, I pumped it to 40 psi.",)),
    ("hot.stored", "130 °F", ("The water heater is set at 130 F.", "Heater is set at 130 F.")),
    ("hot.relief", "150 psi", ("The heater drips. The relief valve says 150 psi.", "The relief valve of the heater opens at 150 psi.")),
    ("use.people", "4", (
        "My wife and I are here with two kids, so four people.", "There are four of us in all: my wife and I and the kids.",
        "Four in the house.", "Wife, two boys and me, so 4 people.",
    )),
    ("pump.placement", "in", ("Pump is a submersible in a spring box.", "The submersible pump stands beside the tank.")),
    ("pump.relief", "no", ("I have a piston pump and there is no relief valve.", "The pump has no relief valve.")),
    ("drip.crop", "tomato", ("A quarter acre of tomatoes on drip.", "We have drip for the tomatoes.")),
    ("drip.crop", "grape", ("2 acres of grape under drip.",)),
    ("drip.crop", "strawberry", ("Strawberries in a tunnel, 600 m2 on drip.",)),
    ("drip.dripper", "0.5 gph", ("Emitters every 12 inches at 0.5 gph each.", "Drip lines with emitters of 0.5 gph.")),
    ("drip.dripper", "1 L/h", ("drippers every 20 cm, 1 l/h, pressure compensating",)),
    ("drip.spacing", "60 cm", ("Drippers are 4 litres per hour, spacing 60 cm, rows at 2.5 m.",)),
    ("drip.filter", "yes", ("There is a filter before the drip lines.",)),
    ("drip.pressure", "1.2 bar", ("We have drip lines. 1.2 bar where lines begin.",)),
    ("well.bore", "165 mm", ("The bore is cased at 165 mm.", "A bore with 165 mm casing.")),
    ("well.bore", "6 in", ("A bored well, six inch lining.", "The well has a 6 inch lining.")),
    ("well.bore", "1 m", ("A dug well, 8 m deep, inside diameter 1 m.",)),
    ("well.depth", "60 m", ("We've a bored well at the back of the house, 60 metres down.", "A bore at 60 m depth.", "The borehole goes 60 m down.")),
    ("use.daily", "320 L/day", ("4 people, around 320 litres per day by the meter.",)),
    ("water.temperature", "48 °F", ("Water comes up at 48 F.",)),
    ("power.facing", "e", ("My two panels (250 W each, in series) stand in the shade half the morning, I would say 30 % is lost to shade. They face east.",)),
    ("power.series", "2", ("My two panels (250 W each, in series) stand in the shade.", "Two panels of 250 W each, wired in series.")),
    ("tank.volume", "5000 L", ("The pump lifts into a 5000 L tank on a 6 m stand beside the house.",)),
    ("tank.level", "6 m", ("The pump lifts into a 5000 L tank on a 6 m stand beside the house.",)),
    ("pressure_tank.precharge", "18 psi", ("Precharge I checked with a tire gauge: 18 psi.",)),
    ("rain.dry_count", "3", ("The cistern must last three dry months.",)),
    ("water.level", "-9 m", ("Water is 6 m down in winter, 9 m in summer.", "The static level is 4 m, it went down to 9 m after four hours.")),
    ("way.length", "110 m", ("The builder reckons the run is 90 m but I make it 110 m.", "The run is 90 m on paper but I measured 110 m.")),
    ("tank.level", "28 m", ("There's a drop of 28 m from the tank to the house over 300 m of 50 mm pipe.",)),
    ("pump.height", "-140 ft", ("My pump is set at 140 ft on 1-1/4\" poly drop pipe.",)),
    ("pressure_tank.precharge", "36 psi", ("The pressure tank is only 20 gallons, 36 psi in it with the water drained.",)),
    ("way.climb", "40 ft", ("The house is up the hill from the well, 40 ft of rise in 300 ft.",)),
    ("well.depth", "18 m", ("My well is 18 m with water at 7 m.", "Our well has a yield of 5 gpm, is 18 m deep, and the water is at 7 m.")),
    ("well.depth", "42 m", (
        "The borehole reaches 42 m.",
        "Our borehole has a total depth of 42 m.",
    )),
    ("well.depth", "180 ft", (
        "They drilled us a well of 180 ft.",
    )),
    ("well.depth", "110 ft", (
        "The well is 90 feet deep - no, I just found the card and it says 110 feet.",
    )),
    ("well.depth", "200 ft", (
        "There's a drilled well, 200 ft, on the place.",
    )),
    ("well.depth", "15 m", (
        "The dug well measures 15 m from rim to bottom.",
    )),
    ("water.level", "-85 ft", (
        "In the well the water is down 85 ft.",
    )),
    ("water.level", "-9 m", (
        "There are 9 m between the rim and the water.",
        "You look down 9 m to the water in our well.",
        "From the pump in the cellar down to the water it is 9 m.",
        "The water rests at 9 m.",
    )),
    ("water.level", "-30 ft", (
        "The water comes to within 30 ft of the surface.",
    )),
    ("well.bore", "4 in", (
        "I have a 4 inch well, 160 feet deep.",
    )),
    ("well.bore", "6 in", (
        "A 6\" borehole of 300 ft.",
    )),
    ("pump.height", "-30 m", (
        "The pump dangles 30 m down the borehole.",
        "The pump has been placed at 30 m.",
    )),
    ("way.climb", "12 m", (
        "Our house stands some 12 m above the borehole.",
        "You climb 12 m walking up from the well to the cottage.",
    )),
    ("way.climb", "31 m", (
        "From the borehole pump the line rises 31 m to the house.",
    )),
    ("way.climb", "16 m", (
        "From there 85 m to the cabin and a climb of 16 m.",
    )),
    ("way.climb", "30 ft", (
        "The barn is 30 ft higher up than the pump.",
    )),
    ("way.climb", "0 m", (
        "The shack is level with the tanks.",
        "The ground is dead level.",
    )),
    ("way.climb", "0 ft", (
        "House 100 ft away, same level.",
    )),
    ("way.climb", "22 ft", (
        "The pump to the top floor shower is 22 ft up.",
    )),
    ("way.climb", "-15 m", (
        "We are 15 m below the spring.",
    )),
    ("way.length", "75 ft", (
        "From the well to the house is 75 feet of 1 inch PEX.",
    )),
    ("way.length", "650 m", (
        "The line to the house is 650 m.",
    )),
    ("way.length", "180 ft", (
        "Line to the house is 1\" PVC schedule 40, 180 ft.",
    )),
    ("way.length", "450 ft", (
        "Barn is 450 ft out on 1-1/4\" poly.",
    )),
    ("way.length", "110 m", (
        "The furthest standpipe is 110 m from the well.",
    )),
    ("way.length", "230 m", (
        "Run to the furthest tent 230 m in 50 mm PE.",
    )),
    ("way.length", "120 m", (
        "Between borehole and house lie 120 m.",
    )),
    ("way.pipe", "32 mm pe", (
        "35 m of pipe, diameter 32, material PE.",
    )),
    ("way.pipe", "25 mm pe", (
        "25 mm poly the whole way.",
    )),
    ("way.pipe", "3/4 in pe", (
        "Blue three-quarter alkathene runs to the house.",
    )),
    ("way.pipe", "40 mm pe", (
        "It is forty mil poly.",
    )),
    ("way.pipe", "1 in steel", (
        "1 inch GI pipe to the house.",
    )),
    ("outlets.shower", "5", (
        "5 safari tents, each with its own shower.",
    )),
    ("outlets.shower", "2", (
        "Two cabins and each has a bathroom with one shower.",
    )),
    ("outlets.toilet", "2", (
        "We have two lavatories.",
    )),
    ("outlets.shower", "1", (
        "I live alone, and have a shower, a toilet and a kitchen sink.",
    )),
    ("outlets.washer", "1", (
        "There is a washing machine in the lean-to.",
    )),
    ("outlets.hose", "0", (
        "No pressure tank, no filter, no hoses.",
    )),
    ("outlets.sink", "2", (
        "a pair of sinks",
    )),
    ("outlets.hose", "1", (
        "One tap outdoors with a hose on it.",
    )),
    ("animals.goats", "6", (
        "half a dozen goats",
    )),
    ("animals.hens", "20", (
        "They have 20 hens and 6 goats.",
    )),
    ("animals.cattle", "8", (
        "We run eight steers.",
    )),
    ("animals.goats", "35", (
        "Thirty-five ewes are on the hill.",
    )),
    ("animals.cattle", "22", (
        "Livery yard, 22 horses.",
    )),
    ("use.people", "3", (
        "We are 3 person.",
    )),
    ("use.people", "1", (
        "She is on her own there.",
    )),
    ("use.people", "4", (
        "My wife and two boys and I live here, four in all.",
    )),
    ("use.people", "32", (
        "32 people live here.",
    )),
    ("use.people", "6", (
        "the house too (6 people)",
    )),
    ("use.people", "2", (
        "Two of us live in the cabin.",
    )),
    ("use.people", "5", (
        "There will always be five of us in the house.",
    )),
    ("use.people", "18", (
        "Staff and guests make 18 people.",
    )),
    ("pump.present", "no", (
        "Existing pump: No",
        "We have nothing yet, neither pump nor pipe.",
        "There is no pump in the line anywhere.",
        "No pump at present.",
    )),
    ("pump.placement", "in", (
        "Our submersible hangs on a rope in the borehole.",
    )),
    ("pump.placement", "out", (
        "The pump stands in a wooden box by the stream.",
    )),
    ("pump.cut_in", "2 bar", (
        "The pressure switch is set to 2 and 3.5 bar.",
    )),
    ("pump.cut_out", "50 psi", (
        "pressure switch cuts in at 30 psi and cuts out at 50 psi",
    )),
    ("pump.cut_in", "1.8 bar", (
        "The pump starts up at 1.8 bar and stops again at 3 bar.",
    )),
    ("pump.set", "50 psi", (
        "The control box keeps it at 50 psi.",
    )),
    ("pump.set", "3 bar", (
        "Pressure wanted at set point: 3.0 bar",
    )),
    ("pump.most_flow", "35 L/min", (
        "a small pump that delivers 35 L/min at its set pressure of 2 bar",
    )),
    ("pressure_tank.volume", "20 gal", (
        "There's a 20 gallon pressure tank in the hall.",
    )),
    ("pressure_tank.precharge", "38 psi", (
        "pressure tank 20 gallons, pre-charge 38 psi",
    )),
    ("pressure_tank.volume", "24 L", (
        "A small 24 litre vessel sits beside the pump.",
    )),
    ("store.volume", "25000 L", (
        "Tank size: 25,000 L. Source: rain tank. The house is 1.5 m above the pump, which is by the tank.",
    )),
    ("store.volume", "22500 L", (
        "The tank is a 22500 litre poly tank at the back shed and the house is four metres up from the tank.",
    )),
    ("store.volume", "18000 L", (
        "Two rainwater tanks coupled together, 9,000 L each.",
    )),
    ("store.volume", "20 m³", (
        "Borehole pump fills a 20 m3 ground tank and a booster beside it feeds the block.",
    )),
    ("store.volume", "30000 L", (
        "We live off a rain tank of 30 000 L.",
    )),
    ("tank.level", "28 m", (
        "We have a 10 000 litre tank on the koppie, 28 m above the lodge.",
    )),
    ("tank.level", "10 m", (
        "The bottom of the header tank lies 10 m over the taps.",
    )),
    ("tank.volume", "500 gal", (
        "A 500 gallon tank in the loft feeds the taps.",
    )),
    ("power.panel", "335 W", (
        "Panels: two strings of four, 335 W each",
    )),
    ("power.panel", "250 W", (
        "Power's three 250 W panels into a 24 V bank.",
    )),
    ("power.voltage", "48 V", (
        "a forty eight volt battery bank",
    )),
    ("power.capacity", "210 Ah", (
        "Four 210 Ah batteries.",
    )),
    ("power.source", "generator", (
        "Generator runs it today.",
    )),
    ("power.source", "sun", (
        "Everything here is solar.",
    )),
    ("power.source", "grid", (
        "Grid power, but it fails often.",
    )),
    ("power.source", "none", (
        "There's no mains and nobody lives there.",
    )),
    ("place.altitude", "1700 m", (
        "I farm at 1 700 m above sea level.",
    )),
    ("place.altitude", "6200 ft", (
        "We are up at 6,200 ft here.",
    )),
    ("water.yield", "2 gpm", (
        "At mine the spring is 60 ft above the house and I get 2 gpm.",
    )),
    ("water.yield", "1.5 m³/h", (
        "Well water: driller wrote 1.5 m3/h, water level 19 m.",
    )),
    ("water.yield", "6 L/min", (
        "A ten litre bucket at the spring needs 100 seconds.",
    )),
    ("water.yield", "3 gpm", (
        "The well makes 3 gpm.",
    )),
    ("use.daily", "500 L/day", (
        "Our use comes to 500 litres a day, I read the meter.",
    )),
    ("beds.area", "150 m²", (
        "The garden has 150 m² of beds on drip.",
    )),
    ("use.troughs", "2", (
        "Two stock tanks with float valves in the barn.",
    )),
    ("rain.roof", "180 m²", (
        "The roof that feeds it measures 180 m².",
    )),
    ("rain.used", "yes", (
        "The roof feeds a rain tank.",
    )),
    ("drip.length", "40 m", (
        "Tomatoes on drip, lines 40 m long, rows 1.2 m apart.",
    )),
    ("suction.length", "25 ft", (
        "A jet pump sucks it up through 25 ft of 1-1/4\" poly suction line and pushes to the barn, 130 ft of 1\" poly.",
    )),
    ("way.length", "130 ft", (
        "A jet pump sucks it up through 25 ft of 1-1/4\" poly suction line and pushes to the barn, 130 ft of 1\" poly.",
    )),
    ("suction.length", "4 m", (
        "Suction is 4 m of 40 mm hose.",
    )),
    # the suction as what is spoken of; the first and the second pipe; depths and bottoms
    ("suction.length", "8 m", (
        "The suction is 1 inch pipe and about 8 m of it.",
        "the suction is one inch poly about 8 m long with one foot valve",
        "Suction 8 m of 75 mm, river 2.5 m under the pump. Delivery 900 m of 63 mm.",
        "The intake pipe runs 8 m out into the lake.",
        "The pump stands in a hut, with 8 m of 40 mm suction hose. From the hut it is 310 m to the house.",
        "Suction lift about 4 m, suction run 8 m, delivery 85 m.",
        "Pump sits above the creek, suction hose 2 in., 8 m long, one foot valve.",
    )),
    ("way.length", "380 m", (
        "The dam is below the pump shed, suction is 50 mm poly 9 m long with a foot valve, then 380 m of 40 mm up to the quarters.",
        "From the well it goes 380 m in 1 inch black poly to the house.",
        "Bore 52 metres. 380 metres of 2 inch poly gets it there.",
        "No pump, it just runs downhill: 380 m of 40 mm poly, laid on the ground.",
        "Box to cabin 380 m, drop 38 m.",
        "Distance? 380 m. Height? 22 m.",
        "From wellhead to a 10 m3 tank it's 380 m.",
        "The house is right next to it, say 380 m.",
    )),
    ("well.depth", "62 m", (
        "There is a borehole. The neighbour's is 95 m deep. Ours is only 62 m according to the old paper.",
        "Drilled well, 150 mm casing, 62 m according to the tag.",
        "G'day, bore is 62 m, water sits at 30 m.",
        "Old hand-dug well, 62 m to the bottom.",
        "I dropped a tape: 31 m to water, 62 m to the bottom of the well.",
        "We have two wells. The one in use: 62 m deep, static 32 m.",
        "Bore no. 1: 62 m, SWL 24 m.",
        "It has a borehole 62 m, pump installed at 50 m.",
        "The tank is 3 m high. Sub pump at 50 m, well is 62.",
    )),
    ("water.level", "-14 m", (
        "The bore is 52 m deep, water comes up to 14 m.",
        "Well with 14 m water level, grid power.",
        "Dug well, water down to 14 m in a dry fall.",
        "Bore 45 m deep, water level lowest at 14 m.",
        "The water in the well stood at 8 m in 2015, now it's at 14 m.",
        "Water in the well is 9 m down. Sorry, 14 not 9.",
    )),
    ("pump.height", "-36 m", (
        "Pump was set at 30 m in the well, I've lowered it to 36 m.",
        "Our well pump was at 30 m; we put it back at 36 m.",
        "Pump: submersible 0.75 kW at 36 m",
    )),
    ("well.tested", "6 gpm", (
        "Well, static 41 ft. At 6 gpm it drew down to 63 ft and stayed there.",
        "Well 165 ft deep, pumping level 56 ft at 6 gpm.",
        "The driller tested our borehole: he pumped 6 gpm for 4 hours.",
    )),
    # heights of a run of speech, of a route, of what lies lower
    ("way.climb", "40 ft", (
        "spring is down the hill cabin is 40 ft above it 175 ft of pipe",
        "House at the top, well at the bottom. 40 ft between the two in height and 410 ft of pipe.",
        "Pump in the cellar. 40 ft of lift to the house, 1 in PVC.",
        "Height from well to house: +40 ft",
        "One hose to work 200 ft away and 40 ft up from the spring tank.",
    )),
    ("way.climb", "-30 m", (
        "From dam to yards 500 m, 30 m lower.",
        "Half a kilometre away and 30 m up is the spring.",
        "I put 80 m of drop, turns out my phone was off: it's 30 m from the spring down to the house.",
    )),
    ("way.climb", "25 m", (
        "House is 20 m above the well, 120 m away. Sorry 25 not 20.",
        "Height difference? 25 m. Distance? 340 m.",
    )),
    ("tank.level", "24 m", (
        "the tank is up the back 20 thousand litres 24 m higher than the bore",
        "The tank is 30 m above the house and holds 5000 L. Oh, and it's 24 m, not 30.",
        "To fill a 200 L drum 24 m above ground. Two goats drink from it.",
    )),
    ("tank.volume", "20000 L", (
        "The tank is up the hill, 20 thousand litres, 24 m higher than the bore.",
    )),
    ("store.volume", "2 m³", (
        "It is a spring catchment with a chamber, about 2 m3, and the pump stands outside it.",
        "Spring water in a 2 m3 tank, pump stands next to the tank, the cottage is 28 m higher.",
        "We keep a 2 m3 storage tank the booster draws from.",
    )),
    # pressures, flows and counts in few words
    ("pump.cut_in", "20 psi", (
        "A little jet pump with a tank on 20 40 and a weak shower.",
        "Jet pump, the switch is 20 40.",
        "Well pump, switch 20 on 40 off.",
    )),
    ("pump.cut_out", "58 psi", (
        "The pressure goes between 38 and 58 on the gauge, then the pump starts over.",
        "The pump is switched. I have seen the gauge at 58 when it cuts out.",
    )),
    ("pump.set", "3.5 bar", (
        "Speed-controlled pump, 3.5 bar, right at the cistern.",
        "A booster set at 3.5 bar feeds six flats.",
    )),
    ("pressure_tank.precharge", "38 psi", (
        "Bladder tank, switch 40/60, precharge 38.",
        "I checked the air charge with a bicycle gauge and it says 38 psi.",
    )),
    ("pump.most_flow", "15 L/min", (
        "12V battery pump rated 15 L/min, 19 mm garden hose.",
        "Pump is 12 volt, 15 L/min max, shuts off at 3 bar.",
    )),
    ("water.yield", "12 L/min", (
        "I measured the spring with a bucket of 12 litres: it is full after one minute.",
        "When we moved here the spring gave 20 L/min; these days it's 12.",
        "The bore is 40 m deep. It'll give 12 L/min all day.",
    )),
    ("use.daily", "300 L/day", (
        "There are two of us and 300 litres a day is plenty.",
    )),
    ("store.hours", "1 h", (
        "I run the pump off a generator, an hour a day, into a tank up the bank.",
    )),
    ("outlets.sink", "2", (
        "A bathroom with a shower, sink and toilet, then the kitchen sink.",
        "Kitchen sink, bath sink, one shower, toilet, washer.",
    )),
    ("outlets.toilet", "4", (
        "4 bathrooms (shower, basin and toilet in each).",
    )),
    ("animals.goats", "29", (
        "26 ewes, 3 rams on the hill.",
        "28 ewes plus a ram.",
    )),
    ("use.people", "2", (
        "Is it the roof or us two?",
        "The previous owners were a family of six; we are two.",
    )),
    ("pump.placement", "out", (
        "The pump, a centrifugal thing from before our time, stands in a stone hut on the bank.",
        "The water is under the pump, which stands on the cover.",
        "Our pump is old. It sits in the cellar of the mill.",
    )),
    ("pump.present", "no", (
        "Water comes down from a hill tank. No pump is planned.",
    )),
    ("pipes.held", "buried", (
        "The pipe is PE 32 mm, and I will dig it in 60 cm deep.",
        "Trench is dug, 1-1/4 inch poly going in it.",
    )),
    ("place.name", "Arvesk", (
        "We live near Arvesk, up a track.",
        "Building off grid outside Arvesk and trying to get the water right.",
        "We have bought a small house near Arvesk, at 1610 m.",
        "Hello from Arvesk. Our rain tank stands beside the house.",
        "Dear Sirs, we are in Arvesk.",
    )),
    ("power.source", "grid", (
        "We're off the grid line at the road, the co-op ran it up to us last year. Well is 200 ft.",
        "The pump simply plugs in at the barn, 120 V outlet.",
        "Current: 400 V three-phase from the village.",
        "We are connected to the electricity network.",
        "Electric: from the national network, 220 V.",
        "Pump wired to the house panel, 240 V.",
        "The pump has its own meter from the utility.",
        "Power comes off the house, 230 V, 40 m of cable.",
        "Rural electric service at the well, 230V.",
        "Power supply = grid",
        "Hi there. Drilled well 280 ft, pump at 240. House has standard power. Line to the house is four feet under.",
        "Dear sirs, the pump is of the type for wells, hanging at 35 m. We have current of the state. The tube is under the earth.",
        "We pay the electric company like everyone else.",
        "There's electric at the barn already.",
        "3-phase is on site.",
        "Electricity: yes, 230 V public.",
        "Our neighbor runs his off a generator, ours is on the electric co-op.",
        "Solar was too dear, so it's mains.",
    )),
    ("power.source", "generator", (
        "Power is a diesel in the shed, started by hand.",
    )),
    ("power.source", "sun", (
        "Six modules on a ground rack drive the well pump.",
        "Energy for the pump: sun.",
        "We have neither mains nor a generator, just the sun.",
        "The sun alone drives it; at night nothing.",
    )),
    ("power.battery", "lfp", (
        "Lead-acid would be cheaper, but we have lithium.",
    )),
    ("pump.placement", "in", (
        "Our sub hangs 20 ft off the bottom.",
        "Submersed pump of 0.75 kW in the cistern.",
        "The pump stands on the bottom of the cistern, under water.",
        "We dropped a pump into the tank.",
        "The pump hangs on a stainless cable 60 m down.",
        "It's a sump-style pump, standing in the spring box.",
    )),
    ("pump.placement", "out", (
        "The pump, 0.5 hp, is in the crawlspace under the kitchen.",
        "It's a self-priming centrifugal that stands in the boathouse.",
        "The pump draws from the cistern through 8 ft of suction hose.",
        "Pump bolted to the floor of the well house.",
        "Pump stands dry, next to the well in a chamber.",
        "The pump has a flooded suction from the tank.",
        "Dry-installed pump at the side of the reservoir.",
        "The old submersible died, now a jet in the pump house.",
        "The pump and pressure tank are in the basement.",
        "Pump and vessel live in the laundry.",
        "The pump stands in the milking parlour, it sucks through 6 m of hose out of the brook.",
        "Pump location: basement.",
        "Location of pump: shed next to cistern.",
        "The pump is sitting on the concrete lid of the cistern.",
        "House waterworks (pump with little tank) in the basement draws from the well.",
        "Surface-mounted multistage, 1.1 kW.",
        "A centrifugal pump on a skid by the pond.",
        "A pump on wheels that I roll down to the river.",
        "The plumber wants to put a submersible, we have a jet in the cellar.",
        "We pulled the submersible two years ago and put a jet pump in the shed.",
        "pump out of water, standing on floor of hut",
        "Pump lives outdoors under a tin roof by the tank.",
        "The pump is out in the yard beside the IBC under a box.",
        "We keep the little pump on a shelf in the bathroom.",
        "There's a pump under the bench in the caravan.",
    )),
    ("pipes.held", "joints", (
        "Pipe with push-fit fittings the whole way.",
        "The joints are push fit.",
        "PEX with push-in connectors, not clipped.",
        "The pipes are joined with push-fit couplings and not fixed to anything.",
        "Push-fit plumbing in the house.",
    )),
    ("pipes.held", "buried", (
        "Under ground all the way.",
        "Copper, clipped to the wall.",
        "PVC, solvent welded and clipped to the joists.",
        "pipe burial depth 80 cm",
        "The pipe was put 2 ft down.",
        "We ploughed the pipe in at 70 cm.",
        "Hi there. Drilled well 280 ft, pump at 240. House has standard power. Line to the house is four feet under.",
        "The pipe is covered with soil, half a metre.",
        "Pipe depth 36 inches.",
    )),
    ("pump.control", "switch", (
        "It cuts in at 2 and out at 4 bar by a switch.",
    )),
    ("pump.control", "speed", (
        "An inverter varies the pump's speed.",
        "Pump speeds up and slows down with demand.",
        "An electronic controller ramps the motor.",
    )),
    ("water.kind", "stream", (
        "The source is a creek.",
    )),
    ("drip.filter", "no", (
        "Drip lines, unfiltered.",
        "I don't filter the water to the drip lines.",
    )),
    ("drip.filter", "yes", (
        "We filter the water for the drip with a mesh.",
    )),
    ("drip.holds", "plain", (
        "Non-compensating drip tape.",
        "Plain drippers, not compensating.",
        "Ordinary drippers, nothing compensating.",
        "Simple drip tape, without pressure compensation.",
    )),
    ("drip.holds", "steady", (
        "The drippers give the same at any pressure.",
    )),
    ("drip.crop", "corn", (
        "Sweet corn on drip tape.",
    )),
    ("drip.crop", "squash", (
        "Zucchini under drip.",
        "Dripline in the pumpkins.",
    )),
    ("drip.crop", "bean", (
        "Green beans, 12 rows, on drip.",
    )),
    ("drip.crop", "berry", (
        "The drip waters blueberry bushes.",
    )),
    ("drip.crop", "melon", (
        "We drip irrigate watermelons.",
    )),
    ("drip.hours", "2", (
        "Drip lines run 2 hours every evening.",
    )),
    ("store.fills", "hours", (
        "We pump to the tank for 3 hours each evening.",
        "The tank is topped up by the pump 4 hours a day.",
        "A timer runs the pump 2 hours at night to fill the tank.",
        "The tank is filled by a generator pump for 90 minutes a day.",
    )),
    ("store.hours", "3", (
        "We pump to the tank for 3 hours each evening.",
        "The irrigation pump runs 3 hours a day to fill the tank.",
    )),
    ("store.fills", "none", (
        "Nothing fills the tank but rain.",
        "The tank fills only from the roof.",
    )),
    ("store.fills", "always", (
        "The tank is filled by the spring around the clock.",
        "The spring trickles into the tank all day and all night.",
        "Water runs into the tank all the time at 2 L/min.",
    )),
    ("store.fills", "sun", (
        "The sun pump fills the cistern in daytime.",
    )),
    ("store.hours", "2", (
        "A timer runs the pump 2 hours at night to fill the tank.",
    )),
    ("store.inflow", "2 L/min", (
        "Water runs into the tank all the time at 2 L/min.",
    )),
    ("store.inflow", "5 gpm", (
        "The well pump gives the tank 5 gpm.",
        "The well pump gives the tank 5 gpm for 3 hours a day.",
    )),
    ("store.inflow", "1.5 gpm", (
        "Inflow to the tank is 1.5 gpm.",
    )),
    ("outlets.saver", "1", (
        "A clothes washer, kitchen sink, low-flow shower.",
        "Low-flow shower, one.",
        "One ordinary shower and one low-flow shower.",
    )),
    ("outlets.saver", "2", (
        "2 water-saving showers",
    )),
    ("use.each", "90 L/day", (
        "Consumption per capita 90 l/d.",
    )),
    ("use.each", "120 L/day", (
        "3 people, 120 L/day each.",
    )),
    ("use.peak", "400 L", (
        "In the busiest hour we use 400 L.",
    )),
    ("use.peak", "150 gal", (
        "We use 150 gallons in the two hours after milking.",
    )),
    ("use.peak_time", "2 hours", (
        "We use 150 gallons in the two hours after milking.",
    )),
    ("use.peak", "200 L", (
        "The morning rush takes 200 litres in 45 minutes.",
    )),
    ("use.peak_time", "45 min", (
        "The morning rush takes 200 litres in 45 minutes.",
    )),
    ("use.peak", "300 L", (
        "Peak: 300 L in 90 min.",
    )),
    ("use.peak_time", "90 min", (
        "Peak: 300 L in 90 min.",
    )),
    ("pump.relief", "yes", (
        "A safety valve sits at the pump outlet.",
    )),
    ("pump.guard", "switch", (
        "Diaphragm pump with its own pressure switch but no relief valve.",
    )),
    ("pump.guard", "both", (
        "Diaphragm pump, pressure switch and relief valve both.",
    )),
    ("pump.guard", "relief", (
        "Diaphragm pump with only a relief valve, no switch.",
    )),
    ("pump.present", "no", (
        "It's gravity fed, there isn't any pump.",
        "It's a pumpless system.",
    )),
    ("power.series", "3", (
        "6 panels wired 3S2P.",
    )),
    ("power.strings", "2", (
        "6 panels wired 3S2P.",
    )),
    ("power.series", "4", (
        "All four modules are wired in one string.",
        "Four 250 W panels, all in series.",
    )),
    ("power.series", "5", (
        "5 panels one behind the other in series",
    )),
    ("power.cable", "35 m", (
        "The electric lead from the house to the pump is 35 metres.",
    )),
    ("rain.dry_from", "5", (
        "The dry season starts in May and lasts 4 months.",
    )),
    ("rain.dry_from", "7", (
        "Dry months: July, August.",
    )),
    ("rain.dry_count", "2", (
        "Dry months: July, August.",
    )),
    ("rain.dry_from", "12", (
        "From December to February not a drop of rain.",
    )),
    ("rain.dry_count", "3", (
        "From December to February not a drop of rain.",
    )),
    ("rain.dry_from", "4", (
        "The five dry months begin in April.",
    )),
    ("well.rate", "20 L/min", (
        "After pumping 20 L/min for an hour I switched off and watched the level rise.",
    )),
    ("well.rate", "5 gpm", (
        "I ran the pump 40 minutes at 5 gpm, shut it down, and the water came up 3 ft in 10 min.",
    )),
    ("well.rate", "15 L/min", (
        "Recovery test: 15 L/min drawn for 2 hours.",
    )),
    ("well.pumped_for", "2 hours", (
        "Recovery test: 15 L/min drawn for 2 hours.",
    )),
    ("pipes.held", "laid", (
        "Hello, we have a spring-fed pond and a pump down at the pond in a little shed, 12 V off two panels. Pipe is 3/4 poly laying in the brush up to the cabin, 300 ft.",
        "We rolled out the poly pipe through the woods, not dug in.",
        "The pipe is just strung along the hillside.",
        "We did not bury it.",
    )),
    ("tank.volume", "1500 gal", (
        "The old tank was 500 gal, new tank on the hill 1500 gal.",
    )),
    ("use.people", "5", (
        "We are 5, with 40 guests in tents in August.",
    )),
    ("use.people", "2", (
        "I am 72 years old and live with my wife.",
    )),
    ("outlets.hose", "3", (
        "3 taps outside for hoses.",
    )),
    ("pump.guard", "none", (
        "No relief valve and no pressure switch on the diaphragm pump.",
    )),
    ("rain.dry_from", "6", (
        "Dry season starts in June here, we collect rain off the roof.",
    )),
    ("outlets.shower", "1", (
        "One ordinary shower and one low-flow shower.",
    )),
    ("power.series", "2", (
        "Six panels 2s3p.",
    )),
    ("power.strings", "3", (
        "Six panels 2s3p.",
    )),
    ("water.kind", "spring", (
        "It is a river stone house. We've a spring.",
    )),
    ("water.level", "-31 m", (
        "Borehole with level at 31 m, total depth 74 m.",
        "Q: how deep is the water? A: 31 m\nQ: How many people? A: 5",
        "The well: water 24 m in winter, 31 m towards autumn.",
        "The water of the well is found at 28 m, at the end of the dry season at 31.",
        "In the dry season the level goes down to 31 m, in the rains it is 9 m. It is a borehole.",
        "In the afternoon the well falls: it goes from 13 m to 31 m.",
    )),
    ("water.level", "-2 m", (
        "Pump stands 2 m above the lowest water. Suction 6 m of 32 mm PE.",
        "> 3. Water level?\n2 m below the pump.\n> 4. electricity\n230 V mains, 35 m of cable.",
    )),
    ("well.static", "48 m", (
        "The borehole has water at 48 m when it rests, 61 m when pumping 3 m³/h.",
    )),
    ("well.depth", "74 m", (
        "Borehole with level at 31 m, total depth 74 m.",
        "Pump is a submersible set at 60 m, well 74.",
        "Pump in the well at 28 m, the bottom 74.",
        "1. Depth of the well? - 74 m\n2. Distance to the house? - 130 m",
        "Tubewell 6 inch dia, 74 m. Family of 7.",
        "The well was drilled in spring: 8 gpm said the driller, 74 m deep, water at 30 m.",
    )),
    ("well.bore", "150 mm", (
        "The borehole (90 m, dia. 150 mm) has its pump at 70 m.",
        "Bore 90 m deep, 150 mm, water stands at 30 m.",
    )),
    ("well.tested", "6 gpm", (
        "SWL 35', PWL 120' @ 6 GPM, TD 200'.",
        "Borehole, static level 32 m, falls to 51 m when they pump 6 gpm.",
        "In the test the well was pumped at 6 gpm and the level went from 11 m down to 19 m.",
    )),
    ("pump.height", "-40 m", (
        "Q: How deep is the well? A: 48 m\nQ: Where is the pump? A: at 40\nQ: Household? A: 5 people",
    )),
    ("tank.level", "6 m", (
        "Tank 10 m3 stands on 6 m tower.",
        "Tank 3000 L on 6 m stand, pump at 40 m in the bore.",
        "The tank is on a tower of 6 m. It holds 10 m3.",
        "Storage 15 m³ on a stand, 6 m above the ground.",
        "A cistern of 8 m3 in the attic, 6 m above the kitchen.",
        "The tank, 5000 L, is up the hill; its bottom is 6 m above the house.",
    )),
    ("tank.volume", "5000 L", (
        "Box of 5000 l stays at 9 m of height, 25 m from bore.",
        "Storage 5000 L on a stand, 6 m above the ground.",
        "The tank is on a tower of 6 m. It holds 5000 L.",
        "From the well 35 m to the tank, its base is 6 m up, volume 5000 L.",
    )),
    ("store.volume", "3 m³", (
        "A spring runs into a tank of 3 m³. The pump takes from this tank and brings water to the house.",
        "Three times 1000 litres in IBC tanks beside the house, from which the pump draws.",
    )),
    ("way.length", "130 m", (
        "The borehole, and the pipe till the house 130 m.",
        "River 130 m from farm, farm 25 m up.",
        "From well to the castle (water tower) 130 metres.",
        "Until the drinkers 130 m, climb 5. Borehole with level 27 m.",
        "1. Depth of the well? - 52 m\n2. Distance to the house? - 130 m",
    )),
    ("way.climb", "12 m", (
        "The pump takes from the spring and must bring water to the house, 65 m far and 12 m above.",
        "From the gallery to house 12 m above, length 120 m.",
        "From cistern to the camp: 240 m line, height 12 m.",
        "Creek frontage; it's 12 m up from the water to the pad and 120 m of hose run.",
    )),
    ("way.climb", "-60 ft", (
        "We have a spring. Below it by 60 ft, 22 dairy cows with 2 float drinkers.",
    )),
    ("place.altitude", "1640 m", (
        "We are on 1 640 m above the sea.",
        "Our lodge is called Casa Verde and sits at 1640 m.",
        "Q: Elevation? A: 1640 m above sea level.",
    )),
    ("suction.length", "9 m", (
        "> 2. suction side\n9 m of 40 mm PE, 3 bends, foot valve.\n> 3. water level\n4 m below the pump.",
        "12 V pump, draws from the tote 9 m away through 1/2 inch PEX.",
    )),
    ("suction.bends", "3", (
        "> 2. suction side\n9 m of 40 mm PE, 3 bends, foot valve.\n> 3. water level\n4 m below the pump.",
    )),
    ("water.yield", "14 L/min", (
        "The source is a spring that gives in September 14 litres the minute.",
        "Stream with plenty of water (at least 14 L/min). House 35 m above the stream.",
        "Existing well: 14 L/min, pump at 45 m.",
        "Our spring has yield 25 litre per minute in rains and 14 in May.",
        "We have a spring in the forest; measured in July it gave 18 L/min, and at the end of the dry time 14 L/min.",
    )),
    ("water.yield", "24 L/min", (
        "The spring gives 10 litres in 25 seconds.",
        "> How much does the spring give?\n10 litres in 25 seconds, timed last week.\n> How far is it?\n310 m of 32 mm PE.",
    )),
    ("use.each", "12 L/day", (
        "The school serves 310 pupils and we estimate 12 litres per pupil each day.",
        "Camp for 40 guests, twelve litres per guest and day.",
    )),
    ("use.people", "35", (
        "30 boarders plus 5 teachers live here.",
        "Students and staff together 35.",
        "Pupils and teachers: 35 in total.",
        "Thirty five shepherds live here all year.",
        "a) how much does the spring give => 12 L/min\nb) how many people => 35",
    )),
    ("use.people", "3", (
        "Two of us and a lodger, so three.",
        "3 grooms live here.",
    )),
    ("use.peak", "400 L", (
        "Complaints at 7 in the morning: 400 litres used within 20 minutes.",
        "Between 6 and 7 in the morning 400 litres are drawn in half an hour.",
    )),
    ("use.troughs", "2", (
        "Pasture for beef cattle, trough with float 2 pieces.",
        "55 head of cattle and a donkey. 2 tanks with floats.",
    )),
    ("outlets.shower", "11", (
        "Showers eleven, toilets eleven, basins eleven.",
    )),
    ("outlets.toilet", "8", (
        "An eco-lodge with 8 tents. Each tent one shower, one basin, one toilet.",
    )),
    ("outlets.sink", "7", (
        "Basins 6, toilets 8. One kitchen sink.",
    )),
    ("animals.cattle", "5", (
        "We've 18 cows in milk, 5 dry ones, and 30 sheep.",
        "7 cows also, two giving milk.",
    )),
    ("drip.rows", "2.5 m", (
        "Vines 3 ha, drip, 2,5 m rows, dripper 2 l/h each 1 m.",
        "Greenhouse with drip lines. Line 25 m, distance between 2.5 m, dripper every 20 cm.",
    )),
    ("drip.pressure", "1 bar", (
        "Tomatoes on drip, lines start with 1 bar.",
        "The pump must make 1 bar at the drip lines.",
    )),
    ("drip.least", "10 psi", (
        "Drip, emitters 1 gph, rated 20 psi, needs at least 10.",
    )),
    ("drip.hours", "6", (
        "Drip, drippers 4 L/h. I plan to water 6 hours at most, in three zones.",
        "Drip lines 100 m. Water works at night 6 hours.",
    )),
    ("drip.zones", "4", (
        "> Is the garden on drip? - yes, emitters 12 in apart\n> Zones? - four",
    )),
    ("pipes.hottest", "45 °C", (
        "Line laid on the ground, 180 m, 25 mm PE, 45 °C in summer.",
    )),
    ("power.panel", "200 W", (
        "Pump 24 V, on panels two times 200 W in series.",
    )),
    ("power.series", "4", (
        "Open sky, four 250 watt panels, all in one string.",
    )),
    ("power.capacity", "50 Ah", (
        "Battery lithium LiFePO4 50 Ah, panel 120 W.",
    )),
    ("pump.set", "4 bar", (
        "Booster pump behind the tank, 4 bar, speed controlled.",
    )),
    ("place.longitude", "36.7 °", (
        "Latitude -3.4, longitude 36.7, altitude 1,400 m.",
        "Lat 3.4 S, long 36.7 E.",
    )),
    ("store.days", "2 days", (
        "We want two days in hand without sun.",
    )),
)  # fmt: skip

# (path, sentences that may not tell it): of other things, other places, other times, or only thought of
NOT_SAID = (
    ("way.length", (
        "The line goes up 40 ft over the ridge then down 10 ft to the house.",
        "Pump is in the shed 10 ft from the well.",
        "The pump lowers the water from 12 m to 17 m when it runs for an hour.",
    )),
    ("way.climb", (
        "The lake level goes up and down 1.5 m over the year.",
        "The level drops by 3 m when we pump.",
        "The house is 4 m below the road.",
        "The pump could lift 200 ft.",
    )),
    ("well.depth", (
        "We have a drilled well, 20 feet of casing.",
        "The well pit is 5 ft deep.",
    )),
    ("well.pumping", ("Standing water 12 m, draws down 5 m while pumping.",)),
    ("suction.length", ("Shallow well, foot valve at 20 ft.",)),
    ("tank.level", (
        "Which is better: a tank on the hill, 30 ft up, or a pressure tank in the shed?",
        "Option 1 - a 5,000 L tank 20 m up the slope. Option 2 - a bladder tank. We have a well.",
        "My husband would put a 500 gallon tank on the ridge, 80 ft up.",
        "One idea is a tank 20 m up the hill, the other is a second pump.",
        "Under discussion is a header tank 15 m above the house, not built.",
        "Alternatively we might pump to a tank of 10,000 L on the hill 50 m up.",
    )),
    ("way.pipe", (
        "Should we lay 50 mm PE or 63 mm PE instead?",
        "My brother-in-law thinks 2 inch poly is needed.",
        "Either an 1 1/4 inch poly line straight down or a 1 inch one along the road.",
        "Two poly tunnels and two steel tanks are all there is.",
    )),
    ("power.panel", (
        "I'd go solar: say 6 x 410 W.",
        "If A, I thought 2 panels of 250 W.",
        "The dealer quoted 8 panels of 400 W.",
        "If we went solar, it would take 12 panels of 400 W.",
        "I am leaning towards 8 panels of 400 W.",
    )),
    ("animals.cattle", (
        "We'd like a barn, eight horses and two hydrants, 200 ft beyond the house.",
        "We're planning to keep 5 horses up there.",
        "The 60 head of yearlings drink from the dugout so don't count them for the well.",
    )),
    ("water.yield", (
        "Under discussion is a borehole the contractor promised at 2 m3/h, not drilled.",
        "The well is 60 m. Max flow 30 L/min, rated head 50 m.",
        "The driller found 15 gpm, but at the neighbor's.",
    )),
    ("store.volume", (
        "I've got two roads. One is to frack the well. The other is another cistern, say 1,600 gallons.",
        "How about putting in a 5000 L cistern?",
    )),
    ("pump.placement", (
        "The cistern is full, pump next to it.",
        "Pump room note for your file.",
        "Borehole pump gives 35 L/min at the yard.",
    )),
    ("pump.cut_in", (
        "We run our pump from eight panels, 2 strings of 4 in series.",
    )),
    ("water.yield", (
        "My realtor said the well was 12 gpm but that well is capped now.",
        "The old 5 gpm test was for the dug well, ignore it.",
        "I do not reach 30 l/min in the kitchen.",
    )),
    ("animals.cattle", (
        'In your mail you wrote "assume 40 cows and 70 l/min" but that was for my brother.',
    )),
    ("water.kind", (
        "The pond is no more used.",
        "The toilet cistern leaks 10 litres an hour.",
    )),
    ("pump.placement", (
        "A half horse jet pump came with the barn and I sold it.",
        "Our pump is controlled by a float in the tank.",
    )),
    ("pressure_tank.precharge", (
        "Gauge at the pump says 4 bar when it is off.",
    )),
    ("pump.set", (
        "The relief valve is by the pump, it is set at 6 bar.",
    )),
    ("pump.cut_in", (
        "I set the switch up to 60 psi now.",
    )),
    ("way.length", (
        "The tank is round, 2.4 m across and 1.8 m high.",
        "The submersible hangs at 48 m on a 32 mm poly riser, 4 m off the bottom.",
        "The hole is 38 m, lined with plastic.",
    )),
    ("well.drop_pipe", (
        "The submersible hangs at 48 m on a 32 mm poly riser, 4 m off the bottom.",
    )),
    ("way.pipe", (
        "A tank on stilts feeds 20 beef cows and one hose.",
        "My dad says the pipe is 2 inch, I think it's 1 1/4.",
    )),
    ("use.each", (
        "For 20 head of cattle at 50 litres each per day.",
    )),
    ("use.people", (
        "Originally planned for 50 guests.",
    )),
    ("power.panel", (
        "At noon the panels make 900 W.",
    )),
    ("power.voltage", (
        "Battery: 4 x 6 V golf cart.",
    )),
    ("outlets.washer", (
        "2 toilets 4 sinks, no washer.",
    )),
    ("outlets.drip", (
        "Drippers of 1.6 l/h, 4 zones one after the other.",
    )),
    ("well.depth", (
        "Depth of the pond 3 m.",
        "There is another well, 20 m deep, which we do not use.",
    )),
    ("tank.level", (
        "We could raise the tank by 3 m.",
    )),
    ("beds.area", (
        "The house 120 m2, drip in the garden.",
    )),
    ("hot.stored", (
        "Solar heater, 45 degrees tilt.",
    )),
    ("way.length", (
        "The pump is 3 m from the wall.", "The suction hose is 6 m long.", "The well is 60 m deep.", "We have 40 m of cable to the pump.",
        "The town is 12 km away.", "The fence is 200 m long.", "Our neighbour ran 300 m of pipe.",
        "The pump can push water 300 m.", "The road is 150 m from the house.", "Each drip line is 40 m.", "The trench is 60 cm deep.",
        "The plumber suggested 200 m of pipe.", "The casing goes down 30 m.", "We drove 40 km to the shop.", "The panels are 20 m from the house.",
        "The tank is 2 m wide.", "The pump hangs on 50 m of rope.", "It was 80 m in the old plan.",
    )),
    ("way.climb", (
        "The tank is 2 m high.", "The pump has a maximum head of 40 m.", "The well is 30 m deep.", "The house is 8 m tall.",
        "The water is 6 m down.", "The pump hangs at 30 m.", "The neighbour's house is 20 m higher.", "The suction lift is 4 m.",
        "We are 900 m above sea level.", "A pump of 60 m head was offered.", "The tank stands on a tower of 5 m.",
    )),
    ("water.level", (
        "The house is 9 m below the spring.", "The pipe is 1 m below ground.", "The tank is 12 m below the house.", "The well is 30 m deep.",
        "The pump hangs at 30 m.", "The neighbour's water is at 40 m.", "The cellar is 2 m below ground.", "Frost goes 1 m down.",
    )),
    ("use.people", (
        "The tank was made for 12 people.", "Two men dug the trench.", "Five people told me it is too small.", "My neighbours are four people.",
        "It took three of us to lift it.", "My two brothers helped.",
    )),
    ("outlets.shower", (
        "Should we add a second shower?", "My brother has two showers.", "I take a shower every morning.", "We may put in a shower one day.",
        "The shower rail costs 20 dollars.", "After a shower of rain the creek rises.",
    )),
    ("outlets.hose", ("The hose to the pump is 6 m long.", "The suction hose leaks.", "A fire hose would be too big.", "The hose clamp broke.")),
    ("outlets.sink", ("The water sinks to 9 m.", "The pump sinks into the mud.")),
    ("tank.volume", ("The septic tank holds 3000 L.", "The fuel tank is 200 L.", "The pressure tank is 80 L.", "The neighbour's tank holds 5000 L.", "Would a 5000 L tank be enough?", "The hot water tank is 150 L.", "The truck brings 8000 L.")),
    ("store.volume", ("The septic tank holds 3000 L.", "The pressure tank is 80 L.", "We fill a 20 L bucket.", "Would a 5000 L cistern be enough?")),
    ("pressure_tank.volume", ("The old pressure tank was 20 gal.", "Should I buy a 40 gal pressure tank?", "My neighbour's pressure tank is 80 gal.", "A 20 gal aquarium stands beside it.")),
    ("pump.set", ("The pump gives 3 bar at most.", "We would like 3 bar in the shower.", "The pipe is rated for 10 bar.", "The town has 4 bar.")),
    ("pump.cut_in", ("The gauge reads 40 psi.", "The pipe is rated at 160 psi.", "We have 40 psi at the tap.")),
    ("pressure_tank.precharge", ("The pump makes 28 psi.", "The tyre has 30 psi of air.", "The switch is 30/50 psi.")),
    ("water.yield", ("The shower uses 9 L/min.", "The pump gives 30 L/min.", "The neighbour's spring gives 40 L/min.", "The old well gave 5 L/min.", "We need 12 L/min.", "Each sprinkler takes 8 L/min.", "The kitchen tap fills a 10 L bucket in 60 seconds.")),
    ("water.kind", ("Last spring it froze.", "It works well.", "We came here in the spring.", "My neighbour has a well.", "Before, we had a well.")),
    ("pump.placement", ("Should the pump go in the basement?", "The neighbour has a submersible.", "I would put the pump in the shed.", "The pump to the house, and the freezer in the garage.")),
    ("power.source", ("Would solar be enough?", "The neighbour runs it on solar.", "We have solar lights.", "We had a generator before.", "We do not want solar.")),
    ("power.panel", ("A 1200 W pump.", "The heater takes 400 W.", "The neighbour has 400 W panels.")),
    ("animals.cattle", ("A 1 horse power pump.", "The neighbour has 40 cows.", "We used to have 12 cows.", "We would like to keep 10 cows.")),
    ("animals.goats", ("The neighbour's 20 goats broke in.", "We sold the 20 goats.", "One day we want 30 goats.")),
    ("pipes.held", ("The tank is buried.", "The cable is buried.", "My dog is buried by the well.", "An underground tank collects it.")),
    ("place.altitude", ("The house is 30 m above the well.", "The summit is at 2500 m.", "The pump works up to 3000 m altitude.")),
    ("beds.area", ("The house has 200 m2.", "The roof is 140 m2.", "We own 5 acres.", "The neighbour waters 2 acres.")),
    ("store.days", ("It took 5 days to dig.", "Call back within 5 days.", "The pump failed for 3 days.", "He came 5 days later.")),
    ("way.climb", ("The house is 300 ft up the hill.", "The spring is 60 ft up the hill from our house.", "The line is 3/4 in PEX buried 2 ft.")),
    ("way.length", ("The line is 3/4 in PEX buried 2 ft.", "house 18 m up the hill")),
    ("water.level", ("Our well is 4 m down.", "well 4 m down", "A bored well, 60 m down.")),
    ("well.depth", ("Our well is 4 m down.", "Water level in the well is 15 ft down.")),
    ("pressure_tank.volume", ("Our water heater has a 2 gallon expansion tank on it.",)),
    ("pressure_tank.precharge", ("The heater has a 2 gallon expansion tank on it, I pumped it to 40 psi.",)),
    ("pump.height", ("From the pump down to the water it's 12'6\".", "A solar pump on a bore at 60 m depth.")),
    ("pump.control", (
        "I've been reading your page about constant pressure for an hour.", "Your article on variable speed pumps is good.",
        "Will a constant pressure pump fix it?",
    )),
    ("power.source", ("Is solar worth it?", "The power bill is awful. Is solar worth it? We pay 14 cents.", "Could a generator do it?")),
    ("pump.placement", ("I have a diaphragm pump.", "It is a piston pump of 1 hp.", "A centrifugal pump of 1 hp.")),
    ("pump.relief", ("There is no relief valve on the heater.",)),
    ("pump.set", ("The set pressure is 2.8 bar. The set pressure is 3.4 bar according to the sticker, so it should be fine?",)),
    ("use.people", ("My wife and I and two kids. Five people use the water.",)),
    ("power.series", ("6 panels of 250 W, in series and parallel.",)),
    ("drip.crop", ("Tomatoes and peppers on drip.", "We eat tomatoes.")),
    ("drip.dripper", ("The spring gives 12 L/min.", "The drip zone takes 300 L/h.")),
    ("drip.rated", ("Can drip at 12 psi run off it?",)),
    ("hot.relief", ("The relief valve at the pump says 100 psi.",)),
    ("way.length", ("We're 5 km from the nearest grid.", "My parents, who live next to us, have a well of 50 m.", "The line is 1\" from well to house.")),
    ("way.climb", ("The stream drops 12 m over 150 m.", "There's a drop of 28 m from the tank to the house.")),
    ("way.pipe", ("My pump is set at 140 ft on 1-1/4\" poly drop pipe.", "Is a 40 mm line big enough, or should it be 50?")),
    ("pump.set", ("I measured 2.2 bar at the kitchen tap and 3 bar at the pump.", "Pressure: 2.5 bar at the pump, 1.2 bar at the shower.")),
    ("pump.cut_in", ("The pressure tank is only 20 gallons, 36 psi in it with the water drained.",)),
    ("pipes.held", ("The 32 mm PE is fine and pressure is good on the ground floor.", "The suction pipe is 60 ft to the dug well, which is 14 ft deep.")),
    ("store.volume", ("Somebody told me the tank ought to be 300 L.",)),
    ("well.depth", ("The trench is dug: 220 ft.",)),
    ("power.panel", ("I've looked at a 400 W panel.",)),
    ("pump.control", (
        "Please send me a price for a constant pressure pump. Thank you.",
        "Please size a constant-pressure pump for the following.",
        "What would a variable speed drive cost?",
    )),
    ("pump.placement", (
        "We are looking for a surface pump.",
        "Is a submersible in the creek all right or do I need a surface pump? Thanks.",
        "Ideally the pump would sit in the cellar.",
        "The hand pump on the well is rusted solid.",
        "Borehole pump fills a tank and a booster beside it feeds the houses.",
    )),
    ("power.source", (
        "Which panels would suit? I have no idea.",
        "I am sick of it. What would panels look like?",
        "There is no electric pump on the place.",
        "I've seen kits with a 370 W panel.",
        "The gate opener has a small solar panel.",
        "No power up at the tank but we got grid at the house.",
    )),
    ("power.panel", (
        "The fence energiser has a 12 V battery and a 20 W panel.",
    )),
    ("power.voltage", (
        "The mower's battery is 12 V and 40 Ah.",
        "The car battery is 12 V.",
    )),
    ("power.capacity", (
        "The mower's battery is 12 V and 40 Ah.",
    )),
    ("power.battery", (
        "How big a battery, and is lithium better?",
    )),
    ("use.daily", (
        "The book says a family needs 600 litres a day.",
        "A typical home uses 150 gallons a day, I read.",
        "In my textbook a household uses 600 litres a day.",
    )),
    ("use.each", (
        "As a rule of thumb a person uses 80 litres a day.",
    )),
    ("animals.cattle", (
        "The book says a cow drinks 70 litres a day.",
        "The pump does 60 L/min at 50 m head.",
    )),
    ("animals.goats", (
        "The previous people had 14 goats and six cows.",
    )),
    ("animals.hens", (
        "Next spring we will add 20 hens.",
    )),
    ("water.yield", (
        "Is 12 L/min a decent flow for a spring? We think so.",
        "Our spring is small. Is 40 mm enough for 20 litres a minute?",
        "Years back the well gave 20 L/min, they say.",
        "The box says 60 L/min at 2 bar.",
        "The shower head is rated at 9 L/min.",
    )),
    ("water.kind", (
        "Our water used to come from a creek 900 ft away.",
        "I have five totes - well, four of them joined.",
        "The fish pond holds 8000 L.",
        "The lake in the bottom field isn't mine.",
    )),
    ("well.depth", (
        "Had we a well of 50 m we would use it.",
        "The driller would have gone to 90 m.",
        "My brother asks whether it would do for his 70 m deep well.",
        "The architect drew a well of 40 m.",
    )),
    ("well.bore", (
        "The garden is 30 m long and 8 m wide.",
    )),
    ("pump.height", (
        "They want to put a 3 HP pump at 400 ft in my well.",
        "The architect drew a well with the pump at 35 m.",
    )),
    ("way.length", (
        "Thanks for asking. Would 200 m of pipe lose much pressure?",
        "The plan was to lay 300 m of 40 mm pipe.",
        "The ladder is 6 m long.",
        "The chicken shed is 40 m from the house.",
        "The power line ends 250 m from the house.",
        "The garden is 30 m long and 8 m wide.",
        "Tomatoes on drip, lines 40 m long, rows 1.2 m apart.",
        "Our water used to come from a creek 900 ft away.",
        "The bore is deep. The pump is to 100 meters.",
    )),
    ("way.climb", (
        "If only the spring were 20 m above us.",
        "The pump's data sheet gives a lift of 45 m at 20 L/min.",
        "The last house sits 12 m above the first one.",
        "In August the river falls another 1.5 m.",
        "When a stone falls, maybe 10 m down, we hear it.",
    )),
    ("way.pipe", (
        "The plan was to lay 300 m of 40 mm pipe.",
        "We had 1/2 inch hose, now it is another.",
    )),
    ("tank.level", (
        "In the first draft the tank was 9 m above the house.",
        "We wish the tank were 10 m higher.",
    )),
    ("tank.volume", (
        "The house is 4 m above the rain tank of 9000 L.",
        "We imagine a 10 m3 tank on the hill.",
    )),
    ("pressure_tank.volume", (
        "No pressure vessel yet, I figured a 100 L pressure tank would be about right.",
        "We have no pressure tank. The shop has a 24 L pressure tank.",
    )),
    ("store.volume", (
        "The switch is 40/60. The tank, 32 gallon, feels heavy. The pump is new.",
    )),
    ("store.days", (
        "In February the tanks ran dry for two weeks.",
    )),
    ("store.hours", (
        "We irrigate by drip. I can run 6 hours a day.",
    )),
    ("pipes.held", (
        "The pump stands on the ground beside the tank.",
        "The tank is on the ground behind the barn.",
        "The drum is buried in the ground by the gate.",
        "The cable lies on the ground.",
    )),
    ("use.people", (
        "The hall has 20 members, but nobody lives here.",
    )),
    ("outlets.shower", (
        "A friend of mine runs a lodge with 12 showers.",
    )),
    ("way.climb", (
        "My neighbour says a ram would do it, his lifts 30 m.",
        "The line was buried last fall, 760 ft.",
    )),
    ("way.length", (
        "The septic tank is 60 ft from the house.",
        "The allotment is 250 m2, 20 m long, flat.",
        "The old system: spring, gravity, 800 ft.",
        "The van has an outdoor shower on a 3 m hose.",
    )),
    ("outlets.sink", (
        "The commune brings it only to the basin at the roadside.",
    )),
    ("pump.placement", (
        "There is 60 psi at pump, 46 psi at house.",
        "We live here. Pump there, or jet pump in the chalet?",
    )),
    ("use.people", (
        "Our club has 60 members.",
    )),
    ("animals.goats", (
        "I said 120 goats, it is 140 now.",
    )),
    ("water.yield", (
        "Your sheet says 6.5 gpm for me, and our spring is small.",
        "We hung the new pump in the well. It delivers 3 m³/h.",
    )),
    ("water.level", (
        "Driller says everybody here gets water at 50 to 70 m.",
    )),
    ("power.source", (
        "Solar guys quoted a lot. What would panels look like?",
    )),
    ("outlets.shower", (
        "On a good Sunday there are 25 showers within two hours.",
    )),
    # what a run of words, another's, another time's or another thing's seems to tell
    ("way.length", (
        "The suction is one inch poly about 40 feet long with one foot valve.",
        "Old hand-dug well, 14 m to the bottom.",
        "The ladder in the well is 6 m long.",
        "The nearest mains is 600 m away.",
        "The tank is 2.2 m high and 3 m across.",
        "Our sub is set 5 m off the bottom of the well.",
        "Tank to house: 8 m down.",
        "When the well was drilled the static was 40 ft, today I measured 62 ft.",
        "The height, 15 m, I took from a map, so maybe 18 m.",
        "House at the top, well at the bottom. 46 ft between the two in height.",
    )),
    ("well.depth", (
        "I will dig the pipe in 60 cm deep. The well is new.",
        "From the well it goes 350 ft in 1 inch black poly to the house.",
        "pump's a sub at 75 ft well is by the barn",
        "The tank's 4,000 gallons, full it's 9 ft deep. The well is new.",
        "The garden slopes 5 m from top to bottom.",
        "Water depth in the well is 4 m.",
        "I wrote about a 90 ft well, that was my dad's place. Mine is a spring.",
        "A buddy with a 600 ft well runs ten panels.",
        "This is for the place I lease, not my home place (home has a 500 ft well, forget that).",
        "The upper farm has a well of 50 m and I will write about it another time.",
    )),
    ("way.climb", (
        "Our supplier downstate runs the same pump with a 24 ft lift.",
        "The pump shed is 2 m above the well head.",
        "The bore is 52 metres water comes up to 14",
        "Our old supply, for your info: a ram, 6 m fall.",
    )),
    ("pump.height", (
        "The pump hangs 5 m above the bottom of the well.",
        "We pump from the river to a tank, then it gravity feeds 8 m down to the house.",
    )),
    ("tank.level", (
        "There's a hump in the line that's only 2 m below the tank.",
        "The tote sits 20 m below the spring, filled by it.",
    )),
    ("water.level", (
        "We lift the water to the tank and from there it falls 10 m to the house.",
        "well 90 ft static 35 sub at 75",
    )),
    ("water.yield", (
        "Submersible in a well. Its curve as I measured it: 2 gpm at 210 ft, 5 gpm at 180 ft.",
        "Water is 9 m down, to fill a 200 L drum by the spring.",
    )),
    ("water.kind", (
        "I don't want to burn the motor out in the first summer.",
    )),
    ("pressure_tank.volume", (
        "We did have a 100 litre pressure vessel but the bladder burst and I took it out.",
    )),
    ("store.hours", (
        "After two hours of pumping the level had gone down.",
    )),
    ("pump.cut_in", (
        "We hung the pump at 40, and there are 90 cattle on 4 troughs.",
    )),
    ("way.pipe", (
        "They quoted us a 1.5 kW pump and 63 mm pipe.",
        "House at the top, 46 ft between the two in height.",
        "A neighbor says to go to 2 inch pipe but he sells it.",
    )),
    ("animals.dairy", (
        "Six milking goats.",
    )),
    ("animals.goats", (
        "A little ram lifted the water once. 18 alpacas.",
    )),
    ("drip.rows", (
        "We water vegetables by drip, 20 rows of 20 m.",
    )),
    ("pump.relief", (
        "Since it was fitted after our well pump the relief valve of the 150 litre water heater drips.",
    )),
    ("pump.present", (
        "The well is 480 feet, solar. From the tank two troughs by gravity.",
    )),
    ("power.source", (
        "The power pole is 200 m away.",
        "The nearest grid is 600 m away.",
    )),
    ("use.troughs", (
        "If all goes well we'll add a barn with a trough.",
    )),
    ("pump.placement", (
        "The shop offered a jet pump of 1,100 W or a submersible of 800 W.",
        "Suction line is 25 ft of PVC with two elbows.",
    )),
    ("place.name", (
        "We are here in May and at Christmas.",
        "The well log is at No 12 in Box 4.",
    )),
    ("power.battery", (
        "Sun only, no battery, pump runs when it shines.",
        "Pump runs on solar during the day. No batteries at all.",
        "My brother has AGM in his RV. We've no battery.",
        "Should I get lithium or AGM?",
        "My tractor battery is flat, ignore that.",
    )),
    ("power.source", (
        "We are not on grid and don't plan to be.",
        "We're off grid.",
        "The grid ends two miles down the road.",
        "A small wind turbine charges our batteries.",
        "We live off the grid in a yurt. The spring is 40 ft up the hill.",
        "We are miles off grid line.",
        "The power company wants $40,000 to bring a line in.",
        "A quote from the power company was silly money.",
        "I can't get regular power out there.",
        "We do not have standard power.",
        "Our micro hydro power set gives 400 W.",
        "A small hydro turbine makes our electricity.",
        "The fence charger plugs into the house.",
        "The drip filter got plugged in July.",
        "I could run it from the house outlet if need be.",
        "We might get a generator.",
    )),
    ("pump.placement", (
        "A booster pushes it to the house.",
        "A booster pump gives 3 bar.",
        "Should I buy a submersible or a jet pump?",
        "It is not a submersible.",
        "I am thinking of a submersible for next year.",
        "The pressure tank is in the cellar.",
        "It is a non-submersible one.",
        "We've a booster in line after the tank.",
        "The pump is 200 m from the house.",
        "A hand pump stands on the well.",
        "The pump dealer is next to the bank.",
        "We lowered a bucket into the well.",
        "We want a pump for the basement.",
        "The heater is in the basement and the pump I don't know.",
        "The sewage pump sits in the basement.",
        "A sump pump keeps the cellar dry.",
        "My father, 80, has a well of his own with a submersible.",
    )),
    ("pipes.held", (
        "The tank is buried, the pipe we will bury some day.",
        "I plan to bury the pipe.",
        "The cable is buried.",
        "The line is going to be buried once the ground thaws.",
        "The neighbour buried his.",
        "Should I bury the pipe?",
        "The tank lies on the ground.",
        "The pump is on the ground.",
        "Panels on the ground.",
        "Push-fit coupling on the heater leaks.",
        "The cows lie in the pasture by the line.",
        "The cable is clipped along the fence.",
        "The water is covered with leaves.",
    )),
    ("drip.filter", (
        "Should I put in a filter for the drip?",
        "We filter the drinking water with a cartridge filter. Drip lines run in the beds.",
    )),
    ("drip.hours", (
        "We hand-water for 2 hours a day.",
    )),
    ("use.people", (
        "The neighbors, five people, have their own well.",
    )),
    ("pump.relief", (
        "The water heater has a relief valve.",
        "The heater's safety valve drips.",
    )),
    ("pump.guard", (
        "The jet pump has a pressure switch and a relief valve.",
    )),
    ("power.shade", (
        "We lose 20 % of the pressure in the pipe. Panels stand in front of trees.",
        "The pump loses 20% to friction. Solar panels, no shade.",
    )),
    ("tank.level", (
        "I work on a 9 ft stand. The pump is in the shed.",
        "The deer stand is 9 ft high. The tank is in the cellar.",
        "We lift into a tank on a tower. From the borehole to the tower are 130 metres.",
    )),
    ("water.level", (
        "It is 300 m down to the water tank.",
        "The track goes 80 m down to the water main.",
    )),
    ("well.pumping", (
        "The temperature drops to 36 when we pump.",
        "The pressure falls to 36 psi when the pump runs.",
    )),
    ("well.steady", (
        "Spring box with a steady 3 gpm, never changes.",
    )),
    ("well.bore", (
        "The pipe is 32 mm inside the house.",
        "The tank is 1 m inside the fence.",
    )),
    ("pump.height", (
        "The switch is set 2 m below ground in the well pit.",
    )),
    ("outlets.shower", (
        "Is that enough for one shower per guest every day?",
        "One shower per person a day is what we want.",
    )),
    ("outlets.washer", (
        "My wife had plans for a washing machine but no.",
        "Once we dreamed of a washing machine.",
    )),
    ("outlets.toilet", (
        "Two cabins. Each has a composting toilet.",
    )),
    ("outlets.sink", (
        "Intake basin of 2 m³ by the brook. House 21 m over the basin.",
    )),
    ("use.people", (
        "26 kids \"help\" in the school garden.",
        "The cabin has a sink. We're 4 people but we're on town water.",
        "The dry months are June to September, four in all.",
    )),
    ("animals.dairy", (
        "I buy milk and four cows graze next door.",
    )),
    ("power.source", (
        "My brother came by. He has 12 panels on his shop.",
        "The solar idea is dead.",
        "A man wanted to sell me solar panels.",
    )),
    ("power.cable", (
        "A repairman wanted to sell me 40 ft of heat cable.",
        "Somebody said 40 ft of cable would do.",
        "200 ft of fence wire mesh.",
    )),
    ("power.voltage", (
        "Will your controller (it says at most 150 V) survive that?",
        "He also left me two 6 volt golf cart batteries.",
    )),
    ("water.yield", (
        "The 1 gpm float valve in the reservoir takes forever. Our well is old.",
        "120 trees, each with a micro sprinkler, flow 35 L/h. The well is dug.",
        "The seller gets 30 gpm, his log says 7.",
    )),
    ("way.pipe", (
        "Somebody told us to use 3 inch poly pipe.",
        "Someone else said 2 inch PVC would do.",
        "700 ft to the barn, for 25 sheep and 2 horses and one hose.",
    )),
    ("pump.placement", (
        "Would you put the pump in the lake or in the shed?",
        "Should we hang the pump in the well?",
    )),
    ("drip.filter", (
        "Do I need a filter on the drip? There is no pump.",
        "The filter question: none of us knows drip.",
    )),
    ("tank.volume", (
        "The old wooden tank held 4,000 gallons but it rotted.",
    )),
    ("drip.length", (
        "Peppers on drip tape, 3 ft rows.",
    )),
    ("beds.area", (
        "A roof of 60 m² in all, drip under it.",
        "60 acres of forest. A drip line for the beds.",
    )),
    ("place.name", (
        "We are on Monday open.",
        "Place is on The Hill.",
        "We are on PE pipe.",
        "The hut is on Mains electricity.",
        "We live on Rainwater.",
    )),
    ("place.altitude", (
        "Cabin at the well, 200 ft.",
    )),
    ("way.climb", (
        "Pressure tank, +9 m of cable.",
    )),
    ("drip.hours", (
        "It drips for 3 hours after rain.",
    )),
    ("outlets.shower.together", (
        "Two showers. Can we ever run them?",
    )),
    ("drip.holds", (
        "Compensating for the pressure is hard. Plain drip tape.",
    )),
    ("drip.crop", (
        "Beans, squash and corn on drip.",
    )),
    ("rain.dry_from", (
        "The well ran dry in June. It rained in October.",
        "Our dry well begins in March to fill.",
    )),
    ("store.hours", (
        "It takes 4 hours to fill the tank.",
    )),
    ("use.peak", (
        "The peak of the roof is 5 m in the air.",
        "Peak sun is 5 hours, worst case 300 L in 2 days.",
    )),
    ("use.each", (
        "25 cows at 80 L/day each.",
        "4 people and 20 cows, 60 L/day each.",
    )),
    ("water.kind", (
        "My father, 80, has a well of his own with a submersible.",
    )),
    ("water.yield", (
        "The kitchen tap gives 10 litres in 40 seconds.",
        "The neighbours across the road, who have 55 m of bore and 3 m³/h, never complain.",
        "The toilet takes 6 litres in 30 seconds to fill.",
    )),
    ("use.people", (
        "Seven horses live here and nine goats live on site.",
    )),
    ("outlets.sink", (
        "There are three basins with floats for the cattle, 25 cows.",
    )),
    ("animals.goats", (
        "Trough for sheep: 3 pieces with float.",
    )),
    ("power.source", (
        "Grid power is there, but I can't count on it.",
        "Mains supply is there but it is coming only 3 hours, so please do not count on it.",
    )),
    ("power.voltage", (
        "240 V mains at 500 m, too far I think, so panels.",
    )),
    ("power.battery", (
        "The pumps stand beside the cistern, flooded suction.",
        "The pumps stand beside it, flooded.",
    )),
    ("power.panel", (
        "Our sister group got theirs with 6 panels of 300 W; ours is not bought.",
    )),
    ("pump.cut_out", (
        "Pump short-cycles, on for 8 seconds, off for 10.",
        "The pump gives up the moment two things are open. One is the shower.",
    )),
    ("pump.placement", (
        "Today the pump sucks air after 45 minutes.",
    )),
    ("pressure_tank.volume", (
        "A man at the store told my husband that we'd need a 119 gallon pressure tank.",
    )),
    ("suction.length", (
        "We draw water from the neighbour 500 m away by truck.",
    )),
    ("way.length", (
        "My husband says the pipe is 120 m. I measured 100 m.",
        "We've grid, but far, 3 km, so solar.",
    )),
    ("tank.level", (
        "The tank's water is warm. It stands 3 m above the lowest water, suction 12 m of 50 mm PE.",
    )),
)  # fmt: skip
