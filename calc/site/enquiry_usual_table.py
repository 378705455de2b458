"""Weights of words near numbers, in hundredths: written by ``python -m tests.enquiries.weights``."""

CLASSES = (
    "none",
    "animals.cattle",
    "animals.dairy",
    "animals.goats",
    "animals.hens",
    "animals.nursing",
    "beds.area",
    "drip.bore",
    "drip.dripper",
    "drip.flow",
    "drip.hours",
    "drip.least",
    "drip.length",
    "drip.pressure",
    "drip.rated",
    "drip.reference",
    "drip.rows",
    "drip.slope",
    "drip.spacing",
    "drip.warmest",
    "drip.zones",
    "fall.breaks",
    "fall.flow",
    "fall.held",
    "hot.precharge",
    "hot.relief",
    "hot.stored",
    "hot.tank",
    "hot.volume",
    "outlets.drip",
    "outlets.drip.together",
    "outlets.hose",
    "outlets.hose.together",
    "outlets.micro",
    "outlets.micro.together",
    "outlets.saver",
    "outlets.shower",
    "outlets.shower.together",
    "outlets.sink",
    "outlets.sprinkler",
    "outlets.sprinkler.together",
    "outlets.toilet",
    "outlets.washer",
    "pipes.hottest",
    "pipes.weakest",
    "place.altitude",
    "place.latitude",
    "place.latitude-",
    "place.longitude",
    "power.amps",
    "power.cable",
    "power.capacity",
    "power.fail",
    "power.limit",
    "power.open_voltage",
    "power.panel",
    "power.series",
    "power.shade",
    "power.strings",
    "power.tilt",
    "power.voltage",
    "pressure_tank.precharge",
    "pressure_tank.rating",
    "pressure_tank.volume",
    "pump.controller",
    "pump.count",
    "pump.cut_in",
    "pump.cut_out",
    "pump.diameter",
    "pump.dry_lift",
    "pump.height",
    "pump.height-",
    "pump.least_flow",
    "pump.most_flow",
    "pump.motor",
    "pump.npsh",
    "pump.set",
    "pump.starts",
    "rain.dry_count",
    "rain.roof",
    "rain.runoff",
    "store.days",
    "store.depth",
    "store.hours",
    "store.inflow",
    "store.reserve",
    "store.volume",
    "suction.bends",
    "suction.foot_valves",
    "suction.length",
    "tank.level",
    "tank.volume",
    "use.daily",
    "use.each",
    "use.garden",
    "use.garden_hours",
    "use.leak",
    "use.peak",
    "use.peak_time",
    "use.people",
    "use.troughs",
    "water.level",
    "water.level-",
    "water.temperature",
    "water.yield",
    "way.climb",
    "way.climb-",
    "way.length",
    "well.bore",
    "well.cover",
    "well.depth",
    "well.drawn",
    "well.drawn_for",
    "well.drop_pipe",
    "well.intake",
    "well.pumped_for",
    "well.pumping",
    "well.rate",
    "well.static",
    "well.steady",
    "well.tested",
)
WEIGHTS = """
L=)~110:36
L=,~0:5,3:-30,8:27,16:18,17:-37,18:23,72:-45,77:-45,79:71,80:13,81:-39,93:21,96:22,97:-51,102:11,106:69,107:-18,115:-38,117:-43,120:-45
L=.~9:7,10:38,12:30,13:13,19:23,38:28,45:13,48:15,58:-38,61:-31,80:-42,81:63,84:-39,87:-25,90:-31,92:32,93:30,94:-47,96:-46,98:-46,99:61,101:-47,103:26,108:-29,116:-73,120:-47
L=0~0:34,2:-56,4:-20,8:66,15:50,26:64,27:34,49:56,58:40,61:67,67:-41,73:-39,76:-33,77:-34,80:28,90:31,98:22,99:-25,102:44,105:40,120:32
L=1~3:-64,4:-41,9:29,67:63,73:27,93:28,110:37
L=2~0:64,13:-39,24:33,41:18,56:-36,67:68,71:38,72:31,73:18,80:26,100:31,102:-36,106:-50,110:65,120:46
L=3~1:17,31:-39,48:41,63:21,71:-31,86:-49,90:57,93:30,116:75,120:17
L=4~16:-48,48:53,54:38,100:-57,106:-45,113:36,116:31,120:35
L=5~45:-48,49:65,61:49,67:46,95:26,102:-40,113:-31 L=6~0:39,22:43,91:35,99:-29,107:-42
L=8~64:33,66:35,91:19,93:50 L=9~86:35,102:-27,108:47,116:55
L=:~6:35,31:27,65:31,97:27,104:18,105:45,111:36 L=;~57:19,86:29,102:-39,107:32 L=?~99:31,102:55
L=a~0:32,40:-67,41:75,45:-22,56:-27,57:55,60:63,63:57,66:42,73:20,76:48,83:32,86:21,90:18,91:21,100:48,104:45,107:31,108:52,110:42,116:-29
L=about~0:19,4:44,57:51,92:26 L=above~0:-36,90:70,91:23,106:48,110:-35 L=accumulator~63:55
L=across~0:23 L=adjusted~76:34 L=adults~0:60 L=after~0:82,103:19 L=agm~0:-52 L=air~0:-38,61:115
L=all~0:27,99:-46 L=along~0:-50,17:24 L=also~1:42 L=altitude~0:-28,45:122 L=am~0:-28,95:26,99:45
L=and~1:61,4:66,41:22,49:47,67:48,71:-9,93:39,104:28,105:12,107:24 L=any~0:34 L=apart~12:50
L=are~0:27,6:35,8:34,45:29,71:-49,99:56,105:-15 L=area~6:16 L=as~38:54,74:23,104:-40,120:30
L=at~0:36,3:-22,4:-30,13:26,14:16,26:81,38:-31,45:84,46:43,50:-49,66:71,67:37,71:110,91:-47,93:30,102:41,105:-30,107:-57,114:95,116:54,117:50,119:25,120:22
L=away~0:18,106:34 L=back~66:61,119:29 L=bar~9:35,62:44,63:48,66:116,67:96 L=barn~106:44
L=basin~0:48 L=bath~0:-77,41:114,105:45 L=bathroom~0:-33 L=battery~0:29,51:28 L=be~0:62 L=bed~0:46
L=beds~6:17 L=beef~0:31 L=before~118:66 L=begin~13:42 L=below~71:-27,107:26 L=between~66:52,99:28
L=bladder~0:-39,61:57 L=block~9:63 L=blue~63:56 L=boiler~28:66 L=booster~0:19,76:45,107:-29
L=bore~104:51,108:76,110:65 L=borehole~105:-31,110:53,120:45
L=bottom~23:47,71:-45,90:49,99:-34,110:87 L=box~76:25 L=brings~107:28 L=brook~103:19 L=bucket~0:44
L=budget~0:41 L=build~0:50 L=buried~0:20 L=busiest~97:67 L=but~102:38,107:53 L=butt~91:54
L=by~0:46,57:21,104:-48,106:60 L=c~0:48 L=cabin~0:64,38:-37,45:35,91:-39,105:52,107:38
L=cabins~36:-42 L=cable~0:50,50:152,107:-47 L=calves~100:38 L=came~0:29 L=camp~99:30
L=can~0:18,10:41,52:43 L=cap~0:43,71:-26 L=captured~0:55 L=car~0:24 L=cased~0:-27,108:53
L=casing~0:-50,108:37 L=cattle~0:16 L=chalet~0:68 L=charge~61:37 L=checked~61:36 L=christmas~99:35
L=cistern~0:39,82:27,84:20,86:41 L=city~0:87 L=climb~0:-84,99:34,105:95 L=climbing~105:45
L=climbs~105:60,107:-29 L=clock~0:-24,66:29 L=cm~0:-46,8:105 L=cold~103:52 L=come~39:38
L=comes~91:37,103:49,106:63,119:28 L=constant~76:46 L=consumption~93:46 L=control~76:32
L=controller~53:44,60:-58,64:77 L=copper~107:57 L=cottage~0:-60,105:119 L=could~0:42 L=count~0:-60
L=counted~0:52 L=cow~1:44 L=cows~1:72,2:43,3:51,5:55,93:-26,100:42 L=creek~102:41 L=cubic~0:-47
L=curve~0:66 L=cut~0:-37,66:77,67:97 L=cuts~67:39 L=cylinder~28:58 L=daily~0:-36,92:79
L=day~0:-30,86:-41,92:46,93:21,94:69,99:58 L=days~99:-27 L=dead~105:43 L=december~0:53
L=deep~105:-46,108:76,118:45 L=delivers~73:52 L=delivery~0:37 L=depth~0:21,71:49,110:61 L=dia~0:-38
L=diameter~0:-34,7:21,68:59,108:48 L=diaphragm~0:-38,73:33 L=did~0:75,104:-33
L=difference~0:-36,106:43 L=distance~107:50 L=do~0:32 L=does~66:40,99:-32 L=dog~0:-56
L=down~71:67,89:-37,90:-41,102:58,104:46,105:-38,116:103 L=draws~0:-16,89:41,102:44,120:34
L=drew~116:46 L=drilled~110:59 L=driller~0:-18,104:36 L=drinkers~100:40,105:63
L=drip~6:29,7:61,8:19,12:67,13:45,16:38,18:43,29:33,102:-38 L=dripper~8:73,18:19
L=drippers~0:-36,8:74,18:70 L=drips~0:31 L=drop~105:-43,106:42,107:-46,113:103
L=drops~0:65,105:-32,106:64 L=drum~90:70 L=dry~1:-48,69:90,78:72,102:33,104:125 L=dug~110:74
L=dynamic~102:32 L=each~0:37,12:72,18:32,23:35,36:-45,38:-36,60:-40,73:44,92:-49,93:123,104:-47
L=efficiency~64:43,74:53 L=eight~0:38,37:48,56:-48 L=electricity~0:-44 L=elev~45:50
L=elevation~45:131 L=emitters~8:62,18:61 L=end~0:-71,102:27 L=ends~0:56 L=enough~81:23
L=et~0:-48,15:97 L=eta~74:38 L=every~8:99,18:59 L=expansion~24:62,27:103 L=fall~105:-41,106:130
L=falls~0:20,90:39,105:-34,106:40,107:-33 L=family~0:-47,99:61 L=far~0:81 L=farmhouse~0:41
L=feeds~76:31 L=feet~29:79,104:52 L=fellow~0:28 L=fence~0:52 L=field~0:29,105:-29,106:70
L=fifty~0:-47 L=figure~93:50 L=fill~0:54 L=filled~0:60 L=fills~38:66 L=filter~0:43,44:57
L=finca~86:-28 L=fire~85:32 L=first~0:28,43:26,107:-31 L=fitting~44:38 L=fittings~44:29
L=flat~0:-35,99:32 L=float~100:54 L=floats~100:37 L=flooded~101:31,102:-31
L=flow~0:22,38:32,72:76,99:-44 L=flyer~0:59 L=foot~87:31,88:76,102:-39
L=for~1:65,44:44,81:50,92:-43,94:67,95:49,104:71,107:35,115:59,116:44 L=four~0:44 L=frequency~76:30
L=from~50:47,63:-36,86:46,90:37,91:17,95:79,99:-44,100:15,105:39,106:34,110:-36
L=ft~41:-27,63:30,90:-55,99:38,105:29,110:38,116:53 L=gal~90:49 L=gallon~0:39,90:-50
L=gallons~107:-27 L=garden~0:47,6:42,9:72,94:144 L=gauge~0:71 L=get~104:58 L=gets~43:77,84:32
L=gives~0:79,104:52 L=goats~3:96,4:24,99:-29,105:43 L=goes~102:22 L=got~0:103,104:51
L=gph~12:66,14:62,18:53 L=gpm~36:56 L=grass~0:28,100:-31 L=gravity~0:-63,1:59,91:41,106:84
L=greenhouse~6:29 L=grid~0:40,46:32 L=ground~0:-24,21:41,86:28 L=guess~0:-32 L=guests~35:47
L=h~10:37,14:42,18:61,116:93 L=had~0:42 L=half~106:78 L=hallo~0:37 L=hand~0:28,110:36
L=hanging~0:37 L=hangs~0:-61,71:68,114:77 L=has~0:83,61:39,91:-31,113:33 L=haul~86:47
L=hav~0:64,86:-32 L=have~0:-34,6:39,91:61,99:15 L=having~0:-56 L=he~0:46 L=head~0:64,99:-35
L=header~0:-47,13:35,91:42 L=heater~25:34,26:86,28:81 L=height~90:32,105:27 L=held~119:43
L=hello~0:26,3:29,6:-44 L=helo~0:34 L=hens~0:-63,4:75 L=here~45:27 L=hi~0:51,86:-54,99:36
L=high~0:-33 L=higher~107:37 L=highest~105:44 L=hill~86:-42,91:24,99:60 L=his~104:40
L=holding~23:28 L=holds~76:70 L=hole~0:6,110:63 L=holiday~0:-54,99:41 L=home~99:39
L=horses~1:37,99:-38,100:55 L=hose~31:108,89:37,105:-38 L=hoses~0:-53,31:87,32:23,39:60 L=hot~28:74
L=hour~0:-45,18:13,77:122,97:113,99:-26 L=hours~0:45,10:34
L=house~0:42,3:60,6:-33,76:33,102:-13,105:42,107:41,110:-41 L=household~0:-44,99:70 L=houses~0:9
L=how~110:48 L=hp~0:55,71:44 L=hundred~102:-47 L=hung~0:-20,71:45,113:51 L=husband~0:46 L=hut~45:57
L=hytte~0:67 L=i~0:45,6:44,10:60,40:47,61:96,74:15,96:43,107:34 L=i'd~76:49 L=i'm~0:29 L=id~0:38
L=if~0:48 L=in~10:53,19:60,20:39,43:30,58:87,66:81,70:46,97:55,98:53,99:-46,102:70,105:-51
L=inch~63:-59,99:47 L=inlet~13:46,114:92 L=inside~0:-25,7:48,108:16 L=installed~71:38
L=intake~0:-36,71:-67,89:50,105:-20,106:102,114:179 L=into~0:-56,36:37,86:40 L=inverter~76:34
L=is~0:64,1:-39,16:-36,18:-51,26:43,44:52,47:17,50:13,56:-46,59:-36,92:33,93:-30,101:1,103:40,106:73,107:39,108:36
L=it~57:29,61:51,91:-37,102:24,104:23,111:31,116:68,118:-35,119:28
L=it's~105:57,106:60,107:25,110:36 L=its~105:-68,106:25 L=january~0:-25 L=july~19:42 L=june~0:29
L=just~38:48 L=keep~85:59,109:52 L=keeps~76:72 L=kept~26:48 L=kids~0:35 L=kitchen~107:29 L=kl~86:41
L=knoll~0:36 L=kpa~106:34
L=l~14:39,18:52,38:40,60:-26,61:64,90:47,102:-22,106:-36,115:46,116:46,119:26 L=lake~0:73,99:-30
L=last~0:67,102:44,105:-34 L=lat~0:-32,46:45,48:30 L=laterals~12:44
L=latitude~0:-87,46:82,47:191,48:43 L=layflat~107:28 L=laying~99:36 L=leak~96:85 L=leaks~96:51
L=least~11:63,72:64 L=length~89:73,107:49
L=level~71:-41,101:22,102:79,107:-29,110:-24,116:123,118:70 L=lies~43:43
L=lift~69:84,90:32,102:60,105:89,107:-28 L=lifted~105:36 L=like~0:41,109:57 L=limiter~38:30
L=line~12:86,16:44,90:-36,107:26 L=lines~7:27,12:89,13:66,107:-36 L=liters~0:61,99:-31
L=lithium~0:44 L=litre~90:28 L=litres~6:-48,90:59,98:24,107:-22 L=live~52:45,99:76 L=livery~1:32
L=lodge~105:-28,106:30 L=loft~0:-29,90:52,91:67 L=log~104:49 L=long~0:43,16:25,48:30
L=longest~12:41 L=longitude~48:45 L=look~107:26 L=lose~57:29 L=lower~0:39 L=lowered~71:81,102:-32
L=lowest~102:52 L=m~0:27,12:-43,56:30,68:44,100:-45,102:16,105:5,108:26,110:45,114:47,118:48,120:28
L=machines~0:60,42:33 L=made~0:54,99:-20 L=main~107:36 L=maker~0:-48 L=makes~0:9,104:71,107:-38
L=map~0:45 L=max~19:30,53:43 L=may~0:16 L=maybe~0:32 L=me~0:100,9:51,104:-52 L=measured~104:71
L=meter~92:50,96:67,104:-33 L=meters~99:-49,106:-26,107:95 L=metre~110:29 L=metres~0:-33,102:46
L=micro~0:11 L=microsprinklers~33:31 L=mile~105:27 L=milk~1:44,2:69,3:33 L=milking~1:43
L=min~0:84,106:-29,115:48 L=minimum~0:82,11:49 L=minute~104:106,106:27,107:-28
L=mm~87:30,88:55,90:-48,91:31,106:25,107:65,110:-33 L=month~0:-36 L=months~78:74
L=more~0:-82,77:103,105:23 L=morning~97:39 L=most~73:37 L=mostly~0:-36 L=motor~0:-48,74:99
L=mountain~0:32,104:-25 L=mppt~0:-39,53:65 L=must~105:30 L=my~0:87,3:-44,106:22,107:-30 L=near~0:69
L=nearest~0:42 L=need~0:30,92:52,99:-21 L=needs~0:62,75:48 L=neighbor~0:35 L=neighbour~0:57
L=neighbour's~0:30 L=net~105:29 L=never~102:56,104:52 L=new~88:35 L=next~105:-59,106:33
L=night~0:-19,10:33 L=no~77:98,99:23,102:38,107:12 L=noon~0:29 L=normally~99:35 L=north~47:36
L=not~0:-40,3:35,105:31 L=now~0:78,102:34,107:32 L=npsh~0:-60,75:140 L=npshr~75:78 L=nursery~0:30
L=occupants~99:45 L=of~2:-41,54:32,55:35,56:59,66:29,71:-74,90:25,99:16,106:58,110:39
L=off~46:29,67:87,76:-23,79:107,86:42,99:-41,106:119 L=old~0:54
L=on~6:28,36:-60,57:24,66:65,67:42,90:55,91:40,105:-49,106:-56,113:28
L=one~6:-43,8:90,16:31,23:42,38:34,55:40,93:42,96:64,110:53 L=only~40:45,44:37,79:40,105:-51,107:40
L=open~54:71,60:-51 L=opens~25:28,67:31 L=orchard~0:-61,6:26,92:-23,94:53 L=other~0:55
L=our~0:66,45:49,66:21,92:21,99:31,107:-16 L=ours~104:52,110:89
L=out~43:24,67:134,86:36,91:-35,105:48,111:56 L=outlet~90:36 L=outside~0:-71,68:35
L=over~0:71,90:51 L=overhead~91:37 L=paced~103:34,107:29 L=pair~1:38 L=panel~59:18
L=panels~55:73,56:128,58:54,59:63,107:-27 L=paper~107:32 L=past~0:33 L=pe~106:33
L=people~93:68,99:52,104:-25 L=per~0:38,77:75,93:43,107:-44 L=perhaps~0:-43
L=pipe~0:78,36:-56,43:35,89:93,90:-29,102:-23,105:-33,107:36,110:-49,113:116 L=place~0:49
L=plastic~0:32 L=platform~90:47 L=please~109:33 L=plot~0:64 L=plus~4:22,38:-53,94:56 L=pn~0:52
L=point~76:30 L=pole~0:39 L=poly~0:45,89:36,99:-31,105:39 L=pond~0:56,102:22,106:28 L=power~0:66
L=pre~61:35 L=precharge~61:112 L=preset~61:39
L=pressure~0:41,13:37,21:63,61:27,63:94,66:53,67:17,76:30,86:-39,90:-46,91:-54,99:-33
L=psi~27:25,102:51 L=pull~71:55
L=pump~0:82,9:43,45:-47,50:43,60:38,61:-31,66:44,67:58,68:74,70:42,71:201,72:43,73:97,76:90,86:69,89:27,102:40,104:-76,106:-35,108:-47,110:-29,118:-43
L=pump's~71:108 L=pumped~0:-49,104:-40,111:34,115:42,117:59,120:34 L=pumphouse~0:17
L=pumping~102:62,116:88,120:40 L=pumps~65:46,76:53 L=pupil~93:31 L=put~0:46 L=pwl~120:23 L=q~0:-38
L=question~0:52 L=quotes~0:74 L=rain~79:34,103:19 L=rainwater~86:32 L=rated~14:78,44:64,62:51
L=reach~0:30 L=read~0:67 L=reckon~93:21 L=reducing~23:41 L=relief~25:103 L=rental~0:25,99:-24
L=report~0:56 L=required~75:61 L=reserve~81:29 L=reservoir~90:26,91:27 L=rest~102:-65,118:117
L=resting~102:-71,118:79 L=ridge~57:65 L=rings~108:32 L=rinsing~0:35 L=rise~105:130,107:-31
L=rises~105:72 L=rising~0:-29,105:65 L=river~102:43 L=road~0:108,107:-29
L=roof~0:-17,6:-45,79:161,105:42 L=rooms~0:45 L=roughly~0:-52 L=row~16:71 L=rows~0:-56,16:131
L=run~0:-48,10:65,12:43,40:32,50:39,107:65 L=runs~83:33,86:22 L=s~0:-72,48:30,116:51 L=said~0:99
L=same~37:35,99:26,110:21 L=say~107:94 L=says~0:94,92:50,110:44 L=school~0:35 L=sea~45:52
L=season~0:-48,102:54,104:79 L=sensed~0:37 L=septic~0:88,91:-33 L=set~26:46,61:57,71:66,76:131
L=shaft~108:100 L=she~0:-41,99:25 L=shed~86:60 L=sheep~1:27,3:51 L=sheet~0:37 L=should~81:120
L=shower~0:48,38:34,41:42,104:-27 L=showers~0:60,36:90,37:88,38:49,41:53,63:-51,99:-40
L=shuts~67:38 L=side~0:-31 L=sink~0:-86,36:55,41:12,86:26 L=sinks~38:88,42:56 L=sirs~0:-53
L=sit~0:42 L=sits~0:-66,102:35 L=sixty~71:96 L=sleeve~0:50 L=slope~17:54 L=smal~0:49,36:-30
L=small~0:-23,99:45 L=so~0:28,36:29,41:58,86:129 L=solar~102:-43 L=sold~0:74 L=sorry~99:39,102:28
L=source~104:77 L=south~57:54,59:45 L=speed~0:33,76:31
L=spring~86:55,90:-44,101:66,104:40,106:77,110:-33 L=sprinkler~0:38,40:28 L=sprinklers~39:78,40:28
L=square~0:-59 L=stable~0:-37,106:40 L=staff~0:-35,99:76 L=stand~0:-23,90:43 L=standing~118:68
L=stands~102:62 L=start~13:30 L=starts~66:63,77:79 L=static~0:-13,102:60,110:-60,118:192
L=stays~0:-35 L=steady~119:44 L=stopped~0:36 L=stops~38:-37,67:87 L=storage~81:33 L=store~0:43
L=stored~26:39 L=strainer~0:96,107:-32 L=string~56:44 L=strings~0:-55,56:38,60:-50 L=sub~71:93
L=submersible~0:36,68:47,71:85 L=sucks~89:64,102:101 L=suction~0:37,89:130,105:-43,107:-31
L=suite~0:25,99:-24 L=summer~102:40 L=sun~43:39,99:22 L=sunday~0:40 L=supply~0:-45 L=surface~102:49
L=swears~0:56 L=switch~0:-38,66:113,67:86,76:-52 L=swl~102:37,118:62 L=system~60:51
L=take~104:-46,106:26 L=takes~0:29,94:57,97:39
L=tank~61:96,62:91,63:72,67:-36,81:101,82:89,84:83,86:101,90:145,91:85,102:-42,104:-61,105:-57,106:-62,107:45
L=tank's~90:59 L=tanks~0:48 L=tap~0:54,105:60 L=tape~0:-53 L=taps~0:35,41:35,107:-36 L=team~0:46
L=tent~0:50 L=tents~0:56,36:-35 L=test~0:-47,117:36,120:71 L=than~77:103
L=that~43:29,90:53,106:-39,119:49 L=that's~105:34
L=the~0:75,13:34,17:27,24:-40,43:46,45:-36,46:-40,58:-39,66:19,67:-32,75:-45,79:50,84:46,89:35,91:35,94:52,97:34,104:80,105:39,107:13,109:-38,110:46,119:-41
L=their~0:35 L=then~0:50,104:-40,107:40,119:36 L=there~100:39 L=there's~88:34 L=theres~0:27,41:-37
L=they~0:58 L=thinking~0:39 L=thirty~105:18 L=this~0:67,3:-32 L=though~0:47 L=three~0:47
L=through~0:-49,89:43,92:24 L=tilt~59:57 L=tilted~59:35 L=timed~104:34 L=times~66:26
L=to~4:-52,24:40,43:30,45:-28,50:30,61:56,70:53,84:16,85:33,86:-44,89:-46,90:34,91:50,102:39,105:46,107:29,108:-37,116:87,120:31
L=together~0:-1,104:-54 L=toilet~41:84 L=toilets~38:38,41:29,42:38 L=told~0:49
L=took~0:56,36:34,74:24 L=top~86:-40,90:-57,91:77 L=total~0:-52 L=tote~0:21
L=tower~0:-41,90:49,107:43 L=town~0:76 L=trickle~99:26 L=trickles~104:34 L=trough~100:25
L=troughs~0:-70,100:99 L=truck~0:29 L=tubing~12:40 L=tuesday~110:36 L=twelve~0:55 L=twenty~0:34
L=two~0:75,4:29,42:-5,55:51,56:32,92:34,99:25 L=tyre~0:14 L=under~102:27 L=underground~0:-33,86:32
L=until~0:37 L=up~86:-38,91:30,105:50 L=uphill~0:-27,90:43,105:50 L=upper~0:-29,91:66,105:47
L=upstairs~0:27,105:43 L=us~57:21,93:61,99:26 L=use~0:-54,36:-48,37:40,92:94,97:33,98:33
L=uses~0:70,93:45 L=v~49:65,99:46 L=valve~25:105,63:-57,87:29,88:71,103:28 L=variable~76:37
L=vegetable~6:34 L=vessel~0:-34,24:17,27:41,61:46,63:72 L=village~90:17 L=voc~54:63,60:-45
L=volt~73:46 L=voltage~54:35 L=w~0:-40,54:48,56:107,58:63 L=want~0:-37,6:-47,22:76,76:30,81:41
L=wants~0:61,72:32,85:49 L=was~0:53,99:-38,107:-43,111:25 L=wash~38:-46 L=washer~0:117,107:-19
L=washing~42:64 L=water~10:48,28:65,71:-46,82:51,101:49,102:142,103:139,105:-35,110:-61,118:83
L=water's~102:46 L=waters~102:29 L=way~73:36,107:48 L=wc~0:40,38:-40
L=we~0:88,22:51,45:29,56:-37,81:28,92:73,93:57,94:23,97:44,99:60,102:-24,106:29 L=we're~99:49
L=weakest~44:43 L=well~90:-53,102:16,104:44,108:108,110:37,111:48 L=well's~110:53 L=wellhead~99:-30
L=what~103:34 L=when~0:43,32:74,38:-39,63:-47 L=which~37:42 L=who~0:26 L=wide~110:34 L=wife~0:23
L=wil~0:73 L=wire~50:108,107:-62 L=with~36:-41,52:37,61:40,71:-29,86:-8,87:45,88:28,108:23,118:-37
L=within~102:33 L=without~0:-42 L=write~0:77 L=wrote~0:46,104:31 L=x~0:95,55:48
L=yard~0:-26,1:39,106:53 L=yards~105:-35,106:56 L=year~102:-37 L=yet~99:58 L=yield~0:44,104:50
L=you~0:44,106:-36 L=your~0:22 L=yurt~0:44 L=zone~0:32 L=zones~30:55 L=|~60:40,106:19
R=!~38:41,99:26 R=(~99:62 R=)~0:74,38:50
R=,~0:53,10:-85,32:-57,39:37,47:75,50:-40,70:-46,76:30,81:-56,86:52,90:30,91:7,92:18,99:41,107:43,116:-46,118:52
R=.~0:108,1:-53,6:20,8:29,9:-27,20:-47,21:-42,29:-42,33:-1,34:-25,35:-49,37:-25,39:-31,40:-53,43:22,45:53,56:-14,58:-26,62:-38,65:-21,66:19,68:-47,70:-3,90:28,92:40,93:50,99:35,101:-46,102:27,103:24,104:49,105:28,107:45,110:32,112:-61,114:-33
R=0~0:52,6:-40,14:56,67:38,93:26,102:53,104:13 R=1~0:27,19:49,50:35,60:31,104:-69,106:21
R=2~42:53,62:26,63:46,90:40,99:-50,108:50 R=3~47:59,62:43,66:30,86:-40,99:-32,106:40,107:36,120:53
R=4~3:-28,38:-47,63:-48,89:16,90:-50,105:25,110:47,113:43,120:44
R=5~0:53,1:-72,3:35,66:62,68:43,86:-34,107:44,110:42 R=6~38:-28,102:-45,104:74,110:31,116:87,118:19
R=7~0:40,19:55,71:-72,91:45,106:-51,108:103,110:27,118:37 R=8~0:65,56:45,90:-39,102:-30,113:67
R=9~86:-35,91:28,104:-46,118:48 R=:~86:-42 R=;~0:66,90:-33,99:57
R=?~0:77,36:49,44:48,45:28,93:52,99:39,103:27,104:-49,105:50
R=a~0:50,10:48,12:33,30:49,41:33,49:54,52:98,63:-40,79:21,89:-45,92:40,105:49 R=about~1:37,3:29
R=above~70:53,71:-36,86:-30,90:76,91:39,101:48,105:83,106:58,107:-34 R=acid~0:54 R=acres~99:33
R=across~0:33,68:48,108:28 R=adults~0:43,99:35 R=after~0:27,20:67 R=ago~0:20 R=ah~60:78
R=air~61:30,63:53,112:37 R=all~23:21,100:42,104:44 R=alpacas~0:56 R=also~36:36 R=altitude~45:38
R=altogether~92:37 R=an~0:87,36:-36,77:34,107:-64,117:20
R=and~0:27,33:91,36:43,38:55,41:50,45:-32,60:-63,66:62,100:-70,105:-42,107:25 R=apart~16:22,18:21
R=apiece~93:32 R=are~0:-42
R=at~0:33,4:-62,9:29,13:16,22:32,30:112,32:77,34:88,37:69,40:62,50:-43,56:-65,70:55,71:-25,73:37,91:-30,104:-40,105:-38,107:-30,110:48,115:63,116:66
R=august~102:38 R=automatic~0:-39,100:37 R=away~107:65 R=back~85:42 R=ball~100:32 R=bank~60:33
R=bar~0:-58,66:95 R=barn~90:-35,106:39 R=barrel~0:-44,91:33 R=basin~38:78 R=basins~38:119
R=bathroom~0:57,36:-28,38:-22 R=bathrooms~36:37 R=batteries~51:32,60:30 R=battery~51:43,60:37
R=be~0:50 R=because~0:-33 R=beds~0:76,105:-56 R=beef~1:46 R=before~13:46,111:59 R=begin~13:38
R=behind~0:51 R=below~86:64,102:40,105:9,106:14,110:-44,118:19 R=bends~0:-25,87:87
R=beside~1:61,3:55,86:37 R=between~16:56 R=bigger~0:31 R=bladder~63:34 R=block~13:33 R=blue~0:21
R=bore~0:-70,105:-47 R=borehole~109:22,110:29 R=both~0:48 R=bottom~0:71,107:-34,110:82
R=bowls~100:41 R=break~0:-46,21:21 R=bucket~0:70 R=bulls~1:43,5:71 R=buried~38:35
R=burn~0:-56,99:26 R=but~0:177,38:39,99:-49 R=by~0:49,23:22,65:58,92:42 R=cabin~28:28,90:51,107:45
R=cabins~36:17 R=cable~50:92,107:-34 R=calf~5:69 R=calves~5:112 R=campers~99:44 R=cart~0:82
R=casing~108:44,118:44 R=cattle~1:79 R=centrifugal~0:60 R=charged~27:36 R=checked~0:-38
R=chickens~0:-55,4:113 R=children~0:69,99:-30 R=cistern~3:-37,78:29,86:23 R=climb~105:47
R=climbs~105:28 R=cloudy~81:87 R=controller~0:26,60:-62 R=cooling~72:34 R=cottage~0:-32,106:68
R=cow~5:40 R=cows~0:-30,1:61,2:93,5:60,99:-28 R=dairy~2:51
R=day~10:87,15:68,83:66,84:70,93:67,94:20 R=deep~0:44,82:43,102:-26,110:114 R=delivers~0:30
R=delivery~0:35 R=depth~110:24 R=diesel~91:31,107:-35 R=difference~0:57 R=dog~99:26 R=don't~0:26
R=door~107:34 R=down~0:10,71:48,102:61,107:-45,118:62 R=downhill~106:39 R=driller~0:-37
R=drink~0:-44,1:50,4:25 R=drinkers~100:116 R=drip~0:25,6:57,13:31,18:32 R=dripper~18:16
R=drippers~0:56,16:35 R=drop~0:-41,107:-40,113:73 R=drops~0:54
R=dry~0:-27,1:59,2:28,78:50,94:80,104:61,113:41 R=e~48:30 R=each~0:20,8:27,28:25,36:65,93:81,99:-60
R=elbows~87:74 R=electric~0:-50 R=electricity~99:35 R=elevation~45:32 R=emitter~18:29 R=empty~0:25
R=enough~86:25 R=ever~38:29 R=ewes~3:140 R=expansion~26:47,27:71 R=fall~106:67
R=families~0:31,99:-22 R=feeds~91:55 R=feet~0:34 R=fence~0:50 R=field~0:34 R=fill~0:19
R=filled~86:89,106:-52 R=fills~0:-70 R=filter~13:54 R=fine~0:49 R=fire~85:95 R=first~0:84
R=float~100:92 R=floats~0:-37,99:-31,100:72 R=flooded~0:82 R=flow~35:109,36:-76 R=flush~41:36
R=folks~0:-37,99:74 R=foot~5:33,87:31,88:66
R=for~22:41,31:24,38:67,72:27,85:100,86:-29,91:-22,92:38,100:34,117:64 R=four~58:25,102:39
R=frame~0:35 R=free~0:42 R=from~50:50,86:47,90:62,102:19,107:34,110:-45 R=ft~0:47,102:-36
R=full~82:138,99:73 R=garden~31:28,86:-37,102:-28,107:35 R=gauge~0:45 R=generator~91:32,107:-26
R=gets~0:50 R=give~38:29 R=go~0:-48,110:34 R=goats~0:-13,3:125 R=goes~71:44 R=going~0:-33,37:107
R=golf~0:76 R=gone~0:48 R=got~0:92 R=gpm~0:22,110:48,116:29 R=gravity~0:-87,23:24,90:53
R=greenhouse~6:34 R=ground~70:46,105:-39 R=guests~0:42,99:73 R=h~102:32 R=has~38:-41,66:-52,106:105
R=have~102:-40 R=hdpe~107:40 R=he~0:105 R=head~1:67 R=heads~39:38 R=heater~28:96,63:-31
R=heifers~1:37 R=height~90:52,105:40,107:38 R=hens~0:-31,4:165,99:-34 R=her~0:33 R=here~99:42
R=higher~90:37,105:48,107:-30 R=hill~0:32,86:-63,105:40 R=holiday~0:46 R=horses~1:118,99:-26
R=hose~0:-31,31:135,32:77,39:35,89:58,99:-28,102:-27 R=hoses~0:-107,31:152,32:78
R=hour~77:48,117:19 R=hours~97:30
R=house~0:33,41:-31,66:-79,86:28,90:60,104:25,105:22,107:55,110:-48 R=houses~0:51 R=how~0:-29,10:32
R=hung~102:31 R=i~0:69,19:56,29:69,90:31,105:-49,107:74 R=i've~91:-27 R=id~0:41
R=identical~0:-36,65:87
R=in~0:29,2:15,4:-34,43:53,56:63,61:32,65:34,76:-49,81:83,89:49,90:-37,93:-31,94:54,97:34,99:29,102:30,104:30,110:32,118:-35
R=inch~89:27,102:-51,107:52 R=inhabitants~99:39 R=inside~108:45 R=intake~0:-58,109:64,118:32
R=into~79:17 R=is~0:45,45:33,63:-47,76:21,79:-42,86:-42,105:-19,108:41
R=it~0:20,68:49,90:9,91:-30,102:29,104:74,111:16 R=it's~82:21 R=its~0:53,71:-53,72:32,102:55
R=joined~0:57 R=july~0:-56,15:40 R=june~0:-66 R=just~0:67 R=keep~114:44 R=kept~85:56 R=kid~0:44
R=kids~3:48,106:36 R=kitchen~0:52,90:42,106:35,107:32 R=know~0:32 R=last~0:40 R=later~0:48
R=lavs~0:32 R=laying~4:33 R=lead~0:50 R=least~11:34 R=lift~102:54,105:41 R=like~0:-56
R=limiters~35:43,36:-32 R=line~0:47,16:40,104:-37,106:37 R=lines~12:30,13:61 R=litre~0:16
R=live~0:-43,99:35 R=lodger~0:37,99:-35 R=loft~91:52 R=long~12:41,89:38,110:-33 R=loo~41:78,99:-30
R=looking~0:57 R=loos~0:-36,41:71 R=lost~57:84 R=low~63:-35,102:57 R=lower~106:70 R=lowered~0:37
R=lowest~110:29 R=m~0:30,104:35,105:46,106:-50,108:42,118:5 R=machine~42:41 R=machines~42:51
R=main~0:59 R=makes~91:31 R=man~0:-33,99:48 R=many~10:41 R=maybe~105:-28,107:24 R=me~0:49
R=measured~0:47 R=members~99:26 R=mesh~0:64 R=meter~0:-49,92:53 R=metered~92:25
R=meters~0:-31,91:41 R=metre~0:-33,18:35 R=microsprinklers~33:83,34:74 R=milk~0:-64,2:196
R=milkers~2:77 R=milking~0:-55,2:94,99:-35 R=min~0:32,19:33 R=minutes~0:62,97:30
R=mm~89:22,102:-73,106:-38,107:50 R=modules~55:40 R=months~0:-36,78:56 R=more~4:25 R=motor~0:35
R=my~0:65,99:50,104:-54,106:-49 R=n~0:-100,46:163 R=need~11:31 R=needs~0:39 R=neighbour~0:48
R=new~0:93 R=next~0:36,86:36 R=night~0:-37,99:36 R=no~0:31,36:-46,106:-19,107:50 R=nobody~0:52
R=none~3:44 R=north~46:97 R=not~1:42 R=now~36:53,103:31 R=o'clock~0:41 R=october~110:32
R=of~6:31,50:22,57:56,58:11,71:-45,79:21,81:41,89:36,90:-27,99:19,102:-56,107:36,113:63
R=off~38:-46,66:61,67:53,107:51 R=old~0:64 R=on~0:27,1:33,6:31,18:31,32:35,91:38,94:57,105:-62
R=once~0:-28,32:46,34:59,37:74 R=one~0:48,3:20,99:29,106:32 R=only~65:44 R=open~37:47,54:60
R=or~37:47 R=other~38:36 R=our~0:46,102:39 R=out~66:64 R=outside~0:-48 R=over~90:39,106:46,109:130
R=own~0:-41,36:29 R=paddock~105:33 R=paddocks~100:52 R=pairs~0:-58,5:107 R=panel~55:57
R=panels~55:26,56:56,58:43 R=parallel~58:37,65:60 R=path~105:31 R=pe~0:83,105:-28
R=people~0:46,66:-40,99:134,104:16 R=per~0:-12,18:21,36:-49,75:25,77:38 R=person~99:101
R=persons~0:-12,36:-33,99:100 R=pex~0:27 R=phase~0:45 R=pigs~0:31
R=pipe~0:56,102:-15,104:50,107:36,113:28 R=plastic~89:-29 R=please~0:41,104:-57 R=plenty~92:31
R=plot~0:21 R=plus~38:-43,86:34,107:20 R=poly~0:59,102:-29 R=polyethylene~0:60
R=power~0:-55,31:27,38:21,105:46 R=pre~27:31 R=precharge~0:-44,63:34
R=pressure~0:-17,21:61,63:45,71:49,105:32 R=psi~63:82
R=pump~24:45,32:56,34:54,38:-48,61:62,71:-45,76:32,86:-2,91:-41,101:48,102:71,104:39,106:-36,109:31,110:57,116:58
R=pump's~0:-51 R=pumphouse~0:55 R=pumping~116:54 R=pumps~65:80,86:38 R=pupils~99:66 R=pushes~0:22
R=put~0:76,104:-44 R=pvc~0:70 R=q~0:36 R=rain~86:27 R=rains~102:28 R=rams~0:34 R=reach~107:42
R=regular~0:66 R=relief~26:37,28:19 R=reserve~81:41 R=ridge~0:26 R=right~86:36 R=rim~0:-51
R=ring~0:33 R=rise~105:69 R=river~102:32 R=road~0:55 R=roof~79:41,86:71 R=rooms~36:38
R=rows~0:-41,16:74 R=run~32:51,37:63 R=runs~102:-31 R=same~107:36 R=says~0:56,77:77 R=sea~45:57
R=second~107:26 R=seconds~0:52 R=see~0:40 R=series~56:42 R=set~73:45,76:50 R=shed~86:38
R=sheep~3:100 R=sheet~75:42 R=should~0:-59 R=shower~35:48,36:153,37:50,63:-27,102:-38
R=showers~0:-12,35:30,36:111,37:99 R=shutoff~0:35 R=side~65:63 R=since~0:-66
R=sink~0:-42,32:56,38:131,73:60 R=sinks~36:26,38:130,99:-38 R=sisters~99:36 R=sits~79:96,86:-28
R=six~2:108,99:-61 R=size~0:-38 R=sleep~99:61 R=slope~105:67,106:-24 R=small~99:40
R=so~0:77,36:-39,99:-45,104:68 R=solar~1:55,99:40,118:30 R=somewhere~96:51 R=sorry~0:119
R=source~0:38 R=south~47:82 R=speed~76:56 R=spring~104:61 R=sprinkler~0:-47,39:120
R=sprinklers~0:-31,39:134,40:70 R=staff~0:65 R=stand~91:49 R=standing~110:32 R=stands~108:36
R=starts~0:-83,61:41,77:81 R=static~0:-44,110:72 R=stays~0:48 R=steers~1:62 R=still~0:51
R=stock~1:33 R=strawberries~0:36 R=stream~105:23 R=string~0:-32,50:-36,56:92,58:84
R=strings~0:-48,56:87,58:68 R=submersible~68:53 R=sucklers~5:24 R=sucks~112:33
R=suction~69:46,89:70,102:38,105:-43 R=summer~43:23,102:57 R=sun~0:-41 R=surface~0:41,102:25
R=switch~0:-29,66:14 R=take~0:53
R=tank~0:32,28:-37,61:39,63:50,67:30,86:52,90:46,91:21,99:-28,100:32,104:-41,105:-31
R=tanks~0:58,21:29 R=tap~0:70,38:73 R=td~120:23 R=teachers~99:31 R=tents~36:65 R=th~57:74
R=than~4:24,106:9 R=thank~0:-51,107:26 R=that~0:49,38:31 R=that's~0:72
R=the~0:60,9:25,11:13,13:6,14:-36,29:-46,36:-46,37:55,43:37,47:-31,57:55,67:-47,86:11,90:51,91:20,92:41,102:56,104:32,105:46,106:32,109:42,110:31,113:-46
R=them~99:-31 R=then~0:88,105:-35 R=theres~0:54 R=they~0:76,11:31,41:-30 R=thinking~0:-38
R=those~76:31 R=though~105:28 R=through~105:-43 R=time~30:66,34:59,40:39 R=times~0:44
R=to~6:39,57:54,90:15,105:39,107:65,108:-44 R=today~91:31 R=toddler~0:35,99:-28
R=together~0:-56,32:44,36:-53,37:109,99:-22 R=toilet~38:43,41:76,99:-33
R=toilets~0:-37,36:55,41:131 R=told~107:-32,110:68 R=tomatoes~0:43,6:-38
R=top~0:67,90:34,102:-31,106:-41,118:50 R=total~0:-28,107:17 R=tote~91:20 R=tower~0:-28,91:62
R=town~0:43,84:33 R=trailer~0:104 R=trough~0:-11,3:24,99:-37,100:112 R=troughs~0:-25,100:119
R=ts~0:40 R=two~0:33,56:69,58:-45,86:-48,97:43,105:24 R=type~3:30 R=up~38:-27,76:45,105:12,107:17
R=uphill~105:63,107:-21 R=upstairs~0:41 R=upwards~105:44 R=us~0:62,99:87,106:33,107:-45
R=used~0:-46 R=v~0:49 R=valve~26:38,28:29,87:30,88:58 R=vessel~0:-27,63:61,67:33 R=volt~0:63
R=w~56:25 R=wait~0:91 R=wall~0:40 R=want~90:49 R=wants~0:64 R=was~0:26 R=wash~31:58,36:-33,38:34
R=washbasins~38:49 R=washer~42:111 R=washers~0:-39,42:91 R=washing~42:86,99:-35
R=water~19:60,28:46,41:-50,63:-33,71:43,90:-58,102:107,105:-23,106:-41,110:40
R=waterers~0:-29,100:44 R=wc~41:70 R=wcs~41:63 R=we~0:42,47:92,91:24,105:-28 R=weak~0:22,99:-29
R=well~0:19,38:-32,70:37,104:-30,105:34,106:29,111:43 R=well's~0:-42 R=wellhead~0:-41 R=what~86:-40
R=when~0:78,82:142,99:-16,116:37 R=where~13:52,90:-42,102:46 R=which~0:28,95:25 R=why~0:27,103:30
R=wide~0:37 R=winter~0:67,57:23 R=wire~50:82,107:-42
R=with~0:35,1:-48,3:-23,5:66,35:62,36:37,99:28,100:32,110:66 R=without~0:-49,81:60 R=workers~99:43
R=workshop~0:-25 R=worst~102:43 R=x~0:45 R=year~52:136 R=yield~110:53 R=yields~0:61,102:18
R=zone~0:-75 R=zones~0:-26,20:80,29:60,99:-43 R=|~0:-27,94:35,107:39,118:-46 angleE=n~46:67
angleE=north~46:97 angleE=relief~26:37 angleE=south~47:39 angleE=valve~26:37 angleL0=,~59:52
angleL0=.~0:60 angleL0=at~26:52,46:30,47:45,59:47 angleL0=is~19:60 angleL0=latitude~47:29
angleL0=out~43:26 angleL0=panels~59:44 angleL0=south~59:42 angleL0=tilt~59:57 angleL0=tilted~59:35
angleL0=to~43:35 angleL0=water~103:51 angleL1=.~46:39,103:43 angleL1=in~43:29
angleL1=the~43:72,47:47 angleL1=water~43:25 angleL2=,~59:56,103:19 angleL2=.~0:33,47:40
angleL2=hot~26:37 angleL2=it's~26:37 angleL2=m~103:29 angleL2=mm~43:36,103:34 angleL2=one~0:70
angleL2=panels~47:43 angleL2=pipe~103:58 angleL2=v~59:45 angleM=drip~19:65
angleM=pump~46:64,47:38,59:39,103:32 angleM=spring~0:48 angleM=tank~47:44 angleM=well~26:35
angleN=power.facing~59:56 angleP=hot.volume~26:37 angleP=pipes.held~43:73 angleP=power.facing~59:40
angleP=power.source~59:76 angleR0=.~0:-35,43:52,59:19,103:52 angleR0=n~46:67 angleR0=north~46:97
angleR0=south~47:39 angleR1=.~0:59 angleR1=the~103:34 angleR2=,~0:52 angleR2=0~47:49
angleS=come~43:26 angleS=lati~47:29 angleS=pane~59:136 angleS=tilt~59:35 angleS=wate~103:64
angleT=beds.area~19:65 angleT=power.facing~59:73 angleT=power.panel~59:80 angleT=power.series~59:73
angleT=power.source~19:53,59:106 angleT=power.strings~59:54 angleT=power.tilt~59:-77
angleT=power.voltage~59:26 angleT=pump.cut_in~26:48 angleT=pump.cut_out~26:48
angleT=pump.placement~47:40,103:26 angleT=water.kind~19:47,26:36,47:35,103:55
angleT=water.yield~47:24 angleT=way.length~0:32,43:51,47:41 angleT=way.pipe~0:33,43:59
anglea=.~43:23 anglea=south_.~47:50 anglel0=at~26:52,46:32,47:44 anglel0=is~19:61
anglel0=tilt~59:57 anglel0=to~43:35 anglel1=,~59:35 anglel2=.~0:61 anglel2=panels~59:17
anglelr=at_,~26:37 anglelr=at_north~46:33 anglelr=is_.~43:26 angler0=,~59:47
angler0=.~43:56,59:42,103:65 angler0=n~46:67 angler0=north~46:107 angler0=south~47:56
angler0=tilt~59:25 angler1=.~46:37,47:45 areaE=,~0:52 areaE=0~0:59 areaE=1~0:47 areaE=2~0:29
areaE=3~0:18 areaE=4~0:4 areaE=5~79:45 areaE=7~0:41 areaE=:~0:36 areaE=below~0:-53
areaE=cistern~79:57 areaE=drip~0:44,6:40 areaE=every~6:52 areaE=hour~6:46 areaE=long~0:38,6:-33
areaE=m~0:20 areaE=roof~79:42 areaE=tomatoes~0:46 areaE=zones~6:35 areaL0=,~6:31,79:19
areaL0=:~6:28 areaL0=are~6:30 areaL0=area~6:20 areaL0=beds~6:17 areaL0=drip~6:47 areaL0=garden~0:41
areaL0=grow~0:42,6:-36 areaL0=i~6:26 areaL0=is~79:39 areaL0=it~79:28 areaL0=of~0:15
areaL0=off~79:42 areaL0=orchard~6:27 areaL0=rain~79:26 areaL0=roof~79:38 areaL0=the~0:44
areaL0=tomatoes~0:41 areaL0=vegetable~6:34 areaL1=garden~0:-24,6:31 areaL1=it~6:50
areaL1=roof~79:54 areaL1=the~0:-29,6:43,79:19 areaL2=,~79:4 areaL2=.~79:19 areaL2=0~6:10
areaL2=1~6:24 areaL2=2~6:-19 areaL2=8~0:60 areaL2=:~0:22 areaL2=l~0:42 areaL2=m~0:44
areaL2=pump~0:50,6:-39 areaL2=so~0:26 areaM=cistern~0:42,6:-38,79:51 areaM=drip~6:183,79:-40
areaM=pump~0:47,6:36,79:57 areaM=roof~6:-93,79:124 areaM=spring~0:66 areaM=tank~0:55,79:49
areaM=well~0:45 areaN=beds.area~0:50 areaN=drip.crop~6:37 areaN=drip.rows~6:51
areaN=drip.zones~6:33 areaN=rain.dry_count~79:28 areaN=rain.runoff~79:55 areaN=way.length~0:48
areaP=drip.crop~0:-89,6:122 areaP=pump.present~0:52,6:-46 areaP=rain.used~0:67
areaP=store.fills~0:-30,79:50 areaP=store.volume~6:-42 areaP=water.kind~0:-41,79:79
areaP=way.climb~6:41 areaR0=,~0:42,6:31 areaR0=.~6:52,79:65 areaR0=all~0:32 areaR0=drip~6:37
areaR0=in~0:28 areaR0=into~79:38 areaR0=of~6:42,79:42 areaR0=pump~0:-26,79:31 areaR0=roof~79:42
areaR0=tomatoes~0:22 areaR1=,~0:40,6:-36,79:29 areaR1=.~6:58 areaR1=5~0:37 areaR1=a~79:48
areaR1=all~0:-58 areaR1=in~0:-34,6:54 areaR1=one~0:62 areaR1=pump~0:69 areaR1=stands~0:29
areaR1=to~0:-49 areaR2=.~0:50 areaR2=0~79:8 areaR2=2~6:20 areaR2=3~0:95,6:-44,79:-34
areaR2=4~0:28,6:-34 areaR2=5~0:-24,6:49 areaR2=8~0:31,6:-28 areaR2=ft~6:36 areaR2=long~0:24
areaR2=m~0:87,6:-21,79:-42 areaR2=one~0:31 areaR2=pump~79:58 areaR2=tank~6:51 areaR2=water~6:35
areaR2=zones~6:44 areaS=cist~0:59,6:-42 areaS=floo~0:26 areaS=gard~0:40,6:26 areaS=gree~0:-31,6:44
areaS=hous~0:54,6:-31 areaS=irri~6:43 areaS=oliv~6:48 areaS=vege~6:42 areaS=wate~0:57,6:-53
areaT=power.battery~0:53 areaT=power.capacity~0:30 areaT=power.facing~6:43 areaT=power.panel~0:31
areaT=power.source~0:9,6:38 areaT=power.voltage~0:45 areaT=pump.height~6:33
areaT=pump.placement~6:45 areaT=pump.present~79:46 areaT=pump.works~79:51
areaT=store.fills~0:-27,79:32 areaT=store.volume~0:47,79:9 areaT=tank.level~0:33
areaT=tank.volume~6:25 areaT=water.kind~0:50,6:53,79:44 areaT=water.level~0:63
areaT=water.yield~6:10 areaT=way.climb~0:24 areaT=way.length~0:67,6:36 areaT=way.pipe~0:66,6:50
areaT=well.depth~0:47 areaa=~6:74 areaa=._the~0:32 areaa=with_drip~0:47,6:-42 areab=~6:71
areab=roof_is~0:-41,79:54 areal0=:~6:29 areal0=is~79:56 areal0=off~79:36 areal0=roof~79:49
areal1=.~0:50,6:-34 areal1=beds~6:37 areal1=garden~0:44 areal1=roof~79:22 areal1=the~0:42
areal1=tomatoes~0:42,6:-36 areal2=grow~0:42,6:-36 areal2=the~6:38 areal2=vegetable~6:43
arealr=,_.~0:-33 arealr=is_.~6:37 arealr=off_of~79:36 arear0=.~6:37,79:28 arear0=and~0:-51
arear0=of~6:34,79:17 arear0=with~0:43 arear1=the~0:32 arear1=under~0:32,6:-31 arear2=,~6:53
arear2=pump~0:-37,79:42 bareE=!~0:-56,99:31 bareE=(~0:-53,1:37 bareE=)~1:45
bareE=,~0:38,2:39,32:-55,35:47,38:29,39:57,58:42,100:35 bareE=0~0:-36,1:43,58:53,99:37,118:40
bareE=1~33:65 bareE=2~36:58,58:19 bareE=3~0:33,33:113,41:-39,56:97,66:68 bareE=4~0:82,1:-35
bareE=5~0:41,2:52,5:52,41:-31,99:17,100:38 bareE=7~99:47 bareE=8~56:37 bareE=9~0:53,2:51,99:-71
bareE=:~0:96,99:-34 bareE=?~0:69,99:-10 bareE=acres~0:50,3:-31,99:22 bareE=adults~0:50,99:34
bareE=ah~0:67 bareE=automatic~0:-28,100:37 bareE=baby~0:42 bareE=ball~100:29 bareE=bar~0:-18,66:53
bareE=barn~1:43 bareE=basin~38:46 bareE=basins~0:30,38:105,99:-43 bareE=bath~99:44
bareE=bathroom~0:68,38:-30 bareE=bathrooms~36:37 bareE=batteries~0:28 bareE=battery~58:46
bareE=beef~0:62,1:41 bareE=bends~0:-27,87:87 bareE=bore~0:34 bareE=both~36:32 bareE=bowls~100:41
bareE=break~21:22 bareE=bull~0:44 bareE=bulls~1:43,5:72 bareE=but~99:-21 bareE=by~0:-38,65:57
bareE=cabins~36:17 bareE=calf~5:68 bareE=calves~5:108 bareE=campers~99:44 bareE=can~33:30
bareE=cattle~1:54 bareE=chickens~0:-66,4:113 bareE=children~0:67,99:-28 bareE=chooks~0:-32,4:57
bareE=cm~0:31 bareE=comes~0:60 bareE=controller~0:-38,56:32 bareE=cow~5:41
bareE=cows~0:-32,1:60,2:95,5:58,99:-31 bareE=creek~0:-31 bareE=dairy~2:50
bareE=day~0:-19,10:34,20:47,99:100 bareE=deep~110:53 bareE=degrees~56:40 bareE=dies~0:42
bareE=does~0:20 bareE=dog~99:26 bareE=down~36:-49 bareE=drink~0:-48,1:43,4:22
bareE=drinkers~100:114 bareE=drip~0:-15,18:38 bareE=dripper~18:38 bareE=drippers~0:44
bareE=dry~1:49,2:10,78:52,99:-22 bareE=dunnys~0:23,99:-34 bareE=each~0:-25,1:-46,36:48,56:40,58:25
bareE=elbows~87:73 bareE=else~0:-66 bareE=every~0:87 bareE=ewes~0:-58,3:139 bareE=families~99:-22
bareE=five~3:-33 bareE=float~0:-24,100:88 bareE=floats~0:-82,1:73,100:87 bareE=flow~35:111,36:-77
bareE=flush~0:-32,41:34 bareE=folks~0:-32,99:74 bareE=foot~0:-45,87:31,88:63,99:-34
bareE=four~0:31,99:-33 bareE=from~0:-61,99:43 bareE=front~0:35 bareE=ft~0:22,99:-22,100:46
bareE=garden~0:-25,31:51 bareE=gel~0:39 bareE=get~0:-33 bareE=gives~0:30
bareE=goats~0:-35,3:111,99:30 bareE=going~37:94 bareE=guests~0:47,99:81 bareE=head~1:60
bareE=heater~0:-41 bareE=heifers~1:34,2:44 bareE=hen~0:-65 bareE=hens~0:-65,4:151 bareE=here~99:40
bareE=horses~0:83,1:83,5:16 bareE=hose~0:-97,31:133,32:70,37:47,39:25,41:-50
bareE=hoses~0:-92,31:165,32:78 bareE=hour~77:49 bareE=house~99:52 bareE=houses~0:59
bareE=humans~99:30 bareE=hundred~56:70 bareE=identical~0:-14,65:88 bareE=inhabitants~99:39
bareE=itself~0:-60 bareE=john~0:-66,99:38 bareE=joined~0:42 bareE=july~0:-37,99:41 bareE=kid~0:52
bareE=kids~0:55 bareE=kitchen~0:73,38:-56,41:26 bareE=lavs~0:41 bareE=law~0:42,99:-38
bareE=laying~4:25 bareE=limiters~35:43,36:-32 bareE=line~0:17,18:37,99:-42 bareE=litre~0:36
bareE=litres~99:73 bareE=live~99:35 bareE=lodger~0:40,99:-35 bareE=loo~0:-33,41:72
bareE=loos~0:-32,41:74 bareE=lost~0:-50,57:73 bareE=m~36:-49 bareE=machine~0:40,36:26,42:31
bareE=machines~42:54 bareE=me~0:61 bareE=merinos~3:75 bareE=meter~0:24 bareE=meters~0:-34,99:26
bareE=metre~18:38 bareE=microsprinklers~33:83,34:73 bareE=milk~2:79 bareE=milkers~2:77
bareE=milking~0:-29,2:96 bareE=months~78:56 bareE=more~0:-74,4:24 bareE=n~0:-67,46:96
bareE=never~0:-53,36:41 bareE=new~0:24 bareE=night~99:52 bareE=no~0:-38,3:43,38:50
bareE=none~0:-32,3:29 bareE=north~56:30 bareE=not~0:47,1:40,99:-42 bareE=o'clock~0:41
bareE=off~0:-57,66:37,100:43 bareE=once~0:-72,32:35,34:58,37:52 bareE=one~29:42,56:25,99:10
bareE=only~0:37 bareE=open~0:-35,37:46,39:51 bareE=or~37:45 bareE=out~40:54 bareE=outside~0:-38
bareE=over~0:47 bareE=paddocks~100:51 bareE=pair~5:66 bareE=pairs~5:76
bareE=panels~0:61,56:60,58:41,99:-39 bareE=parallel~0:-18,56:-62,58:108,65:60
bareE=people~0:52,99:102 bareE=per~18:38,36:-52,77:39,99:23 bareE=perhaps~0:56 bareE=person~99:112
bareE=persons~36:-32,99:82 bareE=phase~0:62 bareE=pigs~0:50 bareE=plus~0:67,38:-38 bareE=poly~0:30
bareE=pressure~21:75 bareE=pumps~65:81 bareE=pupils~99:64 bareE=rams~0:34 bareE=rated~0:49
bareE=right~0:45,99:-38 bareE=roof~0:46 bareE=rooms~36:38 bareE=run~29:54,32:93,37:62
bareE=same~37:81 bareE=series~0:-24,56:138 bareE=shade~56:36 bareE=sheep~0:-30,3:101
bareE=shower~0:-4,35:47,36:157,37:48,38:102 bareE=showers~0:-27,35:31,36:109,37:100,41:53
bareE=side~65:59 bareE=sink~32:56,38:75,99:30 bareE=sinks~38:77 bareE=sisters~99:36
bareE=sleep~99:61 bareE=so~0:59,99:-42 bareE=soak~0:-50,1:54 bareE=sorry~0:85 bareE=south~47:42
bareE=sprinkler~0:-34,39:86 bareE=sprinklers~0:-34,39:132,40:70 bareE=staff~0:80
bareE=starts~0:-49,77:82 bareE=steers~0:-38,1:85 bareE=stock~0:-78,1:63
bareE=string~0:-67,56:63,58:84 bareE=strings~0:61,56:-55,58:59 bareE=sucklers~5:24
bareE=summer~0:-52 bareE=tank~0:44,99:-25 bareE=tanks~21:30 bareE=tap~0:-65,38:66 bareE=taps~0:-44
bareE=teachers~99:31 bareE=tents~36:65 bareE=th~57:74 bareE=than~4:22 bareE=them~99:-25
bareE=then~66:26 bareE=they~39:52 bareE=think~0:78 bareE=three~0:39,38:-37,56:-48
bareE=time~0:-23,29:58,30:64,34:56,39:50,40:34 bareE=times~0:57 bareE=toddler~0:35,99:-28
bareE=together~0:-11,32:85,36:-38,37:98,99:-30 bareE=toilet~36:51,41:65,99:-30
bareE=toilets~0:-18,37:34,41:116 bareE=tomatoes~0:15 bareE=too~0:29 bareE=total~0:28,99:-70
bareE=trough~0:-71,3:38,100:118 bareE=troughs~0:-43,1:18,100:108 bareE=ts~0:40
bareE=two~0:53,1:49,58:-60 bareE=under~0:-33 bareE=up~0:-39,3:50 bareE=us~99:49 bareE=v~58:40
bareE=valve~87:31,88:56 bareE=volt~0:41 bareE=volts~0:-24 bareE=w~56:32,58:63,99:-36
bareE=washbasins~38:49 bareE=washer~42:108 bareE=washers~42:91
bareE=washing~0:-58,36:49,41:60,42:82,99:41 bareE=water~0:-35,3:40,36:-41
bareE=waterers~0:-30,100:44 bareE=watts~56:49 bareE=wc~41:69 bareE=wcs~0:-67,41:63 bareE=weak~0:23
bareE=well~0:25,38:-21 bareE=when~1:30 bareE=workers~99:43 bareE=workshop~0:-31,99:32 bareE=x~0:33
bareE=year~0:-61,52:68 bareE=zones~0:-36,20:79,29:60,99:-24 bareL0=(~99:31
bareL0=,~1:36,4:39,41:24,48:43,66:59,71:50,110:31
bareL0=.~35:34,38:41,39:-66,45:43,66:-27,99:41,100:32 bareL0=0~0:42,1:41,56:43 bareL0=1~4:-47,38:55
bareL0=2~41:41,99:-50 bareL0=3~0:24 bareL0=4~3:41,48:41 bareL0=5~0:33 bareL0=6~99:-26
bareL0=:~0:-16,39:25,65:41 bareL0=;~0:-33 bareL0=?~0:-47,99:61 bareL0=about~3:48,4:48
bareL0=adults~0:25 bareL0=after~0:33 bareL0=all~99:-57 bareL0=always~0:62
bareL0=and~1:5,4:56,31:28,41:19,49:60,67:14,87:25,99:-69 bareL0=are~99:27 bareL0=as~38:30
bareL0=at~0:68,1:-42,67:27,71:68,99:-32,102:60 bareL0=away~99:52 bareL0=bar~67:27
bareL0=basins~38:58 bareL0=bathrooms~0:34 bareL0=beef~0:39 bareL0=between~0:36 bareL0=bore~0:47
bareL0=but~0:48 bareL0=cabin~99:41 bareL0=camp~0:-35,99:32 bareL0=cattle~0:43 bareL0=cistern~0:39
bareL0=climb~0:-52 bareL0=come~39:38 bareL0=cottage~99:28 bareL0=cows~2:52,5:70,99:-29
bareL0=day~0:-38,99:53 bareL0=deep~45:21 bareL0=dry~0:55,1:-45,78:46 bareL0=each~0:69,36:-51
bareL0=family~0:-26,99:81 bareL0=feeds~0:-40,100:41 bareL0=first~0:38 bareL0=floats~100:41
bareL0=foot~87:27 bareL0=for~0:25,1:34 bareL0=four~36:53 bareL0=ft~0:61 bareL0=gal~0:32
bareL0=goats~3:73,99:-32 bareL0=gpm~0:-31,36:56 bareL0=grass~0:32,100:-31 bareL0=grid~46:11
bareL0=guests~99:30 bareL0=has~38:51 bareL0=have~36:31 bareL0=having~0:-19 bareL0=hens~0:-65,4:78
bareL0=horses~1:29 bareL0=hose~0:-59,31:58 bareL0=hoses~0:-30,31:45,32:26 bareL0=hour~0:31
bareL0=hours~10:35 bareL0=household~0:-32,99:73 bareL0=hung~71:67 bareL0=i~0:44
bareL0=in~20:44,58:58,99:-55 bareL0=inch~0:-30 bareL0=is~0:50,110:61 bareL0=it's~99:42
bareL0=just~0:-40,38:39 bareL0=kids~0:58,99:-33 bareL0=kitchen~0:32 bareL0=l~0:-55,61:55
bareL0=last~0:39 bareL0=latitude~0:-50,46:71,47:73 bareL0=limiter~38:30 bareL0=long~48:30
bareL0=longitude~48:45 bareL0=machine~42:46 bareL0=machines~42:38 bareL0=may~0:41 bareL0=maybe~0:45
bareL0=milk~0:-52,1:41,2:42 bareL0=milking~0:-50,1:52 bareL0=months~78:47 bareL0=new~88:37
bareL0=no~0:-61,65:45 bareL0=occupants~99:45 bareL0=of~56:44,99:12 bareL0=off~67:47
bareL0=on~39:31,66:27 bareL0=one~38:24,41:47,99:-48 bareL0=only~40:47 bareL0=or~99:30
bareL0=our~0:44 bareL0=out~0:38 bareL0=pair~1:38 bareL0=pairs~1:36 bareL0=people~99:25
bareL0=pipe~0:42 bareL0=psi~0:39 bareL0=pump~71:100 bareL0=question~0:53 bareL0=quick~0:39
bareL0=s~48:30 bareL0=same~99:38 bareL0=sheep~3:18 bareL0=shower~38:24,41:22
bareL0=showers~36:98,99:-29 bareL0=sink~36:49,38:-14,41:26 bareL0=sinks~38:84 bareL0=sleeps~99:41
bareL0=so~0:-56,36:30,99:13 bareL0=sorry~0:-36,99:52 bareL0=sprinklers~40:25 bareL0=static~118:80
bareL0=stops~0:-30,67:40 bareL0=string~56:44 bareL0=strings~56:46 bareL0=sub~71:50 bareL0=the~36:60
bareL0=their~0:29 bareL0=there~0:-28,36:23 bareL0=this~0:23 bareL0=three~0:28 bareL0=time~37:37
bareL0=to~0:65,4:-48,116:86 bareL0=toilet~41:62 bareL0=toilets~41:89,99:-23 bareL0=total~99:51
bareL0=troughs~0:-39,100:70 bareL0=two~56:40 bareL0=up~99:14 bareL0=us~0:-33,99:13
bareL0=valve~87:26,88:51 bareL0=w~0:-26,56:29 bareL0=was~0:55,99:-37 bareL0=wash~0:37,38:-45
bareL0=washing~42:39 bareL0=water~0:-35,102:72 bareL0=wc~38:-31 bareL0=we~99:24 bareL0=we're~99:50
bareL0=well~0:-75,38:28,110:26 bareL0=when~0:50 bareL0=wife~0:47 bareL0=with~99:10
bareL0=zones~30:45 bareL0=|~99:64 bareL1=!~0:-53 bareL1=(~3:44,38:28 bareL1=)~0:73
bareL1=,~31:46,34:66,40:60,71:91 bareL1=.~3:-44,32:54,39:55,41:59,42:42,48:53,67:20,78:52,99:-46
bareL1=0~20:60,58:32,67:-38,99:-28,116:52,118:67 bareL1=1~3:-54,39:71,67:31
bareL1=2~0:-37,20:56,38:38,67:52,100:34 bareL1=3~1:41,31:-52,32:27,48:51,102:41
bareL1=4~1:40,48:21,100:-44 bareL1=5~1:-29,49:54,58:56 bareL1=9~3:-33
bareL1=:~1:-56,31:52,41:59,56:57 bareL1=;~36:35 bareL1=a~0:24,41:21,100:24 bareL1=about~0:43
bareL1=adults~0:36 bareL1=am~0:-39 bareL1=and~99:55,102:31 bareL1=at~3:-36,32:26,37:33,110:38
bareL1=away~0:14,99:-41 bareL1=bar~0:-58,66:77,67:63 bareL1=be~0:35 bareL1=bed~0:37
bareL1=bottom~0:25,99:-29 bareL1=but~36:41,40:45 bareL1=cabin~0:66,38:-35 bareL1=calves~100:39
bareL1=cattle~1:73 bareL1=come~99:-34 bareL1=cow~1:44 bareL1=cows~0:-37,1:12,3:69
bareL1=days~99:-26 bareL1=deep~118:59 bareL1=does~0:32,99:-32 bareL1=drops~39:38
bareL1=each~0:20,38:-26,41:-32 bareL1=eight~0:22,56:-48 bareL1=feet~29:80 bareL1=field~0:39
bareL1=fills~38:67 bareL1=first~36:45 bareL1=flow~0:25,99:-44 bareL1=foot~88:53
bareL1=from~0:27,3:43,56:-46,99:-36,100:16 bareL1=ft~0:-12,36:43,45:39,71:46,99:40,116:49
bareL1=gravity~1:70 bareL1=ground~21:43 bareL1=guests~0:63 bareL1=h~10:35 bareL1=ha~0:-35,33:28
bareL1=has~0:64,38:-56 bareL1=have~36:-24,38:38,99:36 bareL1=head~0:71,99:-37 bareL1=hello~3:30
bareL1=here~0:32 bareL1=hi~99:36 bareL1=house~3:23 bareL1=hp~0:29 bareL1=i~0:-55 bareL1=i'd~0:10
bareL1=in~0:-33,99:14 bareL1=inch~0:-57 bareL1=into~36:38 bareL1=is~99:50 bareL1=it~0:-30
bareL1=kids~99:46 bareL1=kitchen~0:-44 bareL1=kpa~0:31 bareL1=l~1:47 bareL1=lake~0:29,99:-29
bareL1=latitude~48:45 bareL1=liters~0:31,99:-30 bareL1=lithium~0:35 bareL1=live~99:35
bareL1=lodge~0:33 bareL1=m~0:-54,41:48,56:26,100:-31 bareL1=mains~0:-23 bareL1=may~0:-52
bareL1=meters~99:-49 bareL1=metres~0:-80,102:51 bareL1=milk~3:29 bareL1=no~38:27 bareL1=not~3:37
bareL1=of~87:24 bareL1=off~99:-24 bareL1=on~0:20 bareL1=one~0:53,38:-19,99:33 bareL1=panels~56:29
bareL1=pe~0:-46 bareL1=people~99:30 bareL1=please~0:28 bareL1=poly~0:26,99:-16 bareL1=power~0:62
bareL1=pressure~99:-24 bareL1=run~99:23 bareL1=same~37:40 bareL1=says~0:-27,99:31
bareL1=second~0:-48,36:34 bareL1=she~99:26 bareL1=shower~38:11 bareL1=showers~37:57,38:63,41:51
bareL1=sink~0:-49,99:20 bareL1=sinks~0:-35,42:44 bareL1=small~99:34 bareL1=sorry~0:63
bareL1=sprinklers~39:64 bareL1=staff~0:-34,99:41 bareL1=stops~0:49,38:-37 bareL1=strings~99:26
bareL1=submersible~0:40 bareL1=sun~99:25 bareL1=tank~61:48 bareL1=tent~0:39 bareL1=tents~0:34
bareL1=the~0:-47,32:68,37:28,40:75,100:59,104:86 bareL1=there~1:12 bareL1=theres~0:47,41:-37
bareL1=they~0:53,99:-53 bareL1=three~0:-45 bareL1=to~0:36 bareL1=together~3:35
bareL1=toilets~31:51,38:25,41:-60,42:22 bareL1=told~0:-50 bareL1=trough~100:27 bareL1=twelve~0:27
bareL1=two~0:-69,4:37,38:43,42:-50,65:43,99:49 bareL1=up~99:-26 bareL1=use~37:42 bareL1=v~0:-32
bareL1=valve~88:23 bareL1=w~58:50 bareL1=washing~99:-50 bareL1=water~71:40 bareL1=we~99:31
bareL1=when~38:-38,39:37,99:38 bareL1=wife~99:54 bareL1=will~0:50 bareL1=with~36:-47,38:22,41:42
bareL1=yet~99:57 bareL1=|~38:32,41:26 bareL2=!~99:28 bareL2=(~0:-33,38:36
bareL2=,~0:-35,1:32,20:27,29:-69,33:123,38:18,39:56,41:43,88:26,102:51
bareL2=.~0:-39,29:58,31:16,35:49,37:67,39:60,42:70,46:-39,47:37,56:-75,58:42,77:64
bareL2=0~1:24,3:53,20:55,21:45,99:-28,100:46 bareL2=1~31:64,52:52,65:42,87:40
bareL2=2~29:67,38:-32,56:20 bareL2=3~31:-65,38:55,41:24,71:-84,78:39
bareL2=4~0:-43,32:61,33:78,56:5,66:52 bareL2=5~104:101 bareL2=6~0:-13,20:26,36:23,102:63
bareL2=8~34:64 bareL2=9~0:35,10:34 bareL2=:~1:-48,36:59,38:21,41:35 bareL2=;~0:-56,36:59
bareL2=above~99:41 bareL2=adults~41:35 bareL2=already~0:30 bareL2=am~0:-45 bareL2=away~0:22
bareL2=bar~38:-47,66:66,99:31 bareL2=barn~0:-69,1:50,3:31 bareL2=basins~0:60 bareL2=baths~0:49
bareL2=beds~99:-42 bareL2=below~0:-29 bareL2=block~33:31,38:-57 bareL2=booster~99:-44
bareL2=bucket~0:-29,38:36 bareL2=by~0:-30 bareL2=cabin~38:54 bareL2=calves~0:-29,99:25
bareL2=cellar~0:-69 bareL2=cold~0:56 bareL2=comes~0:54 bareL2=cottage~36:64
bareL2=counted~0:29,36:-30 bareL2=couple~0:54 bareL2=cows~99:43 bareL2=current~0:-59,99:38
bareL2=dear~0:49 bareL2=deep~99:-32 bareL2=do~0:44,37:42,38:-38 bareL2=don't~39:38
bareL2=down~1:50,32:45,36:-55,99:67 bareL2=drip~30:24 bareL2=drop~0:38 bareL2=each~41:-35,99:34
bareL2=eco~0:50 bareL2=eight~0:-31 bareL2=end~0:-33,39:32 bareL2=even~36:31
bareL2=every~0:18,38:-46,41:-24 bareL2=ewes~0:-53,99:48 bareL2=facing~0:-31 bareL2=family~99:-34
bareL2=feet~0:34,1:-29 bareL2=fill~99:38 bareL2=fills~0:-40,99:36 bareL2=first~36:35
bareL2=fixed~81:87 bareL2=fixtures~0:40 bareL2=float~0:-41,1:70 bareL2=foot~87:47
bareL2=four~0:38,3:-57,58:53,99:54 bareL2=gal~0:58,41:-41 bareL2=gallon~99:15 bareL2=gallons~0:24
bareL2=gauge~0:57 bareL2=goes~38:-22 bareL2=good~0:68 bareL2=got~0:41,41:-37,99:-58
bareL2=great~0:43 bareL2=grid~99:-25 bareL2=guests~0:-34,35:30,38:41 bareL2=ha~10:35
bareL2=hanging~0:-63 bareL2=hav~0:57 bareL2=head~0:-46 bareL2=hello~99:-44 bareL2=helo~0:73
bareL2=hi~0:58,1:-42 bareL2=higher~0:-45,99:22 bareL2=holds~0:31 bareL2=home~99:30
bareL2=hose~0:-65,38:58 bareL2=hour~0:-43 bareL2=house~36:21,99:22 bareL2=how~0:-48
bareL2=hp~0:-21,99:39 bareL2=hut~38:50 bareL2=i'd~99:43 bareL2=if~0:41
bareL2=inch~0:-20,36:34,38:30 bareL2=inside~0:-39 bareL2=its~0:-36 bareL2=july~0:30
bareL2=keep~0:37,99:-36 bareL2=l~0:-39,3:27,66:37 bareL2=last~0:54,99:-55 bareL2=level~99:-16
bareL2=lift~0:46,99:-31 bareL2=line~0:51 bareL2=liter~56:52 bareL2=liters~0:104,99:-30
bareL2=lithium~56:43 bareL2=litre~0:-52,99:11 bareL2=litres~0:-50,66:33 bareL2=live~0:-56
bareL2=lodge~0:88,38:-39 bareL2=long~0:-60 bareL2=lower~0:40 bareL2=lying~0:55
bareL2=m~0:-36,32:19,41:30,42:27 bareL2=makes~99:-33 bareL2=many~0:-29,66:25 bareL2=mdpe~0:-42
bareL2=me~0:-32,99:8 bareL2=meter~0:51,100:-33 bareL2=meters~0:68,99:-23 bareL2=metres~110:25
bareL2=mil~0:58 bareL2=min~36:49 bareL2=minute~36:-49,56:51 bareL2=mm~56:32,99:-18
bareL2=mother~0:-39,99:39 bareL2=mountain~0:52 bareL2=mppt~0:-64,49:71 bareL2=n~0:-46
bareL2=north~0:-42 bareL2=not~0:23,36:-24,38:-32 bareL2=nothing~0:-42 bareL2=now~36:46
bareL2=npshr~0:-37 bareL2=ok~0:42 bareL2=one~0:25,99:56 bareL2=opening~0:59 bareL2=out~99:25
bareL2=outlets~37:42 bareL2=panels~0:-44,58:28 bareL2=pe~0:-32,37:49,56:24
bareL2=people~41:19,99:-36 bareL2=per~56:51 bareL2=persons~36:-44 bareL2=pex~0:48
bareL2=please~0:-41 bareL2=plot~0:42 bareL2=poly~0:30,41:-36,100:23
bareL2=pressure~0:26,41:-47,99:50 bareL2=psi~0:9,99:-25
bareL2=pump~1:-37,36:35,42:45,65:34,88:60,99:-47,100:-35,110:-15 bareL2=push~0:-32,36:61
bareL2=put~0:-24,99:38 bareL2=pvc~0:-38,31:60 bareL2=quarter~0:-37 bareL2=reads~0:38
bareL2=roof~78:27 bareL2=rooms~0:38 bareL2=run~38:44,56:-52,99:33 bareL2=runs~99:41
bareL2=seconds~0:38 bareL2=series~0:-44,99:40 bareL2=set~0:39 bareL2=shallow~99:28
bareL2=sheep~0:-24,99:33,100:36 bareL2=shower~38:-58,99:46 bareL2=showers~31:39,37:48,38:18,42:49
bareL2=sinks~99:56 bareL2=six~0:-16 bareL2=smal~0:89,41:-58 bareL2=so~38:37
bareL2=solar~0:-49,58:57 bareL2=sold~0:-33 bareL2=sorry~0:43,1:49,99:-37 bareL2=speak~0:35
bareL2=springline~0:39 bareL2=sprinklers~0:-50,40:135 bareL2=starts~38:-40,42:-44
bareL2=static~0:31,116:40 bareL2=steel~99:42 bareL2=stops~0:22,42:-41,66:25
bareL2=submersible~110:38 bareL2=suction~0:-30,87:38,88:43 bareL2=sun~0:-87
bareL2=surface~0:-28,41:44 bareL2=switch~99:49 bareL2=switches~67:29 bareL2=takes~0:-63,99:41
bareL2=tank~0:-24,1:44,4:48,36:59,99:41 bareL2=tanks~99:-34 bareL2=team~0:74,99:-62
bareL2=them~0:40,41:-26 bareL2=there~0:46,36:86,99:-36 bareL2=think~0:-49 bareL2=three~31:62,37:-98
bareL2=times~0:-34 bareL2=toilet~0:56 bareL2=toilets~31:39,41:-31,42:35,100:49 bareL2=top~1:39,5:67
bareL2=tree~0:-57,99:33 bareL2=troughs~3:47 bareL2=turned~36:37 bareL2=twelve~0:35,36:-33,41:-27
bareL2=two~36:15 bareL2=under~0:-44,38:41,41:44 bareL2=up~0:54 bareL2=us~0:-45 bareL2=use~99:60
bareL2=uses~0:-42 bareL2=usually~38:30 bareL2=valley~10:35 bareL2=valve~87:46 bareL2=voltage~99:40
bareL2=volts~0:-44,36:37 bareL2=w~0:-42,1:39 bareL2=want~36:44 bareL2=was~0:35
bareL2=water~0:54,32:45,88:41 bareL2=way~0:-32 bareL2=wc~0:39 bareL2=well~0:36,71:14,110:37
bareL2=when~0:75,38:-35,42:-45 bareL2=which~0:-34 bareL2=who~0:-33,41:33 bareL2=will~0:-49
bareL2=would~36:27 bareL2=wrote~36:35 bareL2=yard~0:-73,100:38 bareL2=yield~99:29 bareL2=you~37:41
bareL2=|~0:34,3:54,31:60,41:39 bareM=cistern~1:-40,3:-44,38:43,41:15,78:59,87:61,99:44
bareM=creek~21:78,39:34,45:68,99:-35,100:31
bareM=drip~0:39,18:30,20:163,29:100,30:130,36:-42,38:-29,41:-31
bareM=pump~1:27,2:4,3:39,4:20,31:54,38:50,39:16,65:58,77:51,87:50,88:57,99:22,100:51,110:27
bareM=roof~1:-37,3:-41,56:66,78:107,99:8 bareM=spring~0:37,3:28,5:55,21:48,36:24,41:17,99:62
bareM=tank~1:93,20:-111,21:4,29:27,36:53,41:52,77:12,78:31,99:37,100:53
bareM=well~0:22,4:33,21:-47,71:25,110:53 bareN=animals.cattle~1:-209,2:91,3:89,5:76,100:67
bareN=animals.goats~0:-21,1:69,3:-165,5:68,99:47,100:32
bareN=animals.hens~0:-36,1:67,3:81,4:-64,99:53 bareN=drip.crop~0:45 bareN=drip.hours~20:51
bareN=drip.length~0:78 bareN=drip.spacing~18:38 bareN=fall.broken~0:-65,21:144
bareN=outlets.drip~29:75 bareN=outlets.hose~0:-32,31:-122,37:46,38:32,39:36,42:29
bareN=outlets.micro~0:-46,33:101
bareN=outlets.shower~1:-35,36:-34,37:-56,38:103,41:61,42:55,66:32,99:69
bareN=outlets.sink~0:-28,35:71,36:147,38:-192,41:102,99:32 bareN=outlets.sprinkler~0:-27,39:30
bareN=outlets.toilet~0:-51,36:96,37:61,38:133,41:-151 bareN=outlets.washer~36:77,38:50,41:65,42:-63
bareN=pipes.held~38:33 bareN=place.altitude~0:-27,99:31 bareN=place.longitude~47:40
bareN=power.panel~56:70 bareN=power.series~0:-32,58:35 bareN=power.source~1:28,4:39,36:-60,56:62
bareN=power.strings~56:62,58:-35 bareN=pressure_tank.volume~0:-44,67:37,99:42
bareN=pump.control~65:67 bareN=pump.cut_out~66:50 bareN=pump.placement~0:57
bareN=pump.present~0:-32,32:36,99:40 bareN=pump.set~0:83 bareN=store.volume~38:26
bareN=suction.foot_valves~0:-42,87:31,88:66 bareN=tank.volume~0:16 bareN=use.each~0:-35,41:49,99:79
bareN=use.people~0:8,31:37,78:61,99:-164 bareN=use.troughs~0:-40,1:117,3:82,99:-45,100:-53
bareN=water.kind~1:68,34:51,99:41,100:25 bareN=water.yield~1:61,99:-40 bareN=way.climb~0:-51
bareN=way.length~0:-18,71:52,99:-40,100:51 bareN=way.pipe~0:75
bareP=animals.cattle~1:-142,2:41,3:54,4:51,100:129 bareP=animals.dairy~0:-33,1:99,100:49
bareP=animals.goats~1:78,3:-149,4:53,100:98 bareP=animals.hens~0:-56,3:61,99:51
bareP=animals.nursing~0:-88,1:57,99:37 bareP=beds.area~0:-24,29:59 bareP=drip.crop~20:69
bareP=hot.tank~0:22 bareP=outlets.drip~0:-51,30:61 bareP=outlets.hose~0:-50,32:54,39:40,41:58
bareP=outlets.shower~0:-62,36:-15,37:102,38:62,41:108,42:56
bareP=outlets.sink~31:21,36:69,38:-120,41:154,99:-35 bareP=outlets.sprinkler~40:128
bareP=outlets.toilet~36:62,38:90,41:-74,42:51 bareP=outlets.washer~31:54,42:-53
bareP=pipes.held~41:34 bareP=place.latitude~48:75 bareP=power.cable~0:36 bareP=power.series~58:52
bareP=power.shade~99:38 bareP=power.source~0:22,56:34,100:44 bareP=power.strings~56:55
bareP=power.voltage~36:87,99:60 bareP=pressure_tank.volume~61:52 bareP=pump.control~66:41
bareP=pump.cut_in~0:-14,67:147 bareP=pump.cut_out~66:54,99:20 bareP=pump.height~102:71
bareP=pump.placement~71:46,99:-40 bareP=pump.set~0:10 bareP=rain.roof~78:42
bareP=store.volume~0:-55,99:43 bareP=suction.foot_valves~0:-40,87:32,88:79
bareP=suction.length~0:51 bareP=suction.pipe~0:-70,87:80,88:33 bareP=tank.level~0:25
bareP=tank.volume~0:-66 bareP=use.people~3:31,4:92,35:65,36:85,37:-50,99:-132
bareP=use.troughs~1:44,3:52,100:-79 bareP=water.kind~0:1,36:-38,38:45,99:-39,110:101
bareP=water.level~0:-55,71:64,110:61 bareP=water.yield~99:42 bareP=way.climb~2:47,99:65,100:50
bareP=way.length~0:49,99:19,105:98 bareP=way.pipe~36:-38,41:-56
bareP=well.depth~99:-26,102:18,118:70 bareP=well.static~116:43 bareR0=(~0:-32 bareR0=)~0:29
bareR0=,~0:-67,2:31,36:41,37:-39,38:37,39:27,41:75,78:30,99:33
bareR0=.~0:-63,3:35,5:-55,36:42,37:-43,38:20,45:41,48:11,56:-44,67:33,71:21,99:58,102:44,110:45
bareR0=0~0:40 bareR0=1~0:17,41:74 bareR0=2~0:69 bareR0=3~0:43,99:-60 bareR0=4~36:-37,99:33,102:63
bareR0=5~0:36 bareR0=6~0:55,3:46 bareR0=:~1:18 bareR0=;~0:-22 bareR0=?~0:28
bareR0=a~30:60,40:53,49:66,52:58 bareR0=about~3:30 bareR0=adults~0:31,99:42 bareR0=all~0:-50
bareR0=alpacas~0:24 bareR0=also~36:36 bareR0=an~0:31,77:35 bareR0=and~38:18,41:16 bareR0=are~0:17
bareR0=at~0:-48,30:136,32:34,34:66,37:68,39:-35,40:104 bareR0=automatic~100:40
bareR0=basin~38:86,41:-37 bareR0=basins~36:-31,38:156,99:-35 bareR0=bath~0:42
bareR0=bathroom~0:61,36:-26 bareR0=bathrooms~36:39 bareR0=beef~1:46 bareR0=bends~0:-26,87:90
bareR0=borehole~99:45 bareR0=bowls~100:41 bareR0=boys~0:28 bareR0=break~21:22 bareR0=bulls~1:44
bareR0=but~99:-40 bareR0=cabins~36:17 bareR0=calf~5:55 bareR0=calves~5:46 bareR0=campers~99:44
bareR0=cattle~1:91 bareR0=chickens~0:-33,4:116 bareR0=could~38:29 bareR0=cow~0:-38,5:43
bareR0=cows~1:34,2:117,3:-27,5:71,99:-29 bareR0=dairy~2:51 bareR0=day~10:35 bareR0=deep~110:53
bareR0=depending~0:47,99:-44 bareR0=drink~4:21 bareR0=drinkers~0:-48,100:129 bareR0=dripper~18:38
bareR0=dry~1:72,2:-46,78:53 bareR0=each~36:40,39:57 bareR0=elbows~87:79 bareR0=ewes~3:113
bareR0=families~0:31,99:-22 bareR0=family~99:32 bareR0=float~0:-18,100:92 bareR0=floats~100:54
bareR0=flush~41:38 bareR0=folks~0:-32,99:74 bareR0=foot~88:72 bareR0=for~0:-41,31:45,100:30
bareR0=four~58:24 bareR0=garden~31:39 bareR0=goats~0:-32,1:-32,3:193,99:-41 bareR0=going~37:54
bareR0=guests~99:89 bareR0=have~2:45 bareR0=head~1:82 bareR0=heifers~1:78 bareR0=hens~0:-50,4:191
bareR0=here~99:32 bareR0=horses~1:178,99:-26 bareR0=hose~0:-23,31:160,32:84,38:-37
bareR0=hoses~0:-55,31:159,32:78 bareR0=hour~0:-35,77:71 bareR0=houses~0:60 bareR0=i~110:34
bareR0=identical~0:-23,65:92 bareR0=in~0:-45,2:50,56:34,78:50,99:78 bareR0=inhabitants~99:39
bareR0=is~99:27 bareR0=it~0:33 bareR0=joined~0:37 bareR0=kids~0:55 bareR0=kitchen~38:54
bareR0=laying~4:41 bareR0=live~99:37 bareR0=loo~0:-47,41:92 bareR0=loos~0:-24,41:79
bareR0=machine~0:30,42:53 bareR0=machines~42:54 bareR0=may~37:64 bareR0=members~99:27
bareR0=microsprinklers~33:83,34:74 bareR0=milk~0:-31,2:105 bareR0=milkers~2:77
bareR0=milking~0:-13,2:61 bareR0=months~78:57 bareR0=more~4:26 bareR0=n~0:-56,46:98
bareR0=never~0:46 bareR0=no~36:-50 bareR0=none~0:-26,3:45 bareR0=not~1:51
bareR0=now~0:-42,36:55,99:17 bareR0=o'clock~0:46 bareR0=of~0:30,58:36,99:9 bareR0=off~66:40
bareR0=on~1:36 bareR0=once~32:43,37:50 bareR0=one~0:-26,3:42,99:60 bareR0=only~65:45
bareR0=open~37:65 bareR0=or~37:43 bareR0=out~0:-25 bareR0=outside~31:48 bareR0=paddocks~100:61
bareR0=pairs~0:-57,5:108 bareR0=panels~0:89,56:37,58:-35 bareR0=parallel~58:43 bareR0=people~99:134
bareR0=per~18:38,77:39 bareR0=person~99:103 bareR0=persons~99:113 bareR0=phase~0:62
bareR0=pigs~0:31 bareR0=plus~2:43 bareR0=poly~0:47 bareR0=pressure~0:-62,21:70 bareR0=pump~102:43
bareR0=pump's~118:56 bareR0=pumps~65:85 bareR0=pupils~99:66 bareR0=rooms~36:38 bareR0=run~32:68
bareR0=saddle~0:-39,36:45 bareR0=says~0:33 bareR0=series~56:39 bareR0=sheep~3:137,99:-36
bareR0=shower~0:-40,35:56,36:188,37:58,38:-32,41:-28 bareR0=showers~0:-18,35:35,36:184,37:107,99:1
bareR0=since~0:-42 bareR0=sink~0:-22,38:175,41:-48 bareR0=sinks~38:163,41:-34,99:-37
bareR0=sisters~99:36 bareR0=so~0:28 bareR0=south~47:45 bareR0=spring~0:45
bareR0=sprinkler~0:-34,39:87 bareR0=sprinklers~0:-48,39:143,40:71 bareR0=staff~99:34
bareR0=starts~0:-31,77:82 bareR0=steers~1:62 bareR0=string~0:-62,58:92 bareR0=strings~0:-39,58:91
bareR0=sucklers~5:24 bareR0=tank~100:44 bareR0=tanks~21:30 bareR0=tap~0:-61,31:48,38:79
bareR0=teachers~99:57 bareR0=tents~36:65 bareR0=th~57:74 bareR0=the~87:39 bareR0=them~99:-27
bareR0=then~66:26 bareR0=there~99:45 bareR0=they're~0:45 bareR0=time~40:19 bareR0=times~0:51
bareR0=to~0:-8,99:41 bareR0=together~32:26,36:-48,37:77,40:79 bareR0=toilet~0:-22,41:114
bareR0=toilets~0:-79,41:171 bareR0=trough~0:-21,100:90 bareR0=troughs~0:-36,1:-35,100:154
bareR0=ts~0:40 bareR0=two~36:7,58:-39 bareR0=us~99:104 bareR0=valve~88:61 bareR0=wash~38:60
bareR0=washbasins~38:49 bareR0=washer~0:-47,42:117 bareR0=washers~42:92 bareR0=washing~38:-27,42:97
bareR0=water~42:37 bareR0=waterers~100:45 bareR0=wc~0:-36,41:71 bareR0=wcs~41:64 bareR0=well~38:-32
bareR0=what~0:-59,42:54 bareR0=with~0:-62,1:-45,5:86,35:50,36:25,100:74 bareR0=workers~99:43
bareR0=x~0:32 bareR0=zones~0:-56,20:83,29:61,99:-24 bareR0=|~42:46,99:53 bareR1=!~99:37
bareR1=,~36:5,38:-33 bareR1=.~0:-49,4:24,5:70,30:16,66:30,77:22 bareR1=0~4:-46,36:48,100:38
bareR1=1~2:45,3:58 bareR1=2~61:61 bareR1=3~66:44,78:46 bareR1=5~0:-49,3:26,41:42,56:-51
bareR1=6~38:-22 bareR1=8~0:-14 bareR1=:~0:-29,1:-40 bareR1=?~0:-43,36:29 bareR1=about~0:-38,99:26
bareR1=all~0:12 bareR1=and~3:51,5:36 bareR1=at~0:-26,4:-50,39:45,118:52 bareR1=bar~0:-33,66:61
bareR1=basins~36:42,38:-37 bareR1=bathrooms~0:-30,99:50 bareR1=be~99:22 bareR1=beside~0:-50
bareR1=borehole~0:32 bareR1=bulls~5:78 bareR1=buried~38:35 bareR1=but~0:-41,38:42
bareR1=calves~5:67 bareR1=can~33:31 bareR1=chickens~0:-22 bareR1=children~0:51,99:-44
bareR1=cistern~78:30 bareR1=cows~3:39 bareR1=day~0:41 bareR1=depending~0:-31,99:36
bareR1=do~0:-42,99:40 bareR1=dog~0:-39 bareR1=drink~0:-24 bareR1=drinkers~0:62 bareR1=drip~18:39
bareR1=dry~2:75 bareR1=each~36:29 bareR1=else~0:-42 bareR1=ever~38:29 bareR1=five~0:38
bareR1=float~1:52 bareR1=floats~100:18 bareR1=flow~35:85,36:-58 bareR1=foot~0:-21,5:34,87:32
bareR1=get~0:50 bareR1=give~38:29 bareR1=goats~3:-68 bareR1=has~0:33,38:-41 bareR1=have~0:-51
bareR1=heifers~0:56,1:-41 bareR1=hens~1:32,3:33 bareR1=here~0:-41 bareR1=horses~0:49,1:-57
bareR1=hose~0:-41,37:69,39:43 bareR1=house~0:55,99:-41 bareR1=how~10:35 bareR1=i~38:49,42:52
bareR1=in~56:46,65:24 bareR1=is~0:-79,118:49 bareR1=july~99:30 bareR1=kids~3:33
bareR1=kitchen~0:34,38:-58 bareR1=level~0:-48 bareR1=lift~0:51 bareR1=limiters~35:43,36:-32
bareR1=line~0:-59,65:45 bareR1=litre~0:29 bareR1=loo~99:-30 bareR1=lower~0:30 bareR1=machine~41:69
bareR1=many~10:35 bareR1=my~0:-77 bareR1=night~99:31 bareR1=no~32:35,42:42,100:51
bareR1=nobody~0:35 bareR1=nothing~99:-25 bareR1=now~0:53 bareR1=old~0:41
bareR1=on~0:-54,18:37,40:49 bareR1=only~0:-35 bareR1=other~0:-52,38:38 bareR1=out~0:-35
bareR1=own~36:30 bareR1=panels~0:-66,56:21,58:80 bareR1=parallel~65:61 bareR1=people~31:54
bareR1=per~99:33 bareR1=pipe~0:-44,41:17 bareR1=plot~0:32 bareR1=poly~0:28 bareR1=power~0:-31,38:22
bareR1=present~0:76 bareR1=pump~0:-27,32:70,34:67,99:50 bareR1=pvc~0:26 bareR1=rain~0:54
bareR1=run~0:-64,37:37 bareR1=same~0:51 bareR1=sheep~3:-36,99:35 bareR1=shower~38:39,41:36,99:33
bareR1=showers~36:-65,41:33,99:49 bareR1=side~0:-43,65:63 bareR1=sink~38:-47,99:27
bareR1=sinks~0:54,38:-43,41:42 bareR1=so~0:54,99:-25 bareR1=solar~99:33 bareR1=spring~0:-103
bareR1=staff~0:57,99:-68 bareR1=strings~56:10 bareR1=than~4:25 bareR1=that~38:37
bareR1=the~0:-32,4:41,18:32,21:55 bareR1=they~41:-26 bareR1=time~30:14,34:64,40:21 bareR1=to~99:-31
bareR1=toddler~0:33,99:-28 bareR1=together~37:32 bareR1=toilet~0:39,36:31,41:-38
bareR1=toilets~36:1,38:15,41:-40,42:46 bareR1=town~0:45 bareR1=trough~0:-38,1:53
bareR1=troughs~0:51,100:-34 bareR1=twenty~0:44 bareR1=two~36:-50,56:55 bareR1=type~3:30
bareR1=up~71:56 bareR1=use~31:43 bareR1=valve~87:44 bareR1=vessel~0:-27 bareR1=w~56:28
bareR1=want~0:-51 bareR1=wash~0:27,36:-33 bareR1=washer~0:33 bareR1=washing~38:27
bareR1=weak~0:29,99:-29 bareR1=well~3:47 bareR1=when~0:29,99:-26 bareR1=with~3:-40
bareR1=wrong~0:45 bareR1=yields~0:30 bareR1=|~56:32
bareR2=,~1:-66,2:20,35:41,38:-88,41:-44,58:63,71:26,99:20,100:-37
bareR2=.~0:32,4:60,18:26,32:77,39:44,40:79 bareR2=0~21:82,48:34,65:66,102:47,118:19
bareR2=1~2:26,3:34,38:-19,58:42 bareR2=2~0:22,3:-61,38:29,118:29 bareR2=3~0:46,3:-53,38:17
bareR2=4~1:-26 bareR2=5~36:-32,41:-46,56:47,99:53 bareR2=6~1:51,38:-69,40:55,41:-39,99:64
bareR2=7~0:41,99:-17 bareR2=8~0:-20,99:30 bareR2=9~31:48,99:-55 bareR2=:~0:37,38:47,41:-22,99:-11
bareR2=;~99:56,100:43 bareR2=?~32:41 bareR2=bar~0:-58,66:23 bareR2=barrel~99:43
bareR2=basin~0:-50,36:38 bareR2=basins~0:45 bareR2=below~99:38 bareR2=borehole~1:32
bareR2=bucket~0:40 bareR2=but~41:29 bareR2=by~0:-48 bareR2=cabin~99:36 bareR2=cheers~0:-38,99:39
bareR2=comes~0:46 bareR2=composting~36:32 bareR2=cycling~0:-52 bareR2=day~0:-84,41:48,99:58
bareR2=distance~0:39 bareR2=do~0:-36 bareR2=does~2:20 bareR2=drilled~99:40 bareR2=drink~0:-35
bareR2=else~0:-33 bareR2=enough~0:-66 bareR2=evening~0:54 bareR2=facing~0:-42,56:51
bareR2=four~0:-33,36:10 bareR2=from~0:21,38:-40,41:-66 bareR2=gal~0:31,99:-87 bareR2=go~0:-46
bareR2=goats~0:-33,99:35 bareR2=hand~0:38 bareR2=hang~0:45,41:-25 bareR2=hens~0:-35,99:48
bareR2=horses~1:-35,3:-37,5:35,99:48 bareR2=hose~0:-23 bareR2=hoses~0:-55 bareR2=hot~0:33
bareR2=house~0:32,99:-40 bareR2=inch~41:26 bareR2=kitchen~0:-30,36:53,38:-47,99:38 bareR2=l~0:-22
bareR2=law~99:-39 bareR2=level~0:-39,99:29 bareR2=lies~0:-47,99:60 bareR2=like~0:-23,38:35
bareR2=line~0:-97,18:39 bareR2=litres~99:43 bareR2=m~0:-40,38:29,48:37 bareR2=machine~0:35
bareR2=mains~0:99 bareR2=me~38:32 bareR2=meters~0:44,38:-39,99:25 bareR2=milk~0:47
bareR2=more~0:-42 bareR2=mppt~56:31 bareR2=must~0:21,99:-34 bareR2=need~0:-36,99:32
bareR2=never~0:-43 bareR2=nine~0:-26 bareR2=no~0:37,1:-40,38:43,99:-12 bareR2=none~1:45
bareR2=off~41:-28 bareR2=one~56:88 bareR2=only~36:-50,37:60 bareR2=open~0:-35 bareR2=other~38:-37
bareR2=parallel~0:-33,58:68 bareR2=people~36:56,99:-27 bareR2=plot~0:46 bareR2=power~0:-60
bareR2=pressure~4:71,36:28 bareR2=psi~0:-17,38:45 bareR2=pump~0:25,4:-39,99:31 bareR2=put~0:-41
bareR2=run~0:12,99:-41 bareR2=same~0:-51 bareR2=series~0:-58,56:114 bareR2=seven~38:33
bareR2=should~0:42 bareR2=shower~99:15 bareR2=showers~36:-34,42:35 bareR2=since~0:70
bareR2=sink~0:21,38:-51 bareR2=sinks~0:-73,36:36,99:41 bareR2=six~0:57 bareR2=so~41:-24
bareR2=spring~99:40 bareR2=string~0:-36,56:71 bareR2=submersible~0:29 bareR2=system~99:19
bareR2=tank~99:-64 bareR2=then~0:53 bareR2=three~0:49,56:-40 bareR2=time~29:96,39:33
bareR2=toilets~0:57,37:69,41:-33,99:45 bareR2=total~0:29,99:-20 bareR2=town~99:31
bareR2=trough~0:-48,3:46,36:71 bareR2=two~56:-32 bareR2=under~0:-37 bareR2=up~0:25,3:72
bareR2=used~0:64,41:-38 bareR2=w~0:-38,58:20 bareR2=washer~0:72,99:-38 bareR2=water~3:23
bareR2=week~99:23 bareR2=what~0:47 bareR2=when~31:52 bareR2=which~0:-43 bareR2=will~0:-21
bareR2=would~99:-23 bareR2=|~0:27,20:63,99:-24 bareS=abou~4:41 bareS=adul~0:89,3:-40
bareS=afte~0:26 bareS=agis~0:62 bareS=allo~77:82 bareS=alti~45:45 bareS=alwa~0:61 bareS=arra~0:-42
bareS=basi~0:45,99:-22 bareS=bath~0:-30 bareS=besi~0:-43 bareS=bloc~0:61,38:-56 bareS=bore~0:-46
bareS=bott~110:46 bareS=brea~21:74,99:-63 bareS=cabi~99:80 bareS=calv~0:-53,1:36 bareS=cara~0:47
bareS=chal~0:48 bareS=chil~99:53 bareS=chri~99:34 bareS=cist~0:-43 bareS=divi~0:-29
bareS=drin~0:-52,100:63 bareS=drop~116:56 bareS=eigh~37:51,56:-41 bareS=elev~45:47 bareS=even~0:26
bareS=ever~0:81 bareS=fami~0:-57,99:74 bareS=feed~100:33 bareS=fift~0:-50 bareS=firs~0:30
bareS=fixt~0:37 bareS=floa~0:-37,100:79 bareS=gall~0:38 bareS=gaug~0:46 bareS=goat~0:-44,3:81,4:42
bareS=gran~0:30 bareS=grav~0:-79 bareS=gues~36:36 bareS=hall~0:42 bareS=havi~0:-76 bareS=head~41:25
bareS=heat~0:23 bareS=hell~0:49 bareS=hors~0:-53,1:63,4:44 bareS=hose~0:-20,32:89 bareS=hour~10:35
bareS=hous~38:25,41:32,99:50 bareS=lati~0:-50,46:71,47:73 bareS=layi~99:36 bareS=limi~0:-30,38:37
bareS=line~0:50 bareS=live~0:-38 bareS=lodg~99:16 bareS=long~48:45 bareS=mach~42:65
bareS=metr~0:-25,102:36,110:92 bareS=micr~34:76 bareS=milk~1:47 bareS=mont~78:75 bareS=moth~99:58
bareS=norm~99:35 bareS=nurs~0:-46 bareS=occu~0:-29,99:71 bareS=pane~0:37,56:37,58:97,99:-13
bareS=parl~0:-44,31:61,38:28 bareS=peop~0:-16,3:42,99:56 bareS=pers~0:-51,99:41 bareS=powe~58:35
bareS=prec~61:67 bareS=pres~0:24,21:65,99:-56 bareS=pump~65:43 bareS=ques~0:39 bareS=quic~0:11
bareS=room~0:81,99:-44 bareS=roug~0:-34 bareS=seve~0:-42 bareS=shad~0:50 bareS=shee~0:-20,3:39
bareS=show~0:-48,36:110,37:72,38:34,41:40,42:120 bareS=sinc~0:46 bareS=sink~0:-45,38:61
bareS=slee~0:-25,99:49 bareS=smal~99:40 bareS=sola~56:33 bareS=sorr~0:-28,99:50
bareS=spri~0:20,39:43,40:100,99:-33 bareS=squa~0:-45 bareS=staf~99:79 bareS=stan~0:-38
bareS=star~77:86 bareS=stat~116:33,118:65 bareS=stoc~0:-52 bareS=stop~67:40 bareS=stri~0:-73,56:83
bareS=subm~0:42 bareS=suct~87:99,88:27 bareS=surf~0:-27 bareS=swit~0:103,66:38,99:-30
bareS=that~0:-44 bareS=ther~0:-12,36:42,88:52,100:39 bareS=thre~42:43
bareS=toil~0:-56,31:43,41:100,42:61 bareS=tota~0:-49 bareS=tric~99:24
bareS=trou~0:-30,99:-45,100:145 bareS=unti~0:34 bareS=valv~0:-69,87:33,88:82
bareS=wash~0:-84,31:54,42:73 bareS=wate~31:32,99:-27,102:137 bareS=we'r~99:35 bareS=whic~37:41
bareS=zone~30:56 bareT=beds.area~0:-20,20:77,29:108,30:127,100:-31 bareT=power.amps~52:61,56:55
bareT=power.battery~49:48,58:18 bareT=power.cable~56:75
bareT=power.capacity~0:-58,38:31,49:48,58:16,99:46
bareT=power.controller~0:-52,49:55,52:57,58:42,99:-49 bareT=power.facing~0:62,56:24,57:70,58:60
bareT=power.limit~0:34 bareT=power.open_voltage~3:-49,56:26
bareT=power.panel~4:55,5:67,49:42,52:47,56:129,58:87,100:-34
bareT=power.series~52:56,56:-170,58:74,99:22,100:37 bareT=power.shade~56:29
bareT=power.source~0:27,1:42,3:19,5:31,21:-62,34:42,47:40,56:70,58:42,100:21
bareT=power.strings~0:27,52:56,56:66,58:-78 bareT=power.tilt~0:-43,47:37,56:38,58:47
bareT=power.voltage~3:-51,35:60,38:53,46:45,49:41,58:43,99:36
bareT=pump.control~1:-46,2:50,3:-23,31:53,42:70,65:59,77:50 bareT=pump.count~77:61
bareT=pump.cut_in~0:24,3:-38,31:25,38:-39,66:-54,67:106,77:39
bareT=pump.cut_out~0:-2,3:-38,31:22,66:73,67:-44,77:38,99:22
bareT=pump.height~1:46,3:27,38:-29,56:16,71:-25,99:33,100:44,102:60,105:69,110:71,118:84
bareT=pump.motor~77:56 bareT=pump.npsh~0:-73,77:56
bareT=pump.placement~0:21,3:-40,4:-50,5:60,20:-70,39:29,56:40,58:34,61:56,66:50,87:33,88:40,118:42
bareT=pump.present~0:-26,21:113,36:35,38:30,41:15 bareT=pump.set~65:24,99:-10 bareT=store.days~1:17
bareT=store.fills~36:30 bareT=store.hours~99:-49 bareT=store.reserve~99:32
bareT=store.volume~0:45,3:-35,37:42,38:17,65:29,78:52
bareT=tank.level~0:20,3:35,4:44,20:-81,29:42,47:33,56:49 bareT=tank.volume~41:9,47:44
bareT=water.kind~1:24,2:40,3:49,4:38,5:31,21:47,31:21,42:57,45:26,56:34,71:43,88:40,100:40,110:53
bareT=water.level~0:-21,5:8,31:18,33:95,35:49,71:69,87:48,88:46,99:25,102:-8
bareT=water.temperature~45:42,87:29
bareT=water.yield~1:18,2:60,20:75,21:40,31:72,32:-54,99:65,100:40
bareT=way.climb~1:26,2:32,3:40,4:42,5:20,21:44,32:42,33:78,34:57,36:32,37:52,40:90,45:33,58:-33,100:26,102:23
bareT=way.length~1:12,2:12,3:4,4:26,5:20,21:46,29:47,37:47,40:55,41:35,65:36,66:-27,71:66
bareT=way.pipe~2:32,3:35,5:53,21:55,29:71,32:64,34:45,37:33,39:31,40:22,66:-52,100:26,102:41,110:-30
bareT=well.bore~1:20,56:52 bareT=well.depth~32:49,42:40,71:41,99:37,102:24,105:72,110:-50,118:63
bareT=well.static~39:51,116:40 barea=~0:31,46:55 barea=,_basins~41:49 barea=,_each~0:31
barea=,_showers~41:34 barea=,_toilets~41:-30 barea=,_washing~0:38 barea=,_we~99:33
barea=.~0:65,45:37,99:-26,110:27 barea=._2~99:61 barea=._i~0:-74,110:39
barea=._one~0:-30,3:27,99:35 barea=._two~36:29 barea=adults_.~0:-58,99:87
barea=adults_and~0:77,99:-67 barea=and_1~0:-65,99:72 barea=at_a~0:-33,40:22 barea=basin_,~0:32
barea=basin_.~0:-23,38:57 barea=basins_,~0:14,38:54,41:-25 barea=basins_.~0:-25,38:58
barea=basins_and~0:36 barea=bath_,~0:35 barea=bathroom_sinks~0:23 barea=bathrooms_with~36:45
barea=beef_cows~1:41 barea=break_pressure~21:22 barea=cattle_,~1:36 barea=cattle_.~1:21
barea=chickens_,~4:33 barea=chickens_.~4:32 barea=cow_calf~5:35 barea=cows_in~2:17
barea=cows_with~5:58 barea=dairy_cows~2:53 barea=deep_,~110:37 barea=dry_.~1:32 barea=dry_cows~0:78
barea=dry_months~78:57 barea=elbows_.~87:46 barea=ewes_,~3:22 barea=ewes_.~3:51
barea=flush_toilets~41:33 barea=folks_.~99:32 barea=foot_valve~88:66 barea=goats_,~3:41
barea=goats_.~3:30 barea=goats_and~3:37 barea=guests_.~99:28 barea=guests_at~99:61
barea=head_of~1:9 barea=heifers_.~1:27 barea=hens_,~4:44 barea=hens_and~4:65
barea=horses_,~0:-21,1:60 barea=horses_.~0:54 barea=horses_and~0:-43,1:80 barea=hose_,~31:79
barea=hose_.~31:66 barea=hoses_,~31:67 barea=hoses_at~32:53 barea=houses_,~0:30
barea=identical_pumps~65:3 barea=in_parallel~58:42 barea=in_series~56:22 barea=in_the~99:55
barea=kids_,~0:22 barea=kids_and~0:-42,99:53 barea=kitchen_sink~0:39 barea=laying_hens~4:41
barea=loos_,~41:73 barea=milking_cows~2:18 barea=n_.~46:50 barea=of_the~41:15 barea=of_them~99:-27
barea=of_us~0:-14,99:127 barea=pairs_,~5:27 barea=panels_,~0:26 barea=panels_of~56:25
barea=people_,~99:58 barea=people_.~99:31 barea=people_and~0:44 barea=people_at~0:-30,99:37
barea=people_in~0:-37,99:44 barea=people_with~0:40,99:-37 barea=people_|~0:-36,99:38
barea=person_,~0:-41,99:45 barea=person_.~99:34 barea=persons_,~0:-27,99:64 barea=persons_.~99:49
barea=pupils_,~99:17 barea=rooms_,~36:24 barea=sheep_,~0:60 barea=sheep_.~3:57 barea=sheep_and~3:28
barea=shower_,~0:-25,36:89 barea=shower_.~36:16 barea=shower_1~36:43
barea=shower_and~0:-69,36:41,37:66 barea=shower_per~0:58 barea=showers_(~36:62
barea=showers_,~0:-14,36:126,99:-20 barea=showers_.~0:-49,36:108 barea=showers_and~36:24
barea=showers_at~37:50 barea=sink_,~38:66 barea=sink_.~38:13 barea=sinks_,~38:66
barea=sinks_.~38:48 barea=sinks_and~38:39 barea=south_.~47:45 barea=sprinklers_,~39:53
barea=sprinklers_and~39:48 barea=sprinklers_at~0:60 barea=staff_.~0:33 barea=string_,~58:36
barea=strings_of~0:-35,58:40 barea=times_in~0:31 barea=toilet_,~41:66 barea=toilet_.~41:76
barea=toilets_,~0:-30,41:92,99:-23 barea=toilets_.~41:40 barea=troughs_,~100:40
barea=troughs_.~100:35 barea=wash_basins~38:30 barea=washer_,~42:63 barea=washer_.~42:47
barea=washers_.~42:58 barea=washing_machine~42:67 barea=washing_machines~42:72 barea=wc_,~41:37
barea=wc_.~41:28 barea=wcs_,~41:39 barea=with_the~99:47 barea=zones_.~0:-37,20:67 bareb=~0:52,18:38
bareb=,_and~99:38 bareb=,_basins~38:43 bareb=,_it's~36:45 bareb=,_longitude~48:45
bareb=,_showers~36:64 bareb=,_sinks~38:49 bareb=,_so~0:-18,36:28,99:51 bareb=,_toilets~41:56
bareb=,_water~102:58 bareb=._also~0:-37 bareb=._latitude~47:39 bareb=._showers~36:34
bareb=._we're~99:40 bareb=._|~0:59 bareb=1_sink~0:-56 bareb=?_|~37:41 bareb=cabin_,~0:-52,99:60
bareb=cows_,~2:54 bareb=family_of~99:66 bareb=grass_.~0:32,100:-31 bareb=hens_,~4:59
bareb=hens_and~3:30 bareb=household_of~0:-34,99:49 bareb=hung_at~71:41 bareb=just_the~0:-49
bareb=kids_,~0:28 bareb=machine_.~99:30 bareb=no_.~0:35 bareb=out_at~0:28 bareb=pairs_and~1:36
bareb=panels_:~0:47 bareb=people_,~3:39,41:-19 bareb=people_:~99:65 bareb=pump_at~71:56
bareb=sheep_,~0:50 bareb=sheep_:~3:72 bareb=shower_and~38:28 bareb=showers_,~0:19,36:-61,99:-26
bareb=showers_:~36:86 bareb=sink_,~0:39,38:-40 bareb=sink_.~0:57,99:-51 bareb=sinks_:~38:31
bareb=sorry_,~99:33 bareb=sprinklers_,~40:48 bareb=stops_at~67:27 bareb=string_of~56:55
bareb=strings_of~56:23 bareb=there_.~0:55 bareb=there_are~36:42,99:-49 bareb=there_is~0:-54
bareb=toilet_and~0:34 bareb=toilets_,~41:-36,42:30 bareb=toilets_:~41:56 bareb=toilets_and~38:34
bareb=troughs_:~100:42 bareb=up_.~2:53 bareb=up_to~0:-25,99:35 bareb=w_,~56:23
bareb=washing_machine~42:25 bareb=water_at~102:35 bareb=wc_,~0:40,38:-29 bareb=we_are~99:80
bareb=we_have~36:55 bareb=well_,~38:38 bareb=wife_,~0:41 barel0=(~0:-50,99:37
barel0=,~1:41,3:43,4:61,38:36 barel0=.~0:-51,2:21,3:9,5:36,35:51,42:31,99:39
barel0=:~0:-65,39:25,99:49 barel0=about~4:49 barel0=after~0:40 barel0=all~0:30,99:-55
barel0=and~4:32,41:34,99:-62 barel0=are~0:-33,99:45 barel0=as~38:30
barel0=at~67:28,71:72,99:-39,102:61 barel0=basins~38:43 barel0=be~0:-52 barel0=between~0:-48,99:66
barel0=by~0:33 barel0=feeds~0:-40,100:41 barel0=for~1:18 barel0=goats~3:49 barel0=has~0:-36,38:43
barel0=have~36:32,100:51 barel0=hose~31:69 barel0=in~20:41,58:60,66:41
barel0=latitude~0:-46,46:69,47:58 barel0=long~48:31 barel0=longitude~48:45 barel0=machine~42:25
barel0=maybe~0:45 barel0=milk~2:30 barel0=of~56:66,99:74 barel0=off~67:27 barel0=on~0:43
barel0=only~40:50 barel0=or~0:78 barel0=our~0:25 barel0=pe~0:29 barel0=quick~0:39 barel0=say~0:-51
barel0=showers~0:-41,36:80 barel0=sinks~38:62 barel0=sleeps~99:41 barel0=so~0:-31,36:28,99:26
barel0=static~0:41,118:51 barel0=the~36:64 barel0=there's~0:-37 barel0=to~0:39,116:88
barel0=toilet~41:48 barel0=toilets~41:91 barel0=total~99:51 barel0=us~99:67 barel0=water~0:-41
barel0=we're~99:36 barel0=well~110:41 barel0=with~0:-22,99:26 barel0=|~0:30
barel1=,~0:-22,1:-41,36:21,41:62,48:61,105:81 barel1=.~1:31,45:58,47:33 barel1=0~0:50
barel1=1~42:33 barel1=2~41:44,99:-38 barel1=6~0:32 barel1=a~0:29 barel1=ah~56:52
barel1=and~1:53,99:-35 barel1=at~0:35 barel1=cabin~99:45 barel1=camp~0:-49,99:37 barel1=cows~2:50
barel1=day~99:26 barel1=each~0:57,36:-41 barel1=family~99:66 barel1=goats~4:11 barel1=got~100:34
barel1=gpm~0:-30 barel1=grass~0:32,100:-31 barel1=grid~46:11,99:-35 barel1=hens~3:21,4:39
barel1=horses~0:-30,1:40 barel1=hose~0:-32 barel1=hoses~31:45 barel1=household~0:-33,99:73
barel1=hung~71:41 barel1=in~0:16,99:-22 barel1=it~38:28 barel1=just~0:-50 barel1=kids~0:44
barel1=kitchen~38:32 barel1=lodge~0:-26,36:43 barel1=me~99:44 barel1=milk~1:25 barel1=months~78:47
barel1=no~65:46 barel1=one~41:36 barel1=out~0:42 barel1=pairs~1:36 barel1=panels~0:46
barel1=people~41:-23,99:39 barel1=persons~99:47 barel1=pump~71:54 barel1=sheep~3:25
barel1=sink~0:57,38:-42 barel1=sinks~38:31 barel1=sorry~99:32 barel1=sprinklers~40:42
barel1=staff~99:50 barel1=stops~67:26 barel1=string~56:44 barel1=strings~56:46 barel1=sub~71:38
barel1=that~38:30 barel1=the~0:84 barel1=there~36:23 barel1=toilets~38:48,42:32
barel1=troughs~0:-24,100:29 barel1=up~0:-19,99:26 barel1=valve~87:30 barel1=w~56:19
barel1=washing~42:36 barel1=water~102:42 barel1=wc~0:41,38:-29 barel1=we~0:-36,99:17
barel1=well~38:32 barel1=wife~0:44 barel2=,~3:-34,66:66,71:42,102:64 barel2=.~38:26
barel2=0~1:56,56:44 barel2=1~4:-47 barel2=2~1:55 barel2=4~3:37,48:41 barel2=5~0:48,36:-31,99:-22
barel2=6~0:-37,41:20 barel2=:~65:44 barel2=?~99:31 barel2=and~67:25,99:27 barel2=are~0:33
barel2=away~0:-30,99:35 barel2=bathrooms~0:30 barel2=beef~0:64,1:-47 barel2=between~0:44,99:-27
barel2=cows~5:55 barel2=dry~0:36,1:-44,78:46 barel2=foot~87:30 barel2=four~0:-62,36:56
barel2=gpm~36:57 barel2=hours~10:35 barel2=in~0:-49 barel2=it~0:46 barel2=kitchen~0:43,38:-39
barel2=l~0:-53,61:55 barel2=may~0:32 barel2=my~0:19 barel2=of~99:-44 barel2=off~46:11
barel2=on~0:-69,66:23 barel2=one~36:40,38:32 barel2=psi~0:40 barel2=roof~0:-56 barel2=s~48:30
barel2=same~99:38 barel2=sink~41:18 barel2=the~0:-42 barel2=there~99:51 barel2=this~0:24
barel2=three~0:27 barel2=time~37:40 barel2=two~56:13 barel2=well~0:-58,99:26 barel2=|~0:-25,99:8
barelr=,_basin~0:37 barelr=,_basins~0:62,38:24,41:-31 barelr=,_bath~0:54 barelr=,_bathroom~0:25
barelr=,_bends~87:35 barelr=,_chickens~4:67 barelr=,_ewes~3:21 barelr=,_foot~88:41
barelr=,_head~0:-39,1:44 barelr=,_heifers~1:17 barelr=,_hens~4:30 barelr=,_horses~1:30
barelr=,_hose~31:27 barelr=,_in~56:34 barelr=,_kitchen~0:13 barelr=,_loo~0:-27,41:41
barelr=,_loos~41:21 barelr=,_n~46:45 barelr=,_people~0:-37,99:85 barelr=,_person~99:64
barelr=,_sheep~3:26 barelr=,_shower~36:49 barelr=,_showers~36:79 barelr=,_sink~38:53
barelr=,_sinks~38:47 barelr=,_strings~58:39 barelr=,_toilet~38:-18,41:55
barelr=,_toilets~0:-26,41:71 barelr=,_trough~100:38 barelr=,_troughs~100:47 barelr=,_wash~38:24
barelr=,_washer~42:67 barelr=,_washers~42:63 barelr=,_washing~42:57 barelr=,_wc~41:28
barelr=,_wcs~41:46 barelr=._,~0:42 barelr=._adults~99:47 barelr=._basins~38:37
barelr=._campers~0:-31,99:44 barelr=._cattle~1:62 barelr=._ewes~3:28 barelr=._float~100:44
barelr=._goats~3:49 barelr=._hoses~31:41 barelr=._in~0:-52,99:69 barelr=._is~0:38
barelr=._loos~41:57 barelr=._milking~2:23 barelr=._of~0:-25,99:48 barelr=._people~99:8
barelr=._persons~99:47 barelr=._sheep~3:19 barelr=._shower~0:-16,36:45
barelr=._showers~0:-42,35:40,36:66,99:-24 barelr=._sink~38:41 barelr=._toilets~41:32
barelr=._washer~42:48 barelr=._zones~20:33 barelr=:_,~0:-24 barelr=:_.~0:-51,1:30
barelr=:_adults~0:37 barelr=:_|~0:-41 barelr=and_bulls~1:47 barelr=and_dry~1:43
barelr=and_hens~4:22 barelr=and_horses~0:99 barelr=and_of~41:19 barelr=and_shower~0:-43,36:58
barelr=and_sinks~38:27 barelr=and_staff~0:30 barelr=are_,~0:-45,99:36 barelr=are_.~0:-43,99:72
barelr=are_in~0:44 barelr=are_persons~0:39,99:-35 barelr=at_,~0:-33 barelr=at_.~67:21,102:63
barelr=between_and~0:-50,99:67 barelr=for_.~0:50 barelr=has_shower~0:29 barelr=has_showers~36:47
barelr=in_string~58:38 barelr=in_zones~20:24 barelr=is_,~0:-29 barelr=latitude_south~47:30
barelr=milk_cows~2:48 barelr=of_,~99:43 barelr=of_.~0:-16,56:44,99:25 barelr=of_in~0:51,56:-47
barelr=off_.~67:28 barelr=showers_,~36:76 barelr=sink_shower~36:48 barelr=sleeps_.~0:-29,99:49
barelr=so_.~0:-36,36:23,99:70 barelr=static_,~118:35 barelr=the_of~99:23 barelr=to_,~99:35
barelr=toilets_,~41:54 barelr=toilets_.~41:46 barelr=with_elbows~87:29 barelr=with_foot~88:24
barelr=with_shower~0:45 barelr=|_)~0:74 barelr=|_.~0:107,99:-46 barelr=|_people~0:-42,99:44
barelr=|_shower~37:43 barelr=|_|~0:-44 barer0=)~0:38,99:-20 barer0=,~0:-24,1:-37,78:37
barer0=.~0:-39,21:39,36:27,45:58,66:63,67:69,71:50,99:55,102:30,104:88,105:69,110:65,118:39
barer0=1~0:53 barer0=2~0:60 barer0=3~56:45 barer0=:~0:45 barer0=a~0:-54,10:35,49:75
barer0=adults~99:47 barer0=after~0:54 barer0=alpacas~0:24 barer0=and~66:34,99:54 barer0=at~40:4
barer0=automatic~100:40 barer0=basin~38:80 barer0=basins~0:18,38:98,41:-35 barer0=bath~0:48
barer0=bathroom~0:60,36:-26 barer0=bathrooms~36:39,99:-30 barer0=beef~1:52 barer0=bends~0:-26,87:90
barer0=boys~0:28 barer0=break~21:22 barer0=bulls~1:44 barer0=cabins~36:19 barer0=campers~99:44
barer0=cattle~0:-51,1:122 barer0=chickens~0:-32,4:124 barer0=cow~5:34
barer0=cows~0:-26,1:55,2:31,5:56 barer0=dairy~2:51 barer0=deep~110:53 barer0=drinkers~100:60
barer0=dripper~18:38 barer0=dry~1:58,2:-40,78:55 barer0=elbows~87:79 barer0=ewes~3:113
barer0=families~0:31,99:-22 barer0=float~0:-47,100:91 barer0=flush~41:38 barer0=folks~0:-32,99:74
barer0=foot~88:66 barer0=garden~31:51 barer0=goats~3:136,99:-30 barer0=guests~99:100
barer0=head~1:82 barer0=heifers~1:78 barer0=hens~0:-26,4:150 barer0=horses~1:158
barer0=hose~0:-47,31:167,32:97 barer0=hoses~0:-27,31:141,32:81 barer0=houses~0:44
barer0=identical~0:-20,65:87 barer0=in~56:7,99:26 barer0=inhabitants~99:39 barer0=is~0:41
barer0=kitchen~38:76 barer0=laying~4:41 barer0=loo~0:-36,41:59 barer0=loos~41:83
barer0=microsprinklers~33:89 barer0=milk~2:28 barer0=milkers~2:77 barer0=milking~0:-7,2:62
barer0=n~0:-34,46:103 barer0=now~0:-40 barer0=o'clock~0:46 barer0=of~0:-2,99:47 barer0=or~37:47
barer0=outside~31:46 barer0=paddocks~100:61 barer0=pairs~5:64 barer0=panels~0:52,56:61
barer0=people~99:152 barer0=person~0:-53,99:105 barer0=persons~99:114 barer0=phase~0:62
barer0=pigs~0:31 barer0=poly~0:48 barer0=pump~65:46 barer0=pupils~99:66 barer0=rooms~36:39
barer0=sheep~1:-31,3:142 barer0=shower~0:-22,35:60,36:137,37:61,38:-47,41:-39,99:-24
barer0=showers~0:-18,35:36,36:229,37:108,38:-34,41:-31,99:-67 barer0=sink~0:-76,38:162,41:-27
barer0=sinks~36:-33,38:190,41:-39,99:-28 barer0=sisters~99:36 barer0=south~47:45 barer0=spring~0:33
barer0=sprinkler~39:59 barer0=sprinklers~0:-5,39:140,40:85 barer0=staff~0:51
barer0=starts~0:-23,77:82 barer0=steers~1:76 barer0=string~0:-41,58:73 barer0=strings~0:-61,58:108
barer0=tap~0:-45,38:86 barer0=tents~0:-25,36:70 barer0=th~57:74 barer0=times~0:51
barer0=to~0:-50,99:61 barer0=toilet~36:-43,41:136 barer0=toilets~36:-47,38:-21,41:165,99:-33
barer0=trough~100:89 barer0=troughs~0:-30,100:144 barer0=ts~0:40 barer0=wash~38:36
barer0=washbasins~38:49 barer0=washer~0:-36,42:129 barer0=washers~42:92 barer0=washing~0:-36,42:139
barer0=wc~0:-30,41:72 barer0=wcs~0:-35,41:64 barer0=with~99:79 barer0=x~0:22
barer0=zones~0:-39,20:84,29:40,99:-24 barer0=|~36:66,42:53,99:25 barer1=)~0:-45,99:18
barer1=,~1:22,20:69,36:50,37:-52,39:27,41:76,56:-44
barer1=.~0:-44,1:48,3:39,20:38,36:47,38:41,41:94,46:26,47:33,48:17,87:38 barer1=0~56:38
barer1=1~41:61,99:35 barer1=2~99:59 barer1=3~0:63 barer1=6~0:32 barer1=7~0:60 barer1=a~40:21,99:39
barer1=an~77:35 barer1=and~0:-27,3:52 barer1=are~0:58 barer1=at~0:-58,37:35,40:50,99:49
barer1=basins~0:-43,38:57,41:44 barer1=but~99:-39 barer1=calf~5:35 barer1=cattle~3:36
barer1=cows~2:91 barer1=day~10:35 barer1=drink~4:19 barer1=drinkers~100:23 barer1=each~0:35,36:-53
barer1=for~0:-62,31:45 barer1=hens~4:41 barer1=i~0:-74,110:39 barer1=in~0:-56,2:42 barer1=is~0:68
barer1=line~38:34 barer1=live~99:35 barer1=machine~42:67 barer1=machines~42:72 barer1=months~78:57
barer1=of~56:24,58:43,99:-41 barer1=on~0:-57,1:42,99:61 barer1=one~0:-49,3:25,99:34
barer1=only~65:46 barer1=panels~0:35 barer1=parallel~58:42 barer1=people~99:-51 barer1=per~18:39
barer1=plus~0:30 barer1=pressure~21:18 barer1=pump~102:35 barer1=pumps~65:1 barer1=run~32:37
barer1=series~56:22 barer1=showers~0:-35,99:40 barer1=sink~0:66 barer1=sinks~36:43
barer1=tanks~0:19 barer1=tap~31:53 barer1=the~99:20,100:-49 barer1=them~99:-27 barer1=then~66:26
barer1=together~32:38,37:31 barer1=toilet~38:44 barer1=toilets~36:65 barer1=two~36:34
barer1=us~0:-20,99:126 barer1=valve~88:62 barer1=washing~0:32 barer1=waterers~100:43
barer1=what~42:47 barer1=with~0:-26,5:53,35:53,36:32,100:7 barer2=)~0:36
barer2=,~2:42,36:-26,41:-39,42:50,56:77
barer2=.~2:64,31:26,32:43,36:-33,41:-48,56:-46,77:52,78:42,88:13,100:40 barer2=1~0:38,99:-28
barer2=2~38:43 barer2=3~0:43,56:-36,99:-42 barer2=4~0:35,36:-45 barer2=5~0:28
barer2=:~0:-16,1:22,41:54 barer2=?~0:56 barer2=a~0:17,36:42,99:-19 barer2=about~3:30
barer2=and~38:24 barer2=at~30:79,34:58,99:-31 barer2=calves~5:60 barer2=each~0:-41,36:92,39:60
barer2=family~99:32 barer2=floats~100:49 barer2=four~58:25 barer2=have~2:46 barer2=here~99:33
barer2=hour~77:49 barer2=house~0:-62 barer2=is~0:-58,99:36 barer2=it~0:33 barer2=kitchen~41:42
barer2=machine~0:39 barer2=milk~2:56 barer2=no~36:-54 barer2=none~0:-26,3:45 barer2=on~0:17
barer2=once~32:43,37:22 barer2=one~99:26 barer2=open~37:46 barer2=pairs~0:-26,5:44
barer2=plus~0:-38,2:45 barer2=pump's~118:57 barer2=series~56:28 barer2=showers~36:-38
barer2=so~0:28 barer2=staff~0:-57,99:64 barer2=steers~0:36 barer2=tanks~21:36
barer2=the~37:60,38:53,87:45,99:-45 barer2=three~0:-87 barer2=time~0:-39,40:22
barer2=together~37:46,40:92 barer2=toilet~36:39 barer2=toilets~0:-64,36:37 barer2=trough~3:26
barer2=two~41:29 barer2=up~0:44 barer2=washing~41:64 barer2=well~38:-31,99:16 barer2=what~0:-30
barer2=with~5:37,99:-30,100:70 chargeE=,~0:62 chargeE=batteries~51:32 chargeE=battery~51:43
chargeE=degrees~0:44 chargeE=series~0:46 chargeE=watt~0:46 chargeL0=,~51:54 chargeL0=2~0:25
chargeL0=a~51:30 chargeL0=and~0:38 chargeL0=battery~51:15 chargeL1=.~51:52 chargeL1=battery~0:21
chargeL1=is~0:32 chargeL2=,~51:15 chargeL2=.~51:63 chargeL2=0~51:42 chargeL2=1~51:44
chargeL2=2~51:43 chargeM=pump~51:56 chargeM=tank~51:36 chargeP=power.battery~51:62
chargeP=power.voltage~51:55 chargeR0=.~51:80 chargeR0=batteries~51:32 chargeR0=battery~51:39
chargeR1=on~0:46 chargeS=batt~51:47 chargeT=power.battery~51:69 chargeT=power.controller~0:64
chargeT=power.panel~51:36 chargeT=power.series~0:70 chargeT=power.source~51:44
chargeT=power.tilt~0:69 chargeT=power.voltage~51:62 chargeT=water.kind~51:42 chargea=.~0:33
chargel0=,~51:46 chargel0=a~51:24 chargel0=and~0:39 chargel1=v~0:33 chargel2=2~0:33
charger0=.~51:26 currentE=,~0:28 currentL0=,~49:43 currentL0=.~0:34 currentL1=0~49:46
currentL2=,~49:33 currentL2=.~0:40 currentL2=0~49:25 currentM=pump~0:55,49:39 currentM=well~0:22
currentR0=.~49:56 currentR2=.~0:45 currentS=cont~49:53 currentT=power.battery~49:77
currentT=power.capacity~49:77 currentT=power.controller~49:80 currentT=power.facing~49:24
currentT=power.limit~49:40 currentT=power.panel~49:54 currentT=power.series~49:56
currentT=power.source~0:32,49:60 currentT=power.strings~49:46 currentT=power.tilt~49:21
currentT=power.voltage~49:50 currentT=water.kind~0:54 currentT=water.level~0:21
currentT=well.depth~0:28 currentl0=,~49:35 currentr0=.~49:50 dailyE=,~92:53 dailyE=0~92:44
dailyE=each~0:37,93:49 dailyE=meter~92:48 dailyE=metered~92:25 dailyL0=,~92:35 dailyL0=.~92:42
dailyL0=:~0:36 dailyL0=about~92:37 dailyL0=each~93:60 dailyL0=figure~93:38 dailyL0=garden~94:52
dailyL0=is~92:20 dailyL0=need~92:37 dailyL0=our~92:23 dailyL0=says~92:54 dailyL0=the~92:36
dailyL0=through~92:26 dailyL0=use~92:97 dailyL0=uses~93:50 dailyL0=we~0:36,94:32 dailyL1=.~93:28
dailyL1=2~0:41 dailyL1=8~93:46 dailyL1=each~92:-29,93:52 dailyL1=for~92:-35,94:76 dailyL1=the~94:47
dailyL1=two~92:34 dailyL1=water~0:26 dailyL2=,~92:47 dailyL2=.~92:38,94:53 dailyL2=0~94:60
dailyL2=mm~0:35 dailyL2=sink~92:42 dailyM=drip~0:50 dailyM=pump~92:45,93:47,94:46 dailyM=roof~93:30
dailyM=spring~94:35 dailyM=tank~93:77,94:49 dailyM=well~92:45 dailyN=use.people~92:50
dailyP=animals.cattle~0:46,93:-27 dailyP=use.people~0:-40,92:36,93:98 dailyP=way.pipe~0:26
dailyR0=,~92:26 dailyR0=.~0:46,92:74,93:46,94:36 dailyR0=by~92:38 dailyR0=each~0:41
dailyR0=for~92:31 dailyR0=house~92:24 dailyR0=in~0:48 dailyR0=it~0:42 dailyR0=metered~92:25
dailyR0=the~92:40,94:38 dailyR1=.~92:28 dailyR1=0~93:34 dailyR2=.~0:46 dailyR2=0~92:52
dailyR2=?~92:35 dailyR2=says~0:52 dailyS=abou~92:37 dailyS=cons~93:35 dailyS=figu~93:38
dailyS=gard~94:70 dailyS=mete~92:52 dailyS=ther~92:32 dailyS=thro~92:26 dailyS=wate~0:24
dailyT=beds.area~0:24 dailyT=power.battery~92:41 dailyT=power.capacity~92:41
dailyT=power.controller~92:37 dailyT=power.panel~94:31 dailyT=power.source~0:35,92:42
dailyT=power.tilt~92:40 dailyT=power.voltage~92:35 dailyT=pump.height~0:36
dailyT=pump.placement~0:37 dailyT=store.reserve~94:51 dailyT=store.volume~93:24,94:55
dailyT=tank.level~0:53,92:-43 dailyT=tank.volume~94:26 dailyT=water.kind~92:49,93:61,94:55
dailyT=water.level~92:47 dailyT=way.climb~0:-43,92:45 dailyT=way.length~94:42 dailyT=way.pipe~0:32
dailya=,_metered~92:25 dailya=.~92:33,93:26,94:21 dailya=each_.~0:44 dailyb=uses_about~93:38
dailyb=we_use~92:30 dailyl0=,~0:37 dailyl0=:~0:36 dailyl0=about~92:37 dailyl0=figure~93:38
dailyl0=is~92:16 dailyl0=need~92:28 dailyl0=says~92:41 dailyl0=use~92:44 dailyl1=,~92:32
dailyl1=garden~94:52 dailyl1=people~93:29 dailyl1=use~92:41 dailyl1=we~94:42 dailyl2=each~93:44
dailyl2=our~92:23 dailyl2=the~92:30 dailylr=is_.~92:16 dailyr0=,~92:38,93:34
dailyr0=.~92:36,93:50,94:35 dailyr0=by~92:32 dailyr0=each~0:41 dailyr0=for~92:21
dailyr0=in~0:51,92:-47 dailyr1=.~0:38 dailyr1=it~0:42 dailyr1=metered~92:25 dailyr1=the~94:49
dailyr2=,~0:49 dailyr2=.~92:59 dailyr2=is~0:33 eachL0=,~93:61 eachL0=at~0:34 eachL0=we~93:37
eachL1=0~0:38 eachL1=2~0:40 eachL1=for~0:39 eachL2=,~93:42 eachL2=.~93:29 eachM=pump~93:61
eachM=spring~93:48 eachM=tank~93:59 eachP=use.people~93:83 eachR0=.~93:63 eachR2=.~93:42
eachT=power.source~93:43 eachT=store.volume~93:29 eachT=tank.volume~93:26 eachT=water.kind~93:90
eachT=water.yield~93:50 eachT=way.climb~93:29 eachT=way.length~93:40 eachT=way.pipe~93:34
eacha=.~0:35,93:32 eachl0=,~93:36 eachl0=at~0:34 eachl1=we~93:34 eachlr=,_.~93:25 eachlr=at_.~0:38
eachr0=.~93:59 flowE=,~0:24,8:43,117:53 flowE=0~104:18 flowE=1~0:63,120:55 flowE=2~0:24,73:7
flowE=3~120:93 flowE=4~104:27 flowE=6~0:35 flowE=all~104:49 flowE=bucket~0:31 flowE=day~84:72
flowE=distance~0:73 flowE=down~0:-39,120:36 flowE=dry~104:58 flowE=each~8:30 flowE=its~72:33
flowE=kitchen~0:37 flowE=last~104:54 flowE=level~117:17 flowE=line~84:33 flowE=m~0:77,120:56
flowE=minute~0:50,104:-31 flowE=off~117:51 flowE=pressure~0:-29 flowE=psi~73:43 flowE=pump~104:60
flowE=set~73:47 flowE=six~0:37 flowE=somewhere~96:51 flowE=spring~104:27 flowE=summer~0:38
flowE=tap~0:65 flowE=then~0:44 flowE=well~104:51 flowL0=,~8:66,73:41,104:18,120:-21
flowL0=.~8:42,72:38,104:36 flowL0=0~120:29 flowL0=1~120:22 flowL0=2~120:21 flowL0=:~104:36
flowL0=a~104:48 flowL0=and~104:55 flowL0=at~0:-52,117:56,119:42,120:56 flowL0=back~119:30
flowL0=bar~9:29 flowL0=bore~104:55 flowL0=cm~8:27 flowL0=comes~119:29 flowL0=diaphragm~73:18
flowL0=did~0:40,104:-33 flowL0=driller~104:35 flowL0=drip~0:30,8:30 flowL0=drippers~8:66
flowL0=dry~104:33 flowL0=each~73:46 flowL0=emitters~8:47 flowL0=flow~72:77 flowL0=ft~0:56
flowL0=gives~104:49 flowL0=he~120:34 flowL0=held~119:44 flowL0=i~0:-36,96:46 flowL0=is~84:16
flowL0=it~104:34 flowL0=least~72:33 flowL0=log~104:45 flowL0=m~0:72 flowL0=makes~104:36
flowL0=me~9:52,104:-52 flowL0=minutes~117:56 flowL0=one~104:-51 flowL0=ours~104:48
flowL0=pressure~0:11 flowL0=pump~0:12,73:57,104:-39 flowL0=pumped~120:41 flowL0=pumping~117:20
flowL0=says~0:31 flowL0=spring~104:55 flowL0=sprinkler~0:37 flowL0=steady~119:44
flowL0=tank~0:-31,84:59 flowL0=that~0:50 flowL0=the~84:76 flowL0=then~119:37 flowL0=volt~73:29
flowL0=want~22:78 flowL0=wants~72:33 flowL0=we~22:61 flowL0=well~104:40 flowL0=wrote~104:32
flowL0=yield~104:51 flowL1=)~0:36 flowL1=,~96:51 flowL1=.~9:50,72:47,73:38 flowL1=0~0:-23,104:33
flowL1=1~0:-51,9:40,72:40,73:39 flowL1=2~0:-28,72:43,73:27,104:54 flowL1=3~0:-40,120:23
flowL1=4~120:27 flowL1=5~0:-38,9:33,104:47 flowL1=6~22:48 flowL1=8~104:35 flowL1=9~0:-46,104:42
flowL1=a~73:46 flowL1=across~0:44 flowL1=and~0:-10,104:37 flowL1=as~104:-40,120:30
flowL1=at~0:-60,9:81,22:45,104:50 flowL1=by~0:82 flowL1=every~8:26 flowL1=feet~104:54
flowL1=for~0:-42,104:39,117:21 flowL1=from~104:32 flowL1=ft~0:-69,104:55 flowL1=higher~0:26
flowL1=his~104:44 flowL1=i~0:56 flowL1=in~0:33 flowL1=inch~0:55 flowL1=is~73:20,104:12
flowL1=it~0:-64,104:34,119:39 flowL1=l~119:29 flowL1=m~0:-44,120:63 flowL1=meter~96:43
flowL1=people~0:16,104:-19 flowL1=pump~0:-52,72:25,73:60,84:24 flowL1=pumped~117:20
flowL1=source~104:43 flowL1=tank~84:34 flowL1=than~0:26 flowL1=the~0:34,73:81,84:39,104:-60,117:41
flowL1=then~0:31 flowL1=to~0:-37,84:23,120:38 flowL1=way~73:36 flowL1=we~104:71 flowL1=well~84:24
flowL2=)~0:-36 flowL2=,~0:-21,8:18,9:42,22:39,73:49,96:45 flowL2=.~8:29,9:62,22:50,72:39,96:51
flowL2=0~8:42,119:49 flowL2=1~104:30,120:51 flowL2=2~104:63 flowL2=3~9:53,104:54 flowL2=4~119:32
flowL2=5~96:64,104:48 flowL2=6~119:40,120:48 flowL2=7~104:50 flowL2=8~72:38
flowL2=:~0:31,104:-50,120:34 flowL2=above~0:-31 flowL2=all~96:39 flowL2=apart~0:-41,8:51
flowL2=bore~120:25 flowL2=controller~72:36 flowL2=day~96:42 flowL2=drip~8:12
flowL2=dry~0:74,104:-45 flowL2=each~0:-55 flowL2=feet~0:-60,104:93 flowL2=from~0:-36
flowL2=ft~104:-38,120:44 flowL2=gives~0:32 flowL2=gpm~104:38 flowL2=ground~0:65
flowL2=hangs~0:53,104:-41 flowL2=head~0:40 flowL2=hens~0:66,104:-53 flowL2=identical~73:53
flowL2=m~9:75 flowL2=metres~0:-30 flowL2=minutes~119:49 flowL2=need~0:41 flowL2=pe~0:31
flowL2=pond~0:36 flowL2=pressure~9:42 flowL2=pump~73:58 flowL2=pumping~0:33 flowL2=recovery~117:39
flowL2=rows~0:-40,8:55 flowL2=run~104:57 flowL2=so~0:-41,104:47 flowL2=solar~104:25
flowL2=swl~120:41 flowL2=test~117:29 flowL2=three~0:23,104:-23 flowL2=two~0:-47,73:46
flowL2=water~104:36 flowL2=well~0:-25,104:43,119:27,120:37 flowL2=when~0:37,104:-44
flowL2=wrote~0:-37,104:43 flowL2=zones~9:41 flowM=cistern~84:45,96:52,104:-60
flowM=drip~8:152,9:177,104:-33 flowM=pump~0:26,8:42,72:65,73:83,96:34,117:68,119:43,120:32
flowM=roof~73:48 flowM=spring~0:30,22:21,104:101 flowM=tank~0:29,84:132
flowM=well~104:42,117:41,119:81,120:41 flowN=drip.hours~9:79 flowN=drip.spacing~8:88
flowN=power.source~0:51 flowN=store.hours~84:62 flowN=store.volume~104:40 flowN=tank.volume~0:42
flowN=use.people~0:-27,96:28,104:43 flowN=water.kind~0:90 flowN=water.yield~0:108,104:-76
flowN=way.climb~104:57 flowN=way.length~104:35 flowN=well.pumped_for~117:78
flowP=drip.pressure~9:30 flowP=drip.spacing~8:69 flowP=fall.held~22:41 flowP=outlets.shower~0:46
flowP=outlets.toilet~96:51 flowP=power.voltage~73:52 flowP=pump.works~73:28 flowP=store.fills~84:73
flowP=water.kind~8:-31,9:51,73:-57,84:52,104:135 flowP=water.yield~0:-48,104:79
flowP=way.climb~0:-58 flowP=well.drawn_for~119:72 flowP=well.pumped_for~117:32
flowP=well.pumping~0:-21,120:70 flowP=well.static~0:-39,104:50 flowR0=,~8:25
flowR0=.~0:21,8:23,72:48,73:38,84:38,96:76,104:62,119:34 flowR0=0~0:31 flowR0=1~0:36,104:-39
flowR0=4~120:57 flowR0=a~0:41 flowR0=and~0:37 flowR0=at~9:49,22:42,73:36,104:-76 flowR0=bar~0:31
flowR0=down~120:49 flowR0=driller~104:41 flowR0=dry~104:52 flowR0=each~8:29
flowR0=for~0:-40,22:46,72:29,117:68 flowR0=in~0:74 flowR0=its~72:33 flowR0=line~0:38,104:-29
flowR0=of~0:32 flowR0=somewhere~96:51 flowR0=spring~104:25 flowR0=the~9:60,84:41,104:30
flowR0=to~0:-40 flowR0=well~0:30 flowR0=what~104:34 flowR1=.~0:48,22:49,72:29,84:38
flowR1=0~72:35,104:35 flowR1=1~72:46 flowR1=3~120:75 flowR1=:~0:37 flowR1=?~104:-36
flowR1=and~0:-49 flowR1=bucket~0:38 flowR1=day~84:57 flowR1=house~104:29 flowR1=line~84:33
flowR1=m~104:55 flowR1=my~0:18 flowR1=of~0:-31 flowR1=off~117:20 flowR1=put~0:37,104:-22
flowR1=run~0:45 flowR1=sink~73:62 flowR1=takes~0:37 flowR1=tank~0:61 flowR1=that~104:40
flowR1=the~0:32 flowR1=two~104:44 flowR1=what~0:50 flowR1=with~104:37 flowR2=,~0:-45,104:56
flowR2=.~0:24,73:26,96:34 flowR2=0~0:-17,8:43,104:47 flowR2=3~0:14 flowR2=4~104:64
flowR2=5~0:-47,73:57,104:48 flowR2=7~0:31,104:-44 flowR2=bar~73:38 flowR2=feet~0:73
flowR2=from~0:57 flowR2=level~117:20 flowR2=litre~104:35 flowR2=metres~0:-47,104:59
flowR2=pipe~0:37,104:-34 flowR2=pump~0:21 flowR2=sink~104:43 flowR2=spring~0:43 flowR2=tank~104:39
flowR2=there~104:-62 flowR2=well~0:28 flowS=acro~0:44 flowS=afte~104:-31,119:43 flowS=apar~8:33
flowS=bail~119:36 flowS=befo~104:-61,119:48 flowS=bore~0:22 flowS=cist~84:63,104:-59
flowS=come~119:29 flowS=conc~84:32 flowS=curv~0:59 flowS=deli~73:52 flowS=diap~73:33
flowS=draw~120:40 flowS=dril~0:-13,104:72,120:33 flowS=drip~8:94,104:-29 flowS=emit~8:110
flowS=ever~8:19,96:35 flowS=fill~84:69 flowS=gall~119:46 flowS=gard~9:74 flowS=give~104:40
flowS=leak~96:51 flowS=leas~72:64 flowS=leve~120:47 flowS=line~8:45 flowS=litr~119:53
flowS=make~104:53 flowS=meas~104:24 flowS=mete~96:65,104:-47 flowS=minu~119:94 flowS=neve~104:55
flowS=nigh~96:26 flowS=pres~0:43 flowS=prod~104:28 flowS=pump~104:-67,117:56,120:35
flowS=reco~117:62 flowS=show~0:54 flowS=spri~0:42,104:38 flowS=stea~119:44 flowS=stre~104:37
flowS=take~0:31 flowS=ther~104:41 flowS=want~72:33 flowS=wate~84:43,104:31 flowS=whic~84:70
flowS=wrot~0:-63,104:74 flowS=yiel~104:91 flowT=beds.area~0:-43,8:88,9:31 flowT=power.battery~73:54
flowT=power.cable~120:47 flowT=power.capacity~0:-23,73:52 flowT=power.controller~73:32
flowT=power.limit~0:35 flowT=power.series~0:58,104:-46 flowT=power.source~0:37,104:22
flowT=power.strings~0:30,104:-43 flowT=power.tilt~104:44 flowT=power.voltage~0:-105,73:106,120:16
flowT=pump.control~96:91 flowT=pump.count~0:-40,72:35 flowT=pump.cut_in~96:39
flowT=pump.cut_out~96:40 flowT=pump.diameter~104:-63 flowT=pump.height~104:24,120:23
flowT=pump.npsh~72:50 flowT=pump.placement~0:31,8:55 flowT=pump.present~0:43,22:97,104:-16
flowT=pump.set~84:69,96:48 flowT=pump.works~0:-47,73:85 flowT=store.days~104:60
flowT=store.fills~0:-30,84:73 flowT=store.hours~84:62 flowT=store.volume~73:76,84:66,96:30,104:-22
flowT=tank.level~104:98 flowT=tank.volume~0:38
flowT=water.kind~8:34,22:50,84:48,96:47,104:129,119:56,120:82 flowT=water.level~0:32,72:47,120:90
flowT=water.yield~0:135,8:57,104:-129 flowT=way.climb~22:71,104:46
flowT=way.length~0:48,22:44,73:31,96:38,104:35 flowT=way.pipe~22:44,73:40,96:36,104:77
flowT=well.bore~119:43,120:46 flowT=well.depth~0:58,104:39,119:43,120:26 flowT=well.drawn~119:66
flowT=well.drawn_for~104:-37,119:77 flowT=well.known~117:97 flowT=well.pumped_for~117:110
flowT=well.pumping~104:-64,120:124 flowT=well.static~0:-35,120:79 flowa=~104:27
flowa=.~0:52,84:29,120:52 flowa=at_the~9:49 flowa=day_and~84:22 flowa=from_the~84:32
flowb=,_flow~9:30 flowb=at_least~72:33 flowb=driller_wrote~104:30 flowb=he_pumped~120:42
flowb=m_at~0:48 flowb=minutes_at~117:56 flowb=pump_gives~0:26 flowb=spring_gives~0:63,104:-58
flowb=well_,~0:38 flowl0=,~8:62,73:12,104:49 flowl0=.~104:48 flowl0=:~104:30
flowl0=at~117:64,119:42,120:57 flowl0=flow~72:49,104:-70 flowl0=gives~0:20,104:50 flowl0=is~84:20
flowl0=least~72:33 flowl0=makes~104:31 flowl0=pumped~120:54 flowl0=want~22:78 flowl0=wrote~104:32
flowl0=yield~104:42 flowl1=,~0:45,9:23 flowl1=and~104:63 flowl1=at~72:32 flowl1=back~119:30
flowl1=borehole~104:71 flowl1=drip~8:24 flowl1=drippers~8:36 flowl1=each~73:49 flowl1=emitters~8:30
flowl1=he~120:58 flowl1=i~0:-36,96:44 flowl1=log~104:43 flowl1=m~0:77 flowl1=minutes~117:56
flowl1=night~84:65 flowl1=pump~0:34,73:39,104:-47 flowl1=tested~104:40 flowl1=the~84:36
flowl1=then~119:37 flowl1=we~0:41 flowl1=well~104:23 flowl2=,~0:-43 flowl2=.~72:44 flowl2=0~104:56
flowl2=1~120:22 flowl2=borehole~0:37 flowl2=comes~119:30 flowl2=drip~0:36 flowl2=each~0:63
flowl2=gives~0:-27,84:35 flowl2=it~104:43 flowl2=now~0:60 flowl2=pressure~0:19 flowl2=pump~73:35
flowl2=that~104:-72 flowl2=the~84:41,104:9 flowl2=volt~73:25 flowl2=we~22:50 flowlr=,_,~0:-37
flowlr=at_,~117:48 flowlr=at_.~119:20,120:34 flowlr=flow_.~9:29,72:54 flowlr=gives_,~0:60
flowlr=gives_.~104:46 flowlr=is_.~84:23 flowlr=makes_.~104:40 flowlr=out_.~0:32
flowr0=.~0:60,72:53,84:44,104:25,119:15,120:20 flowr0=at~9:51,22:45,73:34 flowr0=day~84:22
flowr0=for~0:-36,22:47,72:30,117:41 flowr0=from~84:32 flowr0=spring~104:28 flowr0=well~104:45
flowr1=.~8:17 flowr1=4~120:59 flowr1=its~72:33 flowr1=spring~0:34,104:-33 flowr1=the~9:62,84:44
flowr2=.~96:41 flowr2=0~0:31 flowr2=1~0:57,104:-39 flowr2=5~0:-45 flowr2=a~0:47
flowr2=and~0:22,104:-22 flowr2=at~104:-43 flowr2=bar~0:31 flowr2=down~120:49 flowr2=driller~104:40
flowr2=in~0:42 flowr2=level~104:65 flowr2=never~0:51 flowr2=night~84:22 flowr2=spring~0:-29,104:30
k=angle~26:44,43:60,46:97,47:24,59:79,103:47 k=area~0:51,6:265,79:97
k=bare~0:274,1:63,2:28,3:85,4:49,20:51,31:34,38:61,39:20,46:48,93:-45,99:74 k=charge~0:53,51:195
k=current~0:43,49:59 k=daily~0:101,92:145,93:98,94:73 k=each~93:132
k=flow~0:182,8:93,9:78,22:32,72:44,73:49,84:67,96:74,104:152,117:72,119:51,120:54
k=length~0:366,7:41,12:26,16:44,18:82,45:113,50:44,68:35,75:48,89:52,90:60,93:-28,102:71,104:-36,105:32,106:40,107:173,108:77,110:30,113:33
k=long~0:75 k=pair~66:109 k=percent~0:58,17:38,57:98,64:44,74:70,80:49 k=power~0:155,55:118
k=pressure~0:163,11:64,13:87,14:38,23:31,24:44,25:55,44:27,61:88,62:43,66:79,67:84,76:87,109:45
k=rise~90:41,105:20,106:69 k=temperature~19:44,26:73,43:58,103:96
k=time~0:193,10:62,52:43,81:108,83:22,95:33,98:68,112:60,115:62 k=voltage~0:95,53:47,54:62,60:179
k=volume~0:136,27:68,28:92,63:97,85:73,86:166,91:125,93:57,97:99,111:57
lengthE=,~0:57,16:41,18:23,50:-43,108:32,116:-32 lengthE=0~0:46,90:49,105:49,107:-53,118:-31
lengthE=1~12:35,105:27 lengthE=2~7:80,102:16,106:24,107:15 lengthE=3~0:43,90:26,108:54
lengthE=4~89:28,90:-39,113:58 lengthE=5~105:43,106:17 lengthE=6~89:-60,105:-23,118:44
lengthE=7~90:-50,108:25,110:40 lengthE=8~102:52,106:-31,107:34 lengthE=9~107:29,110:39
lengthE=?~0:63 lengthE=above~0:-85,45:38,70:52,90:41,101:48,102:36,105:50,110:-37
lengthE=across~68:48,108:28 lengthE=after~0:52 lengthE=all~0:41 lengthE=along~0:-33,105:44,107:38
lengthE=altitude~45:36 lengthE=anyway~0:59 lengthE=apart~16:18,18:22 lengthE=august~102:37
lengthE=away~0:-26,105:39,107:50 lengthE=back~105:64 lengthE=barn~0:28,106:24
lengthE=bath~0:28,71:-42 lengthE=bathroom~105:32
lengthE=below~0:-54,71:50,102:29,105:41,106:33,118:21 lengthE=beside~0:-31,105:34
lengthE=between~16:56 lengthE=bore~105:-47 lengthE=borehole~110:24
lengthE=bottom~0:34,107:-38,110:95 lengthE=buried~107:61 lengthE=but~0:49 lengthE=by~0:40,102:-35
lengthE=cabin~0:-63,106:33,107:54 lengthE=cable~50:114,107:-35 lengthE=casing~0:-27,108:44
lengthE=climb~105:46 lengthE=climbs~105:26 lengthE=cm~0:-40,12:23,16:51 lengthE=concrete~0:-42
lengthE=copper~106:23 lengthE=cuts~0:47 lengthE=day~15:71
lengthE=deep~0:29,82:43,107:-32,108:40,110:77 lengthE=depth~110:29 lengthE=diaphragm~0:80
lengthE=difference~0:82,107:-37 lengthE=distance~105:-47 lengthE=down~71:35,102:8,107:-15
lengthE=downhill~106:64 lengthE=drip~0:51 lengthE=dripper~16:51 lengthE=drop~0:-36,107:-22,113:109
lengthE=dry~0:53 lengthE=dug~0:-23 lengthE=each~16:51 lengthE=elevation~45:35 lengthE=emitter~18:32
lengthE=end~0:39,110:-36 lengthE=every~16:59 lengthE=fall~106:63 lengthE=feet~0:23,106:-36
lengthE=fence~0:35 lengthE=filled~0:24 lengthE=fills~90:43 lengthE=flat~107:41 lengthE=floor~0:54
lengthE=foot~89:47,107:-24 lengthE=four~105:-42 lengthE=free~0:39
lengthE=from~0:58,50:55,107:72,110:-43 lengthE=ft~0:30,71:-62,118:31 lengthE=full~82:52
lengthE=gal~71:-39 lengthE=gallon~90:46 lengthE=gallons~105:68,106:-50
lengthE=garden~102:-51,107:61 lengthE=go~110:37 lengthE=goes~0:32,71:47,107:-45
lengthE=gpm~110:51,116:38 lengthE=ground~70:46,71:32 lengthE=hdpe~107:48 lengthE=head~0:29
lengthE=height~0:40,105:34 lengthE=higher~105:21 lengthE=his~0:45 lengthE=hold~0:27
lengthE=holds~0:60 lengthE=hole~102:34 lengthE=hose~0:45,89:52,102:-12,107:49
lengthE=house~90:17,105:58,107:58,110:-52 lengthE=hundred~105:18 lengthE=inch~106:87
lengthE=inside~0:-38,108:49,110:49 lengthE=it's~82:22 lengthE=july~15:40 lengthE=just~0:43
lengthE=kitchen~0:-25,90:45,106:48,107:39 lengthE=know~0:26 lengthE=l~0:-32 lengthE=laid~107:38
lengthE=level~107:38 lengthE=lift~0:-64,102:73,105:60 lengthE=line~0:46,7:80 lengthE=lined~0:-47
lengthE=lines~12:33 lengthE=liters~0:83,90:-48 lengthE=litres~0:-26,110:53
lengthE=long~12:39,89:33,106:-55 lengthE=low~102:44 lengthE=lower~0:24,102:-40,106:61
lengthE=lowered~0:35 lengthE=m~0:49,105:32,118:43 lengthE=maybe~107:37 lengthE=mdpe~0:33
lengthE=measured~0:22 lengthE=meter~0:45,90:-48,102:-32 lengthE=meters~0:55,107:-32
lengthE=metres~106:43 lengthE=minutes~0:44
lengthE=mm~0:-24,71:-54,89:19,90:-23,106:76,107:58,113:36 lengthE=morning~0:50 lengthE=motor~0:77
lengthE=need~0:30 lengthE=new~0:41 lengthE=no~105:-58,106:41 lengthE=off~102:-55,107:47
lengthE=old~106:45 lengthE=one~105:61 lengthE=only~0:55 lengthE=out~0:-41
lengthE=over~0:35,71:-45,90:56,107:-43,109:47,114:45 lengthE=paddock~105:32 lengthE=panels~0:75
lengthE=path~105:36 lengthE=pe~90:21 lengthE=people~0:27,71:-48 lengthE=per~75:25,118:-64
lengthE=persons~0:20 lengthE=phone~0:45 lengthE=pipe~0:43,90:-58,105:23,113:85
lengthE=plastic~0:54,89:-29 lengthE=plus~107:20 lengthE=poly~0:42,110:-38 lengthE=pressure~0:-44
lengthE=psi~0:34,102:-50 lengthE=pump~0:-47,101:57,102:37,105:24,107:-56,110:46 lengthE=pump's~0:35
lengthE=pumphouse~0:43 lengthE=pumping~118:4 lengthE=pvc~0:-55 lengthE=rests~118:54
lengthE=rise~0:-45,105:79 lengthE=river~102:31 lengthE=road~0:59 lengthE=rows~0:-32,16:53,18:49
lengthE=run~0:-47,105:37 lengthE=runs~102:-27,116:24 lengthE=s~0:38 lengthE=said~0:26,105:-34
lengthE=same~107:47 lengthE=sea~45:56 lengthE=shed~0:46 lengthE=sheet~75:42 lengthE=shower~90:48
lengthE=since~0:38 lengthE=sink~107:32 lengthE=sits~0:-36 lengthE=sixty~71:61
lengthE=slope~0:-59,105:89,106:-30 lengthE=so~0:59,107:-93 lengthE=spring~45:69 lengthE=stand~0:20
lengthE=static~0:-42 lengthE=submersible~68:56 lengthE=suction~0:-28,89:134,102:49,105:-32,107:-32
lengthE=sum~0:39 lengthE=summer~0:56,102:46 lengthE=surface~0:51 lengthE=switch~102:-47
lengthE=take~0:46 lengthE=tank~90:71,105:-62,106:-49,107:65 lengthE=then~0:57,105:-28,107:-41
lengthE=there's~0:32 lengthE=thirty~0:39 lengthE=through~0:-44 lengthE=top~0:-27,90:33,118:53
lengthE=total~0:-41,107:17 lengthE=track~105:57 lengthE=trailer~0:66 lengthE=trough~105:51,107:33
lengthE=troughs~90:42 lengthE=two~102:-33 lengthE=under~45:-52 lengthE=until~0:42
lengthE=up~105:53,107:70 lengthE=uphill~105:61 lengthE=upwards~105:44 lengthE=us~90:27
lengthE=valve~89:48,102:42 lengthE=water~102:160,105:-62,110:89
lengthE=well~0:-40,70:40,105:-38,106:33,107:48,110:71 lengthE=when~82:58,102:-52,116:37
lengthE=where~102:33 lengthE=wide~0:36 lengthE=wire~50:82,107:-42 lengthE=would~105:33
lengthL0=,~0:-39,7:21,16:23,18:65,45:5,82:35,101:15,105:31,107:23,108:47
lengthL0=.~0:-66,12:28,45:13,90:-47,105:20,110:19 lengthL0=0~15:62,90:45,105:-43,108:17
lengthL0=1~0:70 lengthL0=2~0:23 lengthL0=3~90:48,107:27 lengthL0=4~0:43,113:26
lengthL0=5~0:44,110:-31 lengthL0=6~0:32 lengthL0=:~90:45,105:47,106:52,107:-55
lengthL0=?~0:-49,102:55,110:49 lengthL0=a~0:-14,50:19,90:49,102:-41,105:41,107:17,108:35,110:62
lengthL0=above~90:35 lengthL0=ah~0:42 lengthL0=all~0:49 lengthL0=altitude~45:69
lengthL0=and~102:-52,105:57,106:36,107:15 lengthL0=are~12:39,45:32
lengthL0=at~12:-32,16:42,45:86,71:108,102:35,105:-39,107:-12,110:-39,114:34,116:47
lengthL0=away~106:41 lengthL0=barn~106:26 lengthL0=be~0:-50 lengthL0=before~118:44
lengthL0=bore~0:-58,110:60 lengthL0=borehole~50:39,102:-28,105:-33,110:37 lengthL0=bottom~0:-44
lengthL0=brings~107:28 lengthL0=buried~0:70 lengthL0=but~102:46 lengthL0=by~106:39
lengthL0=cabin~45:29,105:37,107:40 lengthL0=cable~50:106,107:-30 lengthL0=call~0:-38
lengthL0=can~0:40 lengthL0=cased~0:-27,108:53 lengthL0=casing~0:-43,108:38 lengthL0=cellar~0:14
lengthL0=cistern~0:-30 lengthL0=climb~105:42 lengthL0=climbing~105:45 lengthL0=climbs~0:-26,105:60
lengthL0=comes~106:53 lengthL0=copper~107:40 lengthL0=deep~0:26,108:48 lengthL0=depth~71:20,110:53
lengthL0=diameter~0:-25,7:22,68:60,108:16 lengthL0=down~71:63,116:28 lengthL0=draws~102:37
lengthL0=drilled~110:69 lengthL0=drip~0:-53,12:37,16:25 lengthL0=drippers~18:55
lengthL0=drop~106:63,107:-46,113:67 lengthL0=drops~0:38,105:-32,106:65 lengthL0=drum~90:62
lengthL0=dry~69:94 lengthL0=dug~110:42 lengthL0=dynamic~102:17 lengthL0=each~12:67,18:42
lengthL0=elev~45:50 lengthL0=elevation~45:60 lengthL0=emitters~18:20 lengthL0=ends~0:36
lengthL0=et~0:-37,15:80 lengthL0=every~0:-34,12:-25,16:25,18:69 lengthL0=fall~106:34
lengthL0=falls~0:48,102:-29,105:-30,106:47,107:-30,116:23 lengthL0=far~0:40
lengthL0=field~0:35,106:37 lengthL0=floor~0:-30 lengthL0=for~107:32 lengthL0=from~71:30
lengthL0=ft~108:61 lengthL0=garden~107:48 lengthL0=goes~0:-27,102:49,105:40,110:20
lengthL0=gph~18:46 lengthL0=gpm~0:69 lengthL0=gravity~0:47 lengthL0=h~0:31,18:56
lengthL0=hangs~71:41,114:80 lengthL0=hdpe~0:40 lengthL0=head~0:28 lengthL0=here~0:-36,45:32
lengthL0=highest~105:43 lengthL0=hole~107:-39,110:58 lengthL0=hose~89:40
lengthL0=house~0:53,50:-20,71:-35,90:31,102:-34,105:72,106:32,107:40 lengthL0=houses~0:26
lengthL0=hp~71:46 lengthL0=hung~113:44 lengthL0=hut~45:50 lengthL0=i~107:66 lengthL0=i'm~0:31
lengthL0=in~102:19,108:69 lengthL0=inch~0:-71,107:39 lengthL0=inside~7:49
lengthL0=intake~0:-28,89:51,105:-19,106:30,114:83
lengthL0=is~15:44,45:-70,50:24,71:52,105:45,108:29 lengthL0=it~71:34,105:-38,116:62
lengthL0=it's~102:56,107:43 lengthL0=keep~109:22 lengthL0=knoll~0:39 lengthL0=l~90:48
lengthL0=last~0:51,105:-30 lengthL0=laterals~12:46 lengthL0=length~107:43
lengthL0=level~0:19,71:-34,101:24,102:66,105:-33,110:-40,116:49,118:45 lengthL0=lies~105:29
lengthL0=lift~69:86,89:-39,102:44,105:62 lengthL0=line~0:41,12:100,90:-26,102:-38
lengthL0=lines~12:120 lengthL0=lodge~105:-28,106:27 lengthL0=log~0:47 lengthL0=long~16:30
lengthL0=lowered~71:79 lengthL0=lowest~102:44 lengthL0=m~105:51,108:23 lengthL0=mains~0:51
lengthL0=min~0:50 lengthL0=mm~107:29 lengthL0=more~105:26 lengthL0=my~106:22 lengthL0=nearest~0:42
lengthL0=never~102:36 lengthL0=no~102:30,107:42 lengthL0=now~102:37 lengthL0=npsh~75:83
lengthL0=npshr~75:78 lengthL0=of~0:63,12:48,102:-43,105:-56,110:25 lengthL0=on~90:48,113:38
lengthL0=one~16:39 lengthL0=ours~110:56 lengthL0=outlet~90:35 lengthL0=outside~68:35
lengthL0=over~107:31 lengthL0=paper~107:26 lengthL0=pipe~89:34,107:62,113:60
lengthL0=poly~89:41,107:6 lengthL0=pond~102:40 lengthL0=pressure~0:46,90:-36
lengthL0=pump~0:-77,50:59,68:81,71:128,75:45,102:55,105:-54,108:-63,110:-58
lengthL0=pump's~0:-24,71:45 lengthL0=pumphouse~0:25 lengthL0=pumping~116:44
lengthL0=put~0:51,71:-20 lengthL0=required~75:61 lengthL0=rest~118:64 lengthL0=rings~108:32
lengthL0=rise~0:-23,105:100 lengthL0=rises~105:87 lengthL0=river~102:40 lengthL0=road~0:45,107:-34
lengthL0=row~16:65 lengthL0=rows~0:-19,16:153 lengthL0=run~12:48,50:35,107:33
lengthL0=says~0:36,110:27 lengthL0=sea~45:55 lengthL0=season~102:30 lengthL0=second~0:39
lengthL0=set~71:61 lengthL0=shed~0:58,107:-36 lengthL0=sorry~0:-41,102:27
lengthL0=spring~101:73,106:25 lengthL0=stable~106:40 lengthL0=stand~90:27 lengthL0=standing~118:69
lengthL0=stands~0:-50,102:42 lengthL0=static~102:31,110:-31,118:113 lengthL0=sub~0:43
lengthL0=submersible~0:24,71:41 lengthL0=sucks~89:67 lengthL0=suction~89:85,102:37,105:-42
lengthL0=surface~0:47 lengthL0=swl~102:38,118:64 lengthL0=tank~0:47,90:84,105:-60,107:37
lengthL0=tap~105:63 lengthL0=that~89:35,90:62 lengthL0=that's~105:26
lengthL0=the~0:29,50:36,107:32,118:-57 lengthL0=there~107:35 lengthL0=there's~0:35
lengthL0=they~0:18 lengthL0=through~89:49 lengthL0=to~102:64,116:20 lengthL0=toilets~0:34
lengthL0=tote~0:26 lengthL0=tower~0:-39,90:49,107:43 lengthL0=up~0:29,90:58,102:-36,105:45,106:-40
lengthL0=uphill~105:59 lengthL0=upstairs~105:43 lengthL0=was~0:44
lengthL0=water~71:-65,82:59,101:62,102:82,105:-38,106:-41,118:48 lengthL0=water's~102:30
lengthL0=way~107:42 lengthL0=we~45:24 lengthL0=well~110:55 lengthL0=well's~110:35
lengthL0=winter~102:45 lengthL0=with~0:58,102:59,107:-21 lengthL0=within~102:33 lengthL0=work~0:29
lengthL0=wrote~0:29 lengthL0=yard~106:56 lengthL0=yurt~0:51 lengthL0=|~102:45,106:56
lengthL1=)~0:-51 lengthL1=,~12:55,18:40,69:41,90:56,116:-45,118:27
lengthL1=.~0:-35,7:56,12:36,15:49,71:19,90:58,105:-33,107:32,114:69 lengthL1=0~90:68,102:26,106:67
lengthL1=1~18:47,114:48 lengthL1=2~107:-22,110:34 lengthL1=3~90:31,116:23,118:-19
lengthL1=4~0:-62,116:40 lengthL1=5~107:28 lengthL1=6~0:-36,106:69 lengthL1=7~105:24
lengthL1=8~0:65,107:-32 lengthL1=9~0:61,108:50,116:45 lengthL1=:~118:30
lengthL1=;~0:51,102:-40,105:-38,106:39 lengthL1=?~90:-40
lengthL1=a~45:-29,71:46,90:34,105:-13,108:35 lengthL1=above~0:-21,107:48 lengthL1=an~0:41
lengthL1=and~0:38,102:53,106:-42,113:41,116:44 lengthL1=apart~12:38 lengthL1=are~0:96,71:-36
lengthL1=at~0:-47,102:-35,105:23,113:23,118:61 lengthL1=away~0:37 lengthL1=bank~0:52,102:-48
lengthL1=basement~0:32 lengthL1=be~0:29 lengthL1=beds~18:31 lengthL1=below~71:-29,107:55
lengthL1=booster~0:29 lengthL1=bore~0:34,108:30 lengthL1=borehole~0:-19,113:39 lengthL1=cable~50:46
lengthL1=cap~0:43,71:-26 lengthL1=cistern~0:-23 lengthL1=dead~105:44 lengthL1=dear~0:32
lengthL1=deep~105:-28,108:30 lengthL1=delivery~0:37,107:-36 lengthL1=depth~0:27
lengthL1=distance~107:42 lengthL1=down~89:-33 lengthL1=drip~7:21,12:39,16:14,18:26,102:-31
lengthL1=dry~0:-59,102:31 lengthL1=each~0:-18 lengthL1=end~102:28 lengthL1=every~12:84
lengthL1=falls~102:43 lengthL1=feet~118:-45 lengthL1=floats~0:39 lengthL1=flooded~101:31,102:-31
lengthL1=for~0:-37,116:50 lengthL1=from~50:58,71:-18,90:18,106:28,110:-46
lengthL1=ft~0:30,90:-32,102:37,110:32 lengthL1=full~90:43 lengthL1=gal~90:32
lengthL1=gallon~0:51,90:-50 lengthL1=gallons~0:17,107:-28 lengthL1=garden~0:31 lengthL1=gives~0:39
lengthL1=goes~0:70,102:-25 lengthL1=gph~12:73 lengthL1=gpm~118:49 lengthL1=guest~0:63
lengthL1=h~0:-41 lengthL1=half~106:79 lengthL1=hangs~110:39 lengthL1=height~0:-48,90:24
lengthL1=higher~107:33 lengthL1=highest~0:30 lengthL1=hold~0:35 lengthL1=hose~0:32,105:-24
lengthL1=hour~0:-46 lengthL1=house~0:-27,50:36 lengthL1=how~110:50 lengthL1=hundred~0:41,102:-46
lengthL1=in~0:51,71:66 lengthL1=inch~0:56 lengthL1=installed~71:38
lengthL1=is~89:28,101:28,107:33,108:19 lengthL1=it~105:14 lengthL1=it's~0:-43,105:19
lengthL1=its~106:63 lengthL1=kpa~106:34 lengthL1=l~102:-17,106:-33,116:52 lengthL1=lake~0:51
lengthL1=level~0:-50,102:25 lengthL1=lift~0:-27,105:28 lengthL1=line~107:33 lengthL1=lines~7:30
lengthL1=liters~0:47 lengthL1=litres~105:39,107:-20 lengthL1=log~110:36 lengthL1=lower~0:41
lengthL1=m~102:42 lengthL1=map~0:34 lengthL1=metres~106:-50 lengthL1=mile~105:23
lengthL1=min~0:34,105:-12 lengthL1=minute~107:-29 lengthL1=mm~0:29,90:-33 lengthL1=my~0:40,107:-39
lengthL1=next~105:-59,106:33 lengthL1=no~102:15 lengthL1=not~0:-36,105:32 lengthL1=now~107:34
lengthL1=of~0:-10,71:-35,102:8,107:50 lengthL1=off~0:38 lengthL1=one~0:-41,110:29
lengthL1=our~45:30,110:42 lengthL1=ours~102:-36,110:35 lengthL1=out~105:44
lengthL1=over~90:46,107:-46 lengthL1=panels~0:25 lengthL1=pasture~105:33 lengthL1=pe~106:60
lengthL1=people~0:-29 lengthL1=per~0:47,107:-44 lengthL1=pipe~89:60,106:34,113:57
lengthL1=poly~105:46,107:-38 lengthL1=psi~0:-56 lengthL1=pulls~102:50
lengthL1=pump~0:-79,71:83,101:21,102:29,105:31,106:-23 lengthL1=pumping~102:32 lengthL1=pvc~0:41
lengthL1=reservoir~90:28 lengthL1=rest~102:-40,118:52 lengthL1=rise~105:30 lengthL1=rows~12:44
lengthL1=s~116:52 lengthL1=says~71:46 lengthL1=sch~0:38 lengthL1=sea~105:37 lengthL1=sits~102:41
lengthL1=solar~102:-36 lengthL1=stands~0:50 lengthL1=static~116:29 lengthL1=stream~0:51,107:-26
lengthL1=submersible~0:-39,68:21,71:38 lengthL1=sucking~0:32 lengthL1=suction~89:46
lengthL1=summer~102:45 lengthL1=surface~0:-25,102:68 lengthL1=take~106:31
lengthL1=tank~0:53,90:43,102:-25,106:-31 lengthL1=tape~0:-35 lengthL1=that~107:35
lengthL1=the~45:-33,50:40,89:50,90:32,101:57,105:15,107:14 lengthL1=thirty~105:22
lengthL1=through~105:34 lengthL1=to~0:-22,50:44,90:32,102:-17,105:74,106:40,107:51
lengthL1=up~0:47,90:-20 lengthL1=us~0:50 lengthL1=v~99:47 lengthL1=valve~0:-24,102:24
lengthL1=water~110:-13 lengthL1=we~107:38 lengthL1=well~102:49,107:28,108:5 lengthL1=wire~50:54
lengthL1=with~102:-30,107:22,108:50 lengthL1=yards~106:32 lengthL1=year~0:42 lengthL1=you~0:45
lengthL1=|~0:48,90:-31,110:-42 lengthL2=(~0:-37,90:31
lengthL2=,~12:43,16:32,69:35,70:46,71:42,90:19,106:-26,108:-42,116:-44
lengthL2=.~7:79,12:37,15:42,50:19,69:58,71:45,89:18,107:38,118:-55
lengthL2=0~0:25,12:36,89:-11,105:57,106:24
lengthL2=1~12:11,18:-33,68:48,70:63,89:25,90:-43,106:21,116:35 lengthL2=2~12:40,69:48,75:36,108:-50
lengthL2=3~75:43,107:46 lengthL2=4~102:-49,107:55
lengthL2=5~18:57,45:-55,90:24,106:48,107:27,113:34,114:27,116:-49 lengthL2=6~50:-47,118:44
lengthL2=7~0:-15,90:-36,105:20,107:25 lengthL2=8~0:7,50:-55 lengthL2=9~0:-21,107:37,108:-46,113:36
lengthL2=:~90:-16,116:94 lengthL2=;~102:-40,110:-34 lengthL2=?~102:73 lengthL2=above~89:8,107:28
lengthL2=acre~18:53 lengthL2=across~0:-55 lengthL2=afternoon~102:53 lengthL2=again~0:9,105:-35
lengthL2=all~0:-55,50:54 lengthL2=am~0:53 lengthL2=apart~12:42 lengthL2=as~0:11
lengthL2=bank~106:36 lengthL2=bar~0:26,90:-48 lengthL2=barn~106:33 lengthL2=basement~106:32
lengthL2=beds~107:37 lengthL2=beef~105:32 lengthL2=been~105:17 lengthL2=behind~106:44
lengthL2=beside~105:-53,107:27 lengthL2=black~0:28,106:-27 lengthL2=blue~0:34
lengthL2=bore~105:-24,116:52,118:43 lengthL2=bore's~71:49,102:-39 lengthL2=bored~110:45
lengthL2=borehole~0:-39,102:57,107:-43,110:51,114:24,118:37 lengthL2=bottom~0:-46
lengthL2=bring~105:34,106:-30 lengthL2=brings~0:31,107:-37 lengthL2=bucket~0:53
lengthL2=buried~0:-44,106:29 lengthL2=by~0:-74,90:39,110:68 lengthL2=cabin~0:54 lengthL2=camp~0:70
lengthL2=casing~0:69 lengthL2=cistern~0:31,102:29,106:-39 lengthL2=clinic~0:33,110:-31
lengthL2=cm~0:-43,12:38,15:39,16:44 lengthL2=comes~99:48 lengthL2=cows~106:-57
lengthL2=creek~0:19,107:-19 lengthL2=cubic~0:44 lengthL2=current~99:48,105:-38 lengthL2=curve~0:23
lengthL2=day~45:43,106:-49 lengthL2=deep~0:-44,105:-37,110:65,118:55 lengthL2=degrees~106:34
lengthL2=delivery~0:33,107:-36 lengthL2=depth~71:40 lengthL2=distance~105:29
lengthL2=does~0:34,90:-33 lengthL2=draws~0:56 lengthL2=drilled~0:-42 lengthL2=driller~107:-34
lengthL2=drip~0:-17,16:39,18:70 lengthL2=drippers~12:55,18:48 lengthL2=drop~0:-52,113:28
lengthL2=dry~0:-34 lengthL2=dug~0:94,89:-30 lengthL2=electric~50:36
lengthL2=electricity~0:-39,107:32 lengthL2=elevated~90:54 lengthL2=elevation~105:26
lengthL2=every~0:-41 lengthL2=fall~106:28 lengthL2=farm~107:-42 lengthL2=fed~105:-44
lengthL2=feet~0:-45,105:62 lengthL2=fills~107:-32 lengthL2=float~102:-44,106:38,118:47
lengthL2=flow~0:54 lengthL2=found~102:33 lengthL2=four~0:-52 lengthL2=from~90:29,107:46,110:-55
lengthL2=ft~0:-52,18:50,90:-34,102:32,110:50,118:-50 lengthL2=gal~102:28,107:34
lengthL2=gallons~0:-34 lengthL2=garden~0:13,107:31 lengthL2=gave~102:-32 lengthL2=gives~106:54
lengthL2=goes~105:45 lengthL2=got~0:106,71:-20,102:-39 lengthL2=gph~12:44
lengthL2=gpm~102:-36,107:54 lengthL2=gravity~106:48 lengthL2=hangs~102:49,107:41
lengthL2=hav~0:57,90:-52 lengthL2=head~0:70 lengthL2=height~105:35 lengthL2=hello~0:66,102:-18
lengthL2=here~110:30 lengthL2=hey~0:33,102:-39 lengthL2=hi~0:10,90:-56 lengthL2=hit~102:34
lengthL2=holds~105:53 lengthL2=hose~107:53 lengthL2=hour~0:51,107:-72 lengthL2=hours~0:55
lengthL2=house~102:-39,105:119,110:-42 lengthL2=how~110:52 lengthL2=hp~0:-29
lengthL2=hundred~71:58,105:27,107:-33 lengthL2=hut~102:-38,105:42 lengthL2=i'm~0:49
lengthL2=i've~0:38 lengthL2=inch~105:3,107:-24,113:36 lengthL2=it's~0:-22,107:38 lengthL2=its~0:47
lengthL2=jet~0:-17 lengthL2=job~102:50 lengthL2=km~106:22,107:-49 lengthL2=l~0:-31,90:-51,107:39
lengthL2=lake~0:-31,102:48 lengthL2=let~0:-41,110:42 lengthL2=level~0:23,107:-41
lengthL2=lid~90:-32 lengthL2=lies~106:48 lengthL2=lift~107:-42 lengthL2=lifts~107:-40
lengthL2=line~0:37 lengthL2=lines~0:-35 lengthL2=litre~107:47 lengthL2=little~105:-43
lengthL2=log~105:51 lengthL2=low~105:-45 lengthL2=lower~0:29,102:-29
lengthL2=m~18:39,45:-66,107:23,110:-33,113:46,114:54,118:18 lengthL2=mains~105:-43
lengthL2=maybe~0:34 lengthL2=mean~0:31,107:-30 lengthL2=metre~0:34
lengthL2=metres~102:50,105:-46,106:67,107:31 lengthL2=milk~0:-49 lengthL2=min~0:-29
lengthL2=minute~90:-27,108:39 lengthL2=minutes~0:-30 lengthL2=mm~0:-43,106:86 lengthL2=morning~0:51
lengthL2=most~0:34,90:-48 lengthL2=need~107:38 lengthL2=never~0:-53,105:-50,106:69,107:33
lengthL2=new~102:29 lengthL2=next~102:-36,107:23 lengthL2=no~0:-39,107:19,110:40
lengthL2=none~105:34 lengthL2=not~107:-23,110:28 lengthL2=old~90:32 lengthL2=one~105:53,106:-58
lengthL2=only~105:36 lengthL2=or~0:-51 lengthL2=other~102:37 lengthL2=over~90:37
lengthL2=pe~106:-47 lengthL2=people~0:92,90:-33 lengthL2=per~107:-44 lengthL2=percent~0:42
lengthL2=phase~99:48 lengthL2=pipe~0:28,106:60,107:71 lengthL2=poly~0:-30,105:26,106:47,107:30
lengthL2=pond~0:42,105:-48 lengthL2=power~0:26,105:-34 lengthL2=pressure~0:-28,90:21
lengthL2=psi~16:36 lengthL2=pump~69:80,71:96,89:47,106:-73 lengthL2=pumped~116:28
lengthL2=put~0:-55 lengthL2=pvc~0:-70,99:47,113:27 lengthL2=quarter~0:-37,102:54
lengthL2=rain~0:-32,90:53 lengthL2=relief~106:34 lengthL2=reservoir~90:72,105:-32
lengthL2=rests~105:-24 lengthL2=right~0:-31 lengthL2=rise~105:58 lengthL2=river~0:43
lengthL2=roof~90:45 lengthL2=rows~12:66 lengthL2=run~0:-35,107:61 lengthL2=s~102:36
lengthL2=said~110:41 lengthL2=says~102:38 lengthL2=sea~0:59,107:-66 lengthL2=sec~106:34
lengthL2=september~0:47,71:-50 lengthL2=set~0:-30,102:49 lengthL2=shallow~0:-32,107:41
lengthL2=shed~105:42 lengthL2=showers~0:40,110:-50 lengthL2=slope~0:53,107:-30 lengthL2=so~0:-69
lengthL2=sorry~0:-28,105:19 lengthL2=source~0:-37 lengthL2=spring~0:45,105:-32,106:62
lengthL2=static~0:-27,102:57,114:25 lengthL2=steel~0:-51,90:38 lengthL2=storage~105:-47
lengthL2=stream~102:-38,105:25 lengthL2=string~102:29 lengthL2=submersible~71:33,102:41
lengthL2=sucking~0:40,89:-32 lengthL2=suction~0:-46,102:45,107:37 lengthL2=sun~107:-32
lengthL2=take~0:31,50:-41 lengthL2=tank~90:79,107:75,110:-33 lengthL2=tape~12:57
lengthL2=ten~107:-44 lengthL2=tent~105:53 lengthL2=test~102:-36,116:59 lengthL2=than~107:19
lengthL2=thanks~105:47 lengthL2=then~118:44 lengthL2=there~0:43,108:26 lengthL2=they~90:-53
lengthL2=thousand~0:41 lengthL2=three~0:-28,107:32,118:43 lengthL2=toilets~0:63,105:-27,110:-34
lengthL2=too~90:19 lengthL2=top~0:56 lengthL2=tower~0:41 lengthL2=trees~0:111,107:-59
lengthL2=trough~106:34 lengthL2=troughs~105:40,118:50 lengthL2=two~107:25 lengthL2=under~0:50
lengthL2=until~107:-35 lengthL2=up~0:-23,90:46,105:45 lengthL2=upper~0:35,105:-47
lengthL2=us~105:39 lengthL2=use~102:-42 lengthL2=v~105:-49 lengthL2=valve~0:-22,106:19
lengthL2=vertical~102:32 lengthL2=w~0:-32,50:63,90:36 lengthL2=want~90:-29,102:-62
lengthL2=was~0:-57,71:58 lengthL2=washer~107:33 lengthL2=water~71:33,102:88,105:-41,116:49
lengthL2=water's~0:25,105:-23 lengthL2=we've~110:55
lengthL2=well~45:-38,102:24,106:-30,110:68,116:47 lengthL2=well's~110:33
lengthL2=wellhead~0:45,90:-51 lengthL2=which~0:34,107:-57 lengthL2=while~0:56,107:-56
lengthL2=will~105:39 lengthL2=would~105:30 lengthL2=wrong~105:30 lengthL2=wrote~0:-33,107:31
lengthL2=yet~106:39 lengthL2=yields~105:43 lengthL2=you~0:17 lengthL2=your~0:57
lengthL2=yurt~105:-34 lengthL2=|~68:62,90:-28,102:-22,118:52
lengthM=cistern~0:-13,45:66,69:52,82:24,89:23,90:-46,105:33,107:45 lengthM=creek~89:57,105:56
lengthM=drip~0:-9,7:85,12:157,15:59,16:128,18:146,102:-19,107:-21,108:-55,110:-20,118:-33
lengthM=pump~0:40,45:31,50:60,68:26,69:47,71:61,75:72,89:49,101:61,102:24,105:82,106:-99,113:44,116:40,118:64
lengthM=roof~0:16,50:47,107:-35
lengthM=spring~45:46,71:-45,101:81,102:-32,105:-46,106:193,107:24,110:-27
lengthM=tank~90:164,106:28,118:-50
lengthM=well~68:43,70:66,71:85,75:-50,89:-28,90:-9,107:61,108:98,110:105,114:57,116:69
lengthN=animals.cattle~106:39 lengthN=animals.goats~0:65 lengthN=drip.crop~0:54
lengthN=drip.dripper~18:65 lengthN=drip.holds~0:43 lengthN=drip.length~0:-52,16:33
lengthN=drip.month~15:66 lengthN=drip.rows~0:-35,12:63,16:-54,18:84
lengthN=drip.spacing~0:-43,12:64,16:67 lengthN=outlets.sink~105:-26,106:55,107:40
lengthN=place.altitude~75:44 lengthN=power.source~0:-37,90:28,102:40,106:35
lengthN=power.voltage~0:-50,50:41 lengthN=pump.placement~90:-59,102:35,105:-83,108:57,110:51
lengthN=pump.present~90:69,105:-35,106:47 lengthN=suction.length~0:24,69:47,89:-55,102:43,105:-31
lengthN=suction.pipe~0:-32,89:177,105:-22,107:-47 lengthN=tank.level~107:41
lengthN=tank.volume~90:40,105:-28 lengthN=use.people~105:47 lengthN=use.troughs~105:76
lengthN=water.kind~45:41,70:11,106:21,107:-53,110:53,118:-47
lengthN=water.level~0:51,71:73,102:-94,105:-55,107:-24,108:52,110:106,118:85
lengthN=water.yield~0:-44,102:68 lengthN=way.climb~106:46,107:145
lengthN=way.length~90:70,105:107,107:72,108:-41,110:-16
lengthN=way.pipe~0:54,89:-79,102:-83,105:28,107:173 lengthN=well.bore~0:-41,110:97
lengthN=well.depth~108:75,110:-24 lengthN=well.tested~116:52,118:28 lengthP=beds.area~16:25
lengthP=drip.crop~16:33 lengthP=drip.dripper~18:99 lengthP=drip.length~7:33,16:71,18:10
lengthP=drip.rows~12:76 lengthP=drip.spacing~12:90,16:51 lengthP=outlets.shower~105:54
lengthP=outlets.sink~105:32 lengthP=outlets.toilet~0:16,105:-24 lengthP=pipes.held~0:34,105:38
lengthP=place.altitude~0:51 lengthP=place.name~45:29 lengthP=power.voltage~0:-36
lengthP=pump.height~102:86,107:-32,113:57
lengthP=pump.placement~0:-66,68:57,70:53,71:110,89:16,90:-51,102:69,106:-35
lengthP=store.fills~0:49,107:-49 lengthP=store.volume~105:38,106:-42
lengthP=suction.length~0:28,89:-34 lengthP=suction.pipe~0:-31,89:87,102:37,107:-23
lengthP=tank.level~107:63 lengthP=tank.volume~90:147,102:-61,105:-94 lengthP=use.people~45:55
lengthP=use.troughs~105:41,107:42
lengthP=water.kind~45:-39,90:-46,101:45,102:45,106:62,108:35,110:128
lengthP=water.level~71:47,102:89 lengthP=water.yield~0:-86,90:-38,102:26,105:37,106:43
lengthP=way.climb~0:33,105:-31,107:108
lengthP=way.length~0:70,90:-52,102:-49,105:121,106:98,108:-44,110:-41
lengthP=way.pipe~102:-53,105:79,106:77,107:133,110:-45 lengthP=well.bore~107:-36,110:56,118:60
lengthP=well.depth~0:-57,71:40,102:68,107:-38,108:81,118:66
lengthP=well.static~0:-39,102:54,114:29,116:46,118:-19 lengthP=well.tested~0:-34,102:-24,116:78
lengthR0=,~0:-40,12:32,16:48,71:31,110:43
lengthR0=.~12:48,16:72,45:49,50:22,71:20,75:48,102:12,107:34,108:43,110:19 lengthR0=0~107:23
lengthR0=1~89:42 lengthR0=2~105:-60,107:30 lengthR0=3~89:44 lengthR0=4~90:-33,107:42
lengthR0=9~107:32,108:35 lengthR0=:~0:-34,107:32 lengthR0=?~0:22 lengthR0=a~0:-41,15:33,71:30
lengthR0=above~70:55,71:-35,90:58,101:50,102:33,105:63,107:-40 lengthR0=according~110:57
lengthR0=across~0:29,68:49,108:29,110:-29 lengthR0=all~0:59 lengthR0=altitude~45:35
lengthR0=an~0:30,107:-53 lengthR0=and~110:41 lengthR0=apart~16:34,18:23
lengthR0=at~0:-40,18:45,71:-41,116:47 lengthR0=august~102:38 lengthR0=away~105:-38,107:66
lengthR0=barn~106:27 lengthR0=below~102:43,105:42,106:26,107:-36,110:-29,118:22
lengthR0=between~16:59 lengthR0=blue~0:30 lengthR0=bore~0:-28,108:42 lengthR0=borehole~110:26
lengthR0=bottom~107:-25,110:53 lengthR0=but~0:43 lengthR0=cabin~106:35 lengthR0=cable~50:94,107:-33
lengthR0=casing~108:57,110:-28 lengthR0=climb~105:47 lengthR0=copper~0:33
lengthR0=creek~102:45,105:53 lengthR0=day~15:71 lengthR0=deep~0:54,82:43,102:-23,107:-34,110:92
lengthR0=depth~110:39 lengthR0=diameter~108:50 lengthR0=down~0:57,71:80,102:55,106:-18
lengthR0=downhill~106:39 lengthR0=drop~106:36,113:48 lengthR0=elevation~45:34
lengthR0=emitter~18:29 lengthR0=fall~106:68 lengthR0=fence~0:48 lengthR0=floor~0:31,90:-35
lengthR0=for~0:44 lengthR0=from~102:37,107:44 lengthR0=full~82:41 lengthR0=ground~70:47,105:-38
lengthR0=hangs~0:31,102:-36 lengthR0=have~0:31 lengthR0=height~0:-41,90:54,105:67
lengthR0=high~0:31 lengthR0=higher~90:38,105:50 lengthR0=hill~105:41 lengthR0=hose~89:51
lengthR0=house~0:6,99:47,107:16 lengthR0=hung~102:27 lengthR0=in~15:33,68:64,71:32,102:44,105:45
lengthR0=inch~89:17 lengthR0=inside~108:50 lengthR0=is~0:15,90:-33,106:20
lengthR0=it~0:-26,68:61,102:28 lengthR0=just~0:45 lengthR0=kitchen~90:37
lengthR0=lift~0:-41,102:75,105:54 lengthR0=lines~12:32 lengthR0=long~12:41,89:46
lengthR0=lower~106:52 lengthR0=lowest~110:29 lengthR0=maybe~105:-27,107:25 lengthR0=not~102:38
lengthR0=of~50:59,89:86,90:-38,102:-41,107:36,110:-24,113:51 lengthR0=off~107:58
lengthR0=one~0:36,107:-41 lengthR0=only~0:35 lengthR0=over~90:45,109:47 lengthR0=panels~0:48,50:-48
lengthR0=pe~0:62 lengthR0=people~102:-25 lengthR0=per~75:26 lengthR0=pex~0:34
lengthR0=pipe~0:34,107:31,113:31 lengthR0=poly~0:25 lengthR0=pump~90:-25,101:73,110:13
lengthR0=pumphouse~0:57 lengthR0=pushes~0:43 lengthR0=pvc~0:49 lengthR0=q~0:36 lengthR0=ridge~0:30
lengthR0=rise~105:71 lengthR0=river~102:23 lengthR0=rows~0:-30,16:79 lengthR0=sea~45:57
lengthR0=shed~0:42 lengthR0=spring~0:32,106:53 lengthR0=standing~110:29 lengthR0=static~110:21
lengthR0=stream~105:24 lengthR0=submersible~0:-29,68:56 lengthR0=suction~0:-16,89:55,102:33
lengthR0=surface~102:25 lengthR0=tank~0:-16,90:47 lengthR0=than~106:17
lengthR0=the~101:10,105:45,106:33,107:20,109:37,118:85 lengthR0=then~0:44 lengthR0=through~0:-33
lengthR0=to~18:28,90:55,107:31,110:67 lengthR0=top~106:-35 lengthR0=total~0:-29,102:34,107:18
lengthR0=two~107:29 lengthR0=up~90:33,105:36 lengthR0=uphill~0:-42,105:65 lengthR0=upwards~105:44
lengthR0=water~0:37,102:98,105:-28,107:-37 lengthR0=we~0:39 lengthR0=well~107:36,110:52
lengthR0=when~0:-67,82:56,102:-51,116:39 lengthR0=wide~0:12 lengthR0=wire~0:33,50:34,107:-33
lengthR0=with~107:-27,110:76 lengthR0=yield~110:56 lengthR0=yields~102:18 lengthR0=you~107:27
lengthR0=|~105:50 lengthR1=,~71:-19,90:42,110:48,113:40 lengthR1=.~18:53,45:26,89:72,90:45,109:46
lengthR1=0~7:55,102:38,106:61,107:-16 lengthR1=1~0:-27,107:34,110:30 lengthR1=2~102:43
lengthR1=3~0:-19,12:43,106:14 lengthR1=4~102:-35,105:67,107:-18,113:44 lengthR1=5~68:51,110:38
lengthR1=6~0:-71,102:-31,118:32 lengthR1=7~90:-31,106:-34,110:20 lengthR1=8~0:20,102:-45,105:35
lengthR1=9~102:-46,105:24,118:50 lengthR1=;~107:25 lengthR1=?~105:53 lengthR1=a~105:18
lengthR1=about~0:38 lengthR1=across~110:40 lengthR1=after~0:29 lengthR1=and~45:-52,102:28,107:17
lengthR1=around~0:58 lengthR1=at~50:-33,70:70,110:45 lengthR1=borehole~0:-38,109:22
lengthR1=bottom~0:37 lengthR1=by~90:27 lengthR1=cabin~107:19 lengthR1=centrifugal~0:39
lengthR1=climbs~105:29 lengthR1=copper~0:-20 lengthR1=cottage~106:66 lengthR1=deep~0:25,110:-30
lengthR1=down~105:-25,106:32 lengthR1=draws~99:48 lengthR1=drop~113:25 lengthR1=feet~0:21
lengthR1=filled~0:34,106:-52 lengthR1=foot~0:61,102:-35 lengthR1=from~0:-20
lengthR1=ft~0:32,102:-33 lengthR1=garden~105:38 lengthR1=generator~0:50,107:-36 lengthR1=got~0:58
lengthR1=gpm~0:-27,102:49,110:23 lengthR1=ground~0:26 lengthR1=h~102:32 lengthR1=hangs~0:-34
lengthR1=have~102:-38 lengthR1=head~0:32 lengthR1=height~107:38 lengthR1=higher~110:26
lengthR1=house~0:-44,90:30,105:62 lengthR1=i~105:-35,107:47 lengthR1=in~0:-13,89:33,107:26,110:43
lengthR1=inside~110:48 lengthR1=is~105:-38,106:-33,108:58,113:53
lengthR1=it~90:47,99:46,106:-13,118:56 lengthR1=july~15:40 lengthR1=kids~106:37
lengthR1=kitchen~0:-54,106:41,107:30 lengthR1=line~16:39 lengthR1=log~0:43 lengthR1=low~102:45
lengthR1=m~0:-45,106:-40,108:51,118:19 lengthR1=may~99:48 lengthR1=measured~0:35 lengthR1=mesh~0:34
lengthR1=mm~89:23,106:-38,107:50 lengthR1=my~0:17 lengthR1=no~0:33,106:-17
lengthR1=of~69:50,71:-43,107:-47,110:16 lengthR1=off~105:25 lengthR1=on~107:35 lengthR1=one~106:47
lengthR1=panels~0:-29 lengthR1=path~105:31 lengthR1=pe~105:-26,107:5 lengthR1=people~0:-42
lengthR1=pipe~0:41 lengthR1=plastic~89:-29 lengthR1=plus~107:20 lengthR1=polyethylene~0:28
lengthR1=pump~89:29,106:-32 lengthR1=pvc~107:36 lengthR1=runs~102:-29,116:24
lengthR1=shower~0:67,102:-33 lengthR1=slope~105:69,106:-23 lengthR1=solar~0:-23
lengthR1=string~0:43 lengthR1=submersible~0:-34 lengthR1=suction~0:-16,69:48,89:17
lengthR1=summer~0:-34,102:61 lengthR1=tank~0:41 lengthR1=that~110:36
lengthR1=the~0:-30,89:62,90:32,102:-42,105:25,106:32,110:16 lengthR1=then~105:-28
lengthR1=there~0:53 lengthR1=through~0:38 lengthR1=to~105:36 lengthR1=told~107:-31
lengthR1=top~90:34 lengthR1=trailer~0:98 lengthR1=trough~0:38 lengthR1=two~0:-35
lengthR1=up~102:52,107:58 lengthR1=uphill~0:40,107:-34 lengthR1=us~0:39 lengthR1=want~90:52
lengthR1=water~0:-55,110:25 lengthR1=we~0:54,102:-31,105:-34 lengthR1=well~102:46,106:61
lengthR1=when~0:26 lengthR1=where~90:-41,102:36 lengthR1=which~0:63,102:-47 lengthR1=wife~0:29
lengthR1=wire~50:48 lengthR1=|~50:52 lengthR2=(~0:67
lengthR2=,~12:18,50:49,70:36,89:56,90:-31,105:-32,106:-34,107:21
lengthR2=.~0:35,18:51,50:37,90:37,107:44,113:38 lengthR2=0~16:58,71:27,75:32,89:39,90:40,116:16
lengthR2=1~0:-25,16:32,50:-39,69:54,101:71
lengthR2=2~0:37,50:-42,71:53,90:21,102:43,105:-32,106:69,107:31,118:-80
lengthR2=3~0:38,50:47,106:35,107:-31,118:36 lengthR2=4~102:84,107:-22,108:14
lengthR2=5~0:-51,105:35 lengthR2=6~71:-27,89:-45,106:-33,109:22,110:35
lengthR2=7~102:-27,105:29,107:-30,118:32 lengthR2=8~0:-45,71:-52,102:31,106:-59,118:37
lengthR2=9~105:-17 lengthR2=?~0:22 lengthR2=above~107:40 lengthR2=air~0:-43,99:48
lengthR2=away~90:35 lengthR2=bank~107:26 lengthR2=barn~0:24 lengthR2=bathroom~105:37,107:-46
lengthR2=below~106:33,110:47 lengthR2=beside~0:36,105:34,110:-58 lengthR2=buried~0:-30,107:26
lengthR2=but~0:18 lengthR2=climb~0:34 lengthR2=cm~0:-43,7:53 lengthR2=comes~0:-38,105:44
lengthR2=deep~0:-31,108:54 lengthR2=driller~0:63,118:-38 lengthR2=drip~90:45 lengthR2=dropped~0:60
lengthR2=end~0:57,110:-31 lengthR2=feet~0:23 lengthR2=fills~90:27 lengthR2=first~90:-32,105:35
lengthR2=foot~0:46,89:41 lengthR2=four~0:-29 lengthR2=from~71:58,105:-29,107:52
lengthR2=ft~102:47,110:-78 lengthR2=gallons~0:-39,102:37 lengthR2=go~0:28,102:-48
lengthR2=goes~0:58,107:-31 lengthR2=gpm~118:46 lengthR2=grid~106:30 lengthR2=h~0:57
lengthR2=hangs~0:-30,118:44 lengthR2=height~0:33 lengthR2=higher~107:38 lengthR2=his~0:32
lengthR2=hose~0:28 lengthR2=house~0:-42,102:38,106:61,107:-50 lengthR2=how~0:-28,90:38
lengthR2=hp~0:37,107:-36 lengthR2=hundred~105:33 lengthR2=hung~110:35 lengthR2=inch~0:-40
lengthR2=it's~105:37 lengthR2=l~0:-62,105:46 lengthR2=line~105:-48,106:44,107:18
lengthR2=lines~0:36 lengthR2=liter~0:70,105:-37 lengthR2=liters~0:75,90:-27 lengthR2=litres~0:-41
lengthR2=long~102:47 lengthR2=lower~0:45 lengthR2=m~0:-20,71:54,106:13,109:17,116:51
lengthR2=mail~0:33,90:-32 lengthR2=meter~0:51,90:-48 lengthR2=metres~102:-23,106:50
lengthR2=mm~0:28,71:-41,90:59,105:-36 lengthR2=motor~0:33,107:-52 lengthR2=must~105:49
lengthR2=never~0:-34 lengthR2=new~0:83 lengthR2=no~105:35 lengthR2=off~0:-34 lengthR2=one~107:49
lengthR2=other~0:40 lengthR2=out~0:-28 lengthR2=over~114:47 lengthR2=people~0:-38,102:44
lengthR2=per~0:-29,102:50,118:-34 lengthR2=persons~0:49 lengthR2=pipe~0:-7,105:44,113:48
lengthR2=poly~102:-33,105:21 lengthR2=polyethylene~106:25 lengthR2=power~107:47
lengthR2=pressure~0:-46 lengthR2=pump~71:-45,90:23,106:-59,107:-52,108:46,110:22
lengthR2=pvc~0:23,102:-30 lengthR2=run~106:52 lengthR2=runs~71:-34 lengthR2=said~0:37,102:-31
lengthR2=set~102:38,107:-26 lengthR2=shower~0:32,105:-19,107:57 lengthR2=shut~0:47
lengthR2=since~0:40,107:-37 lengthR2=sink~0:28,105:-57,107:27 lengthR2=sits~0:46,110:-57
lengthR2=so~0:45 lengthR2=solar~102:-26 lengthR2=stand~0:46 lengthR2=stream~0:130,105:-27
lengthR2=submersible~0:-29,102:38 lengthR2=suction~70:50 lengthR2=summer~102:-23
lengthR2=tank~0:100,90:-39,102:33,107:-18 lengthR2=there~0:-37 lengthR2=there's~0:49
lengthR2=toilets~107:34 lengthR2=top~102:37 lengthR2=two~0:-57 lengthR2=under~0:-38
lengthR2=us~106:27 lengthR2=v~0:-35,107:33 lengthR2=valve~0:60 lengthR2=was~0:55
lengthR2=washing~102:43 lengthR2=water~0:-70,71:-40,75:34,107:-33,108:55,110:24,114:67
lengthR2=well~0:42,110:-42 lengthR2=when~102:-30,118:41 lengthR2=which~0:61 lengthR2=will~0:41
lengthR2=winter~0:41 lengthR2=would~105:38 lengthR2=yield~102:36 lengthR2=|~0:84,90:45,107:-48
lengthS=abou~102:57,106:45 lengthS=abov~45:38,90:62,105:-37,107:101 lengthS=afte~102:25
lengthS=alti~45:72 lengthS=apar~12:47 lengthS=augu~102:29 lengthS=barr~90:36
lengthS=base~0:45,105:-28,106:32 lengthS=befo~118:67 lengthS=behi~106:44 lengthS=belo~71:-30
lengthS=besi~0:49 lengthS=betw~107:82 lengthS=blac~0:52,106:-49
lengthS=bore~0:-92,71:89,105:-27,110:83,118:18 lengthS=bott~71:-44,110:55
lengthS=brin~105:60,106:-30,107:35 lengthS=cabi~0:-36,45:38,90:-49,106:51,107:32
lengthS=cabl~50:190,107:-60 lengthS=case~0:-39,108:53 lengthS=casi~108:34,113:27 lengthS=char~0:42
lengthS=cist~82:26,90:-36 lengthS=clim~0:-43,105:187,107:-70 lengthS=come~0:47,102:-31,106:45
lengthS=comp~0:-39 lengthS=copp~107:60 lengthS=corr~0:-40 lengthS=cott~105:49 lengthS=coul~0:15
lengthS=cree~90:49,102:55 lengthS=curv~0:71 lengthS=deli~0:37
lengthS=dept~0:42,71:74,102:-29,110:55 lengthS=diam~0:-59,7:21,68:59,108:52
lengthS=diff~0:-58,106:63 lengthS=dist~107:51 lengthS=draw~0:-22,89:55,102:113
lengthS=dril~71:57,107:-58,110:80 lengthS=drip~18:142 lengthS=drop~105:-48,106:99
lengthS=dyna~102:32 lengthS=elec~50:35 lengthS=elev~0:-33,45:106,105:19,107:-38 lengthS=emit~18:26
lengthS=ever~0:-25,16:42,18:41 lengthS=fall~105:-41,106:76,107:-32,110:-34 lengthS=fiel~106:49
lengthS=fill~90:36 lengthS=firs~0:49 lengthS=floa~105:46 lengthS=floo~0:-64,101:49,102:-46,105:9
lengthS=foun~102:29 lengthS=g'da~102:-28 lengthS=gall~90:78,105:-47 lengthS=gard~107:46
lengthS=gran~110:49 lengthS=grou~0:-57 lengthS=hang~71:55,102:-44,110:27,114:66 lengthS=head~90:54
lengthS=heig~90:32,105:65,107:-28 lengthS=high~105:41,107:48
lengthS=hous~71:-20,102:-36,105:86,106:102,107:89,110:-41 lengthS=hund~0:22,102:-27,105:42
lengthS=inch~0:48 lengthS=insi~7:48 lengthS=inst~71:39
lengthS=inta~0:-42,89:51,105:-32,106:37,114:73 lengthS=kitc~0:-30,105:47,107:41 lengthS=knol~0:34
lengthS=late~12:60 lengthS=layf~107:28 lengthS=leng~107:49
lengthS=leve~71:-39,101:22,102:78,110:-41,116:65,118:67 lengthS=lift~105:52,107:-39
lengthS=line~7:38,12:77 lengthS=litr~0:-52,90:76 lengthS=litt~105:-39 lengthS=lodg~105:-16,106:29
lengthS=long~12:41 lengthS=lowe~71:48,102:69,107:41 lengthS=make~0:63,107:-39
lengthS=mete~102:36,106:-25 lengthS=metr~90:-44,107:34 lengthS=near~0:32 lengthS=need~75:49
lengthS=neig~0:79 lengthS=npsh~75:78 lengthS=othe~0:54,110:-39 lengthS=outs~68:35
lengthS=pace~107:33 lengthS=pane~0:25,50:39,107:-49 lengthS=pape~107:31 lengthS=peop~0:37
lengthS=perf~0:27,71:-46 lengthS=peri~0:51 lengthS=plac~0:-48 lengthS=plan~106:31
lengthS=plea~109:22 lengthS=powe~0:40,107:-39 lengthS=pres~90:-40 lengthS=pull~0:-36,102:62
lengthS=pump~0:-41,71:41,102:33,110:-32,116:60 lengthS=push~0:-26,90:50 lengthS=ques~102:45
lengthS=rate~0:19 lengthS=requ~75:61 lengthS=rese~90:94,105:-36 lengthS=rest~0:-46,102:-41,118:74
lengthS=ring~0:-34,108:42 lengthS=rise~105:71 lengthS=rive~102:32 lengthS=sche~107:52
lengthS=seas~102:50 lengthS=seco~0:34 lengthS=sens~0:35 lengthS=sett~71:19 lengthS=show~105:60
lengthS=smal~0:-28 lengthS=sola~0:26,102:-36 lengthS=some~0:64 lengthS=sorr~0:-72,107:48
lengthS=sour~110:-34 lengthS=spac~18:58 lengthS=spri~0:-47,90:-38,101:66,105:35,106:42,107:37
lengthS=stab~106:26 lengthS=stan~0:-75,90:73,102:31,106:-34,107:43,110:-34,118:77
lengthS=stat~0:-47,102:48,110:-33,118:124 lengthS=stop~0:49 lengthS=stre~0:27,102:60
lengthS=stri~0:-21,102:35 lengthS=subm~0:25,68:44,71:102,102:-44 lengthS=suck~0:34
lengthS=suct~89:157,102:83,105:-37 lengthS=summ~0:34,102:34 lengthS=surf~102:65 lengthS=that~105:30
lengthS=ther~90:-52,107:40 lengthS=thin~0:19 lengthS=thir~105:22 lengthS=thou~0:37
lengthS=thre~0:-55 lengthS=thro~89:35 lengthS=todd~0:37 lengthS=towe~90:53 lengthS=tree~0:31
lengthS=tren~0:57 lengthS=trou~0:-40,105:25,106:60 lengthS=tubi~12:62 lengthS=unti~107:-39
lengthS=uphi~105:55 lengthS=upst~105:44 lengthS=vert~102:32 lengthS=vill~90:17 lengthS=walk~0:-34
lengthS=wate~0:-30,50:-45,71:-25,82:54,101:48,102:148,110:-34,116:26,118:66
lengthS=well~102:-33,110:32 lengthS=whic~105:54 lengthS=with~102:33 lengthS=work~0:29
lengthS=woul~105:29 lengthS=yard~105:-22,106:37
lengthT=beds.area~0:-27,7:75,12:103,15:39,16:99,18:64,71:44,118:-38 lengthT=power.amps~0:37
lengthT=power.battery~106:-46 lengthT=power.cable~0:-53,45:39,50:-38,71:43
lengthT=power.capacity~90:-54,105:34 lengthT=power.controller~71:28,110:-36
lengthT=power.facing~105:25,107:-28 lengthT=power.limit~0:-28,50:29
lengthT=power.open_voltage~107:-50 lengthT=power.panel~50:44,90:36,106:-9
lengthT=power.series~50:42,105:-40,107:-29 lengthT=power.source~50:89,71:44,90:50,105:53,106:-26
lengthT=power.strings~0:-45,50:24,90:46,105:-56 lengthT=power.tilt~45:16,107:-19
lengthT=power.voltage~0:-21,50:84,69:53,105:20,106:-94,107:51
lengthT=pump.control~0:17,75:43,89:62,90:-67,118:43 lengthT=pump.controller~0:33
lengthT=pump.count~75:78,105:29 lengthT=pump.cut_in~71:32,90:-45,102:38
lengthT=pump.cut_out~0:30,69:39,71:20,90:-60 lengthT=pump.diameter~107:-28,113:50
lengthT=pump.dry_run~110:60,113:46,118:70
lengthT=pump.height~50:33,68:48,71:-157,89:-53,90:28,102:37,107:-45,108:33,110:66,116:27,118:62
lengthT=pump.most_flow~102:69,105:-53
lengthT=pump.placement~0:24,45:30,68:62,69:21,70:54,75:35,89:31,102:23,106:-43,110:-73
lengthT=pump.present~45:47,90:26,102:-57,105:-154,106:189,107:34,110:-48
lengthT=pump.relief~0:27,105:-45 lengthT=pump.set~0:-25,70:66,75:32,90:-46,106:-41
lengthT=pump.works~0:28,69:69,105:-27,107:-52 lengthT=store.days~90:26,110:-49,118:-45
lengthT=store.depth~0:65,90:48,107:-36 lengthT=store.fills~90:24 lengthT=store.hours~106:-50
lengthT=store.reserve~0:-40 lengthT=store.volume~16:30,45:27,71:-52,105:72,106:-22,107:43,110:-30
lengthT=tank.level~0:78,45:38,90:-155,102:99,105:-48,106:-80,107:98,110:27
lengthT=tank.volume~45:32,68:52,90:102,105:-54,106:-87,107:31,110:-34
lengthT=water.kind~45:38,68:53,90:-32,102:37,105:62,106:79,108:69,110:51,113:28,114:60,116:58,118:110
lengthT=water.level~45:32,50:36,68:13,69:67,70:74,71:66,75:65,89:83,102:-221,106:-39,107:25,108:101,110:64,116:-55,118:-56
lengthT=water.temperature~0:-26,75:63,102:-47,110:37
lengthT=water.yield~0:28,16:35,45:31,89:-46,106:3
lengthT=way.climb~0:85,45:31,71:64,75:30,89:51,90:-134,102:90,105:-242,106:-143,107:153,110:31
lengthT=way.length~0:54,45:66,70:56,90:56,102:27,105:144,106:92,107:-357,110:44
lengthT=way.pipe~50:-43,89:-71,90:34,105:46,106:101,107:119,110:-41,118:60
lengthT=well.bore~68:99,90:-48,102:3,107:-44,108:-172,110:110,113:24,114:129,116:41,118:95
lengthT=well.cover~114:33
lengthT=well.depth~0:33,50:44,68:39,70:52,71:53,106:-32,107:41,108:94,109:62,110:-238,113:62,114:16,116:59,118:90
lengthT=well.drop_pipe~68:59,105:-47 lengthT=well.intake~118:39 lengthT=well.known~114:42
lengthT=well.pumped_for~114:38 lengthT=well.pumping~102:-64,107:-49,116:-53,118:123
lengthT=well.rate~114:41
lengthT=well.static~0:-51,68:53,106:-26,108:57,110:24,113:33,114:50,116:100,118:-81
lengthT=well.steady~118:58 lengthT=well.tested~0:-37,102:-50,110:-42,113:43,116:124,118:95
lengtha=~0:-30,102:53,107:68 lengtha=,_1~107:-44 lengtha=,_2~0:-33 lengtha=,_3~107:-34
lengtha=,_in~102:27 lengtha=,_lowest~0:52 lengtha=,_pump~102:38 lengtha=,_so~110:34
lengtha=,_the~0:-29,106:43 lengtha=,_up~107:28 lengtha=,_water~102:-55
lengtha=.~0:88,102:39,105:71,106:-25,107:48,110:31 lengtha=._1~102:43 lengtha=._2~0:39,102:-30
lengtha=._a~0:39,107:-40 lengtha=._it~0:55,71:-47 lengtha=._pipe~0:-48 lengtha=._pump~0:53
lengtha=._static~110:26 lengtha=._the~0:-51,50:26,110:29 lengtha=?~0:31 lengtha=a_day~15:34
lengtha=above_it~0:-38,102:50,105:77,106:-15 lengtha=above_sea~45:46
lengtha=above_the~0:95,90:43,101:43,102:31,105:-37,107:-29 lengtha=across_,~0:64,108:-27
lengtha=across_.~108:27 lengtha=and_the~0:-35,107:-40 lengtha=apart_.~16:55
lengtha=away_,~0:-25,107:59 lengtha=away_.~0:38,107:24 lengtha=away_and~107:25
lengtha=below_ground~0:37,71:40 lengtha=below_it~105:-56,106:69
lengtha=below_the~102:32,105:44,118:48 lengtha=below_us~105:53 lengtha=casing_.~0:-23,108:32
lengtha=deep_,~110:23 lengtha=deep_.~110:21 lengtha=deep_when~82:42 lengtha=down_,~71:55,102:22
lengtha=down_.~71:21 lengtha=down_to~0:60 lengtha=from_the~0:94 lengtha=higher_than~0:57
lengtha=in_a~71:43 lengtha=in_all~0:32 lengtha=in_my~102:29 lengtha=inside_.~108:25
lengtha=long_,~107:34 lengtha=lower_,~105:29 lengtha=lower_.~0:34,105:-71,106:43
lengtha=lower_down~105:19 lengtha=lower_than~0:-48 lengtha=of_1~105:-31,107:62 lengtha=of_2~107:30
lengtha=of_cable~50:54 lengtha=of_drop~113:35 lengtha=of_fall~106:34 lengtha=of_height~105:36
lengtha=of_lift~0:-22,102:42,105:57 lengtha=of_rise~105:52 lengtha=of_suction~89:37
lengtha=of_wire~50:46 lengtha=off_.~107:31 lengtha=off_the~0:52 lengtha=on_the~0:-40
lengtha=over_4~0:38 lengtha=over_the~105:-46,109:49 lengtha=rows_,~16:36 lengtha=suction_.~102:35
lengtha=to_house~107:34 lengtha=to_the~102:-26,105:28,107:33,110:43 lengtha=to_water~102:58
lengtha=under_the~0:-32,105:49 lengtha=up_.~105:56 lengtha=up_the~105:33 lengtha=up_to~107:34
lengtha=uphill_of~106:36 lengthb=~45:44,50:15 lengthb=,_about~102:-34 lengthb=,_at~0:43
lengthb=,_buried~0:44 lengthb=,_climbing~105:45 lengthb=,_intake~114:34 lengthb=,_level~102:32
lengthb=,_pump~71:37 lengthb=,_rows~16:77 lengthb=,_static~118:28 lengthb=,_swl~118:49
lengthb=,_up~105:17 lengthb=,_uphill~105:27 lengthb=,_water~82:45 lengthb=,_well~110:43
lengthb=._distance~0:46,107:-36 lengthb=._level~102:42 lengthb=._static~118:30 lengthb=?_|~0:-34
lengthb=a~50:36 lengthb=a_house~105:29 lengthb=a_spring~105:48 lengthb=a_tank~90:28
lengthb=away_and~105:54 lengthb=barn_is~0:-44 lengthb=bore~110:30 lengthb=bottom_at~110:29
lengthb=box_is~0:35 lengthb=call_it~0:-38 lengthb=casing_is~108:25 lengthb=cellar_is~0:19
lengthb=copper_,~107:35 lengthb=creek_is~102:35,105:-43 lengthb=down_to~102:40,116:32
lengthb=drop_pipe~113:57 lengthb=dry_lift~69:46 lengthb=each_line~12:30 lengthb=falls_to~116:23
lengthb=from_there~0:26 lengthb=ft_of~0:41 lengthb=gal_tank~0:36 lengthb=gpm_at~0:56
lengthb=h_at~0:54 lengthb=hill_,~106:47 lengthb=hole_of~110:46 lengthb=hose_is~89:48
lengthb=house_:~105:21 lengthb=house_and~0:38,105:-78,106:45 lengthb=house_are~0:42,107:-31
lengthb=house_is~0:30,90:49,106:-61 lengthb=house_lies~105:-31 lengthb=house_stands~0:-32,106:25
lengthb=hut_,~45:44 lengthb=i_have~107:33 lengthb=in_a~108:53,110:37 lengthb=inch_,~113:29
lengthb=inside_diameter~7:23 lengthb=intake_at~114:32 lengthb=intake_is~106:44
lengthb=is_about~107:57 lengthb=is_at~118:24 lengthb=is_to~107:-39 lengthb=it_goes~105:31
lengthb=it_is~90:-64,105:30,110:41 lengthb=it_stands~0:37 lengthb=it_to~71:40 lengthb=l_min~0:40
lengthb=level_is~0:53 lengthb=level_of~118:59 lengthb=lift_is~89:-32,102:60 lengthb=line_is~107:35
lengthb=lines_are~12:38 lengthb=lowered_to~71:32 lengthb=m_,~105:31 lengthb=m_of~0:41
lengthb=no_,~102:38 lengthb=on_a~90:57 lengthb=outside_diameter~68:35 lengthb=pond_,~102:23
lengthb=pump_at~71:84,102:-33 lengthb=pump_is~50:33 lengthb=pump_it's~107:26
lengthb=pumphouse_is~0:21 lengthb=pumping_level~116:48 lengthb=push_water~0:44
lengthb=required_is~75:25 lengthb=rise_is~105:38 lengthb=rise_of~105:28 lengthb=rows_are~16:40
lengthb=run_is~0:-37 lengthb=set_at~71:20 lengthb=shed_is~0:24 lengthb=sorry_,~102:29
lengthb=spring_is~106:30 lengthb=spring_lies~105:48,106:-27 lengthb=standing_level~102:40
lengthb=standing_water~118:38 lengthb=static_level~0:64 lengthb=submersible_at~71:22
lengthb=tank_is~0:38,90:34,105:-22 lengthb=tank_it's~107:42 lengthb=the_bank~102:50
lengthb=the_house~105:-25,107:40 lengthb=up_and~107:51 lengthb=up_to~0:69 lengthb=water_:~102:47
lengthb=water_at~102:27 lengthb=water_is~0:-39,102:51 lengthb=water_level~101:30,102:-58,118:35
lengthb=we_are~99:47 lengthb=we_have~0:47,107:-46 lengthb=well_,~0:63,106:42
lengthb=well_and~0:-28,105:36 lengthb=well_at~71:53 lengthb=well_is~0:21,102:-21
lengthb=well_it's~107:20 lengthb=yard_is~106:47 lengthb=|_pump~68:39 lengthb=|_suction~0:34
lengthl0=,~45:36,70:67,89:30,107:24,118:-44 lengthl0=.~18:29 lengthl0=:~89:30,90:33,105:48,110:36
lengthl0=a~50:31,102:-33,108:34,110:48 lengthl0=altitude~45:48 lengthl0=and~0:19,102:-30,105:49
lengthl0=at~0:38,12:-31,16:42,45:61,71:92,102:64,105:-43,107:-51,110:-31,114:36
lengthl0=bank~102:50 lengthl0=bore~110:37 lengthl0=borehole~110:20 lengthl0=buried~0:80
lengthl0=by~0:7 lengthl0=cable~50:58 lengthl0=climb~105:18 lengthl0=climbing~105:45
lengthl0=climbs~105:45 lengthl0=diameter~7:22,68:61 lengthl0=distance~0:43,107:-33
lengthl0=down~71:38 lengthl0=drippers~18:42 lengthl0=drops~0:38,105:-30,106:55 lengthl0=each~18:62
lengthl0=elevation~45:21 lengthl0=ends~0:36 lengthl0=every~0:-34,12:-25,16:25,18:67
lengthl0=falls~90:30,102:-48,105:-27,106:59 lengthl0=for~107:31 lengthl0=from~71:34,102:35
lengthl0=has~113:25 lengthl0=head~0:35 lengthl0=height~105:39 lengthl0=house~0:-42,107:74
lengthl0=in~0:33 lengthl0=intake~114:33 lengthl0=is~0:36,15:45,50:22,71:-28,105:22,107:25,108:37
lengthl0=it~107:26 lengthl0=it's~90:-44,110:31 lengthl0=level~101:27,110:-17,116:38
lengthl0=lies~105:54 lengthl0=lift~0:23,69:42,90:59 lengthl0=line~12:57 lengthl0=lines~12:60
lengthl0=makes~0:40 lengthl0=min~0:40 lengthl0=npshr~75:78 lengthl0=of~12:47,90:33,110:29
lengthl0=on~102:-47,113:40 lengthl0=only~107:43 lengthl0=over~107:34 lengthl0=pipe~113:52
lengthl0=pump~68:49,71:41 lengthl0=pvc~0:25 lengthl0=rise~105:42 lengthl0=rises~105:68
lengthl0=row~16:64 lengthl0=rows~16:92,18:-51 lengthl0=run~12:29 lengthl0=says~110:57
lengthl0=set~71:42 lengthl0=spring~106:54 lengthl0=stands~0:-41,90:25 lengthl0=static~118:61
lengthl0=suction~0:32 lengthl0=surface~0:38 lengthl0=swl~102:38,118:64
lengthl0=tank~0:38,90:22,105:-44 lengthl0=tap~105:35 lengthl0=the~0:112,107:-40 lengthl0=there~0:26
lengthl0=through~89:40 lengthl0=to~71:35,102:44,105:-34,107:-84,110:10,116:26 lengthl0=toilets~0:34
lengthl0=up~105:54,107:-38 lengthl0=uphill~105:32 lengthl0=water~82:67,101:44 lengthl0=well~110:20
lengthl0=well's~110:29 lengthl0=with~0:-30 lengthl0=within~102:33 lengthl0=|~0:-41
lengthl1=,~0:-60,82:41,105:46 lengthl1=.~45:29,90:-29 lengthl1=0~15:47 lengthl1=1~0:50
lengthl1=2~0:43 lengthl1=3~90:45 lengthl1=4~0:37 lengthl1=;~105:53 lengthl1=?~0:-35
lengthl1=a~105:30,107:41 lengthl1=and~0:-49,90:46,102:-34,106:45 lengthl1=are~45:33
lengthl1=be~105:32 lengthl1=borehole~110:42 lengthl1=cabin~105:26 lengthl1=cable~50:26
lengthl1=call~0:-38 lengthl1=cased~0:-27,108:53 lengthl1=casing~108:33 lengthl1=cellar~0:17
lengthl1=climb~105:24 lengthl1=comes~106:56 lengthl1=copper~107:34 lengthl1=creek~0:32
lengthl1=deep~108:38 lengthl1=depth~71:33 lengthl1=distance~107:41 lengthl1=down~102:34,116:36
lengthl1=drop~0:-31,113:51 lengthl1=dry~69:46 lengthl1=dug~0:38 lengthl1=each~12:39
lengthl1=elevation~45:29 lengthl1=fall~106:31 lengthl1=falls~116:23 lengthl1=far~0:27
lengthl1=field~0:59 lengthl1=floor~0:-51 lengthl1=goes~102:46 lengthl1=gpm~0:43
lengthl1=gravity~0:51 lengthl1=h~0:53,18:33 lengthl1=here~45:29 lengthl1=highest~105:37
lengthl1=hill~106:45 lengthl1=hole~110:46 lengthl1=hose~0:-28,89:53
lengthl1=house~0:65,102:-49,107:26 lengthl1=hung~113:44 lengthl1=hut~45:47 lengthl1=i~107:38
lengthl1=i'm~0:31 lengthl1=in~108:71,110:47 lengthl1=inch~0:-34,113:27 lengthl1=inside~7:35
lengthl1=intake~106:41,114:30 lengthl1=is~0:-18,71:21,102:41,106:-47
lengthl1=it~0:45,71:53,90:34,102:-11,110:37 lengthl1=it's~105:-33,107:31 lengthl1=its~0:-44
lengthl1=l~90:34 lengthl1=level~0:8,116:31 lengthl1=lift~0:-34,102:43,105:51
lengthl1=line~12:34,16:30 lengthl1=lines~12:56 lengthl1=lodge~105:-28,106:27 lengthl1=long~16:42
lengthl1=lowered~71:34 lengthl1=m~105:46 lengthl1=mains~0:43 lengthl1=more~105:20
lengthl1=no~102:27 lengthl1=npsh~75:55 lengthl1=on~90:59 lengthl1=one~0:-31,105:31
lengthl1=outlet~90:30 lengthl1=outside~68:35 lengthl1=pipe~0:60 lengthl1=poly~107:31
lengthl1=pond~102:25 lengthl1=pump~0:-35,50:30,71:69,75:51,90:-34,102:35,105:-32,110:-53
lengthl1=pump's~71:28 lengthl1=pumphouse~0:25 lengthl1=pumping~116:48 lengthl1=required~75:31
lengthl1=rings~108:33 lengthl1=rise~105:63 lengthl1=river~102:37 lengthl1=rows~16:71
lengthl1=runs~0:49 lengthl1=says~0:44 lengthl1=set~71:20 lengthl1=shed~0:29 lengthl1=so~0:18
lengthl1=sorry~102:29 lengthl1=spring~0:-43,105:49 lengthl1=stand~90:24
lengthl1=standing~102:23,118:41 lengthl1=static~118:28 lengthl1=submersible~0:42
lengthl1=sucks~89:60 lengthl1=suction~89:43 lengthl1=tank~0:45,90:51,105:-70,107:35
lengthl1=tap~105:28 lengthl1=that~90:29 lengthl1=the~105:-18,107:35 lengthl1=then~0:29
lengthl1=there~0:-34,107:30 lengthl1=to~0:-13,16:55,102:31,107:32 lengthl1=tote~0:22
lengthl1=tower~107:45 lengthl1=trough~0:54,107:-52 lengthl1=up~102:-23,107:51 lengthl1=valve~0:39
lengthl1=water~101:22,102:58 lengthl1=we~99:47 lengthl1=well~71:53 lengthl1=with~0:83
lengthl1=would~0:-38 lengthl1=yard~106:47 lengthl1=|~0:68,107:-34
lengthl2=,~18:41,68:21,105:42,107:-31,110:38 lengthl2=.~0:-36,68:43,102:33,110:27 lengthl2=0~90:51
lengthl2=1~107:38 lengthl2=2~107:34 lengthl2=3~107:28 lengthl2=4~113:26 lengthl2=5~105:45
lengthl2=6~0:33 lengthl2=;~0:43 lengthl2=a~0:-23,110:34 lengthl2=above~90:42 lengthl2=back~106:47
lengthl2=bank~0:41,102:-36 lengthl2=below~0:27 lengthl2=cable~50:22 lengthl2=can~0:41
lengthl2=creek~106:36 lengthl2=deep~0:72 lengthl2=drilled~0:44 lengthl2=drip~12:19
lengthl2=dry~102:23 lengthl2=dug~102:55,110:21 lengthl2=each~12:37 lengthl2=et~15:48
lengthl2=field~106:32 lengthl2=from~102:-32,105:40 lengthl2=house~90:35,105:29,107:-60
lengthl2=hp~71:47 lengthl2=i~107:28 lengthl2=in~102:48 lengthl2=inch~107:46 lengthl2=intake~89:46
lengthl2=is~71:59 lengthl2=it~102:49,105:-6 lengthl2=l~18:33 lengthl2=last~0:51,105:-30
lengthl2=length~107:23 lengthl2=level~102:42 lengthl2=line~0:48 lengthl2=m~108:29
lengthl2=mm~0:-39,106:61,107:18 lengthl2=my~106:22 lengthl2=nearest~0:42 lengthl2=never~102:25
lengthl2=no~107:31 lengthl2=npsh~75:29 lengthl2=one~16:46 lengthl2=ours~110:57 lengthl2=pipe~107:69
lengthl2=poly~105:48 lengthl2=pump~71:18 lengthl2=roof~105:45 lengthl2=row~16:57
lengthl2=spring~0:72,101:79,105:-70 lengthl2=stable~106:39 lengthl2=static~102:33
lengthl2=submersible~71:28 lengthl2=suction~89:14,102:31 lengthl2=tank~0:-36,105:53
lengthl2=the~0:-47,50:19,90:57,105:31,106:43,107:37,116:20 lengthl2=to~105:37,107:61
lengthl2=up~90:51,102:-26 lengthl2=water~0:32,71:-29,118:18 lengthl2=we~0:-36,45:41
lengthl2=well~102:14 lengthl2=which~0:19 lengthl2=with~0:5,102:42,107:-24 lengthl2=|~90:-36
lengthlr=,_,~0:67,107:27 lengthlr=,_.~45:18,102:31,106:-32,110:57
lengthlr=,_above~0:-20,102:26,105:-50 lengthlr=,_across~0:45 lengthlr=,_away~107:29
lengthlr=,_below~105:37 lengthlr=,_between~16:44 lengthlr=,_deep~0:-29,110:77 lengthlr=,_down~71:28
lengthlr=,_from~0:49 lengthlr=,_lift~102:33 lengthlr=,_of~110:-26 lengthlr=,_rows~16:20
lengthlr=,_up~0:-36,105:63,107:-31 lengthlr=,_uphill~105:41 lengthlr=a_borehole~108:53,110:35
lengthlr=a_well~110:34 lengthlr=about_from~107:42 lengthlr=about_lower~0:-29,105:-27,106:49
lengthlr=about_over~102:-30 lengthlr=altitude_.~45:15 lengthlr=and_of~0:44 lengthlr=and_off~107:24
lengthlr=and_up~0:-63,105:48 lengthlr=are_.~105:45 lengthlr=are_from~0:37
lengthlr=at_,~71:43,102:14,114:36,118:-44 lengthlr=at_.~71:38,102:10,108:29,116:47
lengthlr=at_above~0:43 lengthlr=at_altitude~45:27 lengthlr=at_in~71:30 lengthlr=buried_.~0:31
lengthlr=cable_.~50:50 lengthlr=depth_,~110:34 lengthlr=diameter_.~7:23 lengthlr=every_.~16:21
lengthlr=falls_to~106:30 lengthlr=from_.~71:36,102:28 lengthlr=height_.~105:41
lengthlr=hole_,~110:35 lengthlr=house_,~107:35 lengthlr=house_.~107:40
lengthlr=house_above~90:-32,105:94 lengthlr=house_away~107:20 lengthlr=house_below~105:-24,106:43
lengthlr=house_higher~105:26 lengthlr=house_of~0:26 lengthlr=house_up~0:38
lengthlr=is_,~105:33,107:-27,110:36 lengthlr=is_.~0:-31,12:34,50:35,71:-32,90:41,105:-51
lengthlr=is_above~105:30 lengthlr=is_away~0:80 lengthlr=is_below~0:-33,90:35,106:34,118:46
lengthlr=is_down~71:27 lengthlr=is_from~107:52 lengthlr=is_high~0:19
lengthlr=is_higher~90:-73,105:61 lengthlr=is_in~107:23 lengthlr=is_long~89:26,107:43
lengthlr=is_lower~0:36 lengthlr=is_over~0:-66,90:69 lengthlr=is_up~0:-47,105:9
lengthlr=it's_.~0:-48,110:47 lengthlr=it's_from~106:54 lengthlr=it's_to~0:42
lengthlr=level_,~102:57 lengthlr=level_above~101:31,102:-38 lengthlr=lies_above~105:-26,106:55
lengthlr=lies_lower~105:65,106:-51 lengthlr=lift_.~0:36 lengthlr=lift_to~90:62
lengthlr=line_.~12:21 lengthlr=npshr_.~75:30 lengthlr=on_.~0:31,102:-36 lengthlr=on_of~113:43
lengthlr=pump_,~71:34 lengthlr=pump_.~0:43 lengthlr=pump_above~102:42 lengthlr=pvc_.~0:39
lengthlr=rises_.~105:41 lengthlr=row_.~16:64 lengthlr=rows_,~16:23 lengthlr=rows_apart~16:35
lengthlr=says_,~110:34 lengthlr=sits_above~0:43,105:33,106:-22 lengthlr=sits_below~0:24
lengthlr=spring_above~105:-45,106:67 lengthlr=spring_below~105:43,106:-34
lengthlr=spring_higher~105:-38,106:46 lengthlr=stands_above~105:38 lengthlr=static_,~118:50
lengthlr=static_.~118:38 lengthlr=surface_below~0:38 lengthlr=swl_,~118:68
lengthlr=tank_above~90:35 lengthlr=tank_up~0:55 lengthlr=the_of~0:65 lengthlr=there_of~0:31
lengthlr=through_of~89:40 lengthlr=to_.~0:-41,71:49,110:46 lengthlr=to_after~102:46
lengthlr=to_from~0:41,102:-42 lengthlr=to_in~102:47 lengthlr=to_when~102:-31,116:44
lengthlr=up_.~105:39 lengthlr=up_over~0:59 lengthlr=up_to~105:26
lengthlr=water_above~101:52,102:-48 lengthlr=water_deep~0:-25,82:51 lengthlr=water_down~102:34
lengthlr=well_,~110:39 lengthr0=,~0:-37,71:24,110:75,114:47,116:-57,118:5
lengthr0=.~0:-50,7:18,16:39,45:40,50:56,71:36,75:41,106:-55,110:31,114:50,118:42 lengthr0=?~0:36
lengthr0=a~15:34 lengthr0=above~70:55,71:-35,90:60,101:50,102:41,105:40,107:-43
lengthr0=across~0:29,68:49,108:29,110:-29 lengthr0=after~0:38,102:46 lengthr0=apart~16:34,18:23
lengthr0=at~102:56 lengthr0=away~105:-38,107:73
lengthr0=below~102:43,105:42,106:26,107:-36,110:-29,118:22 lengthr0=between~16:42
lengthr0=bore~108:44 lengthr0=borehole~108:53,110:35 lengthr0=but~0:26 lengthr0=casing~0:-48,108:70
lengthr0=climb~105:37 lengthr0=copper~0:36 lengthr0=deep~0:65,82:43,102:-22,107:-33,110:75
lengthr0=depth~110:30 lengthr0=down~71:115,102:60 lengthr0=downhill~106:40 lengthr0=elevation~45:35
lengthr0=fall~106:39 lengthr0=from~106:41,107:78 lengthr0=hdpe~0:33 lengthr0=height~105:38
lengthr0=high~0:32 lengthr0=higher~90:38,105:51,106:55 lengthr0=in~71:34 lengthr0=inside~108:28
lengthr0=is~0:84 lengthr0=lift~102:33 lengthr0=long~12:41,89:47 lengthr0=lower~106:52
lengthr0=of~50:68,71:-42,89:100,90:-52,107:82,110:-45,113:57 lengthr0=off~107:59
lengthr0=on~102:-58 lengthr0=only~0:49 lengthr0=over~90:46,109:47 lengthr0=pe~0:44
lengthr0=per~75:26 lengthr0=pex~0:34 lengthr0=pipe~107:40 lengthr0=poly~0:61 lengthr0=pvc~0:40
lengthr0=rows~16:40 lengthr0=suction~89:42 lengthr0=to~0:-50,107:75
lengthr0=up~90:35,105:87,107:-59 lengthr0=uphill~0:-32,105:66 lengthr0=upwards~105:44
lengthr0=water~0:41,71:-42 lengthr0=well~110:66 lengthr0=when~116:44 lengthr0=wide~0:12
lengthr0=|~0:-48 lengthr1=.~0:51,12:46,16:44,106:10,108:35,110:37 lengthr1=1~50:42
lengthr1=2~102:-25,107:34 lengthr1=3~89:57 lengthr1=4~107:37 lengthr1=a~0:-40,71:27,102:39
lengthr1=all~0:54 lengthr1=an~0:37,107:-53 lengthr1=and~0:-37,102:-41,107:36,108:59
lengthr1=at~71:-43 lengthr1=cable~50:42 lengthr1=casing~0:68,110:-29 lengthr1=day~15:48
lengthr1=down~0:18,71:-26,105:19 lengthr1=drop~113:34 lengthr1=fall~106:34
lengthr1=ground~0:14,71:21 lengthr1=height~105:39 lengthr1=house~0:-32,102:30,105:-28,107:35
lengthr1=in~68:59 lengthr1=is~105:-39,106:35 lengthr1=it~102:47 lengthr1=lift~0:-22,102:42,105:57
lengthr1=of~106:36 lengthr1=pipe~0:24 lengthr1=rise~105:36 lengthr1=sea~45:46 lengthr1=so~110:34
lengthr1=solar~118:38 lengthr1=than~106:17
lengthr1=the~89:-46,101:19,102:42,105:17,106:38,107:32,109:40,118:26 lengthr1=then~0:30
lengthr1=to~0:77,18:30,50:-34 lengthr1=total~0:-30,102:34,107:21 lengthr1=two~107:26
lengthr1=up~107:28 lengthr1=water~102:34 lengthr1=we~0:31 lengthr1=when~0:-25,82:39
lengthr1=wire~50:46 lengthr2=,~7:64,110:-35 lengthr2=.~0:72,15:36,102:58,106:24,110:-50
lengthr2=0~107:24 lengthr2=1~0:-53,89:62,102:-44,105:30 lengthr2=3~107:37 lengthr2=4~102:-31
lengthr2=8~110:-31 lengthr2=9~108:37 lengthr2=at~0:-38 lengthr2=bottom~110:55 lengthr2=cabin~106:26
lengthr2=creek~102:43 lengthr2=drip~0:30 lengthr2=dry~102:34 lengthr2=ground~0:-40,70:15,102:43
lengthr2=hangs~0:31,102:-36 lengthr2=have~0:36 lengthr2=hill~105:32 lengthr2=house~0:75,102:-51
lengthr2=hung~102:26 lengthr2=in~50:-37,99:47,107:-27,110:31 lengthr2=it~0:-39,68:67
lengthr2=kitchen~90:37 lengthr2=level~0:33,45:37,71:-27 lengthr2=maybe~107:25
lengthr2=pe~0:27,107:-37 lengthr2=people~102:-25 lengthr2=pipe~113:33
lengthr2=pump~90:-33,101:54,109:21,110:21,116:19 lengthr2=pumphouse~0:65 lengthr2=ridge~0:30
lengthr2=river~102:23 lengthr2=sea~0:66 lengthr2=shed~0:42 lengthr2=spring~0:48
lengthr2=stream~105:24 lengthr2=surface~102:24 lengthr2=tank~90:57 lengthr2=to~0:-30,50:55
lengthr2=top~106:-34 lengthr2=water~102:37,105:-33 lengthr2=well~107:49 lengthr2=you~107:27
lengthr2=|~0:43,102:-31,105:49 longM=pump~0:75 longM=tank~0:62 longM=well~0:39
longT=power.source~0:47 longT=pump.placement~0:40 longT=water.kind~0:75 longT=water.level~0:47
longT=way.length~0:27 m=angle2~103:67 m=angle3~19:52,43:76,46:71,47:30,59:88 m=angle4~26:62
m=area-1~6:63 m=area0~0:-35,6:61 m=area1~6:7 m=area3~0:49,6:-25 m=area4~79:29 m=area5~0:35,6:111
m=area6~6:48 m=area7~0:-43,6:56 m=bare-1~0:118
m=bare0~0:63,1:-62,3:-74,4:-63,5:-36,18:28,31:129,32:79,36:79,38:59,41:87,42:113,56:-20,58:43,66:36,87:-31,88:116,99:-95,100:54
m=bare1~2:-20,3:-80,4:-79,5:-7,20:56,21:21,29:43,31:49,33:-50,36:20,37:42,38:42,56:94,58:58,61:60,65:70,66:83,67:101,71:-32,77:-34,78:72,87:92,88:-69,99:72,100:87,102:-28,110:-35
m=bare2~1:47,4:27,31:-48,38:49,39:11,42:-46,52:51,57:61,58:-30,77:34,99:67,100:60
m=bare3~0:41,1:49,2:3,3:106,4:79,5:44,31:-37,34:51,36:-62,38:-34,41:-40,42:-30,46:117,48:60,66:-38,67:-27,77:67,99:62,100:-53,102:57,118:50
m=bare4~1:58,2:39,3:18,4:70,5:47,33:72,71:49,100:-50,110:6,116:68
m=bare5~1:31,3:63,71:53,99:67,100:-26,110:49 m=bare6~3:74,4:16 m=bare7~45:72 m=charge3~0:28
m=charge4~51:51 m=charge5~51:130 m=current3~49:54 m=daily2~0:55 m=daily3~92:-48,93:112
m=daily4~93:71 m=daily5~92:74,93:-36 m=daily6~92:83,93:-32,94:64 m=daily7~0:44,92:32
m=each3~0:32,93:39 m=each4~93:50 m=flow-1~0:-27,8:43,96:136 m=flow0~0:43,8:54,104:-25,120:39
m=flow1~0:56,8:69,72:27,84:19,120:-52 m=flow2~0:49,9:45,73:58,96:-36,104:71,119:45,120:72
m=flow3~0:47,9:40,22:33,73:53,84:27,117:76 m=flow5~0:21 m=flow6~0:-35,104:40
m=length-1~12:-54,16:-41,18:174,108:61 m=length-2~68:169,71:-52,105:-33,107:-37,108:236,110:-51
m=length-3~0:320,89:-50,102:-13,105:-34,106:-20,107:-31,108:-39 m=length-4~0:81,7:123,15:42
m=length-5~15:52
m=length0~0:58,12:-58,16:104,18:77,45:-61,70:34,101:65,102:35,105:-33,106:-63,107:-92,108:114,110:-86
m=length1~0:24,16:112,18:-34,45:-117,50:-37,71:-42,75:162,82:54,89:50,102:142,105:41,106:99,107:-142,108:-18,110:-102
m=length2~0:-37,18:-29,45:-104,50:-38,69:77,71:-50,89:178,90:86,102:130,105:169,106:154,107:-107,108:-79,110:78,116:-38,118:50
m=length3~0:-45,12:71,16:-58,18:-33,45:-143,50:31,68:-29,71:144,75:-29,90:34,102:36,105:124,106:58,108:-95,110:99,113:42,114:34,116:121,118:28
m=length4~0:-14,12:88,16:-31,45:-89,50:159,71:140,89:-51,102:-80,105:-45,107:202,108:-53,110:191,113:86,118:-36
m=length5~45:88,90:-59,102:-57,105:-31,106:-43,107:210
m=length6~0:-53,45:320,102:-56,105:-46,106:-26,107:102
m=length7~45:297,71:-26,102:-34,106:-24,107:59 m=long3~0:46 m=pair3~66:72 m=percent1~17:58
m=percent2~57:91 m=percent3~0:45,57:73 m=percent4~57:-39,64:54,74:80,80:59 m=power0~0:1
m=power1~0:45 m=power4~0:-59,55:94 m=power5~55:184 m=power6~0:46 m=pressure-1~11:68
m=pressure0~13:111,14:42,61:48,66:39,67:-31,76:-40
m=pressure1~0:16,23:57,24:19,44:-48,61:25,62:-39,67:87,76:118,109:35
m=pressure2~0:38,14:35,25:58,44:96,62:92,66:-39,67:-38,76:-61
m=pressure3~0:61,13:47,25:-32,61:103,66:89,67:49,76:83 m=pressure4~0:44,25:64,61:-50,62:58
m=rise4~90:44,106:49 m=temperature2~103:79 m=temperature3~43:40,103:74
m=temperature4~26:108,43:57,103:-51 m=time0~0:93 m=time1~0:85,52:48,81:120,95:59 m=time2~0:39,10:99
m=time3~112:62 m=voltage2~0:63,60:74 m=voltage3~53:-96,54:128,60:132 m=voltage4~53:90
m=voltage5~53:49,60:42 m=volume-1~0:29 m=volume1~0:50,27:115,91:-32
m=volume2~0:13,27:39,86:-77,104:134 m=volume3~0:81,28:96,63:137,86:-59
m=volume4~28:42,63:150,86:-63,93:61,97:73 m=volume5~0:14,28:85,63:-52,97:86,111:44
m=volume6~63:-66,86:57,91:71,92:71,111:67 m=volume7~63:-70,85:46,86:102,91:74
m=volume8~63:-48,86:95,91:83 m=volume9~0:-25,63:-46,86:88 pairE=,~66:44 pairE=2~66:34
pairE=switch~66:9 pairL0=a~66:25 pairL0=switch~66:38 pairL1=0~66:41 pairL2=,~66:33 pairL2=1~66:42
pairL2=2~66:38 pairM=pump~66:80 pairM=tank~66:59 pairM=well~0:56 pairN=pump.control~66:52
pairP=pump.control~66:48 pairR0=.~0:67 pairR0=switch~66:9 pairR1=.~0:52 pairR1=3~0:48
pairR1=people~0:50,66:-46 pairR1=the~66:40 pairR2=.~66:48 pairS=gall~0:44 pairS=pres~66:11
pairS=swit~66:39 pairT=power.source~66:35 pairT=pump.control~0:53,66:41
pairT=pump.cut_in~0:60,66:-50 pairT=pump.cut_out~0:60,66:-50 pairT=pump.placement~66:31
pairT=water.kind~0:49,66:26 pairT=water.level~66:23 pairT=water.yield~0:44 pairT=way.length~66:18
pairT=well.depth~66:44 paira=.~66:30 pairr0=.~66:24 percentL0=,~80:25 percentL0=about~57:24
percentL0=at~0:56 percentL0=controller~64:78 percentL0=i~74:22 percentL0=is~17:40
percentL0=lose~57:29 percentL0=motor~74:83 percentL0=the~17:37 percentL0=we~0:44 percentL1=,~57:28
percentL1=.~17:54 percentL1=0~0:-36,80:46 percentL1=2~80:40 percentL1=5~74:32 percentL1=a~57:57
percentL1=efficiency~74:17 percentL1=m~80:24 percentL1=motor~74:17 percentL1=slope~17:59
percentL2=.~57:34,80:43 percentL2=0~64:58,80:37 percentL2=1~64:48,80:42
percentL2=2~17:34,74:31,80:22 percentL2=3~64:31 percentL2=6~64:30 percentL2=m~0:50
percentL2=panels~57:35 percentL2=pump~57:38 percentL2=roof~80:83 percentL2=south~57:34
percentM=drip~0:34,17:51 percentM=pump~0:39,17:32,57:39,64:51 percentM=roof~80:81
percentM=tank~80:42 percentN=power.source~0:37 percentP=power.source~57:58 percentP=rain.roof~80:95
percentR0=.~17:45,57:27,64:37,74:28,80:34 percentR0=2~0:44 percentR0=in~57:39 percentR0=of~0:31
percentR0=the~57:42 percentR0=to~57:33 percentR1=,~0:56 percentR1=.~0:34,57:53 percentR1=the~0:31
percentR2=.~0:38,80:29 percentR2=1~0:43 percentS=abou~57:24 percentS=alon~17:24 percentS=cont~64:53
percentS=effi~64:43,74:53 percentS=moto~74:99 percentS=pane~57:43 percentS=shad~57:82
percentS=slop~17:54 percentS=sout~57:48 percentT=beds.area~0:40,17:46 percentT=power.amps~57:47
percentT=power.battery~57:31 percentT=power.cable~57:50 percentT=power.capacity~57:31
percentT=power.controller~57:12 percentT=power.facing~57:44 percentT=power.panel~57:44
percentT=power.series~57:66 percentT=power.source~0:27,57:75 percentT=power.voltage~57:29,74:34
percentT=pump.height~57:39 percentT=pump.placement~80:36 percentT=pump.relief~64:51
percentT=pump.set~64:47 percentT=pump.works~64:43 percentT=store.volume~80:44
percentT=water.kind~0:40,17:48 percentT=water.level~0:22,74:47 percentT=way.climb~80:41
percentT=way.pipe~0:34 percenta=.~74:22 percenta=of_the~0:27 percentb=motor_efficiency~74:45
percentl0=about~57:24 percentl0=at~0:56 percentl0=is~17:40 percentl1=motor~74:45 percentl2=,~80:19
percentl2=i~74:22 percentlr=is_.~17:40 percentr0=.~17:47,64:41,74:31 percentr0=in~57:41
percentr0=of~0:31 percentr0=to~57:25 powerE=,~0:24,55:60 powerE=0~0:39 powerE=battery~55:32
powerE=panel~55:58 powerE=panels~55:27 powerE=pump~0:31 powerE=v~55:44 powerL0=,~55:53
powerL0=a~0:63 powerL0=got~0:55 powerL0=of~55:25 powerL0=one~55:40 powerL0=panel~55:40
powerL0=panels~55:37 powerL0=pump~0:23 powerL0=the~0:84,55:-50 powerL0=two~55:42 powerL0=x~55:48
powerL1=.~0:40 powerL1=0~55:48 powerL1=a~0:24 powerL1=pump~0:56 powerL1=the~55:48 powerL2=,~55:53
powerL2=.~55:68 powerL2=0~55:14 powerL2=5~55:43 powerM=pump~0:62,55:24 powerM=tank~55:79
powerM=well~0:60 powerN=pump.placement~0:45 powerP=power.source~55:59 powerR0=,~0:25
powerR0=.~0:57,55:-13 powerR0=panel~55:58 powerR0=panels~55:32 powerR0=pump~0:69 powerR1=.~0:29
powerR1=0~0:76 powerR2=,~55:47 powerR2=.~0:34 powerR2=0~0:55 powerR2=v~55:51
powerS=pane~0:-50,55:105 powerT=power.battery~55:15 powerT=power.cable~0:51
powerT=power.capacity~55:33 powerT=power.controller~55:63 powerT=power.panel~0:111,55:-97
powerT=power.source~0:82,55:53 powerT=power.voltage~55:81 powerT=pump.height~0:16
powerT=pump.placement~0:31,55:49 powerT=pump.works~55:20 powerT=store.volume~55:27
powerT=water.kind~0:20,55:45 powerT=water.level~55:48 powerT=way.length~55:30 powerT=way.pipe~0:26
powera=.~0:79 powerl0=a~0:64 powerl0=got~0:55 powerl0=x~55:48 powerl1=pump~0:34 powerl2=the~0:49
powerlr=a_pump~0:20 powerlr=two_panels~55:29 powerr0=.~0:17 powerr0=panel~55:41
powerr0=panels~55:32 powerr0=pump~0:30 powerr1=.~0:45 pressureE=,~0:32 pressureE=0~0:-60,66:42
pressureE=1~0:38 pressureE=2~67:59 pressureE=3~0:-40,66:32 pressureE=4~0:90 pressureE=6~0:39
pressureE=?~0:75 pressureE=ahead~13:37 pressureE=air~61:27 pressureE=begin~13:38 pressureE=by~23:24
pressureE=drip~13:33 pressureE=he~0:32 pressureE=house~76:57 pressureE=least~11:34
pressureE=lines~13:73 pressureE=need~11:34 pressureE=off~0:43 pressureE=out~66:40
pressureE=over~109:85 pressureE=pressure~76:61 pressureE=pump~0:33,76:51 pressureE=run~0:55
pressureE=set~76:52 pressureE=shower~0:33 pressureE=so~0:43 pressureE=speed~76:78
pressureE=switch~0:-35 pressureE=tank~0:-34,61:50 pressureE=they~11:35 pressureE=when~0:51
pressureE=where~13:52 pressureE=you~0:37 pressureL0=,~0:-38,11:30,62:31,76:22 pressureL0=.~13:58
pressureL0=0~0:30,61:44 pressureL0=:~0:56,61:22 pressureL0=a~13:41 pressureL0=air~61:46
pressureL0=and~67:48 pressureL0=at~0:28,14:39,66:12,67:47 pressureL0=be~0:54 pressureL0=begin~13:42
pressureL0=between~66:55 pressureL0=bladder~0:-27,61:41 pressureL0=charge~61:37
pressureL0=cut~66:50,67:21 pressureL0=cuts~67:28 pressureL0=drip~0:23 pressureL0=each~23:37
pressureL0=filter~44:50 pressureL0=for~44:47 pressureL0=gallon~0:28 pressureL0=gauge~0:34
pressureL0=gives~0:27 pressureL0=gpm~0:50 pressureL0=h~14:51 pressureL0=has~0:20,61:34
pressureL0=holding~23:28 pressureL0=holds~76:70 pressureL0=i~61:24 pressureL0=i'd~76:43
pressureL0=in~0:-33,66:76 pressureL0=is~0:-43,61:28,66:22,76:38 pressureL0=it~0:-46,61:45
pressureL0=keeps~76:72 pressureL0=l~14:28,61:30 pressureL0=least~11:63 pressureL0=lines~13:63
pressureL0=minimum~11:49 pressureL0=off~67:53 pressureL0=on~66:34 pressureL0=one~0:51
pressureL0=only~44:40 pressureL0=opens~25:28,67:31 pressureL0=out~67:94 pressureL0=point~76:30
pressureL0=pre~61:35 pressureL0=precharge~61:53 pressureL0=preset~61:39
pressureL0=pressure~0:33,76:57 pressureL0=pump~0:-3,76:68 pressureL0=rated~0:-31,14:69,44:36,62:62
pressureL0=relief~25:59 pressureL0=says~0:-58 pressureL0=set~67:-41,76:134 pressureL0=shows~0:51
pressureL0=shuts~67:38 pressureL0=stops~67:42 pressureL0=switch~67:36 pressureL0=tank~61:45
pressureL0=the~0:41,13:73,23:33 pressureL0=to~24:49 pressureL0=valve~25:87 pressureL0=with~0:24
pressureL1=,~13:22,24:30,25:27,66:-44,67:40 pressureL1=.~0:4,11:42,14:64,61:-21,62:48,76:32
pressureL1=0~11:48,25:29,61:42 pressureL1=2~11:42,24:39 pressureL1=5~61:43 pressureL1=6~0:45
pressureL1=8~0:-43 pressureL1=a~0:-66,44:44 pressureL1=air~61:42 pressureL1=and~76:51
pressureL1=at~0:42,13:49,23:38,61:-37 pressureL1=bar~62:51,66:35 pressureL1=booster~76:39
pressureL1=box~76:26 pressureL1=constant~76:39 pressureL1=cut~67:37 pressureL1=drip~13:33
pressureL1=expansion~24:45 pressureL1=gpm~67:63 pressureL1=h~13:50 pressureL1=house~76:45
pressureL1=i~61:47 pressureL1=is~44:44 pressureL1=m~13:39 pressureL1=of~0:-23,66:53
pressureL1=old~0:32 pressureL1=one~0:-36,23:47 pressureL1=pressure~0:-40,13:61,23:30
pressureL1=pump~67:39,76:36 pressureL1=reducing~23:41 pressureL1=relief~25:45
pressureL1=switch~66:24,67:31,76:-36 pressureL1=tank~61:14,62:67 pressureL1=that~0:38
pressureL1=the~44:54,61:15,66:36 pressureL1=to~0:61 pressureL1=valve~25:30
pressureL1=vessel~24:17,61:29 pressureL1=weakest~44:43 pressureL1=with~61:35
pressureL2=,~11:80,14:25,23:30,24:33,67:-43,76:58 pressureL2=.~13:53,44:3,61:37,62:41
pressureL2=0~14:40,24:30,25:67,61:-35,62:31 pressureL2=1~0:-42,14:39,24:31,25:44 pressureL2=2~14:33
pressureL2=3~76:33 pressureL2=4~11:43,61:66 pressureL2=5~24:51 pressureL2=6~14:57,24:21
pressureL2=8~66:36 pressureL2=:~0:44 pressureL2=apart~14:38 pressureL2=bar~61:52 pressureL2=c~24:34
pressureL2=cm~14:44 pressureL2=drip~14:42 pressureL2=drippers~14:32 pressureL2=emitters~14:57
pressureL2=expansion~24:86,61:-60 pressureL2=ft~0:-38,14:49,67:29 pressureL2=gives~13:38
pressureL2=heater~25:89 pressureL2=hose~62:61 pressureL2=job~0:29 pressureL2=l~62:69,76:49
pressureL2=last~0:36 pressureL2=litre~25:55 pressureL2=litres~66:36 pressureL2=no~0:-41
pressureL2=off~66:16 pressureL2=pressure~61:25 pressureL2=pump~0:-61,13:33,67:6
pressureL2=pump's~0:46 pressureL2=tank~61:22,62:35 pressureL2=two~76:36 pressureL2=water~25:68
pressureL2=|~0:58 pressureM=cistern~76:37
pressureM=drip~0:-107,11:123,13:192,14:97,24:55,25:63,61:-28,76:-31
pressureM=pump~0:69,24:63,25:33,62:66,66:82,67:89,76:67,109:52 pressureM=spring~23:45,44:55
pressureM=tank~0:44,13:-45,24:58,25:68,61:64,62:45 pressureM=well~0:14,62:65
pressureN=drip.filter~13:68 pressureN=drip.hours~13:67 pressureN=hot.tank~25:69
pressureN=power.voltage~0:40 pressureN=pressure_tank.volume~67:36
pressureN=pump.control~0:-50,76:51 pressureN=pump.cut_in~67:41
pressureN=pump.cut_out~0:-39,66:173,67:-14 pressureN=water.kind~61:-53 pressureP=drip.dripper~14:80
pressureP=drip.flow~13:34 pressureP=drip.rated~11:59 pressureP=fall.broken~23:121,76:-39
pressureP=hot.stored~25:67 pressureP=hot.tank~24:160,61:-60 pressureP=hot.volume~25:50
pressureP=outlets.hose~0:32 pressureP=pipes.held~44:76 pressureP=pressure_tank.precharge~62:56
pressureP=pressure_tank.volume~0:-40,61:173,67:-34,76:-44 pressureP=pump.control~61:-31,66:29,76:82
pressureP=pump.cut_in~61:-29,67:102 pressureP=pump.cut_out~66:81
pressureP=pump.placement~0:-35,66:26,76:27 pressureP=pump.relief~0:40 pressureP=use.people~0:47
pressureR0=.~0:7,13:27,23:41,24:62,25:42,44:84,61:45,62:31,67:56,76:41 pressureR0=3~62:52
pressureR0=?~0:48 pressureR0=a~76:48 pressureR0=air~61:30 pressureR0=and~0:-63,66:2
pressureR0=at~0:45,13:34,76:49 pressureR0=by~23:24 pressureR0=he~0:40 pressureR0=in~61:57
pressureR0=is~0:-56,11:32,44:33 pressureR0=it~0:25,109:40 pressureR0=lines~13:35
pressureR0=of~61:42 pressureR0=off~67:46 pressureR0=over~109:85 pressureR0=pump~24:42,76:31
pressureR0=run~0:25 pressureR0=set~76:52 pressureR0=the~11:44,13:37,109:29 pressureR0=where~13:42
pressureR0=why~0:41 pressureR1=,~76:36 pressureR1=.~13:42,66:17,76:75 pressureR1=0~0:43,14:54
pressureR1=1~0:46 pressureR1=2~0:-48,25:31,62:40 pressureR1=3~67:32 pressureR1=5~0:-43
pressureR1=?~44:56 pressureR1=bar~66:40 pressureR1=filter~13:43 pressureR1=gpm~0:21
pressureR1=lines~13:27 pressureR1=need~11:33 pressureR1=on~67:28 pressureR1=pump~0:-23,61:35
pressureR1=tank~61:36 pressureR1=the~11:32,61:32,109:26 pressureR1=they~11:33
pressureR1=those~76:31 pressureR1=up~76:48 pressureR2=,~67:49,76:65 pressureR2=.~13:40,14:43,62:42
pressureR2=0~76:34 pressureR2=1~76:27 pressureR2=2~0:19 pressureR2=3~0:-44 pressureR2=6~0:-50,76:29
pressureR2=bar~76:-44 pressureR2=feet~0:65 pressureR2=it's~0:35 pressureR2=pump~0:28,25:50
pressureS=abov~0:54 pressureS=begi~13:42 pressureS=betw~66:55 pressureS=blad~0:-33,61:63
pressureS=boos~76:48 pressureS=char~24:37,61:72 pressureS=chec~61:61 pressureS=come~66:21
pressureS=cons~76:48 pressureS=cont~76:84 pressureS=diap~67:47 pressureS=drip~11:44
pressureS=ever~13:33 pressureS=expa~24:116,61:-55 pressureS=feed~76:48 pressureS=filt~44:71
pressureS=fitt~44:67 pressureS=freq~76:30 pressureS=gall~24:53 pressureS=gaug~0:41
pressureS=heat~24:29,25:51 pressureS=hold~0:-32,23:26,76:80 pressureS=hous~44:34
pressureS=inle~13:46 pressureS=keep~0:-36,23:22,76:71 pressureS=leas~11:63
pressureS=line~0:-29,11:45,13:40 pressureS=litr~25:26,61:66 pressureS=mini~11:49
pressureS=open~25:28,67:30 pressureS=plum~0:24 pressureS=poin~76:30 pressureS=prec~0:-49,61:120
pressureS=pres~0:-45,13:29,23:52,61:67,67:22,76:47 pressureS=pump~76:23
pressureS=rate~0:-54,14:67,44:60,62:50 pressureS=redu~23:72 pressureS=reli~0:39,25:79,76:-41
pressureS=show~0:48,67:81 pressureS=shut~67:38 pressureS=spee~76:53 pressureS=star~13:34,66:55
pressureS=stop~67:48 pressureS=swit~66:45,67:66,76:-54 pressureS=valv~23:69,25:87,76:-69
pressureS=vari~76:40 pressureS=vess~24:38,61:88 pressureS=weak~44:61
pressureT=beds.area~11:56,13:84,14:82 pressureT=power.battery~67:32 pressureT=power.capacity~67:30
pressureT=power.voltage~67:63 pressureT=pump.control~13:-32,24:57,25:50,61:52,62:17,67:16,76:38
pressureT=pump.count~0:-39,62:43,76:29 pressureT=pump.cut_in~25:33,61:77,66:-106,67:154,76:-93
pressureT=pump.cut_out~0:61,25:56,61:38,66:175,67:-119,76:-91 pressureT=pump.dry_run~109:40
pressureT=pump.height~61:33,62:46 pressureT=pump.placement~0:-36,61:29,66:34,67:23
pressureT=pump.present~23:84,44:40,76:-55 pressureT=pump.set~0:93,25:49,76:-93
pressureT=pump.starts~62:39 pressureT=pump.works~67:48 pressureT=store.volume~0:-42,67:23,76:75
pressureT=tank.level~0:88,44:35 pressureT=tank.volume~44:51
pressureT=water.kind~0:31,23:37,25:50,44:47,67:27,76:28,109:49 pressureT=water.level~0:22,76:35
pressureT=water.temperature~76:33 pressureT=water.yield~44:35,76:33 pressureT=way.climb~44:52,76:42
pressureT=way.length~23:45,44:49,76:30 pressureT=way.pipe~23:43,44:72
pressureT=well.bore~0:-49,109:45 pressureT=well.depth~61:35,67:31,109:52
pressureT=well.known~109:48 pressureT=well.pumped_for~109:58 pressureT=well.static~109:47
pressurea=~61:31,66:12 pressurea=.~0:36,13:39,61:45,66:37 pressurea=._the~11:38 pressurea=._|~0:43
pressurea=at_the~13:57,76:34 pressurea=in_it~61:49 pressureb=,_rated~62:75 pressureb=._only~0:63
pressureb=at_least~11:63 pressureb=cut_in~66:54 pressureb=cut_out~67:30 pressureb=h_at~14:52
pressureb=in_at~66:37 pressureb=it_at~76:26 pressureb=off_at~67:42 pressureb=on_at~66:24
pressureb=opens_at~67:32 pressureb=out_at~67:34 pressureb=pump_gives~0:27 pressureb=set_to~0:-26
pressureb=stops_at~67:40 pressurel0=,~11:27 pressurel0=:~0:31,61:23 pressurel0=a~13:43
pressurel0=at~0:23,14:58,66:22,67:54 pressurel0=be~0:39 pressurel0=between~66:55
pressurel0=for~44:35 pressurel0=gives~0:27 pressurel0=has~0:20,61:34 pressurel0=holding~23:28
pressurel0=holds~76:50 pressurel0=in~66:54 pressurel0=is~61:29 pressurel0=keeps~76:43
pressurel0=least~11:63 pressurel0=minimum~11:49 pressurel0=of~0:41 pressurel0=out~67:30
pressurel0=pressure~61:23 pressurel0=rated~0:-34,62:50 pressurel0=says~0:-62 pressurel0=set~76:39
pressurel0=shows~0:43 pressurel0=to~24:51,61:5 pressurel1=,~0:36,62:43,76:28 pressurel1=.~13:42
pressurel1=at~11:63 pressurel1=begin~13:35 pressurel1=charge~61:26 pressurel1=cut~66:50
pressurel1=gpm~0:50 pressurel1=h~14:47 pressurel1=i'd~76:43 pressurel1=in~66:24
pressurel1=it~0:-37,61:48,76:33 pressurel1=off~67:45 pressurel1=on~66:26 pressurel1=one~0:51
pressurel1=opens~25:28,67:31 pressurel1=out~67:34 pressurel1=precharge~61:75
pressurel1=pressure~0:21,67:25 pressurel1=pump~0:51 pressurel1=set~76:63 pressurel1=stops~67:40
pressurel1=tank~61:30 pressurel1=the~13:59 pressurel2=,~0:-51 pressurel2=.~76:26 pressurel2=0~0:35
pressurel2=at~13:44 pressurel2=cuts~67:28 pressurel2=drip~13:21 pressurel2=gallon~0:33
pressurel2=gauge~0:26 pressurel2=is~76:40 pressurel2=keeps~76:29 pressurel2=l~14:32
pressurel2=lines~13:30 pressurel2=pre~61:25 pressurel2=pressure~76:31 pressurel2=set~76:32
pressurel2=the~0:26,13:31,23:35 pressurel2=valve~25:33 pressurelr=at_.~0:-42,14:33,67:34
pressurelr=holding_.~23:28 pressurelr=holds_.~76:29 pressurelr=keeps_.~76:43
pressurelr=rated_,~62:37 pressurelr=to_.~0:-17,24:60,61:13 pressurelr=with_in~0:28
pressurer0=,~14:41,61:39 pressurer0=.~11:44,13:38,14:21,23:49,25:38,44:44,61:31,62:43,66:48,76:31
pressurer0=and~0:-42 pressurer0=at~0:57,13:44 pressurer0=in~61:37 pressurer0=is~11:34
pressurer0=on~66:32 pressurer0=over~109:49 pressurer0=set~76:27 pressurer0=where~13:42
pressurer1=.~67:47 pressurer1=it~0:-47 pressurer1=over~109:37 pressurer1=the~0:46,11:51,13:4
pressurer2=.~0:48 pressurer2=3~62:53 pressurer2=at~0:-34,66:30 pressurer2=by~23:24
pressurer2=i~0:44 pressurer2=it~0:49 pressurer2=pump~76:42 pressurer2=the~109:28
range~0:55,66:275,76:-50,102:-120,104:45,106:-37 riseE=above~105:22 riseE=house~106:31
riseL0=is~105:22 riseL0=tank~90:48 riseM=spring~106:79 riseM=tank~90:48 riseP=water.kind~106:56
riseR0=above~105:22 riseR0=house~106:31 riseR0=the~90:27,105:26 riseR1=.~90:27,105:26
riseT=water.kind~105:25,106:74 risel0=is~105:22 riselr=is_above~105:22 riser0=above~105:22
riser1=the~90:27,105:26 riser2=house~106:33 temperatureE=1~19:27 temperatureE=now~103:33
temperatureE=summer~43:24 temperatureL0=,~0:36,43:31 temperatureL0=.~103:50 temperatureL0=at~26:59
temperatureL0=gets~43:41 temperatureL0=heater~26:35 temperatureL0=is~26:31,103:27
temperatureL0=set~26:22 temperatureL0=water~103:67 temperatureL1=.~19:60
temperatureL1=0~26:46,103:19 temperatureL1=3~0:56 temperatureL1=heater~26:24
temperatureL1=the~43:32,103:14 temperatureL1=water~103:27 temperatureL2=,~19:39,43:50,103:53
temperatureL2=.~19:47,103:44 temperatureL2=2~19:46 temperatureL2=4~103:28 temperatureL2=5~19:44
temperatureL2=every~19:30 temperatureL2=laid~43:38 temperatureL2=line~43:35 temperatureL2=m~103:34
temperatureL2=poly~43:26 temperatureM=drip~0:39,19:50,26:41,103:-52
temperatureM=pump~0:63,19:48,26:61,43:30 temperatureM=spring~103:26 temperatureM=tank~26:52
temperatureN=hot.relief~26:37 temperatureP=hot.volume~26:77 temperatureP=pipes.held~43:88
temperatureP=place.altitude~103:38 temperatureP=water.kind~103:78 temperatureR0=,~26:40
temperatureR0=.~26:14,43:34,103:96 temperatureR0=1~19:29 temperatureR0=in~43:56
temperatureR0=now~103:33 temperatureR0=summer~43:24 temperatureR0=the~43:29
temperatureR1=.~19:30,43:60 temperatureR2=,~19:30 temperatureR2=3~103:31 temperatureR2=?~103:38
temperatureS=heat~26:66 temperatureS=spri~103:41 temperatureS=summ~0:23 temperatureS=wate~103:114
temperatureT=beds.area~0:44,19:53 temperatureT=power.source~0:106 temperatureT=power.voltage~0:71
temperatureT=pump.control~26:42 temperatureT=pump.npsh~103:33 temperatureT=pump.placement~103:40
temperatureT=water.kind~19:52,26:32,43:27,103:60 temperatureT=water.level~103:33
temperatureT=way.climb~43:32,103:26 temperatureT=way.length~43:61,103:20
temperatureT=way.pipe~43:62,103:16 temperaturea=in_summer~43:24 temperaturel0=at~26:60
temperaturel0=is~103:31 temperaturel1=.~103:40 temperaturel1=gets~43:53 temperaturel1=set~26:22
temperaturel1=water~103:41 temperaturel2=is~26:36 temperaturelr=at_.~26:43
temperaturer0=,~19:26,26:40 temperaturer0=.~26:27,103:71 temperaturer0=in~43:50
temperaturer1=summer~43:24 temperaturer2=.~43:25 temperaturer2=1~19:29 timeE=,~0:20,112:43
timeE=0~0:11 timeE=2~0:66 timeE=air~112:40 timeE=day~0:-27,10:33,83:67 timeE=days~0:42
timeE=fell~112:47 timeE=pump~0:-39,112:43 timeE=reserve~81:41 timeE=steady~112:45 timeE=then~112:59
timeE=without~81:47 timeE=year~52:69 timeL0=,~0:-32,83:41,95:30 timeL0=.~10:37 timeL0=0~98:22
timeL0=5~95:25 timeL0=a~81:28 timeL0=after~0:56 timeL0=back~0:41 timeL0=dry~0:28
timeL0=enough~81:23 timeL0=every~0:50 timeL0=for~0:34,81:45,95:53,115:63 timeL0=generator~83:29
timeL0=i~10:35 timeL0=in~0:36,98:72 timeL0=litres~98:26 timeL0=min~115:51 timeL0=night~10:21
timeL0=of~81:26 timeL0=run~10:67 timeL0=runs~83:34 timeL0=the~98:60 timeL0=want~81:49
timeL1=.~10:29 timeL1=0~98:37,112:55 timeL1=1~115:25 timeL1=3~98:25 timeL1=5~98:21,115:28
timeL1=:~0:-48 timeL1=a~83:31 timeL1=day~95:37 timeL1=from~0:-47,83:38,95:84 timeL1=i~10:34
timeL1=in~10:67 timeL1=it~0:36 timeL1=the~0:28,83:43 timeL1=water~10:26 timeL1=we~81:28
timeL2=,~10:33,81:19,95:41 timeL2=.~10:40,81:27,98:76 timeL2=0~10:7 timeL2=2~0:-59,81:57
timeL2=3~83:12 timeL2=6~10:46,98:56 timeL2=8~0:-78,83:38 timeL2=casing~0:48 timeL2=garden~95:39
timeL2=m~0:-53 timeL2=morning~98:27 timeL2=recovery~115:34 timeL2=test~112:55,115:28
timeM=drip~0:-35,10:167 timeM=pump~0:33,10:17,83:38,95:59,98:48,112:59,115:49 timeM=roof~0:44
timeM=spring~0:72 timeM=tank~0:34,81:68,83:48 timeM=well~112:81,115:34 timeN=use.people~0:29
timeN=water.kind~0:49 timeN=well.drawn~112:35 timeN=well.steady~112:89
timeP=power.source~0:-32,83:56 timeP=use.garden_from~95:90 timeP=use.peak~0:-52,98:109
timeP=water.kind~0:19 timeP=well.drawn~112:40 timeP=well.rate~115:41 timeR0=,~0:51
timeR0=.~0:84,10:21,81:32,98:67 timeR0=a~10:28,52:61,83:36 timeR0=at~115:52
timeR0=day~0:-22,10:57,83:68 timeR0=in~81:23 timeR0=it~112:58 timeR0=of~81:40
timeR0=pump~0:-36,112:36 timeR0=the~0:40 timeR0=to~0:53 timeR0=without~0:-29,81:60
timeR0=year~52:69 timeR1=,~115:56 timeR1=.~0:48 timeR1=and~0:47 timeR1=is~98:59 timeR1=the~10:48
timeR2=.~0:41 timeR2=0~0:-64,83:34 timeR2=1~83:31 timeS=abou~0:47 timeS=afte~0:58 timeS=bore~0:-42
timeS=buck~0:44 timeS=drip~0:49 timeS=enou~81:23 timeS=ever~0:60 timeS=fill~83:35 timeS=gall~0:27
timeS=give~83:43 timeS=litr~98:18 timeS=morn~0:-31,98:35 timeS=nigh~10:33 timeS=pump~0:-46,115:43
timeS=reco~115:56 timeS=sola~83:47 timeS=spri~0:51 timeS=stor~0:-27,81:51 timeS=wate~10:33,95:63
timeT=beds.area~0:-30,10:52 timeT=power.battery~52:16 timeT=power.capacity~52:16
timeT=power.controller~52:16 timeT=power.source~52:60,83:89,95:42 timeT=power.tilt~52:35
timeT=power.voltage~0:37 timeT=pump.control~95:31 timeT=pump.cut_in~0:43 timeT=pump.cut_out~0:44
timeT=pump.dry_run~115:30 timeT=pump.height~0:36 timeT=pump.placement~112:33
timeT=pump.present~0:48 timeT=store.volume~81:41,98:40 timeT=tank.level~83:52
timeT=tank.volume~83:45 timeT=water.kind~10:7,81:48,83:46,98:46,112:59,115:43
timeT=water.level~115:32 timeT=water.yield~81:60,83:56,98:64 timeT=way.climb~10:24,95:22
timeT=way.length~0:24,10:17,83:50,95:29 timeT=way.pipe~0:50,10:20,83:33,95:32
timeT=well.bore~0:-39,112:54,115:54 timeT=well.cover~115:58 timeT=well.depth~112:35,115:51
timeT=well.drawn~112:75 timeT=well.intake~115:51 timeT=well.known~115:72 timeT=well.rate~115:64
timeT=well.static~115:17 timeT=well.steady~112:100 timea=~81:46 timea=.~0:32,98:37
timea=a_day~10:26,83:44 timea=a_year~52:69 timeb=~81:39 timeb=water_for~0:37 timel0=after~0:40
timel0=every~0:32 timel0=for~0:39,81:47,95:59,115:65 timel0=in~0:54,98:55 timel0=run~10:44
timel0=runs~83:26 timel0=the~98:77 timel0=want~81:34 timel0=water~10:45 timel1=back~0:41
timel1=water~0:34 timel2=0~98:23 timel2=5~95:25 timel2=a~81:28 timelr=for_.~0:-43,95:32
timelr=in_.~98:23 timer0=,~0:55 timer0=.~0:15,10:43,95:13,98:10 timer0=a~0:-42,10:24,52:63,83:40
timer0=at~115:53 timer0=of~81:47 timer0=to~0:50 timer0=without~0:-28,81:57 timer1=.~0:34
timer1=day~10:26,83:72 timer1=year~52:69 timer2=.~0:35,81:29,98:58 timer2=the~0:28
u=angle°~19:47,43:-34,46:102,47:35,59:96,103:71 u=angle°C~43:96 u=areaacre~6:63
u=areaft²~0:-80,6:71,79:49 u=areaha~0:-23,6:56 u=aream²~0:162,6:76,79:56
u=bare~0:385,1:88,2:39,3:104,4:61,5:33,20:55,31:44,36:87,38:68,39:32,41:68,45:-60,46:51,71:-95,77:37,99:107,100:45,102:-102,110:-81,116:-37,118:-27
u=bareft~0:-67,45:79,71:67,99:-21,102:40,116:83,118:47 u=barem~0:-44,71:49,102:65,110:91
u=chargeAh~0:53,51:195 u=currentA~0:43,49:59 u=dailyL/day~0:15,92:129,93:94,94:50
u=dailygal/day~0:-42,92:52 u=dailym³/day~0:128,92:-36 u=eachL/day~93:104 u=eachgal/day~93:28
u=flowL/h~0:-32,8:112 u=flowL/min~8:-52,22:27,72:26,73:65,84:25,96:90,104:103,117:79,119:45
u=flowL/s~0:-43,104:65,120:83 u=flowgph~8:153 u=flowgpm~8:-67,9:67,73:43,84:18,104:86,120:38
u=flowm³/h~0:184,8:-31,9:44,104:-46,120:-34 u=lengthcm~12:-33,18:94
u=lengthft~12:66,16:21,18:-34,45:132,50:48,68:-48,89:42,90:79,102:105,105:61,106:67,107:89,108:-183,110:52,113:36
u=lengthin~0:80,18:72,68:83,71:-52,89:-46,102:-71,105:-54,106:-37,107:-44,108:156,110:-50
u=lengthkm~0:35,107:62
u=lengthm~7:-38,12:57,16:20,18:-34,45:118,50:31,68:-61,71:7,75:46,82:31,89:70,90:61,101:62,102:100,105:80,106:53,107:43,110:66,118:20
u=lengthmi~0:27,107:57
u=lengthmm~0:164,7:118,12:-42,15:69,68:67,89:-32,90:-26,105:-43,106:-17,107:-56,108:64,110:-25
u=long~0:75 u=pairpsi~66:72 u=percent%~0:58,17:38,57:98,64:44,74:70,80:49 u=powerW~0:-11,55:187
u=powerhp~0:92,55:-31 u=powerkW~0:73
u=pressurebar~0:68,11:39,13:44,23:38,44:57,61:47,62:55,66:59,67:47,76:50 u=pressurem~109:39
u=pressuremwater~0:21 u=pressurepsi~0:69,13:36,14:38,25:17,61:62,66:54,67:68,76:51
u=riseft~90:43,106:74 u=temperature°C~26:39,43:22,103:64 u=temperature°F~26:34,43:36,103:32
u=timedays~52:59,81:215 u=timeh~10:131,81:-50,83:64,95:69,98:59 u=timemin~98:58,112:94,115:52
u=times~0:161 u=timeweeks~0:76 u=voltageV~0:95,53:47,54:62,60:179
u=volumeL~0:31,28:94,63:112,86:50,91:72,93:-37,97:61,104:78,111:48 u=volumeL/day~0:-68,93:128,94:74
u=volumegal~0:46,27:73,28:50,63:81,85:21,86:73 u=volumeimpgal~0:-30,91:28
u=volumem³~0:183,63:-56,85:35,86:38 voltageE=,~53:48,60:30 voltageE=1~60:41 voltageE=2~60:30
voltageE=6~53:41 voltageE=ah~60:34 voltageE=bank~60:30 voltageE=battery~60:55
voltageE=controller~0:33 voltageE=far~0:40 voltageE=gpm~0:77 voltageE=open~54:60
voltageE=panels~0:23 voltageE=pump~60:21 voltageE=so~0:47 voltageE=system~0:49
voltageE=too~0:59,60:-43 voltageE=v~0:51 voltageE=wants~0:40 voltageL0=,~54:21,60:29
voltageL0=.~60:42 voltageL0=:~60:24 voltageL0=a~60:59 voltageL0=battery~0:12
voltageL0=controller~53:41 voltageL0=has~0:51 voltageL0=is~0:24 voltageL0=max~53:44
voltageL0=open~54:57 voltageL0=system~60:52 voltageL0=the~0:-27,60:36 voltageL0=voc~54:63,60:-45
voltageL0=voltage~54:35 voltageL0=|~60:33 voltageL1=,~0:41,53:42 voltageL1=4~0:-33,54:49
voltageL1=each~60:-43 voltageL1=l~0:59,60:-43 voltageL1=mppt~53:41 voltageL1=of~0:-83,54:57
voltageL1=pump~60:33 voltageL1=strings~60:-49 voltageL1=the~53:28 voltageL2=,~53:77,54:45,60:30
voltageL2=.~53:50,60:29 voltageL2=0~53:44,54:14 voltageL2=1~54:28,60:32 voltageL2=2~0:67
voltageL2=5~53:38 voltageL2=8~53:56 voltageL2=ft~60:37 voltageL2=m~0:75 voltageL2=panels~54:34
voltageL2=w~53:62 voltageM=cistern~60:36 voltageM=pump~0:52,53:17,60:131 voltageM=roof~60:21
voltageM=well~0:-33,60:40 voltageN=power.amps~53:53 voltageN=power.capacity~60:56
voltageN=power.source~60:72 voltageP=power.battery~60:40 voltageP=power.open_voltage~53:41
voltageP=power.panel~54:66 voltageP=power.source~53:29,60:43 voltageP=pump.placement~60:56
voltageR0=)~0:53 voltageR0=.~54:30 voltageR0=1~0:-55 voltageR0=2~60:34 voltageR0=and~60:-63
voltageR0=bank~60:33 voltageR0=batteries~60:17 voltageR0=in~53:60 voltageR0=open~54:61
voltageR0=pump~0:32,60:19 voltageR0=system~0:28 voltageR1=,~60:25 voltageR1=.~60:72
voltageR1=1~60:46 voltageR1=5~0:-45 voltageR1=?~0:55 voltageR1=ah~60:78 voltageR1=controller~0:52
voltageR2=,~0:50 voltageR2=.~60:31 voltageR2=1~0:67 voltageR2=4~0:-47 voltageR2=5~60:66
voltageR2=far~0:46 voltageS=batt~0:59 voltageS=char~53:30 voltageS=circ~54:51
voltageS=cont~0:30,53:83,60:-60 voltageS=pane~0:52,54:72,60:-42 voltageS=pump~0:67,60:-41
voltageS=seri~54:49 voltageS=stri~54:39 voltageS=syst~60:44 voltageS=volt~54:35
voltageT=power.amps~53:34,54:35 voltageT=power.battery~53:27,60:31 voltageT=power.cable~54:11
voltageT=power.capacity~53:27,60:38 voltageT=power.controller~53:34 voltageT=power.facing~53:14
voltageT=power.limit~53:-50,54:55 voltageT=power.open_voltage~53:63,54:-56
voltageT=power.panel~53:54,54:53 voltageT=power.series~0:-58,53:75,54:87,60:-20
voltageT=power.shade~53:24 voltageT=power.source~0:39,53:46,54:69,60:32
voltageT=power.strings~53:43,54:47 voltageT=power.tilt~53:32
voltageT=power.voltage~0:158,53:62,54:46,60:-206 voltageT=pump.control~60:48
voltageT=pump.placement~53:28,60:16 voltageT=pump.works~60:46 voltageT=store.volume~0:29,60:45
voltageT=tank.volume~53:47 voltageT=water.kind~53:36,60:95 voltageT=water.level~54:15
voltageT=water.yield~60:31 voltageT=way.climb~60:49 voltageT=way.length~60:61
voltageT=way.pipe~60:45 voltagea=~0:43,60:43 voltageb=~0:30,60:39 voltageb=,_voc~54:32
voltageb=a~60:26 voltageb=battery_is~0:8 voltagel0=,~60:85 voltagel0=.~60:44 voltagel0=a~0:49,60:33
voltagel0=is~0:27 voltagel0=max~53:36 voltagel0=voc~54:45 voltagel1=,~54:29 voltagel1=at~0:57
voltagel1=open~54:54 voltagel2=.~0:48,60:-57 voltagel2=controller~53:18 voltagel2=the~0:-25,60:34
voltager0=bank~60:23 voltager0=open~54:61 voltager0=pump~60:47 voltager0=system~0:28
voltager1=,~0:34 voltager1=at~0:53 volumeE=)~86:56 volumeE=,~0:41,27:38,86:17,91:24,111:41
volumeE=0~0:21,97:27,104:51 volumeE=1~0:18,28:42,63:39 volumeE=2~0:50 volumeE=3~0:-39
volumeE=4~91:16 volumeE=5~0:24,28:51,86:-30 volumeE=6~0:-51,91:25,104:43 volumeE=7~91:41
volumeE=8~86:41 volumeE=?~63:57 volumeE=above~86:-27,91:97 volumeE=after~0:-52,111:43
volumeE=back~85:40 volumeE=barrel~91:33 volumeE=basement~86:39 volumeE=beds~91:48
volumeE=before~111:61 volumeE=beside~86:50 volumeE=bladder~63:34 volumeE=booster~86:80
volumeE=bucket~0:53 volumeE=buried~0:-52,86:37 volumeE=but~0:56 volumeE=by~0:45 volumeE=cabin~28:27
volumeE=charged~27:36 volumeE=cistern~86:38 volumeE=cottage~0:-48 volumeE=day~93:56,94:22
volumeE=days~0:42 volumeE=distance~0:51,91:-52 volumeE=drained~0:45 volumeE=draws~86:34
volumeE=each~28:28,86:-52,93:38 volumeE=expansion~27:71 volumeE=f~28:45 volumeE=falls~0:43
volumeE=fill~0:31 volumeE=fire~85:94 volumeE=from~0:-37,86:54 volumeE=ft~91:71
volumeE=gravity~91:40 volumeE=heater~28:103 volumeE=held~111:36 volumeE=hours~97:32
volumeE=house~0:-65,86:46,91:9 volumeE=i've~91:-28 volumeE=jet~86:47 volumeE=kept~85:57
volumeE=litres~0:47 volumeE=loft~91:43 volumeE=m~0:23,91:30 volumeE=meter~92:42
volumeE=meters~0:-52,91:45 volumeE=metres~0:-50 volumeE=min~0:36,86:-34,111:44
volumeE=minutes~97:28,111:64 volumeE=next~86:22 volumeE=no~0:47 volumeE=not~0:38 volumeE=off~86:46
volumeE=only~0:-53 volumeE=out~0:36 volumeE=pipe~0:49,91:-37 volumeE=poly~0:-32,91:56
volumeE=pre~0:-42,27:31 volumeE=precharge~63:32 volumeE=pressure~63:70 volumeE=psi~0:28
volumeE=pump~86:92 volumeE=pumps~86:39 volumeE=read~0:39,63:-49 volumeE=relief~28:89
volumeE=roof~0:34 volumeE=seconds~0:108,86:-33 volumeE=shed~0:-40,86:52 volumeE=shower~0:-33,91:47
volumeE=slowed~111:29 volumeE=so~0:58 volumeE=stand~91:50 volumeE=standing~0:43
volumeE=stands~0:25,86:-51 volumeE=switch~63:47 volumeE=tank~0:-43,63:42,86:64,91:31
volumeE=then~111:67 volumeE=there~0:-40 volumeE=tote~91:20 volumeE=tower~0:-49,91:62
volumeE=town~86:60 volumeE=two~97:46 volumeE=v~86:48 volumeE=valve~0:-44,28:92 volumeE=vessel~63:41
volumeE=was~0:48 volumeE=water~0:-58,28:51 volumeL0=(~86:43 volumeL0=,~86:37,91:64
volumeL0=.~28:50,63:54,91:45 volumeL0=2~86:26 volumeL0=:~97:40 volumeL0=;~86:38
volumeL0=a~0:-2,28:20,86:53,91:81 volumeL0=above~91:49 volumeL0=at~93:32 volumeL0=be~0:50
volumeL0=boiler~28:58 volumeL0=butt~91:52 volumeL0=cabin~0:37 volumeL0=cistern~0:42,86:58
volumeL0=comes~91:30 volumeL0=cylinder~28:32 volumeL0=daily~92:64 volumeL0=day~92:47
volumeL0=draws~86:45 volumeL0=expansion~27:74 volumeL0=fire~85:33 volumeL0=from~86:25,91:47
volumeL0=garden~94:79 volumeL0=h~0:50 volumeL0=have~0:-57,91:43 volumeL0=header~91:50
volumeL0=heater~28:82 volumeL0=hill~0:44,86:-41,91:21 volumeL0=holds~0:26 volumeL0=hour~97:64
volumeL0=is~27:25,86:21 volumeL0=it~111:22 volumeL0=keep~85:59 volumeL0=loft~91:67 volumeL0=m~91:44
volumeL0=morning~97:40 volumeL0=needs~0:61 volumeL0=off~86:34 volumeL0=one~0:-43,93:27
volumeL0=our~0:25,86:-24 volumeL0=out~86:43 volumeL0=overhead~91:38 volumeL0=people~93:27
volumeL0=pond~0:88 volumeL0=pressure~63:47,91:-19 volumeL0=pump~0:-47 volumeL0=rain~86:68
volumeL0=reservoir~91:42 volumeL0=said~0:69 volumeL0=small~63:42 volumeL0=spring~0:-41,104:46
volumeL0=storage~0:47 volumeL0=takes~94:22,97:40 volumeL0=tank~63:61,86:62,91:61
volumeL0=tanks~0:48 volumeL0=the~0:37,91:40 volumeL0=to~85:42,91:44 volumeL0=top~91:58
volumeL0=underground~86:30 volumeL0=up~91:46 volumeL0=use~97:34 volumeL0=valve~0:35
volumeL0=vessel~27:36,63:50 volumeL0=wants~85:50 volumeL0=was~111:27 volumeL0=water~28:63
volumeL0=we~0:-47,92:87,97:25 volumeL0=with~0:34,63:35,86:-12 volumeL0=|~0:-43
volumeL1=,~63:27,85:27 volumeL1=.~92:25 volumeL1=0~27:54,85:47 volumeL1=1~27:44
volumeL1=2~0:-47,63:53 volumeL1=3~0:-32,63:31,86:-44 volumeL1=6~0:-18,91:40 volumeL1=8~0:-63,91:27
volumeL1=9~86:38 volumeL1=?~0:35 volumeL1=a~63:29,92:46 volumeL1=and~0:-62 volumeL1=at~86:38,91:-31
volumeL1=below~86:25 volumeL1=blue~63:53 volumeL1=busiest~97:67 volumeL1=day~86:-47,93:38
volumeL1=finca~0:29,86:-28 volumeL1=for~0:-42 volumeL1=hav~0:46 volumeL1=hi~0:56,86:-54
volumeL1=hot~28:65 volumeL1=hour~86:32 volumeL1=hours~0:42 volumeL1=i~86:27 volumeL1=in~97:24
volumeL1=inch~0:48,63:-59 volumeL1=into~0:-28,86:67 volumeL1=is~91:87
volumeL1=it~0:-5,28:44,86:32,91:-51 volumeL1=july~0:28 volumeL1=m~0:89,86:-45 volumeL1=me~0:29
volumeL1=mm~91:33 volumeL1=off~0:-45 volumeL1=on~91:44 volumeL1=out~111:26 volumeL1=people~0:-58
volumeL1=plastic~0:44 volumeL1=pressure~63:54 volumeL1=psi~27:25 volumeL1=pump~86:37
volumeL1=pumped~111:27 volumeL1=rain~0:56 volumeL1=runs~86:28 volumeL1=showers~0:81,63:-50
volumeL1=sink~86:30 volumeL1=takes~86:45 volumeL1=tank~91:49 volumeL1=the~63:54,97:21,104:38
volumeL1=there~0:47 volumeL1=to~91:21 volumeL1=we~91:-39 volumeL1=well~0:-52 volumeL1=when~63:-47
volumeL2=)~0:28,91:-45 volumeL2=,~0:45,85:24,86:21 volumeL2=.~63:28,92:46,93:60,111:28
volumeL2=0~0:-39,27:65,91:44,93:57 volumeL2=1~27:27 volumeL2=2~63:23 volumeL2=3~86:-54,91:49
volumeL2=4~63:44,91:-34 volumeL2=5~27:27,63:42,86:19 volumeL2=6~27:30,91:-34,92:45,93:28
volumeL2=8~91:-44,97:97 volumeL2=9~0:38,91:-27 volumeL2=:~0:-60,86:38 volumeL2=;~91:30
volumeL2=after~0:39,86:-32 volumeL2=ah~0:47 volumeL2=batteries~91:38 volumeL2=but~63:-46
volumeL2=by~91:43 volumeL2=c~27:30 volumeL2=cistern~86:36 volumeL2=collect~0:40 volumeL2=day~86:54
volumeL2=each~0:-55,91:33 volumeL2=every~0:-40 volumeL2=feet~0:-26,86:54,91:-61
volumeL2=few~0:44,63:-44 volumeL2=five~0:-38,86:49 volumeL2=ft~0:78 volumeL2=generator~91:-50
volumeL2=gpm~86:34 volumeL2=h~0:33,91:-26 volumeL2=hill~86:34,91:-21 volumeL2=hose~0:-70
volumeL2=inch~91:53 volumeL2=l~86:38 volumeL2=m~0:45 volumeL2=milk~0:33 volumeL2=off~63:58,91:48
volumeL2=one~0:-50,86:26 volumeL2=open~0:54,63:-50 volumeL2=pe~0:44 volumeL2=people~0:-52,86:38
volumeL2=poly~86:-43 volumeL2=pressure~0:73,63:-40,91:-38 volumeL2=pump~86:56 volumeL2=quarter~0:61
volumeL2=relief~27:32 volumeL2=roof~86:43 volumeL2=run~0:-46,86:57 volumeL2=runs~0:40
volumeL2=seconds~0:33,63:-43,86:42 volumeL2=set~0:-30 volumeL2=so~0:71,91:-50 volumeL2=spring~86:51
volumeL2=tank~0:-44,86:45,91:40 volumeL2=there~0:-36,91:43 volumeL2=they~0:-38
volumeL2=toilet~0:49,91:-44 volumeL2=toilets~0:31 volumeL2=top~0:43 volumeL2=two~86:36
volumeL2=up~0:-50,91:34 volumeL2=valve~27:38,86:-55 volumeL2=was~91:25 volumeL2=water~91:49
volumeL2=well~0:38,63:-31,86:-28,91:34 volumeL2=would~0:25 volumeL2=yield~91:49
volumeM=cistern~85:46,86:77,91:-26,92:38 volumeM=drip~27:43,28:42,63:-37,86:-30,91:68
volumeM=pump~0:37,28:15,63:28,86:99,92:55,94:62,111:21 volumeM=roof~86:27,91:42
volumeM=spring~0:19,104:113 volumeM=tank~27:57,28:32,63:14,85:57,86:53,91:125
volumeM=well~0:-42,28:17,63:28,86:-82,91:24,111:87 volumeN=hot.precharge~27:59
volumeN=hot.stored~28:111 volumeN=power.source~91:24 volumeN=power.voltage~86:87,91:-38
volumeN=pressure_tank.precharge~63:117,86:-21 volumeN=pressure_tank.rating~63:69
volumeN=pump.placement~86:79 volumeN=pump.present~86:-55,91:55 volumeN=pump.set~86:46
volumeN=rain.roof~86:21 volumeN=store.fills~86:48 volumeN=suction.length~0:52
volumeN=tank.level~0:87,86:-64,91:77 volumeN=tank.volume~0:34 volumeN=use.peak_time~97:111
volumeN=use.people~0:73 volumeN=use.troughs~0:40 volumeN=water.kind~0:27,63:-41,86:50,111:33
volumeN=water.level~86:41 volumeN=way.climb~86:39 volumeN=way.length~0:-55,91:25
volumeN=well.drawn_for~111:38 volumeP=hot.relief~27:78,63:-26 volumeP=hot.stored~27:52
volumeP=outlets.toilet~91:-29 volumeP=power.source~91:67 volumeP=pump.control~63:36
volumeP=pump.count~86:40 volumeP=pump.cut_out~63:45 volumeP=pump.height~86:36
volumeP=pump.placement~86:24,91:-38 volumeP=pump.set~0:-46,63:44 volumeP=rain.roof~86:48
volumeP=store.hours~0:45 volumeP=tank.level~0:-12,86:50,91:43 volumeP=use.people~0:-44,93:82
volumeP=water.kind~86:116,104:40,111:51 volumeP=water.yield~0:-40,86:65,91:43
volumeP=way.pipe~86:-47,91:59 volumeR0=,~27:38,86:37,92:32
volumeR0=.~28:41,63:26,86:58,91:39,92:60,93:63 volumeR0=2~63:63 volumeR0=3~0:67 volumeR0=4~0:70
volumeR0=5~0:46,86:-40 volumeR0=6~0:-17,104:33 volumeR0=a~94:17 volumeR0=above~91:28
volumeR0=an~0:63 volumeR0=and~86:40 volumeR0=at~91:-36 volumeR0=back~85:43 volumeR0=barrel~91:33
volumeR0=beds~0:47 volumeR0=before~111:34 volumeR0=below~86:48 volumeR0=beside~0:40
volumeR0=bladder~63:34 volumeR0=break~86:35 volumeR0=bucket~0:55 volumeR0=but~0:52
volumeR0=cistern~0:67 volumeR0=each~28:28,93:38 volumeR0=expansion~27:72 volumeR0=fire~85:43
volumeR0=for~85:77,91:-25 volumeR0=heater~28:96,63:-31 volumeR0=house~86:33 volumeR0=i~0:-62
volumeR0=in~0:21,86:-22,97:52 volumeR0=is~86:-40 volumeR0=it~0:-63,85:49 volumeR0=kept~85:49
volumeR0=no~91:-28 volumeR0=of~85:34 volumeR0=on~91:22,94:39 volumeR0=pre~27:31
volumeR0=precharge~63:34 volumeR0=pressure~0:69,63:38,86:-39 volumeR0=put~63:-44
volumeR0=right~86:37 volumeR0=roof~86:59 volumeR0=so~0:52 volumeR0=standing~0:50
volumeR0=stands~0:26,86:-61 volumeR0=tank~28:-34,63:60,86:35,91:54 volumeR0=the~86:24,91:55,111:40
volumeR0=tote~91:20 volumeR0=tower~0:-30,91:36 volumeR0=two~97:28 volumeR0=up~91:62
volumeR0=vessel~63:62 volumeR0=water~28:55 volumeR0=we~91:22 volumeR0=with~0:20 volumeR1=,~63:37
volumeR1=.~27:90,63:65,85:62,86:36,91:40,97:46 volumeR1=1~86:41 volumeR1=3~0:-48,91:37
volumeR1=5~91:64 volumeR1=:~86:-43 volumeR1=a~91:39 volumeR1=above~0:31 volumeR1=and~0:37
volumeR1=booster~0:27 volumeR1=day~94:22 volumeR1=fill~0:35 volumeR1=fire~85:52 volumeR1=for~85:29
volumeR1=from~86:39 volumeR1=garden~86:-36 volumeR1=hill~0:19,86:-39 volumeR1=house~91:52
volumeR1=in~0:-63,63:54,86:39 volumeR1=it~91:-30 volumeR1=last~0:48 volumeR1=meters~91:37
volumeR1=minutes~97:31,111:34 volumeR1=one~0:-45 volumeR1=pump~86:27,91:-25 volumeR1=pumps~86:28
volumeR1=seconds~0:48 volumeR1=shallow~0:44 volumeR1=shed~0:-35 volumeR1=stand~91:36
volumeR1=suction~0:60 volumeR1=switch~0:-39 volumeR1=the~86:30 volumeR1=top~86:44
volumeR1=valve~28:33 volumeR2=,~0:-30,28:62,86:39,91:-4 volumeR2=.~0:22,91:31,97:42
volumeR2=0~86:-35,91:60 volumeR2=7~0:36,86:-22 volumeR2=8~0:-25 volumeR2=air~63:-28
volumeR2=back~0:52 volumeR2=bar~0:-41,63:48 volumeR2=beds~91:52 volumeR2=below~91:86
volumeR2=borehole~0:-37,91:39 volumeR2=by~91:76 volumeR2=cellar~0:-28,86:29
volumeR2=diaphragm~86:34 volumeR2=he~0:38,91:-33 volumeR2=l~111:27 volumeR2=litres~0:65,91:-31
volumeR2=m~91:13 volumeR2=min~86:-36,111:26 volumeR2=no~91:21 volumeR2=not~0:29 volumeR2=one~86:-52
volumeR2=only~0:-55 volumeR2=pipe~91:-49 volumeR2=psi~0:-45,63:54 volumeR2=pump~0:-34,86:57
volumeR2=roof~0:42 volumeR2=second~0:36,63:-40 volumeR2=shower~0:29,86:-42 volumeR2=small~0:-44
volumeR2=stands~0:31,86:-53 volumeR2=tank~86:-43 volumeR2=taps~91:31 volumeR2=up~91:-47
volumeR2=v~0:-27,86:34 volumeR2=water~86:36,91:-32 volumeR2=well~0:76,91:-32 volumeR2=when~63:-43
volumeR2=wife~0:44,86:-55 volumeR2=would~0:59 volumeS=abov~0:-13,86:63 volumeS=bail~111:60
volumeS=barr~86:57 volumeS=boil~28:58 volumeS=busi~97:67 volumeS=cent~0:26 volumeS=cist~0:34,86:68
volumeS=come~91:36 volumeS=conc~86:41 volumeS=cons~92:51 volumeS=dail~92:64 volumeS=draw~86:36
volumeS=expa~27:104 volumeS=finc~0:27,86:-27 volumeS=gall~0:-26 volumeS=gard~0:19,94:79
volumeS=grou~86:36 volumeS=head~91:55 volumeS=heat~28:82 volumeS=hold~91:53 volumeS=hous~91:36
volumeS=metr~86:31 volumeS=morn~97:56 volumeS=need~0:61 volumeS=othe~0:73 volumeS=over~91:36
volumeS=peop~0:-37,93:44 volumeS=prec~63:34 volumeS=pres~63:59,91:-50 volumeS=pull~0:87
volumeS=pump~111:54 volumeS=pupi~93:31 volumeS=rain~86:41 volumeS=rese~91:32
volumeS=sept~0:78,91:-38 volumeS=spri~86:51,104:57 volumeS=stan~91:28 volumeS=subm~0:52
volumeS=suck~86:33 volumeS=swit~63:27 volumeS=take~0:-45,86:20,94:22,97:40 volumeS=tank~0:38
volumeS=ther~0:-53,27:51,63:47 volumeS=towe~0:31 volumeS=truc~0:56 volumeS=unde~86:44,91:-23
volumeS=uppe~0:-31,91:62 volumeS=vess~27:41,63:72 volumeS=want~85:50 volumeS=wate~28:58
volumeS=we'v~86:48 volumeS=whic~0:35,91:-36 volumeT=beds.area~0:57,86:-11,92:48
volumeT=power.amps~0:70,91:-38 volumeT=power.battery~86:56 volumeT=power.capacity~86:64
volumeT=power.facing~0:75 volumeT=power.panel~0:55,86:-32,91:-26
volumeT=power.source~0:68,91:60,93:50 volumeT=power.voltage~86:48,91:-51
volumeT=pump.control~0:52,28:39,63:39,86:32,91:-95 volumeT=pump.count~0:-55,86:80
volumeT=pump.cut_in~27:39,63:75,91:-64 volumeT=pump.cut_out~0:41,27:37,63:65,91:-87
volumeT=pump.height~86:-33,97:88 volumeT=pump.most_flow~0:37 volumeT=pump.placement~63:29,86:18
volumeT=pump.present~0:34,86:-35,91:115 volumeT=pump.relief~0:-40 volumeT=pump.set~0:50,91:-78
volumeT=pump.works~0:-56,86:54 volumeT=store.depth~91:40 volumeT=store.fills~0:-47,86:38
volumeT=store.hours~0:55 volumeT=store.inflow~86:35 volumeT=store.reserve~86:47
volumeT=store.volume~0:42,63:60,85:68,86:-162,91:-31,92:54,93:33
volumeT=tank.level~63:-41,86:-95,91:187 volumeT=tank.volume~0:89,28:37,91:-209
volumeT=water.kind~0:47,28:23,85:24,92:68,94:62,104:65,111:58
volumeT=water.level~0:38,63:12,86:-24,92:67 volumeT=water.yield~0:-39,28:78,91:6,97:63
volumeT=way.climb~63:34,86:92,91:-22 volumeT=way.length~0:62,28:63,63:16,85:26,91:39
volumeT=way.pipe~0:24,28:53,85:28,91:52 volumeT=well.bore~111:47
volumeT=well.depth~63:87,86:-38,91:-23,111:59 volumeT=well.drawn_for~111:80
volumeT=well.pumping~0:30,91:-41 volumeT=well.steady~0:-54,111:83 volumea=~63:70 volumea=,_2~0:-39
volumea=,_filled~0:36 volumea=.~0:82,86:29 volumea=._from~86:-36 volumea=._the~0:24,86:-26
volumea=._we~91:29 volumea=and_is~0:30 volumea=and_stands~91:69 volumea=below_the~86:47
volumea=bladder_tank~63:34 volumea=break_tank~86:35 volumea=cistern_,~86:54 volumea=each_.~93:23
volumea=expansion_tank~27:59 volumea=in_2~0:37 volumea=in_9~97:35 volumea=pressure_tank~63:45
volumea=water_heater~28:40 volumeb=~91:34 volumeb=,_tank~86:18 volumeb=a~86:21
volumeb=cistern~0:34,86:-27 volumeb=cistern_is~0:-38,86:47 volumeb=cistern_of~0:65
volumeb=from_a~86:33 volumeb=garden_takes~94:23 volumeb=have_a~91:22 volumeb=it_is~91:33
volumeb=tank_,~28:32 volumeb=tank_is~0:6,86:-52,91:68 volumeb=to_a~91:48 volumeb=to_keep~85:21
volumel0=(~86:43 volumel0=,~91:64 volumel0=.~86:41 volumel0=:~97:47
volumel0=a~0:78,28:33,86:25,91:43 volumel0=about~86:66 volumel0=at~93:32 volumel0=boiler~28:47
volumel0=cylinder~28:33 volumel0=has~86:23 volumel0=heater~28:39 volumel0=holds~0:23
volumel0=is~86:24 volumel0=keep~85:59 volumel0=needs~93:30 volumel0=of~0:48
volumel0=takes~94:22,97:40 volumel0=tank~86:25 volumel0=use~97:24 volumel0=wants~85:50
volumel0=with~0:42 volumel1=,~0:-27,86:74,91:-37 volumel1=;~86:40 volumel1=cistern~86:46
volumel1=expansion~27:55 volumel1=from~86:46 volumel1=garden~94:48 volumel1=have~0:-30,91:43
volumel1=heater~28:42 volumel1=hour~97:61 volumel1=it~91:35 volumel1=loft~91:52
volumel1=people~93:28 volumel1=pond~0:48 volumel1=pressure~0:34 volumel1=rain~86:48
volumel1=tank~0:47,63:38 volumel1=to~85:18,91:13 volumel1=vessel~63:35
volumel1=we~0:-39,92:95,97:18 volumel1=with~0:-28,63:30 volumel2=2~86:26 volumel2=and~0:50
volumel2=cabin~0:45 volumel2=comes~91:30 volumel2=daily~92:64 volumel2=day~92:47
volumel2=draws~86:45 volumel2=expansion~27:20 volumel2=fire~85:33 volumel2=from~91:44
volumel2=have~0:-27,86:28 volumel2=header~91:38 volumel2=hill~0:34,86:-34 volumel2=it~0:32
volumel2=m~91:39 volumel2=one~93:29 volumel2=our~0:20,86:-18 volumel2=out~86:50
volumel2=pressure~63:43 volumel2=pump~0:-52 volumel2=the~86:14,104:26 volumel2=water~28:43
volumelr=,_,~91:31 volumelr=,_.~28:27 volumelr=a_bucket~0:41 volumelr=a_concrete~91:62
volumelr=a_expansion~27:58 volumelr=a_tank~91:14 volumelr=a_tote~91:26 volumelr=has_.~86:23
volumelr=is_,~0:-62 volumelr=is_and~86:30 volumelr=of_on~0:-28,91:51 volumelr=of_under~0:-20,86:27
volumelr=tank_,~0:-30,91:11 volumelr=tank_.~86:40 volumelr=tank_on~0:72,91:-63
volumelr=wants_kept~85:27 volumer0=,~91:56 volumer0=.~63:73,86:25,91:86 volumer0=an~0:63
volumer0=and~86:51 volumer0=barrel~91:29 volumer0=before~111:35 volumer0=below~86:38
volumer0=bladder~63:34 volumer0=break~86:35 volumer0=bucket~0:55 volumer0=cistern~86:15
volumer0=each~93:39 volumer0=expansion~27:72 volumer0=in~0:32,97:22 volumer0=kept~85:26
volumer0=of~85:36 volumer0=on~94:40 volumer0=pressure~63:73,86:-38 volumer0=tank~91:37
volumer0=tote~91:20 volumer0=vessel~63:45 volumer0=water~28:60 volumer1=,~0:56,91:-49
volumer1=.~91:-53,93:17 volumer1=5~0:43 volumer1=6~0:-17 volumer1=9~97:35 volumer1=a~94:22
volumer1=filled~0:45 volumer1=heater~28:49 volumer1=it~0:-50 volumer1=on~91:44 volumer1=so~0:52
volumer1=stands~0:41 volumer1=tank~27:49,63:34,86:67 volumer1=the~0:21 volumer1=up~91:51
volumer1=we~0:-39,91:37 volumer2=.~28:52,85:37 volumer2=1~0:-52 volumer2=3~0:34 volumer2=6~104:37
volumer2=and~0:34 volumer2=at~0:42 volumer2=beside~0:33 volumer2=for~0:49,91:-37
volumer2=house~86:40 volumer2=put~63:-44 volumer2=roof~86:23 volumer2=the~0:-28,86:55,91:39
volumer2=to~0:-32,86:26 volumer2=with~0:44
"""
