"""More ways in which facts may be said, of our own: of short notes and of speech; as ``phrasings`` says."""

SAID = (
    ("water.yield", "8 L/min", (
        "The agent promised 20 L/min but when we ran the pump for an hour the well only made 8 L/min.",
        "We bailed it for two hours and it yielded 8 L/min. It is a dug well.",
    )),
    ("water.yield", "10 gpm", (
        "Drilled well. The fellow who drilled it wrote 10 gallons a minute on the card.",
    )),
    ("water.yield", "0.5 gpm", (
        "Our well is a poor yielder, half a gallon a minute.",
        "The bore is a weak producer at half a gallon per minute.",
    )),
    ("water.yield", "0.4 gpm", (
        "There's a seep in the bank that trickles out about 0.4 gpm.",
    )),
    ("water.yield", "12 L/min", (
        "The spring dribbles 12 L/min into a box.",
        "The spring used to give 25 L/min, now only 12 L/min.",
    )),
    ("well.depth", "160 ft", (
        "Well 6 in, 160 ft. Water 115 ft. Pump at 150 ft.",
        "Well: 6\" casing, 160 ft. Static 40 ft.",
    )),
    ("well.bore", "6 in", (
        "Well 6 in, 160 ft. Water 115 ft.",
    )),
    ("well.bore", "150 mm", (
        "The borehole is 64 m deep with 150 mm inside diameter.",
    )),
    ("well.bore", "110 mm", (
        "The pump hangs in a 110 mm borehole at 38 m.",
    )),
    ("pump.height", "-38 m", (
        "Pump: submersible, in a 110 mm borehole, 38 m down.",
    )),
    ("pump.height", "-60 m", (
        "Bore is 75 m. Pump goes at 60 m.",
        "Bore is 75 m, water at 30 m, the pump will hang at 60 m.",
    )),
    ("pump.height", "-66 m", (
        "He has a 4-inch bore with a sub pump. Sits at 66 m.",
    )),
    ("pump.height", "-90 m", (
        "Bore's 110 m, water at 62 m, we pull from 90 m.",
    )),
    ("pump.height", "-150 ft", (
        "The well guy set the pump at 150 ft. Well is 200 ft deep.",
    )),
    ("well.pumping", "47 m", (
        "Bore. Static 30 m, pumping level 47 m.",
    )),
    ("water.level", "-34 m", (
        "Borehole 55 m, rest water level 21 m, dropping to 34 m after a day's pumping.",
        "In the borehole the water is at 21 m, falling to 34 m in the dry season.",
    )),
    ("water.level", "-22 ft", (
        "waters at 22 ft in my sandpoint well.",
        "Water's 22 ft down in our driven point.",
    )),
    ("water.level", "-100 ft", (
        "Submersible in 4\" casing. water lvl 100 ft.",
    )),
    ("water.level", "-1 m", (
        "It pulls water out of a 1000 liter tote under the floor, pump is 1 m above it.",
    )),
    ("store.volume", "1000 L", (
        "It pulls water out of a 1000 liter tote under the floor, pump is 1 m above it.",
        "The pump sucks from a 1000 L ibc beside the hut.",
    )),
    ("well.drop_pipe", "88 m", (
        "Borehole. Pump hung at 88 m on 88 m of 40 mm drop pipe.",
    )),
    ("well.drop_pipe", "200 ft", (
        "The well has 200 ft of 1-1/4 poly drop pipe.",
    )),
    ("way.length", "750 m", (
        "Borehole in the yard. Farthest drinker is 750 m out, and 14 m above the yard.",
        "Bore, then troughs. The furthest trough is 750 m away in 32 mm poly.",
    )),
    ("way.length", "650 m", (
        "Dam at the bottom, paddock 38 m higher, track between is 650 m.",
    )),
    ("way.length", "60 m", (
        "Lake water. 60 m up to cabin along trail, 14 m rise.",
        "It is 60 m up to the cabin following the path.",
    )),
    ("way.length", "210 m", (
        "Pump over the creek, house is 40 m up and 210 m back in the trees.",
        "The cabin is 40 m higher and 210 m away from the spring.",
    )),
    ("way.length", "900 ft", (
        "The tank is on the ridge with a line coming down 900 feet to the house.",
        "Two inch poly running 900 ft from the spring to the barn.",
    )),
    ("way.length", "35 m", (
        "Tank to shack is about 35 m, uphill 2 m.",
        "Well to house 35 m, climb 4 m.",
    )),
    ("way.climb", "4 m", (
        "Well to house 35 m, climb 4 m.",
    )),
    ("way.climb", "50 m", (
        "From the pond it is going up 50 m over 430 m of pipe to the trough.",
        "The line climbs up 50 m in 430 m.",
    )),
    ("way.length", "430 m", (
        "From the pond it is going up 50 m over 430 m of pipe to the trough.",
    )),
    ("way.climb", "4.5 m", (
        "It lifts on up to a house 4.5 m above the well.",
    )),
    ("tank.level", "48 m", (
        "We pump from a creek to a tank on the terrace, 48 m above the creek.",
        "We pump to a tank 48 m above the spring.",
    )),
    ("tank.level", "60 m", (
        "It pushes up to a storage tank that's 60 meters higher and 350 m away.",
    )),
    ("tank.level", "9 m", (
        "Borehole. Tank on a tower, 9 m, 15 000 litres.",
        "Borehole. Tank on a 9 m tower.",
    )),
    ("tank.level", "1 m", (
        "4 water butts linked, 840 litres all told, raised 1 m. Drip beds, no pump.",
    )),
    ("way.climb", "0 m", (
        "From the well it's 25 m to the trailer, flat as a pancake.",
    )),
    ("way.climb", "0 ft", (
        "From there it is 80 feet to the kitchen door, level ground I should think.",
        "The barn is 80 feet from the well, all on the level.",
    )),
    ("pump.most_flow", "1.8 gpm", (
        "Pump is a 12-volt one, 1.8 gpm.",
    )),
    ("pump.most_flow", "6 L/min", (
        "The pump is a diaphragm pump, 6 L/min, hanging at 30 m.",
    )),
    ("pump.cut_in", "25 psi", (
        "The pump is set to stop at 40 psi and start again at 25 psi.",
    )),
    ("pump.cut_out", "40 psi", (
        "The pump is set to stop at 40 psi and start again at 25 psi.",
    )),
    ("pump.cut_in", "2 bar", (
        "The pump goes off at 3.5 bar and comes back on at 2 bar.",
    )),
    ("pump.cut_in", "30 psi", (
        "Pressure tank in the pit and the pressure's thirty to fifty.",
    )),
    ("pump.set", "350 kPa", (
        "Pump is variable speed, 350 kPa set.",
    )),
    ("pump.set", "50 psi", (
        "Submersible, set 50 psi const pressure.",
    )),
    ("pump.set", "3 bar", (
        "Into a cistern in the cellar, and from there a booster pump at 3 bar.",
        "The constant pressure pump is set at 3 bar.",
    )),
    ("pump.control", "speed", (
        "Pump set for 55 psi with a variable drive.",
        "Pump runs on a frequency drive.",
    )),
    ("pump.placement", "out", (
        "The pump is a surface one beside the cistern.",
    )),
    ("use.people", "2", (
        "We are a couple in our seventies with a place at the lake.",
        "We're a retired couple.",
        "I live here with my husband.",
        "I retired here with my wife on a small farm.",
        "just me and my girl.",
    )),
    ("use.people", "5", (
        "Our three kids and the two of us moved in in May.",
    )),
    ("use.people", "12", (
        "10 guests at most and the two of us.",
    )),
    ("use.people", "3", (
        "We are two grown people and a grandbaby.",
    )),
    ("use.people", "4", (
        "Two adults plus two kids live here.",
        "Wife, two kids, him. Three showers.",
    )),
    ("use.people", "1", (
        "just me and 2 dogs lol.",
    )),
    ("outlets.shower", "3", (
        "It's 4 showers, no wait, 3 showers.",
    )),
    ("outlets.toilet", "2", (
        "3 toilets, sorry, 2 toilets. One sink.",
    )),
    ("outlets.shower", "2", (
        "One shower upstairs, one down, two basins.",
    )),
    ("outlets.saver", "1", (
        "1 shower with low flow head, 1 sink.",
    )),
    ("outlets.micro", "14", (
        "We've 14 micro sprinklers and 3 big sprinklers.",
    )),
    ("outlets.sprinkler", "3", (
        "We've 14 micro sprinklers and 3 big sprinklers.",
    )),
    ("power.panel", "100 W", (
        "2 100w panels in parallel run my 24v pump.",
    )),
    ("power.strings", "2", (
        "2 100w panels in parallel run my 24v pump.",
    )),
    ("power.source", "sun", (
        "One panel, 160 W, flat on the roof.",
    )),
    ("power.tilt", "0 °", (
        "One panel, 160 W, flat on the roof.",
        "The two panels lie flat.",
    )),
    ("power.source", "grid", (
        "Well pump. power is grid.",
        "Well pump, 240 volt from the co-op.",
        "Borehole pump, 230 V grid.",
        "Drippers. Pond pump. Three-phase grid.",
    )),
    ("power.shade", "20 %", (
        "Panels 350 W. Shade takes a fifth of the day.",
    )),
    ("power.shade", "25 %", (
        "Panels on the roof; a pine shades them for a quarter of the day.",
    )),
    ("pipes.held", "laid", (
        "black poly 32 mm already layed on the ground.",
    )),
    ("pipes.held", "buried", (
        "1 inch poly, its burried a meter an half.",
    )),
    ("water.kind", "spring", (
        "okay so I have this spring up behind the cabin.",
    )),
    ("water.kind", "well", (
        "He has a 4-inch bore with a sub pump.",
    )),
    ("way.pipe", "1 1/4 in", (
        "430 m of pipe, 1 1/4 in. to the trough.",
    )),
    ("way.pipe", "2 in lay-flat", (
        "It pushes 180 ft of lay-flat hose, 2 inch, up to a tote.",
    )),
    ("suction.pipe", "32 mm PE", (
        "Suction 13 m, 32 mm poly, one foot valve.",
    )),
    ("hot.tank", "12 L", (
        "Cylinder 210 litres, expansion vessel 12 litres charged to 3 bar.",
    )),
    ("hot.precharge", "3 bar", (
        "Cylinder 210 litres, expansion vessel 12 litres charged to 3 bar.",
    )),
    ("drip.spacing", "1.5 ft", (
        "Drip lines 50 feet long with drippers a foot and a half apart.",
    )),
    ("drip.spacing", "1 ft", (
        "Drip beds. Dripper spacing a foot.",
    )),
    ("drip.spacing", "30 cm", (
        "drip: the emiters are 30 cm apart, 2 liters per hour each.",
    )),
    ("drip.dripper", "2 L/h", (
        "drip: the emiters are 30 cm apart, 2 liters per hour each.",
    )),
    ("drip.pressure", "2.4 bar", (
        "Orchard on drip. Supply 2.4 bar at the first row.",
    )),
    ("drip.pressure", "1.5 bar", (
        "Drippers. Pressure at the block 1.5 bar, flow 9 m3/h.",
    )),
    ("drip.flow", "9 m³/h", (
        "Drippers. Pressure at the block 1.5 bar, flow 9 m3/h.",
    )),
    ("drip.slope", "0 %", (
        "Drippers at 2 L/h. Slope none to speak of.",
    )),
    ("drip.hours", "4", (
        "Drippers of 2 L/h. I can let it run 4 hours a day.",
    )),
    ("use.each", "50 L/day", (
        "12 people, 50 litres each. A well.",
    )),
    ("use.each", "120 L/day", (
        "8 people at 120 litres = 960 L a day.",
    )),
    ("use.daily", "3000 L/day", (
        "The boss says 3000 litres a day covers it. Dam and 60 heifers.",
    )),
    ("store.reserve", "5000 gal", (
        "Tank. Fire marshal wants 5,000 gal kept back.",
    )),
    ("store.reserve", "5 m³", (
        "We'd like to keep 5 m³ in the tank for fire at all times.",
    )),
    ("store.fills", "none", (
        "Rain tank, filled by the roof alone.",
    )),
    ("rain.dry_from", "6", (
        "Cistern fed off the barn roof. the dry season is from June and it goes three months",
    )),
    ("rain.dry_count", "3", (
        "Cistern fed off the barn roof. the dry season is from June and it goes three months",
    )),
    ("pipes.weakest", "6 bar", (
        "Weakest bit is a plastic filter marked 6 bar.",
    )),
    ("pipes.hottest", "55 °C", (
        "Black poly lies on the rock in full sun and the water that comes out first is 55 degrees.",
    )),
    ("pump.motor", "70 %", (
        "Motor efficiency I took as 70 %.",
    )),
    ("beds.area", "240 m²", (
        "tank 9500 liters\ngas generator\ngarden 20 x 12 m on drip",
    )),
    ("pump.present", "no", (
        "We have a spring. No pump wanted.",
    )),
    ("use.people", "24", (
        "We are a convent of 14 sisters plus about 10 guests.",
    )),
    ("use.people", "35", (
        "Mountain hut with 32 beds plus 3 staff.",
    )),
    ("use.people", "46", (
        "A scout camp: 40 scouts and 6 leaders.",
    )),
    ("water.level", "-9 ft", (
        "Source: creek. Lift from creek to pump: 9 ft. Rise to house: 70 ft.",
    )),
    ("way.climb", "70 ft", (
        "Source: creek. Lift from creek to pump: 9 ft. Rise to house: 70 ft.",
    )),
    ("well.tested", "800 L/h", (
        "Borehole. Test: 7 hours at 800 l/h drew it down to 61 m.",
    )),
    ("well.pumping", "61 m", (
        "Borehole. Test: 7 hours at 800 l/h drew it down to 61 m.",
    )),
    ("pump.diameter", "96 mm", (
        "Borehole 80 m. Pump diameter 96 mm hanging at 60 m.",
    )),
    ("way.climb", "-26 m", (
        "We take water from a little weir 400 m upstream, 26 m higher. The cottage has one sink.",
    )),
    ("way.length", "400 m", (
        "We take water from a little weir 400 m upstream, 26 m higher. The cottage has one sink.",
    )),
    ("drip.length", "100 m", (
        "Drippers of 8 L/h, lines 6 m apart and 100 m long.",
    )),
    ("tank.volume", "2000 L", (
        "Storage is 2 tanks of 1000 l in the attic, 5 m over the kitchen.",
    )),
    ("suction.length", "60 ft", (
        "The jet pump is in the basement and there's 60 ft of 1 in poly to it w a foot valve.",
    )),
    ("drip.flow", "45 gpm", (
        "Well pump makes 45 gpm at the head of the drip.",
    )),
    ("store.volume", "275 gal", (
        "A tote of 275 gal under the deck feeds a 12v rv pump.",
    )),
    ("well.depth", "45 m", (
        "Borehole 45 m with hand pump.",
    )),
)  # fmt: skip

