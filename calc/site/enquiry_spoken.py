"""Words of the power, of the pump's place and its control, of how a pipe is held: in other people's ways."""

from __future__ import annotations

_NET = r"(?:utility|power company|electric(?:ity|al)? company|electric co-?op|power co-?op|co-?op|national grid|village|town|city|municipality|street|network|public network)"
_WATERS = r"(?:well|bore\w*|tank|cistern|pond|creek|river|lake|stream|spring|hole|shaft|sump|dam)"
_TANKS = r"(?:tank|cistern|reservoir)"
_AMOUNT = r"(?:\d[\d.]*|an?|half an|one|two|three|four|five|six|eight|ten|thirty|forty|ninety)[ -](?:and a half )?(?:hours?|hrs?|h|min(?:ute)?s?)"
_A_DAY = r"(?:(?:a|per|each|every|of the|in the) (?:day|night|evening|morning)|daily|at night)"
_ROUND = r"(?:day and night|night and day|(?:a)?round the clock|all the time|all day and (?:all )?night|24 hours(?: a day)?|24 ?/ ?7|non-?stop|continuous(?:ly)?|constantly)"
_CREEK = r"(?:creeks?|streams?|rivers?|brooks?|lakes?|ponds?|burn|beck)"

_STANDS = r"(?:shed|hut|pump ?-?house|basement|cellar|garage|well ?-?house|barn|utility room|crawl ?space|closet|laundry|pump room|slab|pad|cupboard|workshop|boat ?house|plant room|boiler room|kitchen|pantry|house|surface|above ground)"

