"""What is counted, and what waters a plot, heats water or falls on a roof, of our own; as ``phrasings`` says."""

SAID = (
    ("use.people", "1", (
        "It's me and the dog. Sink and a shower.",
        "Only me and my two cats. A well.",
    )),
    ("use.people", "2", (
        "There's just Harold and me now. A well.",
        "Only me and Ruth now. A well.",
        "My wife Opal and I moved onto forty acres in March.",
        "It's me and my niece. A well.",
        "In the house are my cousin and I.",
        "A small wooden house, for me and my friend.",
        "I live with my mother. A well.",
        "We are both seventy-four and have moved here.",
        "A house for two. A well.",
        "Two people, me and the wife, and a washing machine.",
    )),
    ("use.people", "3", (
        "There's me, Pam and the lodger. No bath.",
        "Partner and me, plus a lodger. One sink.",
        "Me and the wife and our lad in the house. A well.",
        "Me, my girlfriend and a housemate who is away half the week. A well.",
        "There is 2 of us n a baby. A well.",
        "And we are three old women, with one shower.",
    )),
    ("use.people", "4", (
        "There's me, my husband and the twins. A well.",
        "Me, my wife, her mother and a lodger. A spring.",
        "We live in a yurt, me, my husband and our two girls. A spring.",
        "Four-person household, a well.",
        "In the house we are 4 and in the evening it is worst.",
        "A new baby makes us four.",
    )),
    ("use.people", "5", (
        "My brother, his wife, their two boys and myself. A well.",
        "House plus a flat, 3 + 2 people. 3 showers.",
        "Five humans on 11 acres. A well.",
        "We have wife me 3 kids.",
        "Mum, dad and three kids. A well.",
    )),
    ("use.people", "6", (
        "There's meself and herself and the four children, two showers.",
    )),
    ("use.people", "8", (
        "A bothy, sleeps 8. A burn.",
        "The cottage sleeps eight. A well.",
    )),
    ("use.people", "19", (
        "The convent is nineteen sisters. A well.",
    )),
    ("use.people", "35", (
        "Guests are maximum 24. There are also 11 staff.",
    )),
    ("use.people", "60", (
        "In the mission live 14 sisters and 46 girls.",
    )),
    ("use.people", "63", (
        "Up to 60 guests plus us three. A well.",
    )),
    ("outlets.shower", "1", (
        "A cottage with two showers - Gwen says one, so one. Two loos.",
        "There's a hot shower and a toilet.",
        "Sink and outdoor shower. Shower goes hot and cold.",
    )),
    ("outlets.shower", "2", (
        "2 cabins each w a sink n a shower.",
        "2 baths w/ shower + sink + toilet each, kitchen sink.",
        "Bathrooms each have a shower, a WC and a basin, and there are 2 of them.",
        "I first wrote three showers; one room is a pantry now, so two.",
        "A house with 2 bathrooms (shower, sink, toilet each).",
        "Two showers, my wife and I and a baby, so three of us.",
    )),
    ("outlets.shower", "3", (
        "Three bathrooms, each with a shower and a sink, plus a kitchen sink.",
        "The shower goes cold when all three showers run at once.",
    )),
    ("outlets.shower", "5", (
        "There is a shower in each of the 4 cabins and one in the house.",
        "Each of the 5 cottages has a shower, a toilet, and a basin.",
    )),
    ("outlets.shower", "8", (
        "Five of the eight showers run at once.",
    )),
    ("outlets.shower", "9", (
        "9 rooms, in each room is one bathroom with shower and toilet and basin.",
    )),
    ("outlets.shower.together", "3", (
        "The shower goes cold when all three showers run at once.",
    )),
    ("outlets.shower.together", "5", (
        "Five of the eight showers run at once.",
    )),
    ("outlets.sink", "2", (
        "One toilet, kitchen sink and a bathroom sink.",
        "Kitchen sink, one bath sink, shower, toilet.",
        "A sink here and another in the shed.",
        "Two sinks, kitchen sink and bathroom sink.",
    )),
    ("outlets.sink", "3", (
        "1 shower, 2 toilets, 2 bathroom sinks + kitchen sink.",
        "Bathrooms each have a shower, a WC and a basin, and there are 2 of them. One kitchen sink.",
        "Two sinks - no, Mary says three.",
        "A kitchen sink, bathroom sink, and a utility sink.",
        "Three basins, and I would like two of the basins open along with the shower.",
    )),
    ("outlets.sink", "4", (
        "Three bathrooms, each with a shower and a sink, plus a kitchen sink.",
    )),
    ("outlets.sink.together", "2", (
        "Three basins, and I would like two of the basins open along with the shower.",
    )),
    ("outlets.toilet", "0", (
        "A kitchen tap and a shower, and the toilet is dry.",
        "The toilet is a composter, no, the toilet is dry. One sink.",
    )),
    ("outlets.toilet", "2", (
        "One lavatory upstairs and another by the back door.",
        "2 dunnys, one sink.",
    )),
    ("outlets.washer", "0", (
        "She wants a new washing machine, we have none now.",
    )),
    ("outlets.washer", "2", (
        "I have to be honest about the washing machine, there's two.",
    )),
    ("outlets.hose", "0", (
        "7 toilets, 2 washing machines, none hose.",
    )),
    ("outlets.sprinkler", "36", (
        "12 sprinklers run together out of 36 total.",
    )),
    ("outlets.sprinkler.together", "12", (
        "12 sprinklers run together out of 36 total.",
    )),
    ("outlets.sprinkler.together", "3", (
        "10 sprinklers, 3 going at any one time.",
    )),
    ("animals.nursing", "85", (
        "85 pair, so 85 cows with calves, 5 horses. A ranch.",
    )),
    ("animals.nursing", "35", (
        "35 cows wi calves.",
    )),
    ("animals.cattle", "15", (
        "48 cows in milk, another 15 dry, and six troughs.",
    )),
    ("animals.cattle", "2", (
        "A cow, a horse and three ewes.",
    )),
    ("animals.goats", "19", (
        "Tups, nineteen. One trough.",
    )),
    ("use.troughs", "6", (
        "The cows drink through six float valves.",
    )),
    ("use.troughs", "2", (
        "40 cattle and two troughs at the road end.",
    )),
    ("use.troughs", "0", (
        "No float troughs and no garden.",
    )),
    ("use.each", "40 gal/day", (
        "Four people. We figure 40 gallons a day apiece.",
    )),
    ("use.each", "115 L/day", (
        "By day we are 5 souls and use 115 litres each.",
    )),
    ("use.each", "15 L/day", (
        "60 pupils in the day. One pupil needs 15 litres.",
    )),
    ("use.garden", "600 L/day", (
        "Our garden takes 600 litres on a hot day.",
        "For the orchard we spend 600 litres each day.",
    )),
    ("use.garden_from", "19", (
        "Our garden is dry and we start watering at 7 in the evening.",
    )),
    ("use.garden_hours", "3", (
        "The watering starts 5 am, 3 h. The garden is large.",
    )),
    ("use.peak", "350 L", (
        "At the busiest time we use roughly 350 litres over two hours.",
    )),
    ("drip.dripper", "2.3 L/h", (
        "Drippers, two point three litres an hour.",
        "Drip. One dripper gives 2.3 l/h.",
    )),
    ("drip.rated", "1 bar", (
        "Drip, drippers 75 cm apart; each gives 2.3 l/h at 1 bar.",
    )),
    ("drip.spacing", "40 cm", (
        "Pressure compensating drippers of 1.6 L/h at 40 cm.",
        "Drip. 40 cm emitter to emitter.",
    )),
    ("drip.length", "16 ft", (
        "Drip tape, each run is 16 ft.",
        "Drip tubing, 16 ft lines.",
        "Drip. Laterals run 16 ft.",
    )),
    ("drip.rows", "8 ft", (
        "Drip lines at 8 ft spacing between rows.",
        "Drip, one line every 8 ft.",
    )),
    ("drip.bore", "15 mm", (
        "Drip lines, inside diameter 15 mm.",
    )),
    ("drip.pressure", "22 psi", (
        "Emitters every foot, pressure at the header 22 psi.",
        "Drip. We get 22 psi at the block.",
        "Drip. Inlet 22 psi.",
    )),
    ("drip.filter", "yes", (
        "Drip lines. Filter is placed.",
        "Drip lines. Filter 120 mesh.",
    )),
    ("drip.holds", "plain", (
        "Drippers 2 L/h, plain ones.",
    )),
    ("drip.crop", "onion", (
        "Onions. 2 acres, emitters every 8 in.",
    )),
    ("drip.month", "jul", (
        "Drip. Peak ET 0.26 in/day per the college (July).",
    )),
    ("hot.volume", "180 L", (
        "The valve on the hot water cylinder drips. It's a 180 L cylinder.",
        "Hot water is a 180 L storage unit.",
        "Unvented cylinder 180 L with a relief valve.",
    )),
    ("hot.relief", "6 bar", (
        "A boiler of 120 litres, the valve opens on 6 bar.",
    )),
    ("rain.dry_count", "3", (
        "Rain only. The dry spell lasts three months round here.",
        "A roof of 100 m2. July to September bone dry.",
        "No rain from January till end of March most years.",
        "Off the roof. Summer without rain is 3 months.",
    )),
    ("rain.dry_from", "5", (
        "From the roof; from May no rain falls during five months.",
        "Roof water. The dry spell runs five months starting in May.",
    )),
    ("rain.roof", "95 m²", (
        "It comes off 95 square metres of slate into a cistern.",
        "A cistern filled by 95 m² of roof.",
    )),
    ("rain.runoff", "80 %", (
        "Roof 140 m2, runoff say 80 %.",
    )),
)  # fmt: skip

