"""What is easily misread, and what the same words do tell; of our own, as ``phrasings`` says."""

SAID = (
    ("way.length", "90 ft", (
        "The drop pipe is 180 ft of 1-1/4 poly. From the well to the house it's another 90 ft.",
    )),
    ("way.length", "320 ft", (
        "House is 320 ft across the field from the well.",
    )),
    ("power.source", "grid", (
        "I toyed with the notion of eight 400 W panels and a 48 V bank. For now we run the pump from the mains.",
    )),
    ("power.source", "generator", (
        "Mains comes in 2026 they say. We've a petrol generator.",
    )),
    ("way.pipe", "32 mm PE", (
        "The plan on paper shows 50 mm poly; what lies in the ground is 32 mm poly, 180 m of it from the spring to the house.",
    )),
    ("way.pipe", "25 mm PE", (
        "\"You'll want at least 32 mm pipe,\" said the man at the counter. We have 25 mm poly, 90 m of it.",
    )),
    ("well.depth", "42 ft", (
        "The well was 30 ft deep when we bought the place; we had it dug to 42 ft.",
    )),
    ("pump.height", "-33 m", (
        "The pump sat at 25 m till the drought, when we lowered it to 33 m. The bore is 40 m deep.",
    )),
    ("water.level", "-4 m", (
        "My pump has max head 42 m and max depth 7 m. Creek 4 m below it.",
    )),
    ("way.length", "40 m", (
        "One day the barn will get its own line, 80 m of 25 mm. Now there's only the house, 40 m from the well.",
    )),
    ("way.climb", "-21 m", (
        "It's 21 m from the spring down to the house.",
    )),
    ("tank.level", "9 m", (
        "Pipe comes out at the bottom of the tank, 1.5 m lower than the full level. The house is 9 m under the tank.",
    )),
    ("outlets.shower", "2", (
        "Both bathrooms have a shower and a toilet.",
    )),
    ("use.people", "5", (
        "We're a family of four plus grandma.",
    )),
    ("pressure_tank.volume", "100 L", (
        "The brine tank of the softener is 80 litres. The pump's pressure tank is 100 litres.",
    )),
    ("power.facing", "s", (
        "The roof faces west at 30 degrees, the panels stand on the ground facing south at 45.",
    )),
    ("power.open_voltage", "40 V", (
        "The inverter takes 60 to 145 V. The panels are 40 V open.",
    )),
    ("water.kind", "well", (
        "The dam's dry again, so we're back to the bore.",
        "There's anything but a spring here, only a bore of 55 m.",
        "The pond at the bottom of the garden has newts. We've a bore.",
    )),
    ("water.kind", "stream", (
        "The well went salty, so we now pump from the lake.",
    )),
    ("water.kind", "spring", (
        "The pond is for the ducks. Water comes from a spring on the neighbour's land.",
    )),
)  # fmt: skip

