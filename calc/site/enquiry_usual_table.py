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
L=!~0:-62,86:24 L=(~0:38,3:50,55:33,95:19 L=)~3:42,31:45,78:38
L=,~10:33,15:3,16:26,17:-41,37:-41,62:40,67:-43,81:13,83:16,84:-39,88:38,101:-30,104:-34
L=.~6:-44,8:24,9:22,11:32,12:20,17:34,29:32,31:59,39:-25,41:27,51:-27,54:-26,72:-43,75:-39,78:-18,80:38,82:-37,83:-33,86:33,100:-64
L=0~0:45,1:32,4:-35,14:25,20:-32,22:76,23:29,29:-41,34:-48,42:53,54:43,62:-15,63:-33,66:-49,78:14,85:31,88:56,91:62,104:29
L=1~2:-38,4:-41,8:32,59:67,63:25,78:-37,81:56,95:36
L=2~0:74,20:36,34:30,49:-39,53:-36,59:51,78:23,87:28,88:-37,92:-43,93:-20,95:34,104:44
L=3~41:41,62:-47,66:-35,74:-44,78:59,81:54,100:25,102:-50,104:20
L=4~15:-69,41:58,47:28,86:-35,93:40,104:36 L=5~0:13,1:-41,34:-16,42:40,86:-13,88:-37,95:29,99:17
L=6~0:43,49:-27,62:44,79:43,93:-35,102:37 L=7~84:33 L=8~29:-31,81:55,90:43,102:29
L=9~3:-44,74:32,88:-31,90:24,94:46,100:46 L=:~6:30,27:26,38:37,54:24,84:35,90:19,96:34
L=;~50:21,74:39,88:-58 L=?~38:46,86:25,88:42
L=a~0:40,31:-35,34:36,37:15,38:-53,44:32,49:-46,50:25,53:22,56:31,58:29,59:-47,62:15,63:21,73:-30,74:37,78:16,79:56,82:65,84:-31,88:-44,90:45,94:45,95:38,100:-29
L=about~3:47,50:31,74:44,80:43 L=above~0:-33,78:37,86:39,88:-42,93:37 L=across~0:48
L=adjusted~66:34 L=adults~0:63,29:31,34:-22 L=after~0:65,89:29,97:27,101:21 L=agm~0:-38,53:35
L=ah~3:32 L=air~54:56 L=all~0:66,51:35,78:19,86:-62 L=allowed~67:44 L=alpacas~0:-27,87:33
L=altimeter~91:39 L=altitude~38:87 L=am~86:30 L=an~0:29,86:-24
L=and~1:48,4:51,27:45,35:-31,50:55,59:75,86:-26,87:19,90:30,91:28,93:33 L=apart~11:29
L=are~7:40,11:33,37:23,38:37,39:27,62:-46,78:-36,86:61,93:54 L=array~0:-38 L=as~64:34
L=at~0:47,1:-45,4:-27,13:25,22:104,31:-16,36:-29,37:-32,38:87,39:47,43:-41,50:-28,54:-25,58:67,59:63,62:146,77:-17,78:-29,79:-52,81:35,88:59,91:-38,92:-35,93:-60,100:56,101:51,103:43,104:19
L=attic~0:-37,78:51 L=august~0:68 L=back~0:61,58:23,103:29
L=bar~8:22,29:25,55:47,56:38,58:61,59:90,90:-46 L=barn~0:-56,92:48,93:34 L=barrel~79:-29
L=basins~0:55,34:31 L=bath~0:-39,34:43 L=battery~0:46,44:30 L=be~0:51,30:55 L=bed~0:30 L=beds~16:18
L=beef~0:50,1:-39 L=been~0:30 L=begin~12:30 L=behind~0:-41 L=below~0:-31,93:47 L=beside~0:-35
L=between~15:31,58:64,86:46 L=bladder~0:-23,54:38 L=block~8:35 L=blue~56:39 L=boiler~24:68
L=booster~66:29,93:-27 L=bore~0:58,90:63,91:-40,94:35,95:70,102:28
L=borehole~0:-25,91:-27,92:43,95:90,98:35,104:25 L=both~0:-28 L=bottom~78:44,91:33,95:52
L=box~66:20,88:36 L=brings~0:34 L=bucket~0:25 L=budget~0:29 L=buried~0:64 L=but~29:44,33:63,93:52
L=by~0:37,34:48,50:25,92:53 L=cabin~0:60,31:-46,38:37,79:-33,91:55,93:48 L=cabins~0:25,29:-48
L=cable~0:47,43:116,93:-29 L=call~0:44 L=came~0:32 L=campers~0:32 L=can~0:25,9:28 L=captured~0:35
L=cased~0:-34,94:50 L=casing~0:-47,94:6 L=cattle~87:46,93:36 L=cellar~88:83 L=chalet~0:50
L=charge~54:32 L=checked~54:33 L=cistern~72:23,74:67 L=city~0:80 L=climb~0:-62,91:113
L=climbs~0:-31,91:82,93:-22 L=cm~0:-35,7:34,11:38,79:35 L=cold~89:92 L=come~0:44,32:32
L=comes~36:27,58:13,79:33,90:-23,103:28 L=committee~0:16 L=concrete~0:18 L=constant~66:54
L=consumption~81:39 L=control~66:42 L=controller~42:32,46:55,53:-44 L=copper~93:49
L=cottage~0:-42,86:20,91:89 L=count~0:-33,83:31,86:31 L=couple~32:44 L=cover~6:33 L=cow~1:35
L=cows~1:41,3:32,4:43,5:43,81:-25,86:-47,87:49 L=creek~0:-30,92:35 L=cut~0:-40,58:80,59:88
L=cuts~59:19 L=daily~0:-31,80:33 L=dairy~2:30 L=day~1:42,74:-39,80:50,86:31 L=dear~94:35
L=december~0:44 L=deep~91:-42,94:57,102:36 L=degrees~0:29 L=delivers~0:36 L=delivery~0:27
L=depth~62:36,88:-31,95:61 L=dia~0:-34,86:26 L=diameter~0:-28,60:86,94:49 L=diaphragm~0:-40,63:22
L=difference~91:31 L=dishwasher~86:29 L=distance~15:34,91:-31,93:56 L=dn~94:35
L=down~62:41,88:44,100:30 L=drawn~99:30 L=draws~77:64,104:36 L=dried~0:29 L=drilled~0:54,95:49
L=driller~0:-32,90:34,104:29 L=drinkers~87:48,91:44 L=drinks~80:15
L=drip~6:34,7:2,11:29,12:23,15:43,16:31,25:57 L=dripper~16:27 L=drippers~0:-34,7:64,16:72
L=drips~0:46,21:27 L=drop~0:29,91:-36,92:38,93:-36 L=drops~0:95,91:-43,92:42 L=drum~0:-46,78:59
L=dry~0:-37,61:44,68:57,88:48 L=dug~95:38 L=dynamic~88:35
L=each~0:46,11:50,16:45,29:-24,53:-46,80:-42,81:92,86:33,90:-45 L=eco~29:22 L=efficiency~64:69
L=eight~0:34,30:34 L=elevated~0:25,79:-18 L=elevation~38:82 L=eleven~87:29 L=emitters~7:68,16:72
L=end~86:30,88:32 L=ends~0:42 L=enough~70:25 L=et~0:-30,14:69 L=every~7:41,16:49 L=everything~79:29
L=ewes~91:29 L=expansion~20:57,23:84 L=facing~0:-31 L=falls~78:46,91:-36,92:37,100:20
L=family~0:-41,86:73 L=far~0:54 L=farm~0:54 L=farthest~93:29 L=feeds~66:32 L=feet~25:63,87:26,95:40
L=fence~0:36 L=field~0:38,32:29 L=fifty~0:-51,29:21,91:38 L=fill~0:62 L=filled~0:29 L=filter~37:40
L=fire~73:31 L=first~0:26,36:29 L=fittings~37:45 L=float~0:-41 L=floats~0:49 L=floor~78:32
L=flow~0:65,8:29 L=foot~75:34 L=for~0:27,1:33,37:30,42:41,70:55,90:42,99:63
L=four~0:26,26:29,79:-35 L=frequency~66:41
L=from~43:44,49:-46,74:47,78:56,79:45,86:-40,92:36,95:-45 L=ft~6:29,78:-49,86:32,87:-41,88:30,95:31
L=gallon~0:29,5:28 L=gallons~78:28,93:-29 L=galvanised~0:30,79:22 L=garden~0:56,6:46,82:124,93:29
L=gas~86:35 L=gauge~0:50 L=gets~36:81 L=gives~0:79,66:-32,90:65 L=go~0:33 L=goats~3:62,4:51,6:-40
L=goes~6:29,88:27,91:39,95:31 L=got~0:91,74:42,91:30 L=gph~16:41 L=gpm~0:-31,74:43
L=gravity~0:-25,79:47 L=greenhouse~6:15,80:39 L=grid~39:32 L=ground~51:52,92:35 L=group~0:26
L=guess~36:27 L=guests~79:25 L=guy~0:35 L=h~12:55,16:56 L=ha~15:24 L=half~91:-28,92:71 L=hallo~0:35
L=hand~36:26,95:31 L=hangs~0:-40,62:86 L=has~0:57,29:49,54:44,79:-36,93:-47,94:35,98:66
L=haul~74:45 L=hav~0:52 L=have~6:36,32:31,79:49 L=having~0:-39 L=he~0:77,90:-20,104:29
L=head~0:83,86:-36,91:33 L=header~79:39 L=heater~21:38,22:64,24:60 L=height~91:37,93:42
L=hello~0:52,6:-43,49:24 L=hens~0:-63,3:37,4:38 L=hi~74:-39,86:32 L=higher~91:39,93:54
L=highest~91:47 L=hill~0:52,74:-42,79:25,86:29,91:-44 L=hillside~0:59 L=hit~0:30,88:-25 L=hiya~0:24
L=hold~0:19,78:-28 L=holding~79:23 L=holds~66:88 L=hole~95:20 L=home~79:-23
L=horses~0:-44,1:32,87:66 L=hose~77:38,86:31 L=hoses~0:-52,27:58,32:42 L=hour~0:-45,67:100,84:67
L=hours~0:37 L=house~0:24,3:61,6:-38,31:14,62:-32,66:34,78:30,88:-33,91:75,93:63,95:-44
L=household~0:-14,86:53 L=houses~91:31 L=how~95:40 L=hp~62:49 L=hundred~88:-50 L=hung~98:68
L=hut~38:44 L=i~0:49,6:41,9:41,30:53,33:38,54:36,64:26,83:40,88:-38,92:-50 L=i'd~36:26,66:52
L=ibc~78:29 L=in~3:-51,15:28,17:80,18:29,42:37,51:57,58:36,74:-16,84:49,85:69,86:-35,88:78,91:-9
L=inside~34:37,88:-33,102:18 L=installed~79:-32 L=intake~77:60,92:34 L=into~0:-50,74:24
L=inverter~66:33 L=iron~0:28 L=irrigation~0:-36,6:40
L=is~0:69,1:-55,14:39,17:39,22:22,34:38,37:39,38:-27,40:24,43:36,52:-38,74:28,81:-30,89:75,91:36,93:56,94:3
L=isn't~0:40,95:26 L=it~0:42,21:48,31:-23,36:44,50:34,88:21,96:43,100:56,103:39 L=it's~93:43
L=its~91:-41 L=joined~74:75 L=just~0:-41 L=keep~2:37,73:71 L=keeps~0:-27,66:74 L=kia~0:35
L=kicks~58:32 L=kids~0:32 L=kitchen~93:23 L=km~0:40,92:31
L=l~1:24,13:44,16:40,54:27,78:66,88:-32,99:32,100:35,103:26 L=last~0:48,91:-29
L=latitude~0:-71,39:86,40:193,41:50 L=laundry~35:40 L=least~10:34 L=length~77:72,93:44
L=level~62:-14,88:78,91:-13,95:-18,100:69,102:79 L=lies~36:64,91:48 L=lift~61:40,62:-26,88:43,91:63
L=lifted~91:31 L=like~0:41 L=line~11:79,78:-33,88:-32,93:21 L=lined~0:21 L=lines~11:81,12:54,93:-40
L=liter~0:44 L=liters~0:46 L=lithium~0:29 L=litre~0:-45,54:35 L=litres~1:48,22:63,78:49,85:29
L=live~86:64 L=living~0:66 L=loft~79:40 L=log~95:41 L=long~0:38,41:29 L=longitude~41:53 L=look~0:35
L=lose~50:29 L=low~0:20 L=lowered~62:54 L=lowest~88:34 L=m~0:34,2:29,79:46,91:50,94:20,95:61,104:25
L=machine~27:40 L=machines~35:47 L=main~93:43 L=maker~0:-43,67:35 L=makes~88:-33,90:38 L=march~0:25
L=maximum~46:40 L=may~0:56 L=maybe~0:66,50:33 L=me~0:57 L=meadow~32:38 L=measured~0:29,90:34
L=meter~83:73 L=meters~0:30,86:-41 L=metre~95:60 L=micro~0:38 L=milk~0:-24,2:71
L=min~0:52,91:-47,99:36 L=minimum~0:71 L=minute~0:-45,92:30 L=minutes~101:56
L=mm~6:-26,76:29,78:-34,79:57,92:68,93:56 L=month~0:-25 L=months~68:59 L=more~0:-37,67:80,91:22
L=morning~84:56 L=most~63:36 L=motor~0:-52,64:74 L=mountains~86:43 L=mppt~3:35,46:59 L=must~91:36
L=my~0:106,6:-47,49:23,92:36,93:-25 L=need~0:37,80:69 L=needs~0:22,10:36 L=neighbour~0:39
L=net~91:50 L=never~88:48 L=night~9:44,72:42 L=no~67:78,86:75,88:34,91:-38,93:28 L=noon~0:46
L=north~40:54 L=now~0:71,88:39 L=npsh~65:52 L=npshr~65:56
L=of~26:56,30:33,47:43,49:81,50:50,62:-29,70:17,78:13,86:34
L=off~0:-46,39:29,59:86,69:111,74:30,92:47 L=olives~0:-27,6:30
L=on~29:-36,32:31,36:52,50:24,58:63,59:52,78:53,79:52,86:-22,91:-42,92:-45,93:-24,98:58 L=once~0:26
L=one~0:-26,50:45 L=only~33:55,37:37,86:22 L=open~47:63 L=opens~58:-23,59:36 L=or~30:-34 L=ora~0:35
L=orchard~0:-25,6:33 L=our~0:56,74:-45,80:28,86:66 L=ours~95:47 L=out~36:27,56:-30,59:121,96:55
L=outside~0:-45,60:52,86:41 L=over~0:47,29:26 L=overhead~79:38 L=own~0:25 L=panel~52:38
L=panels~31:37,43:23,48:61,51:50,52:71,93:-29 L=parallel~0:-39,29:34,31:-28 L=pasture~0:15
L=pe~79:31,92:38 L=peak~84:27 L=people~29:30,81:88,86:60 L=peppers~0:-23,6:20,15:31
L=per~0:12,67:70,81:46,93:-45 L=persons~29:35,81:47 L=pex~0:23,30:36 L=phosphate~0:23
L=pipe~0:53,29:-35,49:31,77:61,78:-24,88:-26,93:68,95:-37,98:66 L=pit~95:-29 L=place~38:30
L=plastic~37:31 L=platform~78:39 L=please~0:50 L=plot~0:73 L=plus~4:40,82:89 L=pn~0:54
L=point~66:21 L=poly~0:32 L=pond~0:44 L=power~0:37 L=pre~54:34 L=precharge~54:65 L=preset~54:33
L=pressure~0:30,12:25,56:82,58:54,59:18,66:24,79:-43 L=producer~90:22 L=protection~0:-41
L=psi~74:-35,88:41 L=pull~62:51
L=pump~0:84,8:46,31:30,38:-31,43:32,54:-35,58:10,59:40,60:36,62:177,63:80,66:59,74:32,77:22,88:53,90:-71,91:-15,95:-17,98:45,102:-26
L=pump's~0:32,62:39 L=pumped~0:-54,90:-29,96:29,104:31 L=pumping~88:72,100:29,101:21,104:44
L=push~88:-36 L=pushes~78:47 L=pwl~104:16 L=question~0:56 L=rain~69:24,74:62,89:29
L=rainwater~0:-27,74:58 L=raised~78:24 L=ran~99:52,101:35 L=rated~13:60,37:32,55:76 L=reach~0:37
L=read~0:47 L=reads~0:27 L=reckon~81:25 L=reducing~0:51 L=relief~21:96 L=required~65:42
L=reservoir~0:-17,78:32,79:31 L=rest~88:-55,102:95 L=ridge~50:81 L=rings~94:30 L=rise~91:94
L=rises~91:55 L=river~88:31 L=road~0:50,93:-24 L=roof~0:-26,6:-36,69:147,86:24,91:38 L=rooms~0:42
L=roughly~0:-50,32:32,50:23 L=rows~0:-33,15:117,74:28 L=run~0:-37,9:57,43:23,93:45
L=runs~0:-24,53:32,71:32,74:20 L=s~0:-55,41:30,100:36 L=said~0:67 L=same~30:33 L=sawback~38:22
L=say~0:-54,93:94 L=says~0:75,80:50,95:26 L=sch~0:34 L=school~86:28 L=season~88:46 L=second~0:44
L=seconds~0:44,93:-29 L=septic~0:90,74:-20,79:-43 L=set~22:29,62:51,66:119 L=seven~0:-39
L=shaft~0:-36,94:47 L=sheep~3:74 L=should~70:44 L=shower~27:41,31:55,34:68,88:-29,90:-27,91:36
L=showers~1:-31,29:91,30:80,31:68,34:75,86:-49 L=shuts~59:38 L=sink~0:-35,29:34,31:-34,34:29,86:-33
L=sinks~0:-22,31:54,34:29,35:36 L=sirs~94:35 L=sit~0:23 L=sits~62:36 L=six~0:32 L=slope~0:40
L=smal~0:26 L=small~38:29 L=so~0:34,34:35,74:79 L=solar~88:-34 L=sold~0:30 L=sorry~88:12
L=source~90:32 L=spacing~16:24 L=speed~0:50,66:41 L=spell~17:29
L=spring~74:58,78:-42,89:20,90:79,92:81 L=sprinklers~32:53 L=stable~0:-32 L=staff~86:64
L=stand~78:48 L=standing~102:55 L=stands~88:54 L=start~12:36,58:47 L=started~102:39 L=starts~67:76
L=static~0:-22,88:45,91:-26,95:-50,100:21,102:209 L=stock~0:-43,1:43,5:45 L=stop~59:29
L=stops~31:-34,59:85 L=storage~70:32 L=stored~22:73 L=strainer~0:82,93:-33 L=stream~0:-38,90:36
L=strings~0:-56,49:39 L=sub~62:50,86:27 L=submersible~60:12,62:99,86:-37 L=sucks~77:41
L=suction~77:137,91:-34,93:-46 L=summer~86:34,88:30 L=sun~0:52,36:42 L=sunday~0:32
L=supply~0:-35,12:33 L=surface~88:49 L=swears~0:43
L=switch~0:-49,54:-34,56:26,58:123,59:76,66:-40,93:31 L=swl~88:35,102:62 L=system~53:29
L=take~0:29,90:-34 L=takes~0:69,50:35,84:51,86:-31
L=tank~29:-24,54:48,55:69,56:52,59:-33,72:80,74:96,78:100,79:67,88:-40,90:-46,91:-54,92:-47
L=tanks~0:46 L=tap~0:64,91:26 L=taps~0:62 L=ten~0:37,86:-32 L=tent~0:48 L=tents~0:34
L=test~101:32,104:36 L=tested~0:-46 L=than~0:-34,67:80 L=that~36:27,78:46,103:51
L=the~0:102,1:-25,7:-21,11:-38,12:49,20:-40,25:-30,34:-30,36:40,38:-64,39:-36,50:40,51:-39,55:-32,58:25,69:83,72:37,77:27,79:41,90:54,91:56,93:30,95:28,100:37,103:-35
L=then~0:53 L=ther~0:46,86:-29 L=there~1:51,19:39,23:18,76:41,87:32 L=there's~0:-53,56:30
L=this~0:105 L=three~0:7,31:-33 L=through~77:66 L=tilt~52:70 L=tilted~52:40 L=time~30:31,34:37
L=timed~90:27 L=times~58:24
L=to~4:-40,20:48,38:-31,43:48,54:48,62:-25,74:-55,78:35,79:47,88:58,91:51,93:63,94:-44,100:34
L=toilet~0:-26,34:78 L=toilets~0:-23,31:50,34:41,35:63 L=told~78:24 L=too~0:8
L=took~0:44,29:33,64:34,97:36 L=top~1:38,91:33 L=total~0:-53 L=tote~74:28,77:65
L=tower~0:-27,78:56,93:46 L=town~0:63 L=trench~0:20 L=trough~1:48,91:35
L=troughs~0:-51,1:32,87:95,93:34 L=truck~0:43 L=turns~83:31 L=twenty~0:41
L=two~0:41,31:23,35:-35,48:24,49:23,80:39 L=tyre~0:24 L=underground~74:47,79:-23
L=up~78:34,89:89,91:55,95:-38 L=uphill~0:-43,91:48 L=upper~0:-60,79:71,91:46 L=us~0:-53,4:16,50:22
L=use~0:-28,30:34,80:80,84:46,85:28 L=uses~0:63,81:32 L=v~29:36,42:39,43:38
L=valve~21:103,66:-40,75:34,76:48 L=variable~66:23 L=vessel~0:-18,23:51,54:57,56:44 L=village~78:30
L=vines~6:24 L=voc~47:56,53:-33 L=volt~63:36 L=voltage~47:43 L=w~0:-56,47:38,49:42,51:46
L=want~33:47,70:47 L=wanted~66:19 L=wants~0:39,73:65 L=was~0:22,54:24,93:-35,96:23 L=wash~34:27
L=washer~0:30,27:31 L=washing~27:44,35:38
L=water~0:23,5:28,9:47,24:36,38:-31,62:-57,78:-30,88:165,89:154,90:43,92:-39,95:-36,102:90
L=water's~88:35 L=watered~0:35 L=waters~88:43 L=way~0:-51,63:36,93:35
L=we~0:110,29:28,30:-36,38:51,39:29,62:55,70:37,80:80,81:21,84:31,86:45,88:-36,92:21,95:-25
L=we're~86:46 L=we've~0:53 L=weak~90:26 L=well~72:40,78:-24,88:36,90:34,92:-36,94:53,95:86,96:35
L=well's~0:-41,95:61 L=were~0:51 L=what~0:29 L=when~0:23,28:66,31:-37,100:43 L=which~0:-59,30:36
L=winter~88:37 L=wire~43:80,93:-52
L=with~6:29,12:24,30:-38,54:49,74:-48,75:42,76:38,88:13,94:17,102:-28 L=within~88:33 L=works~0:46
L=write~0:51 L=wrote~90:23 L=x~0:88,48:29 L=yard~1:36 L=yards~92:32 L=year~0:11,88:-31
L=yield~0:53,90:39 L=you~0:27 L=your~36:26 L=yurt~0:26 L=zones~0:-33,26:55
L=|~3:29,53:39,86:9,92:37,93:-50 R=!~0:42 R=(~0:-39,29:55,34:34,86:31 R=)~0:98,90:36
R=,~0:62,7:26,9:-51,10:-36,15:33,20:-42,28:-47,30:-53,32:44,34:27,40:85,43:-47,58:45,61:-34,66:31,70:-42,73:-32,74:49,79:48,80:41,87:19,93:41,100:-48,102:18
R=.~0:106,1:-44,2:-24,5:-30,6:49,8:-47,19:-26,25:-36,28:-7,30:-27,32:-68,33:-29,36:37,38:45,46:-29,49:-39,54:18,55:-12,57:-51,58:19,66:27,72:15,80:51,81:76,86:50,89:51,90:41,91:-3,96:-40,97:-48,98:-18,101:-35
R=0~0:45,6:-41,13:66,49:36,58:32,74:-37,79:-43,81:42,84:18,88:37,90:52
R=1~0:41,1:-50,17:54,24:22,27:-79,31:35,35:-66,49:16,56:25,62:24,77:45,78:-58,90:-31,93:20
R=2~29:48,35:67,51:-26,55:38,56:51,59:28,86:-33,87:-28,101:20
R=3~18:49,40:57,58:99,68:36,86:-57,94:44,96:39,104:47
R=4~38:-46,65:38,77:15,78:-38,79:29,88:-38,91:9,98:73 R=5~0:55,1:-40,3:26,32:23,74:-32,88:-27,93:74
R=6~1:-42,3:32,24:41,60:38,81:41,88:-35,102:44,104:30 R=7~0:43,62:-49,78:-37,79:33,86:-45,94:57
R=8~0:71,51:41,53:62,56:50,79:-33,93:33,98:47 R=9~2:52,84:24,86:-31,102:31 R=:~62:53,90:14,93:22
R=;~0:61 R=?~0:99,86:63,90:-43
R=a~0:14,6:-34,9:46,26:49,29:46,31:22,34:33,45:129,56:-36,71:23,79:17,80:37,81:53
R=about~0:-42,3:38,86:17 R=above~38:28,62:-34,74:-32,78:87,79:56,88:55,91:149,93:-30,95:-37
R=according~95:44 R=acid~0:33 R=across~0:28,94:48 R=adults~0:32,86:49
R=after~0:36,84:31,85:19,90:28 R=ago~0:76 R=ah~53:74 R=air~56:57,97:32 R=all~87:38
R=along~0:-29,91:31 R=alpacas~0:51 R=altitude~38:39 R=altogether~80:48
R=an~0:44,29:-19,59:42,67:32,93:-60,101:23,102:49
R=and~0:37,2:25,3:10,27:-29,29:45,30:32,31:56,34:38,53:-45,58:84,87:-57,90:-41 R=apart~15:29,16:22
R=around~0:57 R=arrives~86:25
R=at~0:37,3:-25,4:-36,5:22,8:37,24:55,26:95,28:63,30:72,31:-20,33:50,54:-38,58:29,62:-30,63:62,79:-35,86:32,90:-41,91:-53,93:-49,95:71,100:42
R=automatic~0:-41,1:42,87:31 R=autumn~0:36 R=away~93:87 R=back~73:38 R=bank~53:42
R=bar~0:-37,56:32,58:83 R=barn~78:-30 R=barrel~0:-31,79:48 R=basin~0:25,29:-27
R=basins~31:143,86:-19 R=bath~0:40 R=bathroom~0:72,29:-45,31:-45 R=bathrooms~29:58
R=batteries~0:22,44:38,53:21 R=battery~44:40,53:36 R=be~0:32,86:20 R=beds~0:18,38:24,78:51
R=beef~0:58,1:49 R=before~30:41,93:23 R=begin~12:38 R=behind~0:31
R=below~0:-68,62:39,74:76,78:35,88:64,91:40,92:11,93:-41,95:-49 R=bends~75:80
R=beside~3:44,74:54,79:-37 R=between~15:28 R=bibs~27:36 R=bladder~56:36 R=boiler~23:19
R=booster~74:53 R=bore~0:-55,3:44 R=borehole~0:-33,86:33,91:20,94:44 R=both~27:35
R=bottom~0:72,93:-44,95:99 R=box~0:40 R=boys~0:42 R=break~0:-26,19:59 R=brings~54:32 R=brook~87:33
R=bucket~0:85,90:29 R=bulls~1:48,5:61 R=but~0:127,31:41,32:72,86:-42,93:-27
R=by~0:36,57:55,79:-29,80:43 R=c~0:-44,24:31 R=cabin~24:44,92:37,93:54 R=cabins~29:57
R=cable~43:101,93:-41 R=calf~5:92 R=calves~5:87 R=campers~0:-26,86:60 R=can~8:38 R=cart~0:66
R=case~0:16 R=casing~0:-36,94:64 R=cattle~1:108,3:44,86:-28 R=chalet~0:19 R=chickens~0:-86,4:135
R=children~0:61 R=cistern~3:-35,68:37,74:45 R=climb~91:40 R=climbs~91:50 R=cm~7:34,15:39
R=comes~0:50,95:-24 R=controller~0:34,53:-57 R=cottage~92:42 R=couple~5:33 R=covers~0:26 R=cow~5:61
R=cows~0:-78,1:106,2:163,5:65,86:-34 R=creek~77:28,91:57 R=cut~58:44 R=dairy~2:52
R=day~0:-36,9:41,14:57,71:90,72:65,81:45 R=deep~0:57,78:-31,88:-49,91:-26,93:-23,95:149
R=delivers~0:25 R=delivery~88:36 R=depending~86:28 R=depth~94:38,95:50 R=diameter~94:37
R=diesel~0:61 R=distance~0:44,91:-31 R=dog~0:-19,86:22 R=don't~0:50
R=down~62:77,78:-44,88:84,91:-58,93:-46,104:43 R=drawn~101:35 R=draws~74:25 R=drilled~0:25
R=drink~1:70 R=drinkers~0:5,86:-28,87:132 R=drip~6:113,12:53,16:42,25:37
R=dripper~0:-45,15:44,16:33 R=drippers~0:26,7:23,15:43 R=drop~0:-25,92:39,93:-38,98:92 R=drops~0:53
R=drum~79:25 R=dry~0:-55,1:78,2:33,68:70,82:100 R=e~41:31
R=each~7:48,24:37,29:71,80:-42,81:74,87:25 R=earth~0:34 R=east~5:31 R=elbows~75:57
R=electricity~0:28 R=elevation~38:33 R=else~0:-42 R=emitters~0:-28,11:32 R=enough~74:28
R=every~0:35,15:29 R=ewes~3:160,86:-27 R=expansion~22:79,23:82 R=fall~92:28 R=family~0:-26
R=farm~0:-22 R=fed~0:27 R=feeds~79:44 R=feet~0:55 R=fence~0:54 R=field~0:30 R=fill~0:47
R=filled~0:34,74:58,92:-34 R=fills~0:-36,74:45 R=fine~0:20 R=fire~73:86 R=first~0:35,12:33
R=five~86:-38 R=flat~93:43 R=float~87:102 R=floats~0:-47,87:90 R=flooded~0:25 R=floor~74:44
R=flush~34:26 R=folks~86:53 R=foot~5:53,75:56,76:88,77:44,79:-29,93:-41
R=for~0:26,27:39,73:96,79:-43,80:45,87:34,90:-44,101:68 R=four~86:-49
R=from~4:45,38:-38,74:24,88:16,93:73,95:-24 R=ft~0:56,62:-36,74:25,79:30
R=full~0:33,86:63,88:-35,90:30 R=garden~27:37,88:-34,92:32,93:26 R=gauge~56:-36 R=generator~0:43
R=gets~0:32 R=gives~91:-40,92:48 R=go~0:-26,86:31,95:40 R=goats~0:-34,1:-23,3:169 R=goes~62:48
R=going~29:-42,30:121 R=golf~0:52 R=gone~0:39 R=got~0:65 R=gpm~95:21 R=gravity~0:-56,78:53
R=greenhouse~6:37 R=grooms~91:43 R=ground~62:36,74:33,88:34,91:-37 R=guests~0:46,86:81
R=h~16:25,88:36 R=had~4:35 R=hanging~60:37 R=hangs~88:47,95:21 R=has~92:32 R=have~2:22 R=hdpe~0:34
R=he~0:48 R=head~1:66 R=heads~32:33 R=heater~0:-41,24:136,56:-38 R=heifers~1:66
R=height~78:48,88:-34,91:43,93:33 R=help~0:42 R=hens~0:-85,4:215 R=here~86:45,91:37 R=high~0:28
R=higher~78:44,91:65 R=hill~74:-48,79:28,91:44 R=holds~0:-35 R=horses~1:144,86:-33,87:-25
R=hose~0:-83,27:196,28:94,29:-67,77:90,86:-20 R=hoses~0:-118,27:179,28:103 R=hour~67:89,101:23
R=hours~84:31,90:-41,101:9 R=house~2:69,28:42,74:59,78:48,79:21,88:-33,90:49,91:92,93:70,95:-56
R=household~0:-29,86:27 R=households~0:30 R=houses~0:59 R=how~0:-29,93:28 R=hut~0:-43
R=i~0:52,17:54,25:40,54:-32,91:-34,92:19,93:51,101:19 R=identical~57:101 R=if~91:-41
R=in~0:36,2:17,14:36,36:48,49:80,54:59,57:37,66:-38,78:-38,82:74,84:38,86:19,88:13,96:32,102:-4
R=inch~0:-54,77:48,88:-41,93:67 R=inside~0:-22,94:66
R=is~0:44,9:29,10:31,56:-52,67:83,74:-54,90:49,91:-47,94:41
R=it~0:10,6:28,54:6,59:45,79:-55,86:-47,88:28,90:52,101:28 R=it's~0:32 R=its~29:25,88:51
R=joined~0:44 R=june~0:-51 R=just~0:38 R=keep~1:28 R=kept~0:24,24:31,73:79 R=kids~0:76,3:44,86:-35
R=kind~0:35 R=kitchen~0:65,31:-65,34:44,78:33 R=l~16:41 R=laid~93:37 R=last~0:56 R=late~0:79
R=later~0:55 R=laying~4:26 R=least~10:43 R=level~61:28,74:81,93:36,102:9 R=lift~0:-27,88:37,91:54
R=like~0:-41 R=line~0:69,77:30,91:-32,92:25 R=lined~95:30 R=lines~12:92 R=litres~86:32 R=loft~79:60
R=log~0:28 R=long~0:25,11:70,77:32,91:-25,95:-36 R=loo~29:33,34:56 R=loos~34:65 R=lost~50:75
R=low~0:48,56:-22 R=lower~0:41,91:-29,92:100 R=lowest~88:36
R=m~0:61,15:-49,32:24,65:33,79:35,91:32,93:19,94:32 R=machine~35:64 R=machines~29:34,35:58
R=mains~27:33,88:89 R=may~30:41 R=me~0:46,86:48 R=measured~0:62 R=members~0:27 R=mesh~0:50
R=meter~80:42 R=metre~16:49 R=milk~0:-56,2:154 R=milking~0:-50,2:56,84:32,85:29 R=min~84:27
R=minimum~13:28 R=minutes~84:32,96:46,101:57 R=mm~0:-15,77:43,86:26,88:-24,91:29,93:63
R=modules~48:33 R=monks~86:30 R=months~0:-47,68:73 R=most~86:41 R=mostly~0:-35 R=must~0:40
R=my~0:49 R=n~0:-65,39:180 R=need~10:42 R=new~0:33 R=next~74:48 R=night~0:-37,72:17
R=no~28:32,35:35,93:35 R=nobody~0:39 R=none~3:36 R=north~39:98 R=not~32:40,88:25
R=now~29:57,86:21,89:28 R=o'clock~0:49
R=of~0:40,4:-37,6:34,43:52,44:19,51:52,56:-33,62:-71,69:49,70:47,73:46,77:72,78:-34,86:16,87:-27,88:-62,92:-24,93:62,98:94
R=off~58:52,93:61,101:21 R=old~0:94 R=on~1:41,6:37,16:15,28:51,56:-32,74:-57,79:68,91:-46
R=once~0:-28,28:25,30:83,86:-50 R=one~34:42,77:36,90:29 R=ones~1:40 R=only~0:46,74:27,78:17
R=open~30:67,32:21 R=or~0:46,30:59 R=other~31:33 R=our~0:28,88:55 R=out~0:34,42:44,58:72
R=outhouse~0:-29,29:28 R=outside~27:37,74:36 R=over~0:54,78:55,92:18 R=own~0:-28,29:29
R=paced~93:36 R=paddock~91:36 R=paddocks~3:25,87:42 R=pairs~5:123 R=panel~48:48
R=panels~48:47,49:93,86:-38 R=paper~0:44 R=parallel~0:-32,51:50,57:57 R=pasture~0:-34,1:34
R=pe~0:67,91:-40,93:38 R=people~0:38,29:-40,86:181,87:-27 R=per~16:36,29:-41,67:57
R=person~0:-26,86:126 R=persons~29:-48,86:166 R=phase~0:46 R=pieces~32:28 R=pigs~0:54
R=pipe~0:82,88:-35,93:53,98:55 R=place~0:30 R=plastic~95:24 R=please~0:51 R=plus~1:-38,93:27
R=poly~0:71,74:39,88:-33,93:34,95:-28 R=power~0:-63,27:52,31:20 R=pre~23:24
R=pressure~0:-58,19:101,27:46,56:71,66:36,74:-33,79:-33,86:-55,91:51 R=psi~56:25,63:48
R=pump~28:61,31:-45,39:49,43:37,62:-34,66:49,74:48,78:-30,79:-60,88:94,90:28,92:-32,93:-32,94:59,95:61,100:26
R=pumphouse~0:57 R=pumping~102:32 R=pumps~57:93,74:34 R=pupils~0:-29,86:78 R=pushes~88:34
R=put~0:73,91:-30,92:30 R=pvc~0:53 R=rain~3:-34,74:24 R=rams~0:48 R=ran~88:-25,102:26 R=reach~93:45
R=reaches~93:26 R=reducing~19:53 R=regulator~12:41 R=relief~24:27 R=reserve~70:49 R=reservoir~0:35
R=ridge~0:57 R=right~53:-28,54:-41,74:53 R=rim~102:25 R=rise~91:52 R=road~0:35,91:-26 R=roof~69:48
R=rooms~29:30 R=row~12:33 R=rows~11:73,13:25,15:80,16:50,93:-44 R=run~1:-35,25:5,28:57,29:-64,30:99
R=runs~77:32,88:-40,100:28 R=same~33:19,93:49 R=says~0:68,67:92 R=sea~38:66,61:31 R=second~93:22
R=seconds~0:61,90:38 R=series~49:79,86:-33 R=set~63:45,66:71 R=shed~74:47 R=sheep~0:-18,1:19,3:114
R=should~0:-72,30:48 R=shower~29:192,30:45,31:55,87:-40,88:-36
R=showers~0:-36,1:-41,3:-24,29:188,30:124,87:-49 R=side~57:56 R=since~0:-57
R=sink~0:-65,28:54,29:24,31:143 R=sinks~29:42,31:156,86:-50 R=sits~56:37,79:21 R=size~0:-37
R=sleep~0:-25,86:56 R=slope~91:39 R=small~0:-45,86:23 R=so~0:133,90:41,91:-38 R=solar~1:45
R=something~0:48 R=sorry~0:75 R=south~40:93 R=speed~66:34 R=spring~88:-30,92:42
R=sprinkler~0:-31,32:29 R=sprinklers~0:-35,32:168,33:71 R=staff~0:71 R=standing~79:-28
R=stands~79:20,94:32 R=start~59:26 R=starts~0:-58,56:39,58:58,67:84 R=static~0:28,95:40
R=steers~0:-64,1:81 R=stops~58:18 R=stream~0:-10,88:43,91:32 R=string~0:-65,51:54 R=strings~51:68
R=sub~0:44,95:-38 R=sucks~97:32 R=suction~61:66,74:-37,77:113,88:60,91:-65 R=suggest~86:33
R=summer~0:-49,36:34,88:77 R=supply~0:-40 R=surface~0:76,74:-24 R=switch~0:-8,54:34,58:28
R=takes~0:71,90:-39 R=tank~0:-25,23:41,24:-30,54:35,56:64,59:51,74:62,78:69,79:37,86:-42,91:-43
R=tanks~0:46,19:57 R=tap~0:59,27:47 R=tape~12:41 R=td~104:16 R=teachers~0:-30,86:63
R=tent~0:-27,29:24 R=tents~29:35 R=terrace~0:38,74:-41 R=th~50:55 R=than~88:-26,91:39,92:54
R=that~79:24,95:32
R=the~0:53,2:-50,6:-30,8:40,12:15,24:-43,25:-44,29:-43,30:49,35:-34,40:-27,49:-52,50:44,51:-43,58:-69,63:-28,74:36,78:52,79:33,82:68,88:58,90:19,91:46,92:56,98:-41
R=them~0:-49,3:39,30:44 R=then~58:22,91:-49,96:41 R=there~86:18,88:43 R=they~0:37,6:-28,10:43,32:20
R=three~31:-47,86:37 R=through~0:28,91:-44 R=tilt~52:10 R=time~26:66,30:26,33:45 R=times~0:46
R=to~0:27,1:-38,27:51,50:30,78:38,88:26,91:40,93:44,94:-29 R=toddler~0:50,86:-31
R=together~0:-61,27:31,28:80,29:-45,30:93 R=toilet~31:29,34:114,86:-41
R=toilets~0:-44,29:44,31:45,34:176 R=too~0:74 R=top~82:33,92:-42,102:44 R=total~88:23,93:18
R=tote~79:40 R=tower~0:-56,79:60 R=town~0:54 R=trailer~0:51 R=trees~0:39,50:23
R=trough~0:-46,87:145 R=troughs~0:-69,1:39,86:-39,87:151 R=ts~0:49
R=two~0:8,6:22,49:30,51:-67,74:-31,84:45,86:58,87:-34 R=under~0:25,91:39,102:33
R=up~66:30,78:37,88:33,91:64,95:-44 R=uphill~0:-37,91:85 R=upstairs~0:55 R=us~78:23,86:132
R=use~0:-30 R=valve~75:53,76:85 R=vessel~0:-40,22:81,56:67 R=w~0:56,49:48 R=wait~0:70 R=want~0:27
R=was~0:34 R=wash~27:36,31:55 R=washer~0:-31,35:77 R=washers~35:71 R=washing~34:21,35:113,86:-35
R=water~14:41,17:52,24:74,29:18,34:-31,56:-31,78:-58,88:161,90:38,91:-48,92:-39,93:-28,95:80
R=waterers~0:-51,87:57 R=wc~34:72 R=wcs~0:-30,34:53 R=we~0:44,4:49,29:-50,40:88,74:-35,91:-36
R=well~3:21,31:-38,62:12,74:-28,92:47,94:29,95:59 R=wellhead~0:-27 R=what~93:46
R=when~0:59,66:-36,86:-17,88:-57,100:62 R=where~12:42,88:57 R=which~0:44,25:46 R=why~86:32
R=wide~0:52 R=winter~0:53,50:27,88:-31 R=wire~0:17,43:103,93:-68
R=with~5:75,74:75,86:43,87:50,88:-50,91:-31,94:32,95:59 R=without~0:-50,70:86 R=workers~86:24
R=works~0:26 R=workshop~0:-38,86:35 R=would~50:24,86:27 R=x~0:44 R=yard~0:36 R=year~45:159
R=years~0:33 R=yet~0:-20,66:36 R=yields~0:73 R=young~1:39 R=zones~0:-64,18:139,25:85,86:-38
R=|~0:-24,29:47,43:35,86:24,93:25,102:-52 angleC=,~52:36 angleC=latitude~40:24 angleC=lies~36:68
angleC=north~40:44 angleC=panel~52:44 angleC=panels~52:102 angleC=sun~36:47 angleC=tilt~52:70
angleC=tilted~52:40 angleC=w~52:58 angleC=water~36:25 angleL0=,~52:40 angleL0=at~40:51,52:48
angleL0=is~17:62,36:19 angleL0=latitude~40:24 angleL0=panels~52:53 angleL0=tilt~52:70
angleL0=tilted~52:40 angleL0=we~39:30 angleL1=lies~36:39 angleL1=the~36:59,40:52 angleL2=,~52:51
angleL2=.~40:34 angleL2=mm~36:38 angleL2=panels~40:37 angleM=drip~17:62 angleM=pump~40:32
angleM=tank~40:48 angleR0=.~36:50,40:28 angleR0=n~39:69 angleR0=north~39:98 angleR0=south~40:53
angleR0=tilt~52:10 angleR1=1~36:38 angleR1=pump~39:62 angleR2=,~40:40 angleR2=0~40:37
angleR2=3~40:35 angleT=beds.area~17:65 angleT=power.facing~52:99 angleT=power.panel~52:97
angleT=power.series~52:56 angleT=power.source~17:50,52:120 angleT=pump.placement~40:37
angleT=water.kind~17:46,40:31 angleT=water.level~39:57 angleT=water.yield~40:25
angleT=way.length~36:52,40:41 angleT=way.pipe~36:60 anglea=.~36:23,52:25 anglea=south_.~40:62
angleb=are_at~39:30 areaC=,~6:19,69:13 areaC=0~0:-46,69:36 areaC=from~0:38 areaC=garden~0:18,6:48
areaC=hello~0:35,6:-30 areaC=house~0:51,6:-36 areaC=off~69:38 areaC=rain~69:37
areaC=roof~6:-35,69:55 areaC=vines~6:24 areaL0=.~69:45 areaL0=:~6:40 areaL0=drip~6:38
areaL0=garden~0:44 areaL0=i~0:-37,6:55 areaL0=is~0:-33,6:33,69:35 areaL0=of~0:31
areaL0=orchard~6:33 areaL0=roof~69:26 areaL0=we~0:53 areaL1=,~0:64 areaL1=a~6:48 areaL1=by~69:32
areaL1=garden~0:-34,6:46 areaL1=it~0:-33,6:36 areaL1=mm~0:26,6:-25 areaL1=my~0:45,6:-37
areaL1=roof~69:53 areaL1=the~0:-14,69:45 areaL2=,~69:49 areaL2=.~6:-39,69:36 areaL2=1~6:44
areaL2=2~0:49 areaL2=4~0:63 areaL2=8~0:45,6:-24 areaL2=:~0:27 areaL2=cistern~69:25
areaL2=ft~0:-29,6:37 areaL2=l~0:33 areaL2=m~0:41,6:-30 areaL2=only~69:43 areaL2=pump~0:19
areaL2=two~0:30 areaM=cistern~69:36 areaM=creek~6:30 areaM=drip~0:46,6:122
areaM=pump~0:32,6:34,69:67 areaM=roof~6:-51,69:95 areaM=spring~0:45,6:-32 areaM=tank~69:34
areaM=well~0:50 areaR0=,~0:56,6:17 areaR0=.~0:32,6:60,69:37 areaR0=drip~6:84 areaR0=in~0:40
areaR0=of~6:57 areaR0=on~6:12 areaR0=roof~69:49 areaR0=under~0:28 areaR1=.~0:-42,6:76
areaR1=0~0:51,6:-31 areaR1=3~0:-14,6:25 areaR1=5~0:60 areaR1=a~6:-27,69:45 areaR1=all~0:-34,6:36
areaR1=drip~0:27,6:26 areaR1=in~0:-34,6:37 areaR1=it~0:-26,6:36 areaR1=lines~0:27
areaR1=on~0:-20,6:31 areaR1=pump~0:59,69:-29 areaR2=,~6:19 areaR2=.~0:58 areaR2=1~0:24
areaR2=3~0:42 areaR2=4~0:54 areaR2=5~69:27 areaR2=8~0:35 areaR2=long~0:38,6:-35
areaR2=m~0:84,69:-53 areaR2=rows~0:-27,6:31 areaR2=water~6:29 areaR2=zones~0:-33,6:38
areaT=beds.area~0:38,6:-37 areaT=power.battery~0:48 areaT=power.panel~6:41 areaT=power.source~0:24
areaT=pump.height~0:-38,6:52 areaT=pump.placement~6:33 areaT=pump.works~69:59
areaT=store.fills~0:-38,69:34 areaT=store.volume~0:62 areaT=water.kind~0:56,6:59,69:24
areaT=water.level~0:43 areaT=water.yield~6:11 areaT=way.climb~6:49 areaT=way.length~0:78
areaT=way.pipe~0:49,6:68 areaa=~6:62 areaa=.~0:16,6:34,69:28 areaa=of_vegetables~6:30
areaa=with_drip~0:50,6:-40 areab=~0:36,6:32 areab=roof_is~69:29 bareC=(~0:-47,86:24
bareC=,~4:14,34:37,40:-28,41:40,75:48,76:31,86:-1,88:34 bareC=0~1:43,34:-25,49:27,51:40
bareC=1~0:42,2:-38,3:-46,31:74,75:36,87:42
bareC=2~0:25,29:-24,30:-45,34:13,35:26,51:28,76:44,86:-21,95:37
bareC=3~1:41,3:62,28:68,33:65,51:33,86:-20,87:-28,88:48 bareC=4~0:38,2:-34,41:65,49:27,75:48,86:-37
bareC=5~1:-53,42:37,51:25,59:19,75:39,76:22 bareC=6~34:33,91:41 bareC=7~0:-36,32:25
bareC=8~0:17,3:66,86:-87 bareC=9~5:39 bareC=:~27:40,51:55,87:42 bareC=acre~26:18 bareC=adults~0:71
bareC=after~0:21 bareC=agist~0:44 bareC=agritourism~0:31 bareC=all~0:31,29:31,51:35,86:-48
bareC=also~86:-53 bareC=am~0:38 bareC=array~0:-37 bareC=back~0:34 bareC=bar~0:-58,59:121
bareC=barn~0:-43,1:50,87:44 bareC=basins~34:35 bareC=bathrooms~0:-47,31:36 bareC=batteries~0:24
bareC=bed~0:49,86:-39 bareC=between~0:37 bareC=blok~0:34 bareC=but~29:40 bareC=cabin~0:-42,86:69
bareC=cabins~0:33,29:-48,86:34 bareC=call~0:40 bareC=calves~0:-33,1:43 bareC=chalet~0:36
bareC=children~86:49 bareC=cistern~0:-41 bareC=come~32:31 bareC=comes~0:53
bareC=cottage~0:-28,86:31 bareC=couple~32:25 bareC=cows~0:-24,1:65,3:27,4:42,5:45 bareC=cut~58:31
bareC=dairy~2:31 bareC=day~0:-94,86:60 bareC=dear~94:35 bareC=deep~62:35,88:33 bareC=dn~94:36
bareC=do~86:-33 bareC=drinkers~91:44 bareC=drip~0:-37,25:55,26:35,27:57 bareC=dry~68:59
bareC=each~0:61,29:-26 bareC=eight~30:42 bareC=eleven~0:-41 bareC=every~0:61 bareC=ewes~1:43
bareC=family~0:-44,86:69 bareC=farm~0:57 bareC=feet~0:-68,75:41 bareC=five~35:22
bareC=foot~0:-63,75:35 bareC=four~26:30 bareC=from~86:-51 bareC=ft~76:42 bareC=gal~0:25
bareC=girls~0:25 bareC=goats~0:-51,3:57,4:87 bareC=good~42:45 bareC=got~0:-45 bareC=gpm~0:-43
bareC=grid~39:18 bareC=group~0:26 bareC=guesthouse~0:-50,29:33,86:40 bareC=guests~0:33
bareC=h~33:43 bareC=hallo~0:25 bareC=hav~0:43 bareC=hello~0:34 bareC=helo~0:43
bareC=hens~0:-42,3:37,4:38 bareC=here~86:34 bareC=hi~0:82,1:-68,86:26 bareC=horse~0:-33
bareC=horses~0:-43,1:26,27:43,87:55 bareC=hose~0:-19,33:47,86:24 bareC=hoses~0:-20,28:75,32:23
bareC=hour~67:34 bareC=house~31:33 bareC=household~0:-17,86:53 bareC=hp~0:42 bareC=hundred~86:68
bareC=if~0:37 bareC=it's~86:29 bareC=its~0:34 bareC=just~0:-18,86:38 bareC=kids~0:53 bareC=l~86:25
bareC=last~0:34 bareC=latitude~0:-53,39:91,40:85 bareC=laundry~35:40 bareC=like~0:-43,31:65
bareC=line~0:18,75:43 bareC=live~0:-29,86:41 bareC=lodge~0:-24,29:24 bareC=long~41:30
bareC=longitude~41:53 bareC=m~62:62,75:45,95:43 bareC=machine~27:41 bareC=machines~35:48
bareC=make~0:-24 bareC=me~0:34,1:48 bareC=milk~0:-23,1:28,2:68 bareC=min~0:34 bareC=mm~75:50,76:30
bareC=months~68:59 bareC=mother~86:40 bareC=mppt~42:45 bareC=n~0:-39 bareC=off~39:14,59:33
bareC=one~0:24,29:26,31:20,34:47,50:47,86:-44 bareC=only~33:58,86:28 bareC=or~0:42,30:-34
bareC=outside~0:-35 bareC=over~29:32 bareC=panel~0:34 bareC=panels~0:38,49:69,51:94,86:-33
bareC=people~0:-13,3:48,4:44,5:42,86:47 bareC=pipe~0:50,76:37 bareC=plot~0:46 bareC=plus~4:40
bareC=poly~0:-67 bareC=power~51:56 bareC=pressure~0:52,86:-31 bareC=psi~0:70
bareC=pump~29:44,49:-48,62:55,67:67,95:15 bareC=put~87:34 bareC=question~0:28 bareC=quick~0:21
bareC=right~0:-43 bareC=roof~86:30 bareC=run~0:40 bareC=runs~0:40 bareC=s~0:-29,41:31
bareC=school~86:32 bareC=series~51:33 bareC=sheep~3:74 bareC=shower~31:73,34:50,35:42
bareC=showers~0:-61,1:-39,29:75,30:74,31:64,34:55,35:72 bareC=since~0:37
bareC=sink~0:-53,29:45,31:-33,34:14 bareC=sinks~0:-44,29:37,31:26,34:30,35:29 bareC=sir~0:31
bareC=sirs~94:35 bareC=sit~0:43 bareC=smal~0:82,29:-39 bareC=so~86:64 bareC=solar~0:39
bareC=sorry~86:44 bareC=springline~0:21 bareC=sprinklers~0:-48,32:39,33:65 bareC=stable~0:-28
bareC=staff~0:-31,86:65 bareC=stands~0:-38 bareC=starts~67:44 bareC=static~102:81 bareC=stock~0:-40
bareC=stops~59:50 bareC=strings~49:41 bareC=submersible~95:40 bareC=suction~75:87,76:47
bareC=surface~0:-50 bareC=switch~0:36 bareC=tank~0:-14,86:-33,87:31 bareC=team~29:23
bareC=teenage~0:26 bareC=tent~0:56 bareC=that's~86:34
bareC=there~0:-67,19:40,29:38,30:34,31:73,34:29,76:39,86:-30,87:36 bareC=third~0:-27
bareC=thirty~1:30 bareC=three~0:20,31:-37 bareC=together~86:35 bareC=toilet~0:-40,34:79
bareC=toilets~0:-57,27:35,31:40,34:34,35:72 bareC=took~29:32 bareC=total~0:-49,32:72
bareC=troughs~0:-27,87:96 bareC=two~28:49,35:-32 bareC=up~86:33 bareC=us~4:17 bareC=use~27:49
bareC=uses~0:41 bareC=v~42:44 bareC=valve~0:-54,75:35 bareC=volt~86:24 bareC=w~0:-34,49:105,51:50
bareC=want~33:46 bareC=was~0:50 bareC=wash~34:28 bareC=washing~27:43,35:40
bareC=water~0:-30,5:26,86:-34,88:69 bareC=wc~0:59 bareC=we're~86:37 bareC=we've~1:58
bareC=well~0:34,86:-25,94:33,95:29 bareC=when~28:67 bareC=which~30:52 bareC=yard~0:-34,87:43
bareC=zones~26:55 bareL0=(~86:49 bareL0=,~0:-12,1:70,4:41,31:13,34:32,35:39,39:39,41:47,88:38,95:40
bareL0=.~3:24,5:20,19:58,29:35,32:-49,86:60,87:39 bareL0=0~1:48,3:-39,27:-35,49:32
bareL0=1~0:-23,4:-33,31:63 bareL0=2~4:39,27:57,31:34 bareL0=3~0:42,3:18
bareL0=4~3:69,29:29,35:-37,41:46 bareL0=5~0:38,86:-38 bareL0=6~0:26 bareL0=8~0:23,86:-30
bareL0=:~0:-72,1:41,29:28,31:33,51:49,86:23 bareL0=;~30:17 bareL0=?~0:-38,86:59 bareL0=a~1:38,87:54
bareL0=about~3:52 bareL0=adults~0:35 bareL0=all~86:-41 bareL0=also~3:41
bareL0=and~0:22,1:24,4:55,27:48,30:-42,42:40,75:23,86:-73 bareL0=are~68:29,86:71
bareL0=at~0:38,59:45,62:58,86:-29,88:52 bareL0=barn~87:38 bareL0=bathrooms~0:38
bareL0=beef~0:59,1:-37 bareL0=between~0:34 bareL0=bore~0:44 bareL0=cattle~0:33,1:-37
bareL0=climb~0:-38,91:43 bareL0=come~32:32 bareL0=cows~0:-40,5:58,86:-38 bareL0=cut~58:32,59:50
bareL0=dairy~2:51 bareL0=day~0:-58,86:31 bareL0=dry~68:33 bareL0=each~29:-25
bareL0=family~0:-28,29:-24,86:108 bareL0=feeds~87:41 bareL0=foot~0:-60,75:36 bareL0=for~0:27,1:34
bareL0=four~0:-70 bareL0=ft~0:61,29:-28 bareL0=garden~86:25 bareL0=goats~3:55,4:20 bareL0=gpm~0:-22
bareL0=grid~39:18 bareL0=has~0:-33,29:17,31:47 bareL0=have~3:32,29:24 bareL0=hello~86:20
bareL0=hens~0:-49,3:42,4:44 bareL0=higher~0:-48 bareL0=horses~0:-17,87:24
bareL0=hose~0:-40,27:39,86:32 bareL0=hoses~0:-27,32:43 bareL0=house~29:50
bareL0=household~0:-26,86:89 bareL0=i~0:25,86:-32
bareL0=in~18:41,29:-39,34:41,42:42,51:73,58:31,86:-50 bareL0=is~0:61,76:46,86:-28
bareL0=it~0:37,58:23,86:26 bareL0=it's~86:23 bareL0=keep~2:37,4:37 bareL0=kids~0:40
bareL0=kitchen~0:68 bareL0=latitude~0:-53,39:91,40:85 bareL0=laundry~35:40 bareL0=live~86:39
bareL0=lodge~29:24 bareL0=long~41:30 bareL0=longitude~41:53 bareL0=m~91:41 bareL0=machines~35:50
bareL0=make~0:-35 bareL0=may~0:39 bareL0=maybe~0:39 bareL0=milk~2:50 bareL0=milking~1:36
bareL0=months~68:34 bareL0=my~49:24 bareL0=need~0:26 bareL0=of~4:30,49:73,86:54
bareL0=off~39:17,59:36 bareL0=on~0:-46,32:42,58:44 bareL0=one~31:60,50:51 bareL0=only~33:58,86:25
bareL0=or~30:-34 bareL0=our~86:27 bareL0=out~59:50 bareL0=own~0:-36 bareL0=pairs~1:45
bareL0=panels~0:26 bareL0=people~34:-36,86:41 bareL0=pex~0:31,86:-33 bareL0=pipe~0:73
bareL0=plus~4:38 bareL0=poly~0:-61 bareL0=power~51:50 bareL0=psi~0:33 bareL0=pump~62:74
bareL0=question~0:76 bareL0=run~0:-29,28:63,33:27 bareL0=s~0:-30,41:31 bareL0=series~51:36
bareL0=seven~34:28 bareL0=sheep~3:42 bareL0=shower~0:-38,31:32,34:62 bareL0=showers~29:121,86:-46
bareL0=sink~29:37,31:-20,34:49,86:-36 bareL0=sinks~31:64 bareL0=so~0:-63,86:31 bareL0=solar~0:54
bareL0=sorry~86:44 bareL0=sprinklers~0:36 bareL0=stable~1:24 bareL0=static~102:90 bareL0=stock~5:46
bareL0=stops~0:-54,59:49 bareL0=strings~49:54 bareL0=summer~86:40 bareL0=tank~5:32,29:-25
bareL0=the~28:53,29:34 bareL0=there~0:-56,19:43,87:12 bareL0=there's~29:59 bareL0=three~0:63,29:-46
bareL0=time~30:32 bareL0=to~0:83,4:-32 bareL0=toilet~34:46 bareL0=toilets~0:-40,31:8,34:90,35:45
bareL0=troughs~0:-39,1:33,87:61 bareL0=two~1:37,49:31 bareL0=v~29:43,31:-33,42:45
bareL0=valve~75:35 bareL0=w~0:-16,49:43 bareL0=want~33:52 bareL0=was~0:37 bareL0=washing~35:46
bareL0=water~0:-33,5:38,88:84 bareL0=we~0:-30,86:61 bareL0=we're~86:33
bareL0=well~0:-30,31:33,94:35,95:42 bareL0=when~0:34 bareL0=which~30:38 bareL0=with~29:28
bareL0=yard~1:37 bareL0=zones~26:35 bareL0=|~0:54,31:-34,86:59 bareL1=!~0:-34,86:24
bareL1=(~3:49,86:-41 bareL1=)~0:39 bareL1=,~1:-28,31:12,32:-31,34:-26,35:58,51:36,76:28,86:34,87:31
bareL1=.~3:-23,28:46,32:43,34:47,41:61,58:39,59:26,68:56,86:-35
bareL1=0~0:-27,4:-53,18:66,27:34,29:-17,32:34,87:32,88:55 bareL1=1~0:-19,59:31,86:52
bareL1=2~0:-32,18:37,95:42 bareL1=3~3:-43,28:37,41:49,88:57 bareL1=4~1:47,3:-34,41:20,49:45
bareL1=5~1:-28,42:37,59:17 bareL1=6~49:-24,62:41,87:-36 bareL1=8~29:-42,86:15 bareL1=9~3:-34,5:38
bareL1=:~1:-49,27:39,34:75 bareL1=;~0:47 bareL1=a~0:10,31:-45,75:41 bareL1=about~0:83,87:36
bareL1=above~86:28 bareL1=adults~0:31,29:47,34:-21 bareL1=ah~3:32 bareL1=and~86:48,87:48
bareL1=are~5:37 bareL1=at~0:-23,3:-29,28:46,30:39,31:-11,34:41,87:56,95:47,102:48 bareL1=back~0:38
bareL1=bar~59:40,86:-21 bareL1=battery~0:-39 bareL1=bore~0:32 bareL1=both~0:-36
bareL1=but~29:54,33:65 bareL1=cabin~0:92,86:-33 bareL1=cattle~0:-49,1:68,87:23
bareL1=count~0:-28,86:30 bareL1=cow~1:35 bareL1=cows~3:48 bareL1=dear~94:35 bareL1=deep~0:-44,62:35
bareL1=down~0:-45,29:38 bareL1=drinkers~91:44 bareL1=drip~25:44 bareL1=drops~32:33
bareL1=each~86:43 bareL1=eleven~0:-29,87:31 bareL1=end~86:30 bareL1=family~29:29,86:-34
bareL1=feet~25:64,86:-51,87:32 bareL1=fifty~29:21 bareL1=foot~0:42 bareL1=for~42:43
bareL1=four~0:39,26:31 bareL1=from~0:26 bareL1=ft~29:44,86:23,87:-31 bareL1=gallon~5:29
bareL1=generator~86:34 bareL1=go~31:26 bareL1=ground~51:53 bareL1=guests~0:35 bareL1=half~0:32
bareL1=has~0:28 bareL1=have~0:34,29:-58 bareL1=head~0:55,86:-36 bareL1=hello~49:24 bareL1=hi~86:32
bareL1=higher~0:39 bareL1=home~0:-38 bareL1=hour~67:34 bareL1=house~3:40,31:16,86:-27
bareL1=i~0:-23 bareL1=in~0:-51,3:-44,29:17,86:19 bareL1=inch~0:-38 bareL1=inside~34:37
bareL1=is~0:-47,34:32,86:61 bareL1=it~27:32 bareL1=kids~29:30 bareL1=kitchen~0:-59,86:40
bareL1=l~1:32 bareL1=latitude~41:53 bareL1=lodge~0:31 bareL1=m~0:-58,34:25,87:-46 bareL1=many~86:45
bareL1=meters~86:-41 bareL1=no~86:32 bareL1=north~0:22 bareL1=not~3:41 bareL1=of~0:-51,75:40
bareL1=on~0:56,29:-33 bareL1=one~0:23 bareL1=our~86:42 bareL1=over~29:27
bareL1=panels~0:-17,31:42,51:25 bareL1=parallel~29:35,31:-28 bareL1=persons~29:21,34:50
bareL1=pex~30:36 bareL1=pipe~49:33 bareL1=please~0:47 bareL1=plus~0:-30 bareL1=poly~0:62,86:-34
bareL1=power~0:42,86:-38 bareL1=pump~0:19 bareL1=same~0:-28,30:37 bareL1=shower~31:24
bareL1=showers~29:-28,30:59,31:47,34:72 bareL1=sink~0:-37,86:21 bareL1=sinks~0:-30,27:33,35:40
bareL1=sirs~94:35 bareL1=sorry~0:36 bareL1=sprinklers~32:50 bareL1=stable~5:34 bareL1=staff~86:35
bareL1=stock~1:44 bareL1=strings~0:-29 bareL1=submersible~0:27,86:-36
bareL1=the~0:-56,1:-30,19:38,32:29,50:45,58:44,87:38 bareL1=there~1:60,30:35 bareL1=three~30:47
bareL1=time~34:40 bareL1=together~3:40 bareL1=toilet~31:38 bareL1=toilets~27:49,31:42,34:-48
bareL1=top~1:38 bareL1=two~4:28,31:30,35:-41,86:60 bareL1=under~0:49 bareL1=up~86:-42
bareL1=use~30:37 bareL1=w~51:33 bareL1=we~29:30 bareL1=well~87:57 bareL1=when~31:-35,32:32,86:40
bareL1=with~3:30,34:53 bareL1=|~29:25,31:37,34:42,51:-37,87:38 bareL2=(~0:-41 bareL2=)~29:-36,35:42
bareL2=,~0:-34,1:37,25:-55,27:15,30:16,31:39,32:70,34:34,57:-35,76:36,87:39,95:-39,102:68
bareL2=.~0:-37,1:-24,25:44,30:53,31:41,32:39,33:-63,35:50,39:-41,40:64,67:50,86:41,95:44
bareL2=0~1:24,3:44,19:32,27:-30,49:-37,87:58 bareL2=1~0:-34,1:32,2:-37,27:50,35:10,57:45,75:16
bareL2=2~1:-40,25:57,29:17,31:-26,32:42,34:61 bareL2=3~27:-66,31:35,86:11
bareL2=4~0:-46,1:-25,5:-31,28:62,49:30,51:53,68:38 bareL2=5~18:-37,30:22,34:24,86:27
bareL2=6~18:73,29:52 bareL2=7~32:45 bareL2=8~87:30 bareL2=:~1:-41,29:21,51:39
bareL2=above~0:-30,26:61,86:45 bareL2=across~0:31 bareL2=adults~34:34 bareL2=again~86:36
bareL2=ah~42:44 bareL2=air~0:-32 bareL2=already~0:33 bareL2=animals~0:-31,87:40 bareL2=away~0:59
bareL2=back~0:41 bareL2=bar~29:-49,58:35,86:37 bareL2=barn~0:-43,3:51 bareL2=basement~86:-27
bareL2=baths~0:43,86:-24 bareL2=beside~0:30 bareL2=booster~0:48 bareL2=borehole~0:-41,62:62
bareL2=buried~30:34 bareL2=but~0:-49 bareL2=buy~0:30 bareL2=by~0:-23,68:34 bareL2=cabin~0:-40,31:42
bareL2=comes~0:36 bareL2=copper~0:-24 bareL2=count~86:28 bareL2=counted~0:36,29:-32
bareL2=couple~0:28 bareL2=cut~0:-36 bareL2=dear~0:39 bareL2=depth~0:-39 bareL2=do~30:35
bareL2=don't~32:32 bareL2=down~0:16,28:42,29:-39 bareL2=drip~26:38 bareL2=drop~0:41
bareL2=each~86:33 bareL2=eco~0:50 bareL2=even~29:60 bareL2=family~86:-35 bareL2=far~0:-27
bareL2=feet~0:-32 bareL2=fill~86:42 bareL2=fills~0:-45,86:29 bareL2=five~0:-52,3:35,35:31
bareL2=fixtures~0:62 bareL2=float~0:-33,1:52 bareL2=four~86:24 bareL2=from~0:39
bareL2=ft~4:24,28:37,31:34 bareL2=full~0:22 bareL2=gal~34:-30,35:33,86:38
bareL2=galvanised~0:-34,31:25 bareL2=gauge~0:49 bareL2=generator~0:-36 bareL2=gives~86:29
bareL2=goats~4:46 bareL2=goes~0:61 bareL2=got~0:84,86:-74 bareL2=gpm~0:-54 bareL2=grid~86:-38,87:42
bareL2=grown~0:42 bareL2=half~0:22 bareL2=hanging~5:36 bareL2=hav~0:34 bareL2=head~0:-46,87:68
bareL2=hello~32:27 bareL2=helo~0:57 bareL2=hi~0:42,1:-43 bareL2=high~0:-45 bareL2=higher~0:-57
bareL2=holds~0:28 bareL2=home~86:20 bareL2=horses~3:63 bareL2=hose~0:-73,27:26,76:46
bareL2=hoses~3:40 bareL2=hour~86:25 bareL2=house~86:80 bareL2=hundred~0:39 bareL2=i'd~86:53
bareL2=inch~31:59,86:-39 bareL2=inside~0:-27 bareL2=irrigate~0:48 bareL2=it's~0:42,31:-50
bareL2=just~0:39 bareL2=kids~0:26 bareL2=km~0:-29 bareL2=l~0:-64,3:25,27:23,58:39,67:46
bareL2=lawn~33:67 bareL2=left~0:39 bareL2=level~86:-35 bareL2=line~0:18,75:43 bareL2=liters~0:40
bareL2=litre~0:-44,86:44 bareL2=litres~0:-34,58:23,87:33 bareL2=live~0:-42 bareL2=lower~0:21
bareL2=lying~0:48 bareL2=m~0:-48,25:18,28:48,35:33 bareL2=mains~29:26 bareL2=makes~0:-16
bareL2=many~0:-58,58:24 bareL2=may~0:-35,86:41 bareL2=maybe~0:-46 bareL2=me~0:45
bareL2=meter~0:108,1:-32 bareL2=meters~0:55 bareL2=metre~0:34 bareL2=metres~86:44 bareL2=min~0:-45
bareL2=minute~0:45,29:-54 bareL2=mm~25:49 bareL2=moment~0:51 bareL2=morning~0:-33 bareL2=moved~0:22
bareL2=mppt~42:45 bareL2=need~0:17 bareL2=north~0:-54,50:55 bareL2=nothing~0:-36,5:37
bareL2=one~86:49 bareL2=opening~0:55 bareL2=out~0:-30,86:35 bareL2=outlets~30:40 bareL2=over~0:48
bareL2=panels~0:-54,29:32,51:37 bareL2=pe~0:-59,30:52 bareL2=people~29:57,31:-28,34:38
bareL2=per~29:-29 bareL2=persons~29:-39,34:50 bareL2=pipe~19:30 bareL2=plastic~0:29
bareL2=poly~27:36,31:-23 bareL2=pre~0:24 bareL2=pressure~86:12 bareL2=promised~0:34 bareL2=psi~31:5
bareL2=pump~1:-46,33:53,35:45,51:-44,76:57,86:-38,87:-54,95:11,102:52 bareL2=push~0:-42,29:41
bareL2=pvc~0:-27,27:51 bareL2=quarter~0:-37,26:21 bareL2=rain~34:29,68:34 bareL2=read~0:40
bareL2=reference~0:37 bareL2=roof~68:39 bareL2=runs~86:36 bareL2=says~0:-40 bareL2=season~86:30
bareL2=series~0:-42,86:56 bareL2=set~0:34 bareL2=should~86:-28 bareL2=shower~4:58,86:54
bareL2=showers~0:-19,29:-70,30:31,31:6,35:79 bareL2=sinks~0:-12,86:34 bareL2=sir~0:46
bareL2=six~30:28 bareL2=smal~0:56 bareL2=speed~0:65,86:-19 bareL2=springline~0:39
bareL2=sprinklers~0:-34,33:106 bareL2=starts~31:-39,35:-36,58:23,59:40,67:34,86:22
bareL2=stop~0:22,86:-28 bareL2=stops~35:-34,58:24 bareL2=sub~0:34 bareL2=submersible~95:41
bareL2=suction~75:63,76:36 bareL2=sun~5:35,86:-27 bareL2=switch~86:16 bareL2=switches~0:-26,59:38
bareL2=tank~0:-28,2:39,3:-30,4:57,34:28,86:46 bareL2=team~0:48,86:-48 bareL2=then~1:38
bareL2=there~34:47 bareL2=think~0:-26 bareL2=three~30:-49 bareL2=times~0:-26,67:35
bareL2=toilet~0:33 bareL2=toilets~0:37,27:22 bareL2=top~5:32 bareL2=trough~87:33
bareL2=troughs~3:28 bareL2=twenty~0:-34 bareL2=up~0:44,35:44 bareL2=us~0:-38 bareL2=uses~0:-38
bareL2=usually~31:54 bareL2=v~0:69,34:36,86:-30 bareL2=vessel~86:28 bareL2=volt~0:-57,86:27
bareL2=volts~87:49 bareL2=volume~0:39 bareL2=w~0:-71,1:24,3:36,29:26 bareL2=want~0:-44,1:48
bareL2=water~0:66,28:48,31:-48,62:56,76:62 bareL2=way~29:41 bareL2=we'd~0:-29 bareL2=we're~3:32
bareL2=well~95:19 bareL2=when~0:112,31:-43,35:-36 bareL2=which~0:-40,30:33 bareL2=who~0:-23,34:37
bareL2=will~0:-41 bareL2=would~0:-31,4:36,29:39 bareL2=write~0:28,3:-34 bareL2=x~29:19,34:-30
bareL2=yard~0:-29,87:35 bareL2=years~0:38 bareL2=yes~0:20 bareL2=yield~86:44 bareL2=you~30:38
bareL2=yurt~0:-61 bareL2=|~0:31,3:41,27:52,34:42 bareM=cistern~1:-55,3:-58,31:43,68:59,86:14
bareM=creek~3:28,87:20 bareM=drip~0:83,3:40,16:45,18:142,25:108,26:101,29:-25,31:-46,34:-38,49:-34
bareM=pump~1:35,2:30,5:57,18:60,27:42,29:44,31:42,32:1,33:50,41:-35,57:42,67:40,76:60,86:32,87:36,95:48
bareM=roof~68:108 bareM=spring~0:48,3:54,5:34,19:68,28:33,31:20,32:-29,49:47,86:37
bareM=tank~1:52,4:19,18:-80,25:32,29:60,32:-29,34:57,35:28,39:-38,57:12,67:15,68:46,86:15
bareM=well~0:17,1:32,4:49,31:35,58:26,62:-37,95:43 bareR0=(~0:-46,86:43 bareR0=)~0:105
bareR0=,~0:-47,3:11,27:24,28:-28,29:77,30:-35,31:33,34:70,75:42
bareR0=.~0:-88,3:32,5:-45,18:20,29:7,30:-38,31:22,35:29,39:32,41:25,49:-33,59:52,86:21,95:59
bareR0=0~0:52,32:24 bareR0=1~31:15,34:65,35:-29,86:18 bareR0=2~0:76,35:45,86:-15
bareR0=3~0:41,29:35,91:43 bareR0=4~49:28,86:45,88:48 bareR0=5~0:54 bareR0=6~0:44,3:46
bareR0=7~94:35 bareR0=:~0:34,1:24 bareR0=?~0:31 bareR0=a~26:53,29:43,42:42 bareR0=about~3:42
bareR0=adults~0:36,86:49 bareR0=all~87:32 bareR0=an~67:35
bareR0=and~3:19,25:54,29:30,30:36,31:30,58:27 bareR0=are~0:41
bareR0=at~0:-22,26:123,28:17,30:61,33:71 bareR0=automatic~87:33 bareR0=basin~31:72
bareR0=basins~29:-30,31:185,34:-25,86:-30 bareR0=bathroom~0:102,29:-40
bareR0=bathrooms~29:71,86:-44 bareR0=baths~0:32 bareR0=beef~1:50 bareR0=bends~0:-42,75:80
bareR0=beside~0:-21 bareR0=bibs~27:41 bareR0=borehole~86:28 bareR0=boys~0:53 bareR0=break~19:60
bareR0=bulls~1:57 bareR0=cabins~29:61 bareR0=calf~0:-26,5:74 bareR0=calves~5:72
bareR0=campers~0:-27,86:60 bareR0=cattle~1:105 bareR0=chickens~0:-47,4:142,86:-42
bareR0=cow~0:-37,5:62 bareR0=cows~0:-37,1:91,2:159,3:-36,5:70,86:-42 bareR0=cut~58:31
bareR0=dairy~2:52 bareR0=drink~1:47 bareR0=drinkers~0:-49,87:153 bareR0=drip~25:41
bareR0=dripper~0:-29,16:52 bareR0=drippers~0:33 bareR0=dry~0:-43,1:112,2:-37,68:72
bareR0=each~29:40 bareR0=elbows~75:61 bareR0=ewes~3:138,86:-31 bareR0=five~0:33,86:-33
bareR0=float~0:-21,87:95 bareR0=floats~0:-33,87:60 bareR0=flush~34:32 bareR0=foot~0:-41,76:98
bareR0=for~0:-42,27:74,87:39 bareR0=garden~27:40 bareR0=goats~0:-55,1:-22,3:229,86:-36
bareR0=going~30:79 bareR0=golf~0:25 bareR0=guest~0:39 bareR0=guests~86:107 bareR0=have~2:25
bareR0=head~1:89 bareR0=heifers~1:105 bareR0=hens~0:-52,1:-29,3:-31,4:244,86:-32 bareR0=here~86:44
bareR0=horses~0:-27,1:229,86:-28 bareR0=hose~0:-69,27:202,28:98,29:-24,31:-24,35:-34
bareR0=hoses~0:-79,27:186,28:103 bareR0=hour~0:-28,67:94 bareR0=house~0:-43,86:23
bareR0=households~0:30 bareR0=houses~0:60 bareR0=identical~0:-31,57:103
bareR0=in~0:-94,2:34,3:45,49:58,68:40,86:78 bareR0=is~0:45 bareR0=it~0:55 bareR0=joined~0:44
bareR0=kids~0:59 bareR0=kitchen~0:39 bareR0=laying~4:30 bareR0=line~0:40 bareR0=live~86:47
bareR0=machine~35:87 bareR0=machines~29:35,35:74 bareR0=may~30:43 bareR0=me~86:47
bareR0=milk~0:-23,2:141 bareR0=milking~2:31 bareR0=months~68:73 bareR0=n~0:-62,39:111
bareR0=now~0:-74,29:60,86:25 bareR0=o'clock~0:52 bareR0=of~30:37,51:55,86:32
bareR0=once~0:-51,28:38,30:65 bareR0=one~86:54 bareR0=ones~1:40 bareR0=open~30:76 bareR0=or~30:41
bareR0=out~42:45,58:31 bareR0=outside~27:62 bareR0=paddocks~87:44 bareR0=pairs~0:-56,5:123
bareR0=panels~0:45,49:64,86:-25 bareR0=parallel~51:50 bareR0=people~29:-37,31:-30,86:210
bareR0=per~16:51,29:-41,67:58 bareR0=person~0:-37,86:128 bareR0=persons~0:-20,86:180
bareR0=phase~0:53 bareR0=pieces~0:-52,32:28 bareR0=pigs~0:54 bareR0=poly~0:33
bareR0=pressure~0:-46,19:108 bareR0=pumps~57:95 bareR0=pupils~0:-29,86:78 bareR0=rooms~29:30
bareR0=run~28:62,30:49 bareR0=series~49:46,86:-32 bareR0=sheep~0:-28,3:153,86:-37
bareR0=shower~0:-10,29:229,30:54,31:-22,86:-36 bareR0=showers~0:-32,29:279,30:145,31:-23,86:2
bareR0=side~57:56 bareR0=since~0:-31 bareR0=sink~0:-50,27:-26,31:274,34:-86
bareR0=sinks~0:-26,31:222,34:-17,86:-33 bareR0=so~0:45 bareR0=sorry~0:29 bareR0=south~40:58
bareR0=spring~0:29 bareR0=sprinkler~32:29 bareR0=sprinklers~0:-30,32:184,33:75 bareR0=staff~0:31
bareR0=starts~0:-29,67:84 bareR0=steers~0:-40,1:87 bareR0=stock~0:-44,1:42
bareR0=string~0:-47,51:56 bareR0=strings~0:-34,51:85 bareR0=tanks~19:59 bareR0=tap~0:-27,27:49
bareR0=teachers~0:-34,86:65 bareR0=tents~29:35 bareR0=th~50:55 bareR0=the~30:27,31:26
bareR0=them~0:-32,1:33,3:25 bareR0=then~58:24 bareR0=there~86:49 bareR0=three~51:23
bareR0=time~26:38 bareR0=times~0:56 bareR0=together~0:-27,28:48,30:59 bareR0=toilet~0:-46,34:173
bareR0=toilets~0:-75,34:252,86:-40 bareR0=trees~0:47 bareR0=trough~87:122
bareR0=troughs~0:-57,1:-37,87:200 bareR0=ts~0:49 bareR0=two~0:46,51:-54,86:42
bareR0=us~0:-12,86:157 bareR0=valve~0:-53,76:98 bareR0=wash~0:-35,31:75
bareR0=washer~0:-27,31:-22,35:79 bareR0=washers~35:75 bareR0=washing~0:-15,31:-41,35:145
bareR0=waterers~0:-35,87:58 bareR0=wc~0:-35,34:86 bareR0=wcs~34:60 bareR0=we~4:59
bareR0=well~0:53,31:-31 bareR0=what~0:-39 bareR0=with~0:-15,1:-43,5:92,87:90 bareR0=x~0:34
bareR0=young~1:49 bareR0=zones~0:-83,18:142,25:87,86:-37 bareR0=|~35:57,86:60 bareR1=(~29:29
bareR1=)~31:45 bareR1=,~29:34,57:68,86:29,87:51
bareR1=.~0:-66,1:38,2:-51,4:36,5:43,26:25,30:44,34:34,58:54,87:23
bareR1=0~2:37,31:-39,49:54,86:56,94:32 bareR1=1~0:-27,2:31,27:-64,31:37,49:26,62:45
bareR1=2~1:27,31:-46,32:22,35:29,94:33 bareR1=3~18:62,29:-49,58:51,68:43 bareR1=4~34:41,86:-23
bareR1=5~0:-36,3:43,5:41,32:31 bareR1=6~0:37,40:38 bareR1=7~0:31,86:-41 bareR1=9~2:55
bareR1=:~35:34 bareR1=?~0:-53,29:63,86:31 bareR1=a~0:39,1:31,31:53 bareR1=about~86:33
bareR1=all~0:31 bareR1=and~5:32 bareR1=are~31:24 bareR1=at~0:-32,4:-33,5:39,25:35,86:41
bareR1=automatic~0:-32,1:41 bareR1=bar~0:-23,58:32 bareR1=basin~34:41
bareR1=basins~0:-24,29:43,31:-43,34:42 bareR1=bathrooms~0:-29,86:43 bareR1=be~0:-34,86:29
bareR1=before~30:41 bareR1=bore~3:45 bareR1=both~27:35 bareR1=bulls~5:67 bareR1=but~31:45
bareR1=chickens~0:-40,86:34 bareR1=children~0:46,86:-38 bareR1=cistern~3:-34,68:37
bareR1=cows~0:-49,3:57 bareR1=day~0:42 bareR1=do~0:-33,86:50 bareR1=dog~0:-19,86:22
bareR1=drinkers~1:37 bareR1=drip~0:-28,16:52 bareR1=dry~2:70 bareR1=each~0:-38,29:34,87:18
bareR1=ewes~0:-39 bareR1=fine~29:56 bareR1=float~87:7 bareR1=floats~87:31
bareR1=foot~0:-44,5:55,75:63 bareR1=ft~0:38 bareR1=full~86:36 bareR1=gives~0:47
bareR1=goats~3:-59,86:33 bareR1=going~30:42 bareR1=guest~86:40 bareR1=guests~0:51,86:-25
bareR1=h~0:32 bareR1=had~4:35 bareR1=have~0:-61 bareR1=heifers~1:-39 bareR1=hens~0:-33,1:58,3:34
bareR1=here~91:44 bareR1=horses~0:73,1:-85,4:38 bareR1=hose~0:-32,30:59 bareR1=hoses~34:28
bareR1=hours~0:28 bareR1=house~0:33,28:46,86:-30 bareR1=i~25:26 bareR1=in~49:45,57:38,86:-37
bareR1=is~0:-57,102:66 bareR1=it~0:13,29:49 bareR1=its~29:25 bareR1=kids~3:34,86:-35
bareR1=kitchen~30:35,31:-59 bareR1=level~0:-33 bareR1=litres~86:33 bareR1=live~91:44
bareR1=loo~29:36 bareR1=lower~0:32 bareR1=m~0:7,32:28 bareR1=machine~34:32 bareR1=mains~27:36
bareR1=mm~86:27 bareR1=my~0:-36 bareR1=no~1:-37,28:35,87:62 bareR1=not~32:41 bareR1=of~0:44,5:31
bareR1=on~0:-19,1:24,16:50 bareR1=once~30:18 bareR1=open~32:28 bareR1=other~0:-31,31:33
bareR1=outhouse~29:28,31:62,34:-42 bareR1=own~0:-19,29:30 bareR1=panels~49:33 bareR1=parallel~57:58
bareR1=pasture~0:-40,1:27 bareR1=pipe~5:36 bareR1=plot~0:30 bareR1=power~31:22 bareR1=pressure~0:48
bareR1=pump~0:-52,28:74,31:-37,33:44,86:30 bareR1=rain~0:63,3:-33 bareR1=run~25:36,30:51
bareR1=same~29:-42,33:20 bareR1=sheep~1:31 bareR1=should~30:34 bareR1=shower~29:-28,31:77,86:43
bareR1=showers~29:-68,34:47,35:40,86:52 bareR1=side~57:56 bareR1=sink~29:58,31:-134,34:38,86:26
bareR1=sinks~0:34,29:17,31:-66,34:64 bareR1=spring~0:-89,86:18 bareR1=sprinklers~27:60
bareR1=staff~0:40 bareR1=tent~29:24 bareR1=the~0:-62,4:23,16:44 bareR1=they~0:-45,32:21
bareR1=three~0:73 bareR1=time~26:29,30:29,33:49 bareR1=toddler~0:48,86:-31
bareR1=together~27:16,30:34 bareR1=toilet~29:33,31:39,34:-58 bareR1=toilets~29:38,31:48,34:-75
bareR1=trough~0:-55,87:24 bareR1=troughs~1:76,87:-49 bareR1=two~25:48 bareR1=valve~75:71
bareR1=w~0:13,49:50 bareR1=want~0:-38 bareR1=washer~29:-37,31:52 bareR1=washing~34:34
bareR1=water~4:44 bareR1=we~31:27 bareR1=well~0:-53,3:27 bareR1=what~0:27 bareR1=when~0:51,86:-30
bareR1=with~29:31 bareR1=would~86:29 bareR1=yields~0:53 bareR1=|~31:37 bareR2=(~31:25,34:-31
bareR2=)~0:81,27:43,31:-29
bareR2=,~1:-45,2:48,4:-34,27:40,30:35,31:-70,34:-44,49:26,51:50,62:46,67:33,86:28,87:-34
bareR2=.~1:6,5:62,16:39,19:35,28:90,33:37,35:35,49:-40,58:49,86:27 bareR2=0~41:42,86:32,87:26
bareR2=1~0:-16,1:-51,3:65,32:58,34:29,51:68 bareR2=2~0:30,1:-35,29:-13,57:43,86:70
bareR2=3~0:50,31:39,32:37 bareR2=4~1:-45,29:32,34:-7,49:31,57:54,75:39,87:26
bareR2=5~5:38,29:-22,33:47,34:-66,86:19 bareR2=6~0:-19,5:31,86:40 bareR2=9~19:40
bareR2=:~0:55,29:-34,31:68,34:-35,87:-29 bareR2=;~87:73 bareR2=?~1:32,68:44 bareR2=above~0:-38
bareR2=all~86:-36 bareR2=already~91:43 bareR2=as~0:29 bareR2=bar~0:-45,58:47 bareR2=barn~1:34
bareR2=basin~29:33 bareR2=below~3:26 bareR2=bore~0:40 bareR2=borehole~1:32
bareR2=bucket~0:62,86:-34 bareR2=but~0:16 bareR2=by~0:-21 bareR2=comes~0:62 bareR2=day~0:-79,86:112
bareR2=dishwasher~34:48 bareR2=do~0:-29 bareR2=drink~0:-47,1:57 bareR2=each~3:29,49:24,57:38
bareR2=existing~5:31 bareR2=family~0:-41,31:28 bareR2=five~31:55 bareR2=float~0:-39
bareR2=four~0:-53 bareR2=from~0:26,86:-54 bareR2=ft~4:30,86:-20 bareR2=garden~0:16
bareR2=gives~0:-39,87:33 bareR2=goats~0:-39,2:37,86:47 bareR2=gpm~0:-38 bareR2=h~32:31
bareR2=heifers~0:-40,2:33 bareR2=hens~0:-78,3:37,86:49 bareR2=horses~5:36 bareR2=hose~0:-61
bareR2=hoses~0:-34 bareR2=house~86:-42 bareR2=how~86:33 bareR2=if~0:-45 bareR2=inch~0:25
bareR2=kind~0:53 bareR2=kitchen~0:-21,29:54 bareR2=last~0:-45 bareR2=line~0:-58,16:52,26:42
bareR2=litre~0:26,86:-33 bareR2=litres~86:80 bareR2=low~34:38 bareR2=m~3:9,41:47,86:45,94:34
bareR2=machine~34:56 bareR2=machines~34:29 bareR2=mains~0:48,31:27,86:-26 bareR2=mm~0:-46,5:35
bareR2=mppt~49:34 bareR2=no~31:26 bareR2=none~1:49 bareR2=off~1:32 bareR2=one~29:9,49:41
bareR2=ones~0:-30,2:44 bareR2=only~30:59 bareR2=other~0:43 bareR2=outside~29:-25,34:30
bareR2=over~0:32 bareR2=panels~27:37 bareR2=parallel~51:72 bareR2=people~29:72,86:-30
bareR2=per~86:32 bareR2=plus~1:38 bareR2=pond~1:25 bareR2=power~0:-35,31:-33,34:69
bareR2=pressure~0:-29,18:55,35:45 bareR2=pump~0:35,4:-41,31:-32 bareR2=rise~1:27
bareR2=run~0:15,86:-58 bareR2=same~0:-56,30:57,32:68 bareR2=see~29:30 bareR2=series~0:-54,49:110
bareR2=setup~0:21 bareR2=seven~0:-25,31:27 bareR2=shower~58:22 bareR2=showers~31:59
bareR2=since~0:77 bareR2=sink~29:19 bareR2=sinks~29:35,86:32 bareR2=six~0:41 bareR2=so~0:44,86:-23
bareR2=solar~0:33 bareR2=string~49:44 bareR2=strings~0:27 bareR2=tank~1:-30,86:-38,95:41
bareR2=tap~29:31 bareR2=then~0:50 bareR2=there~0:-11 bareR2=there's~0:-48 bareR2=they~0:-38
bareR2=think~0:41 bareR2=three~0:55,1:57 bareR2=tilted~49:38 bareR2=time~0:-51,25:103,32:36
bareR2=toilet~0:22,27:29 bareR2=toilets~0:55,30:56,86:68 bareR2=total~0:23 bareR2=trough~0:-39,3:53
bareR2=two~49:-37 bareR2=under~0:-31 bareR2=up~0:26 bareR2=us~31:29 bareR2=use~0:32
bareR2=used~0:49 bareR2=valves~0:34 bareR2=w~0:-24,49:48,51:31 bareR2=wants~33:43
bareR2=was~4:37,86:-35 bareR2=washing~0:-36,34:42 bareR2=water~2:36,3:25,29:-40,94:34
bareR2=week~0:-25,86:43 bareR2=well~1:36,5:56 bareR2=what~0:74,29:-25,86:-31 bareR2=when~27:69
bareR2=which~0:-65,34:35 bareR2=will~34:50 bareR2=without~0:-38 bareR2=would~31:29
bareR2=|~0:5,4:35,29:47,30:19,86:-58
bareT=beds.area~0:-41,3:33,4:45,18:114,25:117,26:104,29:-34,87:-43 bareT=power.amps~51:22
bareT=power.battery~31:-11,86:29 bareT=power.cable~0:43,49:65,51:17,86:-46
bareT=power.capacity~31:24,86:35 bareT=power.controller~0:-53,42:42,51:30
bareT=power.facing~49:87,51:32 bareT=power.limit~42:43,49:21,51:35
bareT=power.open_voltage~3:-63,49:41,51:28 bareT=power.panel~49:143,51:101
bareT=power.series~49:-180,51:106,86:34,87:32 bareT=power.shade~49:14
bareT=power.source~0:25,1:21,5:32,32:15,40:54,49:52,51:55,76:-40,86:-14,87:31
bareT=power.strings~0:75,1:23,49:87,51:-99 bareT=power.tilt~40:36,42:42,49:28,51:33
bareT=power.voltage~3:-37,27:49,31:95,39:55,51:48
bareT=pump.control~1:-45,3:-34,27:61,35:64,57:110,67:58 bareT=pump.count~0:44,67:51
bareT=pump.cut_in~0:49,3:-28,31:-44,59:101,67:37 bareT=pump.cut_out~3:-30,58:41,59:-43,67:37,86:40
bareT=pump.dry_lift~0:31 bareT=pump.dry_run~86:46
bareT=pump.height~1:7,2:35,4:-34,49:55,51:27,87:46,88:53,95:48,102:69 bareT=pump.most_flow~0:-73
bareT=pump.placement~0:28,1:31,2:42,3:-27,4:-28,5:35,18:-53,25:31,32:17,33:40,35:38,51:39,75:36,76:50,86:-27,88:42,95:26
bareT=pump.present~0:-36,19:57,27:8,28:26,31:42,34:48,35:27,87:21
bareT=pump.set~0:39,28:77,75:41,86:-21 bareT=pump.starts~57:42 bareT=pump.works~0:-33,86:54,94:34
bareT=store.days~0:-46,1:47,3:18 bareT=store.fills~34:18,68:31 bareT=store.hours~0:49,86:-47
bareT=store.volume~1:-36,3:-43,30:42,31:22,33:40,35:24,57:29,67:41,68:46,86:25
bareT=tank.level~0:37,18:-48,25:43,30:12,49:44
bareT=tank.volume~0:-46,3:26,18:-49,40:53,49:44,86:44
bareT=water.kind~1:69,2:47,3:93,4:44,5:25,18:43,27:63,29:5,30:48,35:58,49:55,86:43,87:50
bareT=water.level~1:-42,3:60,4:36,34:31,58:-25,75:66,76:96 bareT=water.temperature~19:48,75:31
bareT=water.yield~1:26,2:78,3:15,18:74,19:42,27:47,28:-51,30:15,31:14,32:-29,34:65,86:43,87:36
bareT=way.climb~1:37,2:32,4:47,5:16,19:42,28:57,29:41,32:23,33:81,34:42,49:-36,62:52,87:25
bareT=way.length~0:30,1:44,2:33,3:44,4:56,5:29,25:47,26:45,27:27,30:37,31:37,32:31,33:56,57:26,58:-24,76:-34,87:76
bareT=way.pipe~1:27,2:45,5:66,19:33,25:72,26:48,28:45,30:35,32:49,34:-38,58:-31,86:16,87:31
bareT=well.bore~95:45 bareT=well.depth~4:54,28:53,29:16,32:-33,34:42,62:84,86:75,88:32
bareT=well.static~0:29,32:31 bareT=well.tested~34:-34 barea=~0:-31,34:36,39:48,86:31
barea=,_cut~58:32 barea=,_each~0:29 barea=,_sinks~29:25,31:-44,34:38
barea=,_toilets~29:60,31:32,34:-82 barea=,_washing~29:26,35:-49 barea=.~59:14,95:29
barea=adults_.~0:-37,86:68 barea=adults_and~0:70,86:-52 barea=at_a~26:38 barea=at_the~0:35
barea=automatic_drinkers~87:26 barea=basins_,~0:40,31:67,34:-43 barea=basins_.~31:51
barea=bathroom_with~0:19 barea=bathrooms_with~29:60 barea=beef_cows~1:37 barea=bends_,~75:58
barea=boys_.~0:43 barea=break_pressure~19:60 barea=cattle_,~1:36 barea=chickens_.~4:50
barea=cow_calf~0:-26,5:62 barea=cows_and~2:27 barea=cows_in~2:38 barea=cows_with~5:85
barea=dairy_cows~2:52 barea=drinkers_with~87:23 barea=dry_cows~0:42 barea=dry_months~68:73
barea=dry_ones~1:40 barea=elbows_.~75:35 barea=ewes_,~3:34 barea=ewes_.~0:-28,3:48
barea=float_valve~87:38 barea=flush_toilets~34:32 barea=foot_valve~0:-37,76:100 barea=goats_,~3:49
barea=goats_.~3:47 barea=goats_and~3:62 barea=guests_.~86:26 barea=guests_at~86:43
barea=head_of~1:50 barea=heifers_,~1:47 barea=hens_,~0:-23,4:48 barea=hens_.~4:34
barea=hens_and~4:67 barea=horses_,~0:-24,1:66 barea=horses_.~0:44,1:24 barea=horses_and~1:68
barea=hose_,~27:85 barea=hose_.~27:74 barea=hose_bibs~27:41 barea=hose_for~27:42
barea=hoses_,~27:51 barea=hoses_at~28:40 barea=households_,~0:27 barea=houses_,~0:40
barea=identical_pumps~57:41 barea=in_series~49:20 barea=in_the~0:-45,86:78
barea=kitchen_sink~0:36,31:27,34:-23 barea=laying_hens~4:30 barea=milking_cows~2:45
barea=n_.~0:-34,39:79 barea=of_the~0:47 barea=of_them~3:26 barea=of_us~0:-4,86:157
barea=panels_,~0:43 barea=panels_of~49:63 barea=people_,~0:-30,86:97 barea=people_.~86:93
barea=people_and~86:41 barea=people_in~0:-35,86:44 barea=people_|~0:-35,86:39
barea=person_,~0:-23,86:36 barea=persons_,~0:-25,86:71 barea=persons_.~86:76 barea=phase_.~0:37
barea=rooms_,~29:31 barea=sheep_.~3:61 barea=sheep_and~3:50 barea=shower_,~0:-59,29:149,34:-34
barea=shower_.~0:-25,29:85 barea=shower_1~29:113,31:-41 barea=shower_and~0:-57,29:31,30:61
barea=shower_per~0:49 barea=showers_(~29:55 barea=showers_,~0:-40,29:195,86:-37
barea=showers_.~0:-60,29:168,86:-43 barea=showers_and~29:72 barea=showers_are~0:40
barea=showers_at~0:-36,30:48 barea=showers_run~30:48 barea=sink_,~0:-23,31:97
barea=sink_.~0:-29,31:83 barea=sink_1~31:37 barea=sink_and~31:71 barea=sinks_,~29:-43,31:111,34:-45
barea=sinks_.~31:72 barea=sinks_and~31:50 barea=south_.~40:58 barea=sprinklers_at~33:25
barea=starts_an~67:43 barea=starts_per~67:45 barea=strings_of~0:-30,51:51
barea=toilet_,~0:-24,29:-38,31:-30,34:117 barea=toilet_.~34:80
barea=toilets_,~0:-23,29:-32,31:-26,34:145 barea=toilets_.~34:102 barea=toilets_and~34:46
barea=troughs_,~87:40 barea=troughs_.~87:41 barea=wash_basins~31:58 barea=washer_.~35:58
barea=washing_machine~34:-31,35:120 barea=washing_machines~35:106 barea=wc_,~34:56
barea=wcs_,~34:36 barea=with_the~86:61 barea=zones_,~18:27 barea=zones_.~0:-37,18:71
bareb=~0:69,16:51 bareb=,_and~0:60 bareb=,_in~87:35 bareb=,_longitude~41:53 bareb=,_plus~1:29
bareb=,_so~86:52 bareb=,_toilets~31:-36,34:90 bareb=,_with~0:-41 bareb=._also~1:33
bareb=._it's~0:80 bareb=._latitude~40:53 bareb=._question~0:38 bareb=._showers~29:79,34:-53
bareb=._we're~86:30 bareb=._|~0:50 bareb=1_shower~35:38 bareb=1_sink~0:-40,31:39
bareb=2_showers~31:35 bareb=?_|~30:35 bareb=bar_.~0:-22 bareb=between_the~0:25 bareb=cows_,~4:47
bareb=cut_in~58:32 bareb=drip_,~0:44 bareb=each_,~0:-41 bareb=family_of~0:-28,29:-24,86:108
bareb=ft_,~0:-45 bareb=ft_.~0:48 bareb=hens_and~0:-28,3:46 bareb=horses_.~87:25 bareb=hose_,~86:40
bareb=household_of~0:-26,86:53 bareb=i_have~32:28 bareb=just_the~0:-32,29:30 bareb=machine_.~86:32
bareb=of_which~30:40 bareb=pairs_and~1:36 bareb=panels_:~0:49 bareb=people_,~29:63,86:-34
bareb=people_:~29:-57,86:128 bareb=pipe_,~0:34 bareb=pump_.~31:29 bareb=pump_at~0:-26,62:33
bareb=sheep_:~3:65 bareb=shower_,~27:46,34:73 bareb=shower_and~31:37
bareb=showers_,~27:42,29:-89,34:53,35:56 bareb=showers_:~29:121,34:-43 bareb=showers_and~34:47
bareb=sink_,~31:-36 bareb=sink_.~0:41,86:-25 bareb=sinks_,~31:-25,34:32 bareb=sinks_:~31:80,34:-29
bareb=strings_of~49:44 bareb=tank_.~0:-35,5:33,34:32 bareb=there_are~0:29,25:48,29:44,86:-41
bareb=there_is~0:-55 bareb=to_water~0:-31,5:34 bareb=toilet_,~31:49,34:-39 bareb=toilet_and~0:37
bareb=toilets_,~31:71,34:-69,35:31 bareb=toilets_and~31:30 bareb=troughs_:~87:52 bareb=up_to~86:21
bareb=valve_and~75:36 bareb=w_,~49:53 bareb=washing_machine~35:36 bareb=water_at~0:-22,88:50
bareb=we_are~0:-39,86:100 bareb=we_have~0:-38,29:29 bareb=we_keep~4:31 bareb=we_milk~2:27
bareb=|_|~0:16 chargeC=,~44:43 chargeC=1~0:21 chargeC=2~0:20 chargeC=4~44:37 chargeC=:~44:19
chargeC=battery~0:24,44:33 chargeC=v~0:20 chargeL0=,~44:29 chargeL0=2~0:29 chargeL0=a~44:25
chargeL0=and~0:37 chargeL0=battery~44:32 chargeL0=v~0:25 chargeL1=1~0:28 chargeL1=battery~0:31
chargeL1=is~0:36 chargeM=pump~44:69 chargeR0=.~44:64 chargeR0=battery~44:40
chargeT=power.battery~44:82 chargeT=power.panel~44:57 chargeT=power.source~44:60
chargeT=power.voltage~44:80 chargeT=store.volume~44:36 chargeT=water.kind~44:39
chargeT=way.length~44:35 chargea=.~0:33 currentC=,~42:42 currentC=0~42:37 currentC=controller~42:42
currentC=mppt~42:31 currentL0=,~42:28 currentL1=0~42:40 currentL2=,~42:40 currentL2=.~0:61
currentL2=0~42:24 currentM=pump~0:46,42:44 currentR0=.~42:44 currentR2=.~0:56
currentT=power.battery~42:66 currentT=power.cable~42:29 currentT=power.capacity~42:66
currentT=power.controller~42:70 currentT=power.facing~42:23 currentT=power.limit~42:30
currentT=power.panel~42:45 currentT=power.series~42:36 currentT=power.source~42:53
currentT=power.voltage~42:51 currentT=pump.placement~42:29 currentT=water.kind~0:52 dailyC=,~80:32
dailyC=2~0:52 dailyC=:~0:34 dailyC=consumption~81:34 dailyC=cows~0:65,81:-26 dailyC=drinks~80:15
dailyC=each~0:-33,80:-40,81:97 dailyC=garden~82:51 dailyC=need~80:34 dailyC=says~0:-36,80:53
dailyC=takes~82:32 dailyC=two~80:49 dailyC=use~0:-30,80:67 dailyC=uses~81:33 dailyC=water~0:27
dailyL0=,~80:54 dailyL0=.~80:32 dailyL0=0~0:30 dailyL0=:~0:36 dailyL0=about~80:49
dailyL0=drinks~80:15 dailyL0=each~0:-28,81:55 dailyL0=is~80:35 dailyL0=need~80:34
dailyL0=people~81:50 dailyL0=says~0:-36,80:53 dailyL0=takes~82:32 dailyL0=the~80:46,82:32
dailyL0=use~0:-26,80:84 dailyL0=uses~81:33 dailyL0=we~80:39 dailyL1=.~0:26,81:33 dailyL1=2~0:50
dailyL1=a~82:17 dailyL1=at~80:29 dailyL1=each~81:42 dailyL1=in~81:38,82:27 dailyL1=two~80:39
dailyL1=water~0:28 dailyL2=,~80:18 dailyL2=.~82:36 dailyL2=0~82:57 dailyL2=4~82:22 dailyL2=6~0:34
dailyL2=m~82:18 dailyL2=mm~0:50 dailyM=cistern~81:39 dailyM=drip~0:28,82:48
dailyM=pump~80:49,81:36,82:43 dailyM=tank~81:36,82:26 dailyM=well~80:44 dailyR0=,~80:42
dailyR0=.~0:38,80:100,81:64 dailyR0=by~80:48 dailyR0=covers~0:26 dailyR0=each~0:60
dailyR0=for~80:30 dailyR0=house~80:27 dailyR0=in~82:21 dailyR0=is~0:29 dailyR0=it~0:40
dailyR0=meter~80:34 dailyR0=of~82:34 dailyR0=the~80:26,82:32 dailyR1=,~80:23 dailyR1=.~80:17,82:40
dailyR1=of~0:30 dailyR1=the~0:24 dailyR2=.~0:38 dailyR2=?~80:26 dailyT=beds.area~0:28,82:48
dailyT=power.source~0:37,80:39 dailyT=power.voltage~0:22 dailyT=pump.height~0:39
dailyT=store.fills~82:22 dailyT=store.reserve~82:44 dailyT=store.volume~82:52
dailyT=tank.level~0:53,80:-41 dailyT=tank.volume~80:-41,81:46 dailyT=water.kind~80:62,81:49,82:43
dailyT=water.level~80:34 dailyT=way.climb~0:-28,80:35,82:43 dailyT=way.length~82:39
dailyT=way.pipe~0:45 dailyT=well.depth~80:28 dailya=.~80:21,81:40 dailya=by_the~80:35
dailya=covers_it~0:26 dailya=each_.~0:60 dailya=in_the~82:23 dailyb=people_at~81:45 eachC=,~81:58
eachC=0~0:35 eachC=2~0:42 eachL0=,~81:53 eachL0=at~0:34 eachL0=we~81:47 eachL1=0~0:39 eachL1=2~0:42
eachL1=a~81:31 eachL1=for~0:38 eachL2=,~81:33 eachL2=.~81:39 eachM=pump~81:58 eachM=spring~81:47
eachM=tank~81:43 eachR0=.~81:88 eachT=power.source~81:37 eachT=tank.volume~81:32
eachT=water.kind~81:75 eachT=water.yield~81:44 eachT=way.climb~81:41 eachT=way.length~81:49
eachT=way.pipe~81:49 eacha=.~81:45 flowC=,~7:65,63:30,83:43,90:31 flowC=0~103:69,104:40
flowC=1~63:36 flowC=2~7:41,63:37,104:37 flowC=3~0:-44,103:73,104:42 flowC=4~0:19 flowC=5~8:29
flowC=8~90:34 flowC=9~0:-42,90:33 flowC=:~101:18,103:48,104:25 flowC=after~101:21 flowC=all~83:31
flowC=apart~7:36 flowC=as~90:-47 flowC=bar~8:34 flowC=bore~0:-42,90:37,104:48
flowC=borehole~0:44,90:61 flowC=box~0:45 flowC=cistern~72:59,90:-36 flowC=cm~7:34
flowC=comes~103:29 flowC=day~72:41 flowC=deep~0:32 flowC=diaphragm~63:23 flowC=drilled~90:37
flowC=driller~0:-27,90:34,104:34 flowC=drip~0:38,7:56 flowC=drippers~7:78 flowC=each~0:43,90:-46
flowC=emitters~7:72 flowC=every~7:33 flowC=feet~90:43 flowC=flow~0:36,8:30 flowC=from~0:8,72:87
flowC=ft~0:51 flowC=gives~90:69 flowC=he~104:29 flowC=its~0:41 flowC=l~90:44 flowC=level~104:53
flowC=lines~7:32 flowC=litres~103:33 flowC=m~0:30,7:51,104:38 flowC=makes~90:52 flowC=meter~83:73
flowC=min~90:44 flowC=minutes~101:47,103:80 flowC=mm~0:30 flowC=night~72:41,83:31,90:-53
flowC=ours~90:32 flowC=out~0:32 flowC=pump~8:52,63:86,90:-41,101:36 flowC=pumped~90:-38,104:18
flowC=pumping~101:21 flowC=ran~101:35 flowC=rows~7:55 flowC=shower~0:55 flowC=source~90:34
flowC=spring~90:55 flowC=sprinkler~0:52 flowC=stream~0:-34,90:49 flowC=tank~0:-50,72:109
flowC=test~90:-29,101:32,104:34 flowC=then~103:64 flowC=took~103:33 flowC=volt~63:36
flowC=want~0:54,90:-33 flowC=water~72:36 flowC=well~0:-28,8:34,72:39,90:77 flowC=when~104:42
flowC=which~72:76 flowC=wrote~90:35 flowC=yield~90:70 flowL0=,~7:41,8:23,63:22,90:26
flowL0=.~7:33,90:53 flowL0=0~104:31 flowL0=1~104:16 flowL0=:~90:31,101:28 flowL0=a~90:75
flowL0=and~72:39 flowL0=are~7:40 flowL0=at~0:-59,101:65,103:60,104:47 flowL0=bar~8:35
flowL0=bore~0:-28,90:51 flowL0=borehole~90:47 flowL0=cm~7:34 flowL0=comes~103:29
flowL0=driller~0:-23,90:39 flowL0=drip~0:38,7:18 flowL0=drippers~7:56 flowL0=each~0:44
flowL0=emitters~7:46 flowL0=flow~0:44,8:30 flowL0=ft~0:38 flowL0=gives~90:47 flowL0=he~104:30
flowL0=i~0:-26,83:47 flowL0=is~0:55,72:19 flowL0=it~90:54 flowL0=m~0:74 flowL0=makes~90:38
flowL0=night~72:42 flowL0=of~7:30 flowL0=out~0:35 flowL0=pump~8:56,63:52,90:-45,104:40
flowL0=pumped~90:-28,104:31 flowL0=pumping~101:23 flowL0=spring~90:20 flowL0=sprinkler~0:52
flowL0=tank~0:-20,72:52 flowL0=test~101:34 flowL0=tested~90:53 flowL0=the~0:15,72:93
flowL0=want~0:54,90:-32 flowL0=we~0:46,90:-9 flowL0=well~8:37,90:36 flowL0=wrote~90:23
flowL0=yield~90:36 flowL1=(~0:32 flowL1=,~0:59 flowL1=.~8:66,63:28,103:19 flowL1=0~90:27
flowL1=1~0:-52,8:43,63:35,90:29 flowL1=2~63:28,90:37,104:43 flowL1=3~0:-30,104:26 flowL1=4~0:25
flowL1=5~0:-23,8:29,90:25 flowL1=8~90:50 flowL1=9~90:29 flowL1=a~63:43,90:-41
flowL1=and~0:-29,90:45 flowL1=at~0:-41,90:69 flowL1=borehole~104:33 flowL1=day~72:40
flowL1=every~7:37 flowL1=for~90:35 flowL1=ft~0:-45,90:3 flowL1=is~63:20,90:14 flowL1=it~103:51
flowL1=l~103:29 flowL1=m~104:56 flowL1=pump~63:52,72:26,101:43 flowL1=pumping~104:44
flowL1=tank~72:38 flowL1=test~104:27 flowL1=the~0:46,63:40,83:13 flowL1=to~72:18 flowL1=way~63:36
flowL1=well~72:21 flowL1=with~0:50 flowL2=,~7:41,8:74,63:37,83:40,103:15 flowL2=.~7:29,8:31
flowL2=0~90:25,103:63 flowL2=1~90:38 flowL2=2~7:46,90:74,104:-28 flowL2=3~0:-23,90:49
flowL2=6~0:-37,103:49,104:52 flowL2=7~90:43 flowL2=9~90:32 flowL2=:~90:-63,104:26 flowL2=all~83:31
flowL2=apart~7:49 flowL2=bore~104:31 flowL2=borehole~0:-21,63:32 flowL2=drip~7:41 flowL2=every~8:45
flowL2=feet~0:-32,90:54 flowL2=from~63:26,72:53 flowL2=ground~0:37,90:-33 flowL2=level~104:15
flowL2=litres~103:32 flowL2=m~7:29,63:19 flowL2=need~0:53 flowL2=night~83:31 flowL2=pe~0:39
flowL2=people~90:33 flowL2=pond~0:39 flowL2=power~0:34 flowL2=pressure~8:50 flowL2=pump~63:79
flowL2=rows~7:44 flowL2=run~0:-34,90:55 flowL2=spring~90:57 flowL2=trees~0:34 flowL2=water~90:39
flowL2=well~103:27,104:43 flowM=cistern~0:-28,72:49 flowM=drip~7:139,8:111,90:-44
flowM=pump~0:38,7:52,63:71,83:57,101:62,104:39 flowM=roof~63:42 flowM=spring~0:34,90:99
flowM=tank~63:54,72:139,90:38,104:-39 flowM=well~90:20,103:75,104:44 flowR0=,~7:30,101:45
flowR0=.~0:20,7:36,72:35,83:53,90:64,103:48 flowR0=0~101:55 flowR0=1~0:30 flowR0=2~101:32
flowR0=9~101:55 flowR0=and~0:51,72:17,90:-39 flowR0=at~0:40,8:53,63:72,90:-51 flowR0=bar~0:32
flowR0=day~72:22 flowR0=down~104:47 flowR0=each~7:51 flowR0=for~90:-50,101:71 flowR0=house~90:34
flowR0=how~90:45 flowR0=in~0:70 flowR0=its~0:39 flowR0=level~90:34 flowR0=night~0:-28,72:18
flowR0=set~63:47 flowR0=spring~90:27 flowR0=the~0:-46,8:73,63:-43,72:50,90:33 flowR0=to~0:-40,90:38
flowR0=water~0:-49,90:48 flowR0=we~0:27 flowR1=.~0:52,7:21,72:53 flowR1=0~90:37 flowR1=1~0:23
flowR1=3~0:-37,104:59 flowR1=4~90:35 flowR1=6~90:-34,104:36 flowR1=and~0:-41,101:47 flowR1=can~8:39
flowR1=cm~7:34 flowR1=i~101:22 flowR1=in~0:45 flowR1=m~90:38 flowR1=off~101:23
flowR1=pressure~63:42,83:54 flowR1=psi~63:49 flowR1=run~0:57 flowR1=spring~90:-37 flowR1=tank~0:45
flowR1=the~0:20 flowR2=,~90:41 flowR2=.~0:16,63:27,90:-45 flowR2=0~7:33,90:13 flowR2=1~83:33
flowR2=5~0:-23,90:65 flowR2=6~0:-38 flowR2=7~0:37 flowR2=above~90:34 flowR2=hours~8:47
flowR2=level~101:23 flowR2=m~104:18 flowR2=minute~0:50,90:-50 flowR2=run~8:46 flowR2=well~0:35
flowT=beds.area~0:-42,7:96 flowT=power.battery~0:-37,63:51 flowT=power.cable~104:32
flowT=power.capacity~63:57 flowT=power.panel~90:80 flowT=power.series~0:36
flowT=power.source~0:39,90:33 flowT=power.strings~0:28 flowT=power.voltage~0:-46,63:87
flowT=pump.control~83:53 flowT=pump.cut_in~83:30 flowT=pump.cut_out~83:35
flowT=pump.height~90:59,104:42 flowT=pump.placement~0:55,83:62,90:-49 flowT=pump.present~90:40
flowT=pump.set~83:51 flowT=pump.starts~63:39 flowT=pump.works~0:-37,63:72 flowT=store.fills~72:50
flowT=store.volume~63:64,83:31,90:-31 flowT=tank.level~0:15 flowT=tank.volume~0:55
flowT=water.kind~7:46,72:41,83:49,90:173,103:60,104:83 flowT=water.level~0:34,104:115
flowT=water.temperature~0:42 flowT=water.yield~0:119,7:64,90:-99 flowT=way.climb~0:27,90:57
flowT=way.length~0:27,63:47,90:33 flowT=way.pipe~0:32,63:53,90:51
flowT=well.bore~90:-55,101:43,103:64,104:24 flowT=well.cover~101:45
flowT=well.depth~0:34,90:17,101:51 flowT=well.drawn~103:59 flowT=well.drawn_for~103:59
flowT=well.pumped_for~101:101 flowT=well.pumping~90:-88,104:119 flowT=well.static~104:101
flowa=~90:37 flowa=.~0:55,72:26,104:63 flowa=._the~83:34 flowa=at_2~0:43 flowa=at_the~8:68
flowa=for_4~104:35 flowb=,_flow~8:35 flowb=drip_,~7:22 flowb=he_pumped~104:33 flowb=m_at~0:44
flowb=pump_gives~0:33 k=angle~17:39,36:60,39:108,40:23,52:92 k=area~0:102,6:245,69:65
k=bare~0:289,1:62,2:23,3:78,4:47,27:35,29:63,30:16,32:36,39:58,81:-41,86:68 k=charge~44:197
k=current~0:44,42:52 k=daily~0:84,80:172,81:80,82:45 k=each~81:133
k=flow~0:125,7:94,8:55,63:46,72:77,83:44,90:173,101:81,103:44,104:61
k=length~0:342,15:52,16:43,38:119,43:64,58:-27,60:58,65:29,77:58,78:55,79:-25,80:-25,81:-28,86:-23,88:114,90:-28,91:80,92:56,93:170,94:83,95:53,98:38
k=pair~58:112 k=percent~0:61,50:98,64:57 k=power~0:152,48:136
k=pressure~0:142,10:41,12:86,13:39,20:42,21:58,37:40,54:118,55:40,58:77,59:72,66:104
k=temperature~17:48,22:72,36:57,89:99 k=time~0:176,9:36,70:131,71:27,85:74,97:59,99:50
k=voltage~0:97,46:49,47:43,53:191
k=volume~0:161,23:52,24:72,56:117,73:84,74:146,79:141,81:31,84:82,96:47 lengthC=(~0:-26,95:24
lengthC=)~0:-25 lengthC=,~0:-22,15:64,16:48,61:39,62:25,88:2,92:70,93:-55,95:46
lengthC=0~14:45,77:-35,78:38,88:-35,92:46,93:56 lengthC=1~43:-43,95:20,98:38
lengthC=2~0:16,38:-32,92:-33,93:38,95:49,100:35 lengthC=3~0:38,78:29,94:-24,100:39
lengthC=4~0:15,91:38,98:57 lengthC=5~0:25,16:28,38:-44,93:46
lengthC=6~0:-44,11:31,62:17,88:-80,100:37,102:36 lengthC=7~91:58 lengthC=8~62:-30,78:17,102:49
lengthC=9~88:-40,93:45,100:37 lengthC=:~0:-18,78:46,88:28,91:55,93:-66,95:-21,100:69,102:53
lengthC=?~0:-53,38:52,88:22 lengthC=above~38:38,91:-41,93:56 lengthC=afternoon~88:44
lengthC=all~78:24 lengthC=allotment~0:29 lengthC=altimeter~91:39 lengthC=altitude~38:87
lengthC=apart~11:48 lengthC=as~0:56 lengthC=away~92:37 lengthC=barrel~78:39
lengthC=below~0:-31,88:53,93:34 lengthC=between~15:35,93:42
lengthC=bore~0:-33,91:-46,94:21,95:69,102:53 lengthC=bore's~62:31,88:-27
lengthC=borehole~0:-28,62:49,78:-29,88:74,95:85 lengthC=bottom~0:-57,78:46,95:40 lengthC=box~88:36
lengthC=buried~0:7,91:22 lengthC=by~92:34 lengthC=cabin~0:-56,38:44,88:-21,91:43,93:37
lengthC=cable~43:162,93:-39 lengthC=came~102:50 lengthC=can~0:24,38:27 lengthC=captured~0:35
lengthC=cased~0:-39,94:50 lengthC=casing~0:-48,94:6 lengthC=cattle~93:41 lengthC=cellar~0:46
lengthC=cistern~0:54 lengthC=climb~91:86 lengthC=climbs~0:-31,91:100,93:-22 lengthC=cm~11:31
lengthC=compensating~16:46 lengthC=copper~93:47 lengthC=could~0:58 lengthC=creek~88:38,91:-50,92:25
lengthC=deep~0:-8,88:46,94:47,102:32 lengthC=depth~62:58,88:-29,95:47
lengthC=diameter~0:-55,60:85,94:54 lengthC=difference~91:33 lengthC=differences~92:30
lengthC=distance~15:33,93:55 lengthC=down~62:60,93:-19,100:28 lengthC=draws~77:88
lengthC=drilled~0:34,93:-42,95:41 lengthC=drip~11:81,15:66,16:19 lengthC=dripper~16:60
lengthC=drippers~16:102 lengthC=drop~78:43,91:-41,92:56,93:-57,98:75 lengthC=drops~91:-43,92:42
lengthC=drum~0:-33,78:59 lengthC=dry~61:45,88:30 lengthC=dug~95:25 lengthC=dynamic~88:35
lengthC=each~11:52,16:71 lengthC=elevation~38:82,91:35 lengthC=emitters~16:26 lengthC=end~88:25
lengthC=ends~0:34 lengthC=et~0:-30,14:69 lengthC=every~16:32 lengthC=fall~92:47
lengthC=falls~78:21,91:-30,92:53,93:-36,100:20 lengthC=farthest~93:29 lengthC=feeds~78:-56
lengthC=feet~92:27 lengthC=fifty~91:37 lengthC=floor~0:-40,78:32,91:42 lengthC=foot~91:45
lengthC=from~43:41,88:38,91:103,92:59,95:-75 lengthC=ft~0:-32,62:-56,77:-32,78:-49,91:45,95:80
lengthC=g'day~88:-26 lengthC=gallons~78:39 lengthC=garden~93:32 lengthC=generator~78:34
lengthC=goes~88:47 lengthC=good~0:-23 lengthC=got~0:48,91:31 lengthC=gph~16:40
lengthC=gpm~0:27,100:52 lengthC=greenhouse~0:58 lengthC=grid~0:37 lengthC=ground~0:-33,92:31
lengthC=h~16:45 lengthC=half~92:68 lengthC=hanging~0:40 lengthC=hangs~62:36 lengthC=hav~0:45,78:-51
lengthC=he~0:26 lengthC=head~91:33 lengthC=height~91:57 lengthC=hey~0:60,88:-61
lengthC=hi~0:74,62:-29 lengthC=high~0:29 lengthC=higher~93:55 lengthC=highest~91:47
lengthC=hill~78:22,91:-48 lengthC=hole~95:35 lengthC=hose~77:44,93:36 lengthC=hours~100:48
lengthC=house~43:27,62:-54,88:-23,91:81,92:45,93:100,95:-56 lengthC=houses~0:-24,91:31
lengthC=hung~98:68 lengthC=hut~38:44 lengthC=i've~0:61 lengthC=ibc~78:29
lengthC=intake~0:-30,77:62,91:-29,92:33 lengthC=it's~93:38,95:34 lengthC=its~0:36,93:-51
lengthC=jet~93:35 lengthC=kitchen~0:-44,91:50,93:46 lengthC=km~0:37,92:52
lengthC=l~16:42,88:-23,100:39 lengthC=last~0:26,91:-29 lengthC=length~93:40
lengthC=level~62:-24,88:69,95:-42,100:63,102:51 lengthC=lies~91:48
lengthC=lift~61:41,62:-27,77:-30,88:48,91:57 lengthC=line~0:41,11:80,78:-3,88:-35,93:44
lengthC=lines~11:78 lengthC=litres~78:61 lengthC=little~91:-38,92:37 lengthC=log~95:35
lengthC=lower~93:22 lengthC=lowered~62:54 lengthC=lowest~88:44
lengthC=m~88:57,92:35,94:48,100:38,102:34 lengthC=main~93:45 lengthC=mains~0:41,43:39,93:-32
lengthC=makes~0:34 lengthC=maybe~0:39 lengthC=measured~0:50
lengthC=mm~0:-35,78:-30,91:38,92:44,93:43 lengthC=more~91:23 lengthC=mouth~92:36 lengthC=must~91:36
lengthC=neighbour~0:45 lengthC=never~0:33 lengthC=next~93:51 lengthC=no~0:-40,88:52,93:33
lengthC=not~95:50 lengthC=npsh~65:54 lengthC=off~91:28 lengthC=okay~0:-37 lengthC=one~93:-18,95:42
lengthC=only~95:39 lengthC=other~0:30 lengthC=ours~95:44 lengthC=out~0:-45,92:45
lengthC=outside~60:52 lengthC=panels~0:40,43:32,93:-37 lengthC=paper~0:31
lengthC=pipe~0:63,77:54,78:-33,88:-31,93:59,95:-51,98:65 lengthC=pit~95:-31
lengthC=place~0:-25,38:30 lengthC=platform~78:39 lengthC=plot~0:37 lengthC=poly~91:43
lengthC=pond~0:60 lengthC=power~0:30,93:-33 lengthC=pulls~88:56
lengthC=pump~0:-31,43:21,60:36,61:50,62:147,65:43,77:59,88:63,91:-18,92:-30,95:-34,98:54,102:-33
lengthC=pump's~62:39 lengthC=pumphouse~88:47 lengthC=pumping~88:30,100:32 lengthC=push~0:28,88:-40
lengthC=pushes~78:46 lengthC=put~78:53 lengthC=pvc~98:24 lengthC=quit~0:44 lengthC=raised~78:24
lengthC=required~65:42 lengthC=reservoir~0:-19,78:81,91:-42 lengthC=rest~88:-19,102:90
lengthC=rings~0:-30,94:29 lengthC=rise~91:90 lengthC=rises~91:55 lengthC=river~88:24
lengthC=road~0:70,93:-25 lengthC=roof~91:45 lengthC=rows~0:-29,15:132
lengthC=run~43:23,88:-39,93:74 lengthC=s~100:35 lengthC=sawback~38:22 lengthC=say~0:34,95:-38
lengthC=says~0:44,95:31 lengthC=sch~0:41 lengthC=season~88:46 lengthC=set~62:67
lengthC=shower~0:43,88:-27,91:42 lengthC=sits~0:-47,62:36,88:31,93:34 lengthC=sixty~0:-44
lengthC=solar~88:-52 lengthC=sorry~0:-34 lengthC=source~0:33,95:-38 lengthC=spacing~15:48,16:23
lengthC=spring~0:-32,78:-34,91:36,92:43,93:48 lengthC=stand~78:30 lengthC=standing~102:55
lengthC=stands~0:-58,88:36 lengthC=static~0:-42,88:57,91:-27,95:-34,100:13,102:120
lengthC=stock~91:36 lengthC=sub~62:43 lengthC=submersible~60:11,62:114,88:-25,93:-49
lengthC=suction~77:155,88:82,91:-35 lengthC=summer~38:44 lengthC=surface~88:44
lengthC=swl~88:35,102:62 lengthC=take~92:50 lengthC=tank~0:49,78:135,88:-42,91:-41,93:95,95:-29
lengthC=tap~91:61 lengthC=taps~0:46 lengthC=tent~91:55 lengthC=than~93:24 lengthC=then~0:44,88:-49
lengthC=they~88:19 lengthC=thing~0:-34 lengthC=through~77:58 lengthC=toddler~0:63
lengthC=told~78:24 lengthC=tote~0:46 lengthC=tower~78:55 lengthC=towr~0:57,78:-55
lengthC=trench~0:75 lengthC=trough~0:-32,91:49,92:34 lengthC=troughs~93:47 lengthC=two~0:24,93:26
lengthC=up~0:57,62:-29,78:50,91:32,93:52,95:-39 lengthC=uphill~91:53 lengthC=us~0:40
lengthC=use~0:35,88:-33 lengthC=village~0:-25,78:30 lengthC=was~62:35,93:-57
lengthC=water~0:-38,88:145,95:-54,100:22,102:71 lengthC=water's~88:36 lengthC=waters~88:43
lengthC=way~93:35 lengthC=we've~95:42 lengthC=well~0:52,78:-38,91:-47,93:-41,94:84,95:67,100:30
lengthC=wellhead~91:27 lengthC=when~88:-42,100:51 lengthC=winter~88:37 lengthC=wire~43:83,93:-55
lengthC=within~88:33 lengthC=wrote~0:41 lengthC=x~0:37 lengthC=yards~92:32 lengthC=yurt~0:28
lengthL0=,~15:43,16:51,38:-8,78:-30,91:36,93:47,102:-25
lengthL0=.~0:-52,16:24,65:81,78:-43,93:25,95:26 lengthL0=0~14:50,78:40,91:-18,93:46
lengthL0=1~95:39 lengthL0=2~0:28,88:-36,93:44 lengthL0=3~78:38,93:27 lengthL0=4~0:43
lengthL0=5~0:26 lengthL0=:~78:44,91:39 lengthL0=;~91:54 lengthL0=?~0:-50,88:59
lengthL0=a~0:-65,38:-21,43:29,78:60,88:-30,91:51,93:35,94:43,95:62 lengthL0=all~0:60
lengthL0=altimeter~91:39 lengthL0=altitude~38:82 lengthL0=and~88:-18,91:49,93:18
lengthL0=are~11:49,38:28 lengthL0=at~38:108,62:147,77:-27,88:76,91:-59,92:-36,93:-42,95:-75
lengthL0=away~91:18 lengthL0=barn~0:-41,93:30 lengthL0=between~15:46 lengthL0=bore~0:22,95:71
lengthL0=borehole~88:-26,91:-40,95:69 lengthL0=bottom~91:31 lengthL0=box~88:37 lengthL0=buried~0:65
lengthL0=by~92:58 lengthL0=cabin~0:-46,38:24,91:43,93:51 lengthL0=cable~43:52,93:-18
lengthL0=can~0:27 lengthL0=cased~0:-34,94:50 lengthL0=casing~0:-35,94:6 lengthL0=cellar~0:50
lengthL0=climb~0:-27,91:70 lengthL0=climbs~0:-28,91:82,93:-22 lengthL0=compensating~16:56
lengthL0=copper~93:24 lengthL0=creek~92:40 lengthL0=day~0:23 lengthL0=deep~94:29
lengthL0=depth~95:55 lengthL0=diameter~0:-30,60:86 lengthL0=distance~93:33
lengthL0=down~62:32,88:32,91:-32,100:35 lengthL0=drilled~0:30 lengthL0=drip~11:33,15:21
lengthL0=dripper~16:7 lengthL0=drippers~16:65 lengthL0=drop~92:38,93:-35
lengthL0=drops~0:32,91:-43,92:42 lengthL0=drum~0:-33,78:60 lengthL0=dry~61:45 lengthL0=dug~95:36
lengthL0=each~11:50,16:34 lengthL0=elevation~0:-32,38:82 lengthL0=emitters~16:33 lengthL0=ends~0:34
lengthL0=et~0:-30,14:69 lengthL0=every~16:60 lengthL0=falls~78:22,92:53,100:27 lengthL0=far~0:31
lengthL0=farthest~93:29 lengthL0=feet~95:33 lengthL0=field~0:57 lengthL0=floor~0:-40,78:32
lengthL0=from~62:22,88:38 lengthL0=ft~91:27,92:-35 lengthL0=gallons~78:45 lengthL0=garden~93:35
lengthL0=goes~0:-19,88:40,91:41,95:32 lengthL0=got~91:32 lengthL0=gpm~0:30 lengthL0=grid~0:32
lengthL0=ground~92:37 lengthL0=h~0:36 lengthL0=hangs~62:38 lengthL0=has~93:-22,98:26
lengthL0=he~0:-37 lengthL0=head~0:36,91:34 lengthL0=height~0:-43,91:24 lengthL0=highest~91:44
lengthL0=hill~0:-30 lengthL0=hole~95:26 lengthL0=hose~77:40
lengthL0=house~0:57,43:-27,62:-24,78:26,88:-32,91:76,92:57,93:44,95:-15 lengthL0=hp~62:49
lengthL0=hung~98:53 lengthL0=hut~38:33 lengthL0=i~0:-30,93:59
lengthL0=in~62:-35,88:33,91:-39,94:45,95:43 lengthL0=inch~0:-33 lengthL0=intake~77:60,92:34
lengthL0=is~0:15,14:49,38:-32,43:37,78:35,91:37,94:55,95:38
lengthL0=it~0:51,62:32,88:33,91:-19,100:58 lengthL0=it's~93:51 lengthL0=kitchen~93:21
lengthL0=l~78:46 lengthL0=last~0:50,91:-27 lengthL0=length~93:39
lengthL0=level~62:-19,88:30,91:-25,95:-48,100:72,102:57 lengthL0=lies~91:48
lengthL0=lift~0:35,61:41,62:-24,77:-39,88:34,91:45 lengthL0=line~0:38,11:91,77:25,78:-28,88:-28
lengthL0=lines~11:96 lengthL0=litres~78:33 lengthL0=lowered~62:43 lengthL0=lowest~88:55
lengthL0=m~0:10,88:-31 lengthL0=mains~0:50 lengthL0=maybe~0:28 lengthL0=measured~93:51
lengthL0=mm~0:-43,92:37,93:63 lengthL0=more~91:23 lengthL0=must~91:28 lengthL0=my~92:29
lengthL0=no~93:47 lengthL0=now~88:40 lengthL0=npsh~65:52 lengthL0=of~0:81,91:-38
lengthL0=on~78:31,98:70 lengthL0=our~0:44 lengthL0=ours~0:-35,88:30,95:44 lengthL0=outside~60:52
lengthL0=pipe~77:61,93:40 lengthL0=poly~93:47 lengthL0=pond~0:41
lengthL0=pump~43:67,62:109,78:-29,91:-46,94:-36,95:-17 lengthL0=pumping~100:40
lengthL0=push~0:21,88:-35 lengthL0=rest~102:66 lengthL0=rise~91:90 lengthL0=rises~91:67
lengthL0=river~88:26 lengthL0=rows~15:151,16:-35 lengthL0=run~43:27,93:13 lengthL0=sawback~38:22
lengthL0=says~95:41 lengthL0=season~88:37 lengthL0=set~62:57 lengthL0=shed~0:27
lengthL0=shower~88:-26,91:39 lengthL0=small~38:27 lengthL0=sorry~0:-27,88:27 lengthL0=spacing~16:33
lengthL0=spring~92:43 lengthL0=stand~78:38 lengthL0=standing~102:55 lengthL0=stands~0:-31
lengthL0=static~0:-13,88:67,95:-26,102:79 lengthL0=stone~0:40 lengthL0=sub~62:42
lengthL0=submersible~62:75 lengthL0=sucks~77:40 lengthL0=suction~77:97,88:36,91:-35
lengthL0=summer~38:30 lengthL0=surface~0:40 lengthL0=swl~88:36,102:67 lengthL0=tank~78:58,91:-26
lengthL0=tap~91:55 lengthL0=that~78:45 lengthL0=the~43:28,78:56,93:17,95:12,98:31,102:-37
lengthL0=through~77:68 lengthL0=to~88:72,93:12,100:47 lengthL0=told~78:25 lengthL0=tote~0:41
lengthL0=tower~0:-33,78:55,93:46 lengthL0=up~0:20,78:71,88:-32,91:33 lengthL0=uphill~91:51
lengthL0=was~0:20 lengthL0=water~0:59,62:-66,88:96,91:-30,102:85 lengthL0=water's~88:39
lengthL0=way~93:36 lengthL0=we~38:27,92:26,93:-41 lengthL0=well~95:67 lengthL0=winter~88:37
lengthL0=with~0:34,88:54,93:-39 lengthL0=within~88:33 lengthL0=x~0:43 lengthL0=yurt~0:39
lengthL0=|~88:26,92:54 lengthL1=(~0:-30,93:33 lengthL1=)~0:-23
lengthL1=,~11:76,16:42,38:-41,61:50,78:52,102:53 lengthL1=.~11:27,14:41,62:46,100:-29
lengthL1=0~78:66,91:23,92:28 lengthL1=1~15:44,78:-29,88:16,98:19
lengthL1=2~0:-35,62:26,78:20,93:-60 lengthL1=3~78:34,92:57,95:24,100:33,102:-34
lengthL1=4~0:-57,77:47,88:35,92:43,93:41 lengthL1=5~95:19 lengthL1=6~93:-42
lengthL1=8~93:-44,102:35 lengthL1=9~88:-29,94:54,100:48 lengthL1=:~102:27
lengthL1=;~0:30,88:-48,91:-37,92:35 lengthL1=?~38:26,78:-32 lengthL1=a~0:29,62:31,91:-17,95:49
lengthL1=above~88:-37,93:46 lengthL1=acre~0:24 lengthL1=all~78:21 lengthL1=an~0:33
lengthL1=and~88:35,92:-42,98:56 lengthL1=apart~11:24 lengthL1=are~0:66,62:-35
lengthL1=at~0:-45,16:38,62:-39,65:38,91:30,102:27 lengthL1=back~95:41 lengthL1=bar~0:45
lengthL1=beds~16:22 lengthL1=below~0:-39,93:49 lengthL1=booster~0:28,93:-27
lengthL1=bore~94:40,102:31 lengthL1=borehole~0:-38,88:27,98:38 lengthL1=cable~43:64
lengthL1=cattle~93:37 lengthL1=deep~62:-32,95:35,102:32 lengthL1=depth~0:41 lengthL1=distance~93:23
lengthL1=drilled~95:34 lengthL1=drip~0:-25,16:35 lengthL1=dry~0:-47 lengthL1=dug~94:40
lengthL1=emitters~16:40 lengthL1=end~88:32 lengthL1=falls~88:42 lengthL1=feet~0:46,88:34
lengthL1=fifty~91:38 lengthL1=from~43:56,62:-40,92:44,93:59 lengthL1=ft~0:56,88:41,92:32
lengthL1=gallon~0:52 lengthL1=gallons~0:52,93:-28 lengthL1=garden~0:37 lengthL1=gpm~100:24
lengthL1=guest~0:64 lengthL1=h~0:-44,100:60 lengthL1=half~91:-28,92:71 lengthL1=have~0:15
lengthL1=he~0:39 lengthL1=hill~0:25,91:-29 lengthL1=hose~0:44 lengthL1=house~43:34,92:-24
lengthL1=how~95:41 lengthL1=hundred~0:31,88:-49 lengthL1=i~0:38,93:-32
lengthL1=in~0:32,62:30,102:-39 lengthL1=inch~0:48,92:49 lengthL1=inside~88:-25,102:26
lengthL1=is~62:19,93:14,98:25 lengthL1=it~91:29,93:25 lengthL1=it's~95:44 lengthL1=l~100:38
lengthL1=level~88:31 lengthL1=lift~0:-40 lengthL1=line~93:36 lengthL1=liters~0:43
lengthL1=litres~91:53 lengthL1=log~0:-33,95:35 lengthL1=m~88:56,100:21 lengthL1=makes~88:-32,102:33
lengthL1=meters~0:41 lengthL1=min~0:37,91:-49 lengthL1=minute~92:18 lengthL1=my~0:23,93:-44
lengthL1=never~88:33 lengthL1=night~0:39 lengthL1=of~0:-46,62:-33,78:11,88:31 lengthL1=our~0:-47
lengthL1=over~0:42,93:-46 lengthL1=pe~92:51 lengthL1=per~93:-45 lengthL1=pipe~93:29
lengthL1=poly~91:40,93:-33 lengthL1=psi~0:-50,88:32 lengthL1=pump~0:-31,91:36
lengthL1=reservoir~78:34 lengthL1=rows~11:45 lengthL1=run~93:34 lengthL1=s~100:36
lengthL1=sea~91:39 lengthL1=seconds~93:-29 lengthL1=shower~0:26 lengthL1=source~0:34
lengthL1=spring~0:24,91:-44,92:40 lengthL1=stands~0:47,88:26 lengthL1=static~100:39
lengthL1=stream~78:50 lengthL1=submersible~0:-25,60:14,62:25 lengthL1=suction~0:39,77:40,93:-25
lengthL1=summer~88:28 lengthL1=surface~0:-55,88:49 lengthL1=tank~0:77,78:57
lengthL1=the~38:-40,43:23,77:43,95:67,102:39 lengthL1=then~0:45 lengthL1=to~0:-46,43:44,91:61,92:34
lengthL1=top~88:34 lengthL1=tote~78:26 lengthL1=trench~0:33 lengthL1=up~91:27
lengthL1=water~88:23,91:20,93:31 lengthL1=we~93:67 lengthL1=well~88:16,92:-31
lengthL1=with~0:-52,93:42,100:30 lengthL1=yards~92:32 lengthL1=year~88:-31 lengthL1=|~78:-42,88:-44
lengthL2=(~0:-22,78:30 lengthL2=,~11:56,15:53,78:41,92:-36
lengthL2=.~14:51,16:26,43:12,61:62,62:49,88:-23,92:-32,93:27,100:34
lengthL2=0~11:46,16:37,43:19,62:33,77:1,91:38,92:46,100:-32
lengthL2=1~43:35,62:28,77:19,78:-36,92:34 lengthL2=2~11:38,78:-30,92:32,93:47
lengthL2=3~0:-36,14:51,62:45,65:34,78:-33,93:56,94:-41 lengthL2=4~78:39,88:-34,91:25,92:-52
lengthL2=5~11:42,38:-30,78:36,93:51 lengthL2=6~11:44,88:-6,102:7 lengthL2=7~102:-25
lengthL2=8~0:28,78:28 lengthL2=9~91:42,92:-52 lengthL2=:~88:-54,92:33,100:58
lengthL2=;~88:-44,91:37 lengthL2=above~77:30 lengthL2=afternoon~88:40 lengthL2=again~91:-29
lengthL2=all~0:-31 lengthL2=allotment~0:30 lengthL2=am~0:63 lengthL2=answer~88:48
lengthL2=apart~11:58 lengthL2=august~0:-30 lengthL2=bar~0:60,78:-25 lengthL2=beef~91:36
lengthL2=beside~93:21 lengthL2=bore~0:-19,100:31,102:39 lengthL2=bore's~62:28
lengthL2=borehole~0:-16,88:43 lengthL2=bring~91:43 lengthL2=bucket~0:57,91:-60,93:-29
lengthL2=by~0:-64,95:51 lengthL2=cabin~0:39,92:-36 lengthL2=cable~43:42 lengthL2=camp~0:79,95:-32
lengthL2=casing~0:65 lengthL2=cistern~0:37 lengthL2=clinic~0:49,95:-38 lengthL2=cm~14:42,15:44
lengthL2=compensating~11:44 lengthL2=count~0:34 lengthL2=creek~0:44,77:31,93:-37
lengthL2=cubic~0:50,93:-24 lengthL2=day~38:53 lengthL2=deep~0:-62,102:47 lengthL2=depth~62:51
lengthL2=diameter~88:-29 lengthL2=distance~91:33 lengthL2=does~0:34,78:-28
lengthL2=drip~0:-6,15:53,16:103 lengthL2=drippers~11:72 lengthL2=drop~98:27 lengthL2=dropped~95:24
lengthL2=dug~95:33 lengthL2=electric~43:41,91:-22 lengthL2=fed~0:39,91:-33
lengthL2=feet~0:-43,91:45,102:35 lengthL2=fills~93:-31 lengthL2=five~78:44 lengthL2=flow~0:30
lengthL2=foot~91:39 lengthL2=found~88:47 lengthL2=from~78:20,102:49
lengthL2=ft~0:-24,16:47,78:-33,88:68,92:-43,98:41,102:-68 lengthL2=gal~88:29,93:28
lengthL2=gallon~0:10,93:-36 lengthL2=gallons~0:-37 lengthL2=garden~0:54 lengthL2=gave~88:-49,100:32
lengthL2=generator~78:35 lengthL2=gives~92:59,93:-22 lengthL2=goes~93:-39 lengthL2=gone~0:44
lengthL2=good~95:36 lengthL2=got~0:58 lengthL2=gpm~88:-41,93:33 lengthL2=guests~0:32
lengthL2=h~62:33 lengthL2=ha~16:39 lengthL2=had~0:45 lengthL2=hav~0:49,78:-51 lengthL2=having~0:24
lengthL2=he~0:-34 lengthL2=height~91:31 lengthL2=hello~0:57,88:-39 lengthL2=hey~0:50,88:-47
lengthL2=higher~0:38 lengthL2=hit~88:50 lengthL2=hose~93:29 lengthL2=hour~0:49,93:-43
lengthL2=hours~0:36 lengthL2=house~0:-21,88:-38,91:119,93:35,95:-39 lengthL2=hundred~91:39,93:-43
lengthL2=i've~0:56 lengthL2=inch~0:-37,62:39,91:10,93:-38 lengthL2=inches~102:43
lengthL2=into~78:61 lengthL2=jet~0:-31,77:33,88:37 lengthL2=keeps~0:34 lengthL2=kitchen~0:-46
lengthL2=l~11:32,65:47,78:-36 lengthL2=lane~88:-27 lengthL2=last~95:30 lengthL2=level~0:47
lengthL2=line~91:-34 lengthL2=lines~78:31 lengthL2=liter~0:29 lengthL2=litre~0:25
lengthL2=litres~0:-64,92:49 lengthL2=little~91:-38,92:38 lengthL2=live~0:25 lengthL2=low~91:-29
lengthL2=lower~0:25,88:-44,93:28 lengthL2=m~16:36,91:55,95:-47,102:5 lengthL2=many~0:35
lengthL2=max~0:37 lengthL2=maybe~91:33 lengthL2=measured~0:28 lengthL2=metres~91:-52,92:69
lengthL2=min~0:-63,65:51 lengthL2=minute~78:-40 lengthL2=mm~0:-32,92:30 lengthL2=most~0:32,78:-52
lengthL2=new~95:-49 lengthL2=next~78:-31 lengthL2=no~0:-36,43:40,93:43,95:45 lengthL2=none~91:33
lengthL2=normally~0:18 lengthL2=not~0:-34 lengthL2=old~78:31 lengthL2=one~91:26,92:-54,93:-39
lengthL2=only~0:-47,91:54 lengthL2=other~88:42 lengthL2=over~91:-29,93:46 lengthL2=pe~0:-50
lengthL2=people~0:80 lengthL2=pipe~92:39,93:49 lengthL2=place~92:29 lengthL2=poly~91:8,93:34
lengthL2=pond~0:36,91:-38 lengthL2=power~93:45 lengthL2=pressure~0:-23,78:57,91:-19
lengthL2=psi~15:40 lengthL2=pump~0:46,61:83,62:74,77:52,92:-28 lengthL2=pumphouse~88:33
lengthL2=put~0:-35 lengthL2=pvc~0:-41,98:28 lengthL2=quick~0:-31 lengthL2=rain~78:51
lengthL2=reservoir~78:67,91:-49 lengthL2=right~0:-26 lengthL2=river~0:39 lengthL2=roof~78:48,91:-32
lengthL2=rows~11:73 lengthL2=run~93:48 lengthL2=runs~88:26 lengthL2=said~0:-27,95:37
lengthL2=says~88:38 lengthL2=sea~0:29 lengthL2=september~92:36 lengthL2=set~0:-18,88:42
lengthL2=shaft~88:-27,102:26 lengthL2=shallow~93:41 lengthL2=shower~0:-39 lengthL2=showers~0:51
lengthL2=sits~0:-30 lengthL2=sixty~0:26 lengthL2=so~91:-41 lengthL2=solar~91:28
lengthL2=source~0:-33,88:29,92:40 lengthL2=spring~0:43,91:-31,92:66 lengthL2=stands~91:43
lengthL2=static~0:-40,88:63 lengthL2=steel~0:-49 lengthL2=submersible~88:31,93:-37,95:11
lengthL2=suction~88:32 lengthL2=sun~0:37,93:-39 lengthL2=surface~61:19 lengthL2=take~92:39
lengthL2=tank~0:44,78:29,92:-21,93:85,95:-35 lengthL2=ten~0:25,93:-27 lengthL2=tent~91:55
lengthL2=test~88:-29,100:38 lengthL2=there~0:63,91:-27 lengthL2=there's~95:55
lengthL2=they~0:36,78:-56,91:23 lengthL2=thousand~0:39 lengthL2=through~91:50
lengthL2=too~0:-26,78:34 lengthL2=trees~0:31 lengthL2=troughs~91:29 lengthL2=two~78:55
lengthL2=under~0:17,93:-39 lengthL2=up~0:-48,78:17,91:33 lengthL2=upper~0:33 lengthL2=use~88:-34
lengthL2=v~0:-40,43:49 lengthL2=want~0:26,78:-48,93:36 lengthL2=was~0:-58 lengthL2=washing~0:39
lengthL2=water~0:-41,62:30,78:28,88:105,91:-43,100:23 lengthL2=water's~91:-44 lengthL2=we've~95:54
lengthL2=well~0:41,88:35,91:-29,95:63 lengthL2=wellhead~91:32 lengthL2=what~95:-35
lengthL2=which~0:16,93:-55 lengthL2=while~0:55,93:-54 lengthL2=will~91:23 lengthL2=yet~91:33
lengthL2=you~0:31 lengthL2=|~38:26 lengthM=cistern~38:50,93:36
lengthM=creek~0:28,77:44,91:69,93:-17
lengthM=drip~0:-6,11:130,14:50,15:119,16:121,88:-24,94:-43,102:-44
lengthM=pump~0:29,16:45,38:76,43:61,60:16,61:41,62:53,65:66,77:56,88:48,91:74,92:-87,100:43,102:43
lengthM=roof~0:34 lengthM=spring~0:44,38:55,62:-61,88:-18,91:-35,92:204
lengthM=tank~78:166,91:-35,95:1
lengthM=well~62:47,77:-46,78:-30,92:-44,93:71,94:67,95:82,98:36,100:38 lengthR0=(~91:34
lengthR0=,~15:56,16:39,62:25,78:27,95:84
lengthR0=.~11:33,16:5,38:77,43:36,62:61,65:56,78:27,88:19,94:63,95:56 lengthR0=0~93:68
lengthR0=1~0:-85,16:44,43:50,77:98,88:-61,92:-29,93:34 lengthR0=2~0:18,38:27,78:45,88:-20,95:-23
lengthR0=4~77:36,88:-50,93:15,98:49 lengthR0=5~95:-33 lengthR0=6~0:-69,60:47 lengthR0=7~91:35
lengthR0=8~95:-40,98:38 lengthR0=9~88:24,93:27 lengthR0=:~0:-44,93:40 lengthR0=;~0:-31,88:11
lengthR0=a~0:-47,14:38 lengthR0=above~0:-26,38:29,62:-33,78:91,88:60,91:76,92:47,93:-47,95:-33
lengthR0=according~95:45 lengthR0=across~0:40,94:48 lengthR0=after~0:39,88:52 lengthR0=all~0:76
lengthR0=altitude~38:24 lengthR0=an~0:44,93:-62 lengthR0=and~0:-43,88:-32,93:43,94:39,95:51,102:54
lengthR0=apart~15:54,16:24 lengthR0=at~0:-31,16:42,61:29,62:-31,88:47,91:-26,95:30,100:53
lengthR0=away~0:45,91:-36,93:88 lengthR0=barn~0:33,78:-29
lengthR0=below~62:42,88:53,91:81,92:13,93:-37,95:-46 lengthR0=between~15:28
lengthR0=borehole~0:-40,91:31,94:46 lengthR0=bottom~0:33,93:-34,95:59 lengthR0=but~0:50,93:-26
lengthR0=cabin~92:44 lengthR0=cable~43:109,93:-41 lengthR0=casing~94:77,95:-19 lengthR0=climb~91:40
lengthR0=comes~0:52,95:-23 lengthR0=creek~91:43 lengthR0=day~14:60
lengthR0=deep~0:79,88:-45,91:-24,93:-34,95:141 lengthR0=depth~95:59 lengthR0=diameter~94:37
lengthR0=down~62:109,78:-40,88:62,93:-29 lengthR0=drip~0:62 lengthR0=dripper~15:34
lengthR0=drippers~15:22 lengthR0=drop~92:39,98:50 lengthR0=elevation~38:35 lengthR0=fall~92:28
lengthR0=fence~0:52 lengthR0=first~91:-39 lengthR0=for~0:33 lengthR0=from~0:44,38:-33,93:68,95:-42
lengthR0=full~0:47 lengthR0=garden~91:-24,92:35,93:28 lengthR0=ground~62:37,88:17,91:-36
lengthR0=have~0:51 lengthR0=height~78:50,91:31 lengthR0=high~0:38 lengthR0=higher~78:45,91:73
lengthR0=hill~91:45 lengthR0=hose~0:28,77:49 lengthR0=house~0:27,92:40,95:-31 lengthR0=hut~91:30
lengthR0=in~14:49,60:79,62:50,88:76,91:38,102:-25 lengthR0=inch~77:41,93:48 lengthR0=inside~94:68
lengthR0=is~0:-49,93:17 lengthR0=it~88:54 lengthR0=just~0:50,93:-28 lengthR0=kitchen~78:46
lengthR0=level~61:29,62:-31 lengthR0=lift~0:-37,88:37,91:61 lengthR0=line~0:29,77:36
lengthR0=lined~95:24 lengthR0=long~0:13,11:71,77:48,91:-23,95:-35
lengthR0=lower~88:-37,91:-19,92:111 lengthR0=m~0:25 lengthR0=not~88:24
lengthR0=of~38:-35,43:89,77:115,78:-45,88:-28,93:66,95:-39,98:81 lengthR0=off~93:62
lengthR0=on~0:41 lengthR0=one~77:36 lengthR0=our~88:34 lengthR0=over~0:16,78:55,92:19
lengthR0=paced~93:36 lengthR0=pe~0:18 lengthR0=people~0:30,88:-30 lengthR0=pex~0:39
lengthR0=pipe~0:27,93:39,98:46 lengthR0=poly~0:54,88:-26,102:27
lengthR0=pump~0:-42,78:-28,88:56,91:24,92:-26,95:6,100:28 lengthR0=pvc~0:24 lengthR0=rim~102:25
lengthR0=rise~91:53 lengthR0=rows~0:-55,15:91 lengthR0=runs~77:30 lengthR0=sea~38:66,61:31
lengthR0=so~95:32 lengthR0=spring~0:48,91:-33,92:28 lengthR0=static~0:38
lengthR0=stream~0:-50,88:44,91:32 lengthR0=suction~65:30,77:57,91:-25 lengthR0=summer~88:45
lengthR0=surface~88:35 lengthR0=tank~78:43,91:-18,93:46 lengthR0=than~91:43,92:54
lengthR0=that~91:30 lengthR0=the~0:26,43:-45,62:-32,78:6,88:32,91:41,92:70,93:43,102:74
lengthR0=then~0:75 lengthR0=there~0:-26 lengthR0=they~0:35 lengthR0=through~0:-30
lengthR0=to~0:-33,43:34,78:48,93:45 lengthR0=top~92:-41,102:45 lengthR0=total~0:-39,88:25,93:18
lengthR0=under~0:-39,88:35,91:43 lengthR0=up~78:56,91:98,95:-35 lengthR0=uphill~0:-33,91:89
lengthR0=us~78:27,92:48 lengthR0=water~0:15,88:135,91:-39,93:-43 lengthR0=we~0:27
lengthR0=well~0:-27,94:35,95:39 lengthR0=when~88:-61,100:64,102:24 lengthR0=wide~0:35
lengthR0=wire~0:45,43:35,93:-51 lengthR0=with~0:-32,88:-26,94:28,95:40 lengthR0=yield~95:36
lengthR0=|~91:31 lengthR1=,~60:69,62:-27,95:26,102:23
lengthR1=.~16:45,38:42,77:48,78:71,92:28,93:33,95:59
lengthR1=0~0:-26,65:43,78:35,88:17,91:12,93:-53 lengthR1=1~11:54,88:29,92:42,95:16
lengthR1=2~65:45,78:-17,88:24,100:34,102:41 lengthR1=4~0:-37,65:48,91:41,93:-24,98:33
lengthR1=5~16:35,93:39,95:58 lengthR1=6~0:-77,78:60,88:-19,95:37,102:45 lengthR1=7~0:35,62:-45
lengthR1=8~93:31,95:26 lengthR1=9~0:-30,91:39,102:40 lengthR1=;~93:25 lengthR1=a~11:33,93:44
lengthR1=across~95:39 lengthR1=along~91:34 lengthR1=and~88:23 lengthR1=any~0:24
lengthR1=around~0:61 lengthR1=at~95:43,102:17 lengthR1=away~0:-32,91:30 lengthR1=by~0:35
lengthR1=cabin~93:25 lengthR1=climbs~91:50 lengthR1=cm~15:40 lengthR1=cottage~92:28
lengthR1=creek~77:30 lengthR1=deep~94:45,95:-24 lengthR1=distance~0:25,91:-28
lengthR1=drop~93:-23,98:42 lengthR1=drops~0:24 lengthR1=electricity~0:49
lengthR1=filled~0:51,92:-34 lengthR1=foot~0:26,93:-40 lengthR1=from~0:-34,78:19,88:24
lengthR1=ft~0:37,62:-35 lengthR1=garden~91:39 lengthR1=gives~91:-35,92:49 lengthR1=got~0:41
lengthR1=gpm~0:-33,95:32 lengthR1=grid~88:36 lengthR1=ground~0:18 lengthR1=h~16:26,88:37
lengthR1=has~92:39 lengthR1=higher~0:31 lengthR1=hose~77:44 lengthR1=house~0:-28,78:51,91:70,93:40
lengthR1=i~91:-50,92:40,93:16 lengthR1=if~92:24 lengthR1=in~77:48,91:-28,92:38
lengthR1=is~88:-47,93:-50,94:63 lengthR1=it~0:33,77:58,78:45 lengthR1=its~88:30 lengthR1=l~16:39
lengthR1=line~0:-20,92:33 lengthR1=log~0:45 lengthR1=m~0:-23,65:36,91:40,93:25,94:37,102:24
lengthR1=measured~0:57 lengthR1=metres~93:-28 lengthR1=mm~0:-32,77:44,88:-23,91:33,93:64
lengthR1=of~61:63,95:30 lengthR1=one~0:36 lengthR1=only~0:-37,78:23 lengthR1=out~0:57
lengthR1=pe~0:43 lengthR1=pex~93:17 lengthR1=poly~98:15 lengthR1=pump~43:12,94:51
lengthR1=pushes~0:-27,88:36 lengthR1=put~91:-30,92:31 lengthR1=runs~100:29
lengthR1=shower~0:61,88:-33 lengthR1=showers~88:34 lengthR1=slope~91:40 lengthR1=so~0:29
lengthR1=spring~91:31 lengthR1=submersible~94:37 lengthR1=suction~0:-54,61:68,77:56,88:35
lengthR1=tap~0:48 lengthR1=that~95:40 lengthR1=the~16:-66,43:59,78:66,88:-36,93:22,95:36
lengthR1=then~91:-38 lengthR1=through~0:36 lengthR1=to~88:17,91:37,95:-35 lengthR1=trough~0:40
lengthR1=up~0:-38,88:40 lengthR1=was~91:31 lengthR1=water~0:-45,14:46,88:33,95:50
lengthR1=we~91:-37 lengthR1=well~0:32,62:29,88:25,91:-32,92:41,93:-43 lengthR1=where~88:43
lengthR1=which~0:55,88:-40 lengthR1=wire~43:69 lengthR1=with~91:-22 lengthR1=|~43:53
lengthR2=)~0:-34,91:26 lengthR2=,~0:19,11:42,43:31,65:49,78:-23,88:-28,91:-9,93:26,95:31
lengthR2=.~16:46,78:35,92:68,93:28,94:23,95:-24,102:31 lengthR2=0~15:37,77:50,92:35,102:-22
lengthR2=1~0:-35,11:30,61:50,91:33,94:55 lengthR2=2~62:28,78:29,91:-48,92:62,93:48,102:-41
lengthR2=3~43:32,88:-56,93:-7,102:78 lengthR2=4~92:9
lengthR2=5~0:-30,91:42,92:24,94:34,95:-44,100:-38 lengthR2=6~88:35,92:-23
lengthR2=7~0:40,88:-29,91:44,93:-40,102:30 lengthR2=8~0:-63,88:44,92:-40,102:68
lengthR2=above~88:28,93:20 lengthR2=ah~0:25 lengthR2=apart~0:-35,11:32
lengthR2=away~0:-63,78:46,92:23 lengthR2=barn~0:49,93:-20 lengthR2=beside~0:56,95:-45
lengthR2=bottom~0:38 lengthR2=buried~0:-35,93:37 lengthR2=climb~0:52,93:-22
lengthR2=comes~0:-44,91:42 lengthR2=deep~93:-27,94:41 lengthR2=do~92:35 lengthR2=drop~98:37
lengthR2=end~0:78,88:-32,95:-36 lengthR2=feet~62:35,93:-26,95:58 lengthR2=first~78:-29,91:38
lengthR2=foot~77:77,93:-33 lengthR2=four~0:-39 lengthR2=from~0:-40,91:-32,93:69 lengthR2=ft~88:20
lengthR2=gallons~88:44 lengthR2=give~88:-24,102:24 lengthR2=go~0:37,88:-40 lengthR2=gpm~102:31
lengthR2=ground~95:35 lengthR2=h~0:47,95:-39 lengthR2=his~0:37,91:-27 lengthR2=hose~0:56,88:-26
lengthR2=house~0:-49,92:40 lengthR2=how~0:-31,78:48 lengthR2=hundred~91:57 lengthR2=hung~95:62
lengthR2=inch~0:-32,91:46 lengthR2=inside~95:36 lengthR2=it's~0:-21,91:75,92:-38 lengthR2=km~102:29
lengthR2=l~88:46 lengthR2=line~91:-46,92:36 lengthR2=liters~0:58,78:-49 lengthR2=litres~0:-42
lengthR2=long~91:-41 lengthR2=lower~0:44 lengthR2=m~0:-18,62:33,92:11 lengthR2=machine~88:38
lengthR2=mail~0:31,78:-28 lengthR2=metres~0:-57 lengthR2=mm~91:-26,98:36 lengthR2=never~95:37
lengthR2=new~0:59 lengthR2=no~88:-35,93:-32 lengthR2=nothing~0:45 lengthR2=one~93:46
lengthR2=pe~91:-20 lengthR2=per~88:34 lengthR2=persons~0:34 lengthR2=pipe~91:36,98:56
lengthR2=poly~0:-10,62:-41,77:46,91:67,92:41 lengthR2=power~93:29
lengthR2=pump~0:4,43:33,62:-30,78:25,93:-68,102:26 lengthR2=pumping~102:25 lengthR2=pvc~0:53,88:-53
lengthR2=rests~102:43 lengthR2=runs~0:50,62:-32 lengthR2=seven~91:-31 lengthR2=shower~93:62
lengthR2=since~0:40,93:-37 lengthR2=sink~0:25,91:-71,93:47 lengthR2=sits~0:49,95:-49
lengthR2=so~0:41 lengthR2=solar~88:-41 lengthR2=suction~0:45 lengthR2=summer~0:23,88:-19
lengthR2=tank~0:42,92:-36 lengthR2=then~93:-28 lengthR2=toilets~93:37 lengthR2=top~0:-42,88:39
lengthR2=two~0:-51 lengthR2=under~0:-37,95:29 lengthR2=v~0:-32,93:35 lengthR2=valve~77:62
lengthR2=was~0:52 lengthR2=washing~88:47 lengthR2=water~0:-74,65:52,93:-29,94:51,95:21
lengthR2=well~88:35 lengthR2=when~88:-34,102:44 lengthR2=where~102:43 lengthR2=which~0:46
lengthR2=yield~88:31 lengthR2=|~0:75,93:-46
lengthT=beds.area~0:-50,11:100,14:52,15:85,16:58,77:-28,78:-19
lengthT=power.cable~0:-41,43:-35,92:-41,95:33 lengthT=power.capacity~91:53
lengthT=power.controller~93:-26 lengthT=power.facing~0:-31,43:42 lengthT=power.limit~43:39
lengthT=power.open_voltage~43:43,93:-37 lengthT=power.panel~38:33,43:62,62:44,91:27,102:-28
lengthT=power.series~0:-35,43:23,78:37,95:-42
lengthT=power.source~38:25,43:94,78:54,88:49,91:46,92:-57,95:34
lengthT=power.strings~0:-34,43:20,78:56 lengthT=power.voltage~43:102,61:54,92:-93,93:21
lengthT=pump.control~0:34,62:25,65:39,77:43,78:-60,91:41 lengthT=pump.count~0:35
lengthT=pump.cut_in~62:34,77:30,78:-41,88:36 lengthT=pump.cut_out~0:27,62:24,78:-39,88:36,91:-30
lengthT=pump.dry_lift~65:33 lengthT=pump.dry_run~60:79,88:-52,95:34,102:64
lengthT=pump.height~0:38,60:43,62:-168,77:-47,78:37,88:49,93:-49,95:70,100:64,102:27
lengthT=pump.least_flow~0:-35 lengthT=pump.most_flow~88:41 lengthT=pump.npsh~61:30
lengthT=pump.placement~0:36,38:54,60:72,61:49,62:47,77:40,78:-28,92:-89
lengthT=pump.present~0:-28,78:40,88:-46,91:-125,92:182,93:82 lengthT=pump.relief~0:34,91:-34
lengthT=pump.set~65:29,78:-40,93:38 lengthT=pump.starts~0:-34 lengthT=pump.works~61:69,93:-43
lengthT=store.days~0:80,78:60,95:-37 lengthT=store.depth~0:28,93:-28
lengthT=store.volume~11:31,15:45,38:20,62:-32,91:72,92:-15,93:52
lengthT=tank.level~0:72,38:30,78:-137,88:64,91:-65,92:-46,93:86
lengthT=tank.volume~0:43,38:44,78:179,88:-22,91:-80,92:-78,93:47
lengthT=water.kind~0:-37,11:41,15:32,38:36,43:-39,60:61,65:-63,77:-3,78:-31,88:34,91:49,92:128,93:61,94:75,95:87,98:54,100:47,102:91
lengthT=water.level~0:34,38:37,61:64,62:57,65:76,77:104,78:54,88:-229,94:79,95:103
lengthT=water.temperature~38:22,61:28,65:87 lengthT=water.yield~38:59,62:30,77:-42
lengthT=way.climb~0:84,62:31,77:43,78:-110,88:89,91:-246,92:-148,93:211,94:29,95:7
lengthT=way.length~0:84,38:41,62:33,77:10,78:48,88:50,91:207,92:112,93:-364,95:47
lengthT=way.pipe~43:-61,77:-74,92:112,93:147,95:-72,102:46
lengthT=well.bore~0:-30,60:94,78:-29,88:-23,93:-74,94:-110,95:98,98:40,100:41,102:90
lengthT=well.cover~0:80,62:-54
lengthT=well.depth~0:19,43:31,62:70,77:-24,92:-10,93:24,94:134,95:-258,100:44,102:127
lengthT=well.drop_pipe~91:-38 lengthT=well.pumping~88:-41,98:54,100:-63,102:100
lengthT=well.static~0:-59,62:18,92:-20,94:70,95:64,100:128,102:-91
lengthT=well.tested~0:-61,88:-81,98:52,100:159,102:93 lengtha=~88:44,93:31 lengtha=,_1~0:-23
lengtha=,_3~0:26,93:-38 lengtha=,_and~0:39,91:-35 lengtha=,_pump~0:-29,88:17,95:32
lengtha=,_so~95:32 lengtha=,_static~95:24 lengtha=,_water~62:25,88:-29
lengtha=.~16:20,88:30,93:41,95:44,100:22 lengtha=._2~0:31,88:-37 lengtha=._i~0:-29,88:32
lengtha=._pump~88:26 lengtha=._the~0:-91 lengtha=a_day~14:40 lengtha=above_.~91:41
lengtha=above_ground~78:27 lengtha=above_it~0:-60,88:61,91:84 lengtha=above_sea~38:50
lengtha=above_the~0:70,78:100,88:21,91:-34,93:-29 lengtha=according_to~95:43 lengtha=across_,~0:56
lengtha=across_and~94:34 lengtha=and_the~62:58,91:36,93:-51 lengtha=apart_,~15:24
lengtha=apart_.~15:56 lengtha=away_,~0:-25,93:58 lengtha=away_.~0:56,93:34 lengtha=away_and~93:29
lengtha=below_ground~62:41 lengtha=below_the~88:65,91:24 lengtha=between_the~15:62
lengtha=but_i~0:30 lengtha=casing_,~0:-27,94:31 lengtha=casing_.~94:37 lengtha=deep_,~0:35,95:39
lengtha=deep_.~0:35,95:30 lengtha=deep_and~95:48 lengtha=depth_.~95:25 lengtha=down_,~62:33
lengtha=down_in~62:27 lengtha=down_to~0:76 lengtha=from_the~0:85,88:-58,93:48,95:-31
lengtha=high_.~0:24 lengtha=hose_.~0:40 lengtha=in_summer~88:44 lengtha=in_the~0:32
lengtha=inside_.~94:29 lengtha=long_,~77:44 lengtha=long_.~0:38,11:12,95:-24
lengtha=lower_.~91:-77,92:69 lengtha=lower_than~91:42 lengtha=of_1~43:40,77:34,91:-25,98:15
lengtha=of_3~93:41 lengtha=of_4~93:-40 lengtha=of_cable~43:66,93:-22 lengtha=of_climb~0:29
lengtha=of_drop~98:54 lengtha=of_fall~92:28 lengtha=of_lift~91:71 lengtha=of_pipe~93:35
lengtha=of_rise~91:39 lengtha=over_the~0:14,91:-47,92:27 lengtha=pipe_,~0:32 lengtha=rows_,~15:46
lengtha=to_the~0:-46,93:65 lengtha=to_water~88:55 lengtha=under_the~0:-33,91:33
lengtha=up_.~0:-28,91:63 lengtha=up_and~91:29 lengtha=up_the~91:32 lengtha=up_to~93:24
lengtha=wide_.~0:31 lengthb=~38:46,43:29 lengthb=,_buried~0:26 lengthb=,_house~91:31
lengthb=,_level~88:62 lengthb=,_lines~11:26 lengthb=,_pump~62:28 lengthb=,_rows~15:57
lengthb=,_static~102:56 lengthb=,_water~88:39 lengthb=._altitude~38:23 lengthb=._borehole~0:57
lengthb=?_|~0:-51 lengthb=a~43:48,77:29 lengthb=a_house~91:45 lengthb=a_spring~91:44
lengthb=a_tank~78:29 lengthb=and_about~92:31 lengthb=and_up~91:21 lengthb=are_at~38:27
lengthb=at_rest~102:33 lengthb=barn_is~91:27 lengthb=bore_is~0:37 lengthb=cabin_is~91:29
lengthb=casing_is~94:29 lengthb=creek_is~88:30,91:-26 lengthb=deep_,~94:13
lengthb=down_to~88:31,100:40 lengthb=each_line~11:43 lengthb=falls_to~100:28 lengthb=floor_is~78:43
lengthb=ft_of~0:40 lengthb=gpm_at~0:45 lengthb=hill_,~91:-33,92:51 lengthb=hole_is~95:37
lengthb=hose_,~88:29 lengthb=hose_is~77:31 lengthb=house_and~0:66,91:-45
lengthb=house_is~0:58,91:-35,93:19 lengthb=hung_at~98:34 lengthb=hut_,~0:43,38:23
lengthb=in_a~94:52,95:47 lengthb=inch_,~98:28 lengthb=is_about~93:54 lengthb=is_at~88:41,102:19
lengthb=is_only~95:39 lengthb=is_to~93:-26 lengthb=it_goes~91:45
lengthb=it_is~0:35,78:-60,88:24,95:55 lengthb=it_stands~0:34 lengthb=km_of~0:32
lengthb=level_at~88:22 lengthb=level_is~0:47 lengthb=lift_is~77:-32,88:40,91:32 lengthb=m_of~0:48
lengthb=no_,~88:28 lengthb=on_a~78:59 lengthb=only_,~38:30 lengthb=outside_diameter~60:52
lengthb=pipe_,~0:48 lengthb=pipe_:~0:40 lengthb=pipe_is~77:34 lengthb=pump_at~62:69,88:-22
lengthb=pump_hangs~0:31 lengthb=pump_is~0:-48,43:45 lengthb=pump_stands~88:29
lengthb=pumping_level~100:42 lengthb=rise_is~91:47 lengthb=set_at~62:19 lengthb=shed_is~0:36
lengthb=sorry_,~88:30 lengthb=spring_is~92:35 lengthb=spring_lies~91:61,92:-50
lengthb=standing_water~102:47 lengthb=stands_at~102:23 lengthb=submersible_at~62:38
lengthb=tank_is~0:89,91:-21,93:-28 lengthb=the_bank~78:-56 lengthb=the_house~93:37
lengthb=to_house~93:37 lengthb=up_and~93:35 lengthb=up_to~0:55 lengthb=water_,~95:24
lengthb=water_:~88:40 lengthb=water_at~88:56,100:32 lengthb=water_is~0:-34,88:56
lengthb=water_level~88:-46,102:56 lengthb=we_are~92:24 lengthb=we_have~0:39,93:-40
lengthb=well~0:43 lengthb=well_and~0:-26,91:30 lengthb=well_at~62:31 lengthb=well_is~0:32
lengthb=well_it's~93:26 lengthb=well_with~88:37 lengthb=|_suction~0:34
m=angle3~17:48,36:67,39:93,40:41,52:83 m=area-1~0:-28,6:55 m=area0~0:-60,6:78 m=area1~0:48
m=area3~0:87,6:-48 m=area4~0:55,6:-38,69:37 m=area5~0:24,6:130,69:26 m=area6~6:25,69:27
m=area7~6:46 m=bare-1~0:97
m=bare0~0:78,1:-75,3:-72,4:-60,5:-33,16:41,18:-21,27:106,28:79,29:118,31:44,32:-35,34:65,35:119,49:-30,51:38,75:-26,76:97,86:-91,87:41
m=bare1~0:14,3:-100,4:-99,5:-18,18:86,19:37,25:45,30:57,31:46,32:46,33:38,39:-28,40:-21,49:112,51:48,57:74,59:73,62:-24,67:-27,68:77,75:78,76:-43,86:52,87:92,88:-26,95:-26
m=bare2~0:34,1:36,2:38,4:41,27:-50,31:35,32:46,35:-59,51:-17,67:55,86:60,87:44
m=bare3~0:39,2:38,3:111,4:83,5:28,27:-32,29:-56,31:-23,34:-39,35:-33,39:120,41:69,62:44,67:34,87:-65,102:42
m=bare4~0:15,1:29,3:14,4:71,5:52,87:-41,95:33 m=bare5~0:-43,1:55,3:34,86:96,87:-43
m=bare6~0:-33,3:64,94:35 m=bare8~0:43 m=charge3~0:27 m=charge4~44:49 m=charge5~44:142
m=current3~42:47 m=daily1~0:31 m=daily2~0:47 m=daily3~81:70 m=daily4~81:74 m=daily5~80:63
m=daily6~80:103 m=daily7~0:39 m=each2~81:43 m=each3~81:56 m=each4~81:35
m=flow-1~0:-50,7:47,83:115,90:39 m=flow0~0:49,7:54,104:32 m=flow1~0:46,7:67,72:45,104:-49
m=flow2~8:55,63:45,90:85,103:32,104:91 m=flow3~0:41,63:47,72:45,90:-31,101:54 m=flow5~0:26
m=flow6~90:36 m=flow7~90:37 m=length-1~15:-50,16:161,93:-40
m=length-2~0:-23,60:140,62:-30,91:-23,93:-33,94:212,95:-50
m=length-3~0:306,77:-45,88:-20,91:-23,93:-42,94:-38 m=length-4~0:73 m=length-5~14:51
m=length0~0:92,11:-38,15:112,16:59,38:-47,78:39,88:35,91:-70,92:-33,93:-94,94:130,95:-74
m=length1~0:44,11:-32,15:86,38:-85,62:-78,65:117,77:32,78:63,88:150,91:80,92:83,93:-117,95:-79,102:45
m=length2~0:-61,16:-33,38:-93,43:-28,61:78,62:-56,77:163,78:88,88:137,91:167,92:108,93:-96,94:-68,100:-42
m=length3~0:-72,11:90,15:-66,16:-45,38:-124,43:28,62:156,78:59,88:24,91:126,94:-85,95:80,98:39,100:104,102:29
m=length4~0:-65,11:111,16:-25,38:-81,43:159,62:105,77:-62,78:-38,88:-93,91:-61,93:224,94:-43,95:181,98:66
m=length5~0:25,78:-46,88:-65,92:-23,93:209 m=length6~0:-59,38:297,88:-43,91:-41,93:95
m=length7~38:242,62:-33,88:-35 m=pair3~58:94 m=percent1~0:24 m=percent2~50:47 m=percent3~50:87
m=percent4~0:45,64:63 m=power-1~0:43 m=power0~0:44,48:-41 m=power1~0:45 m=power4~0:-43,48:81
m=power5~48:176 m=pressure-1~10:71 m=pressure0~12:106,13:52,54:46,58:26,59:-23,66:-41
m=pressure1~0:22,20:38,37:-42,58:26,59:98,66:113
m=pressure2~0:57,21:71,37:115,55:62,58:-28,59:-42,66:-52 m=pressure3~0:26,54:100,58:69,59:50,66:71
m=pressure4~0:47,21:54,54:-46,55:48 m=pressure5~66:36 m=temperature2~0:46,89:72
m=temperature3~36:40,89:41 m=temperature4~22:104,36:39,89:-40 m=time0~0:60
m=time1~0:87,9:31,70:126,71:23,99:23 m=time2~0:31,9:56 m=time3~97:87 m=time4~0:-43
m=voltage2~0:71,53:67 m=voltage3~46:-80,47:92,53:150 m=voltage4~46:79 m=voltage5~46:46
m=volume0~0:23 m=volume1~0:36,23:93 m=volume2~0:41,23:59,74:-49,90:68
m=volume3~0:65,24:38,56:148,74:-19 m=volume4~0:-57,24:49,56:181,74:-42,81:49
m=volume5~0:17,24:67,56:-48,79:-27,84:96,96:31 m=volume6~56:-43,74:60,79:51,96:48
m=volume7~56:-57,73:51,74:88,79:108 m=volume8~56:-34,74:77,79:40 m=volume9~0:-20,74:76
pairC=2~58:43 pairC=pressure~58:40 pairC=switch~58:67 pairL0=a~58:29 pairL0=switch~58:56
pairL2=.~58:40 pairL2=0~58:57 pairM=pump~58:46 pairM=tank~58:72 pairM=well~58:19 pairR0=.~0:61,58:4
pairR0=switch~58:6 pairR2=.~58:42 pairT=pump.control~58:51 pairT=pump.cut_in~0:86
pairT=pump.cut_out~0:86 pairT=pump.height~0:70 pairT=pump.placement~58:28 pairT=water.kind~58:25
pairT=water.level~58:18 pairT=way.length~58:30 pairT=way.pipe~58:21 paira=.~58:30
percentC=efficiency~64:69 percentC=lose~50:29 percentC=motor~64:74 percentC=panels~50:36
percentC=pump~0:36 percentC=slope~0:40 percentC=takes~50:37 percentL0=.~64:39 percentL0=about~50:35
percentL0=i~64:31 percentL0=lose~50:29 percentL0=takes~50:37 percentL0=the~0:26 percentL0=we~0:36
percentL1=,~50:33 percentL1=.~0:22 percentL1=a~50:54 percentL1=the~50:22 percentL2=.~50:26
percentL2=0~0:53 percentL2=1~0:37 percentL2=panels~50:25 percentL2=pump~50:20 percentL2=south~50:33
percentM=drip~0:61 percentM=pump~0:61,50:42 percentR0=.~0:42,50:14,64:62 percentR0=in~50:42
percentR0=of~0:49 percentR0=the~50:39 percentR0=to~50:39 percentR1=.~50:50 percentR1=the~0:39
percentR2=.~0:58 percentT=beds.area~0:33 percentT=power.amps~50:51 percentT=power.battery~50:38
percentT=power.cable~50:32 percentT=power.capacity~50:38 percentT=power.controller~50:37
percentT=power.facing~50:52 percentT=power.panel~50:45 percentT=power.series~50:37
percentT=power.source~0:24,50:82 percentT=power.voltage~50:39 percentT=water.kind~0:41
percentT=water.level~64:54 percentT=way.climb~0:31 percentT=way.length~64:44
percentT=way.pipe~64:44 percenta=of_the~0:44 powerC=,~48:53 powerC=2~48:32 powerC=4~48:26
powerC=no~34:44 powerC=panels~48:69 powerC=power~0:22 powerC=pump~0:58 powerC=there~34:44
powerC=two~48:29 powerC=x~48:29 powerL0=a~0:90 powerL0=are~48:17 powerL0=panels~48:46
powerL0=pump~0:40 powerL0=the~0:61,48:-32 powerL0=two~48:21 powerL0=x~48:29 powerL1=,~34:43
powerL1=.~0:43,48:30 powerL1=a~0:27 powerL1=at~0:26 powerL1=is~34:44 powerL1=the~48:29
powerL2=,~0:43,48:45 powerL2=.~48:54 powerL2=inch~34:44 powerL2=there~34:44 powerL2=water~0:47
powerM=pump~0:63,48:61 powerM=spring~34:44 powerM=tank~48:44 powerR0=,~48:34 powerR0=.~0:88
powerR0=panel~48:48 powerR0=panels~48:57 powerR0=pump~0:39 powerR1=0~0:29 powerR1=a~34:44
powerR1=and~34:44 powerR2=,~48:42 powerR2=.~48:31 powerT=power.battery~48:50
powerT=power.capacity~48:45 powerT=power.facing~48:31 powerT=power.source~48:81
powerT=power.voltage~0:-27,48:86 powerT=pump.placement~0:44 powerT=pump.present~34:44
powerT=store.volume~48:26 powerT=water.kind~48:72 powerT=water.level~0:24 powerT=way.climb~48:13
powerT=way.length~48:40 powera=.~0:74 powerb=a~0:31 pressureC=,~10:66,20:59,54:11,55:47
pressureC=0~0:36,10:35,21:46,54:36 pressureC=1~20:20,21:45 pressureC=2~20:47 pressureC=3~55:77
pressureC=4~0:-59,54:16,58:50 pressureC=5~13:37,20:33 pressureC=6~21:50 pressureC=8~0:34
pressureC=:~0:42,54:25 pressureC=above~0:44 pressureC=air~54:79 pressureC=all~0:43
pressureC=bar~55:46 pressureC=begin~12:30 pressureC=between~58:66 pressureC=bladder~54:41
pressureC=booster~66:63 pressureC=box~66:21 pressureC=can~0:58 pressureC=charge~54:56
pressureC=checked~54:56 pressureC=city~0:32 pressureC=comes~58:26 pressureC=constant~66:54
pressureC=control~66:42 pressureC=controlled~66:41 pressureC=cut~58:48,59:41 pressureC=cuts~59:22
pressureC=drip~10:32 pressureC=expansion~20:140,54:-74 pressureC=filter~37:40
pressureC=fittings~37:45 pressureC=frequency~66:41 pressureC=from~0:-56 pressureC=gal~0:-39
pressureC=gallon~20:51 pressureC=gauge~0:35 pressureC=gives~0:18,12:53,66:-31 pressureC=h~13:44
pressureC=he~54:32 pressureC=heater~0:-23,20:39,21:56 pressureC=holds~0:-28,66:85
pressureC=house~66:25 pressureC=i'd~66:59 pressureC=keeps~66:75 pressureC=kicks~58:32
pressureC=l~0:46,12:-49,13:35,54:18 pressureC=least~10:35 pressureC=like~0:41
pressureC=lines~10:40,12:29 pressureC=litre~54:32 pressureC=litres~54:60 pressureC=m~0:34
pressureC=min~0:23 pressureC=needs~10:36 pressureC=off~59:53 pressureC=only~37:39
pressureC=out~59:81 pressureC=plastic~37:30 pressureC=point~66:21 pressureC=pre~54:34
pressureC=precharge~54:69 pressureC=preset~54:33 pressureC=pressure~12:23,54:71,59:20
pressureC=pump~58:47,59:44,66:55 pressureC=rated~0:-53,13:41,37:31,55:76 pressureC=reads~0:24
pressureC=relief~21:72,66:-31 pressureC=run~0:46 pressureC=set~66:87 pressureC=shuts~59:38
pressureC=so~0:53 pressureC=speed~66:54 pressureC=start~12:36 pressureC=starts~58:19
pressureC=stop~59:21 pressureC=stops~59:37 pressureC=switch~58:41,59:77,66:-40
pressureC=tank~0:-33,54:105,55:64,59:-35 pressureC=there~0:52 pressureC=valve~0:51,21:87,66:-49
pressureC=variable~66:26 pressureC=vessel~0:-65,20:57,54:91 pressureC=weakest~37:62
pressureC=well~0:-48 pressureL0=(~55:36 pressureL0=,~0:-43,10:48,54:19,66:-5
pressureL0=.~0:25,12:29 pressureL0=0~54:64 pressureL0=:~0:36,54:28 pressureL0=a~12:45
pressureL0=air~54:41 pressureL0=and~59:66 pressureL0=at~13:43,21:41,58:50,59:69
pressureL0=begin~12:30 pressureL0=between~58:66 pressureL0=charge~54:32 pressureL0=city~0:32
pressureL0=comes~58:22 pressureL0=cut~58:51,59:27 pressureL0=cuts~59:21 pressureL0=drip~0:45
pressureL0=for~0:-40,37:31 pressureL0=gauge~0:38 pressureL0=gives~0:28,66:-31 pressureL0=gpm~0:45
pressureL0=h~13:35 pressureL0=has~0:27,54:46 pressureL0=have~0:33 pressureL0=holds~0:-28,66:90
pressureL0=in~0:-32,58:98 pressureL0=is~0:-41,37:26,54:36 pressureL0=it~0:-43,54:33,66:24
pressureL0=keeps~66:75 pressureL0=l~54:46 pressureL0=least~10:35 pressureL0=like~0:33
pressureL0=lines~12:46 pressureL0=litre~54:37 pressureL0=needs~10:37 pressureL0=off~59:62
pressureL0=on~58:26 pressureL0=only~37:39 pressureL0=out~59:85 pressureL0=point~66:21
pressureL0=pre~54:33 pressureL0=precharge~54:65 pressureL0=preset~54:33
pressureL0=pressure~0:36,66:44 pressureL0=pump~0:64,66:29 pressureL0=pumped~20:32
pressureL0=rated~0:-37,13:48,37:33,55:84 pressureL0=reads~0:24 pressureL0=relief~21:34
pressureL0=says~0:-65 pressureL0=set~59:-32,66:134 pressureL0=shows~0:33 pressureL0=shuts~59:38
pressureL0=start~12:33,58:43 pressureL0=starts~58:19 pressureL0=stop~59:29 pressureL0=stops~59:37
pressureL0=switch~59:31 pressureL0=tank~54:20 pressureL0=the~0:66,12:65,59:-32,66:31
pressureL0=to~0:33,20:59 pressureL0=valve~21:64 pressureL0=water~0:32 pressureL0=with~12:32
pressureL1=,~59:48,66:-32 pressureL1=.~0:-36,13:33,37:31,59:38 pressureL1=0~10:52
pressureL1=1~13:53,20:30 pressureL1=2~20:36,55:43,59:16 pressureL1=5~54:50 pressureL1=6~0:26
pressureL1=8~54:21 pressureL1=a~0:-51,37:34,58:38,66:52 pressureL1=and~0:-30,58:45,66:46
pressureL1=at~12:72,54:-43 pressureL1=bar~58:38 pressureL1=booster~66:30 pressureL1=box~66:21
pressureL1=constant~66:51 pressureL1=cut~59:27 pressureL1=drip~12:24 pressureL1=drips~21:27
pressureL1=expansion~20:31 pressureL1=fittings~37:45 pressureL1=h~12:72 pressureL1=house~66:41
pressureL1=i~54:25 pressureL1=in~0:-39 pressureL1=is~0:-33,37:27,59:18 pressureL1=on~12:24
pressureL1=pressure~0:-33,12:44,59:32 pressureL1=psi~10:34 pressureL1=pump~58:46,59:23,66:40
pressureL1=relief~21:63 pressureL1=says~0:30 pressureL1=set~59:30
pressureL1=switch~58:26,59:41,66:-27 pressureL1=tank~54:35,55:64
pressureL1=the~12:20,37:58,54:16,58:30,59:8 pressureL1=valve~21:42 pressureL1=vessel~20:24,54:22
pressureL1=with~54:34 pressureL2=,~10:61,13:26,20:39,59:-38,66:39
pressureL2=.~10:44,12:36,13:42,37:15,54:49 pressureL2=0~0:-27,13:54,20:36,21:73,54:-33,55:61
pressureL2=1~10:50,20:40,66:29 pressureL2=2~12:39 pressureL2=3~55:43,66:48 pressureL2=4~0:27,54:41
pressureL2=5~20:48,59:-42 pressureL2=6~10:38,13:40 pressureL2=:~0:39 pressureL2=apart~13:30
pressureL2=bar~54:75 pressureL2=beside~66:51 pressureL2=c~20:59 pressureL2=cistern~66:41
pressureL2=cm~13:47 pressureL2=day~66:44 pressureL2=diaphragm~59:34 pressureL2=drip~13:36
pressureL2=emitters~13:77 pressureL2=expansion~20:118,54:-55 pressureL2=ft~12:52
pressureL2=gallons~54:40 pressureL2=gives~12:41 pressureL2=gph~10:34 pressureL2=ground~0:45
pressureL2=heater~21:82 pressureL2=l~55:46,66:50 pressureL2=litre~21:55 pressureL2=m~37:20
pressureL2=off~58:49 pressureL2=people~0:35 pressureL2=pressure~54:41 pressureL2=pump~0:-37,58:39
pressureL2=rated~10:37 pressureL2=room~54:33 pressureL2=set~58:46 pressureL2=shuts~58:19
pressureL2=tank~0:-68,54:42 pressureL2=tape~13:30 pressureL2=two~0:24 pressureL2=use~0:34
pressureL2=water~21:62 pressureL2=which~54:32 pressureL2=|~0:59,66:-32 pressureM=cistern~66:43
pressureM=drip~0:-73,10:78,12:173,13:78,20:50,21:66,54:-51,58:-24
pressureM=pump~0:88,20:61,21:57,55:61,58:67,59:67,66:106 pressureM=roof~66:29
pressureM=spring~0:46,37:48 pressureM=tank~20:70,21:52,54:75,55:43,66:-28 pressureM=well~58:24
pressureR0=,~13:51,66:39 pressureR0=.~0:24,20:49,21:35,37:73,54:57,59:46,66:41
pressureR0=1~0:-26,10:47 pressureR0=3~58:39 pressureR0=?~0:31 pressureR0=a~66:35
pressureR0=and~0:-43,58:22 pressureR0=at~0:32,12:35,66:52 pressureR0=each~0:37 pressureR0=i~0:28
pressureR0=in~0:-28,54:73 pressureR0=is~10:40 pressureR0=it~54:5 pressureR0=lines~12:50
pressureR0=of~54:45 pressureR0=off~58:19 pressureR0=out~58:29 pressureR0=pressure~66:41
pressureR0=pump~0:44,66:38 pressureR0=right~0:42,54:-41 pressureR0=rows~13:25 pressureR0=run~0:40
pressureR0=set~0:-37,66:74 pressureR0=shower~0:17 pressureR0=stops~58:19 pressureR0=switch~54:38
pressureR0=the~0:51,10:29,12:35 pressureR0=when~0:32 pressureR0=where~12:42 pressureR0=with~54:39
pressureR1=,~66:27 pressureR1=.~10:22,12:36,13:44,58:41,66:62 pressureR1=0~0:-19,13:64
pressureR1=2~0:-42,55:49,59:45 pressureR1=5~0:-32,59:23 pressureR1=6~0:16,58:47 pressureR1=8~0:55
pressureR1=?~0:26 pressureR1=bar~58:54 pressureR1=house~0:36 pressureR1=open~0:34
pressureR1=pump~54:29 pressureR1=row~12:33 pressureR1=the~54:41 pressureR1=they~10:44
pressureR1=up~66:34 pressureR1=with~0:47 pressureR1=zones~12:42 pressureR2=,~0:-51,59:56
pressureR2=.~0:16,12:73,20:43,55:37,66:-43 pressureR2=1~54:31 pressureR2=6~0:-39,37:34
pressureR2=bar~0:43 pressureR2=feet~0:48 pressureR2=from~66:48 pressureR2=house~66:38
pressureR2=pressure~21:48 pressureR2=psi~59:25 pressureR2=pump~54:32 pressureR2=run~0:36
pressureR2=should~0:27 pressureR2=well~13:32 pressureT=beds.area~12:79,13:58
pressureT=power.battery~59:22 pressureT=power.capacity~59:21 pressureT=power.voltage~0:38,59:61
pressureT=pump.control~0:-44,12:-35,21:53,54:41,55:30,58:32,66:50
pressureT=pump.cut_in~0:38,54:47,58:-105,59:142,66:-66
pressureT=pump.cut_out~54:47,58:158,59:-92,66:-91 pressureT=pump.most_flow~66:16
pressureT=pump.placement~54:24 pressureT=pump.present~0:41,37:48
pressureT=pump.set~0:70,20:41,66:-80 pressureT=pump.starts~55:40 pressureT=pump.works~59:52
pressureT=store.volume~59:55,66:58 pressureT=tank.level~0:63,37:38,66:-40
pressureT=tank.volume~0:27 pressureT=water.kind~0:13,12:31,13:48,21:42,37:44,59:35
pressureT=water.yield~66:47 pressureT=way.climb~37:46,66:57 pressureT=way.length~0:30,37:70,66:51
pressureT=way.pipe~0:30,37:67,66:6 pressureT=well.bore~66:48 pressureT=well.depth~0:22,54:29
pressurea=~54:40,58:26,66:19 pressurea=.~12:34,37:33,54:62,58:21,66:23 pressurea=._|~0:40
pressurea=and_stops~58:21 pressurea=at_the~12:46,66:34 pressurea=in_it~0:-22,54:39
pressurea=off_.~59:30 pressurea=on_the~0:32 pressureb=,_rated~55:63 pressureb=at_least~10:35
pressureb=cut_in~58:56 pressureb=cut_out~59:34 pressureb=gpm_at~0:45 pressureb=in_at~58:54
pressureb=it_at~66:23 pressureb=off_at~59:61 pressureb=on_at~58:29 pressureb=out_at~59:33
pressureb=pump_at~66:30 pressureb=pump_gives~0:28,66:-31 pressureb=rated_at~13:24
pressureb=set_to~58:29,66:45 pressureb=stops_at~59:37 range~0:62,58:222,66:-44,88:-85,90:32
temperatureC=,~0:32,36:51 temperatureC=0~22:48 temperatureC=3~0:59 temperatureC=5~36:31
temperatureC=heater~22:65 temperatureC=laid~36:38 temperatureC=line~36:38 temperatureC=mm~36:32
temperatureC=poly~36:39 temperatureC=set~22:37 temperatureC=spring~89:28 temperatureC=up~89:20
temperatureC=water~89:99 temperatureL0=,~0:34,36:37 temperatureL0=at~22:79
temperatureL0=is~22:41,89:22 temperatureL0=set~22:32 temperatureL0=up~89:20
temperatureL0=water~89:84 temperatureL1=.~17:59,89:35 temperatureL1=0~22:37 temperatureL1=3~0:57
temperatureL1=heater~22:40 temperatureL1=is~89:22 temperatureL1=the~0:-32,89:22
temperatureL1=water~22:37,89:18 temperatureL2=,~17:58,36:59,89:27 temperatureL2=.~89:45
temperatureL2=2~17:28 temperatureL2=5~17:60 temperatureL2=laid~36:38 temperatureL2=line~36:37
temperatureL2=m~89:41 temperatureM=drip~0:50,17:60,22:39,89:-61 temperatureM=pump~17:51,22:61,36:34
temperatureM=spring~89:39 temperatureM=tank~22:52 temperatureM=well~22:35 temperatureR0=,~22:26
temperatureR0=.~22:30,36:55,89:85 temperatureR0=in~36:46 temperatureR0=summer~36:35
temperatureR0=|~22:31 temperatureR1=.~36:33 temperatureT=beds.area~0:52,17:63
temperatureT=power.source~0:46 temperatureT=pump.control~22:20 temperatureT=pump.npsh~89:41
temperatureT=pump.placement~89:54 temperatureT=pump.set~22:26 temperatureT=store.volume~0:17
temperatureT=water.kind~17:51,22:27,36:39,89:80 temperatureT=water.level~89:35
temperatureT=way.climb~0:38,89:28 temperatureT=way.length~36:29,89:16
temperatureT=way.pipe~36:30,89:17 temperaturea=in_summer~36:35 temperatureb=set_at~22:22
timeC=,~9:30,71:28 timeC=0~85:45 timeC=1~85:46,99:21 timeC=3~85:57 timeC=5~99:24 timeC=:~99:18
timeC=after~0:29,97:27 timeC=back~0:41 timeC=bucket~0:40 timeC=came~0:37 timeC=can~9:50
timeC=dry~0:29 timeC=every~0:36 timeC=filled~71:41 timeC=from~71:41 timeC=gallon~0:25 timeC=he~0:17
timeC=l~99:35 timeC=litres~85:31 timeC=min~99:37 timeC=morning~85:51 timeC=night~0:-28,9:44
timeC=pump~0:27,71:51 timeC=ran~99:52 timeC=run~9:54 timeC=runs~71:30 timeC=should~70:44
timeC=spring~0:45 timeC=test~99:24 timeC=took~97:36 timeC=want~70:48 timeC=water~9:48
timeC=within~0:30 timeL0=,~71:42 timeL0=.~0:-39,9:20 timeL0=0~85:20 timeL0=5~0:42 timeL0=a~70:30
timeL0=after~0:29,97:27 timeL0=can~9:29 timeL0=dry~0:29 timeL0=every~0:31
timeL0=for~0:40,70:60,99:69 timeL0=gallons~85:21 timeL0=generator~71:32 timeL0=i~9:22
timeL0=in~0:41,85:83 timeL0=is~0:22 timeL0=it~0:32 timeL0=litres~85:31 timeL0=min~99:37
timeL0=run~9:63 timeL0=runs~71:33 timeL0=the~85:28 timeL0=took~97:36 timeL0=want~70:48
timeL0=water~9:19 timeL0=we~0:-25 timeL0=within~0:30 timeL1=.~45:37,99:57
timeL1=0~0:-34,85:66,97:59 timeL1=1~99:24 timeL1=5~85:24,99:28 timeL1=:~0:-41,85:40,99:21
timeL1=l~99:29 timeL1=m~0:-31,71:40 timeL1=the~0:19,71:62 timeL2=,~9:18 timeL2=.~9:27,70:44
timeL2=1~9:15 timeL2=2~0:-76,70:50,71:19 timeL2=3~0:-37,9:49,71:28 timeL2=4~99:34 timeL2=6~9:34
timeL2=filled~71:37 timeL2=h~9:46 timeL2=m~0:-41,9:33 timeL2=morning~85:51 timeL2=tank~71:23
timeL2=test~99:24 timeM=drip~9:117 timeM=pump~0:43,9:30,71:39,97:53,99:39 timeM=roof~70:35
timeM=spring~0:58 timeM=tank~0:22,70:66,71:40 timeM=well~97:80,99:51 timeR0=,~0:79
timeR0=.~0:57,9:42,70:28,85:60 timeR0=1~0:39 timeR0=a~9:41,45:56,71:36 timeR0=day~0:-39,9:43,71:92
timeR0=in~70:24 timeR0=is~9:35 timeR0=it~97:52 timeR0=of~70:52 timeR0=pump~0:-29 timeR0=the~0:48
timeR0=to~0:55 timeR0=water~70:37 timeR0=without~0:-49,70:86 timeR0=year~45:63 timeR1=.~45:42
timeR1=0~0:29 timeR1=a~0:-42,71:33 timeR1=and~0:36 timeR1=no~0:28 timeR1=the~9:27 timeR1=water~0:27
timeR2=,~85:78 timeR2=.~0:42,9:34 timeR2=0~0:-31,71:38 timeR2=1~71:56 timeR2=2~0:50
timeT=beds.area~0:-38,9:67 timeT=power.facing~45:61 timeT=power.source~45:54,71:74
timeT=power.tilt~45:63 timeT=power.voltage~0:15 timeT=pump.control~0:45 timeT=pump.cut_in~0:45
timeT=pump.cut_out~0:45 timeT=pump.height~0:54 timeT=pump.placement~0:26 timeT=pump.present~0:46
timeT=store.volume~0:30,70:53 timeT=tank.level~71:30 timeT=tank.volume~71:25
timeT=water.kind~9:22,45:49,70:37,71:47,97:67,99:35 timeT=water.level~99:50
timeT=water.yield~0:-46,70:50,71:38,85:75 timeT=way.climb~0:37,9:50
timeT=way.length~0:68,9:38,71:43 timeT=way.pipe~0:59,9:42,71:26 timeT=well.bore~0:-24,97:57,99:70
timeT=well.cover~99:78 timeT=well.depth~99:56 timeT=well.drawn~0:-22,97:85 timeT=well.static~99:44
timeT=well.steady~97:91 timea=~70:49 timea=.~0:35,85:31,99:23 timea=a_day~9:38,71:47
timea=a_year~45:63 timea=of_water~70:37 timea=without_rain~70:32 timea=without_the~70:33
timeb=~70:31 timeb=water_for~0:47 u=angle°~17:44,39:112,40:32,52:103 u=angle°C~36:66
u=areaacre~0:66,6:16 u=areaft²~0:-65,6:66,69:41 u=areaha~0:-40,6:69 u=aream²~0:140,6:94,69:29
u=bare~0:303,1:84,2:29,3:92,4:56,5:27,27:42,29:67,30:20,31:58,32:45,34:69,39:61,57:27,86:89,88:-61,95:-77,102:-36
u=bareft~88:26 u=barem~0:-41,88:53,95:83 u=chargeAh~44:197 u=currentA~0:44,42:52
u=dailyL/day~80:131,81:102 u=dailygal/day~0:-38,80:72,82:41 u=dailym³/day~0:99 u=eachL/day~81:99
u=eachgal/day~81:33 u=flowL/h~7:90 u=flowL/min~0:61,7:-44,63:55,72:48,83:91,90:102,101:65,103:35
u=flowL/s~0:-68,90:59,104:73 u=flowgph~7:142 u=flowgpm~7:-51,8:53,63:26,72:37,90:102,104:53
u=flowm³/h~0:199,7:-34,8:24,90:-64 u=lengthcm~16:70
u=lengthft~15:11,38:106,43:37,77:42,78:67,88:89,91:70,92:92,93:96,94:-135,98:44
u=lengthin~0:127,16:60,60:73,77:-44,88:-28,91:-35,93:-48,94:152,95:-58 u=lengthkm~0:38,93:53
u=lengthm~11:55,16:-18,38:113,43:46,60:-35,62:35,65:46,77:91,78:47,88:100,91:80,93:69,95:72,100:39,102:19
u=lengthmi~93:45
u=lengthmm~0:152,14:79,60:60,62:-30,77:-23,78:-33,88:-29,91:-29,93:-54,94:83,95:-29 u=pairpsi~58:94
u=percent%~0:61,50:98,64:57 u=powerW~48:193 u=powerhp~0:99,48:-30 u=powerkW~0:53
u=pressurebar~0:21,10:35,12:69,37:75,54:54,58:53,59:52,66:38 u=pressuremwater~0:29
u=pressurepsi~0:60,20:48,21:10,54:77,58:34,59:46,66:69 u=temperature°C~22:41,89:77
u=temperature°F~22:31,36:37,89:22 u=timedays~45:58,70:220 u=timeh~9:89,70:-45,71:61,85:66,99:28
u=timemin~85:42,97:86,99:49 u=times~0:148 u=timeweeks~0:47 u=voltageV~0:97,46:49,47:43,53:191
u=volumeL~24:79,56:122,74:63,79:60,84:79,90:40,96:54 u=volumeL/day~0:-42,80:25,81:72
u=volumegal~0:34,23:56,24:30,56:75,73:47,74:68 u=volumeimpgal~79:40 u=volumem³~0:179,56:-57,74:30
voltageC=,~47:33,53:37 voltageC=0~47:36 voltageC=3~47:64 voltageC=4~47:12,53:-32
voltageC=batteries~0:44 voltageC=battery~0:19 voltageC=circuit~47:48
voltageC=controller~46:74,53:-46 voltageC=each~47:60 voltageC=four~0:36 voltageC=max~46:41
voltageC=mppt~46:62 voltageC=open~47:64 voltageC=panels~47:35 voltageC=pump~53:45
voltageC=runs~53:37 voltageC=series~47:39 voltageC=system~53:24 voltageC=voc~47:56,53:-33
voltageC=voltage~47:43 voltageC=w~47:45 voltageL0=,~53:42 voltageL0=.~47:29 voltageL0=2~0:39,53:-32
voltageL0=a~0:40,53:46 voltageL0=at~0:68 voltageL0=battery~0:26 voltageL0=controller~0:-39,46:59
voltageL0=is~0:23 voltageL0=runs~53:33 voltageL0=system~53:30 voltageL0=the~0:-29,53:52
voltageL0=voc~47:56,53:-33 voltageL0=voltage~47:43 voltageL0=x~0:26 voltageL0=|~53:51
voltageL1=.~46:36,53:70 voltageL1=1~53:44 voltageL1=2~0:57 voltageL1=4~47:34
voltageL1=5~0:-38,53:35 voltageL1=each~0:28,53:-36 voltageL1=l~0:43,53:-24 voltageL1=mppt~46:46
voltageL1=of~0:-54,47:49 voltageL1=the~0:-7 voltageL1=to~0:59 voltageL2=,~46:51
voltageL2=.~0:-18,46:30,53:36 voltageL2=0~46:58 voltageL2=1~53:46 voltageL2=2~0:34
voltageL2=4~46:49 voltageL2=5~46:31 voltageL2=8~46:46 voltageL2=9~0:55,53:-24
voltageL2=batteries~0:28 voltageL2=circuit~46:42 voltageL2=ft~53:33 voltageL2=m~0:86
voltageL2=tilt~46:25 voltageL2=v~46:30 voltageL2=|~0:32 voltageM=cistern~53:33 voltageM=drip~53:48
voltageM=pump~46:37,53:102 voltageM=tank~0:6 voltageM=well~53:68 voltageR0=)~0:45 voltageR0=,~53:50
voltageR0=.~47:48 voltageR0=0~53:40 voltageR0=1~0:-48 voltageR0=5~0:25 voltageR0=8~53:43
voltageR0=and~0:22,53:-31 voltageR0=bank~53:37 voltageR0=batteries~53:18 voltageR0=battery~53:32
voltageR0=cart~0:38 voltageR0=golf~0:38 voltageR0=in~46:51 voltageR0=mains~0:36
voltageR0=pump~53:26 voltageR1=.~0:-29,53:45 voltageR1=a~46:31 voltageR1=ah~53:68 voltageR1=m~0:21
voltageR1=the~47:39 voltageR1=w~0:32 voltageR2=,~0:47 voltageR2=0~53:30 voltageR2=4~0:-39,53:52
voltageR2=5~53:52 voltageR2=ah~0:25 voltageR2=far~0:40 voltageR2=no~46:30 voltageR2=panels~0:-31
voltageR2=series~47:44 voltageR2=w~53:41 voltageT=power.amps~47:24 voltageT=power.battery~53:28
voltageT=power.cable~47:17 voltageT=power.capacity~53:28 voltageT=power.controller~46:41,47:23
voltageT=power.facing~46:17,47:51 voltageT=power.limit~46:-33,47:58
voltageT=power.open_voltage~46:21,47:-42 voltageT=power.panel~0:28,46:70,47:59,53:-30
voltageT=power.series~0:-32,46:74,47:80,53:-44 voltageT=power.source~0:24,46:57,47:54,53:53
voltageT=power.strings~46:61,47:42,53:-29 voltageT=power.tilt~46:42
voltageT=power.voltage~0:133,46:39,47:34,53:-143 voltageT=pump.control~53:48
voltageT=pump.placement~46:35,53:45 voltageT=pump.works~53:48 voltageT=store.volume~0:41,53:51
voltageT=tank.level~47:40 voltageT=tank.volume~46:58,47:44 voltageT=water.kind~46:32,53:87
voltageT=water.level~47:16 voltageT=way.climb~53:53 voltageT=way.length~53:55
voltageT=way.pipe~53:26 voltagea=~0:17,53:39 voltagea=golf_cart~0:38 voltageb=~0:54,53:19
voltageb=a~53:34 voltageb=battery_is~0:33 volumeC=(~74:48,79:-34 volumeC=,~81:36 volumeC=0~23:48
volumeC=1~23:63,74:19 volumeC=2~56:33 volumeC=3~74:-71,79:33 volumeC=4~74:24 volumeC=5~56:39
volumeC=6~0:55,79:-48 volumeC=7~84:36 volumeC=8~0:-56 volumeC=9~0:39 volumeC=:~74:14,84:43,96:42
volumeC=?~56:-44,74:40 volumeC=above~0:-36,74:59 volumeC=bar~56:36 volumeC=beside~0:-33
volumeC=blue~56:39 volumeC=boiler~24:67 volumeC=cistern~74:58 volumeC=comes~79:48
volumeC=day~0:-62,80:65 volumeC=elevated~0:25,79:-18 volumeC=everything~79:29
volumeC=expansion~23:84 volumeC=fed~0:-29,79:28 volumeC=fills~90:23 volumeC=fire~73:50
volumeC=four~0:38 volumeC=from~0:44,74:30 volumeC=ft~74:24 volumeC=gallon~74:34 volumeC=garden~0:18
volumeC=got~0:32,56:-28 volumeC=hav~0:44 volumeC=header~79:53 volumeC=heater~23:67,24:46
volumeC=hi~0:53,56:-23 volumeC=hill~79:28 volumeC=holds~0:23 volumeC=hour~84:69 volumeC=keep~73:71
volumeC=l~0:-52 volumeC=loft~79:40 volumeC=m~79:38 volumeC=morning~84:56 volumeC=need~80:38
volumeC=off~0:-25 volumeC=out~0:-40,96:56 volumeC=overhead~79:38 volumeC=peak~84:21
volumeC=people~81:41 volumeC=pond~0:52 volumeC=pressure~56:60,74:-38,79:-38
volumeC=pump~0:-44,74:45 volumeC=pumped~96:51 volumeC=rainwater~74:54 volumeC=reservoir~79:24
volumeC=runs~0:-26 volumeC=sits~74:35 volumeC=size~74:28 volumeC=spring~0:-16,74:43,90:45
volumeC=submersible~0:37 volumeC=takes~84:52 volumeC=tank~56:48,74:35,79:105 volumeC=tanks~0:35
volumeC=there~0:-29,23:18 volumeC=there's~74:-39 volumeC=tower~0:32 volumeC=truck~0:47
volumeC=two~0:33 volumeC=underground~74:47,79:-23 volumeC=use~84:47 volumeC=vessel~23:51,56:45
volumeC=wants~73:66 volumeC=was~96:23 volumeC=water~0:-40,24:41,74:51 volumeC=well~96:38
volumeC=which~0:41,79:-37 volumeL0=,~0:-36,79:68,81:38 volumeL0=.~56:47,74:17
volumeL0=:~74:33,84:46 volumeL0=;~74:41 volumeL0=a~0:58,23:40,74:46,79:98,90:29
volumeL0=about~0:-35,74:54 volumeL0=an~56:30 volumeL0=at~81:23 volumeL0=boiler~24:68
volumeL0=by~0:25 volumeL0=cabin~0:52 volumeL0=cistern~74:61 volumeL0=day~80:50 volumeL0=draws~74:20
volumeL0=elevated~0:22 volumeL0=expansion~23:72 volumeL0=fills~90:23 volumeL0=fire~73:31
volumeL0=from~74:29 volumeL0=got~74:47 volumeL0=gpm~74:33 volumeL0=has~79:-35
volumeL0=have~0:-55,79:41 volumeL0=header~79:39 volumeL0=heater~24:50
volumeL0=hill~0:52,74:-41,79:21 volumeL0=holds~0:34 volumeL0=hour~84:69
volumeL0=is~0:-38,23:26,56:46,79:36 volumeL0=it~96:19 volumeL0=keep~73:71 volumeL0=loft~79:40
volumeL0=m~0:-47,74:40 volumeL0=morning~84:56 volumeL0=of~0:66 volumeL0=out~96:34
volumeL0=overhead~79:38 volumeL0=people~81:43 volumeL0=pressure~56:44 volumeL0=rain~74:53
volumeL0=rainwater~74:27 volumeL0=reservoir~79:31 volumeL0=spring~0:-52,90:53
volumeL0=storage~74:47 volumeL0=takes~0:-35,84:52 volumeL0=tank~0:29,56:59,74:33
volumeL0=the~74:54,79:49 volumeL0=there~23:22 volumeL0=to~73:37 volumeL0=two~0:52,79:-34
volumeL0=up~79:35 volumeL0=vessel~23:39,56:42 volumeL0=wants~73:66 volumeL0=water~24:57
volumeL0=we~0:-60,80:61,84:40 volumeL0=with~56:33,74:-41 volumeL0=|~0:-39 volumeL1=)~0:40
volumeL1=,~56:36,73:44 volumeL1=.~80:46 volumeL1=0~23:47 volumeL1=1~23:30 volumeL1=2~0:-51,79:56
volumeL1=3~56:27,74:-39 volumeL1=6~0:-22,79:49 volumeL1=7~84:35 volumeL1=8~0:-31 volumeL1=9~74:35
volumeL1=a~0:22,56:30,79:-24,80:42 volumeL1=and~0:-50 volumeL1=at~79:-33 volumeL1=bar~0:-39
volumeL1=blue~56:39 volumeL1=day~74:-40,79:25 volumeL1=everything~79:29 volumeL1=fills~79:-44
volumeL1=for~74:52 volumeL1=ft~0:-28 volumeL1=hour~74:45 volumeL1=hours~0:58 volumeL1=i~0:28
volumeL1=in~74:-52,79:59,84:45 volumeL1=inch~0:56 volumeL1=into~74:24 volumeL1=is~74:30
volumeL1=m~0:66,74:-26 volumeL1=mm~79:60 volumeL1=on~0:-31,79:40 volumeL1=one~24:55,74:37,79:-33
volumeL1=our~0:40,74:-34 volumeL1=out~96:22 volumeL1=people~0:-30 volumeL1=pump~0:-25,74:27,79:-26
volumeL1=rainwater~74:32 volumeL1=runs~0:-31,74:36 volumeL1=small~0:32 volumeL1=spring~74:29
volumeL1=storage~79:41 volumeL1=tank~79:39 volumeL1=tanks~0:42 volumeL1=the~0:12,84:13,90:37
volumeL1=there~0:52,79:-30 volumeL1=time~0:41,79:-31 volumeL1=timed~90:27 volumeL1=to~79:45
volumeL1=up~0:20 volumeL1=we~90:27 volumeL2=(~0:45 volumeL2=,~0:74,24:32,56:-27,73:36
volumeL2=.~0:15,80:70,96:30 volumeL2=0~0:-67,79:54 volumeL2=1~79:9 volumeL2=2~56:40
volumeL2=3~0:49,56:32,74:-41,84:48 volumeL2=4~56:34,79:-32,84:44 volumeL2=5~0:-25,23:48,56:35,74:41
volumeL2=6~23:25,79:-57,80:43 volumeL2=8~79:-52 volumeL2=9~0:25 volumeL2=:~0:-43
volumeL2=bar~0:-49,74:26 volumeL2=by~79:42 volumeL2=c~23:40 volumeL2=cistern~0:-33,74:19
volumeL2=cows~79:31 volumeL2=day~0:-32,74:42 volumeL2=deep~0:30,79:-27 volumeL2=drippers~79:34
volumeL2=every~0:-32,74:25 volumeL2=from~0:33,74:51,79:-36 volumeL2=ft~24:28 volumeL2=gallon~74:33
volumeL2=gallons~0:-41,79:31 volumeL2=generator~0:54,79:-44 volumeL2=h~0:63,79:-48
volumeL2=hill~79:-30 volumeL2=hour~0:-38,79:31 volumeL2=house~79:33 volumeL2=litres~79:42
volumeL2=m~0:28,79:-37 volumeL2=mains~0:21 volumeL2=minute~0:-34 volumeL2=mm~0:35 volumeL2=no~0:-45
volumeL2=off~0:-42,56:44,79:49 volumeL2=one~0:-37 volumeL2=open~56:-41 volumeL2=pe~0:40
volumeL2=pressure~0:76 volumeL2=pump~74:23 volumeL2=rain~0:49 volumeL2=relief~23:38
volumeL2=run~0:-39 volumeL2=says~0:-34,74:41 volumeL2=seconds~74:49 volumeL2=set~0:-32,56:58
volumeL2=shower~0:-38,74:26 volumeL2=showers~0:20 volumeL2=sits~74:38 volumeL2=so~0:62,79:-34
volumeL2=switch~0:46 volumeL2=tank~0:-52,74:85,79:37 volumeL2=there~74:-40,79:80
volumeL2=use~0:-33,74:41 volumeL2=valve~23:33 volumeL2=water~23:36 volumeL2=well~56:-37,79:27
volumeL2=which~74:48 volumeL2=zones~79:-29 volumeL2=|~0:-35 volumeM=cistern~73:33,74:114
volumeM=creek~79:29 volumeM=drip~23:75,24:33,56:-34,79:47
volumeM=pump~0:58,23:50,24:74,56:23,74:65,80:41,96:33 volumeM=roof~0:36,79:43
volumeM=spring~79:-46,90:58 volumeM=tank~0:-29,23:45,56:47,73:51,74:56,79:114
volumeM=well~24:53,56:50,74:-48,96:89 volumeR0=,~0:-16,23:33,74:25
volumeR0=.~56:33,74:44,79:27,81:35 volumeR0=2~0:-35,79:31 volumeR0=3~0:23 volumeR0=5~0:54,74:-24
volumeR0=6~0:-40,79:-29,81:22,90:60 volumeR0=8~0:37,79:-35 volumeR0=9~81:23,84:27
volumeR0=:~0:-27,90:31 volumeR0=a~0:46 volumeR0=above~74:-27,79:48 volumeR0=and~0:-44,74:40,79:39
volumeR0=at~24:67 volumeR0=back~73:38 volumeR0=barrel~79:48 volumeR0=below~0:-22,74:55
volumeR0=beside~0:25,74:28,79:-29 volumeR0=bladder~56:36 volumeR0=bucket~0:73
volumeR0=by~0:41,79:-38 volumeR0=cistern~0:47,74:37 volumeR0=concrete~79:50 volumeR0=drum~79:25
volumeR0=each~24:40,81:49 volumeR0=expansion~23:83 volumeR0=for~73:64,79:-28 volumeR0=ground~74:40
volumeR0=heater~24:136,56:-38 volumeR0=house~0:-45,74:44 volumeR0=i~0:-47,74:49
volumeR0=in~0:50,24:19,84:52,90:28 volumeR0=is~0:6,74:-55,90:28 volumeR0=it~0:-75,90:27
volumeR0=kept~24:32,73:63 volumeR0=next~74:42 volumeR0=of~73:57 volumeR0=on~79:45 volumeR0=out~0:28
volumeR0=poly~74:41 volumeR0=pre~23:24 volumeR0=pressure~56:67,74:-39 volumeR0=pump~74:7
volumeR0=put~0:53,56:-41 volumeR0=right~74:54 volumeR0=sits~56:37,79:20
volumeR0=standing~0:50,79:-27 volumeR0=stands~0:51,74:-27,79:21 volumeR0=storage~74:26,79:-33
volumeR0=tank~0:-31,23:44,56:76,74:64,79:38 volumeR0=terrace~0:32,74:-20 volumeR0=that~79:32
volumeR0=the~74:85,79:44,96:35 volumeR0=to~23:50 volumeR0=top~79:43 volumeR0=tote~79:40
volumeR0=tower~0:-27,79:31 volumeR0=two~84:28 volumeR0=up~79:21 volumeR0=vessel~56:70
volumeR0=water~0:-31,24:81,56:-27 volumeR0=we~74:-39 volumeR0=|~0:-22 volumeR1=(~0:29
volumeR1=,~79:29,96:30 volumeR1=.~23:60,73:45,79:44,84:25,90:25 volumeR1=1~56:32 volumeR1=2~56:45
volumeR1=3~0:-23 volumeR1=4~0:-26,79:14 volumeR1=5~0:-45,23:35,79:33 volumeR1=8~56:57
volumeR1=;~0:20 volumeR1=?~56:54 volumeR1=a~79:25,81:51 volumeR1=after~0:-28,84:32,90:31
volumeR1=and~0:25 volumeR1=are~0:-37 volumeR1=booster~74:47 volumeR1=c~24:32 volumeR1=day~81:23
volumeR1=fill~0:48 volumeR1=filled~74:44 volumeR1=fills~74:45 volumeR1=fire~73:64
volumeR1=floor~74:45 volumeR1=from~74:36 volumeR1=ft~0:-39,74:26,79:31 volumeR1=full~90:31
volumeR1=hill~74:-43,79:37 volumeR1=hours~84:32 volumeR1=house~79:38 volumeR1=in~0:-28
volumeR1=is~0:52,56:-59 volumeR1=it~0:25 volumeR1=l~81:23 volumeR1=last~0:34 volumeR1=loft~79:43
volumeR1=m~79:12 volumeR1=minutes~84:32,96:46 volumeR1=of~0:-32,79:41 volumeR1=on~56:-30
volumeR1=one~90:30 volumeR1=outside~74:36 volumeR1=psi~56:26 volumeR1=pump~74:54,79:-28
volumeR1=pumps~74:34 volumeR1=relief~24:27 volumeR1=seconds~0:61,90:38 volumeR1=shed~74:28
volumeR1=stand~79:33 volumeR1=the~0:-37,56:25 volumeR1=tower~79:30 volumeR1=up~74:50
volumeR1=|~0:45 volumeR2=,~24:47,74:31 volumeR2=.~79:43,84:44 volumeR2=0~79:68 volumeR2=1~74:64
volumeR2=2~0:32 volumeR2=3~56:42 volumeR2=4~0:19 volumeR2=5~79:-36 volumeR2=6~24:37
volumeR2=7~74:-37 volumeR2=:~74:-42 volumeR2=above~79:43 volumeR2=after~96:28
volumeR2=bar~23:26,56:55 volumeR2=beds~79:36 volumeR2=below~79:60 volumeR2=diaphragm~74:29
volumeR2=f~24:27 volumeR2=four~0:46 volumeR2=from~73:32 volumeR2=higher~79:30 volumeR2=m~0:25,79:36
volumeR2=metres~79:30 volumeR2=min~0:25,74:-50 volumeR2=minute~0:-36,90:31 volumeR2=over~0:49
volumeR2=pipe~0:27,79:-26 volumeR2=psi~0:-26,56:27 volumeR2=pump~0:-32,56:-26,74:87
volumeR2=relief~24:36 volumeR2=second~0:31 volumeR2=stands~74:-43 volumeR2=taps~79:31
volumeR2=than~79:37 volumeR2=use~0:33 volumeR2=v~0:-43,74:58 volumeR2=valve~24:17
volumeR2=water~74:32 volumeR2=wellhead~0:28 volumeR2=|~0:-55 volumeT=beds.area~0:24,80:54
volumeT=power.battery~0:-27,74:50 volumeT=power.cable~0:-19,74:49 volumeT=power.capacity~74:23
volumeT=power.facing~0:36,79:-36 volumeT=power.open_voltage~0:27,79:-20
volumeT=power.panel~0:27,79:-5 volumeT=power.source~0:58,56:-25,79:63,80:45
volumeT=power.tilt~74:34,79:-25 volumeT=power.voltage~74:75,79:-61
volumeT=pump.control~0:64,24:54,56:40,79:-76 volumeT=pump.cut_in~56:58,79:-56
volumeT=pump.cut_out~56:83,79:-61 volumeT=pump.height~0:45,74:-28
volumeT=pump.placement~56:64,74:25 volumeT=pump.present~0:28,79:63 volumeT=pump.set~24:34,79:-49
volumeT=pump.works~0:-67,74:44,80:32 volumeT=store.days~0:30 volumeT=store.fills~0:-21,74:16
volumeT=store.hours~0:25,79:-35 volumeT=store.reserve~74:60
volumeT=store.volume~0:40,56:58,73:58,74:-142,79:-33 volumeT=tank.level~0:19,56:-45,74:-111,79:208
volumeT=tank.volume~0:36,74:19,79:-155,80:32
volumeT=water.kind~0:39,24:50,73:41,74:59,80:41,90:41,96:67 volumeT=water.level~56:19,74:-39,80:61
volumeT=water.yield~24:44,84:57 volumeT=way.climb~0:41,24:39,56:29,74:76,79:-37
volumeT=way.length~0:55,24:45,79:48 volumeT=way.pipe~0:54,73:40,79:49 volumeT=well.bore~96:66
volumeT=well.depth~56:62,96:35 volumeT=well.drawn_for~96:88 volumeT=well.steady~96:79
volumea=~56:54 volumea=,_and~0:-26,74:22 volumea=,_filled~0:35 volumea=.~0:61,74:35,79:28
volumea=._1~74:41 volumea=._from~74:-35 volumea=._the~74:-30 volumea=and_stands~74:-25,79:40
volumea=bladder_tank~56:36 volumea=expansion_tank~23:83 volumea=heater_,~24:41 volumea=in_2~0:46
volumea=in_the~74:-51 volumea=poly_tank~74:38 volumea=pressure_tank~56:78
volumea=storage_tank~74:26 volumea=tank_,~0:53,79:-19 volumea=tank_.~74:19 volumea=under_the~0:21
volumea=water_heater~24:70 volumeb=~79:34 volumeb=,_about~0:-27,74:40 volumeb=._cistern~74:26
volumeb=._reservoir~79:25 volumeb=._tank~79:32 volumeb=a~0:25,74:12 volumeb=bucket_of~90:31
volumeb=cistern~0:39,74:-31 volumeb=cistern_is~0:-34,74:46 volumeb=cistern_of~0:30
volumeb=expansion_vessel~23:44 volumeb=fills_a~90:23 volumeb=from_a~74:31 volumeb=have_a~79:15
volumeb=is_a~23:18,79:-35 volumeb=pressure_vessel~0:37 volumeb=tank_is~0:82,74:-38
volumeb=to_a~79:29 volumeb=to_keep~73:40 volumeb=vessel_is~56:41 volumeb=water_heater~24:45
"""