SPOKEN = (
    # power
    ("power.source", "grid", 3, r"\b(?:(?:off|on|from|by) the|(?:connected|hooked (?:up )?) to the|have the|have a|with a) grid (?:line|supply|connection)\b"),
    ("power.source", "grid", 2.5, r"\bpump (?:just |simply |is |gets |itself )*plug(?:s|ged) (?:right |straight )?in(?:to)?\b(?! ?(?:to )?(?:the |a |an |our |my )?(?:inverter|generator|genny|batter\w+|solar|gen ?set|controller|mud|silt))|\bplug(?:s|ged) (?:right |straight )?into (?:the |our |a )?(?:house|wall|barn|garage|kitchen|mains|utility)\b"),
    ("power.source", "grid", 2.5, r"\b(?:wall|household|house|ordinary|regular|normal|standard|kitchen|garage|barn) (?:wall )?(?:outlet|receptacle)\b"),
    ("power.source", "grid", 3, rf"\b(?:power|meter|service|electricity|electric|current|fed|supplied|supply|phase)\b[^.;\n\d]{{0,20}} (?:from|by) (?:the |our )?(?:local |public |national |rural )?{_NET}\b(?! (?:would|costs?|quote))"),
    ("power.source", "grid", 3, r"\b(?:connected|hooked up|wired|joined|hooked) (?:in)?to (?:the )?(?:public |national |local |village |state )?(?:electricity|electric|power|electrical)(?: network| grid| net| supply| lines?| system)\b|\b(?:from|on|to) the (?:national|public|village|state|electricity|electric|power) (?:network|grid|net)\b(?! (?:is|would|costs?|it is))"),
    ("power.source", "grid", 2.5, r"\b(?:wired|connected|runs?) (?:in|back)?(?:to|off|from)? ?(?:the |our )(?:house|barn|main|home|garage)(?:'s)? (?:panel|breaker box|fuse ?box|breakers?|board|consumer unit|switchboard|circuit)\b(?! (?:array|rack))"),
    ("power.source", "grid", 2, r"\b(?:power|electricity|current|juice|electric)(?: for (?:it|the pump))? (?:comes|is|runs|is taken|taken) (?:off|from|out of) (?:the |our )(?:main )?(?:house|barn|farm ?house|workshop)\b(?! (?:solar|batter|panels))"),
    ("power.source", "grid", 3, r"\b(?:rural )?(?:electric|electrical|utility) service (?:at|to|in|on|is (?:at|in|there))\b(?![^.;\n]{0,35}\b(?:would|cost|costs|quote))"),
    ("power.source", "grid", 3, r"\b(?:power|energy|electricity|electric|current|supply|power (?:supply|source)|energy (?:source|supply))(?: for (?:the )?pump)? ?(?:[:=]|- ) ?(?:from )?(?:the )?(?:public |local )?(?:grid|mains|utility|network|national grid)\b(?! (?:is|no\b))"),
    ("power.source", "sun", 3, r"\b(?:power|energy|electricity|electric|current|supply|power (?:supply|source)|energy (?:source|supply))(?: for (?:the )?pump)? ?(?:[:=]|- ) ?(?:from )?(?:the )?(?:sun|sunshine|sunlight)\b"),
    ("power.source", "generator", 3, r"\b(?:power|electricity|current|juice) (?:is|comes from|is from|from|by) (?:an? |our |the )?(?:small |little |old |big )*(?:diesel|petrol|gasoline|propane)\b(?! (?:back-?up|price))"),
    ("power.source", "generator", 2, r"\b(?:driven|run|powered|worked|runs?|drives?) (?:by|with|off|from|on) (?:an? |the |our )?(?:small |little |old )*(?:diesel|petrol|gasoline|gas) (?:engine|motor)\b|\b(?:diesel|petrol|gasoline|gas) engine (?:drives|runs|turns|works) (?:the |our )?pump"),
    ("power.source", "sun", 3, r"\bmodules\b[^.;\n]{0,30}\b(?:drives?|runs?|powers?|feeds?)\b[^.;\n]{0,14}\bpump|\b(?:sunshine|sunlight) (?:drives|runs|powers|works)\b"),
    ("power.battery", "flooded", 2.5, r"\b(?:car|tractor) batter(?:y|ies)\b(?! charger)"),
    ("power.source", "grid", 3, r"\b(?:standard|commercial|public|state|normal|ordinary|regular) (?:household |house |mains |line )?(?:power|current|electricity|electric)\b|\b(?:power|electricity|current) of the (?:state|government)\b|\b(?:electricity|power|current)\b[^.;\n]{0,14}\d{3} ?v(?:olts?)?,? (?:public|network)\b"),
    ("power.source", "grid", 3, r"\b(?:pay|paying) (?:the |an? |our )?(?:electric(?:ity)?|power|utility|light) (?:company|bill|board)\b|\b(?:powered|fed|supplied) by [^.;\n]{0,14}\butility\b|\bon (?:the |an? )?(?:local |rural )?(?:electric |power )?co-?op\b|\b(?:have|has|got|with|on) (?:an? |the )?grid connection\b|\b(?:city|town) juice\b|\battached to the (?:electric|electricity|network|grid)\b"),
    ("power.source", "grid", 2.5, r"\bthere(?:'s| is) (?:electric|electricity|power|current) (?:at|in|by|on|out at) (?:the|our) (?:barn|house|shed|well|well ?head|pump|pump ?house|cabin|garage|property|site|lot|yard|workshop)\b|\b(?:single|one|three|3)[ -]phase (?:is |are )?(?:there|on site|available|at the|in the)\b"),
    ("power.source", "sun", 3, r"\bjust (?:the )?sun(?= ?[.,;\n]|$)|\b(?:the )?sun alone\b|\bnothing but (?:the )?sun\b"),
    # where the pump is
    ("pump.placement", "in", 3, r"\bpump (?:itself )?(?:hangs|is hung|is hanging|hung|is suspended|dangles)\b(?! (?:\w+ )?(?:on|from|at|in|under|off) (?:the |an? |our )?(?:\w+ )?(?:wall|brac[k]et|hook|beams?|joists?|ceiling|post|frame|rafters?|basement|cellar|shed))"),
    ("pump.placement", "in", 3.5, r"\bpump\b[^.;\n]{0,15}\b(?:standing|sitting|lying|stands|sits|lies|is) in (?:the|our|a) (?:spring|collection|collecting|intake) ?(?:box|chamber)\b"),
    ("pump.placement", "out", 3, rf"\b(?:pump (?:location|placement|place|site|position)|location of (?:the )?pump) ?[:=-]+ ?(?:in |on |at )?(?:the |an? )?(?:[a-z]+ )?{_STANDS}\b"),
    ("pump.placement", "in", 3, r"\b(?:pump (?:location|placement|place|site|position)|location of (?:the )?pump) ?[:=-]+ ?(?:in |down |inside )?(?:the |an? )?(?:well|bore ?hole|bore|casing|water|pond|creek)\b(?! (?:house|head|pit|cover|lid|top))"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;\n]{0,15}\b(?:sitting|standing|sits|stands|rests|resting)\b[^.;\n]{0,6} on (?:top of )?(?:the|an?|its) (?:[a-z]+ ){0,2}(?:lid|cover|slab|pad|paver|paving stone|plank|platform|skid|sled|base|block|blocks|pallet|stand|cart|trolley|trailer)\b|\bpump on (?:an? )?(?:wheels|skid|trolley|cart|pallet|trailer|sled)\b"),
    ("pump.placement", "out", 3, r"\bsurface[ -]mount(?:ed)? (?:multi-?stage|centrifugal|jet|unit|one|type)\b|\b(?:domestic|house|home) water ?works\b|\bit sucks (?:through|from|out of|water|it up|up)\b|\bjet\b(?=[^.;\n]{0,20}\b(?:cellar|crawl ?space|pump ?-?house|hut|barn|utility room|well ?house|closet|laundry)\b)"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;,\n¤]{0,20} in (?:the|our|a) (?:[a-z]+ )?(?:parlou?r|byre|cow ?shed|mill|smithy|green ?house|glass ?house|wine ?cellar|bunker|bathroom|hallway|mechanical room|container|bodega|annex|car ?port)\b"),
    ("pump.placement", "out", 3, r"\bself[ -]?priming\b(?! ?,? ?submers)|\bflooded suction\b|\bdry[ -](?:installed|mounted|pit)\b(?=[^.;\n]{0,12}\bpump)|\bpump (?:stands|sits) dry(?= ?[,;.])|\bpump\b[^.;\n]{0,12}\bin a dry (?:pit|chamber|well|vault|sump)\b"),
    ("pump.placement", "out", 3, r"\bpump(?= (?:itself )?(?:sucks?|draws?|pulls?|takes)\b[^.;\n]{0,60}\bsuction\b)"),
    ("pump.placement", "out", 3, r"\bpump(?= (?:is |itself is |stands |sits )?(?:bolted|screwed|fastened)(?: down)? (?:to|on)\b)"),
    ("pump.placement", "in", 4, rf"\b(?:dropped|lowered|hung|sunk|dangled|threw) (?:an?|the|our|my) (?:[a-z]+ ){{0,3}}pump (?:down )?(?:in|into|inside|down) (?:the|our|an?|my) {_WATERS}\b(?! (?:house|shed|room|pit))"),
    ("pump.placement", "in", 6, r"\b(?:submersed|submerged|immersed|immersible|sunken|drowned|under-?water)(?: [a-z]+)? pumps?\b|\b(?:our|the|my|a) sub (?:hangs|sits|hung|went|is hung)\b|\bpump (?:is|sits|stays|lies) (?:fully |all |always )?(?:submerged|under ?water|immersed|underwater)\b"),
    ("pump.placement", "in", 4, rf"\bpump\b[^.;\n¤]{{0,25}} (?:on|near|just off|off) the (?:very )?(?:bottom|floor) of (?:the|our|a|my) {_WATERS}\b(?! (?:house|shed))"),
    ("pump.placement", "out", 3, r"\bpump\b[^.;,\n¤]{0,15}\b(?:outdoors|out of (?:the )?water|out in the (?:yard|open|garden))\b|\bpump\b[^.;,\n¤]{0,25} (?:in|under|on|inside) (?:the|our|an?|my) (?:[a-z]+ )?(?:bench|bed|bunk|shelf|caravan|trailer|camper|tin roof|tarp|crate|hatch)\b|\bpump\b[^.;,\n¤]{0,15} (?:beside|next to|by) (?:the|our|an?|my) (?:[a-z]+ )?(?:ibc|tote|barrels?|drum)\b"),
    # how a pipe is held
    ("pipes.held", "joints", 2.5, r"\bpush[ -]?(?:fit|in|fittings?|to-connect|on)\b(?= ?(?:joints?|fittings?|connectors?|couplings?|plumbing|elbows|tees|pieces|stuff|type|[.,;\n]|$|the whole|throughout|every|all))(?![^.;\n]{0,25}\b(?:heater|sink|tap|boiler|toilet)\b)"),
    ("pipes.held", "buried", 2.5, r"\b(?:pipe|pipes|copper|pvc|pex|line|lines|poly)\b[^.;\n]{0,40}\b(?:clipped|strapped|clamped|brac[k]eted)(?: \w+)? (?:to|along|on|under|every|down|in)\b"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|pipes|line|poly|pvc|hdpe|pe|it)\b[^.;\n\d]{0,30}\b(?:under|below) ground\b|\bunder ground all the way\b|\bpipe buri(?:al|ed) depth\b|\bburial depth\b"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|line|poly) (?:was |is |has been |got |went )*(?:put|set|laid|sunk|placed) (?:in )?(?:(?:[1-5](?:\.\d)?|one|two|three|four) ?-?(?:ft|feet|foot)|\d\d ?(?:cm|in|inches|\")) (?:down|under)\b(?! (?:the (?:hill|slope)|from))"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|line|poly|it|them)\b[^.;\n]{0,14} (?:ploughed|plowed|moled|mole-ploughed) (?:in|under)\b|\b(?:ploughed|plowed|moled)(?: in)? (?:the |our |my )?(?:pipe|line|poly|it)\b"),
    ("pipes.held", "laid", 3, r"\b(?:pipe|hose|line|poly|hdpe|pe|it)\b[^.;\n]{0,25}\b(?:lying|lies|laying|strung|rolled out|unrolled|snak(?:es|ing)|rolled)\b[^.;\n]{0,12}\b(?:in|on|over|through|along|across|up) (?:the |top of )?(?:\w+ )?(?:brush|woods?|forest|hillside|field|pasture|undergrowth|bush|slope|hill|leaves|ditch|paddock)\b"),
    ("pipes.held", "laid", 3, r"\b(?:rolled out|unrolled|strung) (?:the |our |a )?(?:poly |black )?(?:pipe|hose|line|poly)\b"),
    ("pipes.held", "laid", 4, r"\b(?:didn'?t|did not|never|haven'?t|have not) (?:bury|buried|dug|dig|trench(?:ed)?) (?:it|them|the (?:pipe|line|poly|hose))\b|\bnot dug in\b"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|pipes|line|poly|it)\b[^.;\n]{0,20}\bcovered (?:with|by|in|over with) (?:the )?(?:soil|earth|dirt|sand|gravel|turf)\b|\bpipe\b[^.;\n]{0,12}\bfrost[ -]free depth\b|\bpipe depth\b"),
    ("pipes.held", "buried", 3, r"\b(?:pipe|line)\b[^.;,\n\d]{0,25}\b(?:is|lies|sits|runs|goes) (?:about )?(?:(?:[1-5](?:\.\d)?|one|two|three|four|five) ?(?:ft|feet|foot)|\d\d ?(?:cm|in|inches|\")) (?:under|down|deep)(?= ?[.,;\n]|$)"),
    # control
    ("pump.control", "switch", 3, r"\bcuts? in\b[^.;\n]{0,45}\bby (?:a |the |its )?(?:pressure )?switch\b"),
    ("pump.control", "speed", 3, r"\b(?:varies|varying|modulates?|ramps?|regulates?)\b[^.;\n]{0,20}\b(?:speed|rpm|revs|motor)\b|\bspeeds? up\b[^.;\n]{0,18}\bslows?\b|\bspeed (?:varies|changes|follows|is varied)\b(?=[^.;\n]{0,40}\b(?:demand|pressure|use|flow|taps?))"),
    ("pump.relief", "yes", 3, r"\bsafety valve\b[^.;\n]{0,20} (?:at|on|by|of|in) (?:the |its |our )?pump\b(?! ?(?:house|shed))|\bpump (?:with|has)(?: an?| its own) safety valve\b"),
    ("pump.guard", "relief", 3, r"\b(?:only|nothing but|just|nothing more than|with but) an? relief valve\b|\brelief valve only\b|\brelief valve\b[^.;\n]{0,15}\b(?:but|and) (?:no|without an?) (?:pressure )?switch\b"),
    ("pump.guard", "switch", 3, r"\b(?:pressure switch|bypass)\b[^.;\n]{0,20}\b(?:but|and|yet) (?:there is |there's |has |it has )?(?:no|without an?) relief\b|\bonly (?:a|its|the) (?:own )?pressure switch (?:guards|protects)\b"),
    ("pump.guard", "both", 3, r"\b(?:pressure switch|bypass)(?:,| and| plus| as well as|, and) (?:an? |the |its )?(?:\w+ )?relief valve\b|\brelief valve (?:and|plus) (?:an? |the |its )?(?:pressure switch|bypass)\b"),
    ("pump.guard", "none", 4, r"\bneither (?:an? )?(?:pressure )?switch nor (?:an? )?relief\b|\bno (?:pressure )?switch(?: and|,| or| nor) (?:no )?relief\b|\bno relief valve(?: and|,| or| nor) (?:no )?(?:pressure )?switch\b"),
    # what fills the tank
    ("water.kind", "stream", 4, rf"\b(?:source|spring|water|supply|it) (?:itself )?(?:is|comes from|is taken from|: ) ?(?:an? |the |our )?(?:small |little |mountain |year-round )*{_CREEK}\b(?! (?:road|valley|bed|stone|rock|gravel|cobble))"),
    ("store.fills", "hours", 2.5, rf"\b(?:fills?|filled|topped up|refilled|pumps?|pumped|pumping|runs?)\b[^.;\n]{{0,30}}\b{_TANKS}\b[^.;\n]{{0,40}}?\b{_AMOUNT} {_A_DAY}\b|\b(?:tank|cistern|reservoir) is (?:filled|topped up|refilled)\b[^.;\n]{{0,40}}?\b{_AMOUNT} {_A_DAY}\b|\bpump\b[^.;\n]{{0,25}}\b{_AMOUNT} {_A_DAY}[^.;\n]{{0,20}} (?:into|to fill|filling) (?:the |our )?(?:\w+ )?{_TANKS}\b"),
    ("store.fills", "none", 4, r"\bnothing (?:fills|goes into|feeds)\b[^.;\n]{0,25}\b(?:but|except|other than) (?:the )?(?:rain|roof)|\bfill(?:s|ed)? (?:up )?only (?:from|off|by|with|when) (?:the |it )?(?:roof|rains?)\b"),
    ("store.fills", "always", 3, rf"\b(?:filled|fed|topped up) by (?:the|our|a) (?:\w+ )?(?:spring|stream|seep|creek)\b[^.;\n]{{0,15}}\b{_ROUND}|\b(?:trickles?|runs|drips|flows|comes|spills)\b[^.;\n]{{0,30}}\b{_TANKS}\b[^.;\n]{{0,15}}\b{_ROUND}\b"),
    ("store.fills", "sun", 3, r"\b(?:sun|solar)(?:[ -]powered)? pump (?:fills|feeds|tops up|lifts[^.;\n]{0,15} to) (?:the |our |a |it\b)"),
    # drip
    ("drip.filter", "no", 4, r"\bunfiltered\b|\b(?:don'?t|do not) filter\b|\bno filtration\b"),
    ("drip.filter", "yes", 3, r"\b(?:we|i) (?:do )?filter (?:the|our|it|all)\b(?! (?:drinking|house|kitchen|tap|rain))|\bfiltered (?:through|by|with|before|ahead|at)\b|\b(?:\d+[ -]mesh|y[ -]?type|spin) (?:filter|strainer)\b"),
    ("drip.holds", "plain", 5, r"\b(?:not|non|without|no|nothing)[ -](?:self[ -]|any )?(?:pressure[ -])?compensat\w+"),
    ("drip.holds", "steady", 3, r"\b(?:same|equal)(?: flow| amount| water| output)? (?:at|with|whatever|regardless of) (?:any|every|all|the|whatever) pressures?\b"),
    ("drip.holds", "plain", 3, r"\b(?:give|gives|flow|drip|drips) more (?:with|at|when|under) (?:more|higher|the) pressure\b|\bmore pressure,? (?:gives )?more (?:water|flow)\b"),
)  # fmt: skip

MORE_CROPS = {
    "corn": "corn", "sweet corn": "corn", "maize": "corn", "sweetcorn": "corn", "beans": "bean",
    "green beans": "bean", "squash": "squash", "squashes": "squash", "zucchini": "squash",
    "zucchinis": "squash", "courgette": "squash", "courgettes": "squash", "pumpkin": "squash",
    "pumpkins": "squash", "watermelon": "melon", "watermelons": "melon", "cantaloupes": "melon",
    "cantaloupe": "melon", "blueberry": "berry", "raspberry": "berry", "blackberry": "berry",
    "blackberries": "berry", "chilies": "pepper", "chillies": "pepper", "chili peppers": "pepper",
    "spuds": "potato", "grapevines": "grape", "wine grapes": "grape", "mint": "mint",
}  # fmt: skip