NOT_SAID = (
    ("beds.area", (
        "A 4 hectare lifestyle block. Drip in the garden.",
        "We moved onto forty acres. Drip for the garden.",
    )),
    ("rain.dry_count", (
        "We want to last 3 months without rain. Roof 90 m2.",
        "Two months of drought killed the trees. Roof 90 m2.",
    )),
    ("use.people", (
        "My cousin and I walked the line. A well.",
        "My brother and I built the tank. A spring.",
        "We are 3 weeks in and 20 m down. A well.",
        "We are 4 hours from town. A well.",
        "Me, my wife and the kids. A well.",
        "My husband and my father built it. A well.",
        "The bunkhouse sleeps 12. We are 3 in the main house. A well.",
        "Our place is for 4 guests and us. A well.",
        "The village population is 400. A well.",
        "We're 4 people but they're on town water. A well.",
    )),
    ("outlets.shower", (
        "Everybody wants a hot shower.",
        "They complain of a weak shower.",
        "Can he get a small shower?",
    )),
    ("outlets.sink", (
        "It's a spring in a tiled basin.",
        "The pump fills a basin of 30 m3.",
        "A basin catches the spring.",
    )),
    ("outlets.toilet", (
        "Two troughs with those toilet-type floats.",
    )),
    ("outlets.hose", (
        "We ran a hose to it. A well.",
        "The agent keeps talking about a hydrant.",
    )),
    ("animals.dairy", (
        "The spring fills a milk can.",
        "Uphill of the milking parlor.",
    )),
    ("animals.cattle", (
        "Everyone wants to wash a horse at five.",
        "A cow broke the pipe. 12 goats.",
    )),
    ("outlets.shower.together", (
        "Two basins and a shower on it.",
    )),
    ("drip.hours", (
        "Water spits at every tap for ten minutes each morning.",
    )),
    ("drip.bore", (
        "Olive trees with drip. Tube inside 40 mm PE.",
    )),
    ("hot.volume", (
        "The tank is a plain upright cylinder of 12,000 litres.",
        "A 200 L cylinder of gas and a heater.",
    )),
    ("hot.relief", (
        "Pressure relief valve on the pump set at 6 bar. A heater 80 L.",
    )),
    ("use.garden", (
        "The garden tank takes 600 litres.",
        "The garden needs 300 litres a week.",
    )),
    ("use.daily", (
        "Four people. We figure 40 gallons a day apiece.",
    )),
)  # fmt: skip