NOT_SAID = (
    ("power.panel", (
        "We are not sure whether to buy 6 or 8 panels of 415 W.",
        "I have a quote for ten 400 W panels and a 5 kWh battery.",
        "Could two 100 W panels run it? We have a 12 V diaphragm pump.",
        "Perhaps four panels, perhaps six of 300 W, who knows.",
    )),
    ("store.reserve", (
        "Half the 10,000 litres is kept for fire. Cistern.",
    )),
    ("store.volume", (
        "We top up the cistern with 5000 litres every month.",
        "Maybe a 1500 gallon cistern, maybe a 2500, we haven't decided. The roof is 1,200 sq ft.",
        "Our dream is a 30 m3 cistern. Reality is two totes of 1000 litres each.",
    )),
    ("tank.volume", (
        "The tractor has a 200 litre spray tank. The house is on a spring.",
        "The diesel tank holds 600 litres, the water tank 2000 litres.",
    )),
    ("pressure_tank.precharge", (
        "The booklet says to set the pre-charge 2 psi below cut-in. Our switch is 30/50.",
    )),
    ("way.length", (
        "We could go as far as 300 ft with a new well, says the driller. The old dug well is 22 ft deep.",
        "The salesman swears the pump will push 40 L/min up 60 m. We have a creek 25 m below the hut.",
        "Our creek falls 3 m over 40 m.",
        "An old survey has the spring at 310 m and the house at 270 m above sea level.",
        "The house is at 420 m, the spring at 465 m.",
        "It was taken out when we got the spring line, which falls by itself 18 m.",
        "The fence is 150 m from the creek. The house is 20 m above the creek.",
        "The driveway is 300 m long and climbs 40 m. The spring is above the house.",
        "The dam is 80 m long and 25 m wide and about 3 m deep. We pump from it.",
        "From the house to the barn is 80 m. We have a spring.",
        "The hose is 50 m and reaches the far corner of the garden.",
        "It's 90 m to the well as the crow flies, but the pipe goes round the barn.",
        "The house at the lake is 80 m long drive from the road, and has a borehole.",
        "The shed is 30 yards from us, and the creek is 10 m beyond the shed.",
        "The panels are on the barn, 60 m from the well.",
        "The generator shed is 20 m away so that we don't hear it.",
        "There's a lake 300 m away, but we may not pump from it. We've a dug well 7 m deep.",
        "The turbine's penstock is 200 m with 30 m of head. The house is fed by a separate well.",
        "The pump has run 4 m from the pressure tank since 1998. The well is 60 ft deep.",
        "The casing is 6 inch, pvc, 100 ft of it. Bore is 160 ft.",
        "The installer wants to hang it at 200 ft. The well is 240 ft.",
        "The garden slopes from top to bottom and is 60 m long. The well is at the bottom.",
        "There's 25 m between the panels and the pump. It's a bore.",
        "The pipe has 8 joints, one each 25 m, between spring and house.",
        "Three coils of 50 m each of 25 mm poly run from the spring to the cabin.",
        "Neighbour is drilling to 90 m. I'd be happy with my dug well.",
        "Wells here are all between 60 and 90 m. Ours came dry, so we catch rain.",
    )),
    ("way.climb", (
        "Uncle Joe in the next valley pumps 150 ft up with a jet. The stream is 12 ft below the pump.",
        "The driveway is 300 m long and climbs 40 m. The spring is above the house.",
        "The dam is 80 m long and 25 m wide and about 3 m deep. We pump from it.",
        "The trees between the creek and the house are 25 m tall. The pipe would be 120 m.",
        "The river is 6 m below the bank in summer and 1 m in floods.",
        "The spring is 300 m above the barn along the track.",
        "The creek runs 30 m behind the house. The pump would go 100 m further up.",
        "From the spring it goes down 30 m to the creek and up 20 m to the house.",
        "The line falls 8 m, then climbs 14 m to the tank.",
        "The spring box is 1 m by 1 m by 1 m. The pipe from it is 32 mm poly, 240 m.",
        "The solar shed is 25 m from the house, the creek 90 m.",
        "The road rises 50 m between us and the tank. The pipe goes beside the road, 600 m.",
    )),
    ("tank.level", (
        "Our tank has 2 m high walls and holds about 15 m3.",
        "The tank is 20 m above the house. I've just checked with the altimeter and make it 26.",
    )),
    ("well.depth", (
        "The 60 m of rope hold the pump at 42 m. It's a 100 mm bore.",
        "A bore 200 m from us hit water at 28 m. Ours isn't drilled yet.",
        "A mate of mine two valleys over gets 5 gpm from a 300 ft bore. We're still drilling.",
        "We paid for a 150 m bore but they stopped at 118 m.",
    )),
    ("water.level", (
        "The cellar is 3 m below ground, there the pump stands. The well outside is 9 m deep.",
        "They found water at 20 m when they drilled the neighbours' heat pump.",
    )),
    ("pump.height", (
        "The pump man thinks the water is at 30 m, the driller's log says 36 m.",
    )),
    ("pump.cut_out", (
        "The drip zone wants 6 gpm. The pump puts out 12.",
    )),
    ("water.yield", (
        "The data plate says max 55 m and 80 L/min. It's in a bore 48 m deep.",
        "When I open the hose I measured 4 gpm. We have a drilled well.",
        "The shower gives 9 L/min when nobody else draws. It comes from a spring tank.",
        "The filter is good for 10 gpm. Well is 150 ft.",
        "Half-inch hose lets through maybe 5 gpm. Source is a pond.",
        "The washing machine pulls 12 L/min. The spring manages half of that.",
        "The float valve passes 2 gpm. Tank of 500 gallons, fed by a spring.",
        "Far from 20 L/min, the spring barely gives 3.",
        "The well gives 10 gpm. At least it did in 2005.",
        "The kitchen tap runs 6 L/min, upstairs 3 L/min. We're on a spring line.",
    )),
    ("water.kind", (
        "Spring Creek Road, number 140. We're at 600 m.",
        "The old cistern under the house is filled with rubble.",
        "A river runs past, the permit for it was refused, so it's the roof.",
        "Old spring on the map, never found it. We truck water in.",
    )),
    ("way.pipe", (
        "Our spring comes out of a 2 inch pipe. The pump moves 20 gpm.",
    )),
    ("power.cable", (
        "I have 80 m of cable in the shed. The bore is 30 m from the house.",
    )),
    ("power.voltage", (
        "The panel voltage is 18 V, the battery 12.",
        "Our 24 V bank is dead; for now an extension lead runs the pump.",
    )),
    ("power.tilt", (
        "Roof pitch 35 degrees, panels flat on the shed.",
    )),
    ("animals.dairy", (
        "The farm across the road milks 120 cows from the same spring. We are two people.",
        "The milk vat is 2,000 litres and needs rinsing with 150 litres.",
    )),
    ("animals.cattle", (
        "We had three horses till Easter. One is left.",
    )),
    ("animals.goats", (
        "We sold half of the 40 sheep.",
    )),
    ("outlets.toilet", (
        "We never got round to the second toilet.",
        "The other cabin on the lot has its own well, 45 ft, and 2 toilets. Ours has a spring.",
        "The house lacks a toilet. There's a sink and a shower.",
    )),
    ("outlets.washer", (
        "The washing machine went to my daughter. One sink, one shower.",
        "A washing machine is on order. Sink and toilet are in.",
    )),
    ("use.people", (
        "There are five of us, or were: the two eldest have moved out.",
        "Each of the three houses holds 4 people.",
        "The boys moved out in spring, so where there were six of us there are now four.",
    )),
)  # fmt: skip