NOT_SAID = (
    ("pump.height", (
        "The pump house sits at 66 m altitude. Bore.",
    )),
    ("well.depth", (
        "Well to house 6 in pipe, 160 ft.",
    )),
    ("way.length", (
        "The furthest neighbour is 750 m away. Our well is 20 ft deep.",
        "Drippers every metre, lines 6 m apart and 100 m long.",
    )),
    ("pump.most_flow", (
        "The pump is broken, and we need 10 gpm.",
    )),
    ("pump.set", (
        "Someone said a booster at 3 bar would help?",
    )),
    ("way.climb", (
        "We go up 50 m over the ridge each morning for a walk.",
    )),
    ("use.people", (
        "We are a couple of miles from town.",
        "The couple next door have a well.",
        "A group of nine houses shares one spring.",
    )),
    ("power.source", (
        "Is the power grid near? No.",
    )),
    ("outlets.shower", (
        "One shower upstairs would be nice some day.",
    )),
    ("water.kind", (
        "We live on a road toward the creek.",
    )),
    ("power.tilt", (
        "The roof is flat.",
    )),
    ("drip.slope", (
        "No slope to speak of from well to house.",
    )),
    ("use.garden", (
        "The garden centre sold 400 L in the summer.",
    )),
    ("store.reserve", (
        "The fire needs 5 gallons to put out.",
    )),
    ("pump.present", (
        "Spring. No pump wanted? We have a pump in the shed.",
    )),
    ("water.yield", (
        "When we measured the pump it gave 8 L/min at the tap.",
        "The tap drips out 0.4 gpm. We have a spring box.",
        "Well in the yard. Flow 6 m3/h at 4 bar from the pump.",
    )),
    ("use.each", (
        "20 people at 6 bar each.",
    )),
    ("pipes.held", (
        "We laid the plank on the ground.",
    )),
    ("use.daily", (
        "3000 litres a day covers it, the seller of the kit says.",
        "Two people. Kitchen uses 600 litres daily.",
    )),
    ("water.level", (
        "Pump on the bank. The water drops 4 ft by fall.",
    )),
)  # fmt: skip
