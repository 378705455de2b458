"""Weights of words near numbers, in hundredths: written by ``python -m tests.enquiries.weights``."""

CLASSES = (
    "none",
    "animals.cattle",
    "animals.dairy",
    "animals.goats",
    "animals.hens",
    "animals.nursing",
    "beds.area",
    "drip.dripper",
    "drip.flow",
    "drip.hours",
    "drip.least",
    "drip.length",
    "drip.pressure",
    "drip.rated",
    "drip.reference",
    "drip.rows",
    "drip.spacing",
    "drip.warmest",
    "drip.zones",
    "fall.breaks",
    "hot.precharge",
    "hot.relief",
    "hot.stored",
    "hot.tank",
    "hot.volume",
    "outlets.drip",
    "outlets.drip.together",
    "outlets.hose",
    "outlets.hose.together",
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
    "pump.most_flow",
    "pump.motor",
    "pump.npsh",
    "pump.set",
    "pump.starts",
    "rain.dry_count",
    "rain.roof",
    "store.days",
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
    "use.leak",
    "use.peak",
    "use.peak_time",
    "use.people",
    "use.troughs",
    "water.level-",
    "water.temperature",
    "water.yield",
    "way.climb",
    "way.climb-",
    "way.length",
    "well.bore",
    "well.depth",
    "well.drawn",
    "well.drawn_for",
    "well.drop_pipe",
    "well.pumped_for",
    "well.pumping",
    "well.rate",
    "well.static",
    "well.steady",
    "well.tested",
)
WEIGHTS = """
L=!~0:-66,86:23 L=(~0:35,3:52,55:33,95:23 L=)~3:43,31:46,78:35
L=,~10:34,15:6,16:27,17:-40,37:-41,62:42,67:-43,81:15,83:15,84:-39,88:39,101:-31,104:-29
L=.~6:-44,8:26,9:22,11:32,12:20,17:35,29:32,31:61,39:-25,41:27,51:-28,54:-26,72:-43,75:-38,78:-14,80:38,82:-37,83:-33,86:32,100:-64
L=0~0:49,1:28,4:-34,14:25,20:-32,22:76,23:29,29:-41,34:-48,42:53,54:44,62:-18,63:-32,66:-46,78:14,85:32,88:59,91:60,104:25
L=1~2:-37,4:-41,8:31,59:65,63:27,78:-39,81:56,95:29
L=2~0:74,20:37,34:35,49:-40,53:-36,59:55,78:21,87:28,88:-39,92:-44,93:-14,95:35,104:43
L=3~41:42,62:-51,66:-35,74:-43,78:56,81:54,100:24,102:-51,104:24
L=4~15:-66,41:59,47:40,86:-34,93:37,104:31 L=5~0:7,1:-41,34:-15,42:40,86:-13,88:-35,95:22,99:17
L=6~0:43,49:-27,62:44,79:42,93:-31,102:38 L=7~84:34 L=8~29:-30,81:56,90:43,102:28
L=9~3:-44,74:33,88:-29,90:33,94:44,100:45 L=:~6:31,27:25,38:38,54:24,84:34,90:18,96:33
L=;~50:21,74:39,88:-64 L=?~0:-10,38:44,86:21,88:40
L=a~0:38,31:-36,34:33,37:15,38:-54,44:32,49:-45,50:26,53:25,56:33,58:29,59:-47,63:23,73:-30,74:41,78:17,79:58,82:65,84:-32,88:-44,90:46,94:43,95:34,100:-29
L=about~3:47,50:32,74:46,80:43 L=above~0:-30,78:33,86:38,88:-43,93:38 L=across~0:35
L=adjusted~66:34 L=adults~0:64,29:31,34:-23 L=after~0:64,89:29,97:28,101:20 L=agm~0:-38,53:34
L=ah~3:32 L=air~54:56 L=all~0:63,51:34,78:19,86:-62 L=allowed~67:45 L=alpacas~0:-27,87:33
L=altimeter~91:41 L=altitude~38:88 L=am~86:30 L=an~86:-29
L=and~1:44,4:47,27:40,35:-33,50:56,59:76,86:-31,87:17,90:39,91:13,93:24 L=apart~11:31
L=are~7:39,11:34,37:23,38:36,39:27,62:-48,78:-33,86:61,91:-12,93:51 L=array~0:-39 L=as~64:34
L=at~0:52,1:-47,4:-27,13:25,22:104,31:-14,36:-29,37:-32,38:89,39:47,43:-41,50:-28,54:-23,58:69,59:62,62:148,77:-21,78:-29,79:-55,81:35,88:62,91:-38,92:-34,93:-76,100:55,101:50,103:42,104:20
L=attic~0:-38,78:50 L=august~0:58 L=back~0:53,58:24,95:32,103:29 L=bank~0:17
L=bar~8:22,29:24,55:47,56:38,58:61,59:93,90:-43 L=barn~0:-54,92:47,93:29 L=barrel~79:-31
L=basins~0:48,34:33 L=bath~0:-36,34:41 L=battery~0:50,44:31 L=be~0:50,30:54 L=bed~0:26 L=beds~16:19
L=beef~0:49,1:-38 L=been~0:28 L=begin~12:30 L=behind~0:-49 L=below~0:-38,93:47
L=between~15:28,58:63,86:45 L=bladder~54:40 L=block~8:36 L=blue~56:40 L=boiler~24:67
L=booster~66:31,93:-28 L=bore~0:56,90:68,91:-34,94:37,95:68,102:27
L=borehole~0:-36,91:-28,92:44,95:93,98:35,104:28 L=both~0:-29 L=bottom~78:45,91:33,95:45
L=box~66:20,88:29 L=brings~0:34 L=bucket~0:30 L=budget~0:29 L=buried~0:62 L=but~29:45,33:64
L=by~0:35,34:48,50:26,92:49 L=cabin~0:50,31:-45,38:36,79:-34,91:55,93:49 L=cabins~0:25,29:-48
L=cable~0:43,43:117,93:-31 L=call~0:45 L=came~0:35 L=campers~0:32 L=can~0:28,9:29 L=captured~0:33
L=cased~0:-38,94:52 L=casing~0:-45,94:6 L=cattle~87:48,93:34 L=chalet~0:50 L=charge~54:33
L=checked~54:33 L=cistern~72:23,74:66 L=city~0:84 L=climb~0:-61,91:112 L=climbs~0:-30,91:81,93:-23
L=cm~0:-35,7:32,11:43,79:34 L=cold~89:92 L=come~0:44,32:32
L=comes~0:40,36:27,58:16,79:36,90:-19,103:28 L=concrete~0:22 L=constant~66:53 L=consumption~81:38
L=control~66:42 L=controller~42:32,46:55,53:-48 L=copper~93:47 L=cottage~0:-43,86:20,91:88
L=count~0:-33,83:32,86:31 L=couple~32:45 L=cover~6:32 L=cow~1:35
L=cows~1:41,3:31,4:42,5:43,81:-26,86:-47,87:47 L=creek~88:28,92:32 L=cut~0:-33,58:79,59:86
L=cuts~59:19 L=daily~0:-35,80:34 L=dairy~2:29 L=day~1:40,74:-40,80:46,86:32 L=dear~94:35
L=december~0:45 L=deep~91:-45,94:57,102:36 L=degrees~0:30 L=delivers~0:40 L=delivery~0:26
L=depth~62:39,95:61 L=dia~0:-35,86:25 L=diameter~0:-29,60:85,94:45 L=diaphragm~0:-41,63:23
L=difference~91:31 L=dishwasher~86:30 L=distance~15:36,91:-34,93:55 L=dn~94:35
L=down~62:44,88:48,100:35 L=drawn~99:29 L=draws~77:64,104:34 L=dried~0:30 L=drilled~0:45,95:45
L=driller~0:-35,90:32,104:31 L=driller's~0:25 L=drinkers~87:49,91:43 L=drinks~80:14
L=drip~6:34,7:1,11:30,12:23,15:43,16:32,25:57 L=dripper~0:51,16:30 L=drippers~0:-22,7:63,16:72
L=drips~0:40,21:26 L=drop~91:-37,92:36,93:-34 L=drops~0:93,91:-32,92:44 L=drum~0:-46,78:57
L=dry~0:-34,61:42,68:57,88:46,90:46 L=dug~95:40 L=dynamic~88:34
L=each~0:45,11:51,16:42,29:-24,53:-44,80:-43,81:92,86:32,90:-45 L=eco~29:21 L=efficiency~64:69
L=eight~0:32,30:34 L=elevated~0:36 L=elevation~38:81 L=eleven~87:29 L=emitters~7:67,16:71
L=end~86:30,88:33 L=ends~0:41 L=enough~70:23 L=et~0:-32,14:70 L=evening~0:-23 L=every~7:42,16:49
L=everything~79:26 L=ewes~91:30 L=expansion~20:57,23:84 L=facing~0:-32
L=falls~78:47,88:28,91:-35,92:32,100:22 L=family~0:-41,86:73 L=far~0:53 L=farm~0:50
L=farthest~93:35 L=fed~0:-24 L=feeds~66:32 L=feet~25:63,87:26,95:38 L=field~0:32,32:27
L=fifty~0:-51,29:21,91:36 L=fill~0:55 L=filled~0:30 L=filter~37:40 L=fire~73:30 L=first~0:28,36:29
L=fittings~37:44 L=floats~0:51 L=floor~78:31 L=flow~0:55,8:30,86:-26 L=foot~75:33
L=for~0:28,1:34,37:30,42:42,70:57,90:32,99:65 L=four~0:27,26:30,79:-34 L=frequency~66:41
L=from~43:44,49:-46,74:48,78:53,79:42,86:-40,92:30,95:-35 L=ft~6:30,78:-52,86:33,87:-43,88:31,95:26
L=gallon~0:29,5:29 L=gallons~78:31,93:-31 L=galvanised~0:30,79:23 L=garden~0:46,6:44,82:123,93:30
L=gas~86:35 L=gauge~0:50 L=gets~36:81 L=gives~0:77,66:-31,90:64 L=go~0:36 L=goats~3:62,4:50,6:-41
L=goes~6:28,88:26,91:37,92:-30 L=got~0:90,74:43,91:30 L=gph~16:42 L=gpm~0:-33,74:41,90:37
L=gravity~0:-37,79:46 L=greenhouse~6:16,80:39 L=grid~39:32 L=ground~51:52,92:33 L=group~0:24
L=guess~36:27 L=guy~0:31 L=h~12:54,16:55 L=ha~15:24 L=half~91:-26,92:72 L=hallo~0:33 L=hand~36:26
L=hangs~0:-43,62:86 L=has~0:69,29:50,54:45,79:-37,93:-49,94:37,98:68 L=haul~74:46 L=hav~0:53
L=have~6:36,32:30,79:50 L=having~0:-35 L=he~0:80,104:29 L=head~0:83,86:-35,91:31 L=header~79:40
L=heater~21:38,22:65,24:58 L=height~91:41,93:44 L=hello~0:49,6:-44,49:24 L=hens~0:-62,3:37,4:39
L=hi~86:33 L=higher~91:38,93:55 L=highest~91:48 L=hill~0:53,74:-43,79:27,86:29,91:-42
L=hillside~0:51 L=hit~0:33,88:-28 L=hiya~0:21 L=hold~0:17,78:-26 L=holding~79:23 L=holds~66:87
L=hole~95:24 L=horses~0:-42,1:32,87:66 L=hose~77:33,86:31 L=hoses~0:-54,27:63,32:42
L=hour~0:-31,67:100,84:66 L=hours~0:36
L=house~0:27,3:63,6:-38,31:15,62:-33,66:34,78:32,88:-38,91:81,93:53,95:-43 L=household~0:-14,86:55
L=houses~91:33 L=how~95:42 L=hp~62:49 L=hundred~88:-52 L=hung~98:66 L=hut~38:44
L=i~0:46,6:42,9:41,30:54,33:39,54:35,64:25,83:41,88:-39,92:-50 L=i'd~36:26,66:51 L=ibc~78:31
L=in~3:-52,15:31,17:79,18:28,42:37,51:57,58:35,74:-17,79:9,84:51,85:69,86:-35,88:80,91:-11
L=inch~0:43 L=inside~34:36,88:-33,102:19 L=installed~79:-32 L=intake~77:64,92:38 L=into~0:-57,74:21
L=inverter~66:33 L=iron~0:28 L=irrigation~0:-37,6:41
L=is~0:70,1:-56,14:40,17:39,22:21,34:37,37:39,38:-26,40:23,43:38,52:-38,74:30,81:-30,89:74,91:38,93:49,94:3
L=isn't~0:39,95:25 L=it~0:38,21:47,31:-23,36:44,50:33,88:18,94:-33,96:43,100:54,103:37 L=it's~93:40
L=its~91:-43 L=joined~74:77 L=just~0:-42 L=keep~2:36,73:69 L=keeps~0:-27,66:74 L=kia~0:34
L=kicks~58:32 L=kids~0:30 L=kitchen~93:19 L=km~0:39,92:31
L=l~1:24,13:44,16:39,54:27,78:65,88:-32,99:33,100:35,103:26 L=lake~0:33 L=last~0:49,91:-29
L=latitude~0:-70,39:86,40:193,41:50 L=laundry~35:40 L=least~10:35 L=length~77:70,93:45
L=level~62:-15,88:76,91:-21,95:-15,100:70,102:81 L=lies~36:65,91:47 L=lift~61:39,62:-26,88:40,91:63
L=lifted~91:33 L=like~0:47 L=line~11:81,78:-35,88:-33,93:23 L=lined~0:27 L=lines~11:83,12:54,93:-36
L=liter~0:42 L=liters~0:45 L=lithium~0:28 L=litre~0:-47,54:34,78:34 L=litres~1:45,22:63,78:47,85:29
L=little~56:42 L=live~86:63 L=living~0:63 L=loft~79:39 L=log~95:42 L=long~0:56,41:30
L=longitude~41:53 L=look~0:32 L=lose~50:31 L=low~0:19 L=lowered~62:58 L=lowest~88:31
L=m~0:44,2:30,79:46,91:45,94:19,95:64,104:26 L=machine~27:39 L=machines~35:46 L=main~93:47
L=maker~0:-45,67:35 L=makes~88:-33,90:36 L=manometer~0:24 L=march~0:26 L=maximum~46:42 L=may~0:58
L=maybe~0:86,50:34 L=me~0:63 L=meadow~32:39 L=measured~90:31 L=meter~83:74 L=meters~0:31,86:-41
L=metre~0:-35,95:56 L=metres~88:16 L=micro~0:42 L=milk~2:72 L=min~0:52,91:-41,99:36 L=minimum~0:74
L=minute~0:-44,92:25 L=minutes~101:54 L=mm~6:-25,76:27,78:-33,79:60,92:66,93:55 L=months~68:59
L=more~0:-37,67:79,91:21 L=morning~84:57 L=most~63:35 L=motor~0:-51,64:74 L=mountains~86:43
L=mppt~3:35,46:58 L=must~91:35 L=my~0:105,6:-49,49:24,92:30 L=need~0:36,80:72 L=needs~0:56,10:37
L=neighbour~0:40 L=net~91:54 L=never~88:47 L=night~9:44,72:45 L=no~67:77,86:78,88:24,91:-34,93:23
L=noon~0:40 L=north~40:55 L=not~0:-21 L=now~0:72,88:42 L=npsh~65:50 L=npshr~65:57
L=of~26:56,30:33,47:42,49:81,50:52,62:-28,70:17,78:11,86:34
L=off~0:-48,39:29,59:86,69:112,74:31,92:42 L=olives~0:-27,6:31
L=on~29:-36,32:32,36:53,50:27,58:65,59:50,78:54,79:51,86:-20,91:-45,92:-46,98:60 L=once~0:28
L=one~0:-33,50:48 L=only~33:56,37:36,86:22 L=open~47:61,53:-51 L=opens~58:-24,59:37 L=or~30:-34
L=ora~0:34 L=orchard~0:-25,6:31 L=our~0:64,74:-44,80:29,86:67 L=ours~95:46
L=out~0:-20,36:27,56:-27,59:117,96:54 L=outside~0:-51,60:52,86:41 L=over~0:43,29:26
L=overhead~79:36 L=own~0:22 L=panel~52:38 L=panels~31:38,43:21,48:61,51:51,52:71,93:-30
L=parallel~0:-38,29:33,31:-28 L=pasture~0:18 L=pe~79:32,92:41 L=peak~84:27
L=people~29:30,81:88,86:59 L=peppers~6:21,15:32 L=per~67:69,81:46,93:-44 L=persons~29:33,81:48
L=pex~0:17,30:35 L=phosphate~0:21 L=pipe~0:65,29:-36,49:30,77:62,78:-24,88:-24,93:70,95:-36,98:66
L=pit~95:-28 L=place~38:35,95:29 L=plastic~37:30 L=platform~78:43 L=please~0:48 L=plot~0:65
L=plus~4:40,82:88 L=pn~0:50 L=point~66:21 L=poly~0:30 L=pond~0:44 L=power~0:39 L=pre~54:34
L=precharge~54:65 L=preset~54:33 L=pressure~0:32,12:25,56:83,58:54,59:20,66:24,79:-44
L=producer~90:24 L=protection~0:-36 L=psi~74:-35,88:43 L=pull~62:49
L=pump~0:87,8:46,31:32,38:-33,43:32,54:-35,58:10,59:42,60:36,62:176,63:78,66:60,74:34,77:20,88:51,90:-73,91:-13,95:-14,98:45,102:-26
L=pump's~0:26,53:-27,62:40 L=pumped~0:-57,90:-32,96:28,104:33 L=pumping~88:72,100:30,101:20,104:44
L=push~88:-37 L=pushes~78:49 L=pwl~104:20 L=question~0:56 L=rain~69:24,74:65,89:29
L=rainwater~0:-34,74:62 L=raised~78:26 L=ran~0:-39,99:49,101:35 L=rated~13:60,37:32,55:76
L=reach~0:40 L=read~0:46 L=reads~0:25 L=reckon~81:25 L=reducing~0:49 L=relief~21:96
L=required~65:43 L=reservoir~0:-21,78:32,79:30 L=rest~88:-55,102:93 L=ridge~50:84 L=rings~94:32
L=rinsing~0:31 L=rise~0:-18,91:93 L=rises~91:57 L=river~88:35 L=road~0:55,93:-24
L=roof~0:-27,6:-36,69:147,86:24,91:35 L=rooms~0:35 L=roughly~0:-46,32:32,50:22
L=rows~0:-38,15:120,74:26 L=run~0:-38,9:57,43:22,93:40 L=runs~53:33,71:32,74:24
L=s~0:-57,41:31,100:36 L=said~0:69 L=same~30:33 L=sawback~38:22 L=say~0:-52,93:96
L=says~0:76,80:49,95:24 L=sch~0:30 L=school~86:35 L=season~88:45 L=second~0:41
L=seconds~0:41,93:-26 L=septic~0:89,79:-40 L=set~22:29,62:51,66:119 L=seven~0:-47
L=shaft~0:-36,94:47 L=shed~91:-45 L=sheep~3:70 L=should~70:45
L=shower~27:38,31:55,34:65,88:-36,90:-34,91:39 L=showers~1:-31,29:92,30:81,31:70,34:77,86:-47
L=shuts~59:36 L=sink~0:-34,29:34,31:-33,34:30,86:-31 L=sinks~0:-26,31:54,34:29,35:36 L=sirs~94:35
L=sit~0:25 L=sits~62:35 L=six~0:39 L=slope~0:42 L=smal~0:26 L=small~38:30 L=so~0:30,34:36,74:78
L=solar~0:39 L=sold~0:29 L=sorry~88:16 L=source~90:34 L=spacing~16:24 L=speed~0:52,66:41
L=spell~17:32 L=spring~74:57,78:-41,89:20,90:87,92:81 L=sprinklers~32:53 L=stable~0:-34
L=staff~86:65 L=stand~0:-18,78:49 L=standing~102:55 L=stands~88:55 L=start~12:36,58:47
L=started~102:40 L=starts~67:75 L=static~0:-21,88:46,91:-23,95:-52,100:21,102:208
L=stock~0:-41,1:45,5:44 L=stop~59:30 L=stops~31:-34,59:87 L=storage~70:31 L=stored~22:73
L=strainer~0:89,93:-37 L=stream~0:-42,90:33 L=strings~0:-57,49:39 L=sub~62:51,86:28
L=submersible~60:12,62:101,86:-38 L=sucks~77:42 L=suction~77:134,91:-34,93:-55 L=summer~86:35
L=sun~0:52,36:42 L=sunday~0:33 L=supply~0:-40,12:33 L=surface~88:46 L=swears~0:37
L=switch~0:-57,54:-33,56:29,58:123,59:75,66:-40,93:28 L=swl~88:34,102:63 L=system~53:31
L=take~0:26,90:-36 L=takes~0:64,50:36,84:51,86:-30
L=tank~29:-23,54:48,55:69,56:51,59:-32,72:80,74:94,78:101,79:68,88:-41,90:-38,91:-53,92:-49
L=tanks~0:42 L=tap~0:73,91:24 L=taps~0:63 L=ten~0:34,86:-33 L=tent~0:48 L=tents~0:32
L=test~101:33,104:36 L=tested~0:-42,90:28 L=than~0:-39,67:79 L=that~36:27,78:43,103:49
L=that's~86:33
L=the~0:100,1:-25,7:-21,11:-37,12:49,20:-40,25:-30,34:-30,36:40,38:-64,39:-36,51:-39,55:-32,58:25,69:82,72:37,77:27,79:45,90:47,91:59,93:27,95:34,100:41,103:-36
L=then~0:53 L=ther~0:47,86:-30 L=there~1:52,19:39,23:19,76:42,87:32 L=there's~0:-46,56:22,93:39
L=this~0:99 L=three~0:7,31:-32 L=through~77:66 L=tilt~52:70 L=tilted~52:40 L=time~30:32,34:37
L=times~58:24
L=to~4:-41,20:47,38:-33,43:49,54:48,74:-51,78:32,79:46,88:58,91:48,93:65,94:-43,100:35
L=toilet~0:-28,34:79 L=toilets~0:-28,31:52,34:41,35:63 L=told~78:26 L=too~0:7
L=took~0:44,29:33,64:34,97:36 L=top~1:38,91:30 L=total~0:-55 L=tote~77:65 L=tower~0:-26,78:56,93:43
L=town~0:63 L=trench~0:23 L=trough~1:48,91:37 L=troughs~0:-54,1:33,87:95,93:36 L=truck~0:42
L=turns~83:32 L=twenty~0:42 L=two~0:37,31:24,35:-34,48:24,49:23,80:40 L=tyre~0:22
L=underground~0:-24,74:47,79:-24 L=up~78:36,89:89,91:61 L=uphill~0:-46,91:47
L=upper~0:-60,79:71,91:46 L=upstairs~0:36 L=us~4:14,31:21,50:22 L=use~0:-26,30:35,80:80,84:45,85:27
L=uses~0:60,81:32 L=v~29:35,42:39,43:39 L=valve~21:103,56:-30,66:-40,75:33,76:49 L=variable~66:23
L=vessel~0:-28,23:51,54:56,56:45 L=village~78:31 L=vines~6:22 L=voc~47:56,53:-37 L=volt~63:36
L=voltage~47:38 L=w~0:-57,47:41,49:41,51:47 L=want~33:48,70:48 L=wanted~66:19 L=wants~0:34,73:66
L=was~0:25,54:24,93:-31,96:23 L=wash~34:28 L=washer~0:32,27:31 L=washing~27:43,35:38
L=water~5:27,9:44,24:35,38:-31,62:-57,78:-30,88:163,89:152,90:35,92:-38,95:-35,102:91
L=water's~88:35 L=watered~0:35 L=waters~88:42 L=way~0:-45,63:34,93:36
L=we~0:112,29:27,30:-36,38:49,39:29,62:65,70:42,80:81,81:21,84:31,86:49,88:-45,92:26 L=we're~86:45
L=we've~0:48 L=weak~90:24 L=well~72:41,78:-24,88:39,90:32,92:-33,94:53,95:82,96:35
L=well's~0:-34,95:55 L=were~0:64 L=when~0:22,28:66,31:-37,100:40 L=which~0:-62,30:36 L=will~0:-41
L=winter~88:38 L=wire~43:78,93:-52
L=with~6:29,12:23,30:-37,34:33,54:47,74:-42,75:42,76:39,88:17,94:11,102:-28 L=within~88:33
L=works~0:45 L=write~0:56 L=wrote~0:35,90:23 L=x~0:87,48:28 L=yard~1:37 L=yards~92:34 L=year~88:-33
L=yet~86:42 L=yield~0:53,90:42 L=you~0:30 L=your~36:26 L=yurt~0:29 L=zone~0:27 L=zones~26:58
L=|~3:30,53:32,92:37 R=!~0:33 R=(~0:-36,29:54,34:34,86:30 R=)~0:97,90:28
R=,~0:62,7:27,9:-51,10:-36,15:33,20:-42,28:-47,30:-52,32:44,34:28,40:86,43:-44,58:45,61:-34,66:31,70:-41,73:-32,74:44,79:46,80:44,87:20,93:42,100:-48,102:21
R=.~0:100,1:-45,2:-24,5:-30,6:49,8:-45,19:-27,25:-36,28:-6,30:-27,32:-68,33:-29,36:37,38:46,46:-31,49:-40,54:16,55:-12,57:-51,58:17,66:25,72:15,80:49,81:78,86:48,89:51,90:35,91:1,95:15,96:-40,97:-48,98:-18,101:-33
R=0~0:58,6:-40,13:66,49:36,58:34,74:-46,79:-39,81:44,84:19,88:37,90:62
R=1~0:47,1:-50,17:53,24:24,27:-79,31:35,35:-66,49:16,56:31,62:23,77:46,78:-67,90:-42,93:18
R=2~29:48,35:66,51:-26,55:38,56:53,59:28,86:-35,87:-28,101:21
R=3~18:52,40:57,58:98,68:36,86:-58,94:44,96:40,104:49
R=4~38:-46,65:38,77:17,78:-41,79:29,88:-43,91:9,98:73 R=5~0:61,1:-40,3:27,32:24,74:-33,88:-27,93:72
R=6~1:-38,3:32,24:42,60:38,81:42,88:-39,102:44,104:34 R=7~0:40,62:-50,78:-37,79:33,86:-45,94:62
R=8~0:68,51:41,53:59,56:50,79:-34,93:42,98:45 R=9~2:50,84:24,86:-30,102:34 R=:~62:54,90:15,93:26
R=;~0:61 R=?~0:101,86:67,90:-41
R=a~0:15,6:-32,9:48,26:50,29:45,31:21,34:34,45:129,56:-41,71:24,79:16,80:36,81:55
R=about~3:39,86:25 R=above~38:27,62:-32,74:-33,78:87,79:60,88:58,91:153,92:36,93:-25,95:-34
R=according~95:47 R=acid~0:33 R=across~0:28,94:48 R=adults~0:31,86:48
R=after~0:36,84:31,85:19,90:28 R=ago~0:77 R=ah~53:75 R=air~56:55,97:33 R=all~87:40
R=along~0:-29,91:33 R=alpacas~0:52 R=altitude~38:40 R=altogether~80:44
R=an~0:39,29:-20,59:42,67:32,93:-58,101:22,102:47
R=and~0:38,2:24,3:11,27:-30,29:46,30:32,31:57,34:32,53:-46,58:84,87:-56,90:-40,93:35
R=apart~15:28,16:22 R=around~0:59 R=arrives~86:25
R=at~0:42,3:-24,4:-35,5:22,8:38,24:58,26:95,28:63,30:71,31:-21,33:51,54:-40,58:31,62:-29,63:63,79:-32,86:32,90:-39,91:-55,93:-48,95:65,100:41
R=automatic~0:-39,1:41,87:31 R=autumn~0:38 R=away~93:91 R=back~73:38 R=bank~53:44
R=bar~0:-38,56:35,58:83 R=barn~78:-28 R=barrel~0:-31,79:44 R=basin~0:24,29:-26
R=basins~31:143,86:-19 R=bath~0:40 R=bathroom~0:69,29:-46,31:-44 R=bathrooms~29:60
R=batteries~0:21,44:38,53:21 R=battery~44:39,53:34 R=be~0:38,86:21,91:-29 R=beds~0:9,38:25
R=beef~0:56,1:48 R=before~30:40,93:25 R=begin~12:36
R=below~0:-71,62:37,74:75,78:28,88:71,91:40,92:17,93:-39,95:-46 R=bends~75:79
R=beside~3:45,74:54,79:-38 R=between~0:-33,15:25 R=bibs~27:36 R=bladder~56:36 R=boiler~23:19
R=booster~74:49 R=bore~0:-57,3:46 R=borehole~0:-30,86:30,91:19,94:45 R=both~27:35
R=bottom~0:75,93:-42,95:96 R=box~0:29 R=boys~0:44 R=break~0:-28,19:60 R=brings~54:35 R=brook~87:33
R=bucket~0:79,90:32 R=bulls~1:50,5:61 R=but~0:122,31:42,32:72,86:-43,93:-29
R=by~0:43,57:53,79:-27,80:42,92:-37 R=c~0:-43,24:32 R=cabin~24:44,92:36,93:50 R=cabins~29:55
R=cable~43:102,93:-39 R=calf~5:91 R=calves~5:87 R=campers~0:-28,86:60 R=can~8:37 R=cart~0:68
R=case~0:13 R=casing~0:-37,94:66 R=cattle~0:-32,1:108,3:41,86:-30 R=chalet~0:21
R=chickens~0:-83,4:135 R=children~0:60 R=cistern~3:-35,68:36,74:42 R=climb~91:38 R=climbs~91:53
R=cm~7:32,15:38 R=comes~0:47,95:-24 R=controller~0:31,53:-58 R=cottage~92:42 R=couple~5:34
R=covers~0:25 R=cow~5:60 R=cows~0:-81,1:109,2:162,5:65,86:-34 R=creek~77:25,91:45 R=cut~58:43
R=dairy~2:52 R=day~0:-40,9:41,14:56,71:90,72:67,81:45
R=deep~0:70,78:-29,88:-48,91:-37,93:-26,95:145 R=delivers~0:23 R=delivery~88:39 R=depending~86:28
R=depth~94:38,95:49 R=diameter~94:38 R=diesel~0:60 R=distance~0:35,91:-42 R=dog~0:-18,86:21
R=don't~0:42 R=down~62:80,78:-42,88:82,91:-54,93:-54,104:45 R=drawn~101:35 R=draws~74:27
R=drilled~0:25 R=drink~1:70 R=drinkers~0:-2,86:-28,87:133 R=drip~6:114,12:53,16:42,25:37
R=dripper~0:-42,15:44,16:33 R=drippers~0:23,7:23,15:39 R=drive~0:29,93:-29
R=drop~0:-26,92:37,93:-42,98:94 R=drops~0:51 R=drum~79:27 R=dry~0:-52,1:76,2:34,68:70,82:98
R=e~41:31 R=each~7:50,24:38,29:70,80:-42,81:74,87:26 R=earth~0:30 R=east~5:31 R=elbows~75:57
R=electricity~0:31 R=elevation~38:34 R=emitters~0:-31,11:31 R=enough~74:29 R=every~0:32,15:29
R=ewes~3:157,86:-27 R=expansion~22:79,23:82 R=fall~92:27 R=family~0:-29 R=farm~0:-23 R=fed~0:31
R=feeds~79:43 R=feet~0:41 R=fence~0:51 R=field~0:28 R=fill~0:48 R=filled~0:29,74:55,92:-33
R=fills~0:-36,74:41 R=fine~0:20 R=fire~73:85 R=first~0:39,12:33 R=five~86:-35 R=flat~93:40
R=float~87:101 R=floats~0:-47,87:91 R=floor~74:43 R=flush~34:26 R=folks~86:54
R=foot~5:53,75:54,76:88,77:48,79:-31,93:-41 R=for~0:32,27:39,73:94,79:-43,80:46,87:34,90:-48,101:71
R=four~86:-50 R=from~4:45,38:-37,74:31,88:23,93:79,95:-28 R=ft~0:53,62:-35,74:26,79:32
R=full~0:34,86:65,88:-40,90:30 R=garden~27:36,88:-35,92:32,93:27 R=gauge~56:-37 R=generator~0:43
R=gives~91:-39,92:51 R=go~0:-31,86:33,95:40 R=goats~0:-36,1:-23,3:170 R=goes~62:50
R=going~29:-42,30:120 R=golf~0:54 R=gone~0:37 R=got~0:65 R=gpm~95:25 R=gravity~0:-51,78:53
R=greenhouse~6:36 R=grooms~91:41 R=ground~62:37,74:33,88:35,91:-41 R=guests~0:44,86:82
R=h~16:26,88:38 R=had~4:35 R=hanging~60:37 R=hangs~88:46,95:23 R=has~0:-32,92:31 R=have~2:21
R=hdpe~0:36 R=he~0:52 R=head~1:64 R=heads~32:33 R=heater~0:-40,24:135,56:-37 R=heifers~1:66
R=height~78:47,88:-36,91:44,93:32 R=help~0:37 R=hens~0:-87,4:218 R=here~86:45,91:36 R=high~0:47
R=higher~78:42,91:72 R=hill~74:-43,79:35,91:47 R=hold~0:50 R=horses~1:142,86:-32,87:-26
R=hose~0:-84,27:196,28:93,29:-67,77:93,86:-21 R=hoses~0:-116,27:179,28:103 R=hour~67:88,101:23
R=hours~84:30,101:11 R=house~2:67,28:42,74:61,78:43,79:19,88:-33,90:48,91:92,93:68,95:-50
R=household~0:-30,86:28 R=households~0:30 R=houses~0:61 R=how~0:-31 R=hut~0:-39
R=i~0:47,17:56,25:38,54:-33,91:-35,92:20,93:50,101:18 R=identical~57:101 R=if~91:-42
R=in~0:32,2:17,14:36,36:48,49:81,54:60,57:37,66:-38,77:20,78:-38,82:73,84:40,86:19,88:15,96:32,102:-3
R=inch~0:-61,77:48,88:-40,93:67 R=inside~0:-26,94:67
R=is~0:44,9:29,10:31,56:-57,67:82,74:-51,90:41,91:-42,94:40
R=it~0:17,6:28,54:5,79:-49,86:-48,88:32,90:40,95:-24,101:28 R=it's~0:30 R=its~29:25,88:53
R=joined~0:43 R=june~0:-54 R=just~0:40 R=keep~1:29 R=kept~24:32,73:80 R=kids~0:74,3:47,86:-34
R=kitchen~0:69,31:-64,34:45,78:35 R=l~16:42 R=laid~93:38 R=last~0:48 R=late~0:76 R=later~0:56
R=laying~4:27 R=least~10:42 R=level~61:28,74:83,93:37,102:11 R=lift~0:-31,88:34,91:56 R=like~0:-37
R=line~0:74,77:27,90:-31,91:-30,92:21 R=lined~95:31 R=lines~12:90 R=litres~86:32 R=live~91:36
R=loft~79:60 R=log~0:23 R=long~0:27,11:72,77:35,91:-24,95:-37 R=loo~0:-39,29:31,34:51 R=loos~34:63
R=lost~50:75 R=low~0:56,56:-24 R=lower~0:26,91:-26,92:104 R=lowest~88:33
R=m~0:51,15:-49,32:23,65:31,79:33,90:21,91:29,92:-36,93:25,94:36 R=machine~35:64
R=machines~29:34,35:58 R=mains~27:32,88:91 R=makes~88:39 R=may~30:42 R=me~0:55,86:49
R=measured~0:69 R=members~0:24 R=mesh~0:53 R=meter~80:41 R=metre~16:49 R=milk~0:-53,2:154
R=milking~0:-52,2:54,84:32,85:28 R=min~84:27 R=minimum~13:28 R=minutes~84:30,96:43,101:55
R=mm~0:-20,77:42,86:26,88:-22,91:27,93:62 R=modules~48:33 R=monks~86:30 R=months~0:-48,68:73
R=most~86:39 R=mostly~0:-36 R=must~0:42 R=my~0:50 R=n~0:-66,39:180 R=need~10:41 R=needs~0:28
R=new~0:32 R=next~74:51 R=night~0:-38,72:18 R=no~28:32,35:35,93:35 R=nobody~0:52 R=none~3:37
R=north~39:98 R=not~32:40,88:25 R=now~29:53,86:19,89:28 R=o'clock~0:47
R=of~0:52,6:35,43:51,44:19,51:52,62:-66,69:49,70:49,73:46,77:74,78:-33,86:15,87:-26,88:-57,93:50,95:-16,98:94
R=off~58:50,93:64,101:21 R=old~0:96 R=on~1:40,6:36,16:17,28:51,56:-37,74:-54,79:70,91:-45
R=once~0:-29,28:25,30:82,86:-50 R=one~34:41,77:38,90:28 R=ones~1:38 R=only~0:49,74:25,78:17
R=open~30:66,32:20,47:49,53:-37 R=or~0:36,30:59 R=other~31:34 R=our~0:24,88:59,91:32
R=out~0:34,42:44,58:73 R=outhouse~0:-27,29:27 R=outside~27:36,74:37 R=over~0:56,78:53,92:24
R=own~0:-30,29:30 R=paced~93:40 R=paddock~91:38 R=paddocks~3:25,87:41 R=pairs~0:-25,5:122
R=panel~48:48 R=panels~48:47,49:94,86:-38 R=paper~0:45 R=parallel~0:-29,51:49,57:57
R=pasture~0:-34,1:35 R=pe~0:62,91:-32,93:40 R=people~0:35,29:-40,86:181,87:-27
R=per~16:35,29:-42,67:57 R=person~0:-24,86:124 R=persons~29:-47,86:166 R=pex~0:21 R=phase~0:44
R=pieces~32:26 R=pigs~0:49 R=pipe~0:81,88:-36,93:60,98:56 R=plastic~95:26 R=please~0:50
R=plus~1:-38,93:26 R=poly~0:65,74:40,88:-32,93:29,95:-28 R=power~0:-63,27:51,31:21 R=pre~23:24
R=pressure~0:-60,19:101,27:49,56:70,66:36,74:-34,79:-30,86:-57,91:56 R=psi~56:27,63:47
R=pump~0:26,28:62,31:-42,39:49,43:31,62:-37,66:53,74:50,79:-57,88:88,90:28,92:-32,93:-31,94:59,95:62,100:24
R=pumphouse~0:63 R=pumping~102:31 R=pumps~57:93,74:36 R=pupils~0:-33,86:83 R=pushes~88:33
R=put~0:60,91:-31,92:31 R=pvc~0:58 R=rain~3:-34,74:23 R=rams~0:49 R=ran~88:-26,102:27 R=reach~93:49
R=reaches~93:28 R=reducing~19:53 R=regulator~12:41 R=relief~24:28 R=reserve~70:48 R=reservoir~0:36
R=ridge~0:60 R=right~53:-28,54:-41,74:53 R=rim~102:25 R=rise~91:55 R=road~0:61,91:-25,93:-30
R=roof~69:48 R=rooms~29:30 R=row~12:33 R=rows~0:-43,11:66,13:24,15:78,16:47
R=run~1:-36,25:5,28:57,29:-66,30:98 R=runs~77:31,88:-39,100:29 R=same~33:18,93:51 R=says~0:67,67:92
R=sea~38:64,61:31 R=seconds~0:57,90:39 R=series~49:77,86:-32 R=set~63:44,66:72 R=shed~74:52
R=sheep~0:-18,1:21,3:112 R=should~0:-74,30:48 R=shower~29:195,30:45,31:53,87:-39,88:-36
R=showers~0:-37,1:-40,3:-23,29:189,30:124,87:-49 R=side~57:54 R=since~0:-57
R=sink~0:-64,28:53,29:24,31:144 R=sinks~29:41,31:156,86:-50 R=sits~56:38,79:26 R=size~0:-34
R=sleep~0:-23,86:54 R=slope~91:39 R=small~0:-41,86:24 R=so~0:132,90:41,91:-39 R=solar~1:45
R=something~0:42 R=sorry~0:77 R=source~0:38 R=south~40:93 R=speed~66:34 R=spring~88:-32,92:46
R=sprinkler~0:-28,32:28 R=sprinklers~0:-39,32:169,33:72 R=staff~0:72 R=standing~79:-28
R=stands~79:19,94:31 R=start~59:28 R=starts~0:-58,56:45,58:58,67:83 R=static~0:27,95:35
R=steers~0:-62,1:82 R=stream~0:-15,88:42,91:32 R=string~0:-59,51:53 R=strings~0:-9,51:67
R=sub~0:37,95:-37 R=sucks~97:33 R=suction~61:67,74:-36,77:112,88:62,91:-65 R=suggest~86:33
R=summer~0:-50,36:34,88:76 R=supply~0:-37 R=surface~0:77,74:-22 R=switch~0:-10,54:36,58:28
R=takes~0:69 R=tank~23:41,24:-29,54:38,56:65,59:52,74:52,78:78,79:28,86:-34,87:43,90:-29,91:-36
R=tanks~0:48,19:58 R=tap~0:57,27:47 R=tape~0:-32,12:41 R=td~104:20 R=teachers~0:-33,86:65
R=tent~0:-21,29:23 R=tents~29:35 R=terrace~0:44,74:-43 R=th~50:58 R=than~88:-28,91:38,92:56
R=that~79:24,95:32
R=the~0:58,2:-50,6:-31,8:41,12:15,24:-43,25:-44,29:-41,30:49,35:-34,40:-27,49:-51,50:48,51:-42,58:-69,63:-30,74:34,78:55,79:32,82:68,88:59,90:31,91:45,92:48,98:-42
R=them~0:-44,3:39,30:44 R=then~58:23,91:-42,96:42 R=there~86:19 R=they~6:-32,10:43,32:19
R=three~31:-46,86:39 R=through~0:18,91:-42 R=tilt~52:10 R=time~26:67,30:26,33:45 R=times~0:47
R=to~0:23,1:-41,50:32,78:37,88:23,91:44,92:25,93:46,94:-30 R=toddler~0:49,86:-30
R=together~0:-64,27:30,28:79,29:-46,30:93 R=toilet~31:28,34:113,86:-40
R=toilets~0:-44,29:43,31:44,34:177 R=too~0:70 R=top~82:33,92:-42,102:44 R=total~88:22,93:21
R=tote~79:38 R=tower~0:-57,79:62 R=town~0:52 R=trailer~0:55 R=trees~0:42,50:25
R=trough~0:-48,87:145 R=troughs~0:-69,1:42,86:-40,87:150 R=ts~0:50
R=two~0:10,49:29,51:-67,74:-31,84:45,86:57,87:-33 R=under~0:23,91:34,102:35
R=up~66:30,78:38,88:36,91:73,93:32,95:-43 R=uphill~0:-40,91:85 R=upstairs~0:58 R=us~78:23,86:132
R=use~0:-29 R=valve~75:51,76:86 R=vessel~0:-41,22:81,56:65 R=w~0:55,49:50 R=wait~0:70 R=want~0:26
R=was~0:33 R=wash~27:37,31:55 R=washer~0:-29,35:76 R=washers~35:71 R=washing~34:19,35:112,86:-37
R=water~14:41,17:54,24:74,29:19,34:-32,56:-37,78:-56,88:161,90:35,91:-48,92:-35,93:-35,95:74
R=waterers~0:-51,87:57 R=wc~34:70 R=wcs~0:-33,34:53 R=we~0:43,4:49,29:-51,40:87,74:-39,91:-38
R=we're~0:28 R=well~3:21,31:-36,62:5,92:39,94:29,95:56 R=what~93:38
R=when~0:65,66:-36,86:-16,88:-58,100:63 R=where~0:-31,12:40,88:55 R=which~0:41,25:47 R=why~86:34
R=wide~0:64 R=winter~0:52,50:27,88:-34 R=wire~0:15,43:105,93:-65
R=with~0:25,5:76,74:80,86:48,87:51,88:-46,91:-30,94:39,95:65 R=without~0:-53,70:87 R=workers~86:25
R=works~0:26 R=workshop~0:-37,86:34 R=would~50:26,86:28 R=x~0:41 R=yard~0:40 R=year~45:159
R=years~0:37 R=yet~0:-22,66:36 R=yields~0:77 R=young~1:38,2:36 R=zones~0:-60,18:138,25:84,86:-38
R=|~0:-26,29:47,43:36,86:22,93:14,102:-51 angleC=,~52:35 angleC=latitude~40:24 angleC=lies~36:69
angleC=north~40:44 angleC=panel~52:44 angleC=panels~52:102 angleC=sun~36:47 angleC=tilt~52:70
angleC=tilted~52:40 angleC=w~52:58 angleC=water~36:25 angleL0=,~52:40 angleL0=at~40:51,52:48
angleL0=is~17:62,36:19 angleL0=latitude~40:24 angleL0=panels~52:53 angleL0=tilt~52:70
angleL0=tilted~52:40 angleL0=we~39:31 angleL1=lies~36:39 angleL1=the~36:59,40:52 angleL2=,~52:52
angleL2=.~40:34 angleL2=mm~36:38 angleL2=panels~40:36 angleM=drip~17:62 angleM=pump~40:31
angleM=tank~40:48 angleR0=.~36:50,40:28 angleR0=n~39:69 angleR0=north~39:98 angleR0=south~40:53
angleR0=tilt~52:10 angleR1=1~36:38 angleR1=pump~39:62 angleR2=,~40:40 angleR2=0~40:37
angleR2=3~40:35 angleT=beds.area~17:65 angleT=power.facing~52:99 angleT=power.panel~52:97
angleT=power.series~52:56 angleT=power.source~17:50,52:120 angleT=pump.placement~40:37
angleT=water.kind~17:46,40:31 angleT=water.level~39:57 angleT=water.yield~40:25
angleT=way.length~36:52,40:41 angleT=way.pipe~36:60 anglea=.~36:22,52:25 anglea=south_.~40:62
angleb=are_at~39:31 areaC=,~6:18,69:12 areaC=0~0:-44,69:35 areaC=from~0:37 areaC=garden~0:22,6:46
areaC=hello~0:35,6:-31 areaC=house~0:50,6:-35 areaC=off~69:38 areaC=rain~69:37
areaC=roof~6:-36,69:55 areaC=vines~6:22 areaL0=.~69:48 areaL0=:~6:41 areaL0=drip~6:37
areaL0=garden~0:47 areaL0=i~0:-37,6:56 areaL0=is~0:-33,6:32,69:36 areaL0=of~0:31
areaL0=orchard~6:32 areaL0=roof~69:25 areaL0=we~0:53 areaL1=,~0:63 areaL1=a~6:43 areaL1=by~69:32
areaL1=garden~0:-33,6:45 areaL1=it~0:-32,6:36 areaL1=mm~0:25,6:-24 areaL1=my~0:46,6:-38
areaL1=roof~69:54 areaL1=the~0:-13,69:44 areaL2=,~69:49 areaL2=.~6:-37,69:38 areaL2=1~6:45
areaL2=2~0:50 areaL2=4~0:61 areaL2=8~0:44,6:-23 areaL2=:~0:27 areaL2=cistern~69:25
areaL2=ft~0:-30,6:38 areaL2=l~0:30 areaL2=m~0:41,6:-30 areaL2=only~69:41 areaL2=pump~0:20
areaL2=two~0:33 areaM=cistern~69:35 areaM=creek~6:31 areaM=drip~0:46,6:122
areaM=pump~0:33,6:32,69:69 areaM=roof~6:-51,69:95 areaM=spring~0:47,6:-34 areaM=tank~69:34
areaM=well~0:50 areaR0=,~0:52,6:19 areaR0=.~0:33,6:60,69:37 areaR0=drip~6:83 areaR0=in~0:41
areaR0=of~6:56 areaR0=on~6:10 areaR0=roof~69:49 areaR0=under~0:30 areaR1=.~0:-41,6:75
areaR1=0~0:51,6:-31 areaR1=3~0:-16,6:25 areaR1=5~0:58 areaR1=a~6:-25,69:44 areaR1=all~0:-34,6:36
areaR1=drip~0:27,6:26 areaR1=in~0:-33,6:36 areaR1=it~0:-25,6:36 areaR1=lines~0:26
areaR1=on~0:-22,6:32 areaR1=pump~0:54,69:-27 areaR2=,~6:19 areaR2=.~0:57 areaR2=1~0:26
areaR2=3~0:40 areaR2=4~0:54 areaR2=5~69:28 areaR2=8~0:35 areaR2=long~0:38,6:-35
areaR2=m~0:82,69:-51 areaR2=rows~0:-27,6:32 areaR2=water~6:28 areaR2=zones~0:-33,6:39
areaT=beds.area~0:36,6:-35 areaT=power.battery~0:48 areaT=power.panel~6:41 areaT=power.source~0:21
areaT=pump.height~0:-40,6:54 areaT=pump.placement~6:35 areaT=pump.works~69:59
areaT=store.fills~0:-40,69:35 areaT=store.volume~0:60 areaT=water.kind~0:57,6:58,69:24
areaT=water.level~0:42 areaT=water.yield~6:11 areaT=way.climb~6:48 areaT=way.length~0:81
areaT=way.pipe~0:50,6:70 areaa=~6:62 areaa=.~0:19,6:33,69:28 areaa=of_vegetables~6:30
areaa=with_drip~0:47,6:-37 areab=~0:35,6:32 areab=roof_is~69:31 bareC=(~0:-45,86:25
bareC=,~4:16,34:38,40:-27,41:41,75:45,76:30,86:-2,88:33 bareC=0~1:47,34:-23,49:27,51:41,75:34
bareC=1~0:46,2:-38,3:-46,31:75,75:35,87:42
bareC=2~0:18,29:-28,30:-46,35:24,51:27,76:46,86:-22,95:34
bareC=3~1:42,3:64,28:69,33:65,51:33,86:-18,87:-26,88:47 bareC=4~0:39,2:-33,41:66,49:27,75:47,86:-37
bareC=5~1:-51,42:37,51:25,59:20,75:36,76:20 bareC=6~34:32,91:40 bareC=7~0:-36,32:25
bareC=8~3:61,86:-92 bareC=9~5:41 bareC=:~27:38,51:55,87:40 bareC=acre~26:20 bareC=adults~0:72
bareC=after~0:22 bareC=agist~0:45 bareC=agritourism~0:32 bareC=all~0:26,29:33,51:34,86:-48
bareC=also~86:-54 bareC=am~0:37 bareC=array~0:-39 bareC=back~0:38 bareC=bar~0:-57,59:120
bareC=barn~0:-51,1:54,87:42 bareC=basins~34:37 bareC=bathrooms~0:-45,31:36 bareC=batteries~0:25
bareC=bed~0:55 bareC=between~0:40 bareC=blok~0:37 bareC=but~29:39 bareC=cabin~0:-47,86:71
bareC=cabins~0:37,29:-47,86:32 bareC=call~0:45 bareC=calves~0:-32,1:42 bareC=children~86:50
bareC=cistern~0:-39 bareC=come~32:32 bareC=comes~0:50 bareC=cottage~0:-27,86:30 bareC=couple~32:25
bareC=cows~0:-27,1:63,3:27,4:42,5:45 bareC=cut~58:31 bareC=dairy~2:30 bareC=day~0:-91,86:59
bareC=dear~94:34 bareC=deep~62:34,88:32 bareC=dn~94:35 bareC=do~86:-39 bareC=drinkers~91:43
bareC=drip~0:-45,25:55,26:37,27:55 bareC=dry~68:58 bareC=each~0:68,29:-26 bareC=eight~30:40
bareC=eighty~0:-40 bareC=eleven~0:-41 bareC=every~0:62 bareC=ewes~1:44 bareC=family~0:-44,86:70
bareC=farm~0:57 bareC=feet~0:-68,75:41 bareC=five~35:22 bareC=foot~0:-63,75:34 bareC=four~26:31
bareC=from~86:-49 bareC=ft~76:41 bareC=gal~0:26 bareC=girls~0:27 bareC=goats~0:-53,3:58,4:86
bareC=good~42:45 bareC=got~0:-42 bareC=gpm~0:-46 bareC=grid~39:18 bareC=group~0:24
bareC=guesthouse~0:-50,29:33,86:41 bareC=guests~0:32 bareC=h~33:44 bareC=half~31:-24
bareC=hallo~0:25 bareC=hav~0:46 bareC=hello~0:39 bareC=helo~0:45 bareC=hens~0:-43,3:37,4:39
bareC=here~86:37 bareC=hi~0:83,1:-69,86:26 bareC=horse~0:-32 bareC=horses~0:-41,1:26,27:43,87:55
bareC=hose~0:-19,33:47,86:24 bareC=hoses~0:-15,28:75,32:23 bareC=hour~67:35 bareC=house~31:31
bareC=household~0:-18,86:55 bareC=hp~0:41 bareC=hundred~86:70 bareC=if~0:45 bareC=it's~86:27
bareC=its~0:31 bareC=kids~0:50 bareC=l~86:24 bareC=last~0:34 bareC=latitude~0:-53,39:91,40:85
bareC=laundry~35:40 bareC=like~0:-43,31:67 bareC=line~0:18,75:44 bareC=live~0:-27,86:42
bareC=lodge~0:-25,29:22 bareC=long~41:31 bareC=longitude~41:53 bareC=m~62:60,75:45,95:44
bareC=machine~27:40 bareC=machines~35:48 bareC=me~1:44 bareC=milk~0:-23,1:25,2:70 bareC=min~0:34
bareC=mm~75:45,76:29 bareC=months~68:59 bareC=mother~86:39 bareC=mppt~42:45 bareC=n~0:-38
bareC=off~39:14,59:33 bareC=one~0:27,29:26,31:19,34:46,50:50,86:-44 bareC=only~33:59,86:28
bareC=or~0:52,30:-34 bareC=outside~0:-34 bareC=over~29:32 bareC=panel~0:32
bareC=panels~0:37,49:69,51:95,86:-33 bareC=people~0:-16,3:45,4:45,5:43,86:47 bareC=pipe~0:52,76:36
bareC=plot~0:50 bareC=plus~4:41 bareC=poly~0:-67 bareC=power~51:56 bareC=pressure~0:56,86:-31
bareC=psi~0:68 bareC=pump~29:41,49:-47,62:56,67:69,95:15 bareC=put~87:33 bareC=question~0:27
bareC=quick~0:19 bareC=right~0:-46 bareC=roof~86:30 bareC=run~0:42 bareC=runs~0:38
bareC=s~0:-30,41:31 bareC=series~51:33 bareC=sheep~3:70 bareC=shower~0:-18,31:67,34:47,35:40
bareC=showers~0:-60,1:-40,29:75,30:72,31:63,34:56,35:72 bareC=sink~0:-52,29:44,31:-33,34:15
bareC=sinks~0:-43,29:36,31:27,34:30,35:29 bareC=sir~0:31 bareC=sirs~94:35 bareC=sit~0:45
bareC=smal~0:83,29:-38 bareC=so~86:59 bareC=solar~0:34 bareC=sorry~86:46 bareC=spring~0:34
bareC=springline~0:23 bareC=sprinklers~0:-48,32:39,33:65 bareC=stable~0:-29 bareC=staff~0:-35,86:67
bareC=stands~0:-34 bareC=starts~67:44 bareC=static~102:82 bareC=stock~0:-40 bareC=stops~59:49
bareC=strings~49:41 bareC=submersible~95:39 bareC=suction~75:88,76:50 bareC=surface~0:-50
bareC=switch~0:37 bareC=tank~0:-14,86:-34,87:31 bareC=team~29:21 bareC=teenage~0:27 bareC=tent~0:57
bareC=that's~86:32 bareC=there~0:-61,19:40,29:41,30:34,31:72,34:29,76:39,86:-30,87:36
bareC=third~0:-27 bareC=thirty~1:33 bareC=three~0:23,31:-37 bareC=together~86:35
bareC=toilet~0:-36,34:80 bareC=toilets~0:-57,27:35,31:41,34:34,35:72 bareC=took~29:33
bareC=total~0:-44,32:71 bareC=troughs~0:-26,87:97 bareC=two~28:49,35:-32 bareC=up~86:34
bareC=us~4:16 bareC=use~27:54 bareC=uses~0:42 bareC=v~42:45 bareC=valve~0:-58,75:34
bareC=volt~86:24 bareC=w~0:-32,49:102,51:50 bareC=want~33:47 bareC=was~0:49 bareC=wash~34:29
bareC=washing~27:42,35:39 bareC=water~0:-30,5:25,86:-33,88:68 bareC=wc~0:58 bareC=we're~86:35
bareC=we've~1:56 bareC=well~0:29,86:-24,94:32,95:27 bareC=were~0:50 bareC=when~28:67
bareC=which~30:52 bareC=yard~0:-35,87:43 bareC=zones~26:58 bareL0=(~86:48
bareL0=,~0:-13,1:68,4:39,31:13,34:31,35:38,39:40,41:48,88:38,95:39
bareL0=.~3:26,5:21,19:59,29:35,32:-48,86:58,87:38 bareL0=0~1:47,3:-36,27:-34,49:32
bareL0=1~0:-23,4:-33,31:64 bareL0=2~4:40,27:53,31:33 bareL0=3~0:44,3:19
bareL0=4~3:70,29:31,35:-37,41:46 bareL0=5~0:45,86:-41 bareL0=6~0:29 bareL0=8~0:29,86:-32
bareL0=:~0:-71,1:42,29:27,31:33,51:48,86:23 bareL0=;~30:17 bareL0=?~0:-32,86:55 bareL0=a~1:36,87:52
bareL0=about~3:52 bareL0=adults~0:34 bareL0=all~86:-41 bareL0=also~3:43
bareL0=and~0:21,1:25,4:58,27:48,30:-42,42:40,75:22,86:-73 bareL0=are~68:29,86:69
bareL0=at~0:32,59:45,62:59,86:-28,88:51 bareL0=barn~87:36 bareL0=bathrooms~0:36
bareL0=beef~0:58,1:-36 bareL0=between~0:32 bareL0=bore~0:43 bareL0=cattle~0:33,1:-39
bareL0=climb~0:-40,91:41 bareL0=come~32:32 bareL0=cows~0:-41,5:59,86:-39 bareL0=cut~58:31,59:50
bareL0=dairy~2:49 bareL0=day~0:-57,86:33 bareL0=dry~68:33 bareL0=each~29:-24
bareL0=family~0:-31,29:-22,86:107 bareL0=feeds~87:40 bareL0=foot~0:-58,75:35 bareL0=for~0:27,1:33
bareL0=four~0:-69 bareL0=ft~0:63,29:-25 bareL0=garden~86:24 bareL0=goats~3:56,4:21 bareL0=gpm~0:-25
bareL0=grid~39:18 bareL0=has~0:-37,29:19,31:47 bareL0=have~0:-18,3:33,29:23 bareL0=hello~86:20
bareL0=hens~0:-49,3:41,4:45 bareL0=higher~0:-47 bareL0=horses~0:-18,87:24
bareL0=hose~0:-43,27:40,86:32 bareL0=hoses~0:-27,32:43 bareL0=house~29:52
bareL0=household~0:-26,86:90 bareL0=i~0:29,86:-33
bareL0=in~18:40,29:-39,34:39,42:43,51:72,58:31,86:-50 bareL0=is~0:65,76:47,86:-32
bareL0=it~0:44,58:23,86:22 bareL0=it's~86:23 bareL0=keep~2:37,4:39 bareL0=kids~0:40
bareL0=kitchen~0:68 bareL0=latitude~0:-53,39:91,40:85 bareL0=laundry~35:41 bareL0=live~86:38
bareL0=lodge~29:23 bareL0=long~41:31 bareL0=longitude~41:53 bareL0=m~91:41 bareL0=machines~35:50
bareL0=may~0:38 bareL0=maybe~0:36 bareL0=milk~0:-21,2:50 bareL0=milking~1:36 bareL0=months~68:34
bareL0=my~49:24 bareL0=need~0:28 bareL0=of~4:27,49:74,86:54 bareL0=off~39:16,59:36
bareL0=on~0:-45,32:42,58:45 bareL0=one~31:60,50:53 bareL0=only~33:58,86:25 bareL0=or~30:-34
bareL0=our~86:27 bareL0=out~59:48 bareL0=own~0:-36 bareL0=pairs~1:44 bareL0=panels~0:21
bareL0=people~34:-36,86:41 bareL0=pex~0:27,86:-30 bareL0=pipe~0:70 bareL0=plus~4:37
bareL0=poly~0:-63 bareL0=power~51:50 bareL0=psi~0:31 bareL0=pump~62:74 bareL0=question~0:75
bareL0=run~0:-32,28:63,33:27 bareL0=s~0:-32,41:31 bareL0=series~51:36 bareL0=seven~34:26
bareL0=sheep~3:41 bareL0=shower~0:-31,31:32,34:61 bareL0=showers~29:122,86:-48
bareL0=sink~29:37,31:-20,34:49,86:-34 bareL0=sinks~31:64 bareL0=so~0:-59,86:32 bareL0=solar~0:44
bareL0=sorry~86:46 bareL0=sprinklers~0:39 bareL0=stable~1:25 bareL0=static~102:90 bareL0=stock~5:46
bareL0=stops~0:-53,59:49 bareL0=strings~49:54 bareL0=summer~86:40 bareL0=tank~5:33,29:-26
bareL0=the~28:53,29:33 bareL0=there~0:-57,19:43,29:-1,87:12 bareL0=there's~29:58
bareL0=three~0:64,29:-45 bareL0=time~30:33 bareL0=to~0:84,4:-32 bareL0=toilet~34:48
bareL0=toilets~0:-39,31:8,34:89,35:45 bareL0=troughs~0:-39,1:32,87:62 bareL0=two~1:38,49:31
bareL0=us~0:-61,4:23 bareL0=v~29:42,31:-32,42:45 bareL0=valve~75:35 bareL0=w~0:-19,49:44
bareL0=want~33:53 bareL0=was~0:36 bareL0=washing~35:46 bareL0=water~0:-27,5:37,88:82
bareL0=we~0:-26,86:57 bareL0=we're~86:32 bareL0=well~0:-32,31:34,94:34,95:42 bareL0=when~0:32
bareL0=which~30:38 bareL0=with~29:29 bareL0=yard~1:38 bareL0=zones~26:38 bareL0=|~0:48,31:-34,86:63
bareL1=!~0:-35,86:23 bareL1=(~3:50,86:-39 bareL1=)~0:43
bareL1=,~1:-27,31:13,32:-31,34:-23,35:58,51:36,76:28,86:35,87:32
bareL1=.~3:-23,28:46,32:42,34:48,41:61,58:39,59:25,68:57,86:-35
bareL1=0~0:-33,4:-52,18:69,27:34,29:-17,32:34,87:32,88:56 bareL1=1~0:-23,59:29,86:55,95:37
bareL1=2~0:-32,18:37,95:39 bareL1=3~3:-43,28:37,41:50,88:56 bareL1=4~1:46,3:-33,41:21,49:46
bareL1=5~1:-28,42:37,59:17 bareL1=6~49:-24,62:40,87:-36 bareL1=8~29:-40,86:14 bareL1=9~3:-34,5:40
bareL1=:~1:-47,27:40,34:75 bareL1=;~0:42 bareL1=a~0:9,31:-46,75:42 bareL1=about~0:81,87:37
bareL1=above~86:30 bareL1=adults~0:34,29:47,34:-21 bareL1=ah~3:33 bareL1=and~0:-31,86:40,87:43
bareL1=are~5:40 bareL1=at~0:-30,3:-29,28:46,30:39,31:-10,34:42,87:51,95:46,102:48 bareL1=back~0:36
bareL1=bar~59:40,86:-20 bareL1=battery~0:-41 bareL1=bore~0:25 bareL1=both~0:-37
bareL1=but~29:55,33:65 bareL1=cabin~0:87,86:-31 bareL1=cattle~0:-47,1:65,87:22
bareL1=count~0:-28,86:30 bareL1=cow~1:35 bareL1=cows~3:48 bareL1=dear~94:35 bareL1=deep~0:-42,62:35
bareL1=down~0:-43,29:40 bareL1=drinkers~91:43 bareL1=drip~25:45 bareL1=drops~32:33
bareL1=each~86:43 bareL1=eleven~0:-29,87:30 bareL1=end~86:30 bareL1=family~29:30,86:-34
bareL1=feet~25:64,86:-51,87:32 bareL1=fifty~29:21 bareL1=foot~0:41 bareL1=for~42:43
bareL1=four~0:43,26:32 bareL1=from~0:27 bareL1=ft~29:43,86:25,87:-32 bareL1=gallon~5:29
bareL1=generator~86:34 bareL1=go~31:26 bareL1=ground~51:53 bareL1=guests~0:39 bareL1=half~0:32
bareL1=has~0:28 bareL1=have~0:35,29:-59 bareL1=head~0:54,86:-35 bareL1=hello~49:24 bareL1=hi~86:33
bareL1=higher~0:41 bareL1=home~0:-36 bareL1=hour~67:34 bareL1=house~3:40,31:17,86:-29
bareL1=how~86:32 bareL1=i~0:-19 bareL1=in~0:-52,3:-45,29:17,86:19 bareL1=inch~0:-54
bareL1=inside~34:36 bareL1=is~0:-50,34:32,86:62 bareL1=it~27:32 bareL1=kids~29:33
bareL1=kitchen~0:-58,86:41 bareL1=l~1:32 bareL1=latitude~41:53 bareL1=lodge~0:30
bareL1=m~0:-63,34:26,87:-46 bareL1=many~86:40 bareL1=meters~86:-41 bareL1=no~86:34
bareL1=north~0:22 bareL1=of~0:-56,75:39 bareL1=on~0:58,29:-33 bareL1=one~0:24 bareL1=our~86:43
bareL1=over~29:27 bareL1=panels~0:-18,31:44,51:26 bareL1=parallel~29:34,31:-27
bareL1=persons~29:22,34:50 bareL1=pex~30:35 bareL1=pipe~0:-40,49:32 bareL1=please~0:46
bareL1=plus~0:-32 bareL1=poly~0:57,86:-35 bareL1=power~0:42,86:-39 bareL1=pump~0:17
bareL1=same~0:-29,30:37 bareL1=shower~31:25 bareL1=showers~29:-29,30:59,31:46,34:72
bareL1=sink~0:-36,86:20 bareL1=sinks~0:-31,27:32,35:40 bareL1=sirs~94:35 bareL1=sorry~0:37
bareL1=sprinklers~32:50 bareL1=stable~5:34 bareL1=staff~86:38 bareL1=stock~1:44
bareL1=strings~0:-30 bareL1=submersible~0:29,86:-37
bareL1=the~0:-57,1:-28,19:37,32:29,50:50,58:44,87:37 bareL1=there~1:59,30:36 bareL1=three~30:46
bareL1=time~34:40 bareL1=together~3:42 bareL1=toilet~31:39 bareL1=toilets~27:49,31:44,34:-48
bareL1=top~1:38 bareL1=two~4:31,31:30,35:-41,86:57 bareL1=under~0:47 bareL1=up~86:-40
bareL1=use~30:37 bareL1=w~51:33 bareL1=we~29:30 bareL1=well~87:57 bareL1=when~31:-35,32:32,86:38
bareL1=with~3:29,34:38 bareL1=|~29:24,31:38,34:43,51:-37,87:35 bareL2=(~0:-43 bareL2=)~29:-36,35:42
bareL2=,~0:-36,1:39,25:-54,27:15,30:16,31:38,32:70,34:35,57:-35,76:37,87:40,95:-40,102:68
bareL2=.~0:-37,25:46,30:54,31:42,32:40,33:-63,35:51,39:-40,40:65,67:50,86:42,95:41
bareL2=0~3:41,19:31,27:-31,49:-40,87:59 bareL2=1~0:-38,1:35,2:-37,27:50,35:11,57:46,75:15
bareL2=2~0:14,1:-34,25:58,29:21,31:-22,32:44,34:66 bareL2=3~27:-66,31:37,86:10
bareL2=4~0:-41,1:-23,28:63,49:30,51:52,68:38 bareL2=5~18:-38,30:23,34:23,86:29 bareL2=6~18:74,29:54
bareL2=7~32:44 bareL2=8~87:29 bareL2=:~1:-42,29:21,51:39 bareL2=above~26:61,86:52
bareL2=across~0:35 bareL2=adults~34:34 bareL2=again~86:39 bareL2=ah~42:45 bareL2=air~0:-30
bareL2=already~0:34 bareL2=animals~0:-28,87:40 bareL2=away~0:65 bareL2=back~0:43
bareL2=bar~29:-49,58:35,86:40 bareL2=barn~0:-45,3:52 bareL2=basement~86:-25
bareL2=baths~0:41,86:-24 bareL2=beside~0:31 bareL2=booster~0:51 bareL2=borehole~0:-38,62:63
bareL2=buried~30:34 bareL2=but~0:-48 bareL2=buy~0:30 bareL2=by~0:-25,68:34 bareL2=cabin~0:-42,31:43
bareL2=comes~0:38 bareL2=copper~0:-27 bareL2=count~86:28 bareL2=counted~0:38,29:-33
bareL2=cut~0:-40 bareL2=dear~0:36 bareL2=depth~0:-38 bareL2=do~30:36 bareL2=don't~32:32
bareL2=down~0:19,28:42,29:-37 bareL2=drip~26:37 bareL2=drop~0:39 bareL2=each~86:32 bareL2=eco~0:51
bareL2=even~29:58 bareL2=family~86:-33 bareL2=feet~0:-29 bareL2=fill~86:41 bareL2=fills~0:-47,86:30
bareL2=five~0:-40,3:35,35:31 bareL2=fixtures~0:63 bareL2=float~0:-29,1:50 bareL2=four~86:26
bareL2=from~0:39 bareL2=ft~4:21,28:37,31:35 bareL2=full~0:23 bareL2=gal~34:-30,35:32,86:40
bareL2=galvanised~0:-35,31:25 bareL2=gauge~0:51 bareL2=generator~0:-37 bareL2=gives~86:33
bareL2=goats~4:46 bareL2=goes~0:64 bareL2=got~0:81,86:-72 bareL2=gpm~0:-51 bareL2=grid~86:-40,87:39
bareL2=grown~0:43 bareL2=half~0:20 bareL2=hanging~5:39 bareL2=hav~0:37 bareL2=head~0:-53,87:69
bareL2=hello~32:26 bareL2=helo~0:57 bareL2=hi~0:44,1:-44 bareL2=high~0:-46 bareL2=higher~0:-53
bareL2=holds~0:27 bareL2=home~86:20 bareL2=horses~3:66 bareL2=hose~0:-71,27:25,76:47
bareL2=hoses~3:42 bareL2=hour~0:-31,86:23 bareL2=house~86:80 bareL2=how~0:-36 bareL2=hundred~0:43
bareL2=i'd~86:52 bareL2=inch~31:60,86:-41 bareL2=inside~0:-27 bareL2=irrigate~0:47
bareL2=it's~0:45,31:-52 bareL2=just~0:42 bareL2=kids~0:24 bareL2=km~0:-27
bareL2=l~0:-62,3:26,27:23,58:39,67:46 bareL2=lawn~33:69 bareL2=left~0:36 bareL2=level~86:-36
bareL2=line~0:22,75:45 bareL2=liters~0:41 bareL2=litre~0:-44,86:44 bareL2=litres~0:-39,58:23,87:32
bareL2=live~0:-39 bareL2=lower~0:22 bareL2=lying~0:50 bareL2=m~0:-51,25:18,28:48,35:35
bareL2=mains~29:24 bareL2=makes~0:-16 bareL2=many~0:-51,58:24 bareL2=may~0:-34,86:41
bareL2=maybe~0:-46 bareL2=me~0:46 bareL2=meter~0:105,1:-28 bareL2=meters~0:55 bareL2=metre~0:34
bareL2=metres~86:44 bareL2=min~0:-43 bareL2=minute~0:40,29:-52 bareL2=mm~25:48 bareL2=moment~0:49
bareL2=morning~0:-31 bareL2=moved~0:29 bareL2=mppt~42:45 bareL2=need~0:18 bareL2=north~0:-55,50:58
bareL2=nothing~0:-34,5:40 bareL2=one~86:47 bareL2=opening~0:56 bareL2=out~86:31
bareL2=outlets~30:40 bareL2=over~0:48 bareL2=panels~0:-55,29:31,51:37 bareL2=pe~0:-58,30:53
bareL2=people~29:58,31:-30,34:39 bareL2=per~29:-32 bareL2=persons~29:-39,34:48 bareL2=pipe~19:32
bareL2=plastic~0:26 bareL2=poly~27:35,31:-26 bareL2=pre~0:26 bareL2=pressure~86:12
bareL2=promised~0:32 bareL2=psi~31:5
bareL2=pump~1:-48,33:56,35:45,51:-44,76:58,86:-38,87:-53,95:11,102:52 bareL2=push~0:-38,29:39
bareL2=pvc~0:-28,27:56 bareL2=quarter~0:-40,26:23 bareL2=rain~34:29,68:34 bareL2=read~0:42
bareL2=reference~0:37 bareL2=roof~68:39 bareL2=runs~86:37 bareL2=says~0:-42 bareL2=season~86:30
bareL2=series~0:-43,86:57 bareL2=set~0:33 bareL2=should~86:-26 bareL2=shower~4:57,86:53
bareL2=showers~0:-14,29:-71,30:28,31:3,35:79 bareL2=sinks~0:-18,86:40 bareL2=sir~0:45
bareL2=six~30:27 bareL2=smal~0:57 bareL2=small~0:-28 bareL2=so~0:7 bareL2=speed~0:63,86:-20
bareL2=springline~0:38 bareL2=sprinklers~0:-37,33:107
bareL2=starts~31:-39,35:-36,58:23,59:39,67:34,86:22 bareL2=stop~86:-27 bareL2=stops~35:-34,58:24
bareL2=sub~0:34 bareL2=submersible~95:41 bareL2=suction~75:64,76:38 bareL2=sun~5:38,86:-27
bareL2=switch~86:18 bareL2=switches~0:-28,59:38 bareL2=tank~0:-31,2:39,3:-30,4:57,34:27,86:45
bareL2=team~0:51,86:-48 bareL2=then~1:36 bareL2=there~34:45 bareL2=think~0:-26 bareL2=three~30:-49
bareL2=times~0:-27,67:35 bareL2=toilet~0:35 bareL2=toilets~0:34,27:22 bareL2=top~5:33
bareL2=trough~87:35 bareL2=troughs~3:29 bareL2=twenty~0:-35 bareL2=up~0:43,35:45 bareL2=uses~0:-38
bareL2=usually~31:51 bareL2=v~0:68,34:36,86:-29 bareL2=vessel~86:28 bareL2=volt~0:-57,86:27
bareL2=volts~87:47 bareL2=volume~0:40 bareL2=w~0:-66,1:24,3:35,29:26 bareL2=want~0:-45,1:47
bareL2=water~0:65,28:48,31:-48,62:55,76:63 bareL2=way~29:42 bareL2=we'd~0:-31 bareL2=we're~3:31
bareL2=well~95:15 bareL2=when~0:111,31:-42,35:-36 bareL2=where~0:37 bareL2=which~0:-41,30:33
bareL2=who~0:-24,34:37 bareL2=will~0:-40 bareL2=would~0:-29,4:38,29:40 bareL2=write~0:32,3:-34
bareL2=x~29:20,34:-30 bareL2=yard~0:-29,87:36 bareL2=years~0:41 bareL2=yes~0:19 bareL2=yield~86:45
bareL2=you~30:39 bareL2=yurt~0:-59 bareL2=|~0:35,3:41,27:51,34:41
bareM=cistern~1:-55,3:-58,31:44,68:60,86:15 bareM=creek~3:29,87:21
bareM=drip~0:82,3:42,16:45,18:144,25:108,26:102,29:-25,31:-43,34:-37,49:-33
bareM=pump~1:33,2:30,5:56,18:61,27:45,29:44,31:43,32:1,33:51,41:-35,57:42,67:41,76:60,86:33,87:34,95:45
bareM=roof~68:109 bareM=spring~0:50,3:57,5:35,19:69,28:33,31:21,32:-29,49:41,86:35
bareM=tank~1:54,4:18,18:-81,25:32,29:62,32:-28,34:57,35:28,39:-38,57:11,67:14,68:46,86:15
bareM=well~0:18,1:28,4:49,31:33,58:27,62:-37,95:41 bareR0=(~0:-40,86:42 bareR0=)~0:105
bareR0=,~0:-46,3:11,27:23,28:-28,29:77,30:-34,31:34,34:71,75:40
bareR0=.~0:-78,3:32,5:-46,18:19,29:9,30:-38,31:19,35:29,39:32,41:25,49:-33,59:53,86:22,95:54
bareR0=0~0:48,32:24 bareR0=1~31:16,34:67,35:-29,86:17 bareR0=2~0:79,35:45,86:-17
bareR0=3~0:45,29:35,91:42 bareR0=4~86:43,88:49 bareR0=5~0:47 bareR0=6~0:45,3:46 bareR0=7~94:35
bareR0=:~0:36,1:24 bareR0=?~0:27 bareR0=a~26:54,29:43,42:43 bareR0=about~3:42
bareR0=adults~0:35,86:49 bareR0=all~87:34 bareR0=an~67:34
bareR0=and~3:21,25:54,29:30,30:37,31:30,58:28 bareR0=are~0:47
bareR0=at~0:-24,26:124,28:18,30:62,33:72 bareR0=automatic~87:33 bareR0=basin~31:72
bareR0=basins~29:-29,31:186,34:-25,86:-30 bareR0=bathroom~0:103,29:-41
bareR0=bathrooms~29:73,86:-44 bareR0=baths~0:32 bareR0=beef~1:49 bareR0=bends~0:-40,75:79
bareR0=beside~0:-21 bareR0=bibs~27:41 bareR0=borehole~86:27 bareR0=boys~0:54 bareR0=break~19:61
bareR0=bulls~1:59 bareR0=cabins~29:59 bareR0=calf~0:-24,5:74 bareR0=calves~5:73
bareR0=campers~0:-28,86:60 bareR0=cattle~1:104 bareR0=chickens~0:-46,4:143,86:-42
bareR0=cow~0:-34,5:61 bareR0=cows~0:-39,1:93,2:157,3:-36,5:70,86:-42 bareR0=cut~58:31
bareR0=dairy~2:53 bareR0=drink~1:45 bareR0=drinkers~0:-48,87:152 bareR0=drip~25:41
bareR0=dripper~0:-27,16:51 bareR0=drippers~0:34 bareR0=dry~0:-43,1:112,2:-37,68:72
bareR0=each~29:40 bareR0=elbows~75:62 bareR0=ewes~3:135,86:-31 bareR0=five~0:31,86:-30
bareR0=float~0:-18,87:94 bareR0=floats~0:-32,87:60 bareR0=flush~34:32 bareR0=foot~0:-43,76:99
bareR0=for~0:-44,27:74,87:39 bareR0=garden~27:40 bareR0=go~0:24
bareR0=goats~0:-57,1:-22,3:230,86:-38 bareR0=going~30:79 bareR0=golf~0:26 bareR0=guest~0:38
bareR0=guests~86:107 bareR0=have~2:25 bareR0=head~1:88 bareR0=heifers~1:106
bareR0=hens~0:-49,1:-28,3:-31,4:243,86:-32 bareR0=here~86:44 bareR0=horses~0:-27,1:230,86:-28
bareR0=hose~0:-67,27:203,28:97,29:-24,31:-24,35:-33 bareR0=hoses~0:-78,27:185,28:104
bareR0=hour~0:-27,67:94 bareR0=house~0:-42,86:23 bareR0=households~0:30 bareR0=houses~0:60
bareR0=identical~0:-31,57:103 bareR0=in~0:-93,2:34,3:45,49:58,68:40,86:78 bareR0=is~0:51
bareR0=it~0:50 bareR0=joined~0:43 bareR0=kids~0:64 bareR0=kitchen~0:41 bareR0=laying~4:30
bareR0=line~0:43 bareR0=live~86:47 bareR0=machine~35:87 bareR0=machines~29:35,35:74
bareR0=may~30:43 bareR0=me~86:48 bareR0=milk~0:-22,2:142 bareR0=milking~2:31 bareR0=months~68:73
bareR0=n~0:-62,39:111 bareR0=now~0:-70,29:56,86:23 bareR0=o'clock~0:51 bareR0=of~30:36,51:55,86:30
bareR0=once~0:-51,28:38,30:64 bareR0=one~86:54 bareR0=ones~1:38 bareR0=open~30:76 bareR0=or~30:40
bareR0=out~42:45,58:31 bareR0=outside~27:61 bareR0=paddocks~87:44 bareR0=pairs~0:-54,5:123
bareR0=panels~0:45,49:64,86:-24 bareR0=parallel~51:50 bareR0=people~29:-37,31:-29,86:210
bareR0=per~16:51,29:-41,67:58 bareR0=person~0:-35,86:125 bareR0=persons~0:-20,86:181
bareR0=phase~0:50 bareR0=pieces~0:-54,32:26 bareR0=pigs~0:49 bareR0=poly~0:32
bareR0=pressure~0:-47,19:108 bareR0=pumps~57:95 bareR0=pupils~0:-33,86:83 bareR0=rooms~29:30
bareR0=run~28:62,30:49 bareR0=series~49:46,86:-31 bareR0=sheep~0:-28,3:152,86:-37
bareR0=shower~0:-11,29:231,30:53,31:-22,86:-37 bareR0=showers~0:-32,29:279,30:145,31:-22,86:-1
bareR0=side~57:55 bareR0=since~0:-34 bareR0=sink~0:-49,27:-27,31:273,34:-85
bareR0=sinks~0:-24,31:221,34:-16,86:-33 bareR0=so~0:47 bareR0=sorry~0:29 bareR0=south~40:58
bareR0=spring~0:31 bareR0=sprinkler~32:28 bareR0=sprinklers~0:-35,32:184,33:75 bareR0=staff~0:30
bareR0=starts~0:-26,67:84 bareR0=steers~0:-39,1:87 bareR0=stock~0:-44,1:41
bareR0=string~0:-43,51:55 bareR0=strings~0:-32,51:85 bareR0=tanks~19:59 bareR0=tap~0:-26,27:48
bareR0=teachers~0:-36,86:67 bareR0=tents~29:35 bareR0=th~50:58 bareR0=the~30:25,31:28
bareR0=them~0:-37,1:35,3:26 bareR0=then~58:24 bareR0=there~86:51 bareR0=three~51:23
bareR0=time~26:39 bareR0=times~0:56 bareR0=together~0:-30,28:47,30:60 bareR0=toilet~0:-43,34:172
bareR0=toilets~0:-78,34:253,86:-39 bareR0=trees~0:50 bareR0=trough~87:122
bareR0=troughs~0:-59,1:-36,87:200 bareR0=ts~0:50 bareR0=two~0:45,51:-54,86:44
bareR0=us~0:-16,86:159 bareR0=valve~0:-55,76:99 bareR0=wash~0:-38,31:76
bareR0=washer~0:-27,31:-22,35:79 bareR0=washers~35:75 bareR0=washing~0:-14,31:-41,35:144
bareR0=waterers~0:-34,87:57 bareR0=wc~0:-33,34:84 bareR0=wcs~34:60 bareR0=we~4:59
bareR0=well~0:49,31:-29 bareR0=what~0:-42 bareR0=with~0:-28,1:-44,5:93,87:89 bareR0=x~0:33
bareR0=young~1:47 bareR0=zones~0:-80,18:140,25:86,86:-37 bareR0=|~35:57,86:59 bareR1=(~29:28
bareR1=)~31:46 bareR1=,~29:35,57:68,86:30,87:52
bareR1=.~0:-59,1:43,2:-51,4:37,5:43,26:26,30:44,34:34,58:53,87:26
bareR1=0~0:-19,2:37,31:-41,49:54,86:52,94:31 bareR1=1~0:-36,2:31,27:-63,31:37,49:28,62:46
bareR1=2~1:28,31:-46,32:21,35:29,94:32 bareR1=3~18:65,29:-48,58:50,68:43 bareR1=4~34:43,86:-22
bareR1=5~0:-44,3:44,5:44,32:31 bareR1=6~0:36,40:38 bareR1=7~0:32,86:-41 bareR1=9~2:54
bareR1=:~35:35 bareR1=?~0:-45,29:63,86:31 bareR1=a~0:40,1:34,31:53 bareR1=about~86:38
bareR1=all~0:31 bareR1=and~5:31 bareR1=are~0:1,31:25 bareR1=at~0:-38,4:-33,5:40,25:34,86:41
bareR1=automatic~0:-30,1:39 bareR1=bar~0:-26,58:33 bareR1=basin~34:41
bareR1=basins~0:-24,29:43,31:-43,34:43 bareR1=bathrooms~0:-31,86:44 bareR1=be~0:-34,86:30
bareR1=before~30:41 bareR1=bore~3:47 bareR1=both~27:35 bareR1=bulls~5:67 bareR1=but~31:46
bareR1=chickens~0:-37,86:34 bareR1=children~0:46,86:-38 bareR1=cistern~3:-34,68:37
bareR1=cows~0:-49,3:57 bareR1=day~0:39 bareR1=do~0:-34,86:55 bareR1=dog~0:-18,86:21
bareR1=drinkers~1:37 bareR1=drip~0:-28,16:52 bareR1=dry~2:72 bareR1=each~0:-36,29:32,87:17
bareR1=ewes~0:-39 bareR1=fine~29:55 bareR1=float~87:8 bareR1=floats~87:32
bareR1=foot~0:-45,5:55,75:63 bareR1=ft~0:43 bareR1=full~86:39 bareR1=gives~0:47
bareR1=goats~3:-59,86:32 bareR1=going~30:42 bareR1=guest~86:39 bareR1=guests~0:51,86:-25
bareR1=h~0:32 bareR1=had~4:36 bareR1=have~0:-58 bareR1=heifers~1:-39 bareR1=hens~0:-36,1:59,3:33
bareR1=here~91:43 bareR1=horses~0:77,1:-88,4:40 bareR1=hose~0:-32,30:59 bareR1=hoses~34:27
bareR1=hours~0:29 bareR1=house~0:35,28:46 bareR1=i~25:26 bareR1=in~49:44,57:40,86:-37
bareR1=is~0:-61,102:66 bareR1=it~0:7,29:50 bareR1=its~29:26 bareR1=kids~3:37,86:-34
bareR1=kitchen~30:35,31:-60 bareR1=level~0:-38 bareR1=litres~86:33 bareR1=live~91:43
bareR1=loo~29:33 bareR1=lower~0:34 bareR1=m~0:17,32:27 bareR1=machine~34:33 bareR1=mains~27:35
bareR1=mm~86:27 bareR1=my~0:-38 bareR1=no~1:-36,28:35,87:63 bareR1=not~32:41 bareR1=of~0:39,5:31
bareR1=on~0:-17,1:23,16:50 bareR1=once~30:18 bareR1=open~32:26 bareR1=other~0:-33,31:34
bareR1=outhouse~29:28,31:62,34:-42 bareR1=own~0:-21,29:30 bareR1=panels~49:34 bareR1=parallel~57:57
bareR1=pasture~0:-40,1:29 bareR1=pipe~5:39 bareR1=place~0:36 bareR1=plot~0:35 bareR1=power~31:22
bareR1=pressure~0:51 bareR1=pump~0:-71,28:75,31:-35,33:45,86:33 bareR1=rain~0:61,3:-34
bareR1=run~25:36,30:50 bareR1=same~29:-41,33:19 bareR1=sheep~1:30 bareR1=should~30:35
bareR1=shower~29:-26,31:76,86:44 bareR1=showers~29:-67,34:46,35:40,86:50 bareR1=side~0:-39,57:55
bareR1=sink~29:58,31:-134,34:40,86:28 bareR1=sinks~0:32,29:19,31:-65,34:62
bareR1=spring~0:-86,86:18 bareR1=sprinklers~27:60 bareR1=staff~0:42 bareR1=tent~29:23
bareR1=the~0:-67,4:24,16:44 bareR1=they~0:-41,32:20 bareR1=three~0:73 bareR1=time~26:28,30:28,33:49
bareR1=toddler~0:47,86:-30 bareR1=together~27:15,30:34 bareR1=toilet~29:32,31:38,34:-58
bareR1=toilets~29:38,31:47,34:-75 bareR1=trough~0:-55,87:24 bareR1=troughs~1:78,87:-49
bareR1=two~25:47 bareR1=valve~75:70 bareR1=w~0:11,49:52 bareR1=want~0:-37
bareR1=washer~29:-38,31:53 bareR1=washing~34:32 bareR1=water~4:43 bareR1=we~31:26
bareR1=well~0:-56,3:27 bareR1=what~0:22 bareR1=when~0:56,86:-33 bareR1=with~29:35
bareR1=would~86:30 bareR1=yields~0:53 bareR1=|~31:36 bareR2=(~31:25,34:-31
bareR2=)~0:78,27:43,31:-29
bareR2=,~1:-43,2:47,4:-34,27:40,30:37,31:-69,34:-45,49:29,51:50,62:46,67:32,86:26,87:-34
bareR2=.~1:8,5:61,16:39,19:35,28:90,33:37,35:35,49:-38,58:48,86:24 bareR2=0~41:42,86:33,87:24
bareR2=1~0:-19,1:-53,3:64,32:58,34:30,51:67 bareR2=2~0:31,1:-35,29:-13,57:44,86:70
bareR2=3~0:49,31:39,32:37 bareR2=4~1:-46,29:32,34:-7,49:31,57:55,75:39,87:25
bareR2=5~5:39,29:-21,33:47,34:-66,86:16 bareR2=6~0:-16,5:31,86:38 bareR2=9~19:40
bareR2=:~0:54,29:-32,31:68,34:-37,87:-30 bareR2=;~87:73 bareR2=?~1:33,68:44 bareR2=above~0:-42
bareR2=all~86:-37 bareR2=already~91:41 bareR2=as~0:33 bareR2=bar~0:-51,58:46 bareR2=barn~1:34
bareR2=basin~29:32 bareR2=below~3:27 bareR2=bore~0:40 bareR2=borehole~1:33
bareR2=bucket~0:60,86:-32 bareR2=but~0:18 bareR2=by~0:-20 bareR2=comes~0:59 bareR2=day~0:-79,86:112
bareR2=dishwasher~34:49 bareR2=do~0:-27 bareR2=drink~0:-49,1:59 bareR2=each~3:29,49:23,57:36
bareR2=evening~0:24 bareR2=existing~5:31 bareR2=family~0:-38,31:28 bareR2=five~31:56
bareR2=float~0:-41 bareR2=four~0:-54 bareR2=from~0:21,86:-54 bareR2=ft~0:16,4:32,86:-19
bareR2=garden~0:17 bareR2=gives~0:-43,87:34 bareR2=goats~0:-41,2:37,86:46 bareR2=gpm~0:-39
bareR2=h~32:31 bareR2=heifers~0:-41,2:33 bareR2=hens~0:-76,3:36,86:49 bareR2=horses~5:35
bareR2=hose~0:-65 bareR2=hoses~0:-35 bareR2=house~86:-41 bareR2=how~86:33 bareR2=if~0:-44
bareR2=inch~0:26 bareR2=kind~0:59 bareR2=kitchen~0:-24,29:53 bareR2=last~0:-47
bareR2=line~0:-60,16:52,26:41 bareR2=litre~0:23,86:-31 bareR2=litres~86:77 bareR2=low~34:38
bareR2=m~3:10,41:46,86:42,94:33 bareR2=machine~34:56 bareR2=machines~34:29
bareR2=mains~0:50,31:26,86:-26 bareR2=mm~0:-47 bareR2=mppt~49:34 bareR2=no~31:28 bareR2=none~1:48
bareR2=off~1:32 bareR2=one~29:10,49:44 bareR2=ones~0:-30,2:45 bareR2=only~30:59 bareR2=other~0:40
bareR2=outside~29:-26,34:30 bareR2=over~0:29 bareR2=panels~27:37 bareR2=parallel~51:72
bareR2=people~29:73,86:-30 bareR2=per~86:32 bareR2=plus~1:39 bareR2=pond~1:23
bareR2=power~0:-37,31:-33,34:68 bareR2=pressure~0:-29,18:54,35:46 bareR2=pump~0:32,4:-41,31:-30
bareR2=rise~1:27 bareR2=run~0:18,86:-61 bareR2=same~0:-51,30:56,32:67 bareR2=see~29:30
bareR2=series~0:-48,49:107 bareR2=setup~0:21 bareR2=seven~0:-25,31:27 bareR2=shower~58:23
bareR2=showers~31:59 bareR2=since~0:78 bareR2=sink~29:20 bareR2=sinks~29:35,86:36 bareR2=six~0:39
bareR2=so~0:41,86:-22 bareR2=solar~0:33 bareR2=string~49:46 bareR2=strings~0:25
bareR2=tank~1:-28,34:-32,86:-38,95:39 bareR2=tap~29:28 bareR2=then~0:48 bareR2=there~0:-9
bareR2=there's~0:-48 bareR2=they~0:-40 bareR2=think~0:42 bareR2=three~0:58,1:54 bareR2=tilted~49:44
bareR2=time~0:-48,25:102,32:35 bareR2=toilet~0:20,27:28 bareR2=toilets~0:53,30:57,86:67
bareR2=total~0:24 bareR2=trough~0:-37,3:54 bareR2=two~49:-35 bareR2=under~0:-31 bareR2=up~0:28
bareR2=us~31:29 bareR2=use~0:32 bareR2=used~0:53 bareR2=valves~0:28 bareR2=w~49:48,51:33,86:-27
bareR2=wants~33:43 bareR2=was~4:36,86:-34 bareR2=washing~0:-39,34:42
bareR2=water~2:36,3:25,29:-40,94:33 bareR2=week~0:-23,86:43 bareR2=well~1:34,5:57
bareR2=what~0:71,29:-26,86:-30 bareR2=when~27:73 bareR2=which~0:-62,34:35 bareR2=will~34:49
bareR2=without~0:-38 bareR2=would~31:28 bareR2=|~0:3,4:35,29:49,30:20,86:-58
bareT=beds.area~0:-40,3:33,4:44,18:115,25:117,26:105,29:-34,87:-43 bareT=power.amps~51:22
bareT=power.battery~31:-11,86:29 bareT=power.cable~0:41,49:67,51:17,86:-44
bareT=power.capacity~31:22,86:35 bareT=power.controller~0:-54,42:42,51:30
bareT=power.facing~49:82,51:30 bareT=power.limit~42:43,49:23,51:36
bareT=power.open_voltage~3:-64,49:39,51:27 bareT=power.panel~49:143,51:101
bareT=power.series~49:-180,51:104,86:30,87:30 bareT=power.shade~49:15
bareT=power.source~0:23,1:19,5:32,32:14,40:55,49:53,51:56,76:-39,86:-11,87:30
bareT=power.strings~0:76,1:26,49:87,51:-99 bareT=power.tilt~40:36,42:42,49:29,51:34
bareT=power.voltage~3:-38,27:52,31:96,39:55,51:47
bareT=pump.control~1:-44,3:-35,27:60,35:63,57:112,67:59 bareT=pump.count~0:48,67:51
bareT=pump.cut_in~0:46,3:-29,31:-45,59:100,67:38 bareT=pump.cut_out~3:-30,58:42,59:-42,67:37,86:39
bareT=pump.dry_lift~0:31 bareT=pump.dry_run~86:45
bareT=pump.height~1:9,2:35,4:-35,49:56,51:27,87:46,88:52,95:47,102:69 bareT=pump.most_flow~0:-73
bareT=pump.placement~0:25,1:30,2:43,3:-26,4:-28,5:36,18:-53,25:31,32:17,33:41,35:38,51:39,75:35,76:50,86:-26,88:43,95:26
bareT=pump.present~0:-39,19:56,27:8,28:26,31:41,34:47,35:27,87:21
bareT=pump.set~0:41,28:77,75:38,86:-23 bareT=pump.starts~57:41 bareT=pump.works~0:-33,86:54,94:33
bareT=store.days~0:-47,1:47,3:19 bareT=store.fills~34:18,68:31 bareT=store.hours~0:53,86:-48
bareT=store.volume~1:-34,3:-43,30:43,31:24,33:41,35:25,57:30,67:41,68:46,86:27
bareT=tank.level~0:36,18:-48,25:44,30:12,49:45
bareT=tank.volume~0:-46,3:24,18:-49,40:53,49:47,86:44
bareT=water.kind~1:71,2:47,3:92,4:44,5:25,18:43,27:66,29:12,30:48,35:58,49:55,86:46,87:50
bareT=water.level~1:-42,3:60,4:36,34:29,58:-24,75:65,76:95 bareT=water.temperature~19:48,75:32
bareT=water.yield~1:25,2:78,3:15,18:77,19:43,27:48,28:-51,30:16,31:14,32:-28,34:65,86:46,87:36
bareT=way.climb~1:36,2:33,4:47,5:16,19:42,28:58,29:40,32:23,33:82,34:40,49:-36,62:52,87:26
bareT=way.length~0:29,1:43,2:34,3:45,4:56,5:28,25:47,26:46,27:28,30:36,31:37,32:31,33:56,57:24,58:-23,76:-32,87:76
bareT=way.pipe~1:27,2:46,5:68,19:34,25:71,26:47,28:46,30:35,32:48,34:-37,58:-30,86:16,87:31
bareT=well.bore~95:44 bareT=well.depth~4:54,28:53,32:-33,34:40,62:83,86:75,88:30
bareT=well.static~0:28,32:31 bareT=well.tested~34:-36 barea=~0:-32,34:35,39:48 barea=,_cut~58:32
barea=,_each~0:30 barea=,_sinks~29:24,31:-43,34:38 barea=,_toilets~29:60,31:32,34:-82
barea=,_washing~29:27,35:-49 barea=.~59:14,95:29 barea=adults_.~0:-37,86:68
barea=adults_and~0:68,86:-50 barea=at_a~26:39 barea=automatic_drinkers~87:25
barea=basins_,~0:40,31:66,34:-42 barea=basins_.~31:49 barea=bathroom_with~0:18
barea=bathrooms_with~29:58 barea=beef_cows~1:41 barea=bends_,~75:55 barea=boys_.~0:43
barea=break_pressure~19:61 barea=cattle_,~1:35 barea=chickens_.~4:49 barea=cow_calf~0:-24,5:62
barea=cows_and~2:26 barea=cows_in~2:38 barea=cows_with~5:86 barea=dairy_cows~2:53
barea=drinkers_with~87:24 barea=dry_cows~0:43 barea=dry_months~68:73 barea=dry_ones~1:38
barea=elbows_.~75:35 barea=ewes_,~3:35 barea=ewes_.~0:-26,3:47 barea=float_valve~87:38
barea=flush_toilets~34:32 barea=foot_valve~0:-38,76:101 barea=goats_,~3:49 barea=goats_.~3:48
barea=goats_and~3:61 barea=guests_.~86:28 barea=guests_at~86:40 barea=head_of~1:49
barea=heifers_,~1:49 barea=hens_,~0:-23,4:48 barea=hens_.~4:34 barea=hens_and~4:65
barea=horses_,~0:-25,1:66 barea=horses_.~0:44,1:25 barea=horses_and~1:73 barea=hose_,~27:85
barea=hose_.~0:-22,27:71 barea=hose_bibs~27:41 barea=hose_for~27:42 barea=hoses_,~27:51
barea=hoses_at~28:40 barea=households_,~0:27 barea=houses_,~0:40 barea=identical_pumps~57:39
barea=in_series~49:22 barea=in_the~0:-45,86:79 barea=kitchen_sink~0:31,31:29,34:-22
barea=laying_hens~4:30 barea=milking_cows~2:43 barea=n_.~0:-35,39:79 barea=of_the~0:47
barea=of_them~3:28 barea=of_us~0:-9,86:159 barea=panels_,~0:42 barea=panels_of~49:64
barea=people_,~0:-29,86:96 barea=people_.~86:92 barea=people_and~86:40 barea=people_in~0:-32,86:41
barea=people_|~0:-34,86:38 barea=person_,~0:-25,86:38 barea=persons_,~0:-27,86:72
barea=persons_.~86:74 barea=phase_.~0:35 barea=rooms_,~29:32 barea=sheep_.~3:61
barea=sheep_and~3:50 barea=shower_,~0:-58,29:148,34:-35 barea=shower_.~0:-25,29:86
barea=shower_1~29:113,31:-40 barea=shower_and~0:-58,29:31,30:61 barea=shower_per~0:49
barea=showers_(~29:56 barea=showers_,~0:-42,29:195,86:-36 barea=showers_.~0:-61,29:169,86:-44
barea=showers_and~29:73 barea=showers_are~0:38 barea=showers_at~0:-35,30:48 barea=showers_run~30:49
barea=sink_,~0:-23,31:97 barea=sink_.~0:-28,31:82 barea=sink_1~31:38 barea=sink_and~31:68
barea=sinks_,~29:-43,31:111,34:-44 barea=sinks_.~31:72 barea=sinks_and~31:49 barea=south_.~40:58
barea=sprinklers_at~33:25 barea=starts_an~67:42 barea=starts_per~67:46 barea=strings_of~0:-31,51:52
barea=toilet_,~0:-24,29:-37,31:-30,34:118 barea=toilet_.~34:81
barea=toilets_,~0:-23,29:-32,31:-26,34:144 barea=toilets_.~34:104 barea=toilets_and~34:47
barea=troughs_,~87:40 barea=troughs_.~87:41 barea=wash_basins~31:58 barea=washer_.~35:58
barea=washing_machine~34:-31,35:119 barea=washing_machines~35:106 barea=wc_,~34:55
barea=wcs_,~34:36 barea=with_the~86:61 barea=zones_,~18:26 barea=zones_.~0:-38,18:71
bareb=~0:67,16:51 bareb=,_and~0:63 bareb=,_in~87:35 bareb=,_longitude~41:53 bareb=,_plus~1:33
bareb=,_so~86:52 bareb=,_toilets~31:-37,34:89 bareb=,_with~0:-41 bareb=._also~1:32
bareb=._it's~0:84 bareb=._latitude~40:53 bareb=._question~0:38 bareb=._showers~29:79,34:-53
bareb=._we're~86:32 bareb=._|~0:50 bareb=1_shower~35:38 bareb=1_sink~0:-40,31:39
bareb=2_showers~31:35 bareb=?_|~30:35 bareb=bar_.~0:-22 bareb=between_the~0:23 bareb=cows_,~4:46
bareb=cut_in~58:32 bareb=drip_,~0:44 bareb=each_,~0:-38 bareb=family_of~0:-31,29:-22,86:108
bareb=ft_,~0:-45 bareb=ft_.~0:48 bareb=hens_and~0:-28,3:45 bareb=horses_.~87:25 bareb=hose_,~86:40
bareb=household_of~0:-26,86:53 bareb=i_have~32:27 bareb=just_the~0:-35,29:28 bareb=machine_.~86:32
bareb=of_which~30:41 bareb=pairs_and~1:36 bareb=panels_:~0:46 bareb=people_,~29:64,86:-34
bareb=people_:~29:-57,86:125 bareb=pipe_,~0:34 bareb=pump_.~31:31 bareb=pump_at~0:-27,62:33
bareb=sheep_:~3:66 bareb=shower_,~27:45,34:72 bareb=shower_and~0:-17,31:36
bareb=showers_,~27:41,29:-88,34:54,35:56 bareb=showers_:~29:121,34:-43 bareb=showers_and~34:45
bareb=sink_,~31:-37 bareb=sink_.~0:38,86:-23 bareb=sinks_,~31:-25,34:32 bareb=sinks_:~31:79,34:-29
bareb=strings_of~49:44 bareb=tank_.~0:-33,5:34,34:32 bareb=there_are~0:25,25:49,29:45,86:-40
bareb=there_is~0:-58 bareb=to_water~5:34 bareb=toilet_,~31:49,34:-38 bareb=toilet_and~0:39
bareb=toilets_,~31:70,34:-69,35:31 bareb=toilets_and~31:28 bareb=troughs_:~87:53 bareb=up_to~86:24
bareb=valve_and~75:36 bareb=w_,~49:53 bareb=washing_machine~35:37 bareb=water_at~88:50
bareb=we_are~0:-43,86:103 bareb=we_have~0:-30,29:29 bareb=we_keep~4:33 bareb=we_milk~2:27
chargeC=,~44:43 chargeC=1~0:22 chargeC=2~0:20 chargeC=4~44:37 chargeC=:~44:18
chargeC=battery~0:23,44:33 chargeC=v~0:20 chargeL0=,~44:29 chargeL0=2~0:29 chargeL0=a~44:25
chargeL0=and~0:37 chargeL0=battery~44:32 chargeL0=v~0:26 chargeL1=1~0:28 chargeL1=battery~0:30
chargeL1=is~0:36 chargeM=pump~44:69 chargeR0=.~44:64 chargeR0=battery~44:39
chargeT=power.battery~44:82 chargeT=power.panel~44:57 chargeT=power.source~44:61
chargeT=power.voltage~44:80 chargeT=store.volume~44:36 chargeT=water.kind~44:40
chargeT=way.length~44:34 chargea=.~0:32 currentC=,~42:41 currentC=0~42:37 currentC=controller~42:42
currentC=mppt~42:31 currentL0=,~42:28 currentL1=0~42:41 currentL2=,~42:40 currentL2=.~0:60
currentL2=0~42:24 currentM=pump~0:45,42:44 currentR0=.~42:43 currentR2=.~0:55
currentT=power.battery~42:66 currentT=power.cable~42:29 currentT=power.capacity~42:66
currentT=power.controller~42:70 currentT=power.facing~42:23 currentT=power.limit~42:31
currentT=power.panel~42:46 currentT=power.series~42:36 currentT=power.source~42:53
currentT=power.voltage~42:51 currentT=pump.placement~42:30 currentT=water.kind~0:51 dailyC=,~80:32
dailyC=2~0:53 dailyC=:~0:35 dailyC=consumption~81:34 dailyC=cows~0:66,81:-26 dailyC=drinks~80:15
dailyC=each~0:-34,80:-40,81:98 dailyC=garden~82:51 dailyC=need~80:34 dailyC=says~0:-34,80:52
dailyC=takes~82:32 dailyC=two~80:50 dailyC=use~0:-31,80:66 dailyC=uses~81:33 dailyC=water~0:30
dailyL0=,~80:54 dailyL0=.~80:33 dailyL0=0~0:29 dailyL0=:~0:38 dailyL0=about~80:50
dailyL0=drinks~80:15 dailyL0=each~0:-29,81:55 dailyL0=is~80:34 dailyL0=need~80:34
dailyL0=people~81:49 dailyL0=says~0:-34,80:52 dailyL0=takes~82:32 dailyL0=the~80:46,82:33
dailyL0=use~0:-27,80:84 dailyL0=uses~81:33 dailyL0=we~80:40 dailyL1=.~0:27,81:32 dailyL1=2~0:51
dailyL1=a~82:17 dailyL1=at~80:30 dailyL1=each~81:43 dailyL1=in~81:37,82:27 dailyL1=two~80:40
dailyL1=water~0:30 dailyL2=,~80:18 dailyL2=.~82:36 dailyL2=0~82:57 dailyL2=4~82:22 dailyL2=6~0:34
dailyL2=m~82:18 dailyL2=mm~0:50 dailyM=cistern~81:39 dailyM=drip~0:29,82:48
dailyM=pump~80:50,81:36,82:43 dailyM=tank~81:36,82:26 dailyM=well~80:46 dailyR0=,~80:41
dailyR0=.~0:39,80:100,81:64 dailyR0=by~80:47 dailyR0=covers~0:25 dailyR0=each~0:61
dailyR0=for~80:29 dailyR0=house~80:27 dailyR0=in~82:21 dailyR0=is~0:28 dailyR0=it~0:39
dailyR0=meter~80:34 dailyR0=of~82:34 dailyR0=the~80:26,82:32 dailyR1=.~80:17,82:40 dailyR1=of~0:27
dailyR1=the~0:22 dailyR2=.~0:40 dailyR2=?~80:25 dailyT=beds.area~0:29,82:48
dailyT=power.source~0:36,80:40 dailyT=power.voltage~0:22 dailyT=pump.height~0:42
dailyT=store.fills~82:22 dailyT=store.reserve~82:45 dailyT=store.volume~82:52
dailyT=tank.level~0:54,80:-42 dailyT=tank.volume~80:-41,81:46 dailyT=water.kind~80:62,81:49,82:43
dailyT=water.level~80:36 dailyT=way.climb~0:-29,80:35,82:43 dailyT=way.length~82:39
dailyT=way.pipe~0:47 dailyT=well.depth~80:30 dailya=.~80:21,81:40 dailya=by_the~80:35
dailya=covers_it~0:25 dailya=each_.~0:61 dailya=in_the~82:23 dailyb=people_at~81:44 eachC=,~81:58
eachC=0~0:34 eachC=2~0:41 eachL0=,~81:53 eachL0=at~0:34 eachL0=we~81:47 eachL1=0~0:38 eachL1=2~0:41
eachL1=a~81:32 eachL1=for~0:38 eachL2=,~81:32 eachL2=.~81:38 eachM=pump~81:57 eachM=spring~81:47
eachM=tank~81:43 eachR0=.~81:89 eachT=power.source~81:37 eachT=tank.volume~81:31
eachT=water.kind~81:76 eachT=water.yield~81:44 eachT=way.climb~81:40 eachT=way.length~81:49
eachT=way.pipe~81:48 eacha=.~81:45 flowC=,~7:64,63:29,83:42,90:33 flowC=0~103:68,104:35
flowC=1~63:37 flowC=2~7:38,63:38,104:33 flowC=3~0:-33,103:72,104:49 flowC=4~0:23 flowC=5~8:30
flowC=8~90:36 flowC=9~0:-43,90:34 flowC=:~101:18,103:49,104:27 flowC=after~101:21 flowC=all~83:32
flowC=apart~7:37 flowC=as~90:-42,104:32 flowC=bar~8:35 flowC=bore~0:-41,90:43,104:45
flowC=borehole~0:44,90:60 flowC=box~0:40 flowC=cistern~72:62 flowC=cm~7:32 flowC=comes~103:29
flowC=day~72:44 flowC=diaphragm~63:23 flowC=drilled~90:39 flowC=driller~0:-30,90:32,104:36
flowC=drip~0:36,7:57 flowC=drippers~7:76 flowC=each~0:40,90:-46 flowC=emitters~7:70
flowC=every~7:32 flowC=feet~90:42 flowC=flow~0:28,8:31 flowC=from~72:92 flowC=ft~0:49
flowC=gives~90:67 flowC=he~104:29 flowC=its~0:37 flowC=l~90:41 flowC=level~104:50 flowC=lines~7:30
flowC=litres~103:34 flowC=m~0:34,7:50,104:38 flowC=makes~90:44 flowC=meter~83:74 flowC=min~90:41
flowC=minutes~101:45,103:80 flowC=mm~0:34 flowC=night~72:44,83:31,90:-50 flowC=ours~90:31
flowC=pump~8:52,63:87,90:-41,101:36 flowC=pumped~90:-43,104:21 flowC=pumping~101:21
flowC=ran~101:35 flowC=rows~7:60 flowC=shower~0:61,90:-32 flowC=source~90:35 flowC=spring~90:73
flowC=sprinkler~0:53 flowC=stream~0:-30,90:46 flowC=tank~0:-57,72:110 flowC=tap~0:36,90:-47
flowC=test~90:-30,101:32,104:35 flowC=tested~0:-30,90:28 flowC=then~103:65 flowC=took~103:34
flowC=volt~63:36 flowC=want~0:53,90:-30 flowC=wants~0:35 flowC=water~72:38
flowC=well~0:-37,8:34,72:38,90:88 flowC=when~104:42 flowC=which~72:77 flowC=wrote~90:33
flowC=yield~90:76 flowL0=,~7:42,63:23,90:24 flowL0=.~7:32,90:55 flowL0=0~104:26 flowL0=1~104:19
flowL0=:~90:31,101:29 flowL0=a~90:73 flowL0=and~72:43 flowL0=are~7:39
flowL0=at~0:-68,101:64,103:59,104:49 flowL0=bar~8:35 flowL0=bore~0:-33,90:55 flowL0=borehole~90:50
flowL0=cm~7:32 flowL0=comes~103:29 flowL0=driller~0:-27,90:43 flowL0=drip~0:37,7:15
flowL0=drippers~7:54 flowL0=each~0:40 flowL0=emitters~7:45 flowL0=flow~0:36,8:31 flowL0=ft~0:36
flowL0=gives~90:48 flowL0=he~104:30 flowL0=i~0:-30,83:47 flowL0=is~0:56,72:19 flowL0=it~90:64
flowL0=m~0:74 flowL0=makes~90:37 flowL0=night~72:45 flowL0=of~7:29
flowL0=pump~8:57,63:52,90:-46,104:36 flowL0=pumped~90:-32,104:33 flowL0=pumping~101:22
flowL0=spring~90:34 flowL0=sprinkler~0:53 flowL0=tank~0:-21,72:50 flowL0=test~101:35
flowL0=tested~90:43 flowL0=the~0:17,72:92 flowL0=want~0:53,90:-30 flowL0=wants~0:35 flowL0=we~0:46
flowL0=well~8:38,90:33 flowL0=wrote~90:23 flowL0=yield~90:32 flowL1=(~0:39 flowL1=,~0:50
flowL1=.~8:69,63:29,103:20 flowL1=0~90:46 flowL1=1~0:-48,8:42,63:37,90:35 flowL1=2~104:39
flowL1=3~0:-30,104:29 flowL1=4~0:25 flowL1=5~0:-27,8:30,90:31 flowL1=8~90:51 flowL1=9~90:38
flowL1=a~63:45,90:-39 flowL1=and~0:-26,90:43 flowL1=at~0:-44,90:71 flowL1=borehole~104:35
flowL1=day~72:43 flowL1=every~7:37 flowL1=for~90:36 flowL1=ft~0:-44,90:11 flowL1=gpm~90:38
flowL1=inch~0:34 flowL1=is~63:20,90:16 flowL1=it~103:50 flowL1=l~103:29 flowL1=m~104:56
flowL1=pump~0:-21,63:49,72:24,101:44 flowL1=pumping~104:41 flowL1=spring~0:-36 flowL1=tank~72:39
flowL1=test~104:27 flowL1=the~0:60,63:41,83:13 flowL1=to~72:18 flowL1=way~63:34 flowL1=well~72:21
flowL1=with~0:50 flowL2=,~7:41,8:71,63:34,83:40,103:14 flowL2=.~7:28,8:35 flowL2=0~90:31,103:64
flowL2=1~90:39 flowL2=2~0:-39,7:43,90:66,104:-36 flowL2=3~0:-26,90:53 flowL2=6~0:-42,103:51,104:49
flowL2=7~90:48 flowL2=9~90:39 flowL2=:~90:-50,104:22 flowL2=all~83:32 flowL2=apart~7:50
flowL2=bore~104:28 flowL2=borehole~0:-21,63:30 flowL2=drip~7:40 flowL2=every~8:44
flowL2=feet~0:-32,90:54 flowL2=from~63:25,72:57 flowL2=ft~104:54 flowL2=ground~0:34,90:-31
flowL2=level~104:19 flowL2=litres~103:34 flowL2=m~7:26,63:16 flowL2=need~0:42 flowL2=night~83:32
flowL2=pe~0:39 flowL2=people~90:35 flowL2=pond~0:43 flowL2=power~0:34 flowL2=pressure~8:50
flowL2=pump~63:77 flowL2=pumping~0:35 flowL2=rows~7:45 flowL2=run~0:-38,90:56 flowL2=spring~90:67
flowL2=trees~0:31 flowL2=water~90:43 flowL2=well~0:-17,103:30,104:34 flowM=cistern~0:-29,72:53
flowM=drip~7:143,8:113,90:-35 flowM=pump~0:22,7:53,63:71,83:57,101:62,104:39 flowM=roof~63:38
flowM=spring~0:62,90:91 flowM=tank~63:51,72:135,104:-42 flowM=well~90:32,103:75,104:40
flowR0=)~90:30 flowR0=,~7:29,101:43 flowR0=.~0:46,7:36,72:34,83:52,90:71,103:48 flowR0=0~101:54
flowR0=1~0:31 flowR0=2~101:32 flowR0=9~101:53 flowR0=and~0:54,72:18,90:-44
flowR0=at~0:32,8:54,63:72,90:-49 flowR0=bar~0:33 flowR0=day~72:22 flowR0=down~104:48
flowR0=each~7:54 flowR0=for~90:-52,101:74 flowR0=house~90:30 flowR0=how~90:49 flowR0=in~0:70
flowR0=its~0:28 flowR0=level~90:28 flowR0=night~0:-29,72:19 flowR0=set~63:47 flowR0=spring~90:29
flowR0=the~0:-57,8:74,63:-41,72:51,90:36 flowR0=to~0:-38,90:37 flowR0=water~0:-43,90:43
flowR1=.~0:72,7:24,72:53 flowR1=1~0:29 flowR1=3~0:-39,104:62 flowR1=4~90:34 flowR1=6~104:39
flowR1=:~0:42 flowR1=and~0:-45,101:47 flowR1=can~8:38 flowR1=cm~7:33 flowR1=i~101:21 flowR1=in~0:44
flowR1=m~90:27 flowR1=off~101:23 flowR1=pressure~63:42,83:55 flowR1=psi~63:48 flowR1=run~0:53
flowR1=spring~90:-35 flowR1=tank~0:30 flowR1=the~0:19 flowR2=,~90:31 flowR2=.~0:22,63:30,90:-43
flowR2=0~7:36,90:29 flowR2=1~83:33 flowR2=5~0:-25,90:69 flowR2=6~0:-37 flowR2=7~0:37,90:-25
flowR2=above~90:31 flowR2=from~0:33,90:-41 flowR2=hours~8:47 flowR2=level~101:23 flowR2=m~104:19
flowR2=minute~0:52,90:-51 flowR2=run~8:46 flowR2=spring~0:51,90:-43 flowR2=well~0:36
flowT=beds.area~0:-53,7:99 flowT=power.battery~0:-30,63:49 flowT=power.cable~104:34
flowT=power.capacity~63:56 flowT=power.panel~0:-29,90:81 flowT=power.series~0:41
flowT=power.source~0:36,90:45 flowT=power.strings~0:30 flowT=power.voltage~0:-54,63:89
flowT=pump.control~83:53 flowT=pump.cut_in~83:30 flowT=pump.cut_out~83:35
flowT=pump.height~90:73,104:45 flowT=pump.placement~0:56,83:61,90:-50 flowT=pump.present~90:38
flowT=pump.set~83:52 flowT=pump.starts~63:41 flowT=pump.works~0:-36,63:69 flowT=store.fills~72:54
flowT=store.volume~63:66,83:30,90:-21 flowT=tank.volume~0:68
flowT=water.kind~7:42,72:39,83:48,90:157,103:59,104:79 flowT=water.level~0:38,104:109
flowT=water.temperature~0:36 flowT=water.yield~0:113,7:67,90:-99 flowT=way.climb~90:44
flowT=way.length~63:43,90:49 flowT=way.pipe~0:46,63:54,90:53
flowT=well.bore~90:-53,101:41,103:61,104:22 flowT=well.cover~101:44 flowT=well.depth~0:31,101:49
flowT=well.drawn~103:60 flowT=well.drawn_for~103:60 flowT=well.pumped_for~101:101
flowT=well.pumping~90:-81,104:119 flowT=well.static~104:96 flowa=~90:36 flowa=,_water~90:29
flowa=.~0:33,72:25,104:60 flowa=._the~83:34 flowa=at_2~0:42 flowa=at_the~8:69 flowa=for_4~104:37
flowb=,_flow~8:35 flowb=drip_,~7:23 flowb=he_pumped~104:35 flowb=m_at~0:41 flowb=pump_gives~0:36
k=angle~17:39,36:59,39:108,40:23,52:92 k=area~0:102,6:246,69:64
k=bare~0:291,1:60,2:22,3:79,4:46,27:34,29:62,30:18,32:36,39:58,81:-42,86:68 k=charge~44:197
k=current~0:43,42:52 k=daily~0:82,80:173,81:79,82:46 k=each~81:132
k=flow~0:133,7:94,8:55,63:47,72:76,83:43,90:175,101:81,103:43,104:62
k=length~0:351,15:51,16:44,38:119,43:66,58:-26,60:58,65:28,77:58,78:52,79:-25,80:-25,81:-29,86:-23,88:117,90:-28,91:76,92:57,93:171,94:85,95:38,98:37
k=pair~58:112 k=percent~0:60,50:100,64:57 k=power~0:150,48:135
k=pressure~0:142,10:41,12:86,13:39,20:42,21:58,37:41,54:118,55:40,58:76,59:70,66:104
k=temperature~17:49,22:72,36:57,89:99 k=time~0:174,9:35,70:132,71:26,85:74,97:59,99:49
k=voltage~0:89,46:49,47:58,53:191 k=volume~0:164,23:53,24:72,56:113,73:84,74:147,79:134,84:82,96:47
lengthC=(~0:-38,95:28 lengthC=)~0:-24
lengthC=,~0:-22,15:61,16:48,61:40,62:24,88:1,92:67,93:-53,95:49
lengthC=0~14:46,77:-35,78:41,88:-42,92:46,93:58 lengthC=1~43:-44,95:21,98:38
lengthC=2~38:-31,92:-32,93:28,95:39,100:31 lengthC=3~0:34,78:29,94:-25,100:42 lengthC=4~91:38,98:58
lengthC=5~0:36,16:27,38:-43,93:48 lengthC=6~0:-37,11:33,62:13,88:-80,100:36,102:35 lengthC=7~91:61
lengthC=8~78:17,102:47 lengthC=9~0:-17,88:-42,93:52,100:41
lengthC=:~0:-24,78:49,88:26,91:54,93:-70,95:-20,100:67,102:53 lengthC=?~0:-45,38:50,88:24
lengthC=above~38:42,91:-43,93:51 lengthC=afternoon~88:40 lengthC=all~78:24 lengthC=altimeter~91:41
lengthC=altitude~38:88 lengthC=apart~11:46 lengthC=as~0:53 lengthC=august~88:17 lengthC=away~92:31
lengthC=bank~0:29 lengthC=barrel~78:39 lengthC=below~88:49,93:32 lengthC=beside~0:27
lengthC=between~15:32,93:44 lengthC=bore~0:-18,91:-47,94:27,95:66,102:53
lengthC=bore's~62:30,88:-27 lengthC=bored~95:29 lengthC=borehole~0:-35,62:48,78:-28,88:82,95:86
lengthC=bottom~0:-52,78:47,95:34 lengthC=box~88:29,92:-39 lengthC=buried~0:7,91:21 lengthC=by~92:33
lengthC=cabin~0:-55,38:43,88:-22,91:41,93:37 lengthC=cable~43:162,93:-40 lengthC=came~102:49
lengthC=can~38:29 lengthC=captured~0:33 lengthC=cased~0:-43,94:52 lengthC=casing~0:-47,94:6
lengthC=cattle~93:38 lengthC=cellar~0:51 lengthC=climb~91:87 lengthC=climbs~0:-33,91:100,93:-23
lengthC=compensating~16:45 lengthC=copper~93:45 lengthC=could~0:62 lengthC=creek~88:42,91:-50
lengthC=deep~0:-9,62:-25,88:51,94:45,102:30 lengthC=depth~62:59,88:-37,95:49
lengthC=diameter~0:-54,60:85,94:48 lengthC=difference~91:33 lengthC=differences~92:31
lengthC=distance~15:34,93:54 lengthC=down~62:62,93:-20,100:32 lengthC=draws~77:88
lengthC=drilled~0:29,93:-47,95:38 lengthC=drip~0:-15,11:80,15:66,16:17 lengthC=dripper~16:63
lengthC=drippers~16:100 lengthC=drop~78:40,91:-42,92:45,93:-49,98:74 lengthC=drops~91:-32,92:44
lengthC=drum~0:-30,78:56 lengthC=dry~0:-19,61:44,88:31 lengthC=dug~94:31,95:48
lengthC=dynamic~88:34 lengthC=each~0:-22,11:54,16:69 lengthC=elevation~38:81,91:34
lengthC=emitters~16:26 lengthC=end~88:27 lengthC=ends~0:34 lengthC=et~0:-32,14:70
lengthC=every~16:34 lengthC=fall~92:49 lengthC=falls~78:21,88:28,91:-28,92:50,100:22
lengthC=farthest~93:35 lengthC=feeds~78:-55 lengthC=feet~92:25 lengthC=fifty~91:35
lengthC=first~0:18 lengthC=floor~0:-35,78:31,91:35 lengthC=foot~91:38
lengthC=from~43:41,88:34,91:98,92:64,95:-66 lengthC=ft~0:-29,62:-52,77:-30,78:-54,91:42,95:74
lengthC=g'day~88:-26 lengthC=gallons~78:40 lengthC=garden~93:34 lengthC=generator~78:36
lengthC=goes~0:25,88:43 lengthC=good~0:-22,95:35 lengthC=got~0:48,91:29 lengthC=gph~16:42
lengthC=gpm~0:29,100:53 lengthC=greenhouse~0:50 lengthC=grid~0:38 lengthC=ground~0:-37,92:29
lengthC=h~16:42 lengthC=half~92:70 lengthC=hanging~0:39,88:-27 lengthC=hangs~62:34
lengthC=hav~0:46,78:-52 lengthC=head~91:31 lengthC=height~91:60 lengthC=hey~0:58,88:-61
lengthC=hi~0:69,62:-29 lengthC=high~0:24 lengthC=higher~0:-35,93:54 lengthC=highest~91:48
lengthC=hill~78:21,91:-48 lengthC=hit~88:16 lengthC=hole~95:37 lengthC=hose~77:45,93:34
lengthC=hours~100:47 lengthC=house~62:-56,88:-25,91:70,92:42,93:88,95:-58
lengthC=houses~0:-27,91:33 lengthC=hung~98:66 lengthC=hut~38:44 lengthC=i've~0:63 lengthC=ibc~78:30
lengthC=intake~0:-37,77:65,91:-34,92:37 lengthC=it's~93:38,95:39 lengthC=its~0:35,93:-53
lengthC=jet~93:24 lengthC=kitchen~0:-43,91:50,93:44 lengthC=km~0:38,92:51
lengthC=l~16:41,88:-23,100:39 lengthC=last~0:29,91:-28 lengthC=length~93:41
lengthC=level~62:-25,78:-27,88:72,95:-41,100:64,102:53 lengthC=lies~91:47
lengthC=lift~61:40,62:-26,77:-31,88:51,91:57 lengthC=line~0:43,11:82,78:-8,88:-37,93:45
lengthC=lines~11:80 lengthC=litres~78:61 lengthC=little~91:-34,92:40 lengthC=log~95:32
lengthC=long~15:41 lengthC=lower~93:26 lengthC=lowered~62:58 lengthC=lowest~88:41
lengthC=m~38:-43,88:44,92:16,94:44,95:-17,100:33,102:27 lengthC=main~93:46
lengthC=mains~0:44,43:38,93:-31 lengthC=makes~0:37 lengthC=maybe~0:35 lengthC=measured~0:52
lengthC=mm~0:-39,78:-32,91:41,92:48,93:44 lengthC=more~91:21 lengthC=mouth~92:37 lengthC=must~91:38
lengthC=neighbour~0:48 lengthC=next~93:51 lengthC=no~0:-35,88:53,93:34 lengthC=not~95:48
lengthC=npsh~65:52 lengthC=off~91:27 lengthC=one~93:-24,95:39 lengthC=only~93:44,95:43
lengthC=ours~95:45 lengthC=out~0:-48,92:42 lengthC=outside~60:51 lengthC=panels~0:32,43:30,93:-36
lengthC=pipe~0:57,77:56,78:-33,88:-31,93:60,95:-50,98:64 lengthC=pit~95:-30 lengthC=place~38:37
lengthC=platform~78:43 lengthC=plot~0:28 lengthC=poly~91:47 lengthC=pond~0:48
lengthC=power~0:33,93:-32 lengthC=pull~62:17 lengthC=pulls~88:51
lengthC=pump~0:-29,43:20,60:37,61:50,62:146,65:42,77:61,88:57,91:-21,92:-31,95:-28,98:53,102:-34
lengthC=pump's~62:41 lengthC=pumphouse~88:50 lengthC=pumping~88:28,100:32 lengthC=push~0:31,88:-40
lengthC=pushes~78:47 lengthC=put~78:47 lengthC=pvc~98:23 lengthC=quit~0:44 lengthC=raised~78:26
lengthC=required~65:43 lengthC=reservoir~0:-21,78:86,91:-44 lengthC=rest~88:-16,102:88
lengthC=rings~0:-33,94:31 lengthC=rise~0:-18,91:90 lengthC=rises~91:57 lengthC=river~0:39
lengthC=road~0:69,93:-25 lengthC=roof~91:37 lengthC=rows~0:-38,15:132
lengthC=run~43:23,88:-38,93:80 lengthC=s~100:35 lengthC=sawback~38:22 lengthC=say~0:35,95:-35
lengthC=says~0:52,95:29 lengthC=sch~0:40 lengthC=season~88:45 lengthC=set~62:63 lengthC=shed~0:31
lengthC=shower~0:50,88:-35,91:45 lengthC=sits~0:-50,62:36,88:32,93:32 lengthC=sixty~0:-40
lengthC=solar~0:33,88:-53 lengthC=sorry~0:-35 lengthC=source~0:29,95:-37
lengthC=spacing~15:46,16:24 lengthC=spring~0:-23,78:-33,91:35,92:38,93:49 lengthC=stand~78:32
lengthC=standing~102:55 lengthC=stands~0:-54,88:39
lengthC=static~0:-43,88:61,91:-25,95:-36,100:12,102:120 lengthC=stock~91:35 lengthC=stopped~0:39
lengthC=sub~62:44 lengthC=submersible~60:11,62:115,88:-23,93:-48
lengthC=suction~0:-12,77:156,88:85,91:-34 lengthC=summer~38:44 lengthC=surface~88:43
lengthC=swl~88:34,102:62 lengthC=take~92:61 lengthC=tank~0:51,78:129,88:-41,91:-43,93:99,95:-33
lengthC=tap~91:62 lengthC=taps~0:49 lengthC=tent~91:57 lengthC=than~93:30 lengthC=then~0:43,88:-44
lengthC=they~88:17 lengthC=thing~0:-44 lengthC=thinks~0:48 lengthC=through~77:56
lengthC=toddler~0:55 lengthC=told~78:26 lengthC=total~0:-37 lengthC=tote~0:44 lengthC=tower~78:55
lengthC=towr~0:60,78:-55 lengthC=trees~0:23,91:-25 lengthC=trench~0:81
lengthC=trough~0:-33,91:51,92:35 lengthC=troughs~93:49 lengthC=two~0:26,93:30
lengthC=up~0:38,62:-29,78:53,91:29,93:54 lengthC=uphill~91:52 lengthC=us~0:35
lengthC=use~0:32,88:-32 lengthC=village~0:-26,78:31 lengthC=was~62:29,93:-57
lengthC=water~0:-22,88:147,95:-60,100:25,102:73 lengthC=water's~88:36 lengthC=waters~88:42
lengthC=way~93:37 lengthC=we've~95:40 lengthC=well~0:43,78:-40,91:-44,94:80,95:64,100:35
lengthC=well's~0:-24 lengthC=wellhead~91:28 lengthC=when~88:-51,100:47 lengthC=winter~88:38
lengthC=wire~43:81,93:-56 lengthC=within~88:34 lengthC=x~0:41 lengthC=yards~91:-30
lengthC=yurt~0:32 lengthC=zones~11:63 lengthL0=,~15:42,16:52,38:-3,78:-32,91:35,93:48,102:-21
lengthL0=.~0:-52,16:26,65:81,78:-45,93:31,95:28 lengthL0=0~14:52,78:39,91:-19,93:46
lengthL0=1~95:40 lengthL0=2~88:-38,93:40 lengthL0=3~78:38,93:31 lengthL0=4~0:41,98:24
lengthL0=5~0:28 lengthL0=:~78:48,91:43 lengthL0=;~0:-22,91:54 lengthL0=?~0:-48,88:60
lengthL0=a~0:-71,38:-22,43:29,78:59,88:-34,91:54,93:36,94:45,95:69 lengthL0=all~0:63
lengthL0=altimeter~91:41 lengthL0=altitude~38:82 lengthL0=and~88:-25,91:54,93:18
lengthL0=are~11:49,38:27,78:-26 lengthL0=at~38:107,62:148,77:-27,88:72,91:-61,92:-36,93:-39,95:-83
lengthL0=bank~88:52 lengthL0=barn~0:-41,93:27 lengthL0=between~15:46 lengthL0=bore~95:74
lengthL0=borehole~88:-29,91:-38,95:70 lengthL0=bottom~0:-38,91:30 lengthL0=box~88:30
lengthL0=buried~0:61 lengthL0=by~0:32,92:50 lengthL0=cabin~0:-47,38:24,91:44,93:52
lengthL0=cable~43:54 lengthL0=can~0:31 lengthL0=cased~0:-38,94:52 lengthL0=casing~0:-33,94:6
lengthL0=cellar~0:58 lengthL0=climb~0:-28,91:71 lengthL0=climbs~0:-27,91:81,93:-23
lengthL0=compensating~16:55 lengthL0=copper~93:25 lengthL0=creek~92:39 lengthL0=deep~94:32
lengthL0=depth~95:49 lengthL0=diameter~0:-32,60:86 lengthL0=distance~93:31
lengthL0=down~62:36,88:38,100:40 lengthL0=drilled~0:31 lengthL0=drip~11:35,15:21
lengthL0=dripper~16:9 lengthL0=drippers~16:65 lengthL0=drop~92:35,93:-32
lengthL0=drops~0:24,91:-32,92:45 lengthL0=drum~0:-31,78:57 lengthL0=dry~61:44 lengthL0=dug~95:41
lengthL0=each~11:49,16:32 lengthL0=elevation~0:-34,38:81 lengthL0=emitters~16:32 lengthL0=ends~0:34
lengthL0=et~0:-32,14:70 lengthL0=every~16:60 lengthL0=falls~78:21,92:49,100:28 lengthL0=far~0:33
lengthL0=farthest~93:35 lengthL0=feet~95:30 lengthL0=field~0:49 lengthL0=floor~0:-38,78:32
lengthL0=from~62:21,88:35 lengthL0=ft~91:28,92:-36 lengthL0=gallons~78:46 lengthL0=garden~93:37
lengthL0=goes~0:-32,88:34,91:38,92:-30,95:35 lengthL0=got~91:32 lengthL0=gpm~0:28
lengthL0=grid~0:30 lengthL0=ground~92:35 lengthL0=h~0:39 lengthL0=hangs~62:38
lengthL0=has~93:-24,98:27 lengthL0=he~0:-36,95:31 lengthL0=head~0:40,91:31
lengthL0=height~0:-46,91:27 lengthL0=highest~91:45 lengthL0=hill~0:-27,92:33 lengthL0=hole~95:29
lengthL0=hose~77:40 lengthL0=house~0:54,43:-24,62:-23,78:29,88:-29,91:69,92:55,93:59,95:-23
lengthL0=hp~62:49 lengthL0=hung~98:53 lengthL0=hut~38:33 lengthL0=i~0:-26,93:64
lengthL0=in~62:-37,88:33,91:-40,94:42,95:42 lengthL0=inch~0:-45 lengthL0=intake~77:64,92:38
lengthL0=is~0:14,14:51,38:-32,43:39,78:38,91:34,94:58,95:39
lengthL0=it~0:41,62:37,88:28,91:-23,100:57 lengthL0=it's~93:46 lengthL0=kitchen~93:18
lengthL0=l~78:46 lengthL0=last~0:49,91:-27 lengthL0=length~93:43
lengthL0=level~62:-17,88:29,91:-22,95:-47,100:73,102:60 lengthL0=lies~91:47
lengthL0=lift~0:37,61:40,62:-24,77:-40,88:33,91:47 lengthL0=line~0:33,11:93,77:25,78:-30,88:-28
lengthL0=lines~11:96 lengthL0=litres~78:33 lengthL0=log~0:32 lengthL0=lowered~62:48
lengthL0=lowest~88:53 lengthL0=m~0:24 lengthL0=mains~0:54 lengthL0=maybe~0:28
lengthL0=measured~93:45 lengthL0=mm~0:-45,92:36,93:64 lengthL0=more~91:22 lengthL0=must~91:28
lengthL0=my~92:31 lengthL0=no~93:44 lengthL0=now~88:44 lengthL0=npsh~65:50 lengthL0=of~0:85,91:-38
lengthL0=on~78:35,98:71 lengthL0=our~0:70 lengthL0=ours~0:-36,88:35,95:43 lengthL0=outside~60:52
lengthL0=pipe~77:60,93:44 lengthL0=poly~93:51 lengthL0=pond~0:44
lengthL0=pump~0:-26,43:66,62:103,78:-29,91:-46,94:-36,95:-17 lengthL0=pumping~100:40
lengthL0=push~0:24,88:-35 lengthL0=rest~102:65 lengthL0=rise~91:90 lengthL0=rises~91:70
lengthL0=river~88:27 lengthL0=road~0:25 lengthL0=rows~15:152,16:-31 lengthL0=run~43:27,93:15
lengthL0=sawback~38:22 lengthL0=says~0:43,95:39 lengthL0=season~88:38 lengthL0=set~62:58
lengthL0=shed~0:31 lengthL0=shower~91:42 lengthL0=small~38:29 lengthL0=sorry~0:-32,88:30
lengthL0=spacing~16:34 lengthL0=spring~92:48 lengthL0=stand~78:39 lengthL0=standing~102:55
lengthL0=stands~0:-30 lengthL0=static~88:69,95:-28,102:83 lengthL0=sub~62:43
lengthL0=submersible~62:77 lengthL0=sucks~77:42 lengthL0=suction~77:95,88:34,91:-37
lengthL0=summer~38:30 lengthL0=surface~0:33 lengthL0=swl~88:34,102:67 lengthL0=tank~78:57,91:-28
lengthL0=tap~91:56 lengthL0=that~78:40 lengthL0=the~0:22,43:27,78:66,93:27,98:34,102:-36
lengthL0=there~91:19 lengthL0=they~0:34 lengthL0=through~77:68
lengthL0=to~0:-19,88:69,93:8,95:47,100:50 lengthL0=told~78:27 lengthL0=tote~0:35
lengthL0=tower~0:-36,78:56,93:43 lengthL0=up~0:24,78:70,88:-28,91:37 lengthL0=uphill~91:52
lengthL0=was~0:25 lengthL0=water~0:59,62:-65,88:96,91:-28,102:85 lengthL0=water's~88:38
lengthL0=way~93:37 lengthL0=we~38:28,92:25,93:-42 lengthL0=well~95:68 lengthL0=winter~88:38
lengthL0=with~0:45,88:56,93:-44 lengthL0=within~88:34 lengthL0=x~0:43 lengthL0=yurt~0:42
lengthL0=|~88:24,92:50 lengthL1=(~0:-31,93:30 lengthL1=)~0:-22
lengthL1=,~11:74,16:41,38:-39,61:51,78:49,102:52 lengthL1=.~11:25,14:41,62:50,100:-29
lengthL1=0~78:67,91:27,92:33 lengthL1=1~15:41,78:-31,98:16 lengthL1=2~0:-29,62:24,78:17,93:-53
lengthL1=3~78:30,92:58,95:32,100:32,102:-34 lengthL1=4~0:-50,77:47,88:31,92:45,93:41
lengthL1=5~95:19 lengthL1=6~93:-36 lengthL1=8~93:-53,102:34 lengthL1=9~88:-26,94:53,100:47
lengthL1=:~102:27 lengthL1=;~0:23,88:-53,91:-38,92:33 lengthL1=?~38:26,78:-32
lengthL1=a~0:28,62:36,91:-24,95:41 lengthL1=above~88:-37,93:48 lengthL1=acre~0:23
lengthL1=all~0:-24,78:22 lengthL1=an~0:48 lengthL1=and~88:38,92:-58,98:56 lengthL1=apart~11:26
lengthL1=are~0:68,62:-36 lengthL1=at~0:-28,16:38,62:-36,65:37,91:31,102:27 lengthL1=back~95:36
lengthL1=bank~0:29 lengthL1=bar~0:43 lengthL1=beds~16:24 lengthL1=below~0:-33,93:48
lengthL1=booster~0:28,93:-28 lengthL1=bore~94:40,102:31 lengthL1=borehole~0:-39,88:30,98:38
lengthL1=but~0:26 lengthL1=cable~43:63 lengthL1=cattle~93:34 lengthL1=deep~62:-28,95:42,102:33
lengthL1=distance~93:24 lengthL1=drilled~95:33 lengthL1=drip~0:-28,16:36 lengthL1=dry~0:-44
lengthL1=dug~94:39 lengthL1=emitters~16:40 lengthL1=end~88:34 lengthL1=falls~88:39
lengthL1=feet~0:47,88:38 lengthL1=fifty~91:36 lengthL1=from~43:57,62:-43,92:38,93:61
lengthL1=ft~0:51,88:41,92:28 lengthL1=full~78:48 lengthL1=gallon~0:49 lengthL1=gallons~0:55,93:-30
lengthL1=garden~0:29 lengthL1=goes~0:29 lengthL1=gpm~100:25 lengthL1=guest~0:60
lengthL1=h~0:-40,100:61 lengthL1=half~91:-25,92:73 lengthL1=have~0:17 lengthL1=he~0:48
lengthL1=hill~0:27,91:-31 lengthL1=hose~0:40 lengthL1=house~43:35 lengthL1=how~95:43
lengthL1=hundred~0:33,88:-52 lengthL1=i~0:36,93:-30 lengthL1=in~0:23,62:35,102:-39
lengthL1=inch~0:35,92:50 lengthL1=inside~88:-25,102:26 lengthL1=is~62:23,93:22,98:24
lengthL1=it~91:29,93:18 lengthL1=it's~95:44 lengthL1=l~100:38 lengthL1=level~0:-34,88:31
lengthL1=lift~0:-37 lengthL1=line~93:32 lengthL1=liters~0:42 lengthL1=litres~91:55
lengthL1=log~0:-39,95:36 lengthL1=m~88:56,100:23 lengthL1=makes~88:-32,102:34 lengthL1=meters~0:36
lengthL1=min~0:26,91:-45 lengthL1=minute~92:14 lengthL1=my~0:26,93:-43 lengthL1=never~88:31
lengthL1=night~0:41 lengthL1=of~0:-48,62:-35,78:13,88:37,95:27 lengthL1=our~0:-53
lengthL1=over~0:38,93:-42 lengthL1=pe~92:52 lengthL1=per~93:-44 lengthL1=pipe~0:23,93:28
lengthL1=place~95:30 lengthL1=poly~91:36,93:-41 lengthL1=psi~0:-51,88:34 lengthL1=pump~0:-44,91:38
lengthL1=reservoir~0:-25,78:34 lengthL1=rows~11:38 lengthL1=run~93:27 lengthL1=s~100:36
lengthL1=sea~91:41 lengthL1=seconds~93:-26 lengthL1=shower~0:26 lengthL1=source~0:32
lengthL1=spring~91:-40,92:35 lengthL1=stands~0:45,88:25 lengthL1=static~100:39
lengthL1=stream~78:50 lengthL1=submersible~0:-17,60:14,62:26 lengthL1=suction~0:43,77:39,93:-32
lengthL1=summer~88:29 lengthL1=surface~0:-47,88:45 lengthL1=tank~0:75,78:59
lengthL1=the~38:-41,43:22,77:42,94:-6,95:53,102:40 lengthL1=then~0:45
lengthL1=to~0:-54,43:45,91:57,92:36,95:-26 lengthL1=top~88:31 lengthL1=tote~78:23
lengthL1=trench~0:39 lengthL1=up~91:28 lengthL1=us~0:44 lengthL1=water~88:23,91:17,93:28
lengthL1=we~93:57 lengthL1=well~88:13,92:-28 lengthL1=with~0:-50,93:46,94:35,100:29
lengthL1=yards~92:34 lengthL1=year~88:-33 lengthL1=|~0:38,78:-40,88:-39 lengthL2=(~0:-26,78:29
lengthL2=,~11:58,15:54,78:47,92:-33 lengthL2=.~14:51,16:24,43:13,61:64,62:49,92:-26,93:32,100:35
lengthL2=0~11:47,16:40,43:21,62:33,77:-2,91:36,92:38,100:-33
lengthL2=1~43:35,62:26,77:19,78:-29,92:39 lengthL2=2~11:37,78:-34,92:27,93:50
lengthL2=3~14:51,62:45,65:37,78:-28,93:66,94:-38 lengthL2=4~78:37,88:-28,91:23,92:-51,93:14,95:-25
lengthL2=5~11:39,38:-35,78:42,93:50 lengthL2=6~11:42,88:-11,102:7 lengthL2=7~102:-26
lengthL2=8~0:30,78:31 lengthL2=9~91:35,92:-55 lengthL2=:~88:-55,92:36,100:60
lengthL2=;~88:-45,91:39 lengthL2=above~77:22 lengthL2=afternoon~88:36 lengthL2=again~91:-23
lengthL2=all~0:-35 lengthL2=allotment~0:35 lengthL2=am~0:59 lengthL2=answer~88:46
lengthL2=apart~11:55 lengthL2=august~0:-29 lengthL2=back~91:19 lengthL2=bar~0:48,78:-26
lengthL2=beef~91:38 lengthL2=beside~93:18 lengthL2=bore~0:-27,100:30,102:37 lengthL2=bore's~62:26
lengthL2=borehole~0:-25,88:42 lengthL2=bring~91:43 lengthL2=bucket~0:54,91:-63,93:-26
lengthL2=buried~0:-26 lengthL2=by~0:-63,95:52 lengthL2=cabin~0:37,92:-31 lengthL2=cable~43:41
lengthL2=camp~0:73,95:-31 lengthL2=casing~0:57 lengthL2=cistern~0:41 lengthL2=clinic~0:47,95:-36
lengthL2=cm~14:44,15:40 lengthL2=compensating~11:40 lengthL2=count~0:33
lengthL2=creek~0:33,77:28,93:-42 lengthL2=cubic~0:51,93:-25 lengthL2=day~38:56
lengthL2=deep~0:-58,95:42,102:46 lengthL2=depth~62:48 lengthL2=distance~91:39
lengthL2=does~0:35,78:-26 lengthL2=draws~0:30 lengthL2=drip~0:-14,15:53,16:103
lengthL2=drippers~11:71 lengthL2=drop~0:-29,98:26 lengthL2=dry~0:-15 lengthL2=electric~43:43,91:-22
lengthL2=fall~92:22 lengthL2=fed~0:43,91:-35 lengthL2=feet~0:-38,91:40,102:37 lengthL2=fills~93:-35
lengthL2=five~78:48 lengthL2=flow~0:33 lengthL2=foot~91:39 lengthL2=found~88:47
lengthL2=from~78:22,102:50 lengthL2=ft~0:-21,16:48,78:-37,88:67,92:-45,98:39,102:-70
lengthL2=gal~88:30,93:27 lengthL2=gallon~0:16,93:-39 lengthL2=gallons~0:-43 lengthL2=garden~0:53
lengthL2=gave~88:-51,100:32 lengthL2=generator~78:36 lengthL2=gives~92:53,93:-25
lengthL2=goes~93:-35 lengthL2=good~95:35 lengthL2=got~0:62,62:-32 lengthL2=gpm~88:-42,93:34
lengthL2=guests~0:32 lengthL2=h~62:33 lengthL2=ha~16:38 lengthL2=had~0:39 lengthL2=hav~0:52,78:-52
lengthL2=having~0:24 lengthL2=he~0:-28 lengthL2=height~91:32 lengthL2=hello~0:51,88:-38
lengthL2=hey~0:50,88:-47 lengthL2=higher~0:43 lengthL2=hit~88:50 lengthL2=hose~93:31
lengthL2=hour~0:45,93:-44 lengthL2=hours~0:44 lengthL2=house~0:-25,88:-38,91:122,93:38,95:-40
lengthL2=hundred~91:35,93:-45 lengthL2=i've~0:59 lengthL2=inch~0:-29,62:35,91:12,93:-43
lengthL2=inches~102:44 lengthL2=into~78:61 lengthL2=jet~0:-24,77:31,88:42 lengthL2=keeps~0:33
lengthL2=kitchen~0:-48 lengthL2=know~95:-21 lengthL2=l~11:36,65:48 lengthL2=lane~88:-26
lengthL2=level~0:46 lengthL2=line~91:-35 lengthL2=lines~78:31 lengthL2=liter~0:23
lengthL2=litre~0:20 lengthL2=litres~0:-67,92:46 lengthL2=little~91:-34,92:40 lengthL2=live~0:26
lengthL2=low~91:-31 lengthL2=lower~88:-45 lengthL2=m~0:-34,16:34,91:45,95:-48,102:4
lengthL2=machine~0:18 lengthL2=man~0:30 lengthL2=max~0:35 lengthL2=maybe~91:33
lengthL2=measured~0:32 lengthL2=metres~91:-54,92:66 lengthL2=min~0:-72,65:52 lengthL2=minute~78:-39
lengthL2=mm~0:-38,92:31 lengthL2=most~0:34,78:-51 lengthL2=new~95:-45 lengthL2=next~78:-31
lengthL2=no~0:-38,43:40,93:45,95:45 lengthL2=none~91:33 lengthL2=normally~0:24 lengthL2=not~0:-37
lengthL2=old~78:31 lengthL2=one~91:31,92:-58,93:-38 lengthL2=only~0:-42,91:53 lengthL2=other~88:42
lengthL2=over~91:-27,93:48 lengthL2=pe~0:-43 lengthL2=people~0:82 lengthL2=pipe~92:39,93:42
lengthL2=place~92:31 lengthL2=poly~93:36 lengthL2=pond~0:27,91:-33 lengthL2=power~93:44
lengthL2=pressure~0:-27,78:58,91:-17 lengthL2=psi~0:-35,15:37
lengthL2=pump~0:39,61:83,62:76,77:54,92:-29 lengthL2=pumphouse~88:34 lengthL2=pvc~0:-39,98:26
lengthL2=quick~0:-28 lengthL2=rain~78:60 lengthL2=reservoir~78:73,91:-52 lengthL2=right~0:-33
lengthL2=river~0:46 lengthL2=roof~78:56,91:-40 lengthL2=rows~11:69 lengthL2=run~93:52
lengthL2=runs~88:28 lengthL2=said~0:-32,95:37 lengthL2=same~0:-25 lengthL2=says~88:43
lengthL2=september~92:36 lengthL2=set~0:-22,88:42 lengthL2=shaft~88:-27,102:27
lengthL2=shallow~93:35 lengthL2=shower~0:-40 lengthL2=showers~0:31 lengthL2=sits~0:-32
lengthL2=sixty~0:28 lengthL2=so~91:-36 lengthL2=solar~91:30 lengthL2=source~0:-36,88:24,92:46
lengthL2=spring~0:47,91:-26,92:63 lengthL2=stands~91:43 lengthL2=static~0:-40,88:61
lengthL2=steel~0:-48 lengthL2=submersible~0:27,88:37,93:-35,95:13 lengthL2=suction~88:33
lengthL2=sun~0:37,93:-39 lengthL2=surface~61:18 lengthL2=take~92:41
lengthL2=tank~0:39,78:43,92:-20,93:69,95:-32 lengthL2=ten~0:27,93:-24 lengthL2=tent~91:57
lengthL2=test~88:-29,100:38 lengthL2=there~0:71,91:-25 lengthL2=there's~95:57
lengthL2=they~0:37,78:-57,91:24 lengthL2=thousand~0:41 lengthL2=through~91:53
lengthL2=too~0:-28,78:34 lengthL2=trees~0:50,93:-27 lengthL2=troughs~91:33 lengthL2=two~78:57
lengthL2=under~0:22,93:-40 lengthL2=up~0:-36,78:15,91:33 lengthL2=upper~0:34 lengthL2=use~88:-32
lengthL2=v~0:-40,43:50 lengthL2=want~0:25,78:-46,93:34 lengthL2=was~0:-63,95:34
lengthL2=washing~0:27 lengthL2=water~0:-26,62:21,78:29,88:105,91:-42 lengthL2=water's~91:-47
lengthL2=we've~95:49 lengthL2=well~0:46,88:37,91:-29,95:55 lengthL2=wellhead~91:30
lengthL2=what~95:-33 lengthL2=when~95:35 lengthL2=which~0:11,93:-52 lengthL2=while~0:53,93:-54
lengthL2=will~91:27 lengthL2=yet~91:33 lengthL2=you~0:22 lengthL2=|~38:28
lengthM=cistern~38:52,93:43 lengthM=creek~0:46,77:43,91:60
lengthM=drip~0:-26,11:128,14:49,15:118,16:121,88:-35,93:-25,94:-47,102:-36
lengthM=pump~0:22,16:43,38:72,43:59,60:15,61:41,62:51,65:64,77:50,88:43,91:76,92:-79,95:-36,100:42,102:42
lengthM=roof~0:36,91:26 lengthM=spring~0:21,38:57,62:-63,88:-19,91:-33,92:208
lengthM=tank~78:166,91:-31,95:7
lengthM=well~62:49,77:-48,78:-32,92:-42,93:60,94:70,95:90,98:39,100:42 lengthR0=(~91:33
lengthR0=,~15:59,16:38,62:31,78:25,95:84
lengthR0=.~11:30,16:5,38:75,43:35,62:58,65:54,78:28,88:21,94:61,95:42 lengthR0=0~93:48
lengthR0=1~0:-85,16:44,43:50,77:99,88:-60,92:-29,93:28 lengthR0=2~0:18,38:28,78:50,88:-20,95:-25
lengthR0=3~0:29,78:35 lengthR0=4~77:33,88:-55,93:27,98:48 lengthR0=5~95:-35 lengthR0=6~0:-69,60:47
lengthR0=7~91:29 lengthR0=8~95:-32,98:38 lengthR0=9~88:23,93:29 lengthR0=:~0:-48,93:44
lengthR0=;~0:-34,88:15 lengthR0=a~0:-53,14:36
lengthR0=above~0:-33,38:28,62:-31,78:91,88:63,91:81,92:38,93:-48,95:-29 lengthR0=according~95:47
lengthR0=across~0:40,94:48 lengthR0=after~0:44,88:56 lengthR0=all~0:70 lengthR0=altitude~38:28
lengthR0=an~0:41,93:-61 lengthR0=and~0:-46,88:-35,93:25,94:46,95:64,102:53
lengthR0=apart~15:52,16:23 lengthR0=at~0:-33,16:41,61:29,62:-30,88:48,91:-26,95:30,100:54
lengthR0=away~0:40,91:-36,93:92 lengthR0=barn~0:32,78:-27
lengthR0=below~0:-17,62:40,88:61,91:81,92:19,93:-35,95:-44 lengthR0=between~15:26
lengthR0=bore~0:-25 lengthR0=borehole~0:-45,91:29,94:47 lengthR0=bottom~0:33,93:-33,95:63
lengthR0=but~0:55,93:-28 lengthR0=by~0:18 lengthR0=cabin~0:-29,92:45 lengthR0=cable~43:109,93:-38
lengthR0=casing~94:78,95:-24 lengthR0=climb~91:38 lengthR0=comes~0:58,95:-25 lengthR0=creek~91:56
lengthR0=day~14:59 lengthR0=deep~0:69,78:-28,88:-45,91:-22,93:-37,95:143 lengthR0=depth~95:58
lengthR0=diameter~94:38 lengthR0=down~62:111,78:-39,88:62,93:-25 lengthR0=drip~0:59
lengthR0=dripper~15:34 lengthR0=drippers~15:22 lengthR0=drop~92:38,98:53 lengthR0=elevation~38:36
lengthR0=fall~92:27 lengthR0=fence~0:50 lengthR0=first~0:18,91:-40 lengthR0=for~0:35
lengthR0=from~0:47,38:-32,93:62,95:-44 lengthR0=full~0:52 lengthR0=garden~91:-24,92:37,93:28
lengthR0=ground~62:38,91:-41 lengthR0=have~0:54 lengthR0=height~0:-26,78:50,91:34
lengthR0=high~0:55 lengthR0=higher~78:44,91:80 lengthR0=hill~91:48 lengthR0=hose~0:25,77:49
lengthR0=house~0:28,92:43,95:-30 lengthR0=hut~91:30
lengthR0=in~14:48,60:78,62:51,88:77,91:34,102:-25 lengthR0=inch~77:40,93:42 lengthR0=inside~94:69
lengthR0=is~0:-45,93:22 lengthR0=it~0:-23,88:64 lengthR0=just~0:57,93:-31 lengthR0=kitchen~78:48
lengthR0=level~38:26,61:29,62:-33 lengthR0=lift~0:-39,88:40,91:61 lengthR0=line~77:32
lengthR0=lined~95:26 lengthR0=long~0:27,11:73,77:49,91:-22,95:-36
lengthR0=lower~88:-36,91:-15,92:114 lengthR0=m~0:42 lengthR0=my~88:18 lengthR0=not~88:25
lengthR0=of~43:87,77:116,78:-43,88:-28,93:71,95:-45,98:82 lengthR0=off~93:66 lengthR0=on~0:34
lengthR0=one~77:36 lengthR0=our~88:38 lengthR0=over~78:54,92:25 lengthR0=paced~93:40
lengthR0=pe~0:21 lengthR0=people~0:29,88:-29 lengthR0=pex~0:40 lengthR0=pipe~0:28,93:39,98:49
lengthR0=poly~0:54,102:26 lengthR0=pump~0:-72,78:-41,88:51,92:-29,95:11,100:28 lengthR0=pvc~0:21
lengthR0=rim~102:26 lengthR0=rise~91:56 lengthR0=rows~0:-48,15:90 lengthR0=runs~77:28
lengthR0=sea~38:64,61:31 lengthR0=shed~0:32 lengthR0=so~95:32 lengthR0=spring~0:43,91:-35,92:34
lengthR0=static~0:34 lengthR0=stream~0:-50,88:42,91:33 lengthR0=submersible~0:-32
lengthR0=suction~65:28,77:55,91:-25 lengthR0=summer~88:45 lengthR0=surface~88:32
lengthR0=tank~78:56,91:-17,93:38 lengthR0=than~91:41,92:56 lengthR0=that~91:31
lengthR0=the~0:24,43:-43,78:14,88:32,91:42,92:69,93:44,102:78 lengthR0=then~0:66
lengthR0=there~0:-29 lengthR0=to~0:-42,43:36,78:48,93:45 lengthR0=top~92:-42,102:45
lengthR0=total~0:-42,88:24,93:21 lengthR0=under~0:-43,88:30,91:37 lengthR0=up~78:56,91:100,95:-36
lengthR0=uphill~0:-36,91:90 lengthR0=us~78:27,92:45 lengthR0=water~88:132,91:-37,93:-43
lengthR0=we~0:34 lengthR0=well~0:-34,94:35,95:34 lengthR0=when~88:-65,100:66,102:24
lengthR0=where~0:-23 lengthR0=wide~0:52 lengthR0=wire~0:41,43:35,93:-47 lengthR0=with~88:-23,95:47
lengthR0=yield~95:32 lengthR0=|~91:30 lengthR1=,~60:68,62:-26,95:27,102:23
lengthR1=.~16:46,38:43,77:51,78:78,92:26,93:43,95:48
lengthR1=0~0:-40,65:42,78:35,88:15,91:14,93:-51 lengthR1=1~11:53,88:27,92:44,95:24
lengthR1=2~65:43,78:-13,88:16,100:33,102:41 lengthR1=4~0:-49,65:48,91:40,93:-37,98:34
lengthR1=5~16:33,93:40,95:53 lengthR1=6~0:-80,78:58,88:-26,95:37,102:45 lengthR1=7~0:29,62:-46
lengthR1=8~93:34,95:27 lengthR1=9~0:-26,91:38,102:42 lengthR1=;~93:29 lengthR1=a~11:34,91:27,93:45
lengthR1=across~95:33 lengthR1=along~91:36 lengthR1=and~88:28 lengthR1=any~0:26
lengthR1=around~0:62 lengthR1=at~93:-27,95:35,102:15 lengthR1=away~0:-32,91:27 lengthR1=be~0:31
lengthR1=by~0:50 lengthR1=cabin~93:23 lengthR1=climbs~91:54 lengthR1=cm~15:39
lengthR1=cottage~92:28 lengthR1=creek~77:28 lengthR1=deep~94:46,95:-28 lengthR1=distance~0:24
lengthR1=down~92:41 lengthR1=drop~0:-21,93:-24,98:41 lengthR1=drops~0:23 lengthR1=electricity~0:51
lengthR1=feet~0:30 lengthR1=filled~0:46,92:-33 lengthR1=foot~0:23,93:-40
lengthR1=from~0:-28,78:17,88:26 lengthR1=ft~0:46,62:-33 lengthR1=garden~91:40
lengthR1=gives~91:-34,92:51 lengthR1=got~0:45 lengthR1=gpm~0:-39,95:36 lengthR1=grid~88:41
lengthR1=ground~0:20 lengthR1=h~16:27,88:39 lengthR1=hangs~0:-26 lengthR1=has~92:41
lengthR1=head~0:37 lengthR1=higher~0:33 lengthR1=hose~77:46 lengthR1=house~0:-28,78:53,91:72,93:44
lengthR1=i~91:-50,92:41,93:18 lengthR1=if~92:26 lengthR1=in~77:41,91:-21,92:42
lengthR1=is~88:-41,93:-47,94:61 lengthR1=it~0:35,77:60,78:49 lengthR1=l~16:40
lengthR1=line~0:-28,92:30 lengthR1=log~0:41 lengthR1=m~65:34,91:38,94:41,102:22
lengthR1=measured~0:62 lengthR1=metres~93:-31 lengthR1=mm~0:-39,77:44,88:-21,91:32,93:63
lengthR1=of~61:64,95:37 lengthR1=one~0:39 lengthR1=only~0:-40,78:23 lengthR1=out~0:47
lengthR1=pe~0:34 lengthR1=pex~93:18 lengthR1=pipe~0:23 lengthR1=poly~98:16
lengthR1=pump~43:8,93:-15,94:51 lengthR1=pushes~0:-25,88:34 lengthR1=put~91:-30,92:32
lengthR1=runs~100:30 lengthR1=shower~0:62,88:-32 lengthR1=showers~88:28 lengthR1=slope~91:40
lengthR1=so~0:31,91:-27 lengthR1=spring~91:35 lengthR1=stands~0:-26,94:27
lengthR1=submersible~94:41 lengthR1=suction~0:-55,61:69,77:58,88:33 lengthR1=tap~0:41
lengthR1=that~0:-33,95:40 lengthR1=the~16:-73,43:52,77:28,78:58,88:-42 lengthR1=then~91:-34
lengthR1=through~0:32 lengthR1=to~88:15,91:40,95:-29 lengthR1=trough~0:38 lengthR1=two~0:-37
lengthR1=up~0:-41,88:38 lengthR1=was~91:30 lengthR1=water~0:-48,14:46,88:35,95:53
lengthR1=we~91:-38 lengthR1=well~62:25,88:20,91:-36,92:39,93:-38 lengthR1=where~88:47
lengthR1=which~0:50,88:-40 lengthR1=wire~43:70 lengthR1=with~91:-18 lengthR1=|~43:53
lengthR2=)~0:-39,91:25 lengthR2=,~0:21,11:41,43:32,65:47,78:-25,88:-25,91:-13,93:24,95:28
lengthR2=.~16:43,78:28,92:62,93:32,94:22,95:-26,102:26 lengthR2=0~15:37,77:52,91:-25,102:-22
lengthR2=1~0:-45,11:29,61:51,91:29,94:51 lengthR2=2~0:24,62:31,78:34,91:-48,92:64,93:51,102:-43
lengthR2=3~43:33,88:-56,102:79 lengthR2=4~0:18,92:17,95:-32
lengthR2=5~91:49,92:31,94:36,95:-38,100:-36 lengthR2=6~92:-24
lengthR2=7~0:36,88:-32,91:46,93:-37,102:30 lengthR2=8~0:-83,88:42,92:-37,102:66 lengthR2=9~91:-27
lengthR2=above~88:24,93:22 lengthR2=ah~0:24 lengthR2=apart~11:33 lengthR2=away~0:-70,78:49,92:24
lengthR2=barn~0:49,93:-19 lengthR2=beside~0:63,95:-51 lengthR2=bottom~0:40
lengthR2=buried~0:-37,93:39 lengthR2=climb~0:53 lengthR2=comes~0:-47,91:43
lengthR2=deep~93:-27,94:42 lengthR2=do~92:35 lengthR2=drop~98:37 lengthR2=end~0:79,88:-35,95:-33
lengthR2=feet~62:32,93:-32,95:54 lengthR2=first~78:-28,91:38 lengthR2=foot~77:81
lengthR2=from~91:-43,93:76 lengthR2=ft~88:16,95:-43 lengthR2=gallons~88:44 lengthR2=go~0:35,88:-39
lengthR2=gpm~102:30 lengthR2=ground~95:28 lengthR2=h~0:44,95:-38 lengthR2=his~0:38,91:-29
lengthR2=hose~0:53,88:-30 lengthR2=house~0:-34,88:27,91:24,92:46,93:-30 lengthR2=how~0:-32,78:48
lengthR2=hundred~91:55 lengthR2=hung~95:59 lengthR2=inch~0:-36,91:48 lengthR2=inside~95:35
lengthR2=it's~0:-33,91:82,92:-35 lengthR2=km~102:29 lengthR2=l~88:43 lengthR2=line~91:-46,92:31
lengthR2=liters~0:60,78:-50 lengthR2=litres~0:-38 lengthR2=long~91:-40 lengthR2=lower~0:41
lengthR2=m~62:39,88:30 lengthR2=machine~88:31 lengthR2=mail~0:32,78:-26 lengthR2=metres~0:-59
lengthR2=mm~91:-20,98:35 lengthR2=never~95:38 lengthR2=new~0:60 lengthR2=no~88:-35,93:-28
lengthR2=nothing~0:40 lengthR2=one~91:35,93:50 lengthR2=pe~91:-20 lengthR2=per~88:32
lengthR2=persons~0:37 lengthR2=pipe~91:38,98:58 lengthR2=poly~62:-38,77:49,91:57
lengthR2=power~93:33 lengthR2=pump~0:23,43:35,62:-29,78:32,93:-69,102:26 lengthR2=pumping~102:26
lengthR2=pvc~0:51,88:-51 lengthR2=rests~102:44 lengthR2=runs~0:47,62:-33 lengthR2=seven~0:31,91:-37
lengthR2=shower~93:58 lengthR2=since~0:37,93:-35 lengthR2=sink~0:35,91:-84,93:53
lengthR2=sits~0:51,95:-54 lengthR2=so~0:41 lengthR2=solar~88:-41 lengthR2=suction~0:38
lengthR2=summer~0:32 lengthR2=tank~0:34,92:-37 lengthR2=then~93:-26 lengthR2=toilets~93:38
lengthR2=top~0:-47,88:42 lengthR2=two~0:-55 lengthR2=under~0:-38,95:23 lengthR2=up~93:39
lengthR2=v~0:-34,93:34 lengthR2=valve~77:64 lengthR2=was~0:45 lengthR2=washing~88:42
lengthR2=water~0:-88,65:51,93:-28,94:45,95:36 lengthR2=when~88:-34,102:44 lengthR2=where~102:44
lengthR2=which~0:40 lengthR2=yield~88:30 lengthR2=|~0:73,93:-50
lengthT=beds.area~0:-42,11:99,14:51,15:80,16:56,77:-32,78:-17,102:-28
lengthT=power.cable~0:-45,43:-34,92:-41,95:35 lengthT=power.capacity~91:40
lengthT=power.controller~93:-23 lengthT=power.facing~0:-31,43:44 lengthT=power.limit~43:39
lengthT=power.open_voltage~43:42,93:-37 lengthT=power.panel~38:34,43:60,62:39,91:28,102:-26
lengthT=power.series~0:-33,43:23,78:35,95:-37
lengthT=power.source~38:25,43:95,78:54,88:48,91:44,92:-48,95:39
lengthT=power.strings~0:-37,43:18,78:50 lengthT=power.voltage~43:101,61:55,91:17,92:-91
lengthT=pump.control~0:28,62:24,65:40,77:38,78:-69 lengthT=pump.count~0:38
lengthT=pump.cut_in~62:35,77:33,78:-44,88:35 lengthT=pump.cut_out~0:28,62:24,78:-42,88:33,91:-9
lengthT=pump.dry_lift~65:31 lengthT=pump.dry_run~60:79,88:-50,91:-26,95:42,102:65
lengthT=pump.height~0:43,60:43,62:-172,77:-47,78:40,88:48,93:-54,95:76,100:62,102:28
lengthT=pump.most_flow~88:40 lengthT=pump.npsh~61:30
lengthT=pump.placement~0:24,38:55,60:72,61:49,62:45,77:38,78:-28,92:-91
lengthT=pump.present~0:-28,78:41,88:-45,91:-126,92:183,93:75 lengthT=pump.relief~0:30,91:-28
lengthT=pump.set~65:29,78:-42,93:34 lengthT=pump.starts~0:-36 lengthT=pump.works~61:69,93:-46
lengthT=store.days~0:73,78:58,95:-35 lengthT=store.depth~0:30,93:-29
lengthT=store.volume~11:34,15:47,38:23,62:-29,91:72,92:-17,93:56
lengthT=tank.level~0:63,38:27,78:-135,88:67,91:-63,92:-43,93:83
lengthT=tank.volume~0:40,38:44,78:172,88:-27,91:-80,92:-74,93:46
lengthT=water.kind~11:38,15:36,38:40,43:-42,60:62,65:-61,77:-2,78:-23,88:37,91:53,92:136,93:56,94:77,95:96,98:55,100:50,102:96
lengthT=water.level~38:33,61:64,62:49,65:75,77:96,78:46,88:-236,94:66,95:98
lengthT=water.temperature~61:27,65:83 lengthT=water.yield~38:62,62:36,77:-42
lengthT=way.climb~0:78,62:30,77:44,78:-111,88:94,91:-244,92:-153,93:212,94:24,95:8
lengthT=way.length~0:77,38:41,62:34,77:14,78:49,88:45,91:216,92:115,93:-366,95:40
lengthT=way.pipe~43:-55,77:-69,92:108,93:153,95:-59,102:46
lengthT=well.bore~0:-16,60:93,78:-26,88:-25,93:-80,94:-107,95:94,98:39,100:42,102:89
lengthT=well.cover~0:80,62:-54
lengthT=well.depth~43:30,62:71,77:-23,92:-11,93:23,94:128,95:-258,100:40,102:126
lengthT=well.drop_pipe~91:-36,93:32 lengthT=well.pumping~88:-44,98:52,100:-63,102:100
lengthT=well.static~0:-51,62:18,92:-26,94:69,95:59,100:130,102:-93
lengthT=well.tested~0:-57,88:-80,98:50,100:158,102:93 lengtha=~88:45,93:30 lengtha=,_1~0:-28
lengtha=,_3~93:-39 lengtha=,_7~91:26 lengtha=,_all~0:27 lengtha=,_and~0:38,91:-32
lengtha=,_pump~0:-32,88:16,95:36 lengtha=,_so~95:32 lengtha=,_static~95:25
lengtha=,_water~62:21,88:-31 lengtha=.~88:20,93:38,95:32,100:21 lengtha=._2~0:31,88:-38
lengtha=._i~0:-34,88:34 lengtha=._pump~88:28 lengtha=._the~0:-75,95:27 lengtha=;_the~94:34
lengtha=a_day~14:38 lengtha=above_.~91:40 lengtha=above_ground~78:27
lengtha=above_it~0:-61,88:60,91:84 lengtha=above_sea~38:48
lengtha=above_the~0:55,78:92,88:25,91:-27,93:-29 lengtha=according_to~95:45 lengtha=across_,~0:59
lengtha=across_and~94:30 lengtha=altitude_.~0:25 lengtha=and_the~62:51,91:37,93:-53
lengtha=apart_,~15:25 lengtha=apart_.~15:49 lengtha=away_,~0:-26,93:58 lengtha=away_.~0:58,93:34
lengtha=away_and~93:29 lengtha=below_ground~0:42,62:43 lengtha=below_it~91:-24
lengtha=below_the~88:55,91:34 lengtha=between_the~15:59 lengtha=but_i~0:32
lengtha=casing_,~0:-23,94:27 lengtha=casing_.~94:38 lengtha=deep_,~0:26,95:42
lengtha=deep_.~0:34,95:31 lengtha=deep_and~95:42 lengtha=depth_.~95:22 lengtha=down_,~62:36
lengtha=down_in~62:29 lengtha=down_to~0:69 lengtha=from_the~0:79,88:-55,91:-11,92:36,93:57,95:-29
lengtha=hose_.~0:42 lengtha=in_summer~88:45 lengtha=in_the~0:31 lengtha=inside_.~94:28
lengtha=long_,~0:-22,77:43 lengtha=long_.~0:21,11:14,93:42,95:-25 lengtha=lower_.~91:-74,92:70
lengtha=lower_than~91:47 lengtha=of_1~0:-27,43:43,77:34,91:-23,93:36,98:17 lengtha=of_2~93:35
lengtha=of_3~93:49 lengtha=of_4~93:-37 lengtha=of_5~93:28 lengtha=of_cable~43:65,93:-20
lengtha=of_climb~0:22 lengtha=of_drop~98:57 lengtha=of_fall~92:27 lengtha=of_lift~0:-16,91:70
lengtha=of_pipe~93:39 lengtha=of_rise~91:39 lengtha=over_the~0:13,91:-44,92:29 lengtha=pipe_,~0:33
lengtha=rows_,~15:45 lengtha=to_the~0:-44,93:59 lengtha=to_water~88:58
lengtha=under_the~0:-34,91:22 lengtha=up_.~0:-33,91:59 lengtha=up_and~91:33 lengtha=up_the~91:33
lengtha=up_to~93:22 lengtha=with_3~0:37 lengthb=~38:46,43:32 lengthb=,_buried~0:23
lengthb=,_house~91:30 lengthb=,_level~88:61 lengthb=,_lines~11:28 lengthb=,_pump~62:28
lengthb=,_rows~15:54 lengthb=,_static~102:54 lengthb=,_water~88:35 lengthb=._altitude~38:24
lengthb=._borehole~0:55 lengthb=?_|~0:-46 lengthb=a~43:49,77:28 lengthb=a_house~91:42
lengthb=a_spring~91:43 lengthb=a_tank~78:29 lengthb=and_about~92:29 lengthb=and_up~91:20
lengthb=are_at~38:26 lengthb=at_rest~102:33 lengthb=barn_is~91:29 lengthb=bore_is~0:38
lengthb=cabin_is~91:30 lengthb=casing_is~94:27 lengthb=creek_is~88:20,91:-30 lengthb=deep_,~94:17
lengthb=down_to~88:34,100:44 lengthb=each_line~11:43 lengthb=falls_to~100:29 lengthb=floor_is~78:43
lengthb=ft_of~0:34 lengthb=gpm_at~0:42 lengthb=hanging_at~0:28 lengthb=hill_,~91:-32,92:49
lengthb=hole_is~95:36 lengthb=hose_,~88:28 lengthb=hose_is~77:29 lengthb=house_and~0:59,91:-43
lengthb=house_is~0:46,91:-25,93:15 lengthb=hung_at~0:45,98:33 lengthb=hut_,~0:36
lengthb=in_a~94:51,95:49 lengthb=inch_,~98:27 lengthb=is_about~93:58 lengthb=is_at~88:46,102:19
lengthb=is_only~95:40 lengthb=is_to~93:-30 lengthb=it_goes~91:40
lengthb=it_is~0:46,78:-61,88:26,95:46 lengthb=it_stands~0:36 lengthb=km_of~0:35
lengthb=level_at~88:20 lengthb=level_is~0:41 lengthb=lift_is~77:-32,88:39,91:33
lengthb=log_says~0:36 lengthb=m_of~0:48 lengthb=no_,~88:30 lengthb=on_a~78:59 lengthb=only_,~38:30
lengthb=outside_diameter~60:52 lengthb=pipe_,~0:46 lengthb=pipe_:~0:45 lengthb=pipe_is~0:-13,77:26
lengthb=pump_at~62:72,88:-23 lengthb=pump_hangs~0:33 lengthb=pump_is~0:-46,43:47
lengthb=pump_stands~88:29 lengthb=pumping_level~100:41 lengthb=rise_is~91:51 lengthb=set_at~62:18
lengthb=shed_is~0:48 lengthb=sorry_,~88:34 lengthb=spring_is~92:36 lengthb=spring_lies~91:61,92:-48
lengthb=standing_water~102:47 lengthb=stands_at~102:22 lengthb=static_level~0:40
lengthb=submersible_at~62:36 lengthb=tank_is~0:78,91:-22,93:-30 lengthb=the_bank~78:-50
lengthb=the_house~93:35 lengthb=to_house~93:38 lengthb=up_and~0:-24,93:33 lengthb=up_to~0:58
lengthb=water_:~88:38 lengthb=water_at~88:53,100:32 lengthb=water_is~0:-36,88:59
lengthb=water_level~88:-46,102:56 lengthb=we_have~0:40,93:-40 lengthb=well~0:38 lengthb=well_,~0:14
lengthb=well_and~0:-23,91:28 lengthb=well_at~62:37 lengthb=well_is~0:24,88:-27
lengthb=well_it's~93:24 lengthb=well_with~88:42 lengthb=|_suction~0:39
m=angle3~17:48,36:67,39:93,40:41,52:83 m=area-1~0:-26,6:54 m=area0~0:-58,6:76 m=area1~0:46
m=area3~0:89,6:-48 m=area4~0:55,6:-39,69:38 m=area5~0:24,6:129,69:27 m=area6~6:26,69:27
m=area7~6:46 m=bare-1~0:100
m=bare0~0:77,1:-74,3:-73,4:-59,5:-33,16:42,18:-21,27:106,28:78,29:116,31:42,32:-35,34:65,35:119,49:-31,51:38,75:-27,76:98,86:-92,87:40
m=bare1~0:17,3:-101,4:-97,5:-18,18:86,19:37,25:45,30:57,31:46,32:48,33:38,39:-28,40:-21,49:110,51:48,57:74,59:74,62:-24,67:-27,68:77,75:77,76:-43,86:53,87:93,88:-26,95:-27
m=bare2~0:35,1:38,2:37,4:40,27:-50,31:36,32:45,35:-59,51:-17,67:54,86:60,87:44
m=bare3~0:39,2:37,3:109,4:82,5:28,27:-32,29:-57,31:-24,34:-39,35:-33,39:120,41:69,62:45,67:35,87:-65,102:42
m=bare4~0:19,1:28,3:14,4:71,5:51,87:-41,95:34 m=bare5~0:-39,1:56,3:35,86:96,87:-43
m=bare6~0:-32,3:64,94:35 m=bare8~0:36 m=charge3~0:28 m=charge4~44:49 m=charge5~44:142
m=current3~42:47 m=daily1~0:31 m=daily2~0:47 m=daily3~81:69 m=daily4~81:72 m=daily5~80:66
m=daily6~80:102 m=daily7~0:37 m=each2~81:42 m=each3~81:55 m=each4~81:34
m=flow-1~0:-50,7:47,83:115,90:49 m=flow0~0:47,7:51,104:28 m=flow1~0:71,7:71,72:42,104:-45
m=flow2~0:29,8:54,63:46,90:81,103:35,104:91 m=flow3~0:57,63:46,72:43,90:-34,101:52 m=flow5~0:21
m=flow6~90:37 m=flow7~90:42 m=length-1~15:-53,16:161,93:-34
m=length-2~0:-30,60:139,62:-28,91:-24,93:-34,94:218,95:-46
m=length-3~0:300,77:-46,88:-18,91:-22,93:-40,94:-39 m=length-4~0:71 m=length-5~14:51
m=length0~0:102,11:-37,15:110,16:59,38:-45,78:42,88:40,91:-64,92:-61,93:-96,94:127,95:-71
m=length1~0:42,11:-32,15:84,38:-86,62:-76,65:116,77:34,78:59,88:151,91:76,92:82,93:-115,95:-73,102:49
m=length2~0:-60,16:-32,38:-91,43:-28,61:80,62:-52,77:166,78:92,88:140,91:170,92:108,93:-94,94:-61,95:43,100:-42
m=length3~0:-78,11:89,15:-67,16:-46,38:-124,43:28,62:157,78:52,88:21,91:125,94:-83,95:92,98:39,100:107,102:24
m=length4~0:-59,11:104,16:-23,38:-83,43:158,62:106,77:-64,78:-38,88:-91,91:-61,93:226,94:-43,95:192,98:65
m=length5~0:30,78:-46,88:-61,92:-27,93:213 m=length6~0:-57,38:295,88:-43,91:-42,93:95
m=length7~38:243,62:-33,88:-32 m=pair3~58:95 m=percent1~0:26 m=percent2~50:46 m=percent3~50:89
m=percent4~0:44,64:62 m=power-1~0:42 m=power0~0:45,48:-41 m=power1~0:47 m=power4~0:-42,48:80
m=power5~48:177 m=pressure-1~10:70 m=pressure0~12:107,13:53,54:47,58:27,59:-23,66:-40
m=pressure1~0:20,20:38,37:-41,58:25,59:100,66:113
m=pressure2~0:55,21:70,37:114,55:62,58:-28,59:-41,66:-52 m=pressure3~0:29,54:99,58:70,59:48,66:72
m=pressure4~0:50,21:54,54:-47,55:48 m=pressure5~66:36 m=temperature2~0:44,89:73
m=temperature3~36:40,89:41 m=temperature4~22:104,36:38,89:-40 m=time0~0:63
m=time1~0:89,9:31,70:123,71:23,99:21 m=time2~0:35,9:56 m=time3~97:87 m=voltage2~0:71,53:64
m=voltage3~46:-79,47:109,53:147 m=voltage4~46:78 m=voltage5~46:44 m=volume0~0:22
m=volume1~0:31,23:93 m=volume2~0:31,23:58,74:-50,90:70 m=volume3~0:63,24:39,56:155,74:-19
m=volume4~0:-34,24:49,56:181,74:-47,81:51 m=volume5~0:6,24:68,56:-49,79:-24,84:96,96:32
m=volume6~56:-49,74:51,79:48,96:47 m=volume7~56:-61,73:50,74:88,79:106 m=volume8~56:-32,74:82,79:42
m=volume9~0:-26,74:73 pairC=2~58:42 pairC=pressure~58:40 pairC=switch~58:68 pairL0=a~58:30
pairL0=switch~58:57 pairL2=.~58:40 pairL2=0~58:57 pairM=pump~58:46 pairM=tank~58:72
pairM=well~58:19 pairR0=.~0:63,58:4 pairR0=switch~58:6 pairR2=.~58:42 pairT=pump.control~58:50
pairT=pump.cut_in~0:88 pairT=pump.cut_out~0:88 pairT=pump.height~0:72 pairT=pump.placement~58:28
pairT=water.kind~58:25 pairT=water.level~58:18 pairT=way.length~58:32 pairT=way.pipe~58:20
paira=.~58:30 percentC=efficiency~64:69 percentC=lose~50:31 percentC=motor~64:74
percentC=panels~50:36 percentC=pump~0:34 percentC=slope~0:42 percentC=takes~50:37 percentL0=.~64:39
percentL0=about~50:35 percentL0=i~64:31 percentL0=lose~50:31 percentL0=takes~50:37
percentL0=the~0:26 percentL0=we~0:35 percentL1=,~50:32 percentL1=.~0:24 percentL1=a~50:54
percentL1=the~50:28 percentL2=.~50:23 percentL2=0~0:55 percentL2=1~0:37 percentL2=panels~50:24
percentL2=pump~50:19 percentL2=south~50:32 percentM=drip~0:62 percentM=pump~0:62,50:42
percentR0=.~0:42,50:15,64:62 percentR0=in~50:41 percentR0=of~0:47 percentR0=the~50:36
percentR0=to~50:40 percentR1=.~50:51 percentR1=the~0:39 percentR2=.~0:59 percentT=beds.area~0:34
percentT=power.amps~50:52 percentT=power.battery~50:39 percentT=power.cable~50:32
percentT=power.capacity~50:39 percentT=power.controller~50:38 percentT=power.facing~50:51
percentT=power.panel~50:44 percentT=power.series~50:35 percentT=power.source~0:26,50:83
percentT=power.voltage~50:40 percentT=water.kind~0:42 percentT=water.level~64:54
percentT=way.climb~0:32 percentT=way.length~64:44 percentT=way.pipe~64:44 percenta=of_the~0:46
powerC=,~48:55 powerC=2~48:32 powerC=4~48:27 powerC=no~34:42 powerC=panels~48:69 powerC=power~0:21
powerC=pump~0:54 powerC=there~34:42 powerC=two~48:29 powerC=x~48:29 powerL0=a~0:89
powerL0=are~48:16 powerL0=panels~48:46 powerL0=pump~0:38 powerL0=the~0:65,48:-34 powerL0=two~48:21
powerL0=x~48:29 powerL1=,~34:42 powerL1=.~0:39,48:30 powerL1=a~0:29 powerL1=at~0:27
powerL1=is~34:42 powerL1=the~48:28 powerL2=,~0:43,48:44 powerL2=.~48:55 powerL2=inch~34:42
powerL2=there~34:42 powerL2=water~0:46 powerM=cistern~34:42 powerM=pump~0:62,48:61
powerM=spring~34:42 powerM=tank~48:45 powerR0=,~48:32 powerR0=.~0:88 powerR0=panel~48:48
powerR0=panels~48:57 powerR0=pump~0:36 powerR1=0~0:25 powerR1=a~34:42 powerR1=and~34:42
powerR2=,~48:43 powerR2=.~48:31 powerT=power.battery~48:50 powerT=power.capacity~48:46
powerT=power.facing~48:31 powerT=power.source~48:81 powerT=power.voltage~0:-26,48:85
powerT=pump.placement~0:44 powerT=pump.present~34:42 powerT=store.volume~48:25
powerT=water.kind~48:73 powerT=water.level~0:24 powerT=way.climb~48:15 powerT=way.length~48:42
powera=.~0:75 powerb=a~0:29 pressureC=,~10:66,20:59,54:12,55:48 pressureC=0~0:38,10:36,21:47,54:37
pressureC=1~20:21,21:45 pressureC=2~20:48 pressureC=3~55:77 pressureC=4~0:-56,54:15,58:50
pressureC=5~13:37,20:32 pressureC=6~21:50 pressureC=8~0:32 pressureC=:~0:42,54:23
pressureC=above~0:38 pressureC=air~54:79 pressureC=all~0:42 pressureC=bar~55:46
pressureC=begin~12:30 pressureC=between~58:65 pressureC=bladder~54:42 pressureC=booster~66:63
pressureC=box~66:21 pressureC=can~0:56 pressureC=charge~54:55 pressureC=checked~54:56
pressureC=city~0:36 pressureC=comes~58:26 pressureC=constant~66:53 pressureC=control~66:42
pressureC=controlled~66:42 pressureC=cut~58:48,59:40 pressureC=cuts~59:22 pressureC=drip~10:32
pressureC=expansion~20:141,54:-74 pressureC=filter~37:40 pressureC=fittings~37:44
pressureC=frequency~66:41 pressureC=from~0:-56 pressureC=gal~0:-39 pressureC=gallon~20:51
pressureC=gauge~0:34 pressureC=gives~0:17,12:53,66:-30 pressureC=h~13:45 pressureC=he~54:35
pressureC=heater~0:-23,20:39,21:56 pressureC=holds~0:-27,66:85 pressureC=house~66:25
pressureC=i'd~66:59 pressureC=keeps~66:75 pressureC=kicks~58:32 pressureC=l~0:46,12:-47,13:35,54:18
pressureC=least~10:35 pressureC=like~0:42 pressureC=lines~10:39,12:28 pressureC=litre~54:31
pressureC=litres~54:61 pressureC=m~0:34 pressureC=manometer~0:24 pressureC=needs~10:37
pressureC=off~59:54 pressureC=only~37:39 pressureC=out~59:79 pressureC=plastic~37:30
pressureC=point~66:21 pressureC=pre~54:34 pressureC=precharge~54:70 pressureC=preset~54:33
pressureC=pressure~12:23,54:70,59:18 pressureC=pump~58:46,59:48,66:55
pressureC=rated~0:-54,13:42,37:31,55:77 pressureC=reads~0:22 pressureC=relief~21:72,66:-31
pressureC=run~0:44 pressureC=set~66:87 pressureC=shuts~59:36 pressureC=so~0:49
pressureC=speed~66:54 pressureC=start~12:36 pressureC=starts~58:21 pressureC=stop~59:20
pressureC=stops~59:39 pressureC=switch~58:40,59:76,66:-40 pressureC=tank~0:-33,54:106,55:64,59:-35
pressureC=there~0:48 pressureC=valve~0:53,21:87,66:-49 pressureC=variable~66:26
pressureC=vessel~0:-65,20:57,54:90 pressureC=weakest~37:61 pressureC=well~0:-46 pressureL0=(~55:36
pressureL0=,~0:-39,10:48,54:20,66:-5 pressureL0=.~0:27,12:29 pressureL0=0~54:63
pressureL0=:~0:36,54:28 pressureL0=a~12:45 pressureL0=air~54:41 pressureL0=and~59:68
pressureL0=at~13:44,21:42,58:50,59:68 pressureL0=begin~12:30 pressureL0=between~58:65
pressureL0=booster~0:29 pressureL0=charge~54:32 pressureL0=city~0:36 pressureL0=comes~58:23
pressureL0=cut~58:51,59:25 pressureL0=cuts~59:22 pressureL0=drip~0:44 pressureL0=for~0:-39,37:31
pressureL0=gauge~0:39 pressureL0=gives~0:28,66:-30 pressureL0=gpm~0:45 pressureL0=h~13:36
pressureL0=has~0:23,54:48 pressureL0=have~0:32 pressureL0=holds~0:-26,66:89
pressureL0=in~0:-33,58:98 pressureL0=is~0:-40,37:26,54:37 pressureL0=it~0:-46,54:34,66:24
pressureL0=keeps~66:75 pressureL0=l~54:46 pressureL0=least~10:35 pressureL0=like~0:32
pressureL0=lines~12:46 pressureL0=litre~54:36 pressureL0=needs~10:37 pressureL0=off~59:62
pressureL0=on~58:27 pressureL0=only~37:39 pressureL0=out~59:83 pressureL0=point~66:21
pressureL0=pre~54:33 pressureL0=precharge~54:65 pressureL0=preset~54:33
pressureL0=pressure~0:38,66:45 pressureL0=pump~0:61,66:29 pressureL0=pumped~20:32
pressureL0=rated~0:-36,13:48,37:33,55:84 pressureL0=reads~0:22 pressureL0=relief~21:34
pressureL0=says~0:-64 pressureL0=set~59:-32,66:134 pressureL0=shows~0:27 pressureL0=shuts~59:36
pressureL0=start~12:33,58:44 pressureL0=starts~58:21 pressureL0=stop~59:30 pressureL0=stops~59:39
pressureL0=switch~59:32 pressureL0=tank~54:19 pressureL0=the~0:64,12:67,59:-32,66:30
pressureL0=to~0:35,20:58 pressureL0=valve~21:64 pressureL0=water~0:35 pressureL0=with~12:32
pressureL1=,~59:48,66:-31 pressureL1=.~0:-36,13:33,37:32,59:42 pressureL1=0~10:52,59:37
pressureL1=1~13:54,20:31 pressureL1=2~20:37,55:44,59:19 pressureL1=5~54:48 pressureL1=6~0:29
pressureL1=8~54:20 pressureL1=a~0:-50,37:34,58:37,66:53 pressureL1=and~0:-29,58:45,66:47
pressureL1=at~12:71,54:-42 pressureL1=bar~58:38 pressureL1=booster~66:30 pressureL1=box~66:21
pressureL1=constant~66:51 pressureL1=cut~59:27 pressureL1=drip~12:24 pressureL1=drips~21:27
pressureL1=expansion~20:31 pressureL1=fittings~37:44 pressureL1=h~12:71 pressureL1=house~66:41
pressureL1=i~54:25 pressureL1=in~0:-36 pressureL1=is~0:-30,37:27,59:17 pressureL1=on~12:24
pressureL1=pressure~0:-32,12:44,59:30 pressureL1=psi~10:35 pressureL1=pump~58:46,59:24,66:41
pressureL1=relief~21:62 pressureL1=says~0:31 pressureL1=set~59:31
pressureL1=switch~58:27,59:38,66:-28 pressureL1=tank~54:35,55:64
pressureL1=the~12:20,37:58,54:17,58:30,59:10 pressureL1=valve~21:41 pressureL1=vessel~20:24,54:22
pressureL1=with~54:34 pressureL2=,~10:62,13:27,20:38,59:-40,66:39
pressureL2=.~10:45,12:36,13:42,37:15,54:50 pressureL2=0~0:-28,13:54,20:36,21:73,54:-33,55:61
pressureL2=1~0:-10,10:50,20:39,66:28 pressureL2=2~12:38 pressureL2=3~55:43,66:48
pressureL2=4~0:28,54:40 pressureL2=5~20:48,59:-41 pressureL2=6~10:38,13:40 pressureL2=:~0:41
pressureL2=apart~13:30 pressureL2=bar~54:75 pressureL2=beside~66:52 pressureL2=c~20:59
pressureL2=cistern~66:41 pressureL2=cm~13:47 pressureL2=day~66:45 pressureL2=diaphragm~59:32
pressureL2=drip~13:35 pressureL2=emitters~13:77 pressureL2=expansion~20:118,54:-55
pressureL2=ft~12:52 pressureL2=gallons~54:41 pressureL2=gives~12:41 pressureL2=gph~10:35
pressureL2=ground~0:45 pressureL2=heater~21:82 pressureL2=l~55:46,66:50 pressureL2=litre~21:54
pressureL2=m~37:20 pressureL2=off~58:48 pressureL2=people~0:35 pressureL2=pressure~54:41
pressureL2=pump~0:-37,58:39 pressureL2=rated~10:37 pressureL2=room~54:36 pressureL2=set~58:47
pressureL2=shuts~58:20 pressureL2=tank~0:-67,54:43 pressureL2=tape~13:30 pressureL2=two~0:24
pressureL2=use~0:31 pressureL2=water~21:61 pressureL2=|~0:62,66:-32 pressureM=cistern~66:44
pressureM=drip~0:-74,10:79,12:173,13:78,20:50,21:65,54:-51,58:-24
pressureM=pump~0:84,20:61,21:57,55:61,58:67,59:67,66:106 pressureM=roof~66:29
pressureM=spring~0:52,37:47 pressureM=tank~20:70,21:52,54:73,55:43,66:-29 pressureM=well~58:23
pressureR0=,~13:51,66:38 pressureR0=.~0:29,20:50,21:35,37:72,54:58,59:42,66:40
pressureR0=1~0:-28,10:48 pressureR0=3~58:37 pressureR0=?~0:33 pressureR0=a~66:36
pressureR0=and~0:-43,58:20 pressureR0=at~0:30,12:35,66:52 pressureR0=each~0:36 pressureR0=i~0:29
pressureR0=in~0:-30,54:74 pressureR0=is~10:40 pressureR0=it~54:5 pressureR0=lines~12:49
pressureR0=of~54:47 pressureR0=off~58:19 pressureR0=on~58:20 pressureR0=out~58:30
pressureR0=pressure~66:41 pressureR0=pump~0:33,66:40 pressureR0=right~0:41,54:-41
pressureR0=rows~13:25 pressureR0=run~0:38 pressureR0=set~0:-39,66:74 pressureR0=shower~0:18
pressureR0=stops~58:21 pressureR0=switch~54:41 pressureR0=the~0:49,10:28,12:34 pressureR0=when~0:29
pressureR0=where~12:41 pressureR0=with~54:40 pressureR1=,~66:28
pressureR1=.~10:21,12:34,13:44,58:38,66:62 pressureR1=0~0:-24,13:64 pressureR1=2~0:-43,55:49,59:44
pressureR1=5~0:-35,59:24 pressureR1=6~0:16,58:48 pressureR1=8~0:56 pressureR1=?~0:26
pressureR1=bar~58:53 pressureR1=house~0:37 pressureR1=open~0:30 pressureR1=pump~54:32
pressureR1=row~12:33 pressureR1=the~54:44 pressureR1=they~10:43 pressureR1=up~66:34
pressureR1=with~0:38 pressureR1=zones~12:41 pressureR2=,~0:-52,59:55
pressureR2=.~0:15,12:73,20:43,55:36,66:-43 pressureR2=1~54:33 pressureR2=6~0:-39,37:33
pressureR2=bar~0:45 pressureR2=feet~0:49 pressureR2=from~66:49 pressureR2=house~66:36
pressureR2=pressure~21:48 pressureR2=psi~59:26 pressureR2=pump~54:32 pressureR2=run~0:36
pressureR2=should~0:28 pressureR2=well~13:32 pressureT=beds.area~12:79,13:57
pressureT=power.battery~59:25 pressureT=power.capacity~59:24 pressureT=power.voltage~0:35,59:63
pressureT=pump.control~0:-41,12:-35,21:53,54:41,55:31,58:31,66:50
pressureT=pump.cut_in~0:35,54:47,58:-104,59:141,66:-67
pressureT=pump.cut_out~54:47,58:159,59:-92,66:-90 pressureT=pump.most_flow~66:16
pressureT=pump.placement~54:23 pressureT=pump.present~0:39,37:48
pressureT=pump.set~0:72,20:41,66:-79 pressureT=pump.starts~55:41 pressureT=pump.works~59:51
pressureT=store.volume~59:52,66:58 pressureT=tank.level~0:64,37:38,66:-40
pressureT=tank.volume~0:29 pressureT=water.kind~0:13,12:31,13:49,21:42,37:44,59:37
pressureT=water.yield~66:46 pressureT=way.climb~37:46,66:57 pressureT=way.length~0:31,37:70,66:50
pressureT=way.pipe~0:27,37:67,66:6 pressureT=well.bore~66:48 pressureT=well.depth~0:21,54:28
pressurea=~54:40,58:26,66:18 pressurea=.~12:33,37:33,54:61,58:21,66:22 pressurea=._|~0:42
pressurea=and_stops~58:23 pressurea=at_the~12:46,66:34 pressurea=in_it~0:-25,54:40
pressurea=off_.~59:29 pressurea=on_the~0:33 pressureb=,_rated~55:63 pressureb=at_least~10:35
pressureb=cut_in~58:56 pressureb=cut_out~59:32 pressureb=gpm_at~0:45 pressureb=in_at~58:54
pressureb=it_at~66:23 pressureb=off_at~59:61 pressureb=on_at~58:28 pressureb=out_at~59:33
pressureb=pump_at~66:30 pressureb=pump_gives~0:28,66:-30 pressureb=rated_at~13:24
pressureb=set_to~58:29,66:45 pressureb=stops_at~59:39 range~0:54,58:221,66:-44,88:-87,90:36
temperatureC=,~0:29,36:51 temperatureC=0~22:48 temperatureC=3~0:56 temperatureC=5~36:31
temperatureC=heater~22:66 temperatureC=laid~36:38 temperatureC=line~36:38 temperatureC=mm~36:32
temperatureC=poly~36:39 temperatureC=set~22:37 temperatureC=spring~89:28 temperatureC=up~89:20
temperatureC=water~89:98 temperatureL0=,~0:30,36:38 temperatureL0=at~22:79
temperatureL0=is~22:41,89:22 temperatureL0=set~22:32 temperatureL0=up~89:20
temperatureL0=water~89:82 temperatureL1=.~17:60,89:34 temperatureL1=0~22:38 temperatureL1=3~0:54
temperatureL1=heater~22:39 temperatureL1=is~89:20 temperatureL1=the~0:-31,89:21
temperatureL1=water~22:37,89:18 temperatureL2=,~17:59,36:59,89:26 temperatureL2=.~89:45
temperatureL2=5~17:62 temperatureL2=laid~36:38 temperatureL2=line~36:37 temperatureL2=m~89:41
temperatureM=drip~0:49,17:61,22:39,89:-60 temperatureM=pump~17:52,22:61,36:34
temperatureM=spring~89:38 temperatureM=tank~22:52 temperatureM=well~22:35 temperatureR0=,~22:26
temperatureR0=.~22:29,36:55,89:85 temperatureR0=in~36:46 temperatureR0=summer~36:35
temperatureR0=|~22:31 temperatureR1=.~36:33 temperatureT=beds.area~0:50,17:64
temperatureT=power.source~0:45 temperatureT=pump.control~22:21 temperatureT=pump.npsh~89:41
temperatureT=pump.placement~89:53 temperatureT=pump.set~22:26 temperatureT=store.volume~0:20
temperatureT=water.kind~17:52,22:27,36:39,89:80 temperatureT=water.level~89:38
temperatureT=way.climb~0:36,89:28 temperatureT=way.length~36:30,89:18
temperatureT=way.pipe~36:31,89:18 temperaturea=in_summer~36:35 temperatureb=set_at~22:22
timeC=,~9:31,71:29 timeC=0~85:46 timeC=1~85:47,99:21 timeC=3~85:57 timeC=5~99:24 timeC=:~99:17
timeC=after~0:27,97:28 timeC=back~0:42 timeC=bucket~0:39 timeC=came~0:38 timeC=can~9:50
timeC=dry~0:31 timeC=every~0:37 timeC=filled~71:42 timeC=from~71:41 timeC=he~0:14 timeC=l~99:35
timeC=litres~85:31 timeC=min~99:38 timeC=morning~85:50 timeC=night~0:-27,9:44 timeC=pump~0:30,71:51
timeC=ran~99:49 timeC=run~9:54 timeC=runs~71:29 timeC=should~70:45 timeC=spring~0:44
timeC=test~99:24 timeC=took~97:36 timeC=want~70:50 timeC=water~9:45 timeC=within~0:31
timeL0=,~71:42 timeL0=.~0:-40,9:21 timeL0=0~85:22 timeL0=5~0:41 timeL0=a~70:30
timeL0=after~0:27,97:28 timeL0=can~9:29 timeL0=dry~0:31 timeL0=every~0:31
timeL0=for~0:38,70:62,99:71 timeL0=gallons~85:21 timeL0=generator~71:33 timeL0=i~9:21
timeL0=in~0:42,85:84 timeL0=is~0:22 timeL0=it~0:35 timeL0=litres~85:31 timeL0=min~99:37
timeL0=run~9:63 timeL0=runs~71:33 timeL0=the~85:27 timeL0=took~97:37 timeL0=want~70:50
timeL0=water~9:18 timeL0=within~0:31 timeL1=.~45:37,99:58 timeL1=0~0:-37,85:66,97:60 timeL1=1~99:24
timeL1=5~85:23,99:27 timeL1=:~0:-43,85:42,99:21 timeL1=l~99:29 timeL1=m~0:-34,71:41
timeL1=the~0:17,71:62 timeL2=,~9:17 timeL2=.~9:28,70:45 timeL2=1~9:15 timeL2=2~0:-82,70:54,71:19
timeL2=3~0:-38,9:49,71:27 timeL2=4~99:33 timeL2=6~9:36 timeL2=filled~71:38 timeL2=h~9:46
timeL2=m~0:-40,9:33 timeL2=morning~85:50 timeL2=tank~71:24 timeL2=test~99:24 timeM=drip~9:117
timeM=pump~0:40,9:30,71:39,97:52,99:39 timeM=spring~0:60 timeM=tank~0:21,70:66,71:41
timeM=well~97:80,99:52 timeR0=,~0:78 timeR0=.~0:64,9:42,70:26,85:60 timeR0=1~0:42
timeR0=a~9:41,45:56,71:36 timeR0=day~0:-39,9:43,71:92 timeR0=in~70:22 timeR0=is~9:35
timeR0=it~97:52 timeR0=of~70:53 timeR0=pump~0:-35 timeR0=the~0:44 timeR0=to~0:56 timeR0=water~70:36
timeR0=without~0:-51,70:87 timeR0=year~45:63 timeR1=.~45:43 timeR1=0~0:27 timeR1=a~0:-43,71:33
timeR1=and~0:38 timeR1=no~0:28 timeR1=the~9:28 timeR1=water~0:25 timeR2=,~85:79 timeR2=.~0:45,9:33
timeR2=0~0:-33,71:38 timeR2=1~71:57 timeR2=2~0:51 timeT=beds.area~0:-35,9:67
timeT=power.facing~45:61 timeT=power.source~45:55,71:76 timeT=power.tilt~45:63
timeT=power.voltage~0:13 timeT=pump.control~0:43 timeT=pump.cut_in~0:43 timeT=pump.cut_out~0:43
timeT=pump.height~0:55 timeT=pump.placement~0:23 timeT=pump.present~0:47
timeT=store.volume~0:26,70:58 timeT=tank.level~71:31 timeT=tank.volume~71:26
timeT=water.kind~9:23,45:49,70:35,71:47,97:67,99:35 timeT=water.level~99:50
timeT=water.yield~0:-49,70:51,71:37,85:74 timeT=way.climb~0:38,9:50
timeT=way.length~0:66,9:39,71:44 timeT=way.pipe~0:58,9:43,71:28 timeT=well.bore~0:-26,97:56,99:71
timeT=well.cover~99:78 timeT=well.depth~99:57 timeT=well.drawn~0:-24,97:86 timeT=well.static~99:46
timeT=well.steady~97:91 timea=~70:48 timea=.~0:36,85:32,99:23 timea=a_day~9:38,71:47
timea=a_year~45:63 timea=of_water~70:37 timea=without_rain~70:33 timea=without_the~70:34
timeb=~70:31 timeb=water_for~0:53 u=angle°~17:44,39:112,40:32,52:103 u=angle°C~36:66
u=areaacre~0:66,6:16 u=areaft²~0:-65,6:66,69:41 u=areaha~0:-39,6:69 u=aream²~0:140,6:95,69:29
u=bare~0:303,1:83,2:28,3:92,4:55,5:26,27:42,29:66,30:21,31:56,32:45,34:70,39:61,57:27,86:89,88:-62,95:-78,102:-37
u=bareft~88:26 u=barem~0:-39,88:54,95:82 u=chargeAh~44:197 u=currentA~0:43,42:52
u=dailyL/day~80:133,81:101 u=dailygal/day~0:-39,80:73,82:41 u=dailym³/day~0:103 u=eachL/day~81:98
u=eachgal/day~81:34 u=flowL/h~7:92 u=flowL/min~0:46,7:-44,63:54,72:49,83:91,90:108,101:66,103:36
u=flowL/s~0:-66,90:60,104:72 u=flowgph~7:145 u=flowgpm~7:-54,8:50,63:27,72:34,90:91,104:49
u=flowm³/h~0:187,7:-36,8:29,90:-58 u=lengthcm~16:71
u=lengthft~15:14,38:106,43:42,77:45,78:73,88:97,91:73,92:93,93:97,94:-133,95:44,98:48
u=lengthin~0:121,16:60,60:72,77:-44,88:-25,91:-35,93:-45,94:158,95:-53 u=lengthkm~0:35,93:51
u=lengthm~11:55,16:-20,38:113,43:44,60:-36,62:25,65:45,77:88,78:42,88:95,91:80,93:64,95:83,100:35,102:16
u=lengthmi~93:45
u=lengthmm~0:146,14:79,60:60,62:-29,77:-23,78:-36,88:-30,91:-32,93:-52,94:84,95:-22 u=pairpsi~58:95
u=percent%~0:60,50:100,64:57 u=powerW~48:194 u=powerhp~0:99,48:-31 u=powerkW~0:53
u=pressurebar~0:20,10:35,12:69,37:75,54:54,58:55,59:54,66:38 u=pressuremwater~0:36
u=pressurepsi~0:54,20:48,21:11,54:79,58:34,59:44,66:69 u=temperature°C~22:41,89:77
u=temperature°F~22:31,36:37,89:22 u=timedays~45:58,70:223 u=timeh~9:89,70:-46,71:61,85:66,99:26
u=timemin~85:41,97:86,99:50 u=times~0:147 u=timeweeks~0:51 u=voltageV~0:89,46:49,47:58,53:191
u=volumeL~0:24,24:80,56:121,74:64,79:63,84:80,90:43,96:56 u=volumeL/day~0:-44,80:29,81:74
u=volumegal~0:36,23:57,24:30,56:74,73:48,74:66 u=volumeimpgal~79:38 u=volumem³~0:188,56:-60,74:35
voltageC=,~53:37 voltageC=3~47:63 voltageC=4~47:22,53:-40 voltageC=batteries~0:46
voltageC=battery~0:19 voltageC=circuit~47:52 voltageC=controller~46:73,53:-49 voltageC=each~47:61
voltageC=four~0:38 voltageC=max~46:40 voltageC=mppt~46:62 voltageC=open~47:62 voltageC=panels~47:58
voltageC=pump~53:39 voltageC=runs~53:37 voltageC=system~53:22 voltageC=voc~47:56,53:-37
voltageC=voltage~47:38 voltageC=w~47:40 voltageL0=,~53:43 voltageL0=2~0:39,53:-33
voltageL0=a~0:40,53:43 voltageL0=at~0:69 voltageL0=battery~0:29 voltageL0=controller~46:59
voltageL0=is~0:27 voltageL0=panels~47:23 voltageL0=runs~53:34 voltageL0=system~53:31
voltageL0=the~0:-29,47:23,53:36 voltageL0=voc~47:56,53:-37 voltageL0=voltage~47:38 voltageL0=x~0:26
voltageL0=|~53:48 voltageL1=.~46:34,53:63 voltageL1=1~53:38 voltageL1=2~0:57
voltageL1=4~0:-32,47:47 voltageL1=5~0:-40 voltageL1=each~0:28,53:-37 voltageL1=l~0:42,53:-23
voltageL1=mppt~46:46 voltageL1=of~0:-59,47:51 voltageL1=the~0:-7 voltageL1=to~0:51,53:-33
voltageL2=,~46:50 voltageL2=.~0:-18,46:31,53:48 voltageL2=0~46:62,47:14 voltageL2=1~47:34,53:33
voltageL2=2~0:29 voltageL2=4~46:52 voltageL2=5~46:33 voltageL2=6~47:41 voltageL2=8~46:48
voltageL2=9~0:55,53:-24 voltageL2=batteries~0:29 voltageL2=circuit~46:40 voltageL2=ft~53:34
voltageL2=m~0:86 voltageL2=tilt~46:22 voltageL2=v~46:31 voltageL2=|~0:31 voltageM=cistern~53:29
voltageM=drip~53:46 voltageM=pump~0:26,46:40,53:115 voltageM=tank~0:4 voltageM=well~53:62
voltageR0=)~0:45 voltageR0=,~53:46 voltageR0=.~47:50,53:-39 voltageR0=0~53:45
voltageR0=1~0:-46,53:30 voltageR0=5~0:20 voltageR0=8~53:42 voltageR0=and~0:19,53:-33
voltageR0=bank~53:40 voltageR0=batteries~53:19 voltageR0=battery~53:29 voltageR0=cart~0:40
voltageR0=golf~0:39 voltageR0=in~46:52 voltageR0=mains~0:36 voltageR0=open~47:49,53:-37
voltageR0=pump~53:39 voltageR1=.~0:-32,53:42 voltageR1=a~46:30 voltageR1=ah~53:70 voltageR1=m~0:25
voltageR1=to~53:-18 voltageR1=w~0:34 voltageR2=,~0:46 voltageR2=0~53:35 voltageR2=4~0:-40,53:46
voltageR2=5~53:46 voltageR2=ah~0:26 voltageR2=far~0:40 voltageR2=no~46:30 voltageR2=panels~0:-35
voltageR2=w~53:40 voltageT=power.amps~47:20 voltageT=power.battery~53:24 voltageT=power.cable~47:12
voltageT=power.capacity~53:25 voltageT=power.controller~46:42,47:18 voltageT=power.facing~46:16
voltageT=power.limit~46:-33,47:54 voltageT=power.open_voltage~46:23,47:-36
voltageT=power.panel~0:30,46:72,47:55 voltageT=power.series~0:-35,46:75,47:81,53:-46
voltageT=power.source~0:18,46:57,47:74,53:40 voltageT=power.strings~46:60,47:40,53:-28
voltageT=power.tilt~46:41 voltageT=power.voltage~0:129,46:41,47:28,53:-139
voltageT=pump.control~53:45 voltageT=pump.placement~46:35,53:42 voltageT=pump.works~53:48
voltageT=store.volume~0:35,53:51 voltageT=tank.level~47:47 voltageT=tank.volume~46:58
voltageT=water.kind~46:29,53:92 voltageT=water.level~47:22 voltageT=way.climb~53:50
voltageT=way.length~53:57 voltageT=way.pipe~53:33 voltagea=~53:40 voltagea=golf_cart~0:40
voltageb=~0:55,53:19 voltageb=a~53:34 voltageb=battery_is~0:36 volumeC=(~74:47,79:-36
volumeC=,~0:34,81:39 volumeC=0~0:31,23:49 volumeC=1~23:64,74:28 volumeC=3~74:-68,79:31
volumeC=4~0:-14,74:24 volumeC=5~56:44 volumeC=6~0:49,79:-50 volumeC=7~84:37 volumeC=8~0:-65
volumeC=9~0:35 volumeC=:~74:14,84:43,96:41 volumeC=?~56:-45,74:42 volumeC=above~0:-38,74:59
volumeC=bar~56:42 volumeC=beside~0:-45 volumeC=blue~56:40 volumeC=boiler~24:66
volumeC=cistern~74:57 volumeC=comes~79:52 volumeC=day~0:-58,80:62 volumeC=elevated~0:36
volumeC=everything~79:26 volumeC=expansion~0:-35,23:85 volumeC=fed~0:-24,79:25 volumeC=fills~90:24
volumeC=fire~73:49 volumeC=four~0:34 volumeC=from~0:42,74:33 volumeC=ft~74:30 volumeC=gallon~74:32
volumeC=garden~0:19 volumeC=got~0:34,56:-30 volumeC=hav~0:47 volumeC=header~0:-24,79:50
volumeC=heater~23:68,24:45 volumeC=hi~0:59,56:-25 volumeC=hill~79:35 volumeC=holds~0:29
volumeC=hour~84:68 volumeC=keep~0:-30,73:69 volumeC=l~0:-51 volumeC=little~56:42 volumeC=loft~79:39
volumeC=m~79:37 volumeC=milk~0:59 volumeC=morning~84:58 volumeC=need~80:41 volumeC=out~0:-44,96:56
volumeC=overhead~79:36 volumeC=peak~84:21 volumeC=people~81:42 volumeC=pond~0:48
volumeC=pressure~56:63,74:-38,79:-38 volumeC=pump~0:-48,74:49 volumeC=pumped~96:49
volumeC=rainwater~74:59 volumeC=reservoir~79:24 volumeC=runs~0:-29 volumeC=sits~74:35
volumeC=size~74:28 volumeC=spring~0:-19,74:42,90:45 volumeC=submersible~0:43 volumeC=takes~84:52
volumeC=tank~56:48,74:33,79:107 volumeC=tanks~0:25 volumeC=there~0:-26,23:19 volumeC=there's~74:-41
volumeC=tower~0:36 volumeC=truck~0:46 volumeC=two~0:24 volumeC=underground~74:47,79:-24
volumeC=use~84:47 volumeC=vessel~23:52,56:46 volumeC=wants~73:67 volumeC=was~96:23
volumeC=water~0:-43,24:41,74:50 volumeC=well~96:38 volumeC=which~0:36,79:-34
volumeL0=,~0:-61,79:75,81:42 volumeL0=.~56:42,74:15 volumeL0=:~74:37,84:45 volumeL0=;~74:41
volumeL0=a~0:57,23:40,74:44,79:100,90:29 volumeL0=about~0:-38,74:55 volumeL0=an~56:31
volumeL0=at~81:24 volumeL0=boiler~24:67 volumeL0=by~0:24 volumeL0=cabin~0:55 volumeL0=cistern~74:60
volumeL0=day~80:48 volumeL0=expansion~23:69 volumeL0=fills~90:24 volumeL0=fire~73:30
volumeL0=from~74:31 volumeL0=got~74:48 volumeL0=gpm~74:32 volumeL0=has~79:-36
volumeL0=have~0:-53,79:43 volumeL0=header~79:40 volumeL0=heater~24:49
volumeL0=hill~0:49,74:-42,79:23 volumeL0=holds~0:41 volumeL0=hour~84:68
volumeL0=is~23:30,56:54,79:37 volumeL0=it~96:20 volumeL0=keep~0:-30,73:69 volumeL0=loft~79:38
volumeL0=m~0:-44,74:39 volumeL0=morning~84:58 volumeL0=of~0:64 volumeL0=out~96:34
volumeL0=overhead~79:36 volumeL0=people~81:44 volumeL0=pressure~56:47 volumeL0=rain~74:56
volumeL0=rainwater~74:26 volumeL0=reservoir~79:28 volumeL0=spring~0:-53,90:56
volumeL0=storage~74:54 volumeL0=takes~0:-33,84:52 volumeL0=tank~0:31,56:62,74:26
volumeL0=the~74:54,79:53 volumeL0=there~23:22 volumeL0=to~73:36 volumeL0=two~0:48,79:-37
volumeL0=up~79:37 volumeL0=vessel~23:36,56:43 volumeL0=wants~73:67 volumeL0=water~24:56
volumeL0=we~0:-60,80:62,84:40 volumeL0=with~0:19,74:-36 volumeL0=|~0:-32 volumeL1=)~0:39
volumeL1=,~56:45,73:44 volumeL1=.~80:45 volumeL1=0~23:47 volumeL1=1~23:31
volumeL1=2~0:-53,56:35,79:59 volumeL1=3~56:35,74:-38 volumeL1=6~0:-25,79:48 volumeL1=7~84:36
volumeL1=8~0:-32 volumeL1=9~74:35 volumeL1=a~0:20,56:32,79:-25,80:38 volumeL1=above~0:-22,74:31
volumeL1=at~74:27,79:-30 volumeL1=bar~0:-44 volumeL1=blue~56:40 volumeL1=day~74:-43,79:27
volumeL1=everything~79:26 volumeL1=fills~79:-43 volumeL1=for~0:-20,74:52 volumeL1=ft~0:-29
volumeL1=hour~74:43 volumeL1=hours~0:56 volumeL1=i~0:21 volumeL1=in~0:-32,74:-57,79:55,84:45
volumeL1=inch~0:46 volumeL1=into~74:24 volumeL1=is~74:24 volumeL1=m~0:63,74:-26 volumeL1=mm~79:63
volumeL1=on~79:40 volumeL1=one~24:53,74:41,79:-34 volumeL1=our~0:42,74:-37 volumeL1=out~96:22
volumeL1=people~0:-30 volumeL1=pump~0:-22,74:30,79:-29 volumeL1=rainwater~74:36
volumeL1=runs~0:-36,74:40 volumeL1=small~0:33 volumeL1=spring~74:33 volumeL1=storage~79:42
volumeL1=tank~79:43 volumeL1=tanks~0:40 volumeL1=the~0:22,56:20,84:13,90:41
volumeL1=there~0:54,79:-33 volumeL1=time~0:43,79:-33 volumeL1=timed~90:29 volumeL1=to~79:39
volumeL1=up~0:20 volumeL1=valve~0:33 volumeL1=we~90:29 volumeL1=well~0:-25 volumeL1=with~90:29
volumeL2=(~0:44 volumeL2=,~0:76,24:33,56:-31,73:35 volumeL2=.~0:23,80:67,96:30
volumeL2=0~0:-63,79:61 volumeL2=1~79:12 volumeL2=2~56:34 volumeL2=3~0:44,56:31,74:-43,84:48
volumeL2=4~56:40,79:-35,84:41 volumeL2=5~0:-30,23:43,56:31,74:35,79:-20
volumeL2=6~23:24,79:-53,80:38 volumeL2=8~79:-54 volumeL2=9~0:27 volumeL2=:~0:-45 volumeL2=bar~0:-59
volumeL2=by~79:42 volumeL2=c~23:39 volumeL2=cistern~0:-32,74:19 volumeL2=cows~79:26
volumeL2=day~0:-33,74:41 volumeL2=deep~0:29,79:-27 volumeL2=drippers~79:33
volumeL2=every~0:-29,74:24 volumeL2=from~0:29,74:49,79:-33 volumeL2=ft~24:29 volumeL2=gallon~74:32
volumeL2=gallons~0:-34,79:31 volumeL2=generator~0:51,79:-41 volumeL2=h~0:63,79:-46
volumeL2=hill~79:-30 volumeL2=hour~0:-35,79:31 volumeL2=l~0:-29 volumeL2=litres~79:43
volumeL2=m~0:32,79:-31 volumeL2=mains~0:28 volumeL2=meters~0:-40 volumeL2=milk~0:30
volumeL2=minute~0:-33 volumeL2=mm~0:28 volumeL2=no~0:-43 volumeL2=off~0:-44,56:44,79:49
volumeL2=one~0:-44 volumeL2=open~0:35,56:-42 volumeL2=pe~0:35 volumeL2=pressure~0:74
volumeL2=pump~74:25 volumeL2=rain~0:45 volumeL2=relief~23:39 volumeL2=run~0:-34
volumeL2=says~0:-32,74:41 volumeL2=seconds~74:43 volumeL2=set~0:-29,56:48
volumeL2=shower~0:-39,74:30 volumeL2=showers~0:28 volumeL2=sits~74:37 volumeL2=so~0:61,79:-34
volumeL2=switch~0:40 volumeL2=tank~0:-53,74:81,79:35 volumeL2=there~74:-41,79:79
volumeL2=use~0:-33,74:40 volumeL2=valve~23:35 volumeL2=water~23:33 volumeL2=well~56:-37,79:27
volumeL2=which~74:48 volumeL2=zones~0:26,79:-31 volumeL2=|~0:-41 volumeM=cistern~73:33,74:110
volumeM=creek~79:31 volumeM=drip~23:73,24:34,56:-34,79:48,80:41
volumeM=pump~0:41,23:51,24:75,56:36,74:67,80:39,96:32 volumeM=roof~79:36
volumeM=spring~79:-50,90:58 volumeM=tank~0:-34,23:43,56:48,73:52,74:57,79:118
volumeM=well~24:54,56:52,74:-48,96:89 volumeR0=,~23:33,74:28 volumeR0=.~56:33,74:43,79:27,81:39
volumeR0=1~74:36 volumeR0=2~0:-34,79:31 volumeR0=3~0:16 volumeR0=5~0:48,74:-24
volumeR0=6~0:-43,79:-33,81:23,90:64 volumeR0=8~0:34,79:-32 volumeR0=9~81:23,84:27
volumeR0=:~0:-25,90:30 volumeR0=a~0:47 volumeR0=above~74:-26,79:46 volumeR0=and~74:50,79:47
volumeR0=at~24:70 volumeR0=back~73:38 volumeR0=barrel~79:44 volumeR0=below~0:-23,74:54
volumeR0=beside~0:30,74:26,79:-30 volumeR0=bladder~56:36 volumeR0=bucket~0:70
volumeR0=by~0:38,79:-33 volumeR0=cistern~0:49,74:39 volumeR0=concrete~79:50 volumeR0=drum~79:27
volumeR0=each~24:40,81:51 volumeR0=expansion~23:84 volumeR0=for~73:63,79:-29 volumeR0=ground~74:39
volumeR0=heater~0:-36,24:135,56:-37 volumeR0=house~0:-40,74:43 volumeR0=i~0:-54,74:57
volumeR0=in~0:49,24:19,84:53,90:29 volumeR0=is~0:2,74:-53,90:28 volumeR0=it~0:-76,90:27
volumeR0=kept~24:33,73:62 volumeR0=next~74:41 volumeR0=of~73:58 volumeR0=on~79:48
volumeR0=poly~74:42 volumeR0=pre~23:24 volumeR0=pressure~56:67,74:-38 volumeR0=put~0:54,56:-41
volumeR0=right~74:54 volumeR0=sits~56:38,79:25 volumeR0=standing~0:47,79:-27
volumeR0=stands~0:52,74:-25,79:20 volumeR0=storage~74:26,79:-35
volumeR0=tank~0:-42,23:44,56:81,74:68,79:42 volumeR0=terrace~0:38,74:-25 volumeR0=that~79:33
volumeR0=the~74:78,79:39,96:36 volumeR0=to~23:49 volumeR0=top~79:38 volumeR0=tote~79:38
volumeR0=tower~0:-29,79:33 volumeR0=two~84:28 volumeR0=vessel~56:67 volumeR0=water~24:82,56:-33
volumeR0=we~74:-40 volumeR1=(~0:35 volumeR1=,~79:28,96:30 volumeR1=.~23:58,73:44,79:41,84:24,90:26
volumeR1=0~0:44 volumeR1=1~56:31 volumeR1=2~56:46 volumeR1=3~0:-27 volumeR1=4~0:-31,79:16
volumeR1=5~23:40,79:36 volumeR1=8~56:57 volumeR1=;~0:18 volumeR1=?~56:56 volumeR1=a~79:26,81:53
volumeR1=after~0:-28,84:32,90:30 volumeR1=and~0:29 volumeR1=are~0:-31 volumeR1=booster~74:44
volumeR1=c~24:32 volumeR1=day~81:24 volumeR1=fill~0:48 volumeR1=filled~74:44 volumeR1=fills~74:42
volumeR1=fire~73:61 volumeR1=floor~74:43 volumeR1=from~74:33 volumeR1=ft~0:-43,74:27,79:33
volumeR1=full~90:30 volumeR1=hill~74:-38,79:37 volumeR1=hours~84:31 volumeR1=house~79:39
volumeR1=in~0:-34 volumeR1=is~0:47,56:-60 volumeR1=l~81:24 volumeR1=last~0:33 volumeR1=loft~79:45
volumeR1=m~79:17 volumeR1=minutes~84:31,96:44 volumeR1=of~0:-31,79:39 volumeR1=on~56:-32
volumeR1=one~90:29 volumeR1=outside~74:37 volumeR1=psi~56:28 volumeR1=pump~74:54,79:-28
volumeR1=pumps~74:36 volumeR1=relief~24:28 volumeR1=roof~79:28 volumeR1=seconds~0:57,90:39
volumeR1=shed~74:27 volumeR1=stand~79:33 volumeR1=tank~0:25 volumeR1=the~0:-38,56:18
volumeR1=tower~79:30 volumeR1=up~74:51 volumeR1=v~74:27 volumeR1=|~0:44 volumeR2=,~24:46,74:27
volumeR2=.~0:26,79:45,84:47 volumeR2=0~79:56 volumeR2=1~74:62 volumeR2=2~0:29
volumeR2=3~0:-26,56:35 volumeR2=4~0:25 volumeR2=5~79:-37 volumeR2=6~24:37 volumeR2=7~74:-38
volumeR2=:~74:-36 volumeR2=above~79:40 volumeR2=after~96:28 volumeR2=bar~0:-27,23:25,56:54
volumeR2=beds~79:38 volumeR2=below~79:58 volumeR2=diaphragm~74:32 volumeR2=f~24:27
volumeR2=four~0:33 volumeR2=from~73:32 volumeR2=higher~79:30 volumeR2=house~74:28
volumeR2=litres~0:41,79:-47 volumeR2=m~0:27,79:40 volumeR2=metres~79:26 volumeR2=min~74:-50
volumeR2=minute~0:-33,90:30 volumeR2=or~0:30 volumeR2=over~0:46 volumeR2=pipe~0:24,79:-25
volumeR2=psi~0:-30,56:29 volumeR2=pump~0:-33,56:-27,74:87 volumeR2=relief~24:37
volumeR2=second~0:33 volumeR2=stands~74:-45 volumeR2=taps~79:26 volumeR2=than~79:38
volumeR2=use~0:34 volumeR2=v~0:-39,74:63 volumeR2=valve~24:16 volumeR2=water~74:32
volumeR2=wellhead~0:30 volumeR2=|~0:-58 volumeT=beds.area~0:28,80:47
volumeT=power.battery~0:-27,74:51 volumeT=power.cable~74:51 volumeT=power.capacity~74:25
volumeT=power.facing~0:43,79:-43 volumeT=power.open_voltage~0:28,79:-21
volumeT=power.panel~0:28,79:-4 volumeT=power.source~0:56,56:-17,79:61,80:42
volumeT=power.tilt~79:-27 volumeT=power.voltage~74:76,79:-55
volumeT=pump.control~0:50,24:55,56:37,79:-77 volumeT=pump.cut_in~56:60,79:-56
volumeT=pump.cut_out~56:83,79:-59 volumeT=pump.height~0:53,74:-30
volumeT=pump.placement~56:55,74:30 volumeT=pump.present~0:36,79:66 volumeT=pump.set~24:35,79:-48
volumeT=pump.works~0:-64,74:44,80:33 volumeT=store.fills~0:-21,74:13
volumeT=store.hours~0:26,79:-36 volumeT=store.inflow~74:40 volumeT=store.reserve~74:56
volumeT=store.volume~0:41,56:59,73:58,74:-140,79:-35 volumeT=tank.level~56:-48,74:-110,79:206
volumeT=tank.volume~0:60,79:-154,80:33 volumeT=water.kind~0:37,24:50,73:39,74:55,80:39,90:40,96:67
volumeT=water.level~56:19,74:-36,80:58 volumeT=water.yield~0:-36,24:39,84:54
volumeT=way.climb~0:34,24:36,74:74,79:-39 volumeT=way.length~0:45,24:46,79:50
volumeT=way.pipe~0:56,73:35,79:47 volumeT=well.bore~96:65 volumeT=well.depth~56:57,96:35
volumeT=well.drawn_for~96:89 volumeT=well.steady~96:79 volumea=~56:55 volumea=,_2~0:-21
volumea=,_and~0:-35,74:26 volumea=,_filled~0:35 volumea=.~0:55,74:44,79:31 volumea=._1~74:41
volumea=._from~74:-30 volumea=and_stands~74:-22,79:45 volumea=bladder_tank~56:36
volumea=expansion_tank~23:84 volumea=heater_,~24:39 volumea=in_2~0:46 volumea=in_the~74:-49
volumea=poly_tank~74:40 volumea=pressure_tank~56:79 volumea=storage_tank~74:26
volumea=tank_,~0:42,79:-16 volumea=tank_.~74:18 volumea=under_the~0:25 volumea=water_heater~24:71
volumeb=~79:32 volumeb=,_about~0:-27,74:39 volumeb=._cistern~74:21 volumeb=._reservoir~79:27
volumeb=._tank~79:27 volumeb=a~0:27,74:14 volumeb=bucket_of~90:30 volumeb=cistern~0:42,74:-33
volumeb=cistern_is~0:-36,74:47 volumeb=cistern_of~0:44 volumeb=expansion_vessel~23:42
volumeb=fills_a~90:25 volumeb=from_a~74:33 volumeb=have_a~79:16 volumeb=is_a~23:19,79:-35
volumeb=pressure_vessel~0:39 volumeb=tank_is~0:64,74:-37 volumeb=tank_of~0:40 volumeb=to_a~79:31
volumeb=to_keep~73:40 volumeb=vessel_is~56:44 volumeb=water_heater~24:44
"""
