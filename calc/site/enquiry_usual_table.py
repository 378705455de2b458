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
    "pump.count",
    "pump.cut_in",
    "pump.cut_out",
    "pump.diameter",
    "pump.dry_lift",
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
L=(~3:34,99:-63
L=,~3:-39,8:25,12:13,16:19,18:19,21:-67,43:-45,59:-4,68:30,69:-40,74:-36,76:47,94:-52,99:10,103:73,104:-30,114:-41,117:-51
L=.~9:23,10:26,12:45,13:20,16:-42,19:26,21:44,28:32,37:25,45:-23,47:20,57:-19,77:-34,78:68,81:-41,84:-14,87:-27,89:31,90:23,91:-39,95:-38,96:62,98:-41,100:33,113:-68,117:-44
L=0~0:40,4:-31,15:47,26:63,27:37,48:53,57:36,60:75,85:-46,86:-50,87:37,95:42,96:-45,99:55,102:41,103:17,117:35
L=1~3:-64,4:-59,6:-47,9:35,38:23,65:60,70:33,107:29
L=2~0:68,24:35,40:19,44:-42,55:-60,65:53,68:38,69:38,77:21,97:28,99:-36,103:-63,107:59,117:44
L=3~0:21,47:40,68:-33,83:-40,87:52,103:17,117:18
L=4~1:7,16:-59,47:54,53:40,97:-71,110:60,113:34,117:39
L=5~0:13,1:-38,48:55,60:60,65:32,92:33,99:-18,103:-42 L=6~0:57,22:40,88:38,104:-30,115:56
L=8~37:-44,66:38,88:20,90:50,101:47 L=9~3:-38,83:36,99:-29,105:44,113:54
L=:~31:36,94:24,101:20,102:37,108:39 L=;~31:49,56:18,83:30,99:-38 L=?~44:46,96:41,99:53
L=a~0:31,28:26,37:-29,39:-57,40:74,44:-33,56:52,59:58,62:47,64:39,65:-48,70:23,73:23,83:56,87:20,88:22,97:58,99:-30,101:17,105:51,107:29
L=about~0:35,3:21,56:50,89:21 L=above~0:-28,87:47,99:-49,104:31 L=accumulator~62:51
L=adjusted~73:34 L=adults~0:50 L=after~0:84 L=again~102:50 L=agm~0:-47 L=ah~0:45 L=air~0:-33,60:127
L=all~0:52,96:-46 L=along~17:27 L=also~28:31 L=altimeter~102:32 L=altitude~44:124
L=am~0:-45,92:30,96:55 L=and~1:54,4:52,31:23,40:23,48:32,65:61,68:-5,90:39,101:40,102:5,104:22
L=any~0:36 L=apart~12:44 L=are~0:23,8:28,44:32,68:-47,96:49,102:-14 L=area~6:21
L=as~37:57,71:23,101:-39,117:31
L=at~0:21,3:-26,4:-29,13:11,14:40,26:83,44:72,45:50,49:-44,64:86,65:34,68:116,88:-74,90:31,99:38,102:-25,104:-60,111:87,114:40,115:32,116:37,117:16
L=august~0:31 L=away~0:5,103:41 L=back~0:35,64:62,116:32 L=bar~9:37,61:55,62:44,64:93,65:95
L=barn~0:-35,103:37 L=basin~0:41 L=bath~0:-100,40:113,102:51 L=bathroom~0:-34 L=battery~0:46,50:30
L=be~0:67 L=bed~0:45 L=beef~0:36,1:-20 L=before~115:59 L=begin~13:45 L=below~0:-54,104:39
L=between~64:49,104:29 L=bit~43:20 L=bladder~0:-21,60:38 L=block~9:68 L=blue~62:49 L=boiler~28:65
L=booster~73:42,104:-23 L=bore~101:52,105:77,107:73 L=borehole~0:-28,102:-30,107:78,117:44
L=bothy~0:-36,96:31 L=bottom~23:47,87:25,96:-24,107:54 L=brings~0:17 L=brook~100:24 L=bucket~0:35
L=budget~0:41 L=build~0:36 L=buried~0:19 L=busiest~94:21 L=but~35:44,39:39,104:54 L=butt~88:48
L=by~0:40,56:21,103:64 L=c~0:36 L=cabin~0:38,37:-35,44:34,88:-45,102:54,104:38 L=cabins~35:-36
L=cable~0:40,49:131,104:-38 L=call~0:-6 L=calves~97:53 L=came~0:39 L=camp~96:46
L=can~0:29,10:31,51:43 L=captured~0:38 L=car~0:26 L=cased~0:-30,105:51 L=casing~0:-57,105:25
L=chalet~0:46 L=charge~60:35 L=checked~60:35 L=cistern~79:29,81:27,83:47 L=city~0:79
L=climb~0:-81,102:95 L=climbing~102:45 L=climbs~102:57 L=clock~0:-35,64:41 L=closed~93:28
L=cm~0:-48,8:115,12:12 L=come~38:48,96:-26 L=comes~88:32,100:53,101:-13,103:62,116:30
L=constant~73:44 L=consumption~90:44 L=control~73:37 L=controller~48:28,52:51,59:-51
L=copper~104:59 L=cottage~0:-54,102:125 L=could~0:48 L=count~0:-48,93:28
L=cows~1:57,2:42,3:57,5:48,90:-28,97:50 L=creek~103:50 L=curve~0:63 L=cut~64:74,65:96 L=cuts~65:29
L=cylinder~28:61 L=daily~0:-28,89:67 L=day~90:19,91:71,92:25,96:53 L=december~0:57
L=deep~105:73,115:37 L=delivery~0:47 L=depth~0:28,68:56,107:45 L=dia~0:-49,96:30
L=diameter~0:-24,7:22,66:63,105:48 L=diaphragm~0:-45,70:31 L=did~0:85 L=distance~104:35 L=do~0:41
L=does~64:45 L=down~68:49,86:-54,99:50,102:-24,113:98 L=draws~86:45,99:38,117:35 L=drew~113:56
L=dribble~0:39 L=drilled~107:63 L=driller~0:-33,101:39,117:22 L=driller's~0:32 L=drinkers~97:38
L=drip~6:39,7:40,8:22,12:64,13:47,16:44,18:47,29:36 L=dripper~8:69 L=drippers~0:-33,8:68,18:57
L=drips~0:28 L=drop~102:-55,103:64,104:-40,110:88 L=drops~0:77,102:-29,103:57 L=drum~0:-47,87:53
L=dry~67:77,75:75,99:40,101:125 L=dug~107:53 L=dynamic~99:32
L=each~0:56,12:65,18:44,35:-40,59:-53,89:-60,90:122,101:-41 L=efficiency~71:53 L=eight~0:53,55:-36
L=elev~44:51 L=elevation~44:135 L=emitters~8:54,18:72 L=end~0:-60,99:28 L=ends~0:45
L=et~0:-42,15:88 L=eta~71:35 L=evening~0:-42 L=every~8:107,18:58 L=expansion~24:50,27:100
L=fall~103:111 L=falls~87:49,102:-37,103:39 L=family~0:-53,96:66 L=far~0:77 L=farm~1:34
L=farmhouse~0:43 L=fed~0:-28 L=feeds~73:31 L=feet~0:21,29:74,101:47 L=field~0:23,102:-37,103:44
L=fifty~0:-42 L=figure~90:58 L=fill~0:52 L=filled~0:42 L=filter~0:40,43:49 L=fire~82:35
L=first~0:50,42:29 L=fittings~43:29 L=flat~0:-38 L=float~0:-42 L=flooded~98:23,99:-23 L=floor~99:40
L=flow~37:36,69:52,96:-32 L=foot~84:36,85:57
L=for~1:64,43:32,48:38,78:39,89:-50,91:66,92:42,99:-29,101:57,112:55,113:51 L=four~0:32,35:25
L=frequency~73:30 L=from~49:48,55:-41,83:59,87:40,92:68,96:-47,102:47,103:36,107:-56
L=ft~87:-43,96:42,99:26,102:27,107:26,113:66 L=gal~87:48 L=gallon~0:29,87:-33 L=gallons~87:19
L=garden~0:33,6:46,9:68,91:143 L=gauge~0:83 L=get~101:88 L=gets~42:67 L=gives~0:70,101:42
L=goat~0:-30 L=goats~3:85,4:29,6:-44,96:-35,102:36 L=goes~99:35 L=got~0:117
L=gph~0:-47,12:66,14:69,18:56 L=gpm~35:51 L=grass~0:18 L=gravity~0:-41,1:41,88:36 L=greenhouse~6:35
L=grid~0:43,45:39 L=ground~21:54,83:32 L=guess~0:-35 L=h~14:30,18:57 L=had~0:25
L=half~102:-30,103:73 L=hallo~0:37 L=hand~0:35,107:46 L=hangs~0:-62,68:50,111:61
L=has~0:78,60:34,88:-29,104:-33,110:41 L=haul~83:39 L=hav~0:66 L=have~6:38,88:72,103:25
L=having~0:-73 L=he~0:59 L=head~0:76,96:-37 L=header~0:-38,13:34,88:38 L=heater~25:35,26:88,28:71
L=height~87:38,102:31 L=hello~0:62,3:31,6:-54 L=helo~0:47 L=hens~0:-48,4:57 L=here~44:29
L=hi~0:35,83:-56,96:35 L=higher~102:28 L=highest~102:48 L=hill~83:-46,88:16,96:23 L=hit~0:35
L=hold~0:32 L=holding~23:29 L=holds~73:78 L=hole~107:79 L=holiday~0:-37,96:31
L=horses~0:-25,1:27,97:53 L=hose~0:43,31:48,86:51,102:-29 L=hoses~0:-42,31:78,38:58 L=hot~28:64
L=hour~0:-51,74:120,94:81 L=hours~0:49 L=house~0:37,3:56,6:-40,73:28,99:-8,102:25,104:53,107:-50
L=household~0:-40,96:62 L=how~107:44 L=hp~0:54 L=hundred~99:-52 L=hung~0:-15,68:46,110:46
L=hut~44:50 L=hytte~0:66 L=i~0:47,6:20,10:56,39:50,60:68,71:16,93:37,104:46 L=i'd~73:52 L=i'm~0:64
L=id~0:30 L=if~0:51
L=in~3:-45,10:52,19:62,20:44,42:25,57:86,64:79,94:69,95:63,96:-39,99:83,100:25,102:-40
L=inch~62:-53,86:24 L=inches~0:31 L=inlet~13:56 L=inside~0:-26,7:60,99:-50
L=intake~0:-27,68:-72,86:47,103:93,111:191 L=into~0:-51,35:37,83:28 L=inverter~73:37
L=is~0:71,1:-36,15:36,26:46,43:49,46:19,49:16,55:-45,62:31,98:25,100:45,103:79,104:44,105:39
L=it~0:35,56:35,68:21,88:-36,99:30,101:26,103:39,108:29,113:64,115:-31,116:24
L=it's~87:-51,103:39,104:44 L=its~87:22,102:-58 L=july~19:45 L=just~0:-39,37:51 L=keep~82:73,106:47
L=keeps~73:76 L=kept~26:42 L=kids~0:34 L=kl~83:38 L=kpa~103:40
L=l~0:-23,14:35,18:45,60:65,87:44,99:-22,112:44,113:40,116:29 L=lake~0:66,96:-31 L=last~0:69
L=lat~0:-36,45:42,47:31 L=late~0:37 L=laterals~12:44 L=latitude~0:-79,45:71,46:189,47:44
L=laundry~41:30 L=layflat~104:29 L=laying~96:40 L=leaks~93:61 L=least~11:28,69:35
L=length~86:73,104:50 L=less~106:59 L=level~0:-24,68:-38,99:74,102:-40,107:-20,113:80,115:66
L=lies~42:43,102:17 L=lift~67:73,86:-14,87:32,99:67,102:75,104:-26 L=lifted~102:38
L=like~0:44,106:55 L=limiter~37:34 L=line~12:92,16:51,19:30,87:-42,104:11
L=lines~7:15,12:80,13:67,104:-40 L=list~0:40 L=liters~0:28 L=lithium~0:21 L=litres~87:50,95:35
L=live~51:44,96:76 L=lodge~102:-41,103:36 L=loft~0:-35,87:48,88:41 L=log~101:49
L=long~0:70,16:28,47:30 L=longitude~47:45 L=look~104:22 L=lose~56:25 L=lowered~68:74 L=lowest~99:44
L=m~0:31,12:-51,40:34,88:65,97:-29,102:10,105:15,107:32,111:50,117:20 L=machines~0:44,41:48
L=made~0:55 L=main~104:39 L=makes~101:30 L=map~0:42 L=marked~43:20 L=max~19:33,52:34 L=may~0:27
L=maybe~0:64 L=me~0:84,9:51,101:-51 L=measured~101:58 L=meter~89:46,93:77 L=meters~96:-44
L=metre~107:37 L=metres~0:-52,77:26 L=micro~0:26 L=microsprinklers~33:25 L=milk~1:26,2:65
L=milking~0:-59,1:57 L=min~0:106,102:-36,112:47 L=minimum~0:77,11:56,69:33
L=minute~0:-32,101:88,103:22 L=minutes~114:49 L=mm~87:-43,88:40,103:47,104:63 L=months~75:76
L=more~0:-88,74:102,102:21 L=morning~94:29 L=most~70:33 L=motor~0:-45,71:91 L=mppt~0:-42,52:57
L=must~102:40 L=my~0:81,103:59,104:-26 L=near~0:59 L=nearest~0:45 L=need~0:59,89:67,96:-27,101:-22
L=needs~0:58,11:29,72:46 L=neighbour~0:44 L=neighbour's~0:38 L=net~102:27 L=never~99:51
L=new~0:-30,85:35 L=next~102:-54 L=night~0:-20,10:33 L=no~37:25,74:99,96:53,99:31 L=noon~0:31
L=north~46:37 L=not~0:-43,102:26 L=now~0:80,99:32,104:25 L=npsh~0:-49,72:120 L=npshr~72:80
L=nursery~0:36 L=occupants~96:46 L=of~53:37,55:57,64:31,68:-49,96:37,107:48
L=off~45:36,65:96,76:130,83:50,96:-42,103:115 L=oh~0:47
L=on~6:30,35:-66,42:35,56:27,64:70,87:43,88:48,102:-48,103:-44,110:33
L=one~0:-32,8:86,16:31,23:42,40:23,54:28,90:51 L=only~39:39,43:42,102:-42,104:28 L=open~53:74
L=opens~25:32,65:31 L=orchard~0:-60,6:23,89:-26,91:52 L=our~0:73,44:59,64:20,89:27,96:39
L=ours~101:35,107:88 L=out~65:120,88:-34,108:50 L=outlet~87:38 L=outside~0:-45,66:33
L=overhead~88:34 L=paced~100:37 L=panel~54:30,58:19 L=panels~49:35,54:54,55:54,57:53,58:59,104:-21
L=paper~104:31 L=parlor~31:60 L=pe~103:39 L=people~35:39,90:86,96:56,101:-26 L=per~0:55,74:71,90:43
L=perhaps~0:-45 L=pipe~0:69,35:-42,42:29,86:82,87:-23,99:-23,104:50,107:-44,110:111 L=place~0:57
L=plastic~0:54,43:20 L=platform~87:46 L=please~106:37 L=plot~0:64 L=plus~4:40,91:62 L=pm~92:45
L=pn~0:41 L=point~73:31 L=pole~0:44 L=poly~0:39,96:-33,102:43 L=pond~0:60,103:37 L=power~0:53
L=pre~60:33 L=precharge~60:81 L=preset~60:36
L=pressure~13:34,23:36,60:26,62:70,64:58,73:28,83:-33,88:-56,96:-34 L=psi~11:27,27:29,99:51
L=pull~68:47
L=pump~0:77,9:51,44:-52,49:36,59:35,60:-35,64:41,65:48,66:53,68:192,70:88,73:83,83:69,86:38,99:62,101:-56,104:-35,105:-43,107:-8,115:-41
L=pump's~68:98 L=pumped~0:-50,101:-36,108:29,112:47,114:70,117:37 L=pumping~99:58,113:27,117:48
L=pumps~73:51 L=pupil~90:33 L=push~99:-25 L=pushes~87:50 L=pvc~0:17 L=pwl~117:23 L=q~0:-40
L=question~0:28 L=rain~76:43 L=rainwater~83:49 L=rated~14:66,43:60,61:66 L=reach~0:29 L=read~0:58
L=reckon~90:19 L=recovery~114:25 L=reducing~23:57 L=relief~25:99 L=rental~0:25,96:-25
L=required~72:59 L=reservoir~87:28,88:21 L=rest~99:-67,115:122 L=ridge~56:67 L=rings~105:30
L=rinsing~0:28 L=rise~102:127,104:-38 L=rises~0:-29,102:69 L=rising~102:62 L=river~99:48
L=road~0:114,104:-36 L=roof~0:-18,6:-38,76:148,102:50 L=rooms~0:48 L=roughly~0:-46
L=rows~0:-51,16:133 L=run~0:-56,10:57,12:53,39:48,104:63 L=runoff~77:20 L=runs~59:30,80:26,83:19
L=s~0:-57,47:30,113:37 L=said~0:60 L=same~96:27,107:19 L=say~77:20,104:88 L=says~0:83,89:46,96:35
L=sea~44:41 L=season~99:50,101:96 L=sensed~0:53 L=septic~0:82,88:-33 L=set~26:47,68:71,73:126
L=shaft~105:103 L=share~0:-58 L=she~0:-59,96:57 L=shed~83:54 L=sheep~3:44 L=should~78:119
L=shower~0:48,37:61,40:28,101:-38 L=showers~35:52,36:80,37:26,40:58,96:-46 L=shuts~65:37
L=sink~0:-58,35:49,40:15,83:21 L=sinks~0:-24,37:87,41:23 L=sit~0:39 L=sits~0:-36,99:35 L=six~55:54
L=sixty~0:-47,68:95 L=sleeve~0:45 L=slope~17:52 L=smal~0:39 L=small~44:28,96:33
L=so~0:20,35:27,40:31,83:93 L=solar~99:-46 L=sold~0:44 L=sorry~96:34,99:38 L=source~101:59
L=south~58:44 L=spacing~16:47 L=speed~0:61,73:29 L=spell~19:32
L=spring~83:44,87:-30,98:41,101:32,103:97 L=sprinkler~0:32,39:27 L=sprinklers~38:75
L=square~0:-56,77:27 L=stable~0:-31 L=staff~96:76 L=stand~87:29 L=standing~115:68 L=stands~99:65
L=start~13:27 L=starts~64:58,74:69 L=static~99:54,107:-51,115:214 L=stays~0:-35 L=steady~116:39
L=stock~0:-46 L=stone~0:31 L=stopped~0:38 L=stops~37:-38,65:91 L=storage~78:32 L=stored~26:38
L=strainer~0:80,104:-39 L=strings~0:-80,55:38 L=sub~68:82 L=submersible~66:55,68:87,99:-32
L=sucks~86:55 L=suction~0:64,86:131,102:-43,104:-40 L=suite~0:25,96:-25 L=summer~96:38,99:40
L=sun~42:41 L=sunday~0:37 L=supply~0:-46 L=surface~99:40 L=swears~0:51 L=switch~64:99,65:70,73:-45
L=swl~99:32,115:71 L=system~59:44 L=take~101:-36 L=takes~0:47,91:56,94:50
L=tank~60:95,61:71,62:65,65:-39,78:108,79:89,81:92,83:89,87:138,88:82,99:-40,101:-67,102:-63,103:-61
L=tank's~87:50 L=tanks~0:42 L=tap~0:70,102:42 L=tape~0:-37 L=taps~0:38,40:33,104:-31 L=team~0:56
L=tent~0:51 L=tents~0:42 L=test~117:57 L=than~74:102 L=that~42:31,86:24,87:63
L=the~0:87,12:-16,13:41,14:-39,17:25,24:-40,28:-40,42:51,44:-33,45:-41,57:-32,61:-31,64:21,72:-31,76:59,81:40,86:34,88:39,91:53,101:59,102:32,104:34,106:-37,107:50,116:-44
L=then~0:75,101:-41,104:49,116:36 L=ther~0:33 L=there~97:40 L=there's~62:38,85:34 L=theres~0:34
L=they~0:46,96:-37 L=thinking~0:54 L=thirty~102:13 L=this~0:75 L=though~0:33 L=three~0:50
L=through~86:43,89:24 L=tilt~58:64 L=tilted~58:32 L=timed~101:38
L=to~4:-52,24:39,42:25,49:33,60:37,83:-48,86:-41,87:17,88:48,99:53,102:35,104:60,105:-32,113:76,117:21
L=together~0:27,101:-56 L=toilet~40:92,96:40 L=toilets~31:42,37:27,40:26,41:58 L=told~0:50
L=took~0:43,35:30,71:23 L=top~0:45 L=total~0:-48,96:28 L=tote~0:26 L=tower~0:-39,87:54,104:50
L=town~0:74 L=trickle~96:21 L=trough~102:12 L=troughs~0:-76,97:81,104:32 L=truck~0:26
L=tubing~12:41 L=turns~93:28 L=twenty~0:38 L=two~0:93,41:-28,54:41,55:25,89:37,96:37 L=tyre~0:21
L=under~99:44 L=underground~83:38,88:-17 L=until~0:54 L=up~102:57 L=uphill~0:-54,87:46,102:42
L=upper~0:-58,88:78,102:51 L=upstairs~0:39,102:46 L=us~56:20,90:34,96:39
L=use~0:-55,36:48,89:97,94:41,95:44 L=uses~0:38,90:44 L=v~48:42
L=valve~25:102,62:-57,84:34,85:51,100:31 L=variable~73:36 L=vessel~0:-23,24:23,27:45,60:42,62:65
L=voc~53:65,59:-43 L=volt~70:52 L=voltage~53:42 L=w~0:-41,53:54,55:47,57:51 L=want~22:79,78:38
L=wanted~73:22 L=wants~0:42,69:35,82:52 L=was~0:73,96:-34,104:-42,108:22 L=washer~0:42
L=washing~41:70 L=water~0:9,10:48,28:61,68:-39,79:51,98:50,99:145,100:126,102:-37,107:-53,115:73
L=water's~99:35 L=watering~0:35 L=way~70:32,104:54 L=wc~0:34,37:-46
L=we~0:98,22:53,35:31,44:26,55:-34,78:25,89:66,90:64,91:25,94:59,96:55,99:-50,103:46 L=we're~96:24
L=weakest~43:22 L=well~99:14,105:95,107:59,108:51 L=well's~107:67 L=wellhead~96:-36 L=were~0:62
L=what~0:44,100:36 L=when~0:40,32:63,37:-40,96:30 L=which~0:-85,36:45,103:59 L=wide~107:38
L=wife~0:30 L=wire~49:99,104:-68 L=with~35:-35,51:37,60:52,83:-34,84:35,85:48,105:17,115:-39
L=within~0:34,99:33 L=without~0:-43 L=works~0:28 L=would~0:-49 L=write~0:62 L=wrote~0:48
L=x~0:93,54:38 L=yard~0:-41,1:39 L=yards~103:39 L=year~0:35,99:-37 L=yield~0:64,101:38 L=you~0:47
L=your~0:45 L=yurt~0:44 L=zone~0:29 L=zones~30:55 L=|~35:31,59:31,83:38,96:21,103:47
R=!~37:46,96:31 R=(~0:-46 R=)~0:67,37:53
R=,~0:44,10:-83,38:49,46:76,73:15,78:-55,83:40,88:11,89:45,104:28,113:-50,115:37
R=.~0:96,1:-56,6:27,8:46,9:-40,21:-23,28:6,29:-32,32:-15,33:4,34:-24,36:-18,39:-44,42:30,44:63,55:-25,57:-33,61:-19,63:-42,64:15,87:17,89:42,90:59,96:44,99:25,100:19,101:63,104:53,109:-48,111:-24
R=0~0:35,6:-44,14:37,83:-45,88:-50,97:21,99:47 R=1~0:24,19:51,31:-61,101:-62
R=2~41:51,61:38,62:49,105:58 R=3~46:60,64:39,102:35,103:38,117:37
R=4~37:-34,86:22,87:-36,102:11,107:37,110:61,117:43
R=5~0:42,1:-51,3:27,12:-40,64:58,66:39,83:-33,104:21,107:48
R=6~37:-33,99:-32,101:15,107:25,113:53,115:24 R=7~19:54,68:-47,88:35,96:-33,105:106
R=8~0:43,55:53,64:38,99:-42,110:53 R=9~83:-45,101:-48,115:29 R=;~0:48,96:43
R=?~0:76,35:37,90:44,96:41,100:27,101:-50,102:47 R=a~0:38,10:39,30:52,40:33,51:95,89:50
R=above~68:-23,87:80,88:7,98:61,102:95,103:58,104:-33 R=acid~0:36 R=acres~96:37
R=across~0:32,105:33 R=adults~0:46,96:28 R=after~0:28 R=ago~0:24 R=ah~59:75 R=air~62:50,109:30
R=all~0:-25,23:24,35:51,97:33,101:49 R=alpacas~0:58 R=also~0:46 R=altitude~44:35 R=altogether~89:47
R=an~0:66,74:32,104:-51,114:23 R=and~0:24,33:91,35:53,37:42,40:59,59:-55,64:71,97:-71,104:43,107:35
R=apart~16:30,18:20 R=apiece~90:45 R=are~0:-46 R=around~0:42 R=arrives~96:30
R=at~0:37,4:-56,9:13,13:13,22:33,28:42,30:113,32:73,34:88,36:65,39:60,55:-60,62:-42,70:56,88:-35,96:30,101:-39,102:-46,104:-33,107:50,112:61,113:68
R=august~0:31 R=automatic~0:-29,97:32 R=away~104:63 R=back~82:46 R=bank~59:36 R=bar~0:-31,64:85
R=barn~87:-35 R=barrel~0:-41,88:37 R=basin~35:-35,37:61 R=basins~0:-28,37:114 R=bath~0:31
R=bathroom~0:59 R=bathrooms~35:38 R=batteries~0:38,50:39,59:30 R=battery~50:45,59:33 R=be~0:27
R=beds~0:57 R=beef~1:39 R=before~108:57 R=begin~13:40 R=behind~0:34
R=below~0:-33,83:61,99:59,102:16,103:10,107:-40 R=bends~84:84 R=beside~1:55,3:62,83:42,88:-32
R=between~16:59 R=bigger~0:53 R=bladder~62:26 R=blue~0:40 R=booster~0:16 R=bore~0:-46
R=borehole~106:22,107:33 R=bottom~0:65,104:-33,107:70 R=bowls~97:49 R=break~0:-56,21:36,83:31
R=bucket~0:36 R=bulls~1:40,5:66 R=burn~0:-41,96:36 R=but~0:162,37:34,96:-52
R=by~0:47,23:24,63:58,89:37 R=cabin~28:29,87:53,104:35 R=cabins~35:16 R=cable~49:85,104:-29
R=calf~5:65 R=calves~5:102 R=campers~96:41 R=cart~0:75 R=casing~105:46,115:33 R=cattle~0:-17,1:75
R=centrifugal~0:70 R=checked~0:-37 R=chickens~0:-62,4:106 R=children~0:81,96:-35 R=cistern~83:21
R=climb~102:39 R=climbs~102:27 R=closed~0:59 R=cottage~103:55 R=could~37:30 R=covers~0:22
R=cow~5:40 R=cows~0:-22,1:67,2:116,5:55,96:-28 R=creek~102:27 R=dairy~2:42
R=day~10:57,15:63,80:64,81:73,90:70,91:22 R=deep~0:50,79:42,99:-38,107:120 R=delivery~0:33
R=depth~107:34 R=diameter~105:40 R=diesel~0:39,104:-30 R=difference~0:68
R=down~68:48,99:69,104:-41,115:70 R=drawn~114:25 R=drink~0:-36,1:42,4:22 R=drinkers~97:114
R=drip~6:63,13:34,18:30 R=dripper~18:22 R=drippers~0:42,16:48 R=drive~0:23
R=drop~103:35,104:-46,110:69 R=drops~0:52 R=dry~0:-21,1:47,75:48,91:91,101:45 R=e~47:31
R=each~8:26,28:24,35:59,90:76,96:-61 R=elbows~84:72 R=electricity~96:31 R=elevation~44:33
R=emitter~18:26 R=empty~0:22 R=enough~83:34 R=ever~37:31 R=ewes~3:124 R=expansion~26:51,27:70
R=fall~103:40 R=fed~0:27 R=feeds~83:-48,88:51 R=feet~0:37 R=fence~0:55 R=fill~0:23
R=filled~83:64,103:-42 R=fills~0:-51 R=filter~13:57 R=fine~0:33 R=fire~82:75 R=first~0:73
R=float~97:82 R=floats~0:-51,97:85 R=flooded~0:67 R=flow~0:34,35:-52 R=flush~40:38 R=folks~96:64
R=foot~5:33,84:36,85:63
R=for~22:39,31:25,37:56,69:28,82:94,83:-30,88:-33,89:33,97:29,101:-48,114:54 R=free~0:40
R=from~83:53,87:41,99:26,104:25 R=ft~0:50 R=full~79:137,96:55 R=garden~31:35,83:-24,99:-24
R=gauge~0:47 R=generator~0:25,104:-33 R=get~96:-28 R=give~37:30 R=gives~103:46 R=go~0:-38,107:39
R=goats~0:-21,3:128 R=goes~68:46 R=going~36:100 R=golf~0:71 R=gone~0:28 R=good~0:51 R=got~0:84
R=gpm~107:44,113:40 R=gravity~0:-63,23:27,87:43 R=greenhouse~6:37 R=grid~96:59
R=ground~68:21,102:-45 R=guests~0:33,96:61 R=h~99:39 R=hangs~107:31 R=has~37:-47,64:-52,103:117
R=hdpe~0:32 R=he~0:80 R=head~0:40,1:60 R=heads~38:49 R=heater~28:97 R=heifers~1:45
R=height~87:51,102:50,104:47 R=hens~0:-37,4:169 R=her~0:37 R=here~96:28
R=higher~87:45,102:57,104:-35 R=hill~83:-55,88:43,102:39 R=hold~0:25 R=horses~1:119
R=hose~0:-44,31:140,32:76,38:31,86:53 R=hoses~0:-112,31:134,32:79 R=hour~74:53,114:23
R=hours~19:30,94:33 R=house~64:-84,83:30,87:68,101:25,102:36,104:34,107:-50 R=household~0:-56
R=houses~0:45 R=hung~99:34 R=i~0:69,19:50,29:58,101:-34,102:-31,103:36,104:66 R=i've~0:32,88:-33
R=id~0:42 R=identical~0:-31,63:79
R=in~42:55,55:78,60:30,63:25,73:-40,78:78,86:37,87:-30,94:35,96:6,99:28,101:7 R=inch~104:52
R=inside~105:41 R=intake~0:-60,106:55 R=is~0:64,44:26,62:-65,74:67,83:-36,101:74,102:-30,105:41
R=it~60:15,66:43,68:-9,88:-49,96:-61,99:40,101:54,108:14 R=it's~79:24 R=its~0:48,68:-51,69:35
R=joined~0:44 R=july~0:-72,15:45 R=june~0:-47 R=just~0:43 R=kept~82:63 R=kid~0:42 R=kids~0:29,3:43
R=kitchen~0:61,87:34,102:-46,104:37 R=lake~0:-61 R=last~0:38 R=late~0:35 R=later~0:54 R=laying~4:26
R=lead~0:31 R=least~11:36 R=level~83:75 R=lift~0:-40,99:56,102:41 R=like~0:-47
R=line~0:39,16:36,99:-36,101:-42,102:-51,103:72 R=lines~12:29,13:62 R=live~0:-51,96:34 R=loft~88:53
R=long~12:44,86:40,107:-26 R=loo~40:83,96:-30 R=looking~0:52 R=loos~40:60 R=lost~0:-37,56:87
R=low~62:-32,99:56 R=lower~103:61 R=lowered~0:44 R=m~0:47,88:24,102:46,103:-66,105:43,115:17
R=machine~41:37 R=machines~41:47 R=main~0:74 R=mains~99:95 R=may~0:5 R=me~0:34 R=measured~0:49
R=mesh~0:58 R=meter~0:-35,89:42 R=meters~88:36 R=metre~0:-34,18:34 R=microsprinklers~33:86,34:75
R=milk~0:-52,2:193 R=milking~0:-57,2:71,95:26 R=min~0:25,19:35 R=minutes~94:34 R=mm~0:-24,104:47
R=modules~54:37 R=monks~96:25 R=months~0:-41,75:54 R=more~4:28 R=most~96:53 R=motor~0:42
R=my~0:52,96:31,101:-41 R=n~0:-94,45:151 R=need~11:35 R=needs~0:53 R=neighbour~0:56,37:-36
R=never~0:24 R=new~0:61 R=next~83:29 R=night~0:-41,96:43 R=no~0:39,35:-55,103:-31 R=nobody~0:41
R=none~3:53 R=north~45:88 R=nothing~104:33 R=now~100:36 R=o'clock~0:37
R=of~6:31,49:16,50:23,56:52,57:14,62:-55,68:-48,76:35,78:37,86:39,87:-39,99:-68,104:34,110:68
R=off~0:44,64:49,65:35,104:51 R=old~0:65 R=on~1:33,6:19,18:32,32:24,88:47,91:53,102:-33
R=once~34:56,36:59 R=one~101:37,103:29 R=open~36:46,53:52 R=or~36:47 R=other~37:33 R=our~0:33,99:40
R=out~48:38,64:58 R=outside~0:-43,31:30 R=over~87:27,103:63,106:130 R=own~0:-36 R=paddocks~97:51
R=pairs~0:-50,5:98 R=panel~54:53 R=panels~54:36,55:53,57:35,96:-28 R=parallel~57:41,63:47
R=pe~0:68,102:-27 R=people~64:-39,96:125,101:38 R=per~18:9,72:23,74:29 R=person~96:107
R=persons~0:-21,35:-44,96:100 R=pex~0:39 R=phase~0:45 R=pigs~0:39
R=pipe~0:52,87:-44,99:-32,101:80,104:39,110:25 R=please~0:55,101:-57 R=plot~0:29
R=plus~37:-42,83:49 R=poly~0:47,99:-57,104:47 R=polyethylene~0:49 R=power~0:-80,31:48,37:27
R=pre~27:35 R=precharge~62:37 R=pressure~0:-34,21:59,62:49 R=psi~62:60
R=pump~24:42,32:72,34:53,68:-51,73:34,83:3,87:-46,88:-44,98:58,99:91,101:20,103:-56,106:31,107:51,109:32
R=pumphouse~0:50 R=pumping~113:46 R=pumps~63:82,83:39 R=pupils~96:55 R=pushes~99:45 R=put~0:60
R=pvc~0:66 R=q~0:32 R=reach~104:40 R=relief~26:33,28:20 R=reserve~78:47 R=reservoir~0:20
R=right~83:47 R=rim~0:-57 R=ring~0:15 R=rise~102:57 R=river~99:37 R=road~0:52 R=roof~76:43
R=rooms~35:41 R=rows~16:73 R=run~32:47,36:69 R=runs~99:-38 R=says~0:62,74:75 R=sea~44:58
R=second~0:-25,104:39 R=seconds~0:51,101:32 R=see~0:36 R=series~55:48 R=set~70:54,73:57
R=shed~83:46 R=sheep~3:79 R=sheet~72:42 R=should~0:-51 R=shower~35:153,36:54,62:-39,99:-49,102:-34
R=showers~0:-18,35:125,36:94 R=shutoff~0:52 R=side~63:63 R=since~0:-84
R=sink~0:-53,32:55,37:134,70:60 R=sinks~37:117,96:-46 R=sits~0:-58,76:93 R=six~2:116 R=size~0:-33
R=sleep~96:50 R=slope~102:65,103:-24 R=so~0:78,35:-37,96:-34,101:68,102:-29
R=solar~1:42,96:43,115:28 R=sometimes~96:26 R=somewhere~93:58 R=sorry~0:92 R=source~0:40
R=south~46:79 R=speed~73:35 R=spring~101:57 R=sprinkler~0:-53,38:118
R=sprinklers~0:-34,38:120,39:69 R=staff~0:58 R=stand~88:53 R=stands~105:42
R=starts~0:-71,62:40,74:75 R=static~107:67 R=steers~0:-33,1:68 R=stock~1:39 R=strawberries~0:37
R=string~57:71 R=strings~0:-37,57:68 R=sucklers~5:25 R=sucks~109:34
R=suction~67:53,86:67,99:53,102:-45 R=summer~0:-13,42:28,99:76 R=surface~0:61,83:-27
R=switch~0:-34,60:54,64:20 R=take~0:58 R=takes~0:22
R=tank~0:23,28:-41,62:56,83:43,87:63,99:-26,101:-57 R=tanks~0:34,21:25 R=tap~0:52,31:48,37:61
R=td~117:23 R=teachers~96:37 R=tents~35:44 R=th~56:76 R=than~4:29,103:28 R=thank~0:-45,104:22
R=that~0:21,37:26
R=the~0:43,9:36,11:21,13:7,14:-33,29:-49,35:-61,39:-49,46:-31,56:54,64:-32,65:-42,83:5,87:57,88:22,89:37,99:61,101:41,102:36,103:68,106:43,110:-41
R=them~96:-30 R=then~0:41,102:-38 R=theres~0:45 R=they~0:73,11:34,40:-37 R=they're~0:40
R=thinking~0:-34 R=though~102:27 R=through~87:35,102:-56 R=time~30:66,34:59,39:42 R=times~0:47
R=to~6:46,56:54,102:50,103:63,104:46,105:-39,107:35 R=toddler~0:36,96:-28
R=together~0:-39,32:46,35:-78,36:97,39:57,96:-28 R=toilet~40:68,96:-41 R=toilets~0:-42,35:53,40:129
R=tomatoes~0:40,6:-41 R=top~0:49,115:44 R=total~83:89 R=tote~88:20 R=tower~0:-58,88:72 R=town~0:42
R=trailer~0:45 R=trough~3:41,97:113 R=troughs~0:-23,97:117 R=ts~0:37 R=twenty~103:39
R=two~55:66,57:-47,83:-43,94:46 R=type~3:32 R=up~73:48,102:25,104:13 R=uphill~0:-40,102:58
R=upstairs~0:37 R=upwards~102:50 R=us~0:54,96:85,103:26 R=used~0:-22
R=valve~26:34,28:34,84:34,85:55 R=vessel~0:-17,62:50 R=volt~0:38 R=w~0:62,55:26 R=want~87:45
R=wants~0:45 R=was~0:33 R=wash~31:50,35:-37,37:37 R=washer~41:108 R=washers~41:67 R=washing~41:80
R=water~19:53,28:36,40:-44,68:43,87:-50,99:115,102:-18,103:-34,104:-20,107:38
R=waterers~0:-35,97:44 R=wc~40:73 R=wcs~0:-42,40:62 R=we~0:44,46:91,83:-31,88:38,102:-23
R=we've~0:47 R=weak~0:42 R=well~3:20,37:-34,102:21,107:30,108:39 R=well's~0:-51 R=wellhead~0:-37
R=what~0:-40 R=when~0:88,79:142,96:-18,99:-29,113:39 R=where~13:54,99:41 R=which~88:50,92:30
R=why~100:30 R=wide~0:35 R=winter~56:22 R=wire~49:85,104:-43
R=with~0:38,1:-34,3:-22,5:58,35:40,83:71,96:37,97:36,107:62 R=without~0:-66,78:61 R=workers~96:53
R=x~0:59 R=year~51:127 R=yes~0:60 R=yield~107:48 R=yields~0:66 R=you~104:21 R=zone~0:-73
R=zones~0:-40,20:81,29:61,96:-47 R=|~91:38,104:41,115:-64 angleE=n~45:60 angleE=north~45:88
angleE=relief~26:37 angleE=south~46:37 angleE=valve~26:37 angleL0=,~58:52 angleL0=.~0:60
angleL0=at~26:54,45:30,46:42,58:61 angleL0=is~19:60 angleL0=latitude~46:29 angleL0=out~42:29
angleL0=panels~58:35 angleL0=south~58:42 angleL0=tilt~58:64 angleL0=tilted~58:32 angleL0=to~42:31
angleL0=water~100:52 angleL1=.~100:43 angleL1=in~42:27 angleL1=the~42:74,46:47 angleL1=water~42:29
angleL2=,~58:52,100:11 angleL2=.~0:37,46:39 angleL2=0~100:36 angleL2=hot~26:37 angleL2=it's~26:37
angleL2=m~100:33 angleL2=mm~42:38,100:34 angleL2=one~0:66 angleL2=panels~46:43 angleL2=pipe~100:55
angleL2=v~58:45 angleM=drip~19:64 angleM=pump~45:61,46:38,58:41,100:29 angleM=spring~0:49
angleM=tank~46:43 angleN=power.facing~58:58 angleP=hot.volume~26:37 angleP=pipes.held~42:70
angleP=power.facing~58:33 angleP=power.source~58:78 angleR0=.~0:-33,42:48,46:19,58:18,100:44
angleR0=n~45:60 angleR0=north~45:88 angleR0=south~46:38 angleR1=.~0:54 angleR1=the~100:38
angleR2=,~0:51 angleR2=0~46:51 angleS=come~42:29 angleS=lati~46:29 angleS=pane~58:123
angleS=tilt~58:32 angleS=wate~100:53 angleT=beds.area~19:65 angleT=power.facing~58:68
angleT=power.panel~58:81 angleT=power.series~58:70 angleT=power.source~19:54,58:104
angleT=power.strings~58:53 angleT=power.tilt~58:-65 angleT=power.voltage~58:32
angleT=pump.cut_in~26:47 angleT=pump.cut_out~26:47 angleT=pump.placement~46:38,100:31
angleT=water.kind~19:48,26:40,46:36,100:44 angleT=water.yield~46:22
angleT=way.length~0:35,42:55,46:42 angleT=way.pipe~0:36,42:63 anglea=.~42:21 anglea=south_.~46:47
anglel0=at~26:55,45:31,46:40 anglel0=is~19:61 anglel0=tilt~58:63 anglel0=to~42:31 anglel1=,~58:44
anglel1=water~100:36 anglel2=.~0:62 anglel2=panels~58:22 anglelr=at_,~26:36 anglelr=at_n~45:42
anglelr=is_.~42:29 anglelr=to_.~42:24 angler0=.~42:53,58:40,100:57 angler0=n~45:60
angler0=north~45:101 angler0=south~46:53 angler0=tilt~58:26 angler1=.~45:35,46:43
areaE=,~0:47,76:23 areaE=0~0:67 areaE=1~0:52,6:-26 areaE=4~0:24 areaE=:~0:44 areaE=cistern~76:27
areaE=drip~6:50 areaE=from~76:36 areaE=long~0:39,6:-29 areaE=m~0:55 areaE=roof~76:44
areaE=tomatoes~0:45,6:-39 areaE=zones~6:24 areaL0=,~6:18,76:18 areaL0=.~76:38 areaL0=:~6:40
areaL0=area~6:21 areaL0=drip~6:50 areaL0=garden~0:46 areaL0=i~6:40 areaL0=is~76:41 areaL0=it~76:36
areaL0=of~0:39 areaL0=off~76:50 areaL0=orchard~6:24 areaL0=rain~76:27 areaL0=roof~76:42
areaL0=the~0:29 areaL1=.~76:37 areaL1=garden~0:-38,6:47 areaL1=it~0:-35,6:39 areaL1=rain~76:17
areaL1=roof~76:46 areaL1=the~0:-29,76:30 areaL2=,~76:33 areaL2=.~76:52 areaL2=8~0:51
areaL2=drip~6:37 areaL2=ft~6:46 areaL2=inch~6:43 areaL2=l~0:47 areaL2=m~0:66,6:-21
areaL2=only~76:41 areaL2=so~0:40 areaM=cistern~76:46 areaM=drip~6:160 areaM=pump~0:54,6:48,76:38
areaM=roof~6:-76,76:119 areaM=spring~0:72 areaM=tank~0:68,76:40 areaM=well~0:49
areaN=drip.crop~6:38 areaN=drip.rows~6:54 areaN=drip.zones~6:43 areaN=rain.runoff~76:36
areaP=drip.crop~0:-66,6:99 areaP=pump.present~0:29 areaP=rain.used~0:67
areaP=store.fills~0:-40,76:65 areaP=store.volume~6:-44 areaP=water.kind~76:64 areaP=way.climb~6:35
areaR0=,~0:53 areaR0=.~6:69,76:51 areaR0=all~0:60 areaR0=drip~6:33 areaR0=it~0:43,76:-37
areaR0=of~6:47,76:31 areaR0=roof~76:44 areaR0=tomatoes~0:22 areaR1=,~0:46,6:-39 areaR1=.~6:42
areaR1=0~0:31 areaR1=3~0:-14,6:33 areaR1=5~0:61 areaR1=a~76:41 areaR1=all~0:-56,6:46
areaR1=drip~6:30 areaR1=in~0:-35,6:49 areaR1=lines~0:23 areaR1=pump~0:70 areaR2=,~6:22
areaR2=.~0:59 areaR2=0~6:48 areaR2=3~0:83,6:-39 areaR2=4~0:37 areaR2=5~6:47 areaR2=8~0:31,6:-27
areaR2=every~6:37 areaR2=ft~6:37 areaR2=lines~0:47,6:-41 areaR2=long~0:25,6:-20
areaR2=m~0:78,76:-42 areaR2=one~0:41 areaR2=zones~6:31 areaS=cist~0:57,6:-46 areaS=floo~0:29
areaS=gard~0:52,6:18 areaS=hous~0:61,6:-37 areaS=irri~6:42 areaS=wate~0:59,6:-47
areaT=power.battery~0:36 areaT=power.capacity~0:24 areaT=power.facing~6:39
areaT=power.source~0:25,6:28 areaT=pump.height~6:46 areaT=pump.placement~6:27
areaT=pump.works~0:-43,76:58 areaT=store.fills~0:-48,76:57 areaT=store.volume~0:55,76:8
areaT=tank.volume~6:17 areaT=water.kind~0:50,6:51,76:45 areaT=water.level~0:70
areaT=water.yield~6:11 areaT=way.climb~0:30,6:22 areaT=way.length~0:78
areaT=way.pipe~0:37,6:73,76:-52 areaT=well.depth~0:41 areaa=~6:66 areab=~6:72 areab=roof_is~76:42
areal0=,~6:23 areal0=.~0:-43,6:39 areal0=:~6:35 areal0=is~76:42 areal0=off~76:42 areal0=roof~76:40
areal1=beds~6:41 areal1=garden~6:39 areal1=i~6:26 areal1=the~0:40 areal2=.~0:42 areal2=the~6:51
areal2=vegetable~6:61 arealr=is_.~6:43 arealr=off_of~76:42 arear0=,~6:58 arear0=.~6:40,76:24
arear0=and~0:-35 arear0=of~6:42,76:32 arear1=it~0:43,76:-37 arear1=under~0:52,6:-50 arear2=,~6:30
arear2=.~6:29 bareE=!~0:-59,96:40 bareE=(~0:-29,1:64 bareE=,~0:37,2:34,32:-70,37:20,38:81,63:21
bareE=0~0:-29,38:20,57:40,96:37 bareE=1~1:23,33:67,37:27 bareE=2~2:28,35:67,57:20
bareE=3~33:109,40:-47,55:95,64:76 bareE=4~0:70,1:-24 bareE=5~0:35,2:43,5:48,35:-39,40:-31
bareE=7~96:39 bareE=8~55:42,96:-28 bareE=9~0:54,2:44,96:-62 bareE=:~0:85,96:-32 bareE=?~0:78
bareE=acres~0:65 bareE=adults~96:28 bareE=ago~0:32 bareE=ah~0:64 bareE=all~35:46,97:22
bareE=automatic~0:-29,97:31 bareE=bar~64:42 bareE=barn~1:56 bareE=basin~37:35
bareE=basins~0:42,37:86,96:-48 bareE=bathroom~0:61,37:-36 bareE=bathrooms~35:39
bareE=batteries~0:28 bareE=battery~57:47 bareE=beef~1:36 bareE=bends~84:84 bareE=both~35:41
bareE=bowls~97:48 bareE=break~21:37 bareE=bull~0:39 bareE=bulls~1:40,5:68 bareE=by~0:-46,63:57
bareE=cabins~35:16 bareE=cable~0:-31 bareE=calf~5:65 bareE=calves~5:95 bareE=campers~96:41
bareE=can~33:24 bareE=cattle~1:61 bareE=chickens~0:-63,4:106 bareE=children~0:64
bareE=controller~0:-18,55:35 bareE=cow~5:41 bareE=cows~0:-48,1:65,2:117,5:54,96:-34
bareE=dairy~2:40 bareE=day~20:48,96:96 bareE=deep~107:49 bareE=degrees~55:39 bareE=dies~0:51
bareE=does~0:25 bareE=down~35:-50 bareE=drink~0:-68,1:67,4:20 bareE=drinkers~3:-43,97:112
bareE=drip~0:-17,18:37 bareE=dripper~18:38 bareE=drippers~0:32 bareE=dry~1:44,75:51
bareE=each~0:-23,1:-44,35:45,55:32 bareE=elbows~84:70 bareE=else~0:-53 bareE=every~0:70
bareE=ewes~0:-45,3:123 bareE=faucet~37:55 bareE=five~0:16 bareE=float~97:78
bareE=floats~0:-77,1:95,97:82 bareE=flow~0:42,35:-50 bareE=flush~0:-30,40:35 bareE=folks~96:64
bareE=foot~0:-54,5:29,84:36,85:63 bareE=four~0:43 bareE=from~0:-65,1:22,96:45 bareE=front~0:35
bareE=ft~96:-21,97:42 bareE=full~96:39 bareE=gal~96:-18 bareE=garden~0:-44,31:60,96:50
bareE=get~0:-44 bareE=goats~0:-48,3:116,96:29 bareE=going~36:90 bareE=guests~0:45,96:68
bareE=h~74:50 bareE=head~1:57 bareE=heater~0:-39 bareE=heifers~1:41,2:67 bareE=hen~0:-49
bareE=hens~0:-77,4:153 bareE=here~96:30 bareE=holding~0:-59 bareE=horses~0:50,1:85,5:12,96:-17
bareE=hose~0:-114,31:135,32:71,36:40,38:28 bareE=hoses~0:-91,31:149,32:80 bareE=hour~74:53
bareE=house~96:44 bareE=houses~0:55 bareE=humans~96:36 bareE=hundred~0:-44,55:71
bareE=identical~63:80 bareE=joined~0:46 bareE=july~96:36 bareE=kid~0:45 bareE=kids~0:60
bareE=kitchen~0:51,35:15,37:-53,40:46 bareE=laying~4:14 bareE=line~18:37,96:-39 bareE=litres~96:63
bareE=live~96:36 bareE=loo~0:-57,40:80 bareE=loos~0:-54,40:62 bareE=lost~0:-48,56:76
bareE=m~35:-45,96:30 bareE=machine~41:26 bareE=machines~41:53 bareE=me~0:47 bareE=merinos~3:59
bareE=meter~0:46 bareE=metre~18:38 bareE=microsprinklers~33:85,34:74 bareE=milk~1:-34,2:84
bareE=milking~0:-29,2:71 bareE=mm~0:15 bareE=months~75:55 bareE=more~0:-75,4:26 bareE=n~0:-65,45:91
bareE=naturally~0:-41,96:43 bareE=never~0:-68,35:53 bareE=new~0:35 bareE=night~96:50
bareE=no~0:-56,37:61 bareE=none~3:35 bareE=north~55:36 bareE=not~0:54,96:-42 bareE=o'clock~0:37
bareE=off~0:-46,97:48 bareE=once~0:-67,34:55,36:41 bareE=one~29:35,55:50,96:33 bareE=only~0:53
bareE=open~0:-26,36:44 bareE=or~36:43 bareE=out~39:49,48:40 bareE=outside~0:-31,31:29
bareE=over~0:40 bareE=paddocks~97:50 bareE=pair~5:71 bareE=pairs~5:63
bareE=panels~55:60,57:32,96:-30 bareE=parallel~0:-25,55:-56,57:110,63:47
bareE=people~0:65,3:-53,96:98 bareE=per~18:37,35:-49,74:30,96:20 bareE=person~96:118
bareE=persons~35:-41,96:89 bareE=phase~0:47 bareE=pigs~0:47 bareE=pipe~0:39 bareE=plus~0:62,37:-40
bareE=poly~0:41 bareE=pressure~21:74,96:-43 bareE=pumps~63:82 bareE=pupils~96:53 bareE=rain~0:36
bareE=right~0:57,96:-41 bareE=rooms~35:41 bareE=run~29:44,32:82,36:69 bareE=running~33:24
bareE=same~36:65 bareE=series~55:127 bareE=shade~0:-49,55:40 bareE=sheep~3:85
bareE=shower~35:154,36:47,37:89 bareE=showers~0:-22,35:99,36:96 bareE=side~63:59
bareE=sink~32:55,37:77,40:-30,96:32 bareE=sinks~37:66 bareE=sleep~96:50 bareE=so~0:55,96:-38
bareE=sometimes~96:26 bareE=sorry~0:61 bareE=south~46:42 bareE=sprinkler~0:-39,38:84
bareE=sprinklers~0:-45,38:118,39:68 bareE=staff~0:66 bareE=starts~0:-34,74:76
bareE=steers~0:-43,1:67 bareE=stock~0:-73,1:63 bareE=string~0:-86,55:73,57:77
bareE=strings~0:53,55:-30,57:57 bareE=summer~0:-47 bareE=tank~0:9,96:-15 bareE=tanks~21:26
bareE=tap~0:-57,31:49,37:48 bareE=teachers~96:37 bareE=tents~35:44 bareE=th~56:76
bareE=than~0:-45,4:25 bareE=there's~0:-44 bareE=they~38:58,96:44 bareE=think~0:70
bareE=three~0:28,55:-43 bareE=time~0:-17,29:59,30:63,34:56,36:53,38:54,39:34 bareE=times~0:59
bareE=toddler~0:36,96:-28 bareE=together~0:-48,32:79,36:85,96:-31 bareE=toilet~40:59
bareE=toilets~36:31,40:122 bareE=total~0:13,96:-45 bareE=trough~0:-70,3:34,97:106
bareE=troughs~0:-25,1:20,96:-32,97:107 bareE=ts~0:37 bareE=two~0:39,1:42,57:-60 bareE=up~0:-45,1:27
bareE=us~96:58 bareE=v~57:21 bareE=valve~84:36,85:56 bareE=volts~0:-22 bareE=w~55:54,57:71,96:-32
bareE=wash~31:34 bareE=washer~41:105 bareE=washers~41:66 bareE=washing~0:-27,35:41,41:78,96:28
bareE=water~0:-37,35:-37 bareE=waterers~0:-37,97:44 bareE=watt~55:34 bareE=wc~40:72
bareE=wcs~0:-44,40:61 bareE=weak~0:18 bareE=well~0:42 bareE=what~96:22 bareE=when~1:41
bareE=workers~96:53 bareE=workshop~0:-26,96:34 bareE=x~0:49 bareE=year~0:-69,51:69
bareE=zones~0:-37,20:79,29:60 bareL0=(~96:34 bareL0=,~1:43,4:24,40:5,41:43,47:42,64:54,107:39
bareL0=.~21:44,37:61,39:43,44:45,96:46 bareL0=0~0:46,1:25,55:54 bareL0=1~4:-46,37:57
bareL0=2~1:33,40:43 bareL0=3~0:31 bareL0=4~3:51,47:42 bareL0=6~40:19,96:-28 bareL0=8~0:42
bareL0=:~0:-26,3:27 bareL0=;~0:-34 bareL0=?~0:-35,96:67 bareL0=about~3:25 bareL0=adults~0:37
bareL0=ah~0:-55 bareL0=all~96:-45 bareL0=always~0:53 bareL0=and~1:34,4:59,31:28,65:23,96:-61
bareL0=are~96:23 bareL0=as~37:31 bareL0=at~0:52,65:30,68:61,96:-36,99:62 bareL0=beef~0:39,1:-20
bareL0=bore~0:25 bareL0=by~0:33 bareL0=cabin~96:36 bareL0=call~0:35 bareL0=camp~96:47
bareL0=come~38:48 bareL0=cottage~96:23 bareL0=count~37:30 bareL0=cows~0:-28,1:42,2:49,5:60
bareL0=dairy~2:41 bareL0=day~0:-39,96:54 bareL0=deep~44:23 bareL0=down~113:32 bareL0=dry~0:59,75:48
bareL0=each~0:38,35:-43 bareL0=family~96:74 bareL0=feeds~97:52 bareL0=foot~0:-47,84:29
bareL0=for~1:37 bareL0=four~0:-43,35:55 bareL0=ft~0:51 bareL0=gal~0:50 bareL0=goats~3:64,96:-30
bareL0=gpm~0:-53,35:52 bareL0=grass~0:20,97:-27 bareL0=guests~96:64 bareL0=has~37:73
bareL0=having~0:-23 bareL0=hens~0:-48,3:15,4:59 bareL0=horses~1:24,97:10 bareL0=hose~0:-64,31:51
bareL0=hoses~31:42 bareL0=household~96:66 bareL0=hung~68:63 bareL0=i~0:25
bareL0=in~20:49,48:38,57:61,96:-37 bareL0=is~0:32 bareL0=it~0:21 bareL0=it's~96:49
bareL0=just~0:-40,37:40 bareL0=kids~0:49 bareL0=kitchen~0:44 bareL0=l~0:-37,60:65 bareL0=last~0:50
bareL0=latitude~0:-46,45:75,46:71 bareL0=level~0:-44 bareL0=limiter~37:34 bareL0=lodge~35:44
bareL0=long~47:31 bareL0=longitude~47:45 bareL0=machines~41:54 bareL0=may~0:39 bareL0=maybe~0:40
bareL0=milk~0:-51,1:32,2:45 bareL0=milking~1:58 bareL0=months~75:49 bareL0=new~85:37
bareL0=occupants~96:46 bareL0=of~55:45,96:18 bareL0=off~65:48 bareL0=on~38:45,64:58
bareL0=one~0:44,37:46,40:39,96:-39 bareL0=only~39:41 bareL0=or~96:42 bareL0=our~0:47
bareL0=out~0:39 bareL0=pairs~1:43 bareL0=people~96:41 bareL0=pipe~0:46 bareL0=psi~0:48
bareL0=pump~68:101 bareL0=question~0:56 bareL0=s~47:31 bareL0=same~96:32 bareL0=sheep~3:24
bareL0=shower~40:20 bareL0=showers~35:85,96:-40 bareL0=sink~35:55,40:24 bareL0=sinks~37:88
bareL0=so~0:-68,35:36 bareL0=solar~0:33 bareL0=sorry~0:-29,96:45 bareL0=static~115:108
bareL0=stock~5:33 bareL0=stops~0:-34,65:42 bareL0=strings~55:42 bareL0=sub~68:42
bareL0=summer~96:42 bareL0=the~35:39 bareL0=there~0:-26,35:31 bareL0=three~0:46,35:-29
bareL0=to~0:53,4:-46,113:83 bareL0=toilet~40:68 bareL0=toilets~0:3,40:76,41:25 bareL0=total~96:39
bareL0=troughs~0:-39,97:66 bareL0=two~55:34 bareL0=up~96:14 bareL0=us~0:-30 bareL0=v~48:40
bareL0=valve~84:28 bareL0=w~0:-27,55:42 bareL0=was~0:51,96:-33 bareL0=wash~0:39
bareL0=washing~41:37 bareL0=water~0:-20,99:75 bareL0=we~2:42,96:47 bareL0=well~0:-51,37:26,107:40
bareL0=zones~30:43 bareL0=|~96:70 bareL1=(~3:37,37:31,96:-43 bareL1=)~0:62
bareL1=,~31:47,34:66,35:-30,39:54,41:20,57:34,68:79,85:32,97:14
bareL1=.~0:16,3:-32,32:54,40:56,47:55,65:37,75:56,96:-34 bareL1=0~0:-28,55:41,57:32,65:-39,113:57
bareL1=1~2:-55,3:-53,38:60,65:40 bareL1=2~0:-31,20:59,65:43,97:44,107:31 bareL1=3~32:32,47:49,99:43
bareL1=4~1:39,47:21,55:16 bareL1=5~1:-10 bareL1=9~3:-35 bareL1=:~1:-52,31:54,40:62,55:56
bareL1=;~35:45 bareL1=a~0:47,37:-57,40:18,96:43,97:34 bareL1=about~0:40 bareL1=am~0:-40
bareL1=and~96:58,99:42 bareL1=at~3:-37,32:20,36:42,107:37 bareL1=bar~0:-39,64:75,65:52
bareL1=bath~0:-24,40:16 bareL1=bottom~0:20,96:-23 bareL1=but~35:47,39:41 bareL1=by~0:-51
bareL1=cabin~0:67,37:-31 bareL1=calves~97:55 bareL1=cattle~1:76 bareL1=cows~0:-38,3:76
bareL1=deep~68:41 bareL1=drops~38:48 bareL1=each~0:13 bareL1=eight~0:16,55:-35 bareL1=feet~29:75
bareL1=field~0:31 bareL1=foot~85:61 bareL1=for~48:39 bareL1=four~0:45
bareL1=from~0:34,3:52,55:-40,96:-43 bareL1=ft~35:52,44:36,68:44,96:32,113:50 bareL1=gravity~1:56
bareL1=ground~21:56 bareL1=guests~0:31 bareL1=ha~0:-33,33:22 bareL1=half~0:39
bareL1=has~0:55,37:-42 bareL1=head~0:52,96:-38 bareL1=hello~3:31 bareL1=hey~0:31 bareL1=hi~96:36
bareL1=horses~97:43 bareL1=house~3:27 bareL1=hp~0:30 bareL1=i~0:-36 bareL1=in~0:-42
bareL1=inch~0:-32 bareL1=into~35:38 bareL1=is~0:-41,96:52 bareL1=it~0:-69 bareL1=kitchen~0:-54
bareL1=l~0:-28,1:36 bareL1=lake~0:30,96:-31 bareL1=late~0:46 bareL1=latitude~47:45
bareL1=live~96:49 bareL1=lodge~0:30 bareL1=m~0:-55,40:54,84:43,97:-33 bareL1=may~0:-57
bareL1=meter~0:26 bareL1=meters~96:-44 bareL1=no~37:35,96:16 bareL1=not~3:47 bareL1=of~84:30
bareL1=off~96:-27 bareL1=on~0:26 bareL1=one~0:52 bareL1=panels~55:56 bareL1=persons~40:33
bareL1=plus~0:46 bareL1=poly~0:18,96:-27 bareL1=power~0:38 bareL1=rooms~0:37 bareL1=run~96:28
bareL1=same~36:49 bareL1=says~0:-41,96:40 bareL1=second~0:-52 bareL1=shower~37:4
bareL1=showers~36:68,37:66,40:49 bareL1=sink~0:-53,37:21,96:22 bareL1=sinks~0:-26,41:38
bareL1=small~96:36 bareL1=sorry~0:48 bareL1=sprinklers~38:64 bareL1=staff~96:48
bareL1=stops~0:56,37:-38 bareL1=tank~60:58 bareL1=tents~0:34
bareL1=the~0:-66,36:43,64:33,97:51,99:40 bareL1=there~1:42 bareL1=theres~0:54
bareL1=they~0:34,96:-36 bareL1=three~0:-26 bareL1=toilet~0:-36,96:27 bareL1=toilets~31:68,40:-50
bareL1=told~0:-59 bareL1=top~0:32 bareL1=two~0:-66,35:19,37:38,41:-52,96:51 bareL1=use~36:51
bareL1=valve~85:26 bareL1=w~57:38 bareL1=water~68:42 bareL1=we~35:8,96:41
bareL1=wellhead~0:27,96:-35 bareL1=when~37:-39,96:38 bareL1=which~0:-32 bareL1=will~0:45
bareL1=with~35:-30,37:37 bareL1=|~35:21,37:36,40:33 bareL2=!~96:27 bareL2=(~0:-41,37:34
bareL2=,~0:-29,1:54,21:36,29:-67,33:123,37:25,38:54,40:45,64:45,99:47
bareL2=.~0:-33,29:62,31:19,36:47,38:68,41:40,46:38,55:-53,57:40,74:81
bareL2=0~1:24,3:52,20:56,21:60,55:-23,96:-23,97:54 bareL2=1~1:46,31:57,51:53,84:25
bareL2=2~1:-30,29:60,37:-44,40:12,57:28 bareL2=3~31:-78,37:66,40:11,57:33,68:-81,75:35
bareL2=4~0:-56,32:65,33:79,64:54 bareL2=5~74:33,96:37 bareL2=6~20:24,35:48,44:32,99:73
bareL2=7~21:42 bareL2=8~0:-38,34:62 bareL2=9~0:27 bareL2=:~1:-42,35:35,40:36 bareL2=;~0:-50,35:54
bareL2=above~96:37 bareL2=adults~40:47 bareL2=afternoon~0:57 bareL2=ah~48:40 bareL2=already~0:31
bareL2=august~0:33,37:-27 bareL2=away~0:46 bareL2=bar~37:-62,64:69,65:50,96:30
bareL2=barn~0:-76,1:39,3:51 bareL2=basins~0:42 bareL2=bath~0:-44 bareL2=baths~0:56
bareL2=battery~0:-49 bareL2=block~33:25,37:-38 bareL2=booster~0:59 bareL2=by~0:-28
bareL2=cabin~37:47 bareL2=calves~96:26 bareL2=can~0:40,97:37 bareL2=cellar~0:-56 bareL2=cold~0:47
bareL2=comes~0:45 bareL2=cottage~35:62 bareL2=counted~35:-32 bareL2=cows~96:36 bareL2=dear~0:55
bareL2=deep~96:-15 bareL2=do~0:47,36:49,37:-40 bareL2=does~0:-24 bareL2=don't~38:48
bareL2=down~32:52,35:-53,96:82 bareL2=drip~30:26 bareL2=drop~0:63 bareL2=each~0:21 bareL2=eco~0:53
bareL2=end~38:31 bareL2=every~0:52,37:-35 bareL2=everything~0:-33 bareL2=ewes~0:-37,96:45
bareL2=family~96:-36 bareL2=fill~96:39 bareL2=fills~0:-48,96:46 bareL2=five~0:-33
bareL2=fixtures~0:49 bareL2=float~0:-38,1:56 bareL2=flooded~0:-23,96:11 bareL2=foot~84:55,96:21
bareL2=four~35:-15,57:46,96:64 bareL2=from~96:35 bareL2=ft~38:48,96:-9 bareL2=gal~0:61,40:-54
bareL2=gallon~96:20 bareL2=gauge~0:45 bareL2=goats~4:35 bareL2=goes~37:-36 bareL2=good~0:75
bareL2=got~0:73,40:-36,96:-64 bareL2=gpm~0:-24 bareL2=great~0:40 bareL2=grid~96:-37
bareL2=grown~0:28 bareL2=guests~37:43 bareL2=half~0:69 bareL2=hanging~0:-69 bareL2=hav~0:52
bareL2=helo~0:65 bareL2=hi~0:67,1:-47 bareL2=higher~0:-52 bareL2=hose~0:-74,37:38,85:33
bareL2=hour~0:-38,96:35 bareL2=how~0:-41,96:40 bareL2=hp~0:-27,96:44 bareL2=hut~37:34
bareL2=i'd~96:52 bareL2=if~0:25 bareL2=inch~0:-25,37:35 bareL2=it's~0:49 bareL2=july~0:34
bareL2=kpa~0:-38,96:20 bareL2=l~0:-64,3:23,64:37 bareL2=last~0:56,96:-32 bareL2=left~0:45
bareL2=lift~0:36,96:-30 bareL2=line~0:36 bareL2=liters~0:96,96:-15 bareL2=litre~0:-36,96:29
bareL2=litres~0:-80,37:45,64:45 bareL2=live~0:-46 bareL2=lodge~0:55 bareL2=long~0:-53
bareL2=lying~0:41 bareL2=m~0:-46,32:22,40:38 bareL2=maybe~0:-47 bareL2=mdpe~0:-27 bareL2=me~96:28
bareL2=meter~0:62,97:-29 bareL2=meters~0:56,96:-23 bareL2=minute~35:-51 bareL2=mountain~0:47
bareL2=mppt~0:-49,48:40 bareL2=n~0:-50,97:37 bareL2=no~0:35 bareL2=north~0:-43 bareL2=nothing~0:-30
bareL2=ok~0:61 bareL2=one~96:53 bareL2=opening~0:59 bareL2=out~0:-33,96:42 bareL2=outlets~36:51
bareL2=over~0:44 bareL2=panels~0:-52,35:54,57:34 bareL2=pe~0:-57,36:67 bareL2=people~40:33,96:-49
bareL2=persons~0:32,35:-32 bareL2=pipe~35:28 bareL2=please~0:-50 bareL2=poly~40:-26,97:25
bareL2=pressure~96:54 bareL2=psi~0:25,96:-22
bareL2=pump~1:-53,35:18,41:32,85:65,96:-65,97:-49,107:15 bareL2=push~0:-36,35:57
bareL2=put~0:-34,96:50 bareL2=pvc~0:-37,31:48 bareL2=quarter~0:-43 bareL2=read~0:42
bareL2=right~0:-68 bareL2=run~55:-45,96:39 bareL2=say~0:30 bareL2=seconds~0:65
bareL2=series~0:-39,96:52 bareL2=set~0:59 bareL2=sheep~0:-31,96:33,97:42 bareL2=shower~37:-47,96:32
bareL2=showers~31:51,36:31,41:63 bareL2=sink~0:-33,96:40 bareL2=sinks~96:62 bareL2=sir~0:34
bareL2=six~0:-15,1:46 bareL2=smal~0:73,40:-52 bareL2=solar~0:-72,57:53 bareL2=sold~0:-46
bareL2=sorry~96:-45 bareL2=speak~0:37 bareL2=springline~0:40 bareL2=sprinklers~0:-44,39:127
bareL2=stands~0:34 bareL2=starts~37:-42,41:-43,65:22 bareL2=static~0:56,113:35 bareL2=stops~41:-42
bareL2=sub~0:38 bareL2=suction~0:-20,84:53,85:25 bareL2=sun~0:-59 bareL2=switch~96:32
bareL2=switches~65:38 bareL2=takes~0:-46,96:39 bareL2=tank~0:-15,1:23,4:52,35:63,96:31
bareL2=team~0:50,96:-55 bareL2=there~0:32,35:95,96:-34 bareL2=think~0:-58 bareL2=three~35:67,36:-80
bareL2=times~0:-36 bareL2=top~5:47 bareL2=tree~0:-51 bareL2=troughs~3:29 bareL2=twelve~0:41,40:-35
bareL2=under~40:58 bareL2=up~0:60 bareL2=uphill~96:23 bareL2=use~96:34 bareL2=uses~0:-32
bareL2=usually~37:41 bareL2=valve~40:-50,84:54 bareL2=w~0:-50 bareL2=want~1:33 bareL2=was~0:45
bareL2=water~0:52,32:51,85:61 bareL2=wc~0:50 bareL2=well~99:35 bareL2=when~0:67,37:-39,41:-45
bareL2=which~0:-39 bareL2=who~40:46 bareL2=wife~0:-40 bareL2=will~0:-56 bareL2=would~35:25
bareL2=yard~0:-67 bareL2=yield~96:30 bareL2=you~36:48 bareL2=|~0:52,3:55,31:72,40:54
bareM=cistern~3:-40,37:57,75:60,84:59,96:59 bareM=creek~21:90,44:63,96:-22,97:33
bareM=drip~0:47,18:30,20:168,29:100,30:130,35:-44,37:-41,40:-38
bareM=pump~1:33,2:28,3:5,4:5,5:26,31:45,36:19,37:40,63:31,74:54,84:48,85:63,96:19,97:44,107:50
bareM=roof~1:-45,75:108 bareM=spring~0:33,3:32,5:46,21:24,35:30,40:29,96:54
bareM=tank~1:82,20:-112,29:26,31:40,35:78,37:35,38:-32,40:46,55:36,75:37,96:26
bareM=well~0:33,4:66,68:35,107:25 bareN=animals.cattle~1:-168,2:93,3:87,5:83,97:83
bareN=animals.goats~1:78,3:-162,4:27,5:54,96:42,97:39
bareN=animals.hens~0:-44,1:68,3:70,4:-73,96:63 bareN=beds.area~0:-26 bareN=drip.crop~0:36
bareN=drip.hours~20:49 bareN=drip.length~0:66 bareN=drip.spacing~18:38
bareN=fall.broken~0:-63,21:131 bareN=outlets.drip~29:73
bareN=outlets.hose~31:-111,36:33,37:34,38:42 bareN=outlets.micro~0:-38,33:97
bareN=outlets.shower~1:-37,35:-30,36:-57,37:89,40:62,41:50,96:45
bareN=outlets.sink~0:-31,35:163,37:-159,40:103,96:60 bareN=outlets.sprinkler~0:-43,38:34
bareN=outlets.toilet~0:-34,35:100,36:53,37:127,40:-134
bareN=outlets.washer~0:-37,35:69,37:35,40:59,41:-66 bareN=place.altitude~0:-35,96:39
bareN=place.longitude~46:40 bareN=power.panel~55:60,57:46 bareN=power.series~0:-31,57:33
bareN=power.source~1:46,35:-82,55:84 bareN=power.strings~55:72,57:-29 bareN=power.voltage~0:-29
bareN=pressure_tank.volume~0:-65,65:32,96:32 bareN=pump.control~63:61 bareN=pump.cut_out~64:54
bareN=pump.placement~0:63,99:54 bareN=pump.present~32:44 bareN=pump.set~0:66
bareN=store.volume~37:27 bareN=suction.foot_valves~0:-43,84:37,85:63 bareN=tank.volume~0:14
bareN=use.daily~96:43 bareN=use.each~0:-31,96:61 bareN=use.people~0:26,75:47,96:-154
bareN=use.troughs~0:-35,1:129,3:82,96:-50,97:-48 bareN=water.kind~1:72,34:54,96:47,97:19
bareN=water.yield~0:20,96:-38 bareN=way.climb~0:-45 bareN=way.length~96:-57,97:51
bareN=way.pipe~0:46,40:20 bareP=animals.cattle~1:-140,3:58,4:65,97:120 bareP=animals.dairy~1:87
bareP=animals.goats~1:65,3:-137,4:58,5:48,97:80 bareP=animals.hens~0:-58,3:63,96:54
bareP=animals.nursing~0:-60,1:72,96:32 bareP=beds.area~29:62 bareP=drip.crop~20:67
bareP=outlets.drip~0:-53,30:63 bareP=outlets.hose~0:-50,32:41,38:36
bareP=outlets.shower~0:-39,35:-19,36:89,37:48,40:92,41:58 bareP=outlets.sink~35:54,37:-119,40:159
bareP=outlets.sprinkler~39:116 bareP=outlets.toilet~35:38,37:78,40:-66,41:46
bareP=outlets.washer~41:-54 bareP=pipes.held~21:54 bareP=place.latitude~47:77
bareP=power.cable~0:62 bareP=power.limit~48:40 bareP=power.panel~57:36 bareP=power.series~57:41
bareP=power.shade~96:43 bareP=power.source~0:15,55:41 bareP=power.strings~55:42
bareP=power.voltage~35:80,96:47 bareP=pressure_tank.precharge~74:39
bareP=pressure_tank.volume~60:61 bareP=pump.cut_in~0:-35,65:132 bareP=pump.cut_out~64:52,96:35
bareP=pump.height~96:37 bareP=pump.placement~68:46,96:-56 bareP=pump.set~0:10
bareP=store.volume~96:36 bareP=suction.foot_valves~0:-21,84:37,85:60 bareP=suction.length~0:25
bareP=suction.pipe~0:-68,84:61 bareP=tank.volume~0:-79
bareP=use.people~0:25,1:36,3:43,4:71,35:90,96:-147 bareP=use.troughs~1:48,3:46,31:34,97:-54
bareP=water.kind~37:63,107:107 bareP=water.level~68:69 bareP=water.yield~0:-43,96:1
bareP=way.climb~96:53,97:50 bareP=way.length~0:45,102:106 bareP=way.pipe~36:35,40:-30
bareP=well.depth~0:53,96:-30,99:27,115:39 bareP=well.static~113:41 bareR0=(~0:-31 bareR0=)~0:34
bareR0=,~0:-61,35:46,36:-54,38:26,40:72,96:44
bareR0=.~0:-62,3:35,5:-55,35:51,36:-40,37:12,44:41,47:17,65:39,68:32,96:26,99:37,107:52
bareR0=0~0:46 bareR0=1~40:77 bareR0=2~0:72,4:46 bareR0=3~0:60,96:-53 bareR0=4~0:39,96:50,99:62
bareR0=5~0:62,55:34 bareR0=6~0:70,3:46 bareR0=;~96:43 bareR0=?~0:20
bareR0=a~30:60,39:20,48:37,51:60 bareR0=about~3:32 bareR0=adults~96:28 bareR0=an~74:34
bareR0=and~37:23,64:34 bareR0=are~0:22 bareR0=at~0:-47,30:136,34:68,36:22,39:109
bareR0=automatic~97:34 bareR0=basin~37:66 bareR0=basins~37:155 bareR0=bath~0:18
bareR0=bathroom~0:63 bareR0=bathrooms~35:40 bareR0=beef~1:40 bareR0=bends~84:84
bareR0=borehole~96:31 bareR0=bowls~97:49 bareR0=boys~0:45 bareR0=break~21:37 bareR0=bulls~1:42
bareR0=cabins~35:18 bareR0=calf~5:61 bareR0=calves~5:50 bareR0=campers~96:41 bareR0=cattle~1:83
bareR0=chickens~0:-34,4:108 bareR0=could~37:30 bareR0=cow~0:-32,5:44
bareR0=cows~1:43,2:113,3:-27,5:69,96:-25 bareR0=dairy~2:42 bareR0=deep~107:49 bareR0=drink~4:24
bareR0=drinkers~0:-50,97:126 bareR0=dripper~18:38 bareR0=dry~1:72,2:-34,75:52
bareR0=each~35:39,38:54 bareR0=elbows~84:78 bareR0=ewes~3:100 bareR0=float~0:-15,97:86
bareR0=floats~97:60 bareR0=flush~40:39 bareR0=folks~96:64 bareR0=foot~85:67 bareR0=for~31:42,97:34
bareR0=full~96:27 bareR0=garden~31:48 bareR0=goats~0:-24,1:-34,3:179,96:-38 bareR0=going~36:49
bareR0=guests~96:72 bareR0=head~1:67 bareR0=heifers~1:79 bareR0=hens~0:-34,4:174
bareR0=horses~1:173 bareR0=hose~0:-5,31:165,32:84,37:-35 bareR0=hoses~0:-58,31:139,32:80
bareR0=hour~0:-27,74:65 bareR0=houses~0:58 bareR0=identical~0:-22,63:83
bareR0=in~0:-19,2:34,3:11,55:55,96:87 bareR0=it~0:44 bareR0=joined~0:42 bareR0=kids~0:63
bareR0=kitchen~37:46 bareR0=laying~4:30 bareR0=line~0:29 bareR0=live~96:36 bareR0=loo~0:-51,40:95
bareR0=loos~40:60 bareR0=machine~41:48 bareR0=machines~41:54 bareR0=microsprinklers~33:86,34:75
bareR0=milk~0:-16,2:81 bareR0=milking~2:45 bareR0=months~75:55 bareR0=more~4:30
bareR0=n~0:-49,45:92 bareR0=never~0:47 bareR0=not~1:52 bareR0=now~0:-66,96:35 bareR0=o'clock~0:44
bareR0=of~0:39,57:34 bareR0=on~1:38,96:24 bareR0=once~32:58,36:31 bareR0=one~96:52
bareR0=open~36:65 bareR0=or~36:37 bareR0=out~0:-28,48:40 bareR0=outside~31:36 bareR0=paddocks~97:58
bareR0=pairs~0:-49,5:98 bareR0=panels~0:80,55:36 bareR0=parallel~57:43 bareR0=people~96:130
bareR0=per~18:38,74:30 bareR0=person~0:-39,96:109 bareR0=persons~96:110 bareR0=phase~0:47
bareR0=pigs~0:38 bareR0=poly~0:34 bareR0=pressure~0:-54,21:66 bareR0=pump~0:33,99:51
bareR0=pumps~63:86 bareR0=pupils~96:56 bareR0=rooms~35:41 bareR0=run~32:52,36:30
bareR0=series~55:41 bareR0=sheep~3:134,96:-33 bareR0=shower~0:-32,35:157,36:59,37:-18
bareR0=showers~0:-8,35:177,36:103,37:-14 bareR0=since~0:-45 bareR0=sink~37:167,40:-52
bareR0=sinks~37:153,40:-40,96:-34 bareR0=so~0:23 bareR0=sorry~0:26 bareR0=south~46:46
bareR0=spring~0:38 bareR0=sprinkler~0:-39,38:85 bareR0=sprinklers~0:-41,38:131,39:70
bareR0=staff~96:30 bareR0=starts~74:76 bareR0=steers~1:68 bareR0=string~0:-52,57:73
bareR0=strings~0:-51,57:91 bareR0=tanks~21:26 bareR0=tap~0:-50,31:50,37:63 bareR0=teachers~96:64
bareR0=tents~35:44 bareR0=th~56:76 bareR0=the~36:48,84:52 bareR0=them~0:-75,96:-25
bareR0=there~96:69 bareR0=they~0:38 bareR0=they're~0:48 bareR0=time~39:21 bareR0=times~0:55
bareR0=to~96:50 bareR0=together~32:39,36:70,39:67,96:-24 bareR0=toilet~0:-42,40:102
bareR0=toilets~0:-73,40:166,96:-32 bareR0=trough~97:88 bareR0=troughs~0:-45,97:156 bareR0=ts~0:37
bareR0=two~0:30,57:-38 bareR0=us~0:-14,96:107 bareR0=valve~85:65 bareR0=wash~37:45
bareR0=washer~0:-39,41:114 bareR0=washers~41:67 bareR0=washing~0:-26,41:95 bareR0=waterers~97:45
bareR0=wc~0:-38,40:74 bareR0=wcs~40:62 bareR0=we~4:77 bareR0=well~37:-29 bareR0=what~0:-55,41:62
bareR0=with~0:-32,1:-44,5:78,97:83 bareR0=workers~96:53 bareR0=x~0:39
bareR0=zones~0:-63,20:83,29:62 bareR0=|~41:49,96:64 bareR1=!~96:37 bareR1=,~63:51
bareR1=.~0:-54,4:36,5:78,30:21,40:28,64:35 bareR1=0~97:42 bareR1=1~3:62,45:48 bareR1=3~64:42,75:42
bareR1=4~40:52 bareR1=5~0:-58,1:-43,3:36,40:50,55:-60 bareR1=6~0:22 bareR1=7~0:26,96:-32
bareR1=9~2:32 bareR1=:~0:-49 bareR1=?~0:-48,35:29,96:10 bareR1=and~3:46,5:46
bareR1=at~0:-23,4:-46,38:56,57:51 bareR1=bar~0:-42,64:44 bareR1=basins~35:46,37:-42
bareR1=bathrooms~96:47 bareR1=be~96:16 bareR1=beside~0:-44 bareR1=bulls~5:74 bareR1=but~0:-45,37:36
bareR1=calves~5:53 bareR1=can~33:25 bareR1=children~0:52,96:-45 bareR1=cows~0:-39,3:25
bareR1=day~0:38 bareR1=do~0:-37 bareR1=drinkers~0:43 bareR1=drip~18:38 bareR1=dry~2:63
bareR1=each~0:-21,35:22 bareR1=else~0:-35 bareR1=every~0:28 bareR1=floats~97:26
bareR1=foot~0:-30,5:34,84:37 bareR1=from~0:-41 bareR1=garden~0:-32 bareR1=get~0:33,96:-28
bareR1=give~37:31 bareR1=goats~3:-51 bareR1=guests~0:30 bareR1=had~4:46 bareR1=has~37:-46
bareR1=have~0:-70 bareR1=heifers~1:-34 bareR1=hens~1:37 bareR1=here~0:-40 bareR1=horses~0:48,1:-50
bareR1=hose~0:-26,36:61,38:33 bareR1=house~0:43,96:-39 bareR1=i~41:55 bareR1=in~55:47,63:26
bareR1=is~0:-83 bareR1=it~35:55 bareR1=kid~0:38 bareR1=kids~3:33 bareR1=kitchen~0:22,37:-44
bareR1=l~96:34 bareR1=level~0:-39 bareR1=lift~0:35 bareR1=litre~0:43 bareR1=loo~96:-29
bareR1=machine~40:59 bareR1=my~0:-76 bareR1=night~96:38 bareR1=on~0:-33,18:36 bareR1=one~0:25
bareR1=only~0:-43 bareR1=other~0:-51,37:34 bareR1=panels~0:-31,57:72 bareR1=parallel~63:48
bareR1=people~31:63 bareR1=per~0:-34,96:44 bareR1=pipe~0:-31,40:20 bareR1=plot~0:41
bareR1=poly~0:35 bareR1=power~37:28 bareR1=present~0:74 bareR1=pressure~0:40
bareR1=pump~0:-46,32:85,34:63,96:29 bareR1=rain~0:56 bareR1=run~0:-45,36:40 bareR1=sheep~3:-54
bareR1=shower~0:-21,37:34,96:31 bareR1=showers~35:-43,40:27 bareR1=side~0:-52,63:63
bareR1=sink~37:-40,40:19,96:30 bareR1=sinks~0:40,37:-35 bareR1=so~0:43 bareR1=solar~96:39
bareR1=spring~0:-56 bareR1=staff~0:49,96:-46 bareR1=than~4:30 bareR1=that~37:36
bareR1=the~0:-14,4:56,18:32 bareR1=time~30:19,34:64 bareR1=to~96:-36 bareR1=toddler~0:35,96:-28
bareR1=together~0:-18,36:27 bareR1=toilet~35:53,40:-34 bareR1=toilets~40:-36,41:58 bareR1=town~0:52
bareR1=trough~0:-38,1:41 bareR1=troughs~1:7,97:-38 bareR1=type~3:32 bareR1=up~68:62 bareR1=us~0:50
bareR1=valve~84:51 bareR1=w~55:29 bareR1=want~0:-47 bareR1=wash~35:-37 bareR1=washing~37:28
bareR1=weak~0:42 bareR1=well~0:-24,3:41 bareR1=when~0:28,96:-34 bareR1=with~3:-40
bareR1=yields~0:36 bareR1=|~55:48,96:31 bareR2=)~0:52
bareR2=,~1:-56,2:57,37:-99,40:-28,57:75,60:47,68:18,75:25,96:13,97:-25
bareR2=.~0:25,1:15,4:65,18:26,32:82,38:54,39:49,40:38 bareR2=0~47:35,99:56
bareR2=1~3:48,38:42,55:-45,57:32,96:-18 bareR2=2~1:-41,3:-62,37:14 bareR2=3~0:76,3:-58,38:52,63:45
bareR2=5~35:-11,40:-54,55:54,96:61 bareR2=6~37:-63,39:37,40:-47,96:38 bareR2=7~0:42
bareR2=9~31:28,96:-38 bareR2=:~0:40,37:66,40:-31,96:-29 bareR2=;~97:47 bareR2=all~96:-27
bareR2=bar~0:-55,64:32 bareR2=barrel~96:33 bareR2=basin~0:-33,35:36 bareR2=basins~0:26,96:-37
bareR2=below~96:38 bareR2=bore~0:56 bareR2=bucket~0:32 bareR2=by~0:-37 bareR2=cabin~96:34
bareR2=cistern~0:-21 bareR2=comes~0:51 bareR2=composting~35:23 bareR2=cycling~0:-49
bareR2=day~0:-105,40:57,96:66 bareR2=do~0:-33 bareR2=drilled~96:42 bareR2=each~0:32,96:63
bareR2=enough~0:-78 bareR2=evening~0:47 bareR2=facing~0:-50,55:41 bareR2=five~37:46
bareR2=four~0:-38 bareR2=from~0:14,40:-58 bareR2=gal~0:28,96:-84 bareR2=garden~0:30 bareR2=go~0:-53
bareR2=goats~0:-29,96:35 bareR2=gpm~0:-35 bareR2=hang~0:54 bareR2=hens~0:-20,96:37
bareR2=hose~0:-41 bareR2=hoses~0:-49 bareR2=hot~0:42 bareR2=house~0:17 bareR2=inch~40:26
bareR2=keep~0:22 bareR2=kitchen~0:-53,35:43,37:-48,96:59 bareR2=law~96:-46 bareR2=line~0:-98,18:38
bareR2=litres~96:40 bareR2=m~47:39 bareR2=machine~0:21 bareR2=mains~0:73 bareR2=me~37:34
bareR2=meters~0:59,37:-38 bareR2=milk~0:41 bareR2=more~0:-55 bareR2=mppt~55:26 bareR2=need~96:57
bareR2=no~0:49,1:-62,37:55,96:-3 bareR2=none~1:51 bareR2=one~55:97 bareR2=only~36:69
bareR2=open~0:-34 bareR2=other~37:-29 bareR2=parallel~57:70 bareR2=people~35:70
bareR2=power~0:-43,40:38 bareR2=psi~0:-12,37:25 bareR2=pump~96:47 bareR2=put~0:-36
bareR2=river~0:36 bareR2=run~0:23,96:-58 bareR2=same~0:-41,38:40 bareR2=series~0:-44,55:96
bareR2=seven~0:-25 bareR2=shower~37:46,96:27 bareR2=since~0:81 bareR2=sink~37:-53
bareR2=sinks~0:-71,96:38 bareR2=six~0:49 bareR2=south~55:32 bareR2=spring~96:19 bareR2=string~55:26
bareR2=tank~0:25,96:-52 bareR2=then~0:54 bareR2=there~0:40 bareR2=there's~0:-39
bareR2=three~0:52,55:-31 bareR2=time~29:90,38:45 bareR2=toilets~0:34,36:72,40:-25,96:69
bareR2=total~0:32,96:-20 bareR2=trough~0:-66,3:44,35:94 bareR2=under~0:-40 bareR2=up~0:19
bareR2=used~0:74 bareR2=w~57:23 bareR2=washer~0:34,96:-30 bareR2=washing~0:-25
bareR2=water~0:12,3:30,35:-39,96:-26 bareR2=week~96:22 bareR2=well~0:-28,1:47,96:24
bareR2=what~0:50,96:-42 bareR2=when~0:-33,31:44,37:53 bareR2=without~0:-56 bareR2=would~96:-34
bareR2=|~20:61,96:-32 bareS=abou~0:-24,3:22 bareS=adul~0:71 bareS=agis~0:77 bareS=agri~0:43
bareS=allo~74:92 bareS=alti~44:42 bareS=alwa~0:53 bareS=basi~0:83,37:-44,96:-25
bareS=bloc~0:58,37:-38 bareS=bore~0:-38 bareS=brea~0:30,96:-48 bareS=cabi~96:77
bareS=calv~0:-40,1:33 bareS=camp~0:42 bareS=cara~0:41 bareS=chal~0:54 bareS=chil~96:55
bareS=cist~0:-25 bareS=come~0:27 bareS=cott~0:-37 bareS=drin~0:-55,97:58 bareS=drop~113:54
bareS=eigh~36:56,55:-31 bareS=elev~44:47 bareS=ever~0:80 bareS=fami~0:-50,96:66 bareS=feed~97:46
bareS=floa~97:90 bareS=gaug~0:34 bareS=goat~0:-33,3:74,4:61 bareS=grav~0:-53 bareS=gues~35:43
bareS=hall~0:49 bareS=havi~0:-68 bareS=head~0:48,40:23 bareS=hell~0:37 bareS=holi~0:-28,96:30
bareS=hors~0:-24,1:52,4:38 bareS=hose~0:-18,32:75,38:13 bareS=hous~40:40,96:46 bareS=hund~0:-51
bareS=lati~0:-46,45:75,46:71 bareS=laun~41:30 bareS=layi~96:40 bareS=limi~0:-31,37:41
bareS=line~0:50 bareS=live~0:-42 bareS=long~47:45 bareS=mach~41:66 bareS=micr~0:-43,34:71
bareS=milk~1:44 bareS=mont~75:78 bareS=numb~0:27 bareS=nurs~0:-33 bareS=occu~0:-31,96:76
bareS=pane~0:41,55:48,57:86,96:-21 bareS=parl~0:-43,31:65 bareS=peop~96:36 bareS=pers~0:-54
bareS=powe~57:33 bareS=pres~0:54,96:-55 bareS=ques~0:30 bareS=quic~0:24 bareS=righ~0:-20
bareS=room~0:71 bareS=roug~0:-23 bareS=seve~0:-44 bareS=shad~0:47 bareS=shee~0:-14,3:42
bareS=show~0:-15,1:-33,35:111,36:74,37:54,40:36,41:86,96:-19 bareS=sink~0:-29,37:49
bareS=slee~96:43 bareS=sola~55:32 bareS=sorr~0:-50,96:43 bareS=sout~0:53
bareS=spri~0:38,38:39,39:105,96:-35 bareS=staf~96:77 bareS=star~74:85 bareS=stat~115:101
bareS=stoc~0:-38,5:38 bareS=stop~65:42 bareS=stor~0:36 bareS=stri~0:-63,55:80 bareS=subm~0:36
bareS=suct~84:84,85:23 bareS=swit~0:69 bareS=that~0:-46 bareS=ther~0:-27,35:57,85:55,97:33
bareS=thre~41:46 bareS=toge~96:33 bareS=toil~0:-54,37:35,40:106,41:63 bareS=tota~0:-49,38:48,96:24
bareS=trou~96:-41,97:134 bareS=twen~96:50 bareS=unti~0:27 bareS=valv~0:-44,84:38,85:57
bareS=wash~0:-61,41:73 bareS=wate~96:-37,99:127 bareS=whic~36:52 bareS=zone~30:56
bareT=beds.area~20:72,29:108,30:127,97:-32 bareT=power.amps~51:62,55:50 bareT=power.battery~57:19
bareT=power.cable~55:57,57:22,96:-67 bareT=power.capacity~0:-27,37:25,57:22,96:53
bareT=power.controller~0:-51,51:59,57:38 bareT=power.facing~0:68,55:30,56:73,57:55
bareT=power.limit~48:39 bareT=power.open_voltage~3:-56,55:26
bareT=power.panel~0:-29,4:66,5:56,51:47,55:136,57:73,97:-39
bareT=power.series~5:41,51:57,55:-143,57:82,96:50,97:38 bareT=power.shade~55:32
bareT=power.source~0:24,1:18,5:27,20:-51,34:44,46:40,55:80,57:32,97:36
bareT=power.strings~0:36,51:58,55:56,57:-67,96:-42 bareT=power.tilt~0:-33,46:38,48:38,55:37,57:46
bareT=power.voltage~31:27,37:75,45:38,57:46,96:38
bareT=pump.control~1:-50,2:48,3:-32,31:43,41:79,63:72,74:53 bareT=pump.count~74:59
bareT=pump.cut_in~0:19,3:-40,31:23,37:-21,65:98,74:45
bareT=pump.cut_out~3:-41,31:22,35:22,64:59,65:-38,74:46,96:24 bareT=pump.dry_run~0:-28
bareT=pump.height~1:56,3:24,68:-21,96:38,97:18,99:62,102:80,107:41,115:87 bareT=pump.motor~74:52
bareT=pump.npsh~0:-72,74:51
bareT=pump.placement~0:27,4:-39,5:60,20:-64,38:20,55:30,57:42,64:55,84:35,85:40,97:53,107:46
bareT=pump.present~0:-24,21:108,35:22,37:24,41:34 bareT=pump.set~63:24,96:-27
bareT=pump.starts~63:32 bareT=pump.works~85:39 bareT=store.days~1:33 bareT=store.fills~37:38,96:-30
bareT=store.hours~96:-42 bareT=store.reserve~96:36
bareT=store.volume~0:21,3:-28,35:17,36:39,63:34,74:29,75:49
bareT=tank.level~0:16,4:53,20:-86,29:41,46:33,55:23,96:32 bareT=tank.volume~1:22,3:44,46:44,55:13
bareT=water.kind~1:35,2:39,3:68,4:49,5:22,21:24,31:37,41:86,44:26,55:53,68:40,85:31,96:20,97:36,107:43
bareT=water.level~3:36,5:9,31:34,33:98,68:74,84:44,85:68 bareT=water.temperature~44:37,84:22
bareT=water.yield~2:65,20:78,21:40,31:69,32:-50,96:60,97:50
bareT=way.climb~1:32,2:30,3:50,4:48,5:9,21:55,32:42,33:79,34:57,35:32,36:26,39:95,44:32,55:-38,64:-34,97:17
bareT=way.length~0:15,1:11,3:9,4:35,5:26,21:31,29:53,36:43,39:65,40:33,64:-43,68:64,85:-28,97:28
bareT=way.pipe~2:32,3:41,5:59,21:43,29:74,32:75,34:48,36:16,38:41,39:45,64:-40,96:36,97:25
bareT=well.bore~1:13,96:30,107:38
bareT=well.depth~32:40,40:33,68:39,96:50,99:44,102:82,107:-47,115:70 bareT=well.static~113:39
barea=~45:53 barea=,_and~0:47 barea=,_each~0:37 barea=,_toilets~37:40,40:-39
barea=.~0:53,44:37,96:-31,107:27 barea=._one~3:31 barea=._two~35:49 barea=adults_.~0:-58,96:91
barea=adults_and~0:73,96:-59 barea=and_1~0:-50,96:65 barea=at_a~0:-30,39:24 barea=basin_,~0:51
barea=basin_.~37:55 barea=basins_,~0:14,37:50,40:-23 barea=basins_.~37:44 barea=bathroom_sinks~0:29
barea=bathrooms_with~35:61 barea=beef_cows~1:30 barea=break_pressure~21:37 barea=cattle_,~1:29
barea=chickens_,~4:35 barea=chickens_.~4:31 barea=cow_calf~5:39 barea=cows_in~2:27
barea=cows_with~5:67 barea=dairy_cows~2:44 barea=dry_cows~0:60 barea=dry_months~75:55
barea=elbows_.~84:44 barea=ewes_.~0:-27,3:47 barea=flush_toilets~40:37 barea=folks_.~96:37
barea=foot_valve~85:72 barea=goats_,~3:18 barea=goats_.~3:24 barea=goats_and~3:40
barea=head_of~1:24 barea=heifers_.~1:37 barea=hens_,~4:34 barea=hens_and~4:68 barea=horses_,~1:33
barea=horses_.~1:12 barea=horses_and~1:64 barea=hose_,~31:85 barea=hose_.~31:72 barea=hoses_,~31:70
barea=hoses_at~32:61 barea=houses_,~0:26 barea=identical_pumps~63:-1 barea=in_parallel~57:42
barea=in_the~96:46 barea=kids_and~0:-53,96:63 barea=kitchen_sink~37:20 barea=laying_hens~4:30
barea=loos_,~40:40 barea=n_.~45:51 barea=of_them~2:45,96:-25 barea=of_us~0:-15,96:118
barea=panels_,~0:51 barea=people_,~96:30 barea=people_.~96:40 barea=people_in~0:-44,96:52
barea=people_with~0:34,96:-33 barea=people_|~0:-37,96:39 barea=person_,~0:-28,96:35
barea=person_.~96:29 barea=persons_,~0:-31,96:55 barea=persons_.~96:39 barea=pupils_,~96:28
barea=rooms_,~35:25 barea=sheep_,~0:53 barea=sheep_.~3:46 barea=sheep_and~3:37
barea=shower_,~0:-36,35:88 barea=shower_.~35:31 barea=shower_1~35:40
barea=shower_and~0:-65,35:26,36:67 barea=shower_per~0:52 barea=showers_,~0:-11,35:120
barea=showers_.~0:-48,35:109 barea=showers_and~35:16 barea=showers_at~36:50 barea=sink_,~37:66
barea=sink_and~37:18 barea=sinks_,~37:74 barea=sinks_.~37:26 barea=sinks_and~37:34
barea=south_.~46:46 barea=sprinklers_,~38:51 barea=sprinklers_at~0:55 barea=staff_.~0:36
barea=strings_of~0:-37,57:43 barea=toilet_,~40:54 barea=toilet_.~40:62 barea=toilets_,~0:-28,40:91
barea=toilets_.~40:41 barea=troughs_,~97:31 barea=wash_basins~37:39 barea=washer_,~41:54
barea=washer_.~41:40 barea=washing_machine~41:64 barea=washing_machines~41:72 barea=wc_,~40:43
barea=wcs_,~40:41 barea=with_the~96:56 barea=zones_.~0:-29,20:54 bareb=~0:77,18:37 bareb=,_and~0:37
bareb=,_longitude~47:45 bareb=,_so~0:-10,35:33,96:30 bareb=,_static~0:40 bareb=,_toilets~40:52
bareb=,_total~96:27 bareb=,_with~0:-35 bareb=._it's~0:53 bareb=._latitude~46:38
bareb=._showers~35:48 bareb=._we're~96:40 bareb=._|~0:67 bareb=1_sink~0:-58 bareb=?_|~36:48
bareb=cabin_,~0:-39,96:56 bareb=cows_,~0:-38,2:49 bareb=cows_and~0:53 bareb=down_to~113:33
bareb=family_of~96:64 bareb=grass_.~0:20,97:-27 bareb=hens_and~3:31 bareb=household_of~0:-29,96:44
bareb=hung_at~68:36 bareb=just_the~0:-35 bareb=no_.~0:23 bareb=out_at~0:27 bareb=pairs_and~1:44
bareb=panels_:~0:49 bareb=people_:~96:79 bareb=pump_at~68:57 bareb=sheep_:~3:57
bareb=shower_and~0:-22,37:42 bareb=showers_,~0:43,35:-46,40:20,96:-28 bareb=showers_:~35:81
bareb=sink_,~37:-28 bareb=sink_.~0:61,96:-52 bareb=sinks_:~37:39 bareb=stops_at~65:21
bareb=string_of~55:46 bareb=strings_of~55:24 bareb=there_are~35:26,96:-34 bareb=there_is~0:-46
bareb=toilets_,~37:18,40:-22,41:20 bareb=toilets_:~40:51 bareb=troughs_:~97:47
bareb=up_to~0:-29,96:43 bareb=w_,~55:28 bareb=water_at~99:37 bareb=wc_,~0:44 bareb=we_are~96:55
bareb=we_have~35:41 bareb=well_,~37:34 barel0=(~0:-41,96:39
barel0=,~0:-16,1:49,3:47,4:49,37:24,41:11 barel0=.~3:10,5:41,63:49,96:51 barel0=:~0:-76,3:31,55:-47
barel0=about~3:11 barel0=after~0:39 barel0=all~96:-43
barel0=and~1:-10,4:40,31:14,40:32,48:36,96:-74 barel0=are~0:-28,96:55 barel0=as~37:31
barel0=at~0:55,65:31,68:67,99:63 barel0=be~0:-49 barel0=between~0:-29,96:61 barel0=by~0:31
barel0=feeds~97:52 barel0=for~1:17 barel0=goats~3:59 barel0=has~37:59 barel0=have~97:57
barel0=in~20:47,57:69,64:39 barel0=latitude~0:-42,45:71,46:57 barel0=long~47:31
barel0=longitude~47:45 barel0=maybe~0:40 barel0=milk~2:32 barel0=of~55:61,96:69 barel0=on~0:34
barel0=only~39:45 barel0=or~0:75 barel0=people~35:14 barel0=showers~0:-27,35:53 barel0=sinks~37:58
barel0=so~0:-18,35:34 barel0=static~0:36,115:34 barel0=the~35:59 barel0=there's~0:-49
barel0=to~0:46,113:85 barel0=toilet~40:51 barel0=toilets~40:70 barel0=total~96:39 barel0=us~96:71
barel0=we're~96:25 barel0=well~107:29 barel0=with~0:-16
barel1=,~0:-38,1:-44,35:27,40:64,47:63,96:30,102:91 barel1=.~0:38,44:56,46:34 barel1=0~0:76
barel1=2~40:54 barel1=6~0:47 barel1=a~0:37 barel1=adults~0:23 barel1=and~96:-37 barel1=at~0:40
barel1=basin~0:49 barel1=cabin~96:43 barel1=camp~0:-38,96:51 barel1=cows~2:47 barel1=dairy~2:41
barel1=down~113:32 barel1=each~0:36,35:-37 barel1=family~96:64 barel1=ft~0:35 barel1=got~97:39
barel1=grass~0:20,97:-27 barel1=guests~0:39 barel1=hens~3:26 barel1=horses~0:-21,1:32
barel1=hose~0:-34 barel1=hoses~31:43 barel1=household~0:-22,96:66 barel1=hung~68:36
barel1=in~0:16,48:40,96:-21 barel1=it~37:49,96:-23 barel1=just~0:-36 barel1=kids~0:31
barel1=lodge~35:50 barel1=milk~1:22 barel1=months~75:50 barel1=on~38:47 barel1=one~40:60
barel1=out~0:32 barel1=pairs~1:43 barel1=panels~0:44 barel1=people~40:-22,96:61 barel1=pump~68:50
barel1=sheep~3:22 barel1=showers~96:-35 barel1=sink~35:20,37:-30 barel1=sinks~37:40
barel1=solar~0:38 barel1=sprinklers~39:51 barel1=stops~65:20 barel1=strings~55:42 barel1=sub~68:41
barel1=the~0:77 barel1=there~35:35,96:-23 barel1=toilets~37:37,41:24 barel1=troughs~0:-26,1:33
barel1=up~96:34 barel1=valve~84:30 barel1=w~55:20 barel1=washing~41:34 barel1=water~0:-3,99:45
barel1=wc~0:44 barel1=we~2:45,96:20 barel1=well~37:26 barel1=|~0:55 barel2=(~35:47
barel2=,~3:-43,64:67,68:36,96:-15,99:41 barel2=0~1:47,55:54 barel2=2~1:37,97:44 barel2=4~3:48,47:42
barel2=5~96:-48 barel2=6~40:27 barel2=?~0:-22,96:40 barel2=and~65:30 barel2=are~0:50
barel2=bar~65:31 barel2=bathrooms~0:38 barel2=be~0:34 barel2=beef~0:42,1:-20
barel2=between~0:51,96:-33 barel2=cows~0:-35,5:54 barel2=dry~75:48 barel2=foot~84:30
barel2=four~0:-66,35:56 barel2=gpm~35:53 barel2=kitchen~0:39,37:-30 barel2=l~0:-32,60:65
barel2=milk~0:-30 barel2=my~0:18 barel2=of~96:-32 barel2=on~0:-74 barel2=one~35:30 barel2=our~96:21
barel2=psi~0:27 barel2=s~47:31 barel2=same~96:32 barel2=sink~40:21 barel2=the~0:-34,32:47
barel2=there~0:-24,96:55 barel2=three~0:38,35:-37 barel2=time~36:48 barel2=two~55:6 barel2=v~48:40
barel2=well~0:-19,96:31 barel2=will~35:33 barel2=|~0:-4 barelr=,_.~3:17
barelr=,_basins~0:68,37:29,40:-28 barelr=,_bath~0:47,35:-26 barelr=,_bends~84:26
barelr=,_chickens~4:68 barelr=,_ewes~3:24 barelr=,_foot~85:38 barelr=,_head~0:-35,1:40
barelr=,_heifers~1:19 barelr=,_hens~4:27 barelr=,_horses~0:-42,1:55 barelr=,_hose~31:37
barelr=,_hoses~31:45 barelr=,_in~55:27 barelr=,_loo~40:37 barelr=,_loos~40:40 barelr=,_n~45:45
barelr=,_of~2:47 barelr=,_people~96:87 barelr=,_person~96:64 barelr=,_shower~35:32
barelr=,_showers~35:73 barelr=,_sink~37:57 barelr=,_sinks~37:43,40:-22 barelr=,_strings~57:34
barelr=,_toilet~37:-14,40:52 barelr=,_toilets~0:-24,40:63 barelr=,_trough~97:47 barelr=,_wash~37:33
barelr=,_washer~41:56 barelr=,_washers~41:67 barelr=,_washing~41:38 barelr=,_wcs~40:43
barelr=._adults~96:41 barelr=._basins~37:34 barelr=._campers~96:42 barelr=._cattle~1:54
barelr=._ewes~3:32 barelr=._goats~3:18 barelr=._guests~96:47 barelr=._identical~63:43
barelr=._in~0:-43,96:51 barelr=._is~0:19 barelr=._of~0:-32,96:51 barelr=._people~0:44,96:24
barelr=._persons~96:45 barelr=._sheep~3:32 barelr=._shower~35:57 barelr=._showers~35:83,36:39
barelr=._sink~37:37 barelr=._zones~20:27 barelr=:_.~0:-33,1:32 barelr=:_adults~0:42
barelr=:_|~0:-53 barelr=and_bulls~1:51 barelr=and_dry~1:67 barelr=and_hens~4:21
barelr=and_horses~0:117 barelr=and_of~40:18 barelr=and_shower~35:38 barelr=and_staff~0:30
barelr=are_,~0:-39,96:24 barelr=are_.~0:-31,96:62 barelr=are_in~0:32 barelr=are_persons~0:42,96:-38
barelr=at_.~65:24,99:49 barelr=between_and~0:-33,96:61 barelr=for_.~0:51 barelr=has_shower~0:25
barelr=has_showers~0:-41,35:50 barelr=have_showers~35:39 barelr=in_string~0:-26,57:48
barelr=latitude_south~46:31 barelr=milk_cows~2:47 barelr=of_.~0:-25,55:48,96:30
barelr=of_in~0:39,55:-34 barelr=only_of~0:36 barelr=showers_,~35:78 barelr=sleeps_.~96:33
barelr=so_.~0:-35,35:36,96:54 barelr=static_,~115:52 barelr=toilets_,~40:37 barelr=toilets_.~40:41
barelr=total_.~96:28 barelr=with_foot~85:33 barelr=with_shower~0:40,35:-31 barelr=|_)~0:72
barelr=|_.~0:62 barelr=|_people~0:-30,96:34 barelr=|_shower~36:52 barelr=|_|~0:-44 barer0=)~0:56
barer0=,~0:-46,1:-35,41:-40,75:42,115:43
barer0=.~0:-41,44:56,55:21,64:52,65:69,68:58,96:63,99:29,102:83,107:59 barer0=1~0:72 barer0=2~0:67
barer0=3~55:48 barer0=:~0:36 barer0=;~0:-34,96:44 barer0=a~48:40 barer0=adults~96:33
barer0=and~64:54,96:38 barer0=automatic~97:35 barer0=basin~37:60 barer0=basins~0:22,37:98,40:-31
barer0=bath~0:30 barer0=bathroom~0:63 barer0=bathrooms~35:41 barer0=beef~1:50 barer0=bends~84:84
barer0=boys~0:45 barer0=break~21:37 barer0=bulls~1:42 barer0=cabins~35:19 barer0=campers~96:41
barer0=cattle~0:-26,1:93 barer0=chickens~0:-33,4:121 barer0=cow~5:39
barer0=cows~0:-43,1:62,2:42,5:57 barer0=dairy~2:42 barer0=deep~107:49 barer0=drinkers~0:-24,97:63
barer0=dripper~18:38 barer0=dry~1:38,75:53 barer0=elbows~84:78 barer0=ewes~3:100
barer0=float~0:-35,97:78 barer0=flush~40:39 barer0=folks~96:64 barer0=foot~85:72
barer0=garden~31:48 barer0=goats~3:128,96:-27 barer0=guests~96:87 barer0=head~1:67
barer0=heifers~1:79 barer0=hens~0:-21,4:143 barer0=horses~1:134 barer0=hose~0:-32,31:166,32:95
barer0=hoses~0:-20,31:128,32:83 barer0=houses~0:41 barer0=identical~0:-22,63:83 barer0=in~96:30
barer0=is~0:11 barer0=kitchen~37:69 barer0=laying~4:30 barer0=loo~0:-35,40:51 barer0=loos~40:63
barer0=microsprinklers~33:92 barer0=milk~2:31 barer0=milking~2:42 barer0=n~0:-30,45:100
barer0=now~0:-47,35:56 barer0=o'clock~0:44 barer0=of~0:25,96:57 barer0=or~0:-30,36:44
barer0=outside~31:32 barer0=paddocks~97:58 barer0=pairs~5:60 barer0=panels~0:46,55:58
barer0=people~96:130 barer0=person~0:-56,96:110 barer0=persons~96:110 barer0=phase~0:47
barer0=pigs~0:38 barer0=poly~0:35 barer0=pupils~96:56 barer0=rooms~35:41 barer0=sheep~1:-27,3:140
barer0=shower~35:148,36:62,37:-42,40:-37 barer0=showers~35:214,36:94,37:-25,40:-19,96:-69
barer0=sink~0:-78,37:149 barer0=sinks~35:-30,37:198,40:-38,96:-26 barer0=south~46:46
barer0=spring~0:20 barer0=sprinkler~38:46 barer0=sprinklers~0:8,38:114,39:85 barer0=staff~0:55
barer0=starts~74:76 barer0=steers~1:57 barer0=string~0:-30,57:55 barer0=strings~0:-64,57:105
barer0=tap~0:-44,37:81 barer0=th~56:76 barer0=times~0:55 barer0=to~0:-60,96:68
barer0=toilet~0:-22,35:-43,40:125 barer0=toilets~35:-52,37:-21,40:164,96:-27 barer0=trough~97:78
barer0=troughs~0:-37,97:141 barer0=ts~0:37 barer0=wash~37:46 barer0=washer~41:126
barer0=washers~41:67 barer0=washing~0:-22,41:137 barer0=wc~0:-36,40:75 barer0=wcs~40:62
barer0=with~96:77 barer0=x~0:30 barer0=zones~0:-53,20:86,29:44 barer0=|~35:69,41:53,96:21
barer1=)~0:-56 barer1=,~1:13,20:71,35:54,36:-43,37:25,40:78,55:-46
barer1=.~0:-25,1:46,3:32,20:23,35:62,37:52,40:79,45:28,46:35,47:18,84:38,96:35 barer1=0~0:30
barer1=1~96:41 barer1=3~0:72 barer1=6~0:15 barer1=a~39:22,96:38 barer1=an~74:34
barer1=and~0:-10,3:56 barer1=are~0:64 barer1=at~0:-56,36:41,39:59 barer1=basins~0:-37,37:70
barer1=calf~5:39 barer1=cattle~3:48 barer1=cows~2:75 barer1=drink~4:25 barer1=drinkers~97:16
barer1=each~0:29,35:-45 barer1=for~0:-23,31:38 barer1=goats~3:40 barer1=hens~4:30
barer1=in~0:-63,2:20 barer1=is~0:52 barer1=live~96:32 barer1=machine~41:64 barer1=machines~41:72
barer1=months~75:55 barer1=of~57:34,96:-37 barer1=off~64:34 barer1=on~0:-22,1:42,96:43
barer1=one~0:-53,3:30 barer1=out~48:40 barer1=parallel~57:42 barer1=people~0:50,96:-51
barer1=per~18:38 barer1=pressure~21:35 barer1=pump~99:42 barer1=pumps~63:-3 barer1=showers~96:28
barer1=sink~0:55,37:25 barer1=sinks~35:32 barer1=the~96:31 barer1=them~2:45,96:-25
barer1=together~32:45 barer1=toilet~37:46 barer1=toilets~35:58 barer1=trees~0:39 barer1=two~35:47
barer1=us~0:-24,96:117 barer1=valve~85:65 barer1=waterers~97:43 barer1=what~41:52
barer1=with~5:73,96:-15,97:9 barer2=,~2:35,35:-33,40:-25,41:44,55:79
barer2=.~2:83,31:19,32:51,35:-38,40:-28,55:-54,74:44,75:56,85:13 barer2=1~0:57,40:19 barer2=3~0:46
barer2=4~35:-55,96:18 barer2=5~0:39 barer2=6~3:26 barer2=:~0:-29,1:24 barer2=?~0:44
barer2=a~35:31,96:-38 barer2=about~3:33 barer2=and~0:24,37:31 barer2=at~30:83,34:60
barer2=calves~5:65 barer2=dry~1:27 barer2=each~0:-45,35:85,38:57 barer2=floats~97:53
barer2=here~96:32 barer2=hour~74:35 barer2=is~0:-51,96:10 barer2=it~0:42 barer2=kitchen~40:36
barer2=milk~2:27 barer2=no~35:-47 barer2=on~0:38 barer2=once~32:58,36:31 barer2=one~0:35,96:28
barer2=open~36:44 barer2=pairs~5:39 barer2=showers~35:-31 barer2=staff~0:-46,96:55
barer2=tanks~21:27 barer2=the~36:52,37:37,84:58,96:-30 barer2=they~0:38 barer2=three~0:-63
barer2=time~0:-32,39:23 barer2=together~36:61,39:70 barer2=toilets~0:-51,35:44 barer2=trough~3:32
barer2=two~0:12,96:59 barer2=up~0:50 barer2=washing~40:69 barer2=well~37:-28 barer2=with~97:80
barer2=|~0:24 chargeE=,~0:67 chargeE=battery~50:45 chargeE=panels~0:47 chargeE=two~0:48
chargeE=watt~0:50 chargeL0=,~50:51 chargeL0=2~0:27 chargeL0=a~50:28 chargeL0=and~0:38
chargeL0=battery~50:18 chargeL1=.~50:49 chargeL1=is~0:33 chargeL2=.~50:53 chargeL2=1~50:49
chargeL2=2~50:43 chargeM=pump~50:53 chargeM=tank~50:42 chargeP=power.battery~50:63
chargeP=power.voltage~50:51 chargeR0=.~50:84 chargeR0=battery~50:40 chargeR1=on~0:51
chargeS=batt~50:49 chargeT=power.battery~50:63 chargeT=power.controller~0:64
chargeT=power.panel~50:39 chargeT=power.series~0:70 chargeT=power.source~50:46
chargeT=power.tilt~0:70 chargeT=power.voltage~50:56 chargeT=water.kind~50:40 chargea=.~0:32
chargel0=,~50:41 chargel0=a~50:21 chargel0=and~0:39 chargel1=v~0:30 chargel2=2~0:34
charger0=.~50:27 charger1=.~50:29 currentL0=,~48:38 currentL1=0~48:52 currentL2=,~48:34
currentL2=.~0:59 currentL2=0~48:18 currentL2=2~48:32 currentM=pump~0:56,48:39 currentR0=.~48:55
currentR2=.~0:65 currentS=cont~48:52 currentT=power.battery~48:69 currentT=power.capacity~48:69
currentT=power.controller~48:72 currentT=power.facing~48:23 currentT=power.limit~48:42
currentT=power.panel~48:50 currentT=power.series~48:49 currentT=power.source~48:61
currentT=power.strings~48:39 currentT=power.tilt~48:23 currentT=power.voltage~48:44
currentT=water.kind~0:51 currentr0=.~48:47 dailyE=,~89:63 dailyE=0~89:35 dailyE=covers~0:22
dailyE=dry~91:39 dailyE=each~0:40,90:40 dailyE=meter~89:54 dailyL0=,~89:33 dailyL0=.~89:32
dailyL0=:~0:33 dailyL0=about~89:27 dailyL0=at~0:21 dailyL0=each~90:62 dailyL0=garden~91:48
dailyL0=is~89:27 dailyL0=need~89:37 dailyL0=says~89:50 dailyL0=the~89:36 dailyL0=use~89:97
dailyL0=uses~90:46 dailyL0=we~89:6,91:35 dailyL1=2~0:41 dailyL1=each~89:-26,90:53
dailyL1=for~89:-42,91:76 dailyL1=the~91:48 dailyL1=two~89:34 dailyL1=water~0:26 dailyL2=,~89:39
dailyL2=.~89:35,91:50 dailyL2=0~91:62 dailyL2=4~0:25 dailyL2=5~89:27 dailyL2=mm~0:45
dailyM=drip~0:45 dailyM=pump~89:52,90:37,91:50 dailyM=roof~90:39 dailyM=tank~90:74,91:49
dailyM=well~89:29 dailyP=animals.cattle~0:54,90:-29 dailyP=use.people~0:-40,89:29,90:111
dailyR0=,~90:29 dailyR0=.~0:18,89:98,90:45,91:35 dailyR0=by~89:42 dailyR0=covers~0:22
dailyR0=each~0:44 dailyR0=for~89:36 dailyR0=house~89:28 dailyR0=is~0:18 dailyR0=it~0:32
dailyR0=the~89:35,91:36 dailyR1=,~89:27 dailyR1=.~89:31 dailyR1=the~0:30 dailyR2=.~0:44
dailyR2=0~89:35 dailyR2=?~89:41 dailyR2=says~0:46 dailyS=abou~89:27 dailyS=cons~90:34
dailyS=gard~91:66 dailyS=mete~89:48 dailyS=ther~89:30 dailyS=wate~0:25 dailyT=beds.area~0:25
dailyT=power.battery~89:39 dailyT=power.capacity~89:39 dailyT=power.controller~89:34
dailyT=power.source~0:34,89:32 dailyT=power.tilt~89:35 dailyT=power.voltage~0:41,89:32
dailyT=pump.cut_out~90:20 dailyT=pump.height~0:33 dailyT=pump.placement~0:33
dailyT=store.reserve~91:50 dailyT=store.volume~91:54 dailyT=tank.level~0:60,89:-44
dailyT=water.kind~89:44,90:47,91:54 dailyT=water.level~89:24 dailyT=way.climb~89:53
dailyT=way.length~91:44 dailyT=way.pipe~0:44 dailya=.~89:28,90:25,91:17 dailya=covers_it~0:22
dailya=each_.~0:51 dailya=in_the~91:38 dailyb=uses_about~90:34 dailyl0=,~0:35 dailyl0=:~0:33
dailyl0=about~89:27 dailyl0=at~0:21 dailyl0=is~89:21 dailyl0=need~89:29 dailyl0=says~89:39
dailyl0=use~89:43 dailyl0=uses~90:16 dailyl1=,~89:33 dailyl1=garden~91:48 dailyl1=people~90:41
dailyl1=use~89:41 dailyl1=uses~90:30 dailyl1=we~91:44 dailyl2=.~90:30 dailyl2=each~90:40
dailyl2=the~89:29 dailyl2=we~89:19 dailylr=is_.~89:21 dailyr0=,~89:33,90:32
dailyr0=.~89:34,90:43,91:37 dailyr0=by~89:35 dailyr0=covers~0:22 dailyr0=each~0:44
dailyr0=for~89:29 dailyr1=.~0:46 dailyr1=it~0:32 dailyr1=the~91:46 dailyr2=,~0:41 dailyr2=.~89:96
dailyr2=is~0:23 eachL0=,~90:55 eachL0=at~0:36 eachL0=we~90:41 eachL1=0~0:39 eachL1=2~0:42
eachL1=for~0:40 eachL2=,~90:35 eachL2=.~90:36 eachM=pump~90:50 eachM=spring~90:44 eachM=tank~90:54
eachP=use.people~90:77 eachR0=.~90:72 eachR2=.~90:33 eachT=power.source~90:35
eachT=pump.placement~90:27 eachT=tank.volume~90:35 eachT=water.kind~90:91 eachT=water.yield~90:35
eachT=way.climb~90:30 eachT=way.length~90:42 eachT=way.pipe~90:36 eacha=.~0:37,90:32 eachl0=,~90:43
eachl0=at~0:36 eachl1=we~90:37 eachlr=,_.~90:28 eachlr=at_.~0:41 eachr0=.~90:66
flowE=,~0:30,8:48,114:59 flowE=0~101:46 flowE=1~0:54 flowE=2~0:41,70:16 flowE=3~117:73
flowE=4~101:22 flowE=all~101:51 flowE=day~81:74 flowE=distance~0:67 flowE=down~117:53
flowE=dry~101:38 flowE=each~8:30 flowE=gallon~101:48 flowE=house~0:-40,101:35 flowE=its~69:35
flowE=level~114:23 flowE=m~0:37,117:61 flowE=minute~0:43,101:-32 flowE=more~0:34 flowE=off~114:55
flowE=pressure~0:-32 flowE=psi~70:56 flowE=pump~0:21,101:68 flowE=set~70:56 flowE=six~0:51
flowE=somewhere~93:58 flowE=spring~101:53 flowE=tank~0:32 flowE=water~101:48 flowE=well~101:33
flowL0=,~8:53,70:33,101:30 flowL0=.~69:44,101:24 flowL0=0~117:27 flowL0=1~117:22 flowL0=2~117:21
flowL0=:~101:37 flowL0=a~101:28 flowL0=and~101:39 flowL0=are~8:30
flowL0=at~0:-68,69:28,114:56,116:55,117:51 flowL0=bar~9:26 flowL0=bore~101:44 flowL0=cm~8:29
flowL0=comes~101:-11,116:31 flowL0=count~93:28 flowL0=driller~101:64 flowL0=drip~0:39
flowL0=drippers~8:65 flowL0=each~0:14 flowL0=emitters~8:40 flowL0=flow~69:53 flowL0=gives~101:41
flowL0=he~117:35 flowL0=i~93:44 flowL0=is~81:14 flowL0=it~101:30 flowL0=least~69:35
flowL0=log~101:49 flowL0=m~0:90 flowL0=makes~101:30 flowL0=me~9:52,101:-50 flowL0=minutes~114:49
flowL0=ours~101:35 flowL0=pump~0:10,9:26,70:66,101:-36 flowL0=pumped~117:46 flowL0=pumping~114:23
flowL0=says~0:44 flowL0=spring~101:19 flowL0=sprinkler~0:35 flowL0=steady~116:39
flowL0=tank~0:-24,81:53 flowL0=that~0:50 flowL0=the~0:50,81:76 flowL0=then~116:37 flowL0=volt~70:30
flowL0=want~22:81 flowL0=wants~69:35 flowL0=we~0:9,22:63 flowL0=well~101:49 flowL0=yield~101:41
flowL1=)~0:57,101:-63 flowL1=,~93:51 flowL1=.~9:54,70:32,116:13 flowL1=0~0:-42,101:21
flowL1=1~0:-36,9:47,69:34,70:46 flowL1=2~69:50,70:25 flowL1=3~0:-43,117:20 flowL1=4~117:31
flowL1=5~0:-65,9:36,69:41,101:33 flowL1=6~22:45 flowL1=8~101:61 flowL1=9~0:-45,101:41
flowL1=:~93:78 flowL1=a~0:28,70:48,101:-49 flowL1=and~101:55 flowL1=as~117:31
flowL1=at~0:-51,9:61,22:45,101:67 flowL1=every~8:27 flowL1=feet~101:46
flowL1=for~0:-40,101:38,114:23 flowL1=ft~0:-60,101:39 flowL1=gpm~101:35 flowL1=i~0:47 flowL1=in~0:5
flowL1=inch~0:45 flowL1=is~70:33,101:37 flowL1=it~0:-55,116:39 flowL1=l~116:31
flowL1=m~0:-45,117:66 flowL1=people~0:22,101:-21 flowL1=pump~0:-52,69:30,70:50,81:22
flowL1=pumped~114:24 flowL1=tank~81:50 flowL1=test~117:39
flowL1=the~0:78,69:24,70:72,81:31,101:-57,114:43 flowL1=to~0:-31,81:19,117:27 flowL1=way~70:32
flowL1=we~101:57 flowL1=well~81:28 flowL1=with~0:52 flowL2=)~0:-42
flowL2=,~8:18,9:58,22:39,70:41,93:51,116:21 flowL2=.~0:-19,8:35,9:45,22:48,93:75
flowL2=0~101:29,116:47 flowL2=1~0:-37,101:26,117:34 flowL2=2~101:60 flowL2=3~101:60 flowL2=5~93:88
flowL2=6~116:39 flowL2=7~101:63 flowL2=8~69:43 flowL2=:~0:35,101:-48 flowL2=all~93:28
flowL2=apart~8:56 flowL2=bore~117:27 flowL2=borehole~0:-27,70:28 flowL2=curve~0:31 flowL2=drip~8:43
flowL2=feet~0:-61,101:90 flowL2=from~0:-54 flowL2=ft~117:33 flowL2=gpm~101:29 flowL2=hangs~0:44
flowL2=hens~0:55,101:-47 flowL2=level~117:11 flowL2=m~9:64 flowL2=need~0:45 flowL2=night~93:28
flowL2=one~0:-19 flowL2=pe~0:32 flowL2=people~101:50 flowL2=pressure~9:35 flowL2=pump~70:47
flowL2=pumping~0:44 flowL2=recovery~114:33 flowL2=rows~8:72 flowL2=run~101:68 flowL2=swl~117:36
flowL2=taps~93:28 flowL2=test~114:35 flowL2=three~0:15,101:-18 flowL2=water~101:41
flowL2=well~0:-19,101:27,116:28,117:43 flowL2=when~0:58,101:-54 flowL2=wrote~0:-29,101:35
flowL2=zones~9:52 flowM=cistern~81:55 flowM=drip~8:161,9:175,101:-43
flowM=pump~0:50,8:61,69:55,70:76,93:46,114:65,116:42,117:38 flowM=roof~70:39
flowM=spring~0:46,22:25,101:92 flowM=tank~70:27,81:147,101:35
flowM=well~101:45,114:40,116:86,117:41 flowN=drip.hours~9:54 flowN=drip.spacing~8:76
flowN=outlets.sink~70:47 flowN=power.source~0:35 flowN=pump.placement~0:-12,101:14
flowN=store.hours~81:59 flowN=tank.volume~0:47 flowN=use.people~101:58 flowN=water.kind~0:71
flowN=water.yield~0:91,101:-66 flowN=way.climb~101:62 flowN=way.length~101:38
flowN=well.pumped_for~114:71 flowP=drip.pressure~9:27 flowP=drip.spacing~8:72
flowP=outlets.shower~0:41 flowP=outlets.toilet~93:61 flowP=power.voltage~70:65
flowP=pump.works~70:23 flowP=store.fills~81:75 flowP=water.kind~8:-21,9:48,70:-50,81:52,101:161
flowP=water.yield~0:-42,101:82 flowP=way.climb~0:-50,70:24 flowP=well.depth~0:41
flowP=well.drawn_for~116:61 flowP=well.pumping~117:74 flowP=well.static~0:-54,101:38,117:64
flowR0=,~8:25 flowR0=.~0:44,8:15,70:35,81:39,93:74,101:44,116:24,117:4 flowR0=1~0:34,101:-25
flowR0=4~117:47 flowR0=and~0:35 flowR0=at~9:33,22:43,70:57,101:-55 flowR0=bar~0:22
flowR0=down~117:50 flowR0=dry~101:40 flowR0=each~8:28 flowR0=for~0:-40,22:42,69:30,101:-50,114:56
flowR0=in~0:64 flowR0=is~101:33 flowR0=its~69:35 flowR0=level~101:49 flowR0=somewhere~93:58
flowR0=spring~101:28 flowR0=the~9:72,101:28 flowR0=well~0:57 flowR1=.~0:34,22:48,69:34,81:53
flowR1=0~0:40,69:42 flowR1=1~69:38 flowR1=3~117:60 flowR1=7~0:-50 flowR1=9~0:26,101:-26
flowR1=:~0:41 flowR1=and~0:-48 flowR1=day~81:50 flowR1=of~0:-34 flowR1=off~114:23 flowR1=run~0:45
flowR1=sink~70:61 flowR1=tank~0:60 flowR1=the~0:47 flowR1=with~101:57 flowR2=,~0:-24,101:40
flowR2=.~0:30,9:30,70:25 flowR2=0~0:-16,8:47,101:59 flowR2=4~101:51 flowR2=5~0:-53,101:39
flowR2=6~101:45 flowR2=above~101:40 flowR2=bar~70:34 flowR2=from~0:54 flowR2=level~114:24
flowR2=metres~101:38 flowR2=spring~0:38 flowR2=well~0:40 flowS=afte~101:-34,116:40
flowS=bail~116:36 flowS=befo~116:36 flowS=bore~0:38,101:19 flowS=cist~81:69,101:-54
flowS=come~101:-16,116:31 flowS=coun~93:28 flowS=curv~0:59 flowS=diap~70:32 flowS=draw~117:16
flowS=dril~101:75,117:32 flowS=drip~8:74,101:-29 flowS=emit~8:94 flowS=gard~9:70 flowS=give~101:54
flowS=leas~69:35 flowS=leve~117:51 flowS=line~8:41 flowS=litr~116:51 flowS=make~101:47
flowS=mete~93:76 flowS=minu~116:104 flowS=nigh~93:27 flowS=pres~0:46 flowS=prod~101:23
flowS=pump~101:-44,114:60,117:45 flowS=reco~114:55 flowS=show~0:39 flowS=sour~101:60
flowS=spri~0:37,101:38 flowS=stea~116:39 flowS=stre~101:36 flowS=take~0:30 flowS=ther~101:38
flowS=toil~93:61 flowS=want~69:35 flowS=whic~81:100 flowS=wrot~0:-52,101:75 flowS=yiel~101:77
flowT=beds.area~0:-35,8:99 flowT=power.battery~70:51 flowT=power.cable~117:41
flowT=power.capacity~70:51 flowT=power.limit~0:50 flowT=power.panel~70:29
flowT=power.series~0:57,101:-34 flowT=power.source~0:29,101:28 flowT=power.tilt~101:36
flowT=power.voltage~0:-74,70:108 flowT=pump.control~0:-25,93:101 flowT=pump.cut_in~93:54
flowT=pump.cut_out~93:56 flowT=pump.diameter~101:-51 flowT=pump.height~101:31,117:42
flowT=pump.motor~69:34 flowT=pump.npsh~69:33 flowT=pump.placement~0:22,8:56,101:-41
flowT=pump.present~0:28,22:96 flowT=pump.set~81:80,93:61 flowT=pump.works~0:-49,70:104
flowT=store.days~101:51 flowT=store.fills~81:74 flowT=store.hours~81:59
flowT=store.volume~70:64,81:75 flowT=tank.level~101:77 flowT=tank.volume~0:43
flowT=water.kind~22:49,81:41,93:34,101:146,116:60,117:78 flowT=water.level~69:43,101:27,117:100
flowT=water.yield~0:130,8:67,101:-113 flowT=way.climb~22:72,69:40,93:29,101:52
flowT=way.length~0:59,22:43,70:37,93:33,101:25 flowT=way.pipe~22:44,69:38,70:52,93:34,101:32
flowT=well.bore~116:58 flowT=well.depth~0:55,101:37,116:27,117:30 flowT=well.drawn~116:61
flowT=well.drawn_for~116:66 flowT=well.known~114:90 flowT=well.pumped_for~114:106
flowT=well.pumping~0:49,101:-89,117:128 flowT=well.static~117:75 flowa=~101:35
flowa=.~0:27,81:30,117:47 flowa=at_the~9:54 flowb=,_flow~9:27 flowb=at_least~69:35
flowb=borehole_gives~101:35 flowb=m_at~0:57 flowb=minutes_at~114:49 flowb=pump_gives~0:23
flowb=spring_gives~0:56,101:-48 flowl0=,~8:57,70:22,101:50 flowl0=.~101:34 flowl0=:~101:23
flowl0=are~8:30 flowl0=at~0:-37,114:63,116:57,117:54 flowl0=flow~69:56,101:-39
flowl0=gives~0:26,101:43 flowl0=is~81:18 flowl0=least~69:35 flowl0=makes~101:38
flowl0=pumped~117:56 flowl0=steady~116:38 flowl0=want~22:81 flowl1=,~0:49 flowl1=.~0:14
flowl1=and~0:-39,101:62 flowl1=at~69:34 flowl1=borehole~0:-46,101:54 flowl1=drip~8:27
flowl1=drippers~8:42 flowl1=he~117:60 flowl1=i~93:38 flowl1=it~0:29 flowl1=log~101:47 flowl1=m~0:92
flowl1=minutes~114:49 flowl1=pump~0:26,70:33,101:-40 flowl1=test~114:25 flowl1=tested~101:45
flowl1=the~81:37 flowl1=then~116:37 flowl1=we~0:23 flowl1=well~101:32 flowl2=,~0:-46,116:32
flowl2=.~69:50 flowl2=1~117:22 flowl2=borehole~0:55,101:-25 flowl2=drip~0:45 flowl2=each~0:65
flowl2=gives~0:-35,70:31,81:36 flowl2=it~101:33 flowl2=now~0:44 flowl2=pump~70:42
flowl2=the~81:40,101:-3 flowl2=we~22:51 flowlr=at_,~114:50 flowlr=at_.~116:17,117:33
flowlr=flow_.~9:25,69:60 flowlr=gives_,~0:58 flowlr=gives_.~101:42 flowlr=is_.~81:18
flowlr=makes_.~101:52 flowlr=only_.~101:41 flowr0=.~0:43,69:43,81:49,101:34,116:7,117:21
flowr0=at~9:35,22:45,70:53,101:-29 flowr0=for~0:-36,22:43,69:30,114:32 flowr0=in~0:32
flowr0=spring~101:32 flowr1=.~8:13 flowr1=4~117:48 flowr1=a~101:50 flowr1=its~69:35
flowr1=spring~0:36 flowr1=the~9:74,81:73 flowr2=1~0:62,101:-33 flowr2=a~0:50
flowr2=and~0:36,101:-41 flowr2=bar~0:22 flowr2=down~117:50 flowr2=in~0:39 flowr2=level~101:41
flowr2=never~0:41 flowr2=spring~101:30 k=angle~26:47,42:61,45:92,46:24,58:77,100:42
k=area~0:78,6:240,76:92 k=bare~0:255,1:56,3:74,4:42,20:55,31:20,37:62,45:44,96:44
k=charge~0:56,50:194 k=current~0:45,48:60 k=daily~0:88,89:151,90:101,91:76 k=each~90:118
k=flow~0:151,8:110,9:81,22:32,69:39,70:44,81:76,93:70,101:151,114:69,116:52,117:58
k=length~0:352,7:44,12:25,16:57,18:88,44:123,49:43,64:-27,66:37,72:39,86:62,87:41,90:-26,99:84,101:-34,102:49,103:57,104:165,105:82,107:40,110:45
k=long~0:65 k=pair~64:112 k=percent~0:61,17:37,56:93,71:69,77:50 k=power~0:141,54:125
k=pressure~0:145,11:48,13:83,14:55,23:34,24:44,25:55,43:32,60:93,61:37,64:81,65:85,73:88,106:46
k=rise~87:45,102:23,103:55 k=temperature~19:42,26:73,42:55,100:100
k=time~0:196,10:61,78:111,80:26,92:32,95:80,109:62,112:62 k=voltage~0:81,52:47,53:63,59:186
k=volume~0:144,27:75,28:85,62:94,82:79,83:147,88:127,90:57,94:89,108:60 lengthE=)~104:-60
lengthE=,~0:41,16:48,18:36,104:20,105:33 lengthE=0~0:51,87:47,104:-11,115:-42
lengthE=1~12:40,102:30 lengthE=2~7:73,103:3,104:25,107:19 lengthE=3~87:34,105:51
lengthE=4~86:43,87:-42,110:53 lengthE=5~102:52,103:50,105:-41 lengthE=6~86:-57,115:53
lengthE=7~105:20,107:39 lengthE=8~99:54,103:-5 lengthE=9~104:37,107:32 lengthE=?~0:90
lengthE=above~0:-76,44:36,87:43,98:62,99:63,102:49,107:-32 lengthE=across~105:33 lengthE=after~0:46
lengthE=along~0:-26,102:56,104:39 lengthE=altitude~44:29 lengthE=anyway~0:52
lengthE=apart~16:25,18:20 lengthE=away~0:-29,102:44,104:52 lengthE=back~102:71
lengthE=barn~0:22,87:-34 lengthE=bath~0:34,68:-34 lengthE=bathroom~102:27
lengthE=below~0:-55,68:29,99:18,102:43,103:46 lengthE=between~16:59 lengthE=blue~0:33
lengthE=bore~87:34 lengthE=borehole~107:23 lengthE=bottom~104:-37,107:87 lengthE=buried~104:56
lengthE=but~0:56 lengthE=by~0:41,87:28,99:-41 lengthE=cabin~0:-44,103:19,104:39
lengthE=cable~49:102,104:-33 lengthE=casing~105:44 lengthE=chalet~0:37 lengthE=climb~0:29,102:38
lengthE=climbs~102:25 lengthE=cm~0:-39,12:20,16:48 lengthE=concrete~0:-46 lengthE=copper~103:30
lengthE=creek~102:26 lengthE=cuts~0:56 lengthE=day~15:65
lengthE=deep~0:29,79:42,104:-36,105:47,107:82 lengthE=depth~107:40 lengthE=diameter~0:42,105:40
lengthE=diaphragm~0:80 lengthE=difference~0:86,104:-35 lengthE=distance~102:-37
lengthE=down~68:37,99:9,104:-40 lengthE=drip~0:71 lengthE=dripper~16:48 lengthE=drop~0:-20,110:100
lengthE=dry~0:43 lengthE=each~16:52 lengthE=elevation~44:36 lengthE=emitter~18:28
lengthE=end~0:40,107:-43 lengthE=every~16:57 lengthE=fall~103:35 lengthE=feet~0:23,103:-48
lengthE=fence~0:46 lengthE=filled~0:27 lengthE=flat~104:28 lengthE=floor~0:38
lengthE=foot~86:37,104:-35 lengthE=four~102:-60 lengthE=free~0:38 lengthE=from~0:56,104:59
lengthE=ft~0:24,68:-47,105:39 lengthE=full~79:51 lengthE=gal~68:-33 lengthE=gallon~0:-36
lengthE=gallons~102:45 lengthE=garden~99:-22,104:66 lengthE=go~107:42
lengthE=goes~0:44,68:51,104:-43 lengthE=gpm~0:-45,107:36,113:37 lengthE=ground~68:27
lengthE=h~107:-39 lengthE=hdpe~104:47 lengthE=head~0:38 lengthE=height~0:35,102:47
lengthE=high~0:38 lengthE=higher~102:34 lengthE=his~0:48 lengthE=hold~0:31 lengthE=holds~0:64
lengthE=hole~99:43 lengthE=hose~0:41,86:46,104:44 lengthE=house~87:31,102:64,104:80,107:-59
lengthE=hundred~102:25 lengthE=inch~103:55 lengthE=inside~0:-39,105:49,107:45 lengthE=it's~79:24
lengthE=july~15:45 lengthE=just~0:53 lengthE=kitchen~87:35,104:37 lengthE=laid~0:-37
lengthE=level~104:30 lengthE=lies~103:38 lengthE=lift~0:-67,99:75,102:58 lengthE=line~0:30,7:88
lengthE=lined~0:-40 lengthE=lines~12:31 lengthE=liters~0:98,87:-54 lengthE=litres~107:46
lengthE=long~0:33,12:41,86:36,103:-51 lengthE=low~99:39 lengthE=lower~0:12,103:54,104:-33
lengthE=lowered~0:43 lengthE=m~0:52,102:42,104:58,115:37 lengthE=maybe~104:47 lengthE=mdpe~0:47
lengthE=meters~0:46,104:-32 lengthE=metres~102:-31 lengthE=minutes~0:55
lengthE=mm~0:-32,68:-58,103:68,104:56 lengthE=morning~0:57 lengthE=motor~0:82 lengthE=need~0:36
lengthE=no~102:-50,103:61 lengthE=off~99:-54,104:41 lengthE=one~102:62 lengthE=only~0:56
lengthE=other~0:38 lengthE=over~0:49,87:48,104:-39,106:42 lengthE=panels~0:72 lengthE=pe~103:26
lengthE=people~0:34,68:-40 lengthE=per~72:23,115:-70 lengthE=phone~0:41
lengthE=pipe~87:-52,99:34,110:78 lengthE=plastic~0:66 lengthE=poly~0:53,107:-29
lengthE=polyethylene~0:48 lengthE=pressure~0:-35 lengthE=psi~0:41
lengthE=pump~0:-33,98:68,104:-69,107:47 lengthE=pump's~0:27 lengthE=pumphouse~0:43
lengthE=pumping~115:11 lengthE=pumps~0:38 lengthE=pvc~102:40 lengthE=quarter~0:-59
lengthE=rests~115:59 lengthE=rise~0:-30,102:65 lengthE=rises~0:35 lengthE=river~99:34
lengthE=road~0:56 lengthE=rows~0:-40,16:53 lengthE=run~0:-44,102:50 lengthE=runs~99:-24
lengthE=s~0:31 lengthE=said~0:32 lengthE=same~104:45 lengthE=sea~44:58 lengthE=shed~0:49
lengthE=sheet~72:43 lengthE=shower~87:52 lengthE=sixty~68:52 lengthE=slope~0:-51,102:71,103:-25
lengthE=so~0:57,68:-40,102:-27,104:-74 lengthE=spring~44:70 lengthE=static~0:-45,107:46
lengthE=suction~0:-28,86:133,99:61,102:-37,104:-45 lengthE=sum~0:49 lengthE=summer~0:49,99:56
lengthE=surface~0:47 lengthE=take~0:45 lengthE=tank~87:86,99:-41,103:-38,104:76
lengthE=then~0:51,102:-24,104:-47 lengthE=there~87:49 lengthE=thirty~0:36,102:-39
lengthE=through~0:-48,87:38 lengthE=top~115:43 lengthE=total~0:-34 lengthE=track~102:55
lengthE=two~99:-34 lengthE=under~102:57 lengthE=until~0:37 lengthE=up~0:-57,102:48,104:51
lengthE=uphill~0:-44,102:53 lengthE=upwards~102:50 lengthE=us~87:39 lengthE=valve~86:37
lengthE=water~87:-28,99:149,102:-67,107:70 lengthE=way~102:37
lengthE=well~0:-40,103:46,104:30,107:72 lengthE=when~79:59,99:-46,113:36 lengthE=where~0:-71,99:32
lengthE=wide~0:35 lengthE=wire~49:85,104:-43
lengthL0=,~0:-39,16:36,18:48,44:3,79:36,87:-23,98:49,102:31,104:29,105:50,115:-21
lengthL0=.~0:-55,12:15,44:19,72:42,87:-50,104:4,107:21 lengthL0=0~0:32,15:50,87:57,105:41
lengthL0=1~0:72 lengthL0=2~104:28 lengthL0=3~87:38,102:-53,104:46 lengthL0=5~0:51
lengthL0=:~87:54,102:43,104:-54 lengthL0=?~0:-54,99:64
lengthL0=a~0:-32,49:20,87:73,99:-38,102:38,105:24,107:57 lengthL0=ah~0:38 lengthL0=all~0:31
lengthL0=altimeter~102:33 lengthL0=altitude~44:73 lengthL0=and~99:-46,102:68,103:29,104:22
lengthL0=are~12:53,44:31 lengthL0=at~44:77,68:97,99:33,102:-43,104:-2,107:-46,111:20,113:61
lengthL0=away~103:45 lengthL0=before~115:44 lengthL0=bore~0:-69,107:54
lengthL0=borehole~49:37,99:-41,102:-42,107:33 lengthL0=buried~0:76 lengthL0=by~103:33
lengthL0=cabin~44:27,102:29,104:44 lengthL0=cable~0:37,49:80,104:-28 lengthL0=can~0:31
lengthL0=cased~0:-30,105:51 lengthL0=casing~0:-42,105:26 lengthL0=cellar~0:36
lengthL0=cistern~0:-23 lengthL0=climb~102:43 lengthL0=climbing~102:45 lengthL0=climbs~102:57
lengthL0=comes~103:39 lengthL0=copper~104:35 lengthL0=deep~105:41 lengthL0=depth~68:25,107:36
lengthL0=diameter~0:-29,7:24,66:63 lengthL0=down~68:52,99:32,113:33 lengthL0=draws~99:28
lengthL0=drilled~107:41 lengthL0=drip~0:-47,12:36,16:18 lengthL0=dripper~0:32
lengthL0=drippers~18:42 lengthL0=drop~103:55,104:-46,110:44 lengthL0=drops~0:42,102:-28,103:58
lengthL0=drum~87:46 lengthL0=dry~67:80 lengthL0=dug~107:30 lengthL0=each~12:61,18:37
lengthL0=elev~44:51 lengthL0=elevation~44:66 lengthL0=emitters~18:36 lengthL0=et~0:-42,15:88
lengthL0=every~0:-37,12:-24,16:26,18:68 lengthL0=fall~103:12 lengthL0=falls~102:-31,103:50,113:27
lengthL0=far~0:56 lengthL0=field~0:45 lengthL0=for~104:38 lengthL0=from~68:26
lengthL0=ft~102:29,105:43 lengthL0=goes~99:50,102:42 lengthL0=gpm~0:50 lengthL0=h~0:33,18:42
lengthL0=hangs~68:35,111:63 lengthL0=hdpe~0:36 lengthL0=head~0:35 lengthL0=here~44:35
lengthL0=higher~102:14 lengthL0=highest~102:43 lengthL0=hole~107:79 lengthL0=hose~86:47
lengthL0=house~0:58,68:-33,87:32,99:-29,102:34,104:55 lengthL0=hung~110:37 lengthL0=hut~44:41
lengthL0=i~104:81 lengthL0=i'm~0:23 lengthL0=in~99:25,102:-26,105:58
lengthL0=inch~0:-56,86:25,104:29 lengthL0=inside~7:61 lengthL0=intake~0:-26,86:48,103:33,111:96
lengthL0=is~15:41,44:-74,49:23,68:59,87:46,102:59,105:32 lengthL0=it~68:11,99:11,102:-35,113:63
lengthL0=it's~99:56,104:49 lengthL0=its~0:-54,87:23 lengthL0=keep~106:23 lengthL0=l~87:35
lengthL0=last~0:51 lengthL0=laterals~12:45 lengthL0=length~104:48
lengthL0=level~68:-26,98:19,99:54,107:-39,113:64,115:42 lengthL0=lies~102:32
lengthL0=lift~67:74,86:-53,87:38,99:58,102:52 lengthL0=line~0:66,12:105,87:-32,99:-28
lengthL0=lines~12:107 lengthL0=log~0:30 lengthL0=lowered~68:73 lengthL0=lowest~99:50
lengthL0=m~102:33,105:21 lengthL0=mains~0:42 lengthL0=min~0:38 lengthL0=mm~0:-34,103:51,104:25
lengthL0=more~102:23 lengthL0=my~103:29 lengthL0=nearest~0:45 lengthL0=no~0:-56,99:26,104:63
lengthL0=now~99:29 lengthL0=npsh~72:92 lengthL0=npshr~72:81 lengthL0=of~0:50,12:47,99:-50
lengthL0=on~87:18,110:45 lengthL0=one~16:38 lengthL0=ours~0:-43,99:26,107:55 lengthL0=outlet~87:36
lengthL0=outside~66:33 lengthL0=over~104:26 lengthL0=pipe~0:58,86:42,104:59,110:40
lengthL0=pit~0:15 lengthL0=poly~104:13 lengthL0=pond~99:23
lengthL0=pump~0:-53,49:55,66:53,68:117,99:46,102:-59,105:-55,107:-34 lengthL0=pump's~68:36
lengthL0=pumping~113:44 lengthL0=push~0:29,99:-23 lengthL0=put~0:58 lengthL0=required~72:60
lengthL0=rest~115:63 lengthL0=rings~105:30 lengthL0=rise~0:-29,102:94 lengthL0=rises~102:72
lengthL0=road~0:38,104:-30 lengthL0=rows~16:151 lengthL0=run~12:58,49:35,104:34
lengthL0=says~0:45,107:51 lengthL0=sea~44:44 lengthL0=season~99:32 lengthL0=set~68:67
lengthL0=shed~0:56,104:-34 lengthL0=sorry~99:37 lengthL0=spring~98:44,103:22
lengthL0=standing~115:68 lengthL0=stands~0:-41,99:42 lengthL0=static~99:21,107:-30,115:97
lengthL0=sub~0:46,68:29 lengthL0=submersible~0:27,68:35 lengthL0=sucks~86:60
lengthL0=suction~86:68,99:30,102:-45 lengthL0=surface~0:54 lengthL0=swl~99:32,115:73
lengthL0=tank~0:35,87:71,102:-61 lengthL0=tap~102:60 lengthL0=that~0:-22,86:28,87:57
lengthL0=the~0:46,49:32,68:28,104:26,115:-51 lengthL0=there~104:47 lengthL0=they~0:28
lengthL0=through~86:48 lengthL0=to~68:22,99:72,104:7,113:12 lengthL0=tote~0:38
lengthL0=tower~0:-39,87:54,104:50 lengthL0=up~87:57,102:52 lengthL0=uphill~102:56
lengthL0=upstairs~102:46 lengthL0=was~0:47 lengthL0=water~68:-72,79:59,98:60,99:64,102:-50,115:65
lengthL0=water's~99:42 lengthL0=way~104:53 lengthL0=we~44:26 lengthL0=well~107:66
lengthL0=with~0:41,99:41,104:-40 lengthL0=within~99:33 lengthL0=wrote~0:38 lengthL0=x~0:27
lengthL0=yurt~0:43 lengthL0=|~103:49 lengthL1=)~0:-33
lengthL1=,~12:46,18:42,68:20,87:57,113:-41,115:40 lengthL1=.~0:-40,7:56,68:25,87:53,111:63,113:-29
lengthL1=0~87:57,99:23,103:84 lengthL1=1~0:-17,16:50,18:44,111:45 lengthL1=2~103:-18,104:-37,107:33
lengthL1=3~87:30,102:10,103:29,113:49 lengthL1=4~0:-69,113:41 lengthL1=5~104:35,107:34
lengthL1=6~0:-47,103:49,104:-30 lengthL1=7~0:-24 lengthL1=8~0:67,66:33
lengthL1=9~0:55,105:48,113:43 lengthL1=;~0:48,99:-24,102:-39 lengthL1=?~87:-36
lengthL1=a~44:-33,68:23,102:-41,105:45,107:31 lengthL1=above~0:-39,87:34,99:-46,104:37
lengthL1=and~99:56,103:-32,110:39,113:42 lengthL1=apart~12:27 lengthL1=are~0:90,68:-33,104:37
lengthL1=at~0:-29,99:-25,115:52 lengthL1=bank~0:62,99:-52 lengthL1=beds~18:29 lengthL1=below~104:40
lengthL1=booster~0:23,104:-23 lengthL1=bore~0:28,102:-41,105:23 lengthL1=borehole~0:-50,99:7,110:37
lengthL1=cable~49:52 lengthL1=deep~68:-27,105:34,107:46,115:30 lengthL1=delivery~0:39,104:-38
lengthL1=depth~0:36 lengthL1=distance~104:21 lengthL1=drip~0:-15,12:39,16:25,18:21
lengthL1=dry~0:-79,99:27 lengthL1=end~99:29 lengthL1=every~12:80 lengthL1=falls~99:60
lengthL1=feet~0:39,115:-53 lengthL1=floats~0:49 lengthL1=for~113:57
lengthL1=from~49:58,68:-47,87:39,103:53,107:-57 lengthL1=ft~0:24,99:34,107:8 lengthL1=full~87:52
lengthL1=gal~87:39 lengthL1=gallon~0:49,87:-37 lengthL1=gallons~0:35 lengthL1=garden~0:43
lengthL1=goes~0:46 lengthL1=gph~12:74 lengthL1=gpm~115:59 lengthL1=guest~0:64 lengthL1=h~0:-40
lengthL1=half~102:-30,103:75 lengthL1=hangs~107:30 lengthL1=have~0:20 lengthL1=height~87:33
lengthL1=hose~0:39,102:-25 lengthL1=house~49:37 lengthL1=how~107:45 lengthL1=hundred~0:36,99:-51
lengthL1=in~0:34,68:55,99:4 lengthL1=inch~0:57,102:-53,103:51 lengthL1=is~86:34,98:39,104:43,105:22
lengthL1=it~102:16 lengthL1=it's~102:26 lengthL1=kpa~103:41 lengthL1=l~99:-20,113:43
lengthL1=lake~0:41 lengthL1=level~99:42 lengthL1=line~104:37 lengthL1=lines~7:18
lengthL1=liters~0:39 lengthL1=litres~0:-30,87:39,102:68 lengthL1=log~107:39 lengthL1=long~0:30
lengthL1=m~99:50,103:16,111:62 lengthL1=map~0:33 lengthL1=min~0:22,102:-40
lengthL1=minute~0:-19,103:13 lengthL1=my~0:49,104:-46 lengthL1=next~102:-54
lengthL1=not~0:-36,102:28 lengthL1=now~104:26 lengthL1=of~0:-7,68:-34,99:18,102:20,104:52,107:31
lengthL1=off~102:-37 lengthL1=on~87:32 lengthL1=our~107:40 lengthL1=ours~99:-34,107:34
lengthL1=over~0:38,104:-52 lengthL1=pe~103:55 lengthL1=pipe~86:41,110:73
lengthL1=poly~102:49,104:-41 lengthL1=psi~0:-52 lengthL1=pulls~99:44
lengthL1=pump~0:-60,68:84,98:17,102:31 lengthL1=pumping~99:27 lengthL1=pumps~0:39 lengthL1=pvc~0:42
lengthL1=reservoir~87:29 lengthL1=rest~99:-42,115:58 lengthL1=rise~102:33 lengthL1=rows~12:46
lengthL1=s~113:38 lengthL1=says~68:52 lengthL1=sits~0:-53,99:46 lengthL1=solar~99:-33
lengthL1=stands~0:33 lengthL1=static~113:35 lengthL1=submersible~0:-22,68:33
lengthL1=suction~86:63,104:-29 lengthL1=summer~99:50 lengthL1=surface~0:-26,99:65
lengthL1=take~103:48 lengthL1=tank~0:74,87:42,99:-25 lengthL1=tape~0:-34
lengthL1=the~44:-39,49:51,86:46,87:36,102:30 lengthL1=thirty~102:22 lengthL1=through~102:37
lengthL1=to~0:-39,49:41,87:16,102:92,103:54 lengthL1=trench~0:31 lengthL1=up~0:12,87:-27,102:9
lengthL1=us~0:62 lengthL1=van~0:40 lengthL1=we~104:52 lengthL1=well~99:23,103:-50,105:-1
lengthL1=with~0:-10,105:41,113:25 lengthL1=yards~103:39 lengthL1=year~0:30,99:-37
lengthL1=|~0:39,87:-33 lengthL2=(~0:-31,87:34 lengthL2=,~12:56,67:36,68:19,87:40,102:21,105:-33
lengthL2=.~7:79,12:36,15:53,18:28,66:48,67:73,68:38,86:36,104:23,115:-44
lengthL2=0~7:49,12:32,86:-7,102:46,103:22 lengthL2=1~18:-43,49:40,86:27,87:-59,103:33,113:31
lengthL2=2~12:44,44:-42,87:-33,104:27,110:52 lengthL2=3~72:62,104:56,105:-32
lengthL2=4~99:-46,102:30,104:31 lengthL2=5~0:26,44:-59,87:20,103:27,104:54,113:-44
lengthL2=6~99:-19,103:41,104:-30,115:21 lengthL2=7~102:28,103:42 lengthL2=8~0:17 lengthL2=9~103:-63
lengthL2=:~87:-32,113:99 lengthL2=?~99:80 lengthL2=above~104:34 lengthL2=acre~18:45
lengthL2=afternoon~99:37 lengthL2=again~102:-31 lengthL2=all~0:-59,49:49 lengthL2=allotment~0:30
lengthL2=am~0:48 lengthL2=apart~12:32 lengthL2=as~0:23 lengthL2=bar~87:-28 lengthL2=barn~0:-32
lengthL2=basement~103:37 lengthL2=beds~104:27 lengthL2=before~111:68 lengthL2=beside~102:-26,104:26
lengthL2=black~0:38,103:-28 lengthL2=blue~0:37 lengthL2=bonjour~0:35 lengthL2=bore~113:54,115:44
lengthL2=bore's~68:36,99:-25 lengthL2=borehole~0:-33,99:26,104:-25,107:55,111:22
lengthL2=bottom~0:-33 lengthL2=bring~102:32,103:-27 lengthL2=brings~0:29,104:-36
lengthL2=bucket~0:63 lengthL2=buried~0:-25,103:34 lengthL2=by~0:-70,107:65 lengthL2=cabin~0:45
lengthL2=came~115:38 lengthL2=camp~0:78,107:-43 lengthL2=casing~0:81 lengthL2=centrifugal~0:-29
lengthL2=cistern~0:38 lengthL2=clinic~0:38 lengthL2=cm~0:-40,12:49,15:37 lengthL2=controlled~0:46
lengthL2=cows~103:-73 lengthL2=creek~0:25,104:-41 lengthL2=cubic~0:37,104:-22 lengthL2=curve~0:25
lengthL2=deep~0:-53,102:-49,107:49,115:45 lengthL2=degrees~103:41 lengthL2=delivery~104:-38
lengthL2=depending~99:-31 lengthL2=depth~68:56 lengthL2=does~0:44,87:-32
lengthL2=drilled~0:-32,107:48 lengthL2=driller~104:-32 lengthL2=drip~0:-35,16:41,18:93
lengthL2=drippers~12:61,18:44 lengthL2=drop~0:-47,87:23,110:36 lengthL2=dug~0:90
lengthL2=electric~49:43 lengthL2=elevated~87:52 lengthL2=elevation~102:32 lengthL2=eleven~103:44
lengthL2=fall~103:25 lengthL2=farm~104:-49 lengthL2=fed~102:-34 lengthL2=feet~0:-27,102:47
lengthL2=fills~104:-39 lengthL2=first~0:-45 lengthL2=flow~0:37 lengthL2=found~99:35
lengthL2=from~87:10,107:-42 lengthL2=ft~0:-46,18:48,87:-40,99:42,104:37,107:73,115:-56
lengthL2=gal~0:-31,99:31,104:26 lengthL2=gallon~87:47,104:-32 lengthL2=gallons~0:-64
lengthL2=gave~99:-38,113:30 lengthL2=gives~103:34,104:-29 lengthL2=goes~102:31
lengthL2=got~0:93,68:-35,99:-59 lengthL2=gpm~99:-46,104:45 lengthL2=gravity~103:56
lengthL2=hangs~0:-33,99:37 lengthL2=hav~0:72,87:-69 lengthL2=head~0:54 lengthL2=height~102:39
lengthL2=hello~0:54,99:-24 lengthL2=hey~0:49,99:-44 lengthL2=hi~87:-35 lengthL2=hill~87:-36
lengthL2=hit~99:39 lengthL2=holds~102:41 lengthL2=hose~0:-23,87:-39,104:65
lengthL2=hour~0:52,104:-73 lengthL2=hours~0:56 lengthL2=house~99:-41,102:112,104:54,107:-33
lengthL2=hundred~68:61,102:38,104:-24 lengthL2=hung~104:41 lengthL2=i've~0:46
lengthL2=inch~0:-29,44:37,104:-42 lengthL2=its~0:50 lengthL2=jet~99:8 lengthL2=kitchen~0:-20
lengthL2=km~104:-52 lengthL2=l~0:-34 lengthL2=lake~99:40 lengthL2=lane~99:-33
lengthL2=let~0:-55,107:44 lengthL2=level~0:18,104:-19 lengthL2=lid~0:28 lengthL2=lies~103:38
lengthL2=lift~0:-60,102:57 lengthL2=lifts~104:-38 lengthL2=line~0:36 lengthL2=little~102:-41
lengthL2=log~102:43 lengthL2=low~102:-38 lengthL2=lower~99:-33
lengthL2=m~44:-51,102:3,103:-33,104:12,107:-44,111:46,115:36 lengthL2=mains~102:-53
lengthL2=man~0:30 lengthL2=metres~99:61,102:-46,103:66 lengthL2=milk~0:-53 lengthL2=min~0:-28
lengthL2=minute~87:-37,105:31 lengthL2=mm~0:-42,102:33,103:56 lengthL2=most~0:38,87:-44
lengthL2=need~104:37 lengthL2=never~0:-59,102:-38,103:73,104:32 lengthL2=new~99:29
lengthL2=next~0:35 lengthL2=no~0:-27,104:28,107:50 lengthL2=not~107:35 lengthL2=off~115:37
lengthL2=old~0:31 lengthL2=one~102:29,103:-61 lengthL2=only~0:-27,102:57 lengthL2=other~99:47
lengthL2=over~87:27,104:52 lengthL2=people~0:93,87:-31 lengthL2=per~104:-37
lengthL2=pipe~99:-35,103:44,104:78 lengthL2=poly~0:-30,102:9,103:55,104:29
lengthL2=pond~0:66,102:-44 lengthL2=pressure~87:37 lengthL2=psi~16:35
lengthL2=pump~67:95,68:109,86:55,103:-51 lengthL2=put~0:-59 lengthL2=pvc~0:-30,110:35
lengthL2=quarter~0:-51,99:43 lengthL2=rain~87:48 lengthL2=relief~103:41 lengthL2=reservoir~87:53
lengthL2=right~0:-30 lengthL2=rise~102:53 lengthL2=river~0:52 lengthL2=roof~87:41
lengthL2=rows~12:50 lengthL2=run~104:69 lengthL2=s~99:28 lengthL2=said~107:37 lengthL2=says~99:45
lengthL2=sea~0:38,104:-33 lengthL2=sec~103:47 lengthL2=september~0:42,68:-52
lengthL2=set~0:-29,99:44 lengthL2=shallow~0:-18,104:24 lengthL2=shed~102:34
lengthL2=showers~107:-38 lengthL2=sits~0:-47,86:23 lengthL2=source~0:-40
lengthL2=spring~102:-62,103:86 lengthL2=static~0:-18,99:68 lengthL2=steel~0:-54,87:39
lengthL2=stream~99:-43 lengthL2=submersible~68:35,99:34,104:-39 lengthL2=sucking~0:48,86:-48
lengthL2=suction~0:-29,99:42 lengthL2=tank~0:59,87:86,102:-45,104:89 lengthL2=tape~12:61
lengthL2=tent~102:61 lengthL2=test~99:-35,113:40 lengthL2=thanks~102:28 lengthL2=then~115:41
lengthL2=there~0:71 lengthL2=they~87:-57 lengthL2=thousand~0:45 lengthL2=toilets~0:65,107:-36
lengthL2=too~87:26 lengthL2=top~0:79,104:-39 lengthL2=tower~0:26 lengthL2=trees~0:75
lengthL2=trough~103:35 lengthL2=troughs~115:54 lengthL2=two~104:58 lengthL2=under~0:45,102:-35
lengthL2=until~104:-44 lengthL2=up~87:43,102:51 lengthL2=upper~102:-38 lengthL2=us~102:56
lengthL2=use~99:-44 lengthL2=v~102:-46 lengthL2=valve~0:-47,103:33 lengthL2=w~49:70,87:32
lengthL2=want~87:-35,99:-43,104:30 lengthL2=was~0:-54,68:43 lengthL2=washer~104:51
lengthL2=water~0:-44,68:29,99:91,102:-34,113:39 lengthL2=water's~0:31,102:-52 lengthL2=we've~107:60
lengthL2=well~0:34,44:-35,107:68,113:57 lengthL2=well's~107:40 lengthL2=wellhead~87:-59,102:24
lengthL2=what~107:-35 lengthL2=which~0:17,104:-68 lengthL2=while~0:61,104:-56 lengthL2=will~102:37
lengthL2=wrote~104:28 lengthL2=yet~103:56 lengthL2=your~0:52 lengthL2=|~87:-27,115:32
lengthM=cistern~0:-33,44:44,79:26,87:-54,104:49 lengthM=creek~0:12,86:68,102:37
lengthM=drip~0:-12,7:87,12:157,15:56,16:123,18:144,99:-24,103:-23,105:-61,115:-31
lengthM=pump~0:38,44:38,49:41,66:22,67:48,68:68,72:67,86:37,98:21,99:19,102:70,103:-98,107:-45,110:41,113:49,115:41
lengthM=roof~0:37,44:34,49:59 lengthM=spring~0:29,44:49,68:-44,98:72,99:-35,102:-50,103:181,104:32
lengthM=tank~87:174
lengthM=well~66:51,68:60,72:-45,87:-31,103:-30,104:73,105:101,107:108,113:75,115:40
lengthN=animals.cattle~103:50 lengthN=animals.goats~0:77 lengthN=drip.crop~0:44
lengthN=drip.dripper~18:59 lengthN=drip.holds~0:47 lengthN=drip.length~0:-50,16:26
lengthN=drip.month~15:72 lengthN=drip.rows~12:71,16:-58,18:89
lengthN=drip.spacing~0:-34,12:51,16:63 lengthN=outlets.sink~104:52 lengthN=pipes.held~0:38
lengthN=place.altitude~72:37 lengthN=power.source~0:-30,104:48 lengthN=power.voltage~0:-44
lengthN=pump.dry_run~110:49 lengthN=pump.placement~87:-53,99:39,102:-55,105:55,107:46
lengthN=pump.present~87:75,103:21 lengthN=suction.length~0:18,67:54,86:-50,99:42
lengthN=suction.pipe~0:-22,86:196,104:-45 lengthN=tank.level~104:45 lengthN=use.people~102:45
lengthN=use.troughs~102:51 lengthN=water.kind~44:43,99:27,103:10,104:-47,107:32,115:-53
lengthN=water.level~0:61,68:68,99:-109,102:-49,104:-26,105:55,107:101,115:72
lengthN=water.yield~0:-33,99:70 lengthN=way.climb~104:149
lengthN=way.length~0:-22,87:50,102:90,105:-50,107:-29 lengthN=way.pipe~0:39,86:-70,99:-83,104:146
lengthN=well.bore~0:-35,107:96 lengthN=well.depth~105:61 lengthN=well.tested~113:26,115:21
lengthP=animals.goats~0:46 lengthP=beds.area~16:38 lengthP=drip.crop~16:29
lengthP=drip.dripper~18:97 lengthP=drip.length~16:68 lengthP=drip.rows~12:64,16:-48
lengthP=drip.spacing~12:86,16:42 lengthP=outlets.shower~102:48 lengthP=outlets.sink~102:29
lengthP=pipes.held~0:52,102:26 lengthP=place.altitude~0:46 lengthP=place.name~44:32
lengthP=power.source~0:-28,49:31 lengthP=power.voltage~0:-38,49:33
lengthP=pump.height~99:77,104:-43
lengthP=pump.placement~0:-43,66:71,68:94,86:18,99:76,103:-28,104:-30
lengthP=store.fills~0:44,104:-45 lengthP=store.volume~102:15 lengthP=suction.length~0:31
lengthP=suction.pipe~0:-25,86:85,99:40,104:-31 lengthP=tank.level~104:79
lengthP=tank.volume~87:157,99:-52,102:-62 lengthP=use.people~44:58
lengthP=use.troughs~102:45,104:42 lengthP=water.kind~0:30,44:-24,87:-30,99:61,103:58,105:50,107:122
lengthP=water.level~0:-22,68:51,99:79 lengthP=water.yield~0:-89,87:-34,102:33,103:55
lengthP=way.climb~0:40,104:100 lengthP=way.length~0:64,87:-59,99:-58,102:120,103:96,105:-37,107:-40
lengthP=way.pipe~68:-31,99:-52,102:77,103:61,104:105,107:-34
lengthP=well.bore~104:-34,107:52,115:60 lengthP=well.depth~0:-50,68:42,99:87,104:-32,105:76,115:73
lengthP=well.static~0:-34,111:18,113:43 lengthP=well.tested~99:-35,113:104
lengthR0=,~0:-17,12:37,16:56,68:21,87:50,107:41
lengthR0=.~12:63,16:70,44:48,49:32,68:28,72:44,87:38,99:19,102:36,104:40,105:54,107:45
lengthR0=1~0:-29,86:45 lengthR0=3~102:-39 lengthR0=4~104:39,110:24 lengthR0=7~0:-28
lengthR0=9~0:-26,105:37 lengthR0=?~0:25 lengthR0=a~15:28,68:42
lengthR0=above~68:-22,87:64,98:62,99:34,102:69,104:-37 lengthR0=across~0:26,105:34
lengthR0=all~0:45 lengthR0=altitude~44:27 lengthR0=an~0:25,104:-44 lengthR0=and~0:-43,105:47,107:32
lengthR0=apart~16:41,18:22 lengthR0=at~18:55,113:48 lengthR0=away~102:-29,104:64
lengthR0=barn~87:-34 lengthR0=beds~0:21 lengthR0=below~68:26,99:26,102:48,103:12,104:-38,107:-35
lengthR0=between~16:61 lengthR0=blue~0:34 lengthR0=bore~0:-32 lengthR0=borehole~105:42,107:34
lengthR0=bottom~107:49 lengthR0=but~0:43 lengthR0=cabin~103:33 lengthR0=cable~49:87,104:-29
lengthR0=casing~105:58,107:-23 lengthR0=climb~102:39 lengthR0=creek~102:26 lengthR0=day~15:66
lengthR0=deep~0:59,79:42,99:-35,104:-33,107:99 lengthR0=depth~107:47 lengthR0=diameter~105:40
lengthR0=down~0:43,68:79,99:48,103:-37 lengthR0=drip~0:18 lengthR0=drop~103:35,110:37
lengthR0=elevation~44:36 lengthR0=emitter~18:26 lengthR0=fall~103:40 lengthR0=fence~0:52
lengthR0=from~104:43 lengthR0=full~79:41 lengthR0=ground~68:23,102:-43 lengthR0=height~87:53,102:35
lengthR0=high~0:36 lengthR0=higher~87:46,102:59 lengthR0=hill~102:39 lengthR0=hose~86:40
lengthR0=house~0:32 lengthR0=hung~99:23 lengthR0=in~15:39,66:71,68:38,99:50,102:43
lengthR0=inch~104:58 lengthR0=inside~105:46 lengthR0=is~0:7 lengthR0=it~0:4,66:54,99:39
lengthR0=just~0:53 lengthR0=kitchen~87:37 lengthR0=lift~0:-40,99:84,102:48 lengthR0=lines~12:32
lengthR0=long~12:44,86:48,107:-25 lengthR0=lower~103:45 lengthR0=not~99:43
lengthR0=of~49:65,86:94,99:-53,104:44,107:-21,110:60 lengthR0=off~104:54 lengthR0=over~87:30,106:42
lengthR0=panels~0:46,49:-51 lengthR0=pe~0:48 lengthR0=per~72:24 lengthR0=pex~0:35
lengthR0=pipe~0:51,104:37,110:21 lengthR0=poly~0:31 lengthR0=pump~0:-42,87:-37,98:76
lengthR0=pumphouse~0:54 lengthR0=pushes~0:44 lengthR0=pvc~0:48 lengthR0=q~0:32 lengthR0=ridge~0:32
lengthR0=rise~102:58 lengthR0=rows~16:80 lengthR0=sea~44:58 lengthR0=shed~0:42
lengthR0=spring~0:26,103:59 lengthR0=stream~0:-36 lengthR0=suction~86:48 lengthR0=summer~99:27
lengthR0=surface~99:29 lengthR0=tank~87:57 lengthR0=than~103:30
lengthR0=the~98:13,102:42,103:20,104:25,106:33,115:79 lengthR0=then~0:53 lengthR0=through~0:-42
lengthR0=to~18:26,87:58,104:45,107:69 lengthR0=total~0:-26 lengthR0=two~104:30
lengthR0=under~0:-34,99:28 lengthR0=up~87:40,102:44 lengthR0=uphill~0:-36,102:61
lengthR0=upwards~102:50 lengthR0=water~99:101,102:-21,104:-39 lengthR0=we~0:44 lengthR0=well~107:45
lengthR0=when~0:-48,79:54,99:-29,113:39 lengthR0=wide~0:17 lengthR0=wire~0:36,49:38,104:-37
lengthR0=with~0:-44,68:34,107:71 lengthR0=yield~107:50 lengthR0=you~104:23 lengthR0=|~102:25
lengthR1=,~68:-30,107:45 lengthR1=.~18:55,72:21,86:62,87:53,98:13,106:41 lengthR1=0~0:-17,99:14
lengthR1=1~107:26 lengthR1=2~99:37 lengthR1=3~12:39,103:42 lengthR1=4~0:-37,102:40,104:-28,110:45
lengthR1=5~66:48,104:42,107:41 lengthR1=6~0:-83,87:43,99:-27,115:39 lengthR1=7~0:74,68:-38
lengthR1=8~0:27,99:-37 lengthR1=9~102:20,115:44 lengthR1=;~104:37 lengthR1=?~102:49
lengthR1=and~44:-63 lengthR1=around~0:45 lengthR1=at~107:33 lengthR1=borehole~0:-28,106:23
lengthR1=bottom~0:40 lengthR1=centrifugal~0:40 lengthR1=climbs~102:27 lengthR1=cottage~103:53
lengthR1=deep~107:-28 lengthR1=distance~0:33 lengthR1=down~103:60 lengthR1=drop~110:32
lengthR1=feet~0:30 lengthR1=filled~0:40,103:-42 lengthR1=foot~0:71 lengthR1=ft~0:58
lengthR1=garden~102:47 lengthR1=generator~0:27,104:-30 lengthR1=gives~103:47 lengthR1=got~0:51
lengthR1=gpm~0:-23,99:39,107:24 lengthR1=h~99:40 lengthR1=has~103:36 lengthR1=head~0:35
lengthR1=house~0:-31,87:35,102:46,104:23 lengthR1=i~102:-39,103:52,104:47 lengthR1=in~86:35,107:44
lengthR1=inside~107:50 lengthR1=is~103:-40,105:56,110:53 lengthR1=july~15:45 lengthR1=kitchen~0:-45
lengthR1=level~49:45 lengthR1=line~16:37,99:-39 lengthR1=log~0:38 lengthR1=low~99:37
lengthR1=m~0:-29,105:50,115:32 lengthR1=measured~0:37 lengthR1=mesh~0:37 lengthR1=mm~0:-13,104:48
lengthR1=my~0:13 lengthR1=no~0:18 lengthR1=of~67:59,68:-48,104:-61 lengthR1=on~104:29
lengthR1=one~0:16,102:-33,103:37 lengthR1=pe~0:34,102:-24 lengthR1=pipe~0:41
lengthR1=polyethylene~0:41 lengthR1=pushes~99:48 lengthR1=pvc~104:27 lengthR1=runs~99:-34,113:29
lengthR1=shower~0:66,99:-44,102:-29 lengthR1=slope~102:65,103:-24
lengthR1=suction~0:-11,67:55,86:19 lengthR1=summer~99:51 lengthR1=tap~0:28 lengthR1=that~107:40
lengthR1=the~18:-42,49:51,86:58,87:40,99:-59,102:24,104:32,107:39 lengthR1=there~0:58
lengthR1=through~0:55 lengthR1=to~102:38,103:8,107:-54 lengthR1=top~0:41 lengthR1=twenty~103:40
lengthR1=up~104:23 lengthR1=want~87:46 lengthR1=water~0:-53,15:33,99:23,107:37 lengthR1=we~102:-41
lengthR1=well~99:35,102:-20,103:31 lengthR1=when~0:19 lengthR1=where~99:38
lengthR1=which~0:55,99:-47 lengthR1=wire~49:47 lengthR1=would~0:11 lengthR1=|~49:71
lengthR2=,~0:11,12:12,49:37,99:-32,102:-38,103:-24,104:26,115:22
lengthR2=.~0:41,18:45,49:39,87:32,104:36 lengthR2=0~72:35,102:-24
lengthR2=1~0:-32,16:47,105:33,115:32 lengthR2=2~0:41,68:36,87:43,99:42,102:-40,103:53,115:-69
lengthR2=3~0:42,104:-45,115:68 lengthR2=4~99:75 lengthR2=5~0:-36,102:32,105:22
lengthR2=6~103:-24,106:23,107:25 lengthR2=7~0:49,102:56,104:-43,115:31
lengthR2=8~0:-50,68:-46,103:-47,115:44 lengthR2=?~0:27 lengthR2=above~104:30
lengthR2=away~0:-53,87:35 lengthR2=barn~0:32 lengthR2=bathroom~102:32,104:-46
lengthR2=beside~0:17,107:-55 lengthR2=by~0:-47 lengthR2=climb~0:51,104:-37
lengthR2=comes~0:-28,102:43 lengthR2=deep~0:-35,105:56 lengthR2=driller~115:-49 lengthR2=drip~87:39
lengthR2=dropped~0:35 lengthR2=end~0:75,107:-37 lengthR2=first~87:-33,102:41
lengthR2=foot~0:27,86:27,99:-17 lengthR2=four~0:-39 lengthR2=from~102:-28,104:62
lengthR2=ft~99:40,107:-75 lengthR2=gallon~102:42 lengthR2=give~99:-24,115:23
lengthR2=go~0:50,99:-51 lengthR2=goes~0:64,104:-30 lengthR2=gpm~115:25 lengthR2=grid~103:36
lengthR2=h~0:62 lengthR2=hangs~115:40 lengthR2=height~0:36 lengthR2=his~0:27 lengthR2=hose~0:37
lengthR2=house~0:-37,99:35,103:70,104:-48 lengthR2=how~87:39 lengthR2=hp~0:40,104:-38
lengthR2=hundred~102:42 lengthR2=hung~107:41 lengthR2=it's~102:51 lengthR2=l~0:-46,102:43
lengthR2=line~102:-31 lengthR2=lines~0:47 lengthR2=liter~0:76 lengthR2=liters~0:59,87:-31
lengthR2=litres~0:-41,87:27 lengthR2=long~99:31 lengthR2=lower~0:40
lengthR2=m~0:-16,68:37,106:19,113:45 lengthR2=mail~0:22 lengthR2=metres~0:-32
lengthR2=mm~0:34,68:-42,87:55 lengthR2=motor~0:32,104:-53 lengthR2=must~102:43
lengthR2=never~0:-34,107:41 lengthR2=new~0:95 lengthR2=one~104:34 lengthR2=other~0:46
lengthR2=people~0:-31 lengthR2=per~99:61 lengthR2=persons~0:70 lengthR2=pipe~102:34,104:-32,110:46
lengthR2=poly~102:40,103:29 lengthR2=power~104:40
lengthR2=pump~68:-49,87:23,103:-62,104:-44,105:40,115:35 lengthR2=pvc~0:16,99:-35
lengthR2=runs~0:39,68:-29 lengthR2=set~99:42,104:-28 lengthR2=shower~0:51,104:40 lengthR2=shut~0:35
lengthR2=since~0:29,104:-32 lengthR2=sink~0:46,102:-68,104:28 lengthR2=sits~0:49,107:-51
lengthR2=so~0:47 lengthR2=solar~99:-50 lengthR2=stream~0:105 lengthR2=submersible~0:-28
lengthR2=suction~0:39 lengthR2=summer~99:-34 lengthR2=tank~0:82,87:-45,104:-50 lengthR2=there~0:-38
lengthR2=toilets~104:43 lengthR2=top~99:34 lengthR2=two~0:-53,102:20 lengthR2=under~0:-49
lengthR2=until~0:36 lengthR2=us~103:50 lengthR2=v~104:44 lengthR2=valve~0:58 lengthR2=was~0:42
lengthR2=washing~99:41 lengthR2=water~0:-46,72:33,105:36,107:32 lengthR2=well~104:52
lengthR2=when~115:33 lengthR2=which~0:52 lengthR2=winter~0:38 lengthR2=|~0:56,87:57,104:-38
lengthS=abou~99:47 lengthS=abov~44:30,87:31,99:-52,102:-30,104:67 lengthS=afte~99:19
lengthS=allo~0:29 lengthS=alti~0:-33,44:80 lengthS=apar~12:52 lengthS=augu~99:35 lengthS=barr~87:43
lengthS=base~0:65,103:37 lengthS=befo~115:60 lengthS=belo~0:-39,104:27 lengthS=besi~0:56
lengthS=betw~104:63 lengthS=blac~0:76,103:-61 lengthS=bore~0:-78,68:81,99:61,102:-33,107:87,115:24
lengthS=bott~0:-69,87:27,107:54 lengthS=brin~102:21,104:36 lengthS=buri~102:43
lengthS=cabi~44:40,87:-54,102:21,104:51 lengthS=cabl~49:174,104:-49 lengthS=capt~0:38
lengthS=case~0:-41,105:51 lengthS=casi~105:26 lengthS=cell~0:30 lengthS=cent~0:-31
lengthS=char~0:51 lengthS=cist~79:28 lengthS=clim~0:-38,102:173,104:-59 lengthS=come~0:48,103:42
lengthS=copp~104:60 lengthS=coul~0:35 lengthS=cree~99:50 lengthS=curv~0:97,107:-21
lengthS=deli~0:37 lengthS=dept~0:44,68:69,99:-24,107:42 lengthS=diam~0:-64,7:22,66:62,105:54
lengthS=diff~0:-52,103:65 lengthS=dist~104:43 lengthS=draw~0:-28,86:63,99:118
lengthS=dril~104:-56,107:78 lengthS=drip~18:153 lengthS=drop~102:-39,103:78 lengthS=dyna~99:31
lengthS=elev~0:-42,44:81 lengthS=emit~18:21 lengthS=ever~16:34,18:45
lengthS=fall~102:-41,103:75,107:-37 lengthS=fiel~102:-41,103:54 lengthS=fill~87:42
lengthS=floo~0:-61,98:52,99:-53,102:30 lengthS=foun~99:30 lengthS=g'da~99:-24 lengthS=gall~87:52
lengthS=gard~104:51 lengthS=gene~87:41 lengthS=hang~68:31,99:-46,107:38,111:57 lengthS=head~87:51
lengthS=heig~87:38,102:59,104:-31 lengthS=high~0:-45,102:60,104:67
lengthS=hous~68:-50,99:-21,102:103,103:67,104:89,107:-43 lengthS=hund~0:23,102:32 lengthS=inch~0:45
lengthS=insi~7:60 lengthS=inst~68:39 lengthS=inta~0:-36,68:-33,86:50,102:-38,103:35,111:92
lengthS=kitc~0:-20,102:43,104:32 lengthS=late~12:50 lengthS=layf~104:29 lengthS=leng~104:51
lengthS=leve~68:-37,98:19,99:70,107:-34,113:75,115:50 lengthS=lift~102:68,104:-38
lengthS=line~7:37,12:66 lengthS=litr~0:-63,87:82 lengthS=litt~102:-32 lengthS=lodg~102:-41,103:37
lengthS=lowe~68:30,99:51,104:31 lengthS=make~0:51,99:-34 lengthS=mete~104:23
lengthS=mout~102:-36,103:41 lengthS=near~0:40 lengthS=need~72:47 lengthS=neig~0:63
lengthS=npsh~72:81 lengthS=othe~0:53 lengthS=outs~66:32 lengthS=pane~49:52,104:-42
lengthS=pape~104:30 lengthS=peop~0:47 lengthS=perf~0:26,68:-43 lengthS=plac~0:-34
lengthS=plea~106:23 lengthS=powe~0:49,104:-37 lengthS=pull~99:53 lengthS=pump~99:57,113:70
lengthS=ques~99:56 lengthS=requ~72:59 lengthS=rese~0:-30,87:71,102:-32 lengthS=rest~115:65
lengthS=ring~0:-29,105:28 lengthS=rise~102:69 lengthS=rive~0:41 lengthS=sche~104:36
lengthS=seas~99:47 lengthS=sens~0:51 lengthS=show~102:57 lengthS=smal~0:-18,44:20
lengthS=sola~99:-37 lengthS=sorr~0:-47,104:44 lengthS=sour~107:-45 lengthS=spac~16:50,18:45
lengthS=spri~0:-48,87:-33,98:42,102:43,103:49,104:27
lengthS=stan~0:-68,87:64,99:10,104:57,107:-37,115:71 lengthS=stat~0:-25,99:59,107:-35,115:110
lengthS=stee~0:-38 lengthS=stop~0:51 lengthS=stra~0:52 lengthS=stri~99:27
lengthS=subm~0:44,66:47,68:98,99:-49 lengthS=suck~0:35 lengthS=suct~86:148,99:73 lengthS=summ~0:39
lengthS=surf~99:52,104:-32 lengthS=ther~104:67 lengthS=thin~0:27 lengthS=thir~102:23
lengthS=thou~0:41 lengthS=thro~86:36 lengthS=todd~0:47 lengthS=towe~87:59 lengthS=tree~0:29
lengthS=tren~0:68 lengthS=trou~0:-27,102:50,103:31 lengthS=tubi~12:62 lengthS=twen~0:40
lengthS=unti~0:43,104:-49 lengthS=uphi~102:54 lengthS=upst~102:45
lengthS=wate~0:-40,49:-39,68:-29,79:55,98:51,99:149,107:-17,113:31,115:74 lengthS=we'v~107:57
lengthS=well~0:-46 lengthS=with~99:32 lengthS=work~0:28 lengthS=yard~103:11
lengthT=beds.area~0:-40,7:66,12:108,15:32,16:95,18:67,68:42,103:-38,115:-38
lengthT=power.cable~0:-34,44:40,49:-46 lengthT=power.controller~104:-41
lengthT=power.limit~0:-46,49:50 lengthT=power.open_voltage~104:-58
lengthT=power.panel~49:74,87:36,103:-15 lengthT=power.series~0:-30,49:60,87:39
lengthT=power.source~49:98,68:50,87:41,99:26,102:51,103:-45
lengthT=power.strings~0:-26,87:56,102:-73
lengthT=power.voltage~49:86,67:52,102:29,103:-104,104:36,105:-37
lengthT=pump.control~0:28,86:50,87:-68 lengthT=pump.controller~0:42 lengthT=pump.count~72:57
lengthT=pump.cut_in~68:31,87:-46,99:40 lengthT=pump.cut_out~0:22,67:50,68:27,87:-60
lengthT=pump.diameter~104:-33,110:46 lengthT=pump.dry_run~107:46,110:58,115:65
lengthT=pump.height~49:30,66:29,68:-164,86:-52,99:18,103:53,104:-34,105:33,107:86,113:27,115:53
lengthT=pump.most_flow~99:70,102:-42 lengthT=pump.motor~72:38
lengthT=pump.placement~0:21,44:28,66:62,67:36,72:37,86:37,87:-46,99:26,103:-90,107:-75
lengthT=pump.present~44:39,87:27,99:-40,102:-128,103:192,104:61,107:-50
lengthT=pump.relief~0:51,102:-47 lengthT=pump.set~68:23,72:25,86:42,87:-45,103:-32
lengthT=pump.works~0:34,67:69,72:29,104:-63 lengthT=store.days~87:55,107:-41,115:-45
lengthT=store.depth~0:45,104:-32 lengthT=store.reserve~0:-50,87:41
lengthT=store.volume~16:41,44:18,68:-42,87:-29,102:64,103:-10,104:48
lengthT=tank.level~0:91,87:-160,99:83,102:-56,103:-53,104:74
lengthT=tank.volume~44:59,66:60,87:131,102:-50,103:-101,104:45,107:-26
lengthT=water.kind~44:38,49:-31,66:51,87:-35,99:39,102:60,103:78,104:28,105:43,107:62,110:25,111:65,113:57,115:103
lengthT=water.level~44:14,49:27,67:81,68:57,72:73,86:63,87:48,99:-211,103:-27,105:81,107:69,115:-60
lengthT=water.temperature~0:-24,72:57 lengthT=water.yield~44:43,86:-48,103:9
lengthT=way.climb~0:88,44:21,68:44,86:54,87:-117,99:91,102:-243,103:-166,104:147,105:25,107:40,110:-34,115:22
lengthT=way.length~0:81,44:75,68:41,87:85,99:36,102:154,103:75,104:-330,107:56,115:23
lengthT=way.pipe~49:-48,86:-34,102:39,103:122,104:123,107:-55,115:47
lengthT=well.bore~0:-35,66:107,87:-50,99:-20,104:-57,105:-177,107:97,110:47,111:119,113:32,115:91
lengthT=well.cover~111:42
lengthT=well.depth~0:50,49:36,68:78,103:-38,105:86,106:55,107:-246,111:17,113:52,115:76
lengthT=well.drop_pipe~102:-43 lengthT=well.intake~115:62 lengthT=well.known~111:46
lengthT=well.pumped_for~111:43 lengthT=well.pumping~68:18,99:-62,104:-45,110:36,113:-55,115:124
lengthT=well.static~0:-60,66:52,105:59,107:30,111:45,113:88,115:-79 lengthT=well.steady~115:74
lengthT=well.tested~0:-47,66:22,99:-30,110:50,113:127,115:86 lengtha=~0:-31,99:48,104:54
lengtha=,_1~104:-42 lengtha=,_3~104:-33 lengtha=,_pump~99:37 lengtha=,_static~0:-29
lengtha=,_the~0:-33 lengtha=,_water~99:-36 lengtha=.~0:69,99:24,102:69,104:44,107:35
lengtha=._1~99:31 lengtha=._2~0:43,99:-41 lengtha=._a~0:21,104:-34 lengtha=._it~0:63,68:-48
lengtha=._the~0:-67 lengtha=a_day~15:29 lengtha=above_it~0:-47,99:35,102:78 lengtha=above_sea~44:58
lengtha=above_the~0:82,87:64,98:36,102:-45,104:-26 lengtha=across_,~0:70,105:-38
lengtha=across_.~105:39 lengtha=and_the~102:35,104:-48 lengtha=apart_.~16:52
lengtha=away_,~0:-26,104:49 lengtha=away_.~0:43,104:12 lengtha=below_ground~0:50,68:29
lengtha=below_it~99:28,102:-43,103:25 lengtha=below_the~99:47,102:15,115:69
lengtha=casing_.~0:-25,105:32 lengtha=deep_,~107:22 lengtha=deep_.~107:20 lengtha=deep_and~107:41
lengtha=deep_when~79:38 lengtha=down_,~68:46 lengtha=down_.~68:25 lengtha=down_to~0:65
lengtha=from_the~0:75,103:33 lengtha=higher_than~103:51 lengtha=in_a~68:51 lengtha=inside_.~105:23
lengtha=long_.~104:43 lengtha=lower_.~102:-75,103:53 lengtha=lower_down~102:22
lengtha=lower_than~102:58 lengtha=of_1~104:57 lengtha=of_2~104:33 lengtha=of_cable~49:54
lengtha=of_drop~110:38 lengtha=of_fall~103:43 lengtha=of_lift~0:-21,99:33,102:54
lengtha=of_rise~102:44 lengtha=of_suction~86:38 lengtha=of_wire~49:49 lengtha=off_the~0:41
lengtha=on_the~0:-31 lengtha=over_the~0:23,102:-49,106:45 lengtha=rows_,~16:32
lengtha=to_the~0:-22,104:49,107:42 lengtha=to_water~99:37 lengtha=up_,~102:51 lengtha=up_.~102:51
lengtha=up_from~87:38 lengtha=up_the~102:32 lengthb=~44:45,49:13 lengthb=,_buried~0:48
lengthb=,_climbing~102:45 lengthb=,_intake~111:47 lengthb=,_level~99:40 lengthb=,_pump~68:23
lengthb=,_rows~16:69 lengthb=,_static~115:22 lengthb=,_swl~115:57 lengthb=,_uphill~102:28
lengthb=,_water~79:43,99:23 lengthb=,_well~107:41 lengthb=._borehole~0:48 lengthb=._cable~0:38
lengthb=?_|~0:-35 lengthb=a~49:40 lengthb=a_house~102:37 lengthb=a_spring~102:48
lengthb=a_tank~87:24 lengthb=barn_is~0:-21 lengthb=borehole_is~0:44 lengthb=bottom_at~107:41
lengthb=box_is~0:27 lengthb=cellar_is~0:8 lengthb=copper_,~104:29 lengthb=creek_is~99:31,102:-38
lengthb=down_to~99:42,113:32 lengthb=drop_pipe~110:33 lengthb=dry_lift~67:33
lengthb=each_line~12:32 lengthb=falls_to~113:28 lengthb=ft_of~0:31 lengthb=gal_tank~0:37
lengthb=gpm_at~0:37 lengthb=h_at~0:55 lengthb=hole_of~107:38 lengthb=hose_is~86:39
lengthb=house_:~102:21 lengthb=house_and~0:25,102:-53 lengthb=house_is~0:44,87:28,103:-64
lengthb=house_stands~0:-36,103:24 lengthb=hut_,~44:45 lengthb=in_a~105:46 lengthb=inch_,~110:37
lengthb=inside_diameter~7:24 lengthb=intake_is~103:42 lengthb=is_about~104:57 lengthb=is_at~115:24
lengthb=it_goes~102:28 lengthb=it_is~87:-59,99:31,102:28,107:47 lengthb=it_stands~0:32
lengthb=it_to~68:34 lengthb=l_min~0:39 lengthb=level_is~0:47 lengthb=level_of~115:44
lengthb=lift_is~86:-22,99:52,102:35 lengthb=log_says~0:40 lengthb=lowered_to~68:33
lengthb=m_of~0:33 lengthb=no_,~99:37 lengthb=on_a~87:45 lengthb=outside_diameter~66:33
lengthb=poly_,~104:28 lengthb=pond_,~99:26 lengthb=pump_at~68:75,99:-29 lengthb=pump_is~49:42
lengthb=pumping_level~113:45 lengthb=rise_is~102:45 lengthb=rows_are~16:46 lengthb=shed_is~0:29
lengthb=sorry_,~99:30 lengthb=spring_is~103:3 lengthb=spring_lies~102:51,103:-29
lengthb=standing_level~99:37 lengthb=static_level~0:71 lengthb=tank_is~0:54,102:-27
lengthb=tank_it's~104:45 lengthb=the_bank~99:35 lengthb=the_house~104:51 lengthb=up_and~104:45
lengthb=up_to~0:72 lengthb=water_:~99:43 lengthb=water_at~0:49,99:34 lengthb=water_is~0:-24,99:32
lengthb=water_level~98:23,99:-60,115:44 lengthb=we_have~0:42,104:-43 lengthb=well_,~0:53,99:31
lengthb=well_and~0:-37,102:37 lengthb=well_at~68:38 lengthb=well_is~0:23,99:-30
lengthl0=,~44:36,102:-58,104:22,115:-39 lengthl0=.~18:27 lengthl0=:~86:37,87:37,102:47,107:29
lengthl0=a~49:32,87:28,99:-39,102:-24,105:24,107:44 lengthl0=altitude~44:48
lengthl0=and~0:9,99:-30,102:20 lengthl0=are~0:19
lengthl0=at~0:50,16:53,44:66,68:111,99:70,102:-50,104:-49,107:-40,111:22 lengthl0=bore~107:37
lengthl0=buried~0:77 lengthl0=by~0:34,103:28 lengthl0=cable~0:30 lengthl0=climb~102:26
lengthl0=climbing~102:45 lengthl0=climbs~102:43 lengthl0=diameter~7:24,66:65 lengthl0=down~68:36
lengthl0=drops~102:-25,103:50 lengthl0=each~18:57 lengthl0=elevation~44:24
lengthl0=every~12:-24,16:26,18:65 lengthl0=falls~87:32,102:-27,103:59 lengthl0=from~68:32,99:43
lengthl0=head~0:33 lengthl0=height~102:30 lengthl0=house~104:72 lengthl0=in~0:41
lengthl0=intake~111:44 lengthl0=is~0:26,15:42,49:20,68:-34,72:32,102:20,104:39,105:32
lengthl0=level~98:21,107:-23,113:48 lengthl0=lies~102:38 lengthl0=lift~67:30,87:59
lengthl0=line~12:66 lengthl0=lines~12:45 lengthl0=min~0:39 lengthl0=npshr~72:81 lengthl0=of~12:46
lengthl0=on~99:-37,110:47 lengthl0=only~104:36 lengthl0=over~104:25 lengthl0=pipe~110:32
lengthl0=poly~104:33 lengthl0=pump~68:38 lengthl0=pvc~0:32 lengthl0=rises~102:50
lengthl0=rows~16:93,18:-48 lengthl0=run~12:32 lengthl0=runs~99:-63 lengthl0=says~107:66
lengthl0=set~68:43 lengthl0=stands~0:-36,87:45 lengthl0=static~115:65 lengthl0=surface~0:42
lengthl0=swl~99:32,115:73 lengthl0=tank~0:39,87:30,102:-45 lengthl0=the~0:75,104:-32
lengthl0=through~86:38 lengthl0=to~68:32,99:36,102:-46,104:-90,107:22,113:17 lengthl0=up~102:65
lengthl0=uphill~102:31 lengthl0=was~0:31 lengthl0=water~79:65,98:44 lengthl0=well~107:9
lengthl0=within~99:33 lengthl0=x~0:27 lengthl0=|~0:-38 lengthl1=,~0:-56,79:39,102:32,111:34
lengthl1=.~44:26 lengthl1=0~15:52 lengthl1=1~0:46 lengthl1=3~87:42 lengthl1=;~102:56
lengthl1=?~0:-36 lengthl1=a~102:55,104:53 lengthl1=and~0:-48,103:33 lengthl1=are~44:33
lengthl1=borehole~107:22 lengthl1=box~0:26 lengthl1=cabin~102:30 lengthl1=cable~49:27
lengthl1=cased~0:-30,105:51 lengthl1=casing~105:35 lengthl1=cellar~99:-31 lengthl1=climb~102:18
lengthl1=comes~103:42 lengthl1=copper~104:29 lengthl1=creek~0:42 lengthl1=deep~105:32
lengthl1=depth~68:35,107:27 lengthl1=distance~104:30 lengthl1=down~113:46 lengthl1=dripper~0:32
lengthl1=drop~103:37,110:31 lengthl1=dry~67:33 lengthl1=dug~0:31 lengthl1=each~12:38
lengthl1=elevation~44:32 lengthl1=falls~113:28 lengthl1=far~0:36 lengthl1=field~0:57
lengthl1=goes~99:46 lengthl1=gravity~0:43 lengthl1=h~0:55 lengthl1=here~44:34 lengthl1=hole~107:62
lengthl1=hose~86:52 lengthl1=house~0:45,99:-54,103:42,104:29 lengthl1=hung~110:37
lengthl1=hut~44:38 lengthl1=i'm~0:23 lengthl1=in~105:68,107:55 lengthl1=inch~0:-24
lengthl1=inside~7:46 lengthl1=intake~103:42 lengthl1=is~68:43,99:39
lengthl1=it~0:51,68:39,104:-31,107:26 lengthl1=it's~104:28 lengthl1=level~99:33
lengthl1=lift~0:-31,86:-31,99:59,102:46 lengthl1=line~12:19,16:28 lengthl1=lines~12:59
lengthl1=long~16:38 lengthl1=lowered~68:33 lengthl1=m~102:37 lengthl1=more~102:18 lengthl1=no~99:27
lengthl1=npsh~72:68 lengthl1=on~87:53 lengthl1=outside~66:33 lengthl1=poly~104:44
lengthl1=pond~99:26 lengthl1=pump~0:-53,49:33,68:61,99:13,102:-24 lengthl1=pumping~113:44
lengthl1=push~0:30 lengthl1=required~72:27 lengthl1=rings~105:30 lengthl1=rise~102:61
lengthl1=roof~0:40 lengthl1=rows~16:77 lengthl1=run~104:29 lengthl1=says~0:36
lengthl1=shed~0:35,104:-32 lengthl1=shower~102:44 lengthl1=so~0:17 lengthl1=sorry~99:30
lengthl1=spring~0:-40,102:57 lengthl1=standing~99:19,115:45 lengthl1=static~0:56
lengthl1=submersible~0:40 lengthl1=sucks~86:49 lengthl1=suction~86:49
lengthl1=tank~0:33,87:30,102:-63 lengthl1=that's~0:36 lengthl1=the~102:-60,104:36
lengthl1=to~99:52,104:17 lengthl1=tower~104:52 lengthl1=trough~103:49,104:-34
lengthl1=up~99:-45,104:41 lengthl1=water~68:-28,98:18,99:76,115:23 lengthl1=we~0:29
lengthl1=well~68:37 lengthl1=|~0:72,104:-38 lengthl2=,~18:38,66:21,102:30,104:-31,105:46,107:44
lengthl2=.~0:-24,99:25,107:29 lengthl2=0~87:62,105:44 lengthl2=1~104:29 lengthl2=2~104:29
lengthl2=3~104:46 lengthl2=?~99:31 lengthl2=a~107:38 lengthl2=bank~0:45,99:-41 lengthl2=cable~49:24
lengthl2=can~0:33 lengthl2=creek~103:26 lengthl2=deep~0:42 lengthl2=drilled~0:40 lengthl2=drip~12:9
lengthl2=dry~99:24 lengthl2=dug~99:40 lengthl2=each~12:35 lengthl2=et~15:52 lengthl2=from~102:54
lengthl2=has~0:30 lengthl2=house~87:33,102:23,104:-47 lengthl2=hp~68:54 lengthl2=in~99:38
lengthl2=inch~104:37 lengthl2=intake~86:44 lengthl2=is~68:49 lengthl2=it~0:-42,99:40
lengthl2=l~18:38 lengthl2=last~0:51 lengthl2=length~104:26 lengthl2=level~99:31,115:33
lengthl2=line~0:38 lengthl2=m~105:23 lengthl2=mm~0:-36,103:52 lengthl2=my~103:29
lengthl2=nearest~0:45 lengthl2=no~104:34 lengthl2=npsh~72:24 lengthl2=on~99:33 lengthl2=one~16:44
lengthl2=ours~107:51 lengthl2=pipe~104:65 lengthl2=poly~104:-64 lengthl2=pump~102:-45
lengthl2=roof~102:41 lengthl2=spring~0:32,102:-53 lengthl2=standing~99:-23,115:23
lengthl2=static~115:10 lengthl2=submersible~68:22 lengthl2=suction~86:10,99:27
lengthl2=tank~0:-37,102:47 lengthl2=that~86:27
lengthl2=the~0:-44,49:26,68:24,87:61,102:35,103:45,104:23,113:23 lengthl2=to~0:-23,102:18,104:80
lengthl2=up~87:42 lengthl2=water~68:-31,99:36,115:20 lengthl2=we~44:41
lengthl2=with~0:13,99:33,104:-37 lengthl2=|~87:-36 lengthlr=,_,~0:76
lengthlr=,_.~99:23,103:-41,104:26,107:50 lengthlr=,_above~99:38 lengthlr=,_across~0:43
lengthlr=,_between~16:41 lengthlr=,_deep~0:-28,107:73 lengthlr=,_down~68:35 lengthlr=,_from~0:35
lengthlr=,_lower~103:19 lengthlr=,_of~0:52,107:-27 lengthlr=,_rows~16:23 lengthlr=,_to~99:45
lengthlr=,_up~102:57 lengthlr=,_uphill~102:53 lengthlr=a_borehole~105:43,107:41
lengthlr=a_well~107:30 lengthlr=about_from~104:50 lengthlr=about_lower~103:73
lengthlr=about_of~102:35 lengthlr=and_of~0:42,104:-16 lengthlr=and_up~0:-43,102:31
lengthlr=are_.~102:41 lengthlr=are_from~0:36 lengthlr=at_,~68:53,99:14,107:-36,111:32,115:-47
lengthlr=at_.~68:30,99:20,113:45 lengthlr=at_above~0:45 lengthlr=at_altitude~44:36
lengthlr=cable_.~49:45 lengthlr=diameter_.~7:25 lengthlr=drops_.~103:25 lengthlr=every_,~18:15
lengthlr=every_.~16:23 lengthlr=falls_to~103:37 lengthlr=from_.~68:32 lengthlr=height_.~102:32
lengthlr=hole_,~107:37 lengthlr=house_,~104:44 lengthlr=house_.~104:42
lengthlr=house_above~87:-40,102:93 lengthlr=house_away~104:26 lengthlr=house_higher~102:23
lengthlr=house_lower~103:33 lengthlr=house_of~0:39 lengthlr=house_up~0:34
lengthlr=is_,~102:34,104:-47,107:47 lengthlr=is_.~0:-31,12:40,49:40,86:31,102:-78
lengthlr=is_above~0:24,102:34 lengthlr=is_away~0:77 lengthlr=is_below~87:27,99:49,103:28
lengthlr=is_deep~0:16 lengthlr=is_from~104:60 lengthlr=is_higher~87:-62,102:50
lengthlr=is_long~86:23 lengthlr=is_over~0:-65,87:78 lengthlr=is_per~72:22
lengthlr=is_up~0:-30,102:16 lengthlr=it's_from~103:52 lengthlr=it's_to~0:38 lengthlr=level_,~99:72
lengthlr=level_above~98:23,99:-28 lengthlr=lies_above~102:-17,103:43
lengthlr=lies_lower~102:58,103:-44 lengthlr=lift_.~0:41 lengthlr=lift_to~87:62
lengthlr=npshr_.~72:39 lengthlr=on_.~0:38 lengthlr=on_of~110:50 lengthlr=pump_,~68:25
lengthlr=pump_.~0:44 lengthlr=pump_above~99:38 lengthlr=pvc_.~0:41 lengthlr=rows_,~16:20
lengthlr=rows_apart~16:30 lengthlr=says_,~107:34 lengthlr=spring_above~102:-53,103:74
lengthlr=static_,~115:57 lengthlr=static_.~115:19 lengthlr=surface_below~0:42 lengthlr=swl_,~115:77
lengthlr=tank_above~87:26 lengthlr=tank_up~0:36 lengthlr=the_of~0:55 lengthlr=through_of~86:38
lengthlr=to_.~0:-44,68:53,104:-29,107:56 lengthlr=to_after~99:60 lengthlr=to_from~0:53,99:-49
lengthlr=to_when~99:-35,113:45 lengthlr=up_.~102:30 lengthlr=up_over~0:64
lengthlr=water_above~98:51,99:-43 lengthlr=water_deep~0:-21,79:48 lengthlr=water_down~99:35
lengthlr=well_,~107:41 lengthr0=,~0:-32,68:17,107:73,111:58,113:-59,115:10
lengthr0=.~0:-35,7:21,44:51,49:55,68:39,72:39,87:38,103:-46,107:45,111:50,115:47 lengthr0=?~0:35
lengthr0=a~15:29 lengthr0=above~68:-22,87:65,98:66,99:46,102:44,104:-39 lengthr0=across~0:26,105:34
lengthr0=after~0:51,99:60 lengthr0=and~0:-24 lengthr0=apart~16:41,18:22
lengthr0=away~102:-29,104:67 lengthr0=below~68:26,99:26,102:48,103:12,104:-38,107:-35
lengthr0=between~16:36 lengthr0=bore~105:48 lengthr0=borehole~105:43,107:41 lengthr0=but~0:31
lengthr0=casing~0:-51,105:67 lengthr0=copper~0:31 lengthr0=deep~0:68,79:42,99:-35,104:-30,107:83
lengthr0=depth~107:37 lengthr0=down~68:90,99:57 lengthr0=elevation~44:37
lengthr0=from~0:30,103:32,104:76 lengthr0=hdpe~0:27 lengthr0=high~0:39 lengthr0=higher~87:46,102:59
lengthr0=in~99:21 lengthr0=inside~105:29 lengthr0=is~0:72 lengthr0=long~12:44,86:48,107:-25
lengthr0=lower~103:45 lengthr0=of~49:73,68:-40,86:104,87:-35,104:63,107:-44,110:67
lengthr0=off~104:55 lengthr0=on~99:-68 lengthr0=only~0:53 lengthr0=over~87:30,106:43
lengthr0=pe~0:58 lengthr0=per~72:25 lengthr0=pex~0:36 lengthr0=poly~0:52 lengthr0=pvc~0:22
lengthr0=rows~16:39 lengthr0=suction~86:30 lengthr0=to~0:-52,104:66 lengthr0=under~0:-34,99:28
lengthr0=up~87:41,102:79 lengthr0=uphill~102:64 lengthr0=upwards~102:50 lengthr0=water~0:33,68:-34
lengthr0=well~107:58 lengthr0=when~113:41 lengthr0=wide~0:17 lengthr0=with~0:-43 lengthr0=|~0:-60
lengthr1=,~16:16 lengthr1=.~0:65,12:52,16:41,103:28,105:51,107:46 lengthr1=1~49:55,110:30
lengthr1=2~99:-32 lengthr1=3~86:60 lengthr1=all~0:42 lengthr1=an~0:34,104:-44
lengthr1=and~105:50,107:12 lengthr1=at~68:-36 lengthr1=cable~49:38 lengthr1=casing~0:58,107:-24
lengthr1=day~15:39 lengthr1=down~102:22 lengthr1=drop~110:38 lengthr1=fall~103:43
lengthr1=ground~68:27 lengthr1=house~0:-28,99:32 lengthr1=in~66:67,107:-27
lengthr1=is~0:-30,102:-19,103:22 lengthr1=it~99:47 lengthr1=lift~0:-21,99:33,102:54
lengthr1=pump~102:31 lengthr1=rise~102:34 lengthr1=runs~0:33 lengthr1=sea~44:60
lengthr1=than~103:30 lengthr1=the~72:9,86:-57,98:17,102:20,103:23,106:36 lengthr1=then~0:29
lengthr1=to~0:76,18:26 lengthr1=total~0:-25,104:14 lengthr1=water~99:43 lengthr1=we~0:31
lengthr1=when~0:-19,79:36 lengthr1=wire~49:49 lengthr1=|~102:18 lengthr2=,~7:64,107:-39
lengthr2=.~0:47,99:66,107:-47 lengthr2=1~0:-34,86:66 lengthr2=3~87:30 lengthr2=6~66:53
lengthr2=8~107:-40 lengthr2=9~105:40 lengthr2=at~0:-61 lengthr2=barn~87:-34 lengthr2=beds~0:27
lengthr2=bottom~107:54 lengthr2=cabin~103:30 lengthr2=creek~102:11 lengthr2=down~0:36
lengthr2=drip~0:32 lengthr2=first~0:33 lengthr2=ground~99:42 lengthr2=have~0:40
lengthr2=hill~102:29 lengthr2=house~0:60,99:-27 lengthr2=hung~99:22 lengthr2=in~107:39
lengthr2=it~0:-42,66:65 lengthr2=kitchen~87:37 lengthr2=level~0:33 lengthr2=pipe~110:36
lengthr2=pump~0:-19,98:44,106:21,113:25 lengthr2=pumphouse~0:54 lengthr2=ridge~0:32
lengthr2=shed~0:42 lengthr2=spring~0:36 lengthr2=stream~0:-36 lengthr2=surface~99:29
lengthr2=tank~87:34 lengthr2=the~115:33 lengthr2=to~49:65 lengthr2=water~99:30 lengthr2=well~104:66
lengthr2=you~104:23 lengthr2=|~0:50,99:-50 longE=,~0:30 longM=pump~0:65 longM=tank~0:45
longM=well~0:25 longR1=.~0:25 longR1=the~0:24 longT=power.panel~0:19 longT=power.source~0:42
longT=pump.height~0:23 longT=pump.placement~0:41 longT=water.kind~0:65 longT=water.level~0:48
longT=well.depth~0:22 m=angle2~100:64 m=angle3~19:52,42:75,45:82,46:30,58:81 m=angle4~26:65
m=area-1~6:51 m=area0~0:-31,6:56 m=area1~6:13 m=area3~0:67 m=area4~0:42,6:-36,76:50
m=area5~0:38,6:122,76:21 m=area7~6:58 m=bare-1~0:108
m=bare0~0:81,1:-42,3:-73,4:-63,5:-30,18:29,31:109,32:90,35:84,37:56,40:84,41:104,57:31,64:45,84:-25,85:110,96:-95,97:54
m=bare1~3:-93,4:-86,20:72,29:38,31:45,33:-53,36:39,37:38,55:86,57:49,63:76,64:56,65:83,68:-36,74:-31,75:72,84:88,85:-65,96:77,97:77,107:-31
m=bare2~0:15,1:60,2:17,31:-47,41:-46,51:51,56:63,57:-30,74:47,96:55,97:70
m=bare3~0:38,1:49,2:24,3:109,4:77,5:45,31:-35,34:51,35:-62,37:-31,40:-41,41:-24,45:113,47:61,64:-35,65:-25,74:56,96:52,97:-59,99:49
m=bare4~1:49,3:14,4:53,5:58,33:69,68:51,97:-35,107:32,113:66
m=bare5~0:-19,1:27,3:48,68:54,96:63,107:39 m=bare6~3:68,4:22 m=bare7~44:69 m=charge3~0:27
m=charge4~50:43 m=charge5~50:135 m=current3~48:54 m=daily1~0:35 m=daily2~0:54
m=daily3~89:-42,90:106 m=daily4~0:23,90:72 m=daily5~89:67,90:-33 m=daily6~0:-26,89:89,90:-36,91:64
m=daily7~0:30 m=each2~90:31 m=each3~0:32,90:42 m=each4~90:45 m=flow-1~0:-28,8:50,93:107,101:12
m=flow0~8:70,101:-44,116:57,117:26 m=flow1~0:46,8:61,81:22,117:-47
m=flow2~0:27,9:47,70:42,101:76,116:46,117:80 m=flow3~0:56,22:30,70:45,81:45,114:72 m=flow6~101:41
m=flow7~101:26 m=length-1~12:-55,16:-52,18:184,105:70
m=length-2~66:168,68:-50,102:-23,104:-36,105:240,107:-46
m=length-3~0:304,86:-49,99:-16,102:-29,104:-35,105:-40 m=length-4~0:76,7:118,15:50 m=length-5~15:41
m=length0~0:50,12:-59,16:105,18:74,44:-59,87:47,98:71,102:-58,103:-66,104:-93,105:107,107:-92
m=length1~0:17,16:123,18:-37,44:-108,49:-32,68:-43,72:154,79:54,86:62,87:38,99:144,102:60,103:75,104:-129,105:-23,107:-91
m=length2~0:-43,18:-28,44:-100,49:-36,67:88,68:-79,86:180,87:92,99:127,102:173,103:146,104:-104,105:-71,107:79,113:-45,115:23
m=length3~0:-53,12:81,16:-51,18:-35,44:-131,49:29,68:152,87:50,99:32,102:130,103:34,105:-94,107:107,110:48,111:30,113:134,115:24
m=length4~0:-35,12:85,44:-86,49:157,68:118,86:-53,99:-101,102:-45,104:209,105:-51,107:187,110:70,115:-37
m=length5~44:98,87:-66,99:-56,102:-37,103:-40,104:192
m=length6~0:-45,44:309,99:-60,102:-44,103:-20,104:87 m=length7~44:269,68:-29,99:-36 m=long2~0:26
m=long3~0:39 m=pair3~64:76 m=percent1~17:58 m=percent2~56:76 m=percent3~0:62,56:66
m=percent4~0:35,71:80,77:59 m=power-1~0:39 m=power0~0:17 m=power1~0:51 m=power4~0:-32,54:71
m=power5~54:194 m=power6~0:52 m=pressure-1~11:70 m=pressure0~13:92,14:41,60:45,64:29,73:-46
m=pressure1~23:47,24:21,43:-43,60:27,65:86,73:126,106:27
m=pressure2~0:37,25:63,43:103,61:59,64:-33,65:-36,73:-53
m=pressure3~0:43,13:39,60:108,64:90,65:53,73:68 m=pressure4~0:53,25:61,60:-51,61:45
m=pressure5~73:37 m=rise4~87:48,103:45 m=temperature2~0:45,100:76 m=temperature3~42:36,100:63
m=temperature4~26:108,42:50,100:-45 m=time0~0:66 m=time1~0:68,78:129,92:53 m=time2~0:36,10:99
m=time3~0:23,109:66 m=voltage2~0:86,59:68 m=voltage3~52:-85,53:117,59:136 m=voltage4~52:92
m=voltage5~52:45 m=volume1~0:48,27:104 m=volume2~0:24,27:55,83:-50,101:121
m=volume3~0:70,28:75,62:156,83:-33 m=volume4~62:165,83:-62,90:61
m=volume5~0:17,28:89,62:-42,83:34,88:-21,94:101 m=volume6~62:-62,83:74,88:55,108:65
m=volume7~62:-78,82:54,83:104,88:95 m=volume8~62:-42,83:91,88:69 m=volume9~0:-22,62:-42,83:73
pairE=,~64:50 pairL0=,~0:76 pairL0=a~64:26 pairL0=switch~64:34 pairL1=0~64:39 pairL1=2~64:31
pairL1=is~0:47 pairL1=the~64:36 pairL2=,~64:27 pairL2=2~64:53 pairM=pump~64:77 pairM=tank~64:52
pairM=well~0:67 pairN=pump.control~64:37 pairN=use.people~0:45 pairP=pump.control~64:37
pairR0=.~0:71,64:-5 pairR1=3~0:50 pairR1=people~0:51,64:-46 pairR2=.~64:48 pairS=pres~64:9
pairS=swit~64:50 pairT=power.source~64:40 pairT=pump.control~0:56,64:43 pairT=pump.cut_in~0:69
pairT=pump.cut_out~0:69 pairT=pump.height~0:46 pairT=pump.placement~64:32
pairT=water.kind~0:59,64:23 pairT=water.level~64:34 pairT=way.length~64:25 pairT=well.depth~64:48
paira=.~64:35 pairr0=.~0:33,64:24 percentL0=,~77:35 percentL0=about~56:23 percentL0=controller~0:51
percentL0=i~71:22 percentL0=is~17:37 percentL0=lose~56:25 percentL0=motor~71:79 percentL0=say~77:20
percentL0=the~17:37 percentL0=we~0:65 percentL1=,~0:39 percentL1=.~17:54 percentL1=0~77:35
percentL1=2~77:32 percentL1=4~77:20 percentL1=5~71:35 percentL1=a~56:54 percentL1=efficiency~71:12
percentL1=motor~71:12 percentL1=slope~17:59 percentL2=.~56:37,77:54 percentL2=0~0:30,77:37
percentL2=1~0:39,77:38 percentL2=2~17:36,71:34 percentL2=3~0:37 percentL2=5~71:57 percentL2=6~0:44
percentL2=m~0:33,77:31 percentL2=panels~56:35 percentL2=pump~56:47 percentL2=roof~77:76
percentL2=south~56:41 percentL2=water~17:25 percentM=drip~0:41,17:50 percentM=pump~0:34,17:35,56:39
percentM=roof~0:-15,77:75 percentM=tank~77:26 percentN=power.source~0:61
percentP=power.source~56:67 percentP=rain.roof~0:-29,77:85 percentR0=.~17:44,56:28,71:29,77:43
percentR0=in~56:40 percentR0=the~56:37 percentR0=to~56:35 percentR1=.~0:37,56:52 percentR1=the~0:35
percentR2=.~0:56,77:33 percentR2=6~0:49 percentS=abou~56:23 percentS=alon~17:26 percentS=effi~71:53
percentS=moto~71:91 percentS=pane~56:42 percentS=shad~56:66 percentS=slop~17:53
percentT=beds.area~17:45 percentT=power.amps~56:47 percentT=power.battery~56:43
percentT=power.cable~56:54 percentT=power.capacity~56:43 percentT=power.controller~56:25
percentT=power.facing~0:-35,56:44 percentT=power.panel~56:44 percentT=power.series~56:48
percentT=power.source~0:22,56:82 percentT=power.voltage~56:37,71:32 percentT=pump.height~56:38
percentT=pump.placement~77:47 percentT=pump.relief~0:25 percentT=pump.works~0:28
percentT=store.volume~77:42 percentT=tank.volume~0:23 percentT=water.kind~17:50
percentT=water.level~71:40 percentT=way.climb~77:40 percentT=way.length~0:44 percentT=way.pipe~0:49
percenta=.~71:25 percentb=motor_efficiency~71:43 percentl0=about~56:23 percentl0=is~17:37
percentl0=say~77:20 percentl1=,~0:49 percentl1=motor~71:43 percentl2=,~77:28 percentl2=.~71:43
percentl2=i~71:22 percentlr=is_.~17:37 percentr0=.~17:47,71:33 percentr0=in~56:40
percentr0=to~56:27 percentr2=the~56:33 powerE=,~0:37,54:49 powerE=0~0:37 powerE=6~0:47
powerE=ft~0:53 powerE=panel~54:54 powerE=panels~54:37 powerE=pump~0:29 powerL0=,~54:32
powerL0=a~0:67 powerL0=of~54:39 powerL0=one~54:31 powerL0=panels~54:39 powerL0=pump~0:42
powerL0=the~0:96,54:-63 powerL0=two~54:32 powerL0=x~54:38 powerL1=.~0:33 powerL1=a~0:30,54:-56
powerL1=the~54:32 powerL2=,~54:65 powerL2=.~54:23 powerM=pump~0:55,54:50 powerM=tank~54:69
powerM=well~0:34 powerN=pump.placement~0:36 powerP=power.source~54:73 powerR0=.~0:50,54:4
powerR0=panel~54:53 powerR0=panels~54:45 powerR0=pump~0:72 powerR1=0~0:49 powerR2=,~54:55
powerR2=.~0:41 powerR2=0~0:57 powerS=pane~0:-54,54:106 powerS=powe~0:26 powerT=power.battery~54:49
powerT=power.capacity~54:51 powerT=power.facing~54:53 powerT=power.panel~0:59,54:-44
powerT=power.source~0:73,54:60 powerT=power.strings~0:36 powerT=power.voltage~54:95
powerT=pump.placement~0:45 powerT=pump.works~54:32 powerT=store.volume~54:26
powerT=water.kind~0:38,54:43 powerT=water.level~54:57 powerT=way.climb~54:22
powerT=way.length~54:47 powera=.~0:80 powerl0=a~0:69 powerl0=x~54:38 powerl1=pump~0:43
powerl2=the~0:54 powerlr=a_pump~0:29 powerr0=.~0:14 powerr0=panel~54:39 powerr0=panels~54:44
powerr0=pump~0:32 pressureE=,~0:35 pressureE=0~0:-62,64:41,65:40 pressureE=1~0:29 pressureE=2~65:48
pressureE=3~64:35 pressureE=4~0:78 pressureE=?~0:82 pressureE=ahead~13:43 pressureE=bar~60:30
pressureE=begin~13:40 pressureE=by~23:27 pressureE=drip~13:36 pressureE=house~73:53
pressureE=least~11:36 pressureE=lines~13:71 pressureE=need~11:36 pressureE=off~65:34
pressureE=out~64:37 pressureE=over~106:89 pressureE=pressure~73:66 pressureE=pump~0:33,73:58
pressureE=run~0:63 pressureE=set~73:58 pressureE=shower~0:29 pressureE=so~0:39
pressureE=speed~73:62 pressureE=tank~60:63 pressureE=they~11:36 pressureE=upstairs~0:39
pressureE=when~0:66 pressureE=where~13:55 pressureE=you~0:37 pressureL0=(~61:40
pressureL0=,~0:-47,11:36,23:39,61:25,73:13 pressureL0=.~0:30,13:57 pressureL0=0~0:31
pressureL0=:~0:52,60:23 pressureL0=a~13:44 pressureL0=air~60:48 pressureL0=and~65:65
pressureL0=at~0:25,14:60,65:49 pressureL0=be~0:58 pressureL0=begin~13:45 pressureL0=between~64:52
pressureL0=charge~60:35 pressureL0=comes~64:16 pressureL0=cut~64:47 pressureL0=cuts~65:32
pressureL0=drip~0:30,13:14 pressureL0=filter~43:39 pressureL0=for~43:35 pressureL0=gauge~0:49
pressureL0=gives~0:25 pressureL0=gpm~0:41 pressureL0=h~14:38 pressureL0=has~0:25,60:33
pressureL0=holding~23:29 pressureL0=holds~73:78 pressureL0=i~60:38 pressureL0=i'd~73:43
pressureL0=in~0:-48,64:73 pressureL0=is~0:-39,25:45,60:25,64:29,73:45 pressureL0=it~0:-45,60:59
pressureL0=keeps~73:76 pressureL0=l~14:28 pressureL0=least~11:28 pressureL0=like~0:35
pressureL0=lines~13:65 pressureL0=minimum~11:56 pressureL0=needs~11:30 pressureL0=off~65:58
pressureL0=on~64:21 pressureL0=only~43:48 pressureL0=opens~25:32,65:31 pressureL0=out~65:97
pressureL0=point~73:31 pressureL0=pre~60:33 pressureL0=precharge~60:46 pressureL0=preset~60:36
pressureL0=pressure~0:55,73:50 pressureL0=pump~0:25,73:63 pressureL0=rated~0:-38,14:50,43:43,61:75
pressureL0=relief~25:59 pressureL0=says~0:-49 pressureL0=set~65:-32,73:131 pressureL0=shows~0:45
pressureL0=shuts~65:37 pressureL0=stops~65:39 pressureL0=switch~65:22 pressureL0=tank~60:36
pressureL0=the~0:31,13:77,23:35 pressureL0=there~0:23 pressureL0=to~24:48,60:13
pressureL0=valve~25:85 pressureL0=we~0:26 pressureL1=,~13:35,24:32,25:21,64:-45
pressureL1=.~14:58,73:36 pressureL1=0~11:40,25:30,60:35 pressureL1=2~11:30,24:39,61:37
pressureL1=6~0:47 pressureL1=8~0:-31,65:35 pressureL1=a~0:-74,43:37,60:35,64:44,73:33
pressureL1=air~60:54 pressureL1=and~73:38 pressureL1=at~13:52,23:39,60:-36 pressureL1=bar~64:23
pressureL1=booster~73:43 pressureL1=box~73:29 pressureL1=constant~73:37 pressureL1=cut~65:38
pressureL1=drip~13:37 pressureL1=expansion~24:34 pressureL1=fittings~43:29 pressureL1=gpm~65:56
pressureL1=h~13:59 pressureL1=house~73:45 pressureL1=i~60:39 pressureL1=in~0:-53
pressureL1=is~43:37 pressureL1=m~13:50 pressureL1=of~0:-24,64:57 pressureL1=one~23:47
pressureL1=pressure~0:-41,13:61,23:44 pressureL1=psi~11:28 pressureL1=pump~65:36,73:32
pressureL1=reducing~23:57 pressureL1=relief~25:40 pressureL1=says~0:11
pressureL1=switch~64:17,73:-36 pressureL1=tank~60:13,61:61 pressureL1=that~0:38
pressureL1=the~43:55,60:17,64:31 pressureL1=to~0:50 pressureL1=valve~25:24
pressureL1=vessel~24:24,60:17 pressureL1=weakest~43:22 pressureL1=with~60:30
pressureL2=,~11:58,24:37,65:-42,73:51 pressureL2=.~13:48,14:45,60:41
pressureL2=0~14:54,25:66,60:-27,61:58 pressureL2=1~0:-34,11:33,14:20,24:34,25:41
pressureL2=3~0:-15,61:48,73:41 pressureL2=4~11:46,60:70 pressureL2=5~24:42 pressureL2=6~14:66
pressureL2=:~0:52 pressureL2=apart~14:38 pressureL2=bar~60:63 pressureL2=beside~73:47
pressureL2=c~24:35 pressureL2=cistern~73:42 pressureL2=cm~14:41 pressureL2=drip~14:39
pressureL2=drippers~14:25 pressureL2=emitters~14:67 pressureL2=expansion~24:88,60:-47
pressureL2=ft~65:32 pressureL2=gph~11:30 pressureL2=heater~25:84 pressureL2=l~61:51,73:52
pressureL2=last~0:45 pressureL2=litre~25:55 pressureL2=litres~64:34 pressureL2=off~64:23
pressureL2=poly~73:33 pressureL2=pressure~60:34 pressureL2=pump~0:-34,13:52,64:26,73:19
pressureL2=rated~11:30 pressureL2=tank~0:-28,60:35 pressureL2=two~73:40 pressureL2=up~0:23
pressureL2=water~25:63 pressureL2=|~0:57 pressureM=cistern~73:28
pressureM=drip~0:-102,11:100,13:189,14:97,24:56,25:59,60:-40,64:-17,73:-35
pressureM=pump~0:84,24:75,25:36,61:67,64:74,65:91,73:74,106:54 pressureM=roof~73:21
pressureM=spring~43:43 pressureM=tank~24:59,25:65,43:17,60:70,61:39 pressureM=well~106:31
pressureN=drip.filter~13:65 pressureN=hot.tank~25:70 pressureN=power.voltage~0:38
pressureN=pressure_tank.volume~65:38 pressureN=pump.control~0:-64,60:33,73:48
pressureN=pump.cut_in~60:46,65:56 pressureN=pump.cut_out~0:-24,64:158,65:-17
pressureN=water.kind~60:-51 pressureP=drip.dripper~14:82 pressureP=drip.flow~13:40
pressureP=drip.rated~11:51 pressureP=fall.broken~23:104 pressureP=hot.stored~25:71
pressureP=hot.tank~24:153,60:-58 pressureP=hot.volume~25:38 pressureP=outlets.hose~0:43
pressureP=outlets.shower~65:35 pressureP=pipes.held~0:-39,43:72
pressureP=pressure_tank.precharge~61:60 pressureP=pressure_tank.volume~60:141,61:68,65:-35,73:-45
pressureP=pump.control~60:-31,64:29,73:66 pressureP=pump.cut_in~65:116 pressureP=pump.cut_out~64:69
pressureP=pump.placement~64:16,73:36 pressureP=use.people~0:46
pressureR0=.~0:26,11:34,13:19,23:37,24:60,25:45,43:77,60:56,65:46,73:34 pressureR0=?~0:48
pressureR0=and~0:-41,64:4 pressureR0=at~0:13,13:34,73:58 pressureR0=by~23:27 pressureR0=from~0:40
pressureR0=in~60:53 pressureR0=is~0:-35,11:34 pressureR0=it~60:14 pressureR0=lines~13:38
pressureR0=of~60:39 pressureR0=off~65:42 pressureR0=over~106:89 pressureR0=pump~24:39
pressureR0=run~0:27 pressureR0=set~73:58 pressureR0=switch~60:29
pressureR0=the~0:18,11:52,13:40,106:26 pressureR0=where~13:42 pressureR1=,~0:-43,73:29
pressureR1=.~13:50,64:14,73:69 pressureR1=0~14:36 pressureR1=1~0:41 pressureR1=2~0:-41,61:51
pressureR1=3~65:24 pressureR1=5~0:-48 pressureR1=?~0:25,43:40 pressureR1=bar~64:44
pressureR1=lines~13:25 pressureR1=need~11:35 pressureR1=of~73:51 pressureR1=on~65:26
pressureR1=the~11:37,60:46,106:29 pressureR1=they~11:35 pressureR1=up~73:52 pressureR1=with~0:44
pressureR2=,~65:61,73:48 pressureR2=.~13:42,61:51 pressureR2=0~0:-32,73:31 pressureR2=1~14:47,73:29
pressureR2=2~0:26 pressureR2=3~0:-52 pressureR2=6~0:-41 pressureR2=bar~0:47,73:-32
pressureR2=feet~0:56 pressureR2=pump~25:48 pressureS=abov~0:38 pressureS=begi~13:45
pressureS=betw~64:52 pressureS=blad~0:-21,60:45 pressureS=boos~73:51 pressureS=char~24:47,60:59
pressureS=chec~60:57 pressureS=come~64:18 pressureS=cons~73:46 pressureS=cont~73:90
pressureS=diap~65:40 pressureS=drip~11:48 pressureS=emit~11:29 pressureS=ever~13:31
pressureS=expa~24:106,60:-49 pressureS=feed~73:49 pressureS=filt~43:49 pressureS=fitt~43:69
pressureS=freq~73:30 pressureS=gall~24:43 pressureS=gaug~0:51 pressureS=heat~24:27,25:45
pressureS=hold~0:-43,23:28,73:79 pressureS=keep~0:-32,23:25,73:73 pressureS=leas~11:28
pressureS=line~0:-34,11:48,13:40 pressureS=litr~0:-42,25:25,60:66 pressureS=mini~11:56
pressureS=need~11:29 pressureS=open~25:31,65:30 pressureS=plas~43:20 pressureS=poin~73:31
pressureS=prec~0:-29,60:111 pressureS=pres~0:-5,13:28,23:35,60:61,65:23,73:41 pressureS=pump~73:30
pressureS=rate~0:-61,14:58,43:57,61:66 pressureS=redu~23:56 pressureS=reli~0:52,25:72,73:-38
pressureS=show~0:37,65:74 pressureS=shut~65:37 pressureS=spee~73:53 pressureS=star~13:33,64:65
pressureS=stop~65:49 pressureS=swit~64:48,65:70,73:-46 pressureS=valv~23:54,25:83,73:-56
pressureS=vari~73:38 pressureS=vess~0:-39,24:42,60:91,73:-21 pressureS=want~73:20
pressureS=weak~43:46 pressureT=beds.area~13:74,14:79 pressureT=power.battery~65:28
pressureT=power.capacity~65:32 pressureT=power.voltage~65:60
pressureT=pump.control~0:-8,24:53,25:50,60:47,61:40,65:28,73:40
pressureT=pump.count~0:-46,61:38,73:32 pressureT=pump.cut_in~25:28,60:81,64:-92,65:147,73:-88
pressureT=pump.cut_out~25:50,60:39,64:162,65:-102,73:-85 pressureT=pump.dry_run~106:45
pressureT=pump.placement~60:12,64:44 pressureT=pump.present~23:69,43:38,73:-48
pressureT=pump.set~0:82,25:49,73:-86 pressureT=pump.starts~61:48 pressureT=pump.works~65:54
pressureT=store.volume~65:35,73:51 pressureT=tank.level~0:82,43:32,73:-40
pressureT=tank.volume~43:49 pressureT=water.kind~25:38,43:42,65:37,73:18,106:47
pressureT=water.level~0:11,73:27 pressureT=water.temperature~73:39
pressureT=water.yield~43:33,73:36 pressureT=way.climb~23:48,43:65,73:54
pressureT=way.length~0:52,23:41,43:57,73:38 pressureT=way.pipe~0:41,23:40,43:75
pressureT=well.depth~60:23,106:49 pressureT=well.known~106:54 pressureT=well.pumped_for~106:65
pressurea=~60:35,64:13 pressurea=.~0:22,13:49,43:33,60:35,64:40 pressurea=._the~11:39
pressurea=at_the~13:61,73:53 pressurea=in_it~0:-26,60:53 pressurea=of_air~60:34
pressureb=,_rated~61:57 pressureb=at_least~11:28 pressureb=cut_in~64:51 pressureb=cut_out~65:30
pressureb=h_at~14:39 pressureb=in_at~64:38 pressureb=it_at~73:29 pressureb=off_at~65:52
pressureb=on_at~64:22 pressureb=opens_at~65:32 pressureb=out_at~65:35 pressureb=pump_gives~0:25
pressureb=rated_at~14:23 pressureb=set_to~0:-32 pressureb=stops_at~65:39 pressurel0=,~11:29
pressurel0=:~0:38,60:24,65:25 pressurel0=a~13:47 pressurel0=and~0:33
pressurel0=at~14:69,64:24,65:55 pressurel0=be~0:50 pressurel0=between~64:52 pressurel0=for~43:35
pressurel0=gives~0:25 pressurel0=has~0:25,60:33 pressurel0=holding~23:29 pressurel0=holds~73:59
pressurel0=in~64:50 pressurel0=is~60:20 pressurel0=keeps~73:43 pressurel0=least~11:28
pressurel0=like~0:35 pressurel0=minimum~11:56 pressurel0=of~0:34 pressurel0=out~65:30
pressurel0=pressure~60:28 pressurel0=rated~0:-32,43:29,61:42 pressurel0=says~0:-53
pressurel0=set~73:41 pressurel0=shows~0:45 pressurel0=to~24:48,60:19 pressurel1=,~61:40,73:33
pressurel1=.~13:49 pressurel1=at~11:28 pressurel1=charge~60:25 pressurel1=cut~64:47
pressurel1=gpm~0:41 pressurel1=h~14:36 pressurel1=i'd~73:43 pressurel1=in~64:24
pressurel1=it~0:-33,60:46,73:27 pressurel1=off~65:55 pressurel1=on~64:25
pressurel1=opens~25:32,65:31 pressurel1=out~65:35 pressurel1=precharge~60:77
pressurel1=pressure~0:34,65:25 pressurel1=pump~0:59 pressurel1=rated~14:22 pressurel1=set~73:66
pressurel1=start~13:29 pressurel1=stops~65:39 pressurel1=the~13:62 pressurel1=there~0:23
pressurel2=,~0:-49,23:27 pressurel2=0~0:36 pressurel2=and~60:30 pressurel2=at~13:46
pressurel2=booster~0:31 pressurel2=comes~64:17 pressurel2=cuts~65:32 pressurel2=drip~13:21
pressurel2=is~0:-27,73:31 pressurel2=keeps~73:32 pressurel2=l~0:29,14:35 pressurel2=lines~13:27
pressurel2=pre~60:24 pressurel2=pressure~73:40 pressurel2=set~73:24 pressurel2=the~0:22,13:33,23:37
pressurel2=valve~25:31 pressurelr=at_.~14:35,65:26 pressurelr=holding_.~23:29
pressurelr=least_.~11:30 pressurelr=rated_.~61:37 pressurelr=to_.~0:-13,24:58,60:22
pressurer0=,~14:47,60:33 pressurer0=.~11:40,13:29,23:42,25:41,43:36,60:38,64:44,73:38
pressurer0=at~0:37,13:46 pressurer0=in~60:32 pressurer0=is~11:36 pressurer0=of~60:34
pressurer0=off~65:27 pressurer0=over~106:45 pressurer0=set~73:38 pressurer0=where~13:42
pressurer1=.~65:44 pressurer1=air~60:34 pressurer1=it~0:-43,60:8 pressurer1=off~0:26
pressurer1=over~106:43 pressurer1=the~0:34,11:58 pressurer2=,~0:39 pressurer2=.~0:32
pressurer2=at~0:-38,64:31 pressurer2=it~0:36 pressurer2=pump~73:47 pressurer2=the~106:26
range~64:269,73:-53,99:-99,101:29 riseE=above~102:24 riseE=house~103:20 riseL0=is~102:24
riseL0=tank~87:51 riseM=spring~103:65 riseM=tank~87:51 riseN=way.length~103:24
riseP=water.kind~103:52 riseR0=above~102:24 riseR0=house~103:20 riseR0=the~87:25,102:29
riseR1=.~87:25,102:29 riseR1=1~103:24 riseR2=0~103:24 riseT=water.kind~102:27,103:60
riseT=way.length~103:24 riseT=way.pipe~103:24 risel0=is~102:24 riselr=is_above~102:24
riser0=above~102:24 riser1=the~87:25,102:29 riser2=house~103:23 temperatureE=,~26:33
temperatureE=1~19:31 temperatureE=now~100:37 temperatureE=summer~42:30 temperatureL0=,~42:44
temperatureL0=.~100:44 temperatureL0=at~26:56 temperatureL0=gets~42:28
temperatureL0=is~26:32,100:31 temperatureL0=set~26:22 temperatureL0=water~100:64
temperatureL1=.~19:56 temperatureL1=0~26:45,100:26 temperatureL1=3~0:54 temperatureL1=heater~26:24
temperatureL1=the~100:21 temperatureL1=water~100:26 temperatureL2=,~19:35,42:48,100:46
temperatureL2=.~19:40,100:37 temperatureL2=1~100:32 temperatureL2=2~19:40 temperatureL2=5~19:38
temperatureL2=every~19:33 temperatureL2=laid~42:34 temperatureL2=line~42:41 temperatureL2=m~100:28
temperatureL2=poly~42:25 temperatureL2=pump~100:36 temperatureM=drip~0:39,19:43,26:41,100:-50
temperatureM=pump~0:66,19:46,26:66,42:27 temperatureM=spring~100:20 temperatureM=tank~26:54
temperatureN=hot.relief~26:33 temperatureP=hot.volume~26:70 temperatureP=pipes.held~42:89
temperatureP=water.kind~100:84 temperatureR0=,~26:33 temperatureR0=.~26:13,42:44,100:94
temperatureR0=1~19:33 temperatureR0=in~42:54 temperatureR0=now~100:37 temperatureR0=summer~42:30
temperatureR1=.~19:33,42:52 temperatureR2=,~19:33 temperatureR2=?~100:33 temperatureS=heat~26:66
temperatureS=spri~100:34 temperatureS=summ~0:23 temperatureS=wate~100:111
temperatureT=beds.area~0:43,19:45 temperatureT=power.source~0:95 temperatureT=power.voltage~0:67
temperatureT=pump.control~26:39 temperatureT=pump.npsh~100:27 temperatureT=pump.placement~100:42
temperatureT=pump.present~42:39 temperatureT=water.kind~19:49,26:33,42:43,100:57
temperatureT=water.level~100:33 temperatureT=way.climb~42:33,100:26
temperatureT=way.length~42:48,100:18 temperatureT=way.pipe~42:49,100:17
temperaturea=in_summer~42:30 temperaturel0=at~26:56 temperaturel0=is~100:31
temperaturel0=water~100:28 temperaturel1=.~100:37 temperaturel1=gets~42:38 temperaturel1=set~26:22
temperaturel1=water~100:31 temperaturel2=is~26:36 temperaturelr=at_.~26:41 temperaturer0=,~26:34
temperaturer0=.~26:25,100:67 temperaturer0=in~42:44 temperaturer1=summer~42:30
temperaturer2=.~42:27 temperaturer2=1~19:33 timeE=,~0:23,109:32 timeE=0~0:17 timeE=2~0:79
timeE=air~109:32 timeE=day~0:-26,10:39,80:64 timeE=days~0:40 timeE=fell~109:46
timeE=pump~0:-41,109:38 timeE=steady~109:51 timeE=then~0:-45,109:62 timeE=without~78:47
timeE=year~51:59 timeL0=,~0:-42,80:42,92:35 timeL0=.~10:40 timeL0=0~95:26 timeL0=5~92:28
timeL0=6~92:45 timeL0=a~78:29 timeL0=after~0:43 timeL0=dry~0:27 timeL0=every~0:52
timeL0=for~78:45,92:47,112:60 timeL0=in~0:30,95:83 timeL0=litres~95:37 timeL0=min~112:49
timeL0=night~10:26 timeL0=of~78:26 timeL0=run~10:62 timeL0=runs~80:27 timeL0=want~78:50
timeL0=water~0:20 timeL0=within~0:29 timeL1=.~10:35,78:25 timeL1=0~0:-33,95:50,109:54
timeL1=1~112:27 timeL1=3~95:32 timeL1=5~95:39,112:30 timeL1=:~0:-45 timeL1=day~92:32
timeL1=from~0:-38,80:36,92:72 timeL1=i~10:29 timeL1=in~10:69 timeL1=the~0:32,80:48
timeL1=water~10:28 timeL1=we~78:30 timeL2=,~10:45,78:32,92:43 timeL2=.~10:32,78:26,95:72
timeL2=0~10:13 timeL2=1~10:18 timeL2=2~0:-72,78:53 timeL2=5~51:47 timeL2=6~10:53
timeL2=8~0:-64,80:42 timeL2=casing~0:38 timeL2=garden~92:33 timeL2=m~0:-49 timeL2=morning~95:30
timeL2=recovery~112:33 timeL2=test~112:29 timeM=drip~0:-30,10:161
timeM=pump~0:47,10:18,80:41,92:55,109:58,112:50 timeM=spring~0:78 timeM=tank~0:28,78:59,80:48
timeM=well~109:79,112:38 timeN=tank.volume~80:46 timeN=use.people~0:44 timeN=water.kind~0:44
timeN=well.drawn~109:36 timeN=well.steady~109:75 timeP=power.source~80:58
timeP=use.garden_from~92:76 timeP=use.peak~0:-48,95:113 timeP=well.drawn~109:45
timeP=well.rate~112:39 timeR0=,~0:57 timeR0=.~0:88,10:27,78:33,95:54 timeR0=a~10:41,51:55,80:34
timeR0=at~112:53 timeR0=day~0:-30,10:58,80:65 timeR0=in~78:17 timeR0=it~109:44 timeR0=of~78:44
timeR0=pump~0:-38,109:43 timeR0=the~0:44 timeR0=to~0:49 timeR0=without~0:-34,78:61
timeR0=year~51:59 timeR1=,~112:58 timeR1=.~0:38 timeR1=a~80:38 timeR1=and~0:43 timeR1=the~10:38
timeR2=.~0:49,10:26 timeR2=0~80:39 timeR2=1~80:38 timeS=afte~0:44 timeS=buck~0:37 timeS=drip~0:30
timeS=ever~0:62 timeS=fill~80:39 timeS=gall~0:35 timeS=give~80:45 timeS=litr~95:29
timeS=morn~0:-33,95:39 timeS=nigh~10:33 timeS=pump~112:49 timeS=reco~112:55 timeS=shou~78:24
timeS=sola~80:51 timeS=spri~0:44 timeS=stor~78:44 timeS=wate~10:31,92:50
timeT=beds.area~0:-29,10:47 timeT=power.battery~51:22 timeT=power.capacity~51:22
timeT=power.controller~51:22 timeT=power.facing~51:45 timeT=power.source~51:54,80:93,92:39
timeT=power.tilt~51:46 timeT=power.voltage~51:21 timeT=pump.control~92:38 timeT=pump.cut_in~0:37
timeT=pump.cut_out~0:39 timeT=pump.dry_run~112:31 timeT=pump.height~0:46
timeT=pump.placement~109:33 timeT=pump.present~0:35 timeT=store.volume~78:43 timeT=tank.level~80:56
timeT=tank.volume~80:45 timeT=water.kind~10:4,78:29,80:50,109:59,112:43 timeT=water.level~112:32
timeT=water.yield~78:48,80:61,95:89 timeT=way.climb~0:38,10:33,92:36
timeT=way.length~0:38,10:29,80:51,92:36 timeT=way.pipe~0:53,10:31,80:36,92:39
timeT=well.bore~0:-37,109:56,112:50 timeT=well.cover~112:58 timeT=well.depth~109:24,112:49
timeT=well.drawn~109:81 timeT=well.intake~112:51 timeT=well.known~112:71 timeT=well.rate~112:63
timeT=well.steady~109:89 timea=~78:56 timea=.~0:45,95:13 timea=a_day~10:34,80:41 timea=a_year~51:59
timeb=~78:40 timeb=water_for~0:34 timel0=after~0:24 timel0=every~0:34
timel0=for~0:53,78:47,92:52,112:61 timel0=in~0:51,95:59 timel0=run~10:48 timel0=runs~80:27
timel0=want~78:33 timel0=water~10:40 timel0=within~0:29 timel1=in~95:24 timel1=water~0:29
timel2=0~95:26 timel2=5~92:28 timel2=6~92:45 timel2=a~78:29 timelr=for_.~0:-42,92:34
timelr=in_.~95:15 timelr=within_.~0:29 timer0=,~0:57 timer0=.~10:38,92:18,95:36
timer0=a~0:-37,10:32,51:56,80:38 timer0=at~112:53 timer0=of~78:50 timer0=to~0:47
timer0=without~0:-33,78:57 timer1=day~10:34,80:69 timer1=year~51:59 timer2=.~0:47,78:30
timer2=the~0:37 u=angle°~19:47,42:-32,45:97,46:36,58:92,100:64 u=angle°C~42:96 u=areaacre~6:48
u=areaft²~0:-71,6:68,76:47 u=areaha~0:-22,6:51 u=aream²~0:151,6:73,76:54
u=bare~0:376,1:77,2:21,3:97,4:57,5:19,20:58,31:31,35:80,36:42,37:71,38:37,40:56,44:-58,45:49,63:32,68:-80,96:94,97:58,99:-86,107:-103,113:-30,115:-36
u=bareft~0:-65,44:77,68:58,96:-27,107:24,113:82,115:71 u=barem~0:-55,68:41,99:78,107:111
u=chargeAh~0:56,50:194 u=currentA~0:45,48:60 u=dailyL/day~89:124,90:100,91:50
u=dailygal/day~0:-38,89:63 u=dailym³/day~0:123,89:-36 u=eachL/day~90:90 u=eachgal/day~90:28
u=flowL/h~8:101 u=flowL/min~0:19,8:-50,22:28,69:43,70:44,81:43,93:62,101:99,114:75,116:42
u=flowL/s~0:-38,101:42,117:71 u=flowgph~8:155 u=flowgpm~8:-58,9:66,70:51,81:16,101:91,117:44
u=flowm³/h~0:199,8:-29,9:33,101:-50 u=lengthcm~0:-43,18:96
u=lengthft~12:62,16:27,44:119,49:47,66:-47,72:5,86:24,87:64,99:96,102:66,103:86,104:92,105:-171,107:58,110:51
u=lengthin~0:83,18:73,66:110,68:-49,86:-41,99:-54,102:-52,103:-31,104:-45,105:151,107:-52
u=lengthkm~0:30,104:60
u=lengthm~7:-34,12:59,18:-35,44:120,49:25,66:-58,68:1,72:47,79:32,86:79,87:43,98:31,99:105,102:78,103:33,104:52,107:71,115:26
u=lengthmi~0:22,104:53
u=lengthmm~0:141,7:113,12:-34,15:63,66:39,86:-28,102:-34,104:-66,105:71,107:-21 u=long~0:65
u=pairpsi~64:76 u=percent%~0:61,17:37,56:93,71:69,77:50 u=powerW~54:181 u=powerhp~0:105,54:-32
u=powerkW~0:58 u=pressurebar~0:81,11:54,13:36,23:36,43:55,60:51,61:36,64:55,65:46,73:49
u=pressurem~106:30 u=pressuremwater~0:23 u=pressurepsi~0:80,13:38,25:11,60:64,64:54,65:67,73:54
u=riseft~87:48,103:59 u=temperature°C~26:36,100:68 u=temperature°F~26:37,42:33,100:32
u=timedays~51:55,78:213 u=timeh~10:123,78:-50,80:64,92:62,95:81 u=timemin~95:28,109:96,112:57
u=times~0:150 u=timeweeks~0:75 u=voltageV~0:81,52:47,53:63,59:186
u=volumeL~0:43,28:94,62:118,83:49,88:76,90:-37,94:81,101:74,108:49
u=volumeL/day~0:-77,89:52,90:125,91:73 u=volumegal~0:39,27:71,28:31,62:72,82:27,83:69
u=volumeimpgal~0:-24,88:24 u=volumem³~0:193,62:-57,82:44,83:42 voltageE=,~52:63,59:63
voltageE=1~59:64 voltageE=2~59:24 voltageE=agm~0:58 voltageE=ah~59:49 voltageE=bank~59:31
voltageE=battery~59:44 voltageE=far~0:40 voltageE=gpm~0:71 voltageE=mains~0:31 voltageE=open~53:53
voltageE=panels~0:23 voltageE=pump~59:18 voltageE=so~0:45 voltageE=too~0:55 voltageE=w~0:33
voltageL0=,~59:11 voltageL0=:~59:19 voltageL0=a~59:48 voltageL0=at~0:51 voltageL0=controller~52:43
voltageL0=has~0:43 voltageL0=is~0:31 voltageL0=max~52:34 voltageL0=open~53:49 voltageL0=runs~59:31
voltageL0=system~59:44 voltageL0=the~0:-28,59:31 voltageL0=voc~53:65,59:-43 voltageL0=voltage~53:43
voltageL0=|~59:42 voltageL1=,~52:39 voltageL1=1~59:38 voltageL1=4~53:51 voltageL1=each~59:-50
voltageL1=l~0:56,59:-43 voltageL1=mppt~52:24 voltageL1=of~0:-70,53:49 voltageL1=pump~59:26
voltageL2=,~52:64,59:18 voltageL2=.~52:51,59:20 voltageL2=0~52:39 voltageL2=1~53:35
voltageL2=2~0:50 voltageL2=4~52:45 voltageL2=5~52:48 voltageL2=8~52:53 voltageL2=agm~0:46
voltageL2=m~0:68 voltageL2=panels~53:25 voltageL2=w~52:52 voltageM=cistern~59:36
voltageM=pump~52:14,59:133 voltageM=roof~59:33 voltageM=tank~0:42 voltageM=well~59:48
voltageN=power.amps~52:48 voltageN=power.capacity~59:42 voltageN=power.source~59:83
voltageN=power.voltage~0:48 voltageP=power.battery~59:39 voltageP=power.open_voltage~52:43
voltageP=power.panel~53:52 voltageP=power.source~0:-45,52:30,59:57 voltageP=pump.placement~59:51
voltageR0=)~0:65 voltageR0=.~53:44 voltageR0=1~0:-54 voltageR0=5~0:32 voltageR0=and~0:9,59:-49
voltageR0=bank~59:34 voltageR0=batteries~59:20 voltageR0=in~52:59 voltageR0=is~0:38
voltageR0=mains~0:33 voltageR0=open~53:53 voltageR0=pump~59:25 voltageR1=,~59:39 voltageR1=.~59:68
voltageR1=?~0:50 voltageR1=ah~59:73 voltageR2=,~0:56 voltageR2=.~59:30 voltageR2=1~0:53
voltageR2=4~0:-41,59:41 voltageR2=5~0:-33,59:70 voltageR2=far~0:41 voltageS=batt~0:54
voltageS=cont~52:81,59:-52 voltageS=pane~53:90 voltageS=seri~53:54 voltageS=stri~53:54
voltageS=syst~59:28 voltageS=volt~53:43 voltageT=power.amps~52:38,53:27
voltageT=power.battery~0:26,52:29,59:30 voltageT=power.cable~53:16 voltageT=power.capacity~59:37
voltageT=power.controller~52:28 voltageT=power.facing~0:50,52:24 voltageT=power.limit~52:-43,53:71
voltageT=power.open_voltage~52:39,53:-53 voltageT=power.panel~0:34,52:60,53:64
voltageT=power.series~0:-57,52:77,53:91,59:-38 voltageT=power.source~0:21,52:55,53:80,59:31
voltageT=power.strings~52:52,53:41 voltageT=power.tilt~52:40
voltageT=power.voltage~0:166,52:50,53:37,59:-188 voltageT=pump.control~59:45
voltageT=pump.placement~52:22,59:12 voltageT=store.volume~0:56,59:44 voltageT=tank.level~53:38
voltageT=tank.volume~52:47 voltageT=water.kind~52:24,59:88 voltageT=water.level~53:21
voltageT=water.yield~59:43 voltageT=way.climb~59:39 voltageT=way.length~59:44
voltageT=way.pipe~59:34 voltagea=~59:43 voltageb=~0:36,59:25 voltageb=,_voc~53:30 voltageb=a~59:24
voltageb=battery_is~0:19 voltagel0=,~59:80 voltagel0=.~59:40 voltagel0=a~0:58,59:27
voltagel0=is~0:37 voltagel0=max~52:35 voltagel0=voc~53:49 voltagel1=,~53:36 voltagel1=at~0:59
voltagel1=battery~0:11 voltagel1=runs~59:30 voltagel2=.~0:66,59:-33 voltagel2=controller~52:25
voltagel2=the~0:-27,59:28 voltager0=bank~59:20 voltager0=in~52:40 voltager0=mains~0:33
voltager0=open~53:53 voltager0=pump~59:36 voltager1=at~0:39 voltager2=is~0:38
volumeE=,~0:54,83:26,88:35,108:36 volumeE=0~0:21,101:27 volumeE=1~0:14,28:41,83:20
volumeE=2~0:39,62:34 volumeE=4~88:38 volumeE=5~0:40,28:59,83:-25 volumeE=6~0:-55,88:32,101:50
volumeE=7~88:32 volumeE=8~83:41 volumeE=?~62:25 volumeE=above~83:-23,88:72
volumeE=after~0:-41,108:32 volumeE=air~62:29 volumeE=back~0:41,82:44 volumeE=barrel~88:37
volumeE=before~108:58 volumeE=beside~0:1,83:58,88:-30 volumeE=bladder~62:26 volumeE=booster~83:49
volumeE=bucket~0:45 volumeE=but~0:63 volumeE=by~0:53 volumeE=cabin~28:29 volumeE=cistern~83:53
volumeE=day~90:54,91:24 volumeE=days~0:35 volumeE=distance~0:46,88:-47 volumeE=drained~0:47
volumeE=draws~83:49 volumeE=each~28:30,90:43 volumeE=expansion~27:69 volumeE=f~28:50
volumeE=falls~0:42 volumeE=feet~0:-35,88:41 volumeE=filled~83:46 volumeE=fire~82:74
volumeE=from~83:66 volumeE=ft~83:-30,88:105 volumeE=head~88:28 volumeE=heater~28:104
volumeE=hill~88:44 volumeE=hours~94:35 volumeE=house~0:-50,83:60,88:23 volumeE=i've~88:-33
volumeE=jet~83:68 volumeE=kept~82:63 volumeE=litres~0:39 volumeE=loft~88:53 volumeE=m~0:17,88:26
volumeE=meter~89:48 volumeE=meters~0:-38,88:35 volumeE=min~0:33,83:-34,108:50
volumeE=minutes~94:30,108:60 volumeE=next~83:20 volumeE=no~0:24 volumeE=not~0:39 volumeE=off~83:46
volumeE=out~0:27 volumeE=pe~0:28 volumeE=pipe~0:53,88:-49 volumeE=poly~0:-46,88:39
volumeE=pre~27:35 volumeE=precharge~62:29 volumeE=pressure~62:73 volumeE=pump~83:72
volumeE=pumps~83:40 volumeE=put~0:35,62:-49 volumeE=relief~28:88 volumeE=seconds~0:85,83:-29,101:25
volumeE=shed~0:-48,83:61 volumeE=sits~88:35 volumeE=slowed~108:26 volumeE=so~0:51
volumeE=stand~88:55 volumeE=standing~0:37 volumeE=stands~0:29,83:-30 volumeE=steady~108:47
volumeE=switch~62:31 volumeE=tank~0:-33,62:53,83:68,88:39 volumeE=taps~88:61 volumeE=then~108:77
volumeE=there~0:-46 volumeE=tote~88:20 volumeE=tower~0:-54,88:72 volumeE=town~83:68
volumeE=two~94:49 volumeE=up~0:34 volumeE=v~83:39 volumeE=valve~28:101 volumeE=vessel~62:32
volumeE=was~0:41 volumeE=water~0:-34,28:43 volumeL0=,~83:23,88:53 volumeL0=.~62:32,88:34
volumeL0=2~83:24 volumeL0=:~83:28,94:33 volumeL0=;~83:36 volumeL0=a~0:6,28:15,83:49,88:74
volumeL0=at~90:32 volumeL0=boiler~28:59 volumeL0=butt~88:46 volumeL0=by~0:22 volumeL0=cabin~0:35
volumeL0=cistern~0:61,83:38 volumeL0=comes~88:31 volumeL0=cylinder~28:32 volumeL0=day~89:51
volumeL0=expansion~27:68 volumeL0=fire~82:35 volumeL0=from~83:30,88:51 volumeL0=garden~91:82
volumeL0=h~0:41 volumeL0=have~0:-38,88:50 volumeL0=header~88:39 volumeL0=heater~28:72
volumeL0=hill~0:63,83:-45,88:10 volumeL0=holds~0:25 volumeL0=hour~94:85 volumeL0=i~83:-42
volumeL0=is~0:-47,27:26,62:37 volumeL0=it~108:21 volumeL0=keep~82:73 volumeL0=loft~88:40
volumeL0=m~88:44 volumeL0=morning~94:29 volumeL0=needs~0:49 volumeL0=off~83:42
volumeL0=one~0:-32,90:28 volumeL0=overhead~88:34 volumeL0=people~90:29 volumeL0=pond~0:80
volumeL0=pressure~62:38,88:-25 volumeL0=rain~83:35 volumeL0=reservoir~88:29 volumeL0=said~0:72
volumeL0=small~62:44 volumeL0=spring~0:-61,101:52 volumeL0=storage~83:36 volumeL0=takes~91:24,94:51
volumeL0=tank~62:63,83:57,88:43 volumeL0=tanks~0:48 volumeL0=the~83:33,88:35
volumeL0=to~82:33,88:32 volumeL0=up~88:67 volumeL0=use~94:43 volumeL0=valve~0:42
volumeL0=vessel~27:40,62:46 volumeL0=wants~82:53 volumeL0=was~108:24 volumeL0=water~28:58
volumeL0=we~0:-43,89:75,94:31 volumeL0=with~0:45 volumeL0=|~0:-43 volumeL1=,~62:24,82:40
volumeL1=.~28:23,83:43,89:30 volumeL1=0~27:58,82:49 volumeL1=1~0:-28,27:40 volumeL1=2~0:-62,62:43
volumeL1=3~62:24,83:-33 volumeL1=5~0:41 volumeL1=6~0:-37,88:43 volumeL1=8~0:-49,88:34
volumeL1=9~83:39 volumeL1=?~0:29 volumeL1=a~62:-2,89:51 volumeL1=above~0:-42
volumeL1=at~0:43,83:38,88:-62 volumeL1=blue~62:46 volumeL1=busiest~94:21 volumeL1=day~90:34
volumeL1=for~0:-40 volumeL1=ft~0:-27 volumeL1=hav~0:44 volumeL1=hi~0:55,83:-56 volumeL1=hot~28:48
volumeL1=hour~83:46 volumeL1=hours~0:44 volumeL1=i~0:31 volumeL1=in~0:-43,88:48,94:31
volumeL1=inch~0:61,62:-52 volumeL1=into~0:-31,83:70 volumeL1=it~0:-41,83:66,88:-39
volumeL1=july~0:41 volumeL1=litres~0:22 volumeL1=m~0:77 volumeL1=mm~88:42 volumeL1=on~88:40
volumeL1=out~108:23 volumeL1=people~0:-51 volumeL1=plastic~0:53 volumeL1=pressure~62:38
volumeL1=psi~27:26 volumeL1=pump~0:-10,83:55,88:-64 volumeL1=pumped~108:25 volumeL1=runs~83:37
volumeL1=sink~83:21 volumeL1=spring~83:35 volumeL1=takes~83:37 volumeL1=tank~88:49
volumeL1=tanks~0:11 volumeL1=the~62:42,83:23,101:45 volumeL1=there~0:67,88:-36 volumeL1=time~0:51
volumeL1=to~88:23 volumeL1=two~0:30,83:-47 volumeL1=well~0:-62 volumeL2=(~0:30
volumeL2=)~0:38,88:-40 volumeL2=,~0:32,28:38,83:33 volumeL2=.~62:25,89:53,90:58,108:34
volumeL2=0~0:-54,27:59,88:39,90:56 volumeL2=1~27:35 volumeL2=2~28:26,62:47
volumeL2=3~0:32,83:-63,88:40 volumeL2=4~62:18,88:-57 volumeL2=5~27:40,62:36,83:24,88:-28
volumeL2=6~88:-36,89:50,90:25 volumeL2=7~62:36 volumeL2=9~0:25 volumeL2=:~0:-52,83:17
volumeL2=;~88:59 volumeL2=after~0:40,83:-46 volumeL2=but~0:-38 volumeL2=by~88:29 volumeL2=c~27:31
volumeL2=cistern~0:-25,83:24 volumeL2=collect~0:41 volumeL2=day~83:54 volumeL2=every~0:-32
volumeL2=feet~0:-31,83:43,88:-32 volumeL2=five~0:-26,83:47 volumeL2=ft~0:79,62:-52
volumeL2=gallons~88:44 volumeL2=h~0:23 volumeL2=hose~0:-50 volumeL2=kitchen~83:32
volumeL2=level~0:37 volumeL2=m~0:31 volumeL2=mains~0:36 volumeL2=milk~0:26 volumeL2=min~0:-27
volumeL2=no~0:-43 volumeL2=off~0:-30,62:56,88:55 volumeL2=one~0:-66,83:41 volumeL2=open~62:-51
volumeL2=pe~0:53 volumeL2=poly~83:-50 volumeL2=pressure~0:75,62:-49 volumeL2=pump~83:40
volumeL2=relief~0:-31,27:36 volumeL2=roof~83:25 volumeL2=run~0:-38,83:49 volumeL2=runs~0:39
volumeL2=seconds~83:46 volumeL2=set~0:-48,62:32 volumeL2=so~0:59 volumeL2=square~83:33
volumeL2=switch~0:45 volumeL2=tank~0:-64,83:54,88:51 volumeL2=there~0:-14,88:60 volumeL2=they~0:-42
volumeL2=toilet~0:46,88:-43 volumeL2=up~0:-40 volumeL2=valve~27:27,83:-40 volumeL2=was~88:33
volumeL2=well~0:37,83:-41,88:54 volumeL2=yield~88:44 volumeM=cistern~83:87
volumeM=drip~27:49,28:49,62:-43,83:-31,88:66,89:45 volumeM=pump~0:45,62:34,83:74,91:64,108:26
volumeM=roof~83:22,88:23 volumeM=spring~0:33,101:101
volumeM=tank~0:-19,27:59,28:44,62:39,82:64,83:55,88:129 volumeM=well~28:20,62:29,83:-68,108:87
volumeN=hot.precharge~27:71 volumeN=hot.stored~28:116 volumeN=outlets.shower~0:46
volumeN=power.voltage~83:76,88:-32 volumeN=pressure_tank.precharge~0:-40,62:124
volumeN=pump.cut_in~62:27 volumeN=pump.placement~83:59 volumeN=pump.present~83:-52,88:59
volumeN=pump.set~83:40 volumeN=store.fills~83:48 volumeN=suction.length~0:43
volumeN=tank.level~0:91,83:-74,88:67 volumeN=use.peak_time~94:119 volumeN=use.people~0:80,83:-28
volumeN=use.troughs~0:47 volumeN=water.kind~0:35,62:-27,83:41,108:31 volumeN=way.climb~83:59
volumeN=way.length~0:-37 volumeP=hot.relief~27:86 volumeP=hot.stored~27:49
volumeP=power.source~0:-19,88:77 volumeP=pump.control~62:43 volumeP=pump.count~83:37
volumeP=pump.cut_out~62:35,83:-51 volumeP=pump.placement~83:40,88:-29 volumeP=rain.roof~83:31
volumeP=tank.level~83:46,88:30 volumeP=use.people~0:-30,90:84
volumeP=water.kind~62:-21,83:125,101:29,108:52 volumeP=water.yield~0:-36,83:43,88:38
volumeP=way.pipe~83:-46,88:52 volumeR0=,~27:58,83:44,89:46 volumeR0=.~28:57,62:17,83:56,88:39,90:66
volumeR0=1~88:16 volumeR0=2~0:-44,62:50 volumeR0=3~0:60 volumeR0=5~0:50,83:-40
volumeR0=6~0:-20,101:45 volumeR0=a~0:68,91:20 volumeR0=above~88:51 volumeR0=an~0:77
volumeR0=at~0:15 volumeR0=back~82:46 volumeR0=barrel~88:37 volumeR0=before~108:34
volumeR0=below~83:44 volumeR0=beside~0:31 volumeR0=bladder~62:26 volumeR0=bucket~0:49
volumeR0=but~0:48 volumeR0=by~0:21 volumeR0=cistern~0:68 volumeR0=each~28:28,90:43
volumeR0=expansion~27:70 volumeR0=feeds~83:-46 volumeR0=fire~82:21 volumeR0=for~82:75
volumeR0=heater~28:97 volumeR0=i~0:-79 volumeR0=in~0:40,83:-29,94:53 volumeR0=is~0:27,83:-43
volumeR0=it~0:-68,82:50,108:19 volumeR0=kept~82:55 volumeR0=next~83:33 volumeR0=no~88:-33
volumeR0=of~82:39 volumeR0=on~88:38,91:31 volumeR0=one~0:-37 volumeR0=only~83:44 volumeR0=pre~27:36
volumeR0=precharge~62:37 volumeR0=pressure~0:61,62:42 volumeR0=put~0:36,62:-49 volumeR0=right~83:48
volumeR0=so~0:52 volumeR0=spring~0:-43 volumeR0=standing~0:44 volumeR0=stands~0:23,83:-39
volumeR0=tank~62:72,83:52,88:50 volumeR0=the~83:30,88:37,108:37 volumeR0=to~88:37
volumeR0=tote~88:20 volumeR0=tower~0:-32,88:37 volumeR0=two~94:28 volumeR0=vessel~62:50
volumeR0=water~28:43 volumeR0=we~83:-38,88:37 volumeR1=,~62:22
volumeR1=.~27:87,82:61,83:23,88:38,94:50 volumeR1=2~62:39 volumeR1=3~0:-48 volumeR1=5~88:36
volumeR1=are~0:-39 volumeR1=booster~0:15 volumeR1=day~91:24 volumeR1=fill~0:29 volumeR1=fire~82:54
volumeR1=for~82:23 volumeR1=from~83:37 volumeR1=garden~83:-23 volumeR1=hill~83:-44,88:37
volumeR1=house~88:55 volumeR1=in~0:-55,62:37 volumeR1=is~62:-31 volumeR1=it~0:41,88:-20,89:55
volumeR1=last~0:34 volumeR1=m~88:7 volumeR1=meters~88:31 volumeR1=minutes~94:36 volumeR1=psi~62:50
volumeR1=pump~83:44,88:-31 volumeR1=pumps~83:29 volumeR1=seconds~0:49,101:32 volumeR1=shallow~0:41
volumeR1=stand~88:45 volumeR1=suction~0:52 volumeR1=switch~0:-35 volumeR1=valve~28:37
volumeR2=,~0:-21,28:57,83:39,88:23 volumeR2=.~0:11,88:29,94:60 volumeR2=0~88:54 volumeR2=1~83:30
volumeR2=2~0:24 volumeR2=4~83:31,88:-40 volumeR2=5~83:38 volumeR2=back~0:47
volumeR2=bar~0:-39,62:49 volumeR2=below~88:82 volumeR2=borehole~0:-25,88:25 volumeR2=by~88:58
volumeR2=diaphragm~83:26 volumeR2=head~88:33 volumeR2=l~108:29 volumeR2=litres~0:46,88:-33
volumeR2=meter~89:48 volumeR2=min~83:-38,108:28 volumeR2=no~88:35 volumeR2=one~0:16,83:-18
volumeR2=psi~0:-33 volumeR2=pump~0:-32,83:65 volumeR2=second~0:32,62:-39
volumeR2=stands~0:35,83:-58 volumeR2=tank~83:-38 volumeR2=taps~88:25 volumeR2=up~0:53,88:-53
volumeR2=v~83:30 volumeR2=water~0:34,83:45,88:-38 volumeR2=well~0:21 volumeR2=which~0:27
volumeR2=would~0:50 volumeS=abov~0:-42,83:59 volumeS=bail~108:61 volumeS=barr~83:37
volumeS=boil~28:58 volumeS=busi~94:21 volumeS=cist~0:46,83:69 volumeS=come~88:21
volumeS=expa~27:100 volumeS=feed~0:42 volumeS=gard~91:82 volumeS=grou~83:36 volumeS=head~88:45
volumeS=heat~27:37,28:73 volumeS=hold~88:49 volumeS=leve~88:-37 volumeS=metr~83:37
volumeS=morn~94:60 volumeS=need~0:49 volumeS=over~88:32 volumeS=peop~90:41
volumeS=pres~62:49,83:-31,88:-47 volumeS=pull~0:37 volumeS=pump~108:56 volumeS=rain~83:41
volumeS=rese~88:40 volumeS=sept~0:73,88:-38 volumeS=spri~83:52,101:40 volumeS=squa~83:40
volumeS=stan~88:28 volumeS=subm~0:54 volumeS=swit~62:27 volumeS=take~0:-39,83:17,91:24,94:51
volumeS=tank~0:42 volumeS=ther~27:62,62:46 volumeS=truc~0:52 volumeS=unde~83:77,88:-21
volumeS=vess~27:45,62:66 volumeS=want~82:52 volumeS=wate~28:61 volumeS=whic~0:52,88:-47
volumeT=beds.area~88:18,89:49 volumeT=power.amps~0:57 volumeT=power.battery~83:55
volumeT=power.cable~0:-26 volumeT=power.capacity~83:63 volumeT=power.facing~0:72
volumeT=power.panel~0:56 volumeT=power.series~88:21
volumeT=power.source~0:72,28:-42,88:41,89:41,90:48 volumeT=power.voltage~0:12,83:54,88:-41,89:45
volumeT=pump.control~0:54,28:42,62:13,88:-92 volumeT=pump.count~0:-42,83:87
volumeT=pump.cut_in~62:54,88:-58 volumeT=pump.cut_out~62:83,88:-81 volumeT=pump.height~83:-24
volumeT=pump.most_flow~0:30 volumeT=pump.placement~62:28,83:31 volumeT=pump.present~0:51,88:101
volumeT=pump.relief~0:-34 volumeT=pump.set~0:23,27:34,88:-58 volumeT=pump.works~0:-63,83:35,89:34
volumeT=store.depth~88:50 volumeT=store.fills~0:-41,83:40 volumeT=store.hours~0:50,88:-42
volumeT=store.reserve~83:52 volumeT=store.volume~0:52,62:74,82:63,83:-157,90:33
volumeT=tank.level~62:-39,83:-101,88:203 volumeT=tank.volume~0:98,88:-191
volumeT=water.kind~0:37,28:23,82:38,83:-12,89:62,91:64,101:65,108:55
volumeT=water.level~0:24,62:23,83:-21,89:59 volumeT=water.yield~0:-56,28:55,94:99
volumeT=way.climb~0:11,62:31,83:71,88:-38 volumeT=way.length~0:53,28:47,88:26
volumeT=way.pipe~0:28,28:35,88:65 volumeT=well.bore~108:45
volumeT=well.depth~62:90,83:-27,88:-20,108:57 volumeT=well.drawn_for~108:78
volumeT=well.pumping~0:40,88:-43 volumeT=well.steady~0:-58,108:86 volumea=~62:66
volumea=,_and~0:-45 volumea=,_filled~0:34 volumea=,_the~0:42 volumea=.~0:77,83:38
volumea=._the~83:-28 volumea=and_is~0:28 volumea=and_stands~88:72 volumea=below_the~83:43
volumea=bladder_tank~62:26 volumea=cistern_,~83:40 volumea=each_.~90:28
volumea=expansion_tank~27:50 volumea=in_9~94:44 volumea=pressure_tank~62:62
volumea=water_heater~28:44 volumeb=~88:28 volumeb=,_about~83:52 volumeb=,_tank~83:26,88:-33
volumeb=a~83:25 volumeb=cistern~0:34,83:-27 volumeb=cistern_is~0:-38,83:45
volumeb=cistern_of~0:83,83:-58 volumeb=from_a~83:37 volumeb=garden_takes~91:25
volumeb=tank_is~0:28,83:-44 volumeb=to_a~88:15 volumeb=to_keep~82:35 volumel0=,~88:56
volumel0=.~83:24 volumel0=:~0:-36,83:27,94:41 volumel0=a~0:60,28:23,88:66 volumel0=about~83:80
volumel0=at~90:32 volumel0=boiler~28:45 volumel0=cylinder~28:34 volumel0=has~83:32
volumel0=heater~28:53 volumel0=holds~0:16 volumel0=is~83:26 volumel0=keep~82:74
volumel0=needs~90:33 volumel0=takes~91:24,94:51 volumel0=tank~83:33 volumel0=use~94:30
volumel0=wants~82:53 volumel0=with~0:50 volumel1=,~0:-37,83:53 volumel1=;~83:37 volumel1=a~62:50
volumel1=cistern~83:34 volumel1=expansion~27:48 volumel1=from~83:40 volumel1=garden~91:43
volumel1=have~0:-37,88:50 volumel1=loft~88:40 volumel1=people~90:29 volumel1=pond~0:46
volumel1=pressure~0:46 volumel1=rain~83:28 volumel1=tank~0:87,62:16,88:15 volumel1=to~82:33
volumel1=up~88:39 volumel1=water~28:28 volumel1=we~0:-34,89:81,94:24 volumel1=with~0:-34
volumel2=2~83:24 volumel2=a~83:24 volumel2=cabin~0:41 volumel2=comes~88:31 volumel2=day~89:52
volumel2=fire~82:35 volumel2=header~88:37 volumel2=hill~83:-33 volumel2=it~0:29 volumel2=m~88:39
volumel2=one~90:32 volumel2=pressure~62:42 volumel2=storage~83:37 volumel2=tank~0:-27,83:16
volumel2=the~0:40,83:19,88:17 volumel2=water~28:30 volumelr=a_bucket~0:41 volumelr=a_concrete~88:69
volumelr=a_expansion~27:50 volumelr=a_tank~88:18 volumelr=a_tote~88:20 volumelr=has_.~83:32
volumelr=is_,~0:-46 volumelr=is_.~88:71 volumelr=of_on~0:-23,88:45 volumelr=tank_,~0:-49
volumelr=tank_.~83:35 volumelr=tank_on~0:81,88:-69 volumelr=wants_kept~82:29 volumer0=,~88:63
volumer0=.~62:83,83:29,88:70 volumer0=an~0:77 volumer0=barrel~88:33 volumer0=before~108:34
volumer0=below~83:43 volumer0=bladder~62:26 volumer0=bucket~0:49 volumer0=cistern~83:15
volumer0=each~90:45 volumer0=expansion~27:70 volumer0=in~0:53,94:18 volumer0=kept~82:29
volumer0=of~82:40 volumer0=on~91:32 volumer0=pressure~62:73 volumer0=tank~88:25 volumer0=tote~88:20
volumer0=vessel~62:52 volumer0=water~28:44 volumer1=,~0:45,88:-62 volumer1=5~0:43 volumer1=6~0:-26
volumer1=9~94:44 volumer1=a~91:24 volumer1=filled~0:33 volumer1=heater~28:52 volumer1=it~0:-43
volumer1=on~88:39 volumer1=so~0:52 volumer1=stands~0:41 volumer1=tank~27:40,62:28,83:62
volumer1=the~88:15 volumer1=we~88:37 volumer2=.~28:49 volumer2=1~0:-52,88:46 volumer2=2~0:-32
volumer2=6~101:36 volumer2=at~0:39 volumer2=beside~0:45 volumer2=cistern~0:32
volumer2=for~0:33,88:-45 volumer2=spring~0:-43 volumer2=the~83:57 volumer2=two~0:45
"""
