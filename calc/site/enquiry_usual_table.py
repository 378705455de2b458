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
    "drip.length",
    "drip.pressure",
    "drip.rated",
    "drip.rows",
    "drip.spacing",
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
    "power.amps",
    "power.cable",
    "power.capacity",
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
    "well.drop_pipe",
    "well.pumped_for",
    "well.pumping",
    "well.rate",
    "well.static",
    "well.tested",
)
WEIGHTS = """
L=(~0:49,3:49 L=)~3:38,89:40
L=,~0:14,3:-29,14:31,29:-40,48:23,56:42,61:-46,75:33,77:28,78:-35,81:-44,82:47,85:-27,93:-34
L=.~6:-32,8:21,11:33,17:-34,26:38,28:46,36:-48,46:-25,66:-42,69:-34,72:-27,73:-39,74:33,76:-35,80:18,83:31,86:-33,89:26,92:-45
L=0~0:63,1:37,3:-25,19:72,20:24,26:-56,31:-39,38:49,56:-9,68:-52,72:17,79:30,80:-46,82:43,85:45
L=1~4:-44,8:28,19:47,48:33,54:55,57:21,72:-39,75:23,89:14
L=2~0:65,15:59,17:44,26:22,31:31,44:-29,48:-43,72:39,81:21,82:-13,86:-25
L=3~0:34,49:16,51:20,56:-35,68:-51,72:39,75:52,89:24,94:-44 L=4~13:-36,26:24,53:50,87:18
L=5~0:30,1:-36,8:20,37:38,38:43,49:26,56:37,73:-46,80:-36,87:24,89:60,91:22
L=6~0:65,56:51,73:35,87:-32,94:38 L=8~1:-39,71:-41,75:42,80:-27,84:39,94:48
L=9~0:45,3:-45,5:41,68:24,82:-34,84:25,88:34 L=:~6:32,24:39,35:53,49:24,78:27,80:26,84:28,85:47
L=;~68:30,82:-50,85:-37 L=?~35:40,80:21,82:47
L=a~0:57,31:55,35:-61,40:32,44:-44,48:23,53:45,54:-45,57:23,67:-29,68:33,73:47,76:65,78:-28,82:-24,84:67,87:22,88:46,89:32
L=about~0:27,3:41,68:50,74:47 L=above~0:-27,72:35,80:45,82:-35,87:45 L=across~0:52 L=adjusted~60:33
L=adults~0:71,31:-28 L=after~0:109,93:19 L=air~49:51 L=all~0:52,46:30,72:20,80:-37 L=allowed~61:42
L=also~3:31 L=altimeter~85:39 L=altitude~35:85
L=and~1:37,3:27,4:31,24:35,35:-40,54:72,80:-34,85:21,87:10 L=apart~10:40
L=are~10:26,35:36,36:22,43:14,56:-42,62:35,72:-38,80:70 L=array~0:-33 L=as~58:34
L=at~0:25,1:-52,11:32,19:96,27:36,28:-33,34:-37,35:79,36:41,39:-43,47:16,53:73,54:72,56:132,71:-31,72:-33,73:-43,80:-36,82:74,85:-35,86:-46,87:-71,93:48,95:42
L=august~0:56 L=back~0:55,53:27 L=bar~8:24,26:31,50:54,51:36,53:29,54:98,84:-34
L=barn~0:-58,86:35,87:30 L=basins~28:-36 L=bath~0:-38,31:38 L=bathrooms~31:-31 L=battery~0:80
L=be~0:57,27:52 L=beds~14:22 L=been~0:34 L=before~94:33 L=behind~0:-29 L=below~0:-60,87:41
L=beside~0:-45 L=between~53:53,80:44,87:37 L=bladder~49:46 L=block~8:32,11:30
L=booster~0:23,60:36,87:-26 L=bore~84:51,85:-37,88:31,89:69
L=borehole~0:-19,86:35,89:88,90:35,95:34 L=both~0:-23 L=bottom~85:35,89:34 L=box~60:23,82:27
L=brings~0:25 L=bucket~0:28 L=buried~0:78 L=but~30:63,87:44 L=by~31:53,63:35,86:43
L=cabin~35:35,85:40,87:43 L=cabins~0:29,26:-40 L=cable~0:36,39:87,87:-27 L=call~0:52 L=came~0:39
L=can~0:43,9:29 L=case~0:32 L=casing~0:-49,88:9 L=cattle~0:61 L=charge~49:33 L=checked~49:33
L=cistern~0:25,66:29,68:62 L=city~0:69 L=climb~0:-41,85:75 L=climbs~0:-27,85:87,87:-27
L=cm~0:-28,7:32,10:30 L=comes~33:27,53:18 L=constant~60:52 L=consumption~75:37 L=control~60:34
L=controller~41:78,48:-31 L=copper~87:48 L=cottage~85:100 L=count~77:41 L=couple~29:48
L=cows~1:39,3:30,5:46 L=creek~0:-31,82:37,86:38 L=cut~0:-40,53:78,54:52 L=cuts~54:20 L=daily~74:34
L=dairy~2:23 L=day~1:52,68:-41,74:38 L=december~0:42 L=deep~85:-39,88:45 L=depth~56:38,89:46
L=diameter~55:83 L=diaphragm~0:-47,57:21 L=difference~85:26 L=distance~87:61
L=down~56:44,82:37,92:37 L=draw~0:17 L=drawn~91:29 L=drilled~0:50,89:45 L=driller~0:-27,84:52
L=drinkers~81:36 L=drip~6:25,10:31,11:15,14:40,22:47 L=dripper~14:16 L=drippers~7:68,14:72
L=drips~18:25 L=drop~0:31,86:35,87:-33 L=drops~0:48,85:-34,86:43 L=drum~72:45 L=dry~62:44
L=dug~89:41 L=dynamic~82:58 L=each~10:47,14:30,48:-49,74:-42,75:98,84:-43 L=efficiency~58:65
L=eight~27:45 L=elevated~0:32,73:-20 L=elevation~35:79 L=emitters~7:59,14:66 L=end~80:28
L=ends~0:40 L=enough~64:23 L=every~7:46,14:62 L=everything~73:35 L=ewes~85:31
L=expansion~17:59,20:75 L=facing~0:-33 L=falls~72:38 L=family~0:-40,80:59 L=far~0:35
L=farthest~87:27 L=fed~0:-32 L=feeds~60:29 L=feet~0:28,22:61,80:-48 L=fence~0:32 L=field~0:44,29:28
L=fifty~0:-50,26:37 L=fill~0:24 L=fills~0:30 L=filter~34:41 L=fire~67:33 L=first~33:29
L=floats~0:54 L=floor~72:33 L=flow~0:42,8:30 L=foot~0:-59,69:35 L=for~1:48,34:31,64:43,84:38,91:62
L=four~23:27 L=frequency~60:38 L=from~39:46,44:-48,72:42,86:22,89:-41
L=ft~72:-53,80:50,81:-40,82:35,85:13,95:45 L=gal~85:32 L=gallon~0:24,5:25 L=gallons~87:-25
L=galvanised~73:25 L=garden~0:44,6:34,76:118,87:24 L=gas~80:40 L=gauge~0:48,49:29
L=gets~33:75,66:31 L=gi~80:30 L=gives~0:52,60:-30,84:55 L=go~0:32 L=goats~3:61,4:34,6:-38
L=goes~89:32 L=got~0:79,68:33 L=gpm~92:27 L=gravity~73:33 L=greenhouse~0:61 L=grid~35:56,36:41
L=ground~46:55,86:33 L=group~0:24 L=guess~33:27 L=guests~0:59 L=guy~0:34 L=h~0:26,14:48,92:52
L=half~86:40 L=hallo~0:27 L=hand~0:46,33:27,89:40 L=hangs~56:66
L=has~0:45,26:45,49:46,73:-41,87:-27,88:42,90:73 L=haul~68:41 L=hav~0:44 L=have~3:42,29:31,73:24
L=he~0:32,95:38 L=head~0:84,80:-17 L=header~73:42 L=heater~18:36,19:64,21:40 L=height~72:31,85:33
L=held~0:49 L=hello~0:38,44:24 L=hens~0:-61,3:36 L=here~35:29 L=hi~0:37 L=higher~85:51,87:39
L=highest~85:43 L=hill~0:57,68:-40,73:34 L=hills~0:-37 L=hillside~0:69 L=hiya~0:36
L=hold~0:11,72:-25 L=holding~73:25 L=holds~60:78 L=hole~89:37 L=holiday~0:-39
L=horses~0:-54,1:34,81:62 L=hose~24:35,26:-39,71:35 L=hoses~0:-37,29:48 L=hot~0:25
L=hour~0:-49,78:70 L=hours~0:23
L=house~0:27,3:66,6:-44,56:-31,60:34,72:37,82:-26,85:63,87:68,89:-41 L=household~80:52
L=how~80:33,89:47 L=hundred~82:-44 L=hung~90:75 L=hut~35:36
L=i~0:81,6:12,9:24,30:36,49:43,58:27,77:43 L=i'd~33:26,60:58
L=in~3:-44,13:30,38:39,46:56,53:31,62:50,68:-22,72:-36,78:27,79:91,80:-34,82:94,85:-15,89:32
L=inside~0:-39,82:-31,88:41,94:22 L=intake~71:64,86:32 L=into~0:-69,68:21 L=inverter~60:31
L=iron~0:28 L=irrigation~0:-31,6:34
L=is~0:59,1:-43,31:35,34:31,35:-27,37:24,39:41,72:18,73:23,75:-27,85:48,87:50,92:-27
L=it~0:36,18:46,33:52,87:23,92:60 L=it's~87:48 L=its~80:25,85:-44 L=july~76:30 L=just~0:-44
L=keep~2:39,67:62 L=keeps~0:-27,60:72 L=kia~0:24 L=kicks~53:29 L=kids~26:22 L=km~86:45
L=l~12:32,48:-13,72:70,91:32 L=lake~0:34 L=last~0:61,85:-28 L=latitude~0:-42,36:84,37:214
L=laundry~32:50 L=least~0:33 L=length~71:69,87:50 L=level~82:67,89:-40,92:80,94:77
L=lies~33:44,85:39 L=lift~56:-28,82:39,85:63 L=lifted~85:45 L=lifts~85:26 L=like~0:35
L=line~0:46,10:68,72:-20,82:-30,87:19 L=lines~9:37,10:65,11:47 L=liters~0:37 L=lithium~0:38
L=litre~0:-42,49:34 L=litres~0:-62,1:53,19:56,49:36,72:44,82:-30 L=live~80:59 L=living~0:75
L=loft~73:37 L=long~0:87 L=look~0:37 L=low~0:36 L=lowered~56:47 L=lowest~82:29
L=m~0:26,15:38,73:40,80:45,82:19,89:48 L=machine~24:33 L=machines~32:54 L=make~80:32
L=makes~84:33,85:36 L=manometer~0:33 L=many~80:28 L=max~41:26 L=maximum~0:45 L=may~0:55,34:28
L=maybe~0:64 L=meadow~29:28 L=measured~84:34 L=meter~77:40 L=meters~0:29,80:-19 L=metre~89:48
L=micro~0:25 L=milk~0:-28,2:52 L=min~0:36,85:-25,91:35 L=minimum~0:75 L=minute~0:-39,86:29
L=minutes~93:53 L=mm~70:38,72:-42,86:48,87:59 L=months~62:46 L=more~0:-26,34:29,85:29
L=morning~78:29 L=most~57:34 L=motor~0:-43,58:72 L=mountains~80:43 L=mppt~41:64 L=must~85:34
L=my~0:103,6:-45,13:33,44:24,86:38,87:-31 L=need~0:41,74:69 L=needs~0:42 L=neighbour~0:37
L=net~85:42 L=never~82:68 L=no~28:42,80:40,82:24,87:28 L=noon~0:47 L=not~0:-23,34:28 L=npsh~59:59
L=of~1:-19,42:33,44:84,53:56,56:-18,64:14,71:-34,80:38,89:29 L=off~0:-50,36:38,54:85,63:112
L=olives~0:-26,6:29 L=on~0:2,29:43,33:44,53:43,60:-20,72:33,73:35,80:-45,85:-46,90:55 L=once~0:38
L=one~0:-31,43:26,45:56 L=only~9:33,30:59,34:41,35:21 L=open~42:68 L=opens~53:-26,54:40 L=ora~0:24
L=orchard~0:-30,6:28,11:25,85:29 L=our~0:64,74:33 L=ours~89:41 L=out~33:27,54:84,68:47
L=outside~0:-48,55:49,80:47 L=over~0:36,26:29 L=own~80:28 L=pairs~1:46 L=panel~47:33
L=panels~43:64,46:54,47:59 L=parallel~26:47,28:-36 L=pasture~0:32 L=pe~86:48 L=peak~78:28
L=people~26:32,75:64,80:53 L=per~75:44 L=persons~26:33,75:53 L=phosphate~0:32
L=pipe~0:49,26:-33,71:59,82:-37,87:69,89:-36,90:60 L=pit~89:-25 L=plastic~34:32 L=please~0:51
L=plot~0:46 L=plus~4:39,76:86 L=pn~0:58 L=point~60:25 L=poly~0:49 L=pond~0:50 L=power~0:35
L=pre~49:35 L=precharge~49:68 L=precharged~49:43
L=pressure~11:33,49:31,51:68,53:44,54:21,60:25,68:-46,73:-46 L=protection~0:-40 L=psi~82:46
L=pull~56:62 L=pulls~82:28
L=pump~0:60,8:44,28:26,35:-26,39:41,49:-26,53:-1,54:43,55:37,56:155,57:76,60:63,68:35,71:31,84:-51,85:-23,87:-22,89:-19,94:-25
L=pump's~0:41,48:-25 L=pumped~84:-35,95:36 L=pumping~0:-50,82:82,92:34,93:22,95:47
L=push~0:23,82:-25 L=pushes~72:55 L=pvc~87:22 L=rain~63:35,68:37 L=rainwater~0:-39,68:57
L=raised~72:26 L=ran~0:-32,91:43,93:36 L=rated~12:56,34:24,50:77 L=reach~0:30 L=reads~0:29
L=relief~18:93 L=required~59:43 L=reservoir~72:36 L=rest~94:63 L=ridge~86:-47 L=rise~85:87
L=rises~85:58 L=road~0:50,87:-24 L=roof~0:-20,6:-38,63:141,80:35 L=rows~13:127
L=run~0:-24,9:61,25:42,30:24,39:30,87:30 L=runs~0:-31,48:27,65:31 L=said~0:74 L=say~0:-55,87:81
L=says~0:64,74:53,89:26 L=sch~0:31 L=schedule~87:27 L=second~0:47 L=seconds~0:24,87:-33
L=septic~0:89,73:-34 L=set~0:37,19:30,56:61,60:111 L=seven~0:-42 L=sheep~3:73 L=should~64:41
L=shower~28:46,31:68,80:54,84:-24,85:37,87:-36 L=showers~26:74,27:63,28:65,31:92,80:-58
L=shows~0:33 L=shuts~54:33 L=sink~0:-29,26:41,28:-30,31:26,80:-17 L=sinks~0:-39,28:52,31:7,32:55
L=sit~0:28 L=sits~56:34 L=slope~0:38 L=smal~0:32 L=small~35:35 L=so~0:19,31:33,68:93 L=solar~0:21
L=someone~0:25 L=sorry~82:30 L=source~0:18 L=spacing~14:21 L=speed~0:41,60:43
L=spring~68:42,72:-36,73:-37,84:89,86:82 L=sprinkler~0:30,85:38 L=sprinklers~29:54 L=staff~80:31
L=stand~0:-31,72:56 L=standing~94:56 L=stands~82:48 L=start~53:36 L=started~94:32
L=static~0:-24,82:57,92:25,94:179 L=stock~0:-61,1:39,5:50 L=stop~54:27 L=stops~28:-36,54:59
L=storage~64:30 L=stored~19:66 L=strainer~0:67,87:-35 L=stream~0:-34,84:35 L=strings~0:-60,44:23
L=sub~56:57 L=submersible~55:15,56:97,80:-29 L=sucks~71:34 L=suction~71:127,82:20,85:-26,87:-45
L=summer~35:23,80:38 L=sun~0:35,33:44 L=sunday~0:43 L=supply~0:-49,11:36
L=switch~0:-70,53:131,54:69,60:-34,87:36 L=swl~82:44,94:42 L=system~48:30 L=take~0:59,84:-39
L=takes~0:62,78:58
L=tank~26:-44,49:48,50:58,51:55,66:77,68:89,72:99,73:72,82:-49,84:-47,85:-28,86:-43 L=tanks~0:42
L=tap~0:55,85:37 L=taps~0:75 L=ten~0:41 L=test~93:33 L=tested~0:-43 L=than~0:-29 L=that~33:26,72:53
L=that's~80:34
L=the~0:112,1:-24,10:-41,11:28,17:-33,22:-28,24:-51,31:-31,33:60,35:-49,36:-33,53:24,63:94,66:56,73:29,84:41,85:51,86:22,89:14,95:-38
L=then~0:61 L=ther~0:49,80:-28 L=there~20:17,70:36 L=there's~0:-37,26:41,51:42 L=this~0:113
L=through~0:-53,71:69 L=tilt~47:61 L=tilted~47:35 L=time~27:35,31:37
L=to~4:-41,17:27,28:-42,35:-30,39:31,56:-31,68:-37,71:-31,72:27,73:51,82:73,85:57,87:40,88:-44
L=together~3:36 L=toilet~0:-25,31:74 L=toilets~28:51,31:40,32:49 L=told~72:25 L=too~0:18
L=took~0:60,26:40,58:34 L=top~72:-42,85:20 L=total~0:-59 L=tote~0:32 L=tower~72:33 L=town~0:43
L=trench~0:26 L=trough~1:37,85:15 L=troughs~0:-52,1:27,81:79,87:46 L=truck~0:39 L=turns~77:41
L=twenty~0:38 L=two~0:21,1:26,32:-49,43:24,44:23,74:41 L=under~82:32 L=underground~68:49
L=up~73:41,83:25,85:50,89:-32 L=uphill~0:-44,85:52 L=upper~0:-49,73:72,85:44
L=us~0:-23,4:17,26:41,28:47 L=use~0:-38,27:34,74:79,78:50,79:26 L=used~0:25 L=uses~0:61,75:40
L=v~26:41,38:35,39:41 L=valve~18:106,51:-31,60:-33,69:35,70:48 L=variable~60:26
L=vegetable~0:-24,6:29 L=vessel~0:-22,20:52,49:51,51:44 L=village~72:34 L=voc~42:61 L=volt~57:38
L=voltage~42:43 L=w~0:-64,42:35,44:29,46:52 L=want~30:45,64:43 L=wants~27:36,67:66
L=was~0:41,87:-36 L=washer~0:49,24:35 L=washing~32:39
L=water~5:27,9:45,35:-28,56:-57,82:153,83:102,85:-6,89:-25,94:94 L=water's~82:40 L=watered~0:30
L=waters~82:36 L=way~0:-30,57:33,87:28
L=we~0:145,2:27,35:46,36:23,56:57,64:34,73:-45,74:85,78:38,80:53,82:-46,86:34 L=we'd~0:30,67:23
L=we're~80:38 L=well~28:21,66:41,72:-31,82:25,84:6,86:-35,88:27,89:79,94:-56 L=well's~0:-42,89:67
L=went~0:29 L=what~0:34 L=when~0:42,28:-38 L=which~0:-44,27:36,66:29 L=wire~39:83,87:-45
L=with~6:33,7:27,49:61,68:-40,69:48,80:26,82:38,89:-25 L=within~0:38,82:25 L=works~0:49
L=write~0:31 L=wrote~84:27 L=x~0:66,43:28 L=yard~1:37 L=yards~86:33 L=year~0:36 L=yield~0:49,84:31
L=you~0:34 L=your~33:27 L=zones~23:58 L=|~3:47,26:15,31:22,48:25,72:-35,80:11,86:42 R=!~0:48
R=(~0:-53,26:38,31:26,80:28,85:22 R=)~0:88
R=,~0:43,7:32,9:-56,21:20,25:-39,26:34,27:-48,29:44,31:34,32:-26,39:-39,53:52,60:26,67:-29,68:63,73:34,74:34,80:18,87:54,89:27,92:-48,94:52
R=.~0:117,2:-26,5:-29,6:54,8:-39,13:-22,16:-41,21:-27,22:-27,25:-13,27:-31,29:-63,33:30,35:41,41:-22,44:-37,45:-31,51:42,52:-42,53:30,60:30,66:14,74:44,75:66,80:40,82:43,84:47,87:30,89:21
R=0~0:49,6:-39,12:49,44:40,68:-40,72:28,84:59
R=1~0:46,1:-46,4:-35,21:25,24:-59,28:32,32:-49,56:45,71:24,72:-41,73:35,80:17
R=2~26:51,28:-32,32:65,37:38,46:-32,50:44,51:47,54:26,93:19,94:-28
R=3~1:-12,53:66,80:-38,85:15,88:32 R=4~35:-48,44:22,59:47,71:16,72:-56,82:-10,85:32,90:85
R=5~0:55,6:-24,21:30,54:14,68:-37,75:28,78:19,84:-43,87:57
R=6~1:-47,3:28,21:48,55:34,82:-37,84:17,94:33 R=7~0:104,56:-29,94:65
R=8~0:66,48:49,51:47,72:-29,87:44 R=9~2:47,78:25,94:27 R=:~87:23 R=;~0:71 R=?~0:84,26:47,80:65
R=a~9:38,23:46,26:31,28:39,31:43,32:-35,51:-53,65:25,74:35,75:66,89:-41 R=about~0:-31,80:25
R=above~56:-29,68:-44,72:90,73:71,82:53,85:147,86:31,87:-33,89:-35 R=according~89:46
R=across~0:45,88:53 R=adults~0:10 R=after~15:51,78:31,79:6 R=afternoon~45:31 R=ah~48:84 R=air~51:54
R=all~81:32 R=along~85:40 R=alpacas~0:40 R=altitude~35:42 R=altogether~74:42
R=an~0:59,61:56,87:-61,93:26,94:45
R=and~0:41,2:30,3:19,5:11,26:32,27:30,28:39,31:55,48:-37,53:83,66:13,81:-32,84:-23
R=apart~13:48,14:36 R=are~28:22,73:29,80:39 R=around~0:43
R=at~0:22,3:-23,4:-32,8:36,11:28,21:61,23:99,25:58,27:80,28:-36,30:26,31:-29,53:51,56:-39,57:64,73:-48,80:33,81:-35,82:50,84:-44,85:-32,87:-52,89:49,92:53
R=automatic~0:-26,1:26,81:30 R=autumn~0:34 R=away~0:35,87:91 R=back~67:43 R=bank~48:43
R=bar~51:40,53:70 R=barn~72:-28 R=basins~28:112,80:-41 R=bath~0:24
R=bathroom~0:58,26:-38,28:-38,72:39 R=bathrooms~26:52 R=baths~0:27 R=batteries~40:38,48:26
R=battery~40:38,48:42 R=be~0:42 R=beds~35:20 R=beef~1:70 R=before~87:28 R=begin~11:55
R=below~0:-63,56:37,68:69,82:62,85:21,86:6,87:-42,89:-44 R=bends~69:66 R=beside~3:41,68:59,73:-31
R=between~0:-46,13:49 R=bibs~24:39 R=bladder~51:42 R=booster~68:40 R=bore~0:-48,3:41
R=borehole~0:-29,85:29,88:46 R=both~24:42 R=bottom~0:73,87:-36,89:92 R=box~0:32 R=boys~0:34
R=break~0:-33,16:63 R=bucket~0:79 R=bulls~0:-37,1:40,5:54 R=but~0:86,28:35,29:60
R=by~0:58,6:31,74:42,82:-28,86:-36 R=c~21:38 R=cabin~86:35,87:53 R=cabins~26:46
R=cable~39:92,87:-42 R=calf~5:75 R=calves~5:97 R=campers~80:40 R=can~8:36 R=cart~0:62
R=casing~0:-39,88:68 R=cattle~1:72,3:42 R=charged~20:38 R=chickens~0:-78,4:139 R=children~0:53
R=cistern~0:-26,62:32,68:53 R=climb~85:33 R=climbs~85:42 R=comes~0:53 R=concrete~73:54
R=const~60:19 R=controller~0:47 R=cottage~86:48 R=couple~5:31 R=covers~0:23 R=cow~5:61
R=cows~0:-100,1:119,2:150,5:58,80:-33 R=creek~71:21,85:54 R=cut~53:39 R=dairy~2:45
R=day~0:-47,9:52,65:86,66:69,75:46 R=days~0:18 R=deep~0:61,72:-30,82:-41,85:-24,87:-19,89:142
R=depending~80:26 R=depth~0:20,82:-26,89:39 R=diameter~88:45 R=diesel~0:78 R=don't~0:52
R=down~56:82,72:-38,82:76,85:-42,87:-39 R=drawn~93:35 R=drilled~0:38 R=drink~1:79
R=drinkers~0:-19,81:139 R=drip~0:24,6:97,22:42 R=drippers~6:28 R=drop~0:-40,87:-27,90:89
R=drops~0:44 R=dry~0:-51,1:68,2:27,62:76,76:101 R=each~0:31,7:40,26:64,75:65 R=earth~0:41
R=east~5:29 R=elbows~69:63 R=electricity~0:28 R=elevation~35:40 R=emitters~10:30 R=end~0:-33,82:30
R=ewes~0:-62,3:167 R=expansion~19:68,20:83 R=feeds~0:-25,73:32 R=feet~0:49 R=fill~0:48
R=filled~0:31,68:58 R=fine~0:12 R=fire~67:68 R=first~0:30,11:36 R=five~80:-49 R=float~81:106
R=floats~81:51 R=flow~11:30 R=folks~80:61 R=foot~5:55,69:57,70:90,71:40,87:-40
R=for~0:36,24:37,67:86,73:-35,74:49,81:43,84:-50,93:73 R=four~26:33,80:-60
R=from~4:31,35:-35,68:32,82:39,87:56 R=ft~0:60,56:-33,73:40 R=full~0:53,80:55,82:-43
R=garden~24:36,68:-29,86:35,87:26 R=gets~0:45 R=gives~0:24,85:-36,86:48 R=go~89:40
R=goats~0:-76,3:179 R=goes~56:37 R=going~27:62 R=golf~0:62 R=gone~0:23 R=got~0:50 R=gpm~89:43
R=gravity~87:98 R=greenhouse~6:31 R=grid~82:30 R=ground~56:33,68:49,82:42,85:-28
R=guests~0:44,80:51 R=h~14:35 R=hangs~0:-38,82:46,89:17 R=have~0:39,2:24 R=hdpe~0:31 R=he~0:59
R=head~0:35,1:50 R=header~73:26 R=heads~29:50 R=heater~0:-33,21:127,51:-43 R=heifers~1:68
R=height~72:35,82:-25,85:41 R=hens~0:-70,4:215 R=here~80:31 R=high~0:21 R=higher~85:63
R=hill~0:-22,73:46,80:25,85:32 R=holds~0:-41 R=home~0:47 R=horse~0:35 R=horses~1:147,80:-29
R=hose~0:-96,24:179,26:-71,27:30,71:87,80:-28 R=hoses~0:-109,24:164,25:78 R=hour~0:-14,61:96,93:26
R=hours~0:28,78:30,93:13 R=house~2:82,68:51,72:51,73:21,82:-39,85:106,87:45,89:-48 R=houses~0:65
R=how~0:-32,87:39 R=hut~0:-30,34:29 R=i~0:35,22:34,85:-35,86:34,87:62,93:16 R=ibc~68:36
R=identical~0:-38,52:117 R=in~2:21,28:-37,44:68,49:57,52:45,67:28,76:76,78:47,82:20
R=inch~0:-51,71:35,82:-31,87:61 R=inside~88:65
R=is~0:50,31:-32,35:20,45:69,51:-41,68:-41,84:63,85:-57,87:-22,88:40,94:45
R=it~0:28,82:13,84:49,93:26,95:50 R=its~26:26,82:32 R=joined~0:14 R=just~0:49 R=keep~1:30
R=kept~21:49,67:78 R=kids~0:60,3:38,26:-22,80:-18 R=kitchen~0:73,28:-44,31:30 R=l~14:40,75:25
R=last~0:45 R=late~0:68 R=later~0:34 R=laying~4:31 R=least~0:30 R=level~68:93 R=like~0:-32
R=line~66:30,71:23,85:-27 R=lined~89:37 R=lines~11:62 R=litres~80:44 R=loft~73:50
R=long~0:41,10:64,71:30,89:-31 R=loo~26:36,31:53 R=lost~45:93 R=low~0:45 R=lower~86:93
R=m~0:32,59:43,73:52,82:-22,87:39,88:31,94:26 R=machine~32:53 R=machines~26:40,32:44
R=mains~0:-22,24:43,82:90 R=makes~82:22 R=max~0:-41 R=may~27:45 R=me~0:44 R=measured~0:46
R=members~0:24 R=meter~74:40 R=metre~0:29 R=milk~0:-34,2:128 R=milking~0:-42,2:73,78:32,79:26
R=min~78:28 R=minutes~0:45,78:23,93:57 R=mm~71:33,82:-20,85:40,87:55 R=modules~43:35
R=months~0:-54,62:78 R=morning~0:32 R=most~80:29 R=mostly~0:-43 R=moved~80:28 R=must~0:35
R=my~0:43,82:30 R=n~0:-59,36:173 R=neighbor~0:-27 R=new~0:43 R=next~48:-21,68:34
R=night~0:-23,66:28 R=no~25:39,87:46 R=none~3:38 R=north~36:98 R=not~29:42 R=now~0:-53,80:31
R=o'clock~0:42
R=of~0:29,4:-34,6:38,39:51,40:22,46:37,56:-67,63:27,64:47,67:36,71:95,72:-30,80:32,82:-39,85:-22,87:50,89:-25,90:87
R=off~53:42,87:68,93:24 R=old~0:48 R=on~0:29,1:57,6:24,25:47,53:25,68:-35,73:54,85:-45
R=once~0:-56,25:39,27:69,80:-51 R=one~15:38,71:35,82:-44,84:42 R=ones~1:32 R=open~29:17 R=or~0:28
R=other~28:32 R=our~0:44,82:41 R=out~0:28,38:41,53:82 R=outhouse~0:-27,26:34 R=outside~24:32,68:41
R=over~0:59,72:58 R=own~26:35 R=pairs~5:118 R=panel~43:46 R=panels~43:50,44:85,48:53,80:-36
R=parallel~0:-28,52:64 R=pasture~0:-33,5:28 R=pe~0:45,85:-44 R=people~26:-35,80:176,81:-27
R=per~61:43,75:22 R=person~80:102 R=persons~26:-32,80:125 R=pex~0:34 R=phase~0:31 R=pieces~29:29
R=pigs~0:45 R=pipe~0:60,82:-35,87:65,90:56 R=plastic~89:30 R=plus~87:26
R=poly~0:69,68:33,82:-35,87:36,90:14 R=power~0:-59,24:52,28:20,80:48
R=pressure~0:-53,16:93,51:67,60:29,77:47,85:45 R=psi~57:43
R=pump~17:41,25:65,28:-40,30:36,39:14,56:-33,63:-31,68:32,72:-33,73:-49,82:81,86:-53,87:-30,88:51,89:49
R=pumphouse~0:37 R=pumping~94:49 R=pumps~0:-31,52:75,68:28 R=pupils~80:61 R=pushes~82:37 R=put~0:53
R=pvc~0:57 R=rain~64:27,80:-27 R=rainwater~68:25 R=ran~82:-25,94:26 R=reach~87:40 R=reaches~87:28
R=relief~21:26 R=reserve~64:49 R=ridge~0:33 R=right~48:-26,68:61 R=rim~94:23 R=rise~85:41
R=road~0:36,85:-24 R=roof~63:41 R=rooms~0:-37,26:41 R=row~11:36 R=rows~10:60,12:58,14:75,87:-44
R=run~15:20,22:8,26:-44,27:120 R=runs~0:32,71:29 R=same~30:24,87:48 R=says~0:50,61:29 R=sea~35:64
R=seconds~0:43,84:39 R=series~44:67 R=set~57:51,60:32 R=shade~45:33 R=shed~68:49
R=sheep~0:-21,1:30,3:90 R=should~0:-65 R=shower~26:186,27:44,28:53,81:-24
R=showers~0:-32,26:187,27:101,28:-17 R=since~0:-68 R=sink~0:-48,28:136,80:27
R=sinks~26:34,28:155,80:-45 R=sits~51:30,73:31 R=six~0:-28 R=slope~85:47 R=so~0:116,85:-44
R=solar~1:47,56:33 R=something~0:35 R=sorry~0:28 R=south~0:-28,37:100 R=spring~0:21,82:-29,86:43
R=sprinkler~0:-33,29:29 R=sprinklers~0:-33,29:152,30:77 R=staff~0:57 R=stands~0:21,88:40
R=start~54:22 R=starts~0:-41,61:85 R=static~89:49 R=steers~0:-61,1:84 R=storage~64:23
R=stream~0:-41,82:43 R=string~0:-56,46:56 R=strings~46:55 R=sub~0:41,89:-41
R=suction~59:27,68:-43,71:111,82:38,85:-38 R=summer~0:-31,82:69 R=supply~0:-36
R=surface~0:75,48:-26,68:-32,82:15 R=switch~0:4,49:51,53:33 R=table~0:30 R=takes~0:54
R=tank~0:-33,20:45,49:32,51:64,54:59,68:60,72:68,73:51,80:-64,85:-33 R=tanks~0:66,16:61
R=tap~0:43,24:49 R=teachers~80:29 R=terrace~0:52,68:-52 R=th~45:63 R=than~85:36,86:42
R=that~0:20,73:34,85:30
R=the~0:68,2:-47,6:-33,8:41,14:-25,22:-40,24:31,25:-36,26:-38,27:48,32:-48,44:-35,45:61,46:-39,53:-72,57:-31,68:38,72:54,73:41,74:25,76:69,82:44,85:50,86:43,90:-41
R=them~3:41,27:60 R=then~0:58,85:-44 R=there~82:39 R=they~0:79,6:-29,29:20 R=three~85:39
R=through~85:-40 R=tilt~47:28 R=time~23:63,27:30,30:53 R=times~0:32
R=to~0:30,4:28,68:46,72:40,80:-55,82:22,86:35,87:46,89:36 R=toddler~0:57,80:-32
R=together~0:-43,25:77,27:73 R=toilet~28:19,31:93,80:-33 R=toilets~0:-37,26:28,28:48,31:184
R=tomatoes~0:22 R=top~76:31,86:-32,94:56 R=total~87:11 R=town~0:26,66:31 R=trailer~0:50
R=trees~0:32 R=trough~0:-30,81:134 R=troughs~0:-49,80:-35,81:163
R=two~0:9,1:45,26:-51,46:-60,78:51,80:60 R=under~0:29,85:45,94:36 R=up~60:31,72:40,85:67,89:-37
R=uphill~0:-42,85:88 R=us~72:25,80:128 R=v~0:79 R=valve~0:-51,69:53,70:83
R=vessel~0:-72,19:72,51:71,54:40 R=w~0:66,44:54 R=wait~0:59 R=want~0:15 R=was~0:18,85:28
R=wash~24:44,28:31 R=washer~0:-23,32:70 R=washers~32:61 R=washing~31:31,32:93,80:-34
R=water~21:76,26:22,51:-44,64:29,72:-61,82:150,84:37,85:-53,86:-28,87:-43,89:76
R=waterers~0:-37,81:46 R=wc~31:70 R=we~0:61,26:-58,28:17,37:98,61:44 R=we'd~94:54 R=we've~0:34
R=week~0:27 R=well~28:-35,56:31,85:15,86:36,88:45,89:46 R=what~0:-32,80:35,87:35 R=when~0:52
R=where~0:-30,11:62,82:46 R=which~0:54,22:50 R=why~80:35 R=wide~0:43 R=wire~39:66,87:-45
R=with~5:74,26:36,80:32,81:69,85:-26,89:64 R=without~0:-56,64:77 R=works~0:32 R=worst~0:22
R=would~80:32 R=yard~0:43 R=year~0:59 R=years~0:30 R=yet~0:-23,60:34
R=zones~0:-44,11:31,15:101,22:82,80:-42 R=|~6:41,26:32,80:36,87:39,94:-36 angleC=latitude~37:49
angleC=lies~33:50 angleC=panel~47:47 angleC=panels~47:101 angleC=sun~33:50 angleC=tilt~47:61
angleC=tilted~47:35 angleC=w~47:55 angleL0=at~47:52 angleL0=is~33:28 angleL0=latitude~37:49
angleL0=panels~47:41 angleL0=tilt~47:61 angleL0=tilted~47:35 angleL1=the~33:72 angleL2=,~47:66
angleL2=4~33:47 angleL2=mm~33:47 angleL2=panels~47:42 angleM=cistern~0:41 angleM=pump~37:38
angleM=tank~37:45 angleR0=.~33:41,36:26,47:29 angleR0=and~0:39 angleR0=north~36:99
angleR0=south~37:45 angleR0=tilt~47:28 angleR2=0~37:34 angleT=power.facing~47:114
angleT=power.panel~47:81 angleT=power.source~47:122 angleT=pump.placement~37:45
angleT=store.volume~0:38 angleT=water.kind~37:38 angleT=way.pipe~33:56 anglea=.~33:24,47:22
areaC=,~6:36 areaC=0~0:-58,6:28,63:36 areaC=beds~6:20 areaC=cistern~0:26 areaC=garden~0:24,6:37
areaC=house~0:60,6:-40 areaC=off~63:45 areaC=rain~63:32 areaC=roof~6:-37,63:49
areaC=vegetable~0:-23,6:29 areaL0=.~63:25 areaL0=:~6:47 areaL0=beds~6:20 areaL0=drip~6:39
areaL0=garden~0:43 areaL0=i~0:-20,6:33 areaL0=is~0:-25,6:28,63:39 areaL0=of~0:47 areaL0=roof~63:15
areaL0=the~6:26 areaL0=vegetable~0:-23,6:29 areaL0=we~0:71,6:-32 areaL1=,~0:53 areaL1=a~6:36
areaL1=by~63:37 areaL1=garden~0:-26,6:37 areaL1=it~6:35 areaL1=pump~0:30 areaL1=roof~63:55
areaL1=the~63:56 areaL2=,~63:53 areaL2=.~0:24,6:-35,63:42 areaL2=1~0:-29,6:49 areaL2=2~0:52
areaL2=4~0:41 areaL2=5~0:-44 areaL2=8~0:58 areaL2=inch~6:24 areaL2=m~0:41,6:-29 areaL2=only~63:38
areaM=cistern~63:26 areaM=creek~6:32 areaM=drip~0:27,6:115 areaM=pump~0:25,6:45,63:58
areaM=roof~6:-46,63:86 areaM=spring~0:62,6:-42 areaM=tank~0:36,63:37 areaM=well~0:28 areaR0=,~0:63
areaR0=.~6:81,63:35 areaR0=drip~6:62 areaR0=of~0:-27,6:55,63:27 areaR0=roof~63:42 areaR0=with~0:34
areaR1=,~0:44 areaR1=.~0:-31,6:52 areaR1=0~0:53 areaR1=5~0:62 areaR1=a~63:54 areaR1=drip~6:50
areaR1=drippers~6:26 areaR1=in~6:34 areaR2=,~0:15 areaR2=3~0:33 areaR2=4~0:58 areaR2=5~6:34
areaR2=6~6:26 areaR2=8~0:29,6:-20 areaR2=m~0:72 areaR2=one~0:36 areaR2=well~0:37
areaR2=zones~0:-30,6:39 areaT=beds.area~0:39,6:-36 areaT=power.panel~6:46 areaT=power.source~6:22
areaT=pump.height~6:48 areaT=pump.placement~6:31 areaT=pump.present~6:-37 areaT=pump.works~63:30
areaT=store.fills~0:-25,63:30 areaT=store.volume~0:64 areaT=water.kind~0:76,6:42,63:13
areaT=water.level~0:22 areaT=water.yield~0:18 areaT=way.climb~6:49 areaT=way.length~0:68,6:19
areaT=way.pipe~0:54,6:41 areaa=~6:73 areaa=.~0:35,63:30 areaa=._the~0:23 areaa=with_drip~0:37
areab=~6:61 areab=roof_is~63:30 bareC=)~0:-35 bareC=,~4:19,31:34,32:29,69:43,70:23,82:45
bareC=0~1:42,28:-62,31:-33,44:27,46:35,69:39,89:38 bareC=1~2:-45,3:-42,28:74,69:29,81:42
bareC=2~0:24,1:-54,26:-38,31:23,32:38,46:22,70:31,80:-25
bareC=3~1:22,3:71,25:65,28:-46,46:45,80:-24,81:-28,82:38 bareC=4~26:44,44:35,69:30,80:-35
bareC=5~0:-19,38:35,69:47,70:32,89:43 bareC=6~3:-25,5:31,80:41 bareC=7~32:37,80:43
bareC=8~3:46,80:-53 bareC=9~5:44 bareC=:~24:45,46:48,81:54 bareC=acre~23:26 bareC=adults~0:72
bareC=agist~0:31 bareC=all~46:30 bareC=array~0:-32 bareC=back~0:51 bareC=bar~54:52
bareC=barn~0:-35,1:41,81:50 bareC=basins~28:-37,31:38,32:16 bareC=bathrooms~0:-41,28:31
bareC=bed~0:35 bareC=between~0:37 bareC=blok~0:38 bareC=cabin~80:44 bareC=cabins~0:40,26:-37,80:30
bareC=call~0:41 bareC=calves~1:38 bareC=chalet~0:41 bareC=comes~0:47 bareC=couple~29:31
bareC=cows~0:-33,1:67,3:22,4:63,5:44 bareC=dairy~2:23 bareC=day~0:-53,80:45 bareC=deep~82:55
bareC=den~80:26 bareC=dobr~80:26 bareC=drip~0:-33,22:43,23:15,24:45 bareC=dry~62:45 bareC=each~0:39
bareC=eight~27:39 bareC=eighty~0:-50 bareC=every~0:53 bareC=ewes~1:43 bareC=family~0:-52,80:56
bareC=farm~0:65 bareC=feet~0:-65,69:44 bareC=folks~0:44 bareC=foot~0:-38,69:35 bareC=four~23:28
bareC=from~80:-36 bareC=ft~70:38 bareC=gal~0:35 bareC=gauge~0:40 bareC=girls~0:38
bareC=goats~0:-24,3:52,4:78 bareC=good~38:42 bareC=gpm~0:-45 bareC=grid~36:15 bareC=group~0:24
bareC=guesthouse~0:-53,26:41,80:39 bareC=guests~0:36 bareC=half~28:-35 bareC=hallo~0:20
bareC=hav~0:46 bareC=hello~0:36 bareC=helo~0:45 bareC=hens~0:-46,3:37 bareC=hi~0:79,1:-52
bareC=horse~0:-28 bareC=horses~0:-38,1:22,81:62 bareC=hose~30:53 bareC=hoses~29:30
bareC=house~0:-35,28:45,80:28 bareC=household~80:52 bareC=hp~0:42 bareC=hundred~80:48 bareC=if~0:40
bareC=it's~80:41 bareC=its~0:47 bareC=just~0:-13 bareC=l~80:23 bareC=latitude~0:-56,36:94,37:78
bareC=laundry~32:51 bareC=like~0:-45 bareC=line~0:21,69:34 bareC=live~0:-31,80:49 bareC=lodge~80:30
bareC=look~0:37 bareC=m~15:34,56:63,69:27 bareC=machine~24:37 bareC=machines~32:56 bareC=make~80:32
bareC=me~1:61 bareC=meadow~29:19 bareC=milk~0:-25,1:40,2:50 bareC=min~0:28 bareC=mm~69:45,70:40
bareC=mother~80:37 bareC=mppt~38:42 bareC=much~0:-40,26:48 bareC=n~0:-40 bareC=off~36:12
bareC=one~0:28,26:22,31:53,45:57,80:-37 bareC=only~30:62 bareC=over~26:38 bareC=pairs~1:46
bareC=panel~0:43 bareC=panels~0:39,44:73,46:95,80:-39 bareC=people~0:-33,3:42,5:54,80:51
bareC=pipe~0:45 bareC=plot~0:42 bareC=plus~0:-29,4:40 bareC=poly~0:-79 bareC=power~46:52
bareC=pressure~0:63,80:-35 bareC=psi~0:35 bareC=pump~26:40,44:-49,56:42,61:62 bareC=quick~0:43
bareC=right~0:-35 bareC=roof~80:27 bareC=run~0:52,25:43,30:25 bareC=runs~0:52
bareC=sheep~0:-36,3:73 bareC=shower~0:-27,28:58,31:56,32:45
bareC=showers~0:-60,1:-35,26:55,27:58,28:61,31:62,32:49,80:-18 bareC=sink~0:-30,26:53,28:-28,31:28
bareC=sinks~0:-63,28:27,31:10 bareC=sir~0:32 bareC=sit~0:45 bareC=six~0:-45,27:39,46:28
bareC=smal~0:79 bareC=so~80:63 bareC=solar~0:44 bareC=sorry~80:34
bareC=sprinklers~0:-60,29:40,30:67 bareC=stands~0:-32 bareC=starts~61:61 bareC=static~94:80
bareC=stock~0:-40 bareC=strings~44:27 bareC=sub~89:31 bareC=suction~69:82,70:44 bareC=surface~0:-41
bareC=switch~53:32 bareC=tank~0:5,80:-36 bareC=taps~24:39 bareC=teenage~0:38 bareC=that's~80:29
bareC=there~0:-54,26:13,27:41,28:73,31:31,70:34,80:-32 bareC=third~0:-29 bareC=thirty~1:27
bareC=three~0:37,28:-43 bareC=toilet~0:-16,31:75 bareC=toilets~0:-43,28:21,32:76 bareC=too~0:-42
bareC=took~26:40 bareC=total~0:-38,29:72 bareC=troughs~0:-23,81:81 bareC=twenty~80:51
bareC=two~4:15,28:23 bareC=up~0:29,80:43 bareC=us~0:-35,4:9,26:42 bareC=uses~0:33 bareC=v~38:41
bareC=valve~0:-51,69:35 bareC=village~0:36 bareC=volt~0:37 bareC=w~0:-12,44:76,46:55
bareC=want~30:45 bareC=wants~27:36 bareC=was~0:48 bareC=washer~24:29 bareC=washing~24:28,32:43
bareC=water~0:-16,5:20,82:82 bareC=we're~80:26 bareC=well~0:42,80:-17 bareC=which~27:56
bareC=yard~0:-37,81:34 bareC=zones~23:58 bareL0=)~3:25
bareL0=,~1:70,4:49,28:38,30:-45,31:34,32:34,36:43,70:25
bareL0=.~3:50,16:56,26:31,29:-43,31:50,32:-23,80:79 bareL0=0~1:54 bareL0=1~28:50,32:34
bareL0=2~4:54,26:50,28:25 bareL0=3~0:21,3:28,80:-53 bareL0=4~3:59,26:29 bareL0=5~0:67,80:-55
bareL0=8~80:-25 bareL0=:~0:-57,1:35,26:45,46:40 bareL0=?~0:-33,80:55 bareL0=a~80:16
bareL0=about~3:45 bareL0=adults~0:45 bareL0=all~80:-34 bareL0=also~3:33
bareL0=and~1:51,4:75,24:34,38:36,54:44,69:24,80:-63 bareL0=are~0:-27,62:41,80:63
bareL0=at~0:39,53:29,54:50,56:40,80:-27,82:62 bareL0=bar~80:21 bareL0=barn~0:-33,81:50
bareL0=basins~0:36,28:-34 bareL0=bathrooms~0:37 bareL0=beef~0:52 bareL0=between~0:33
bareL0=bore~0:30 bareL0=cattle~81:50 bareL0=cows~0:-58,1:46,5:64 bareL0=dairy~2:49
bareL0=day~0:-44,80:38 bareL0=dry~62:45 bareL0=family~0:-32,26:-20,80:97 bareL0=five~0:27
bareL0=foot~0:-40,69:37 bareL0=for~1:30 bareL0=four~0:-48,26:43 bareL0=ft~0:47 bareL0=garden~80:31
bareL0=goats~3:36,4:41 bareL0=gpm~0:-28 bareL0=grid~36:16 bareL0=half~27:52
bareL0=has~0:-25,26:22,28:26 bareL0=have~0:-30,1:33,26:35 bareL0=head~0:-42 bareL0=hens~0:-48,3:38
bareL0=horses~0:-14,81:27 bareL0=hose~0:-42,24:41 bareL0=hoses~29:48 bareL0=household~0:-29,80:73
bareL0=i~0:38,3:-36,80:-23 bareL0=if~0:30 bareL0=in~15:29,31:44,38:39,46:77,80:-33
bareL0=is~0:41,70:42,80:-21,89:29 bareL0=it~0:43 bareL0=it's~80:40 bareL0=keep~2:40,4:43
bareL0=kids~0:47 bareL0=kitchen~0:67 bareL0=latitude~0:-56,36:94,37:78 bareL0=laundry~32:51
bareL0=live~0:-18,80:42 bareL0=m~15:20,81:47 bareL0=machine~24:29 bareL0=machines~32:56
bareL0=may~0:37 bareL0=maybe~0:41 bareL0=milk~2:60 bareL0=months~62:46 bareL0=my~44:25
bareL0=of~1:-36,4:36,44:61,80:51 bareL0=off~36:15 bareL0=on~0:-28,29:55
bareL0=one~28:78,31:50,45:60 bareL0=only~30:61 bareL0=our~0:42 bareL0=own~0:-35,80:31
bareL0=pairs~1:47 bareL0=panels~46:30 bareL0=past~27:52 bareL0=pe~0:23 bareL0=people~31:-34,80:29
bareL0=pipe~0:56 bareL0=plus~4:37 bareL0=poly~0:-44 bareL0=pump~0:-47,28:34,56:57 bareL0=roof~80:22
bareL0=run~0:-32,25:47,30:30 bareL0=series~46:43 bareL0=sheep~0:-29,3:51
bareL0=shower~0:-29,28:23,31:58 bareL0=showers~26:107,27:39,80:-52
bareL0=sink~0:27,26:40,31:42,80:-48,81:42 bareL0=sinks~28:66 bareL0=small~0:-40 bareL0=so~0:-50
bareL0=solar~0:47 bareL0=sprinklers~0:36 bareL0=static~94:88 bareL0=stock~0:-29,5:54
bareL0=stops~0:-43 bareL0=strings~44:42 bareL0=summer~80:44 bareL0=tank~5:30 bareL0=the~26:20
bareL0=there's~26:42 bareL0=three~0:47,26:-22 bareL0=time~27:36 bareL0=to~0:60
bareL0=toilet~28:-30,31:45 bareL0=toilets~0:-41,28:23,31:68,32:52 bareL0=trough~1:40
bareL0=troughs~0:-30,81:48 bareL0=two~1:40,44:31 bareL0=us~0:-28,4:29 bareL0=v~26:44,28:-45,38:41
bareL0=valve~69:36 bareL0=w~0:-20,44:38 bareL0=want~30:51 bareL0=wants~27:36 bareL0=was~0:45
bareL0=washer~24:28 bareL0=washing~32:49 bareL0=water~0:-10,5:35,82:71 bareL0=wc~0:-28
bareL0=we~0:-66,80:54 bareL0=we're~80:30 bareL0=well~0:-16,28:34,89:29 bareL0=when~0:62
bareL0=with~4:22,80:19 bareL0=yard~1:38 bareL0=zones~23:41 bareL0=|~0:48,1:25,24:25,28:-34,80:52
bareL1=(~3:46,80:-31 bareL1=,~1:-32,4:26,24:35,30:47,31:-46,32:30,46:59,70:22
bareL1=.~29:45,31:38,32:41,54:41,62:51,70:29 bareL1=0~0:-34,4:-43,24:57,31:-25,82:42,89:42
bareL1=1~0:-9,15:50,54:44,80:51,89:43 bareL1=2~0:-15,15:75,31:47,81:13
bareL1=3~0:-32,3:-43,80:39,82:50 bareL1=4~1:49 bareL1=5~38:36,80:24,89:41 bareL1=6~0:35
bareL1=8~1:-31 bareL1=9~5:44 bareL1=:~0:-23,1:-49,24:54,31:72,80:22 bareL1=a~69:48
bareL1=about~0:54 bareL1=above~0:-28,80:30 bareL1=adults~26:38,31:-27 bareL1=and~0:-19,80:31,81:56
bareL1=are~0:-53,1:-31,5:41,27:36 bareL1=at~27:48,28:-14,81:47,89:55,94:49 bareL1=back~0:38
bareL1=bar~26:29,54:51,80:-22 bareL1=bathrooms~31:-31 bareL1=both~0:-29 bareL1=but~30:65
bareL1=by~31:53 bareL1=cabin~0:84,80:-35 bareL1=cows~3:53 bareL1=down~0:-33,26:35 bareL1=drip~22:42
bareL1=each~80:29 bareL1=end~80:29 bareL1=family~26:24,80:-37 bareL1=feet~22:62
bareL1=fifty~0:-41,26:37 bareL1=for~38:41 bareL1=four~0:53,23:29 bareL1=ft~80:24,81:-34
bareL1=gallon~5:26 bareL1=generator~80:40 bareL1=ground~46:56 bareL1=guests~0:39,80:-30
bareL1=half~0:40 bareL1=has~0:41 bareL1=have~0:40,26:-34 bareL1=head~0:65,80:-18 bareL1=hello~44:24
bareL1=higher~0:28 bareL1=horses~0:-32,81:35 bareL1=house~3:37,28:30 bareL1=how~80:34
bareL1=i~0:-40,80:19 bareL1=in~1:38,3:-42 bareL1=inch~27:35 bareL1=inside~31:41
bareL1=is~0:-29,26:42,31:25,80:46 bareL1=its~80:27 bareL1=kids~26:43 bareL1=kitchen~0:-50,80:38
bareL1=latitude~0:37 bareL1=lines~15:23 bareL1=m~0:-33,31:35,81:-38 bareL1=machine~0:22
bareL1=many~80:28 bareL1=meters~80:-19 bareL1=morning~4:26 bareL1=no~28:29,80:26 bareL1=of~0:-55
bareL1=off~28:48 bareL1=on~0:72,26:-37,80:-31 bareL1=one~0:30,31:-39 bareL1=out~0:-37
bareL1=over~26:31 bareL1=panels~44:31 bareL1=persons~26:39 bareL1=pipe~0:-40 bareL1=please~0:48
bareL1=poly~0:48,80:-21 bareL1=power~0:29,80:-29 bareL1=pump~0:42 bareL1=same~27:38
bareL1=shower~28:25 bareL1=showers~26:-32,27:23,28:31,31:59 bareL1=sink~0:-40,32:28
bareL1=sinks~0:-62,24:50,31:12,32:55 bareL1=small~0:56 bareL1=sprinklers~29:57 bareL1=staff~80:31
bareL1=stock~1:40 bareL1=strings~0:-29,80:28 bareL1=submersible~0:28,80:-29 bareL1=switch~53:33
bareL1=the~0:-73,1:-29,16:51,25:62,27:52,29:25,45:57,53:44 bareL1=there~27:42 bareL1=three~26:47
bareL1=time~31:40 bareL1=together~3:37 bareL1=toilet~28:36 bareL1=toilets~28:28,31:-27
bareL1=two~4:19,32:-45,80:39 bareL1=up~80:-29 bareL1=use~27:35 bareL1=wc~0:23
bareL1=when~28:-37,80:46 bareL1=which~0:-30 bareL1=with~3:41 bareL1=|~26:25,31:37,46:-36,81:24
bareL2=)~26:-24,32:42 bareL2=,~0:-42,1:55,22:-44,28:26,29:71,31:24,70:29,81:22,94:63
bareL2=.~0:-28,1:-29,15:47,22:50,27:33,28:23,29:47,30:-57,32:45,36:-40,37:53,44:-41,61:48,80:52,89:47
bareL2=0~1:36,2:-57,3:43,16:49,28:33,81:70 bareL2=1~1:60,24:54,28:37,29:42,32:23,46:-25,52:46,69:23
bareL2=2~15:52,22:51,29:40,31:61 bareL2=3~24:-42,28:50,46:46,80:40,81:-36
bareL2=4~1:-31,31:-37,44:49,46:41,61:47 bareL2=5~0:26,4:29,27:18,80:33,81:35 bareL2=6~15:60,26:52
bareL2=7~80:60 bareL2=8~0:-22,25:50,62:39 bareL2=9~31:-35 bareL2=:~0:-27,1:-43,26:39,28:41,32:35
bareL2=above~0:-43,23:65,80:52 bareL2=adults~31:43 bareL2=again~80:33 bareL2=ah~0:-40,38:42
bareL2=away~0:83,31:-36 bareL2=back~0:38 bareL2=bar~26:-51,53:58,80:51 bareL2=barn~0:-43,3:42
bareL2=bathrooms~0:-45,31:43 bareL2=baths~0:49 bareL2=booster~0:50 bareL2=but~0:-37 bareL2=buy~0:26
bareL2=by~0:-9,62:31 bareL2=cabin~0:-34,28:49 bareL2=children~0:52 bareL2=cistern~0:32
bareL2=comes~0:44 bareL2=cut~0:-41 bareL2=cuts~80:33 bareL2=dear~0:42 bareL2=deep~0:-28
bareL2=do~27:36 bareL2=down~25:40,26:-46 bareL2=drip~23:30 bareL2=drop~0:33 bareL2=each~80:37
bareL2=everything~0:-37 bareL2=feet~0:-30 bareL2=field~80:33 bareL2=fills~80:33
bareL2=five~0:-52,3:46,32:39 bareL2=float~0:-40,1:53 bareL2=four~31:42 bareL2=from~0:34
bareL2=full~0:29 bareL2=gal~31:-36,32:33,80:25 bareL2=gallon~0:30 bareL2=generator~0:-41,28:23
bareL2=goats~4:60 bareL2=goes~0:43 bareL2=got~0:87,80:-60 bareL2=gpm~0:-31,80:16
bareL2=grid~0:27,80:-37 bareL2=grown~0:37 bareL2=hav~0:38 bareL2=hdpe~0:-39 bareL2=hello~29:27
bareL2=helo~0:55 bareL2=high~0:-57,89:31 bareL2=higher~0:-62,80:28 bareL2=horses~3:45
bareL2=hose~0:-24,70:48 bareL2=hoses~0:-28,3:36 bareL2=hot~0:35 bareL2=hour~0:-22
bareL2=house~80:51 bareL2=how~0:-39 bareL2=hundred~0:69 bareL2=husband~80:27 bareL2=i'd~80:60
bareL2=inch~0:-44,1:60,28:54 bareL2=it's~0:46,28:-38 bareL2=its~0:31 bareL2=jet~0:38
bareL2=just~0:42 bareL2=km~0:-39,81:37 bareL2=l~0:-85,3:30,24:47,53:43,61:50 bareL2=lawn~30:65
bareL2=level~80:-25 bareL2=line~0:36,69:35 bareL2=litre~0:-46,80:47 bareL2=litres~81:65
bareL2=live~0:-34 bareL2=lying~0:49 bareL2=m~0:-57,22:19,32:24 bareL2=mains~0:-31,26:21
bareL2=makes~0:-33 bareL2=maybe~0:-46 bareL2=me~0:15 bareL2=meter~0:77 bareL2=meters~0:71
bareL2=metres~0:-37,80:27 bareL2=min~0:-39 bareL2=mm~3:26,16:46,22:44 bareL2=moment~0:37
bareL2=morning~0:-42,24:27 bareL2=mppt~38:42 bareL2=need~0:65 bareL2=north~45:63
bareL2=nothing~0:-37 bareL2=one~80:46 bareL2=only~28:37 bareL2=out~0:-34,80:27 bareL2=outlets~27:40
bareL2=over~0:21 bareL2=panels~0:-58,26:31,46:36 bareL2=pe~0:-62,27:56
bareL2=people~0:-38,26:66,28:-24,31:51,32:31 bareL2=persons~26:-32,31:46 bareL2=pipe~16:50
bareL2=poly~24:50,31:-27 bareL2=pressure~80:28 bareL2=promised~0:45 bareL2=psi~28:10
bareL2=pump~1:-53,26:25,30:58,32:48,61:48,70:62,80:-31,81:-26,94:50 bareL2=push~26:24
bareL2=quarter~0:-41,23:31 bareL2=rain~62:45 bareL2=read~0:31 bareL2=reference~0:22
bareL2=roof~62:35 bareL2=run~0:27 bareL2=runs~80:33 bareL2=same~80:-33 bareL2=says~0:-40
bareL2=series~0:-25,80:29 bareL2=set~0:32 bareL2=shed~0:-53 bareL2=shower~4:42,80:46
bareL2=showers~26:-52,28:33,31:37,32:66 bareL2=sink~80:48 bareL2=sinks~80:59 bareL2=sir~0:32
bareL2=six~27:36 bareL2=smal~0:47 bareL2=sorry~0:43 bareL2=speed~0:50 bareL2=sprinklers~30:65
bareL2=stable~0:36 bareL2=starts~0:14,28:-39,80:26 bareL2=stops~0:40 bareL2=sub~89:30
bareL2=suction~69:52,70:30 bareL2=switch~80:41 bareL2=tank~0:-32,4:35,24:38,31:38,80:76,89:26
bareL2=team~80:-27 bareL2=there~1:-45,26:36 bareL2=there's~0:-40 bareL2=three~81:28
bareL2=time~0:39 bareL2=times~0:-38 bareL2=toilet~0:28,24:32,80:-21 bareL2=toilets~0:28
bareL2=top~5:32 bareL2=trough~0:22 bareL2=troughs~3:29 bareL2=two~4:42 bareL2=up~0:36,80:-29
bareL2=use~80:22 bareL2=uses~0:-49 bareL2=v~0:49 bareL2=volt~0:-50,80:37
bareL2=w~0:-69,1:38,26:27,44:50 bareL2=water~0:37,25:45,28:-39,56:72,70:58 bareL2=way~26:28
bareL2=we're~3:37 bareL2=we've~0:27 bareL2=well~82:32 bareL2=when~0:91,28:-46 bareL2=which~0:-45
bareL2=who~0:-30,31:22 bareL2=wife~0:-30 bareL2=will~0:-30 bareL2=would~4:41,26:24
bareL2=write~0:-11 bareL2=x~26:25 bareL2=yard~0:-25,81:26 bareL2=yield~80:41 bareL2=you~27:38
bareL2=yurt~0:-58 bareL2=|~0:36,3:50,24:38,31:44,81:-32
bareM=cistern~1:-39,3:-36,28:30,62:40,80:38,81:-37 bareM=creek~81:23
bareM=drip~0:67,1:-39,15:82,22:104,23:104,26:-29,28:-39,31:-41
bareM=pump~2:15,3:35,5:47,24:24,28:52,30:37,52:42,61:26,70:46,80:20,81:56 bareM=roof~0:26,62:107
bareM=spring~0:39,3:50,5:32,16:66,28:19,29:-31,44:26,80:52
bareM=tank~1:55,15:-55,16:20,22:25,26:59,31:61,32:47,36:-40,37:47,53:-30,80:29,89:42
bareM=well~0:27,1:41,4:59,5:13,27:44,80:26,89:48 bareR0=(~0:-35,80:36 bareR0=)~0:94,80:-37
bareR0=,~0:-34,1:29,2:43,26:52,27:-33,28:26,31:74,54:41,69:42
bareR0=.~0:-69,1:22,3:40,5:-42,27:-48,28:42,32:19,36:38,37:26,80:38,82:23 bareR0=0~0:65
bareR0=1~1:-28,31:69,32:-27 bareR0=2~0:66,1:-35,80:-35 bareR0=3~0:58,26:29 bareR0=4~44:33,80:47
bareR0=5~0:61,44:45 bareR0=6~0:28,3:38 bareR0=8~3:44 bareR0=:~1:26 bareR0=?~0:53
bareR0=a~23:58,26:59,38:40 bareR0=adults~0:24 bareR0=all~0:-13,81:25 bareR0=an~61:58
bareR0=and~3:21,22:44,26:31,27:31,28:20,81:-35 bareR0=are~0:26
bareR0=at~23:131,25:44,27:60,30:43,53:36 bareR0=automatic~81:32 bareR0=basins~26:-23,28:144,31:-36
bareR0=bathroom~0:89,26:-34 bareR0=bathrooms~26:62,80:-39 bareR0=baths~0:31 bareR0=beef~1:73
bareR0=bends~69:66 bareR0=bibs~24:43 bareR0=boys~0:45 bareR0=break~16:64 bareR0=bulls~1:49
bareR0=cabins~26:52 bareR0=calf~0:-29,5:63 bareR0=calves~5:67 bareR0=campers~80:40
bareR0=cattle~1:85 bareR0=chickens~0:-42,4:147 bareR0=cow~0:-37,5:62
bareR0=cows~0:-51,1:72,2:141,3:-39,5:64,80:-35 bareR0=dairy~2:45 bareR0=drink~1:48
bareR0=drinkers~0:-52,81:152 bareR0=drip~22:45 bareR0=dry~0:-27,1:96,62:77 bareR0=elbows~69:65
bareR0=ewes~3:142 bareR0=float~0:-30,81:84 bareR0=floats~81:29 bareR0=foot~0:-33,70:99
bareR0=for~0:-43,24:60,81:37 bareR0=garden~24:32 bareR0=go~0:31 bareR0=goats~0:-63,3:204,80:-38
bareR0=guests~80:64 bareR0=have~2:26 bareR0=head~1:66 bareR0=heifers~1:96
bareR0=hens~0:-49,1:-38,3:-33,4:232 bareR0=horses~0:-22,1:206 bareR0=hose~0:-64,24:200
bareR0=hoses~0:-57,24:172,25:78 bareR0=hour~0:-51,61:104 bareR0=house~0:-59,80:32
bareR0=houses~0:64 bareR0=identical~0:-38,52:119 bareR0=in~0:-80,2:36,44:51,52:26,80:83
bareR0=is~0:41 bareR0=it~0:56 bareR0=joined~0:14 bareR0=kids~0:52 bareR0=kitchen~0:45
bareR0=laying~4:31 bareR0=line~0:38 bareR0=machine~31:-33,32:71 bareR0=machines~26:42,32:59
bareR0=may~27:47 bareR0=milk~2:120 bareR0=milking~2:45 bareR0=months~62:78 bareR0=n~0:-60,36:108
bareR0=now~0:-40,80:33 bareR0=o'clock~0:48 bareR0=of~27:45,44:42,46:48,80:48 bareR0=on~0:27
bareR0=once~0:-39,25:55,27:36 bareR0=one~15:47,26:30,31:37,69:30,80:65 bareR0=out~38:42,53:33
bareR0=outside~24:50 bareR0=pairs~0:-49,5:119 bareR0=panels~0:50,44:50 bareR0=people~26:-37,80:205
bareR0=per~61:44 bareR0=person~0:-31,80:104 bareR0=persons~80:132 bareR0=phase~0:31
bareR0=pieces~29:29 bareR0=pigs~0:44 bareR0=pipe~0:56 bareR0=plus~0:32 bareR0=poly~0:37
bareR0=pressure~0:-39,16:99 bareR0=pumps~52:77 bareR0=pupils~80:61 bareR0=rooms~26:41
bareR0=rows~0:30 bareR0=run~15:26,27:81 bareR0=series~44:37 bareR0=sheep~0:-19,3:128
bareR0=shower~0:-43,26:234,27:50,28:-32,80:-44 bareR0=showers~0:-47,26:255,27:110,28:-3,80:-20
bareR0=sink~0:-56,28:250,31:-75 bareR0=sinks~0:-33,28:212,31:-16,80:-24 bareR0=so~0:74
bareR0=south~37:56 bareR0=spring~0:33 bareR0=sprinkler~29:29 bareR0=sprinklers~0:-17,29:171,30:80
bareR0=starts~61:86 bareR0=steers~0:-39,1:91 bareR0=stock~1:47 bareR0=string~0:-31,46:59
bareR0=strings~0:-21,46:76 bareR0=tanks~0:24,16:62 bareR0=tap~0:-28,24:50 bareR0=th~45:63
bareR0=the~27:35,28:38,31:-33,81:-32 bareR0=them~3:36 bareR0=three~46:17 bareR0=time~23:45
bareR0=times~0:32 bareR0=together~27:50 bareR0=toilet~0:-30,31:136
bareR0=toilets~0:-54,26:-25,31:237,80:-45 bareR0=trees~0:26 bareR0=trough~81:103
bareR0=troughs~0:-49,1:-29,81:203 bareR0=two~0:31,46:-49,80:51 bareR0=us~0:-16,80:143
bareR0=valve~0:-44,70:94 bareR0=was~0:33 bareR0=wash~0:-24,28:55 bareR0=washer~0:-29,28:-20,32:74
bareR0=washing~28:-36,32:120 bareR0=waterers~81:46 bareR0=wc~31:89 bareR0=we~0:-67,80:29
bareR0=well~0:53,28:-28 bareR0=what~0:-38 bareR0=with~0:-36,1:-38,5:94,81:68 bareR0=x~0:29
bareR0=zones~0:-59,15:102,22:83,80:-42 bareR0=|~32:65,80:37 bareR1=(~26:36 bareR1=)~28:50
bareR1=,~52:25,80:38,81:26,82:47
bareR1=.~0:-67,1:45,2:-31,4:39,5:40,23:24,27:50,31:45,53:58,54:42,81:38 bareR1=0~2:43,44:42,80:39
bareR1=1~0:-35,2:12,24:-57,28:48,31:-16 bareR1=2~1:46,28:-37,29:18 bareR1=3~0:58,1:-24,53:41
bareR1=5~0:-42,3:32 bareR1=6~0:38 bareR1=7~0:30,80:-55 bareR1=8~0:-34 bareR1=9~2:51
bareR1=?~0:-60,26:57,80:41 bareR1=a~28:43 bareR1=about~80:29 bareR1=and~0:19,5:30 bareR1=are~28:28
bareR1=at~0:-14,4:-34,5:43,22:31,80:56 bareR1=automatic~1:24 bareR1=basins~26:42,28:-33,31:30
bareR1=bathrooms~0:-28,80:27 bareR1=be~0:-33 bareR1=bore~3:45 bareR1=both~24:42 bareR1=bottom~0:28
bareR1=but~28:41 bareR1=chickens~0:-36 bareR1=children~0:40,80:-32 bareR1=cistern~0:-39,62:33
bareR1=cows~0:-48,1:39,2:25,3:31 bareR1=drinkers~1:35 bareR1=dry~2:73 bareR1=each~0:-35,26:28
bareR1=ewes~0:-39 bareR1=fine~26:51 bareR1=float~1:42,81:22 bareR1=foot~0:-40,5:56,69:72
bareR1=from~0:-45,4:28 bareR1=ft~0:43 bareR1=garden~0:-47 bareR1=goats~80:42 bareR1=guests~0:27
bareR1=has~0:-45 bareR1=have~0:-60 bareR1=hens~1:64,3:45 bareR1=horses~0:54,1:-59,4:44
bareR1=hose~27:38 bareR1=hoses~31:29 bareR1=house~0:25,80:-25 bareR1=i~22:22,26:24
bareR1=in~44:36,52:30,80:-56 bareR1=is~0:-61,62:28,94:60 bareR1=it~26:37 bareR1=it's~0:32
bareR1=its~26:27 bareR1=kids~80:-27 bareR1=kitchen~28:-51,31:20 bareR1=level~0:-38
bareR1=litres~80:45 bareR1=loo~26:39 bareR1=machine~31:54 bareR1=machines~28:31 bareR1=mains~24:48
bareR1=my~0:-25 bareR1=no~25:43 bareR1=not~29:43 bareR1=of~0:20,5:28 bareR1=on~0:-62,1:29,25:52
bareR1=once~27:33 bareR1=one~0:20 bareR1=open~0:-31,29:26 bareR1=other~0:-28,15:40,28:32
bareR1=outhouse~26:35,28:52,31:-37 bareR1=own~26:36 bareR1=panels~44:37 bareR1=parallel~52:65
bareR1=pasture~5:28 bareR1=plot~0:34 bareR1=power~0:-21,28:21 bareR1=pressure~0:45
bareR1=pump~0:-49,25:74,28:-31,30:45 bareR1=run~22:35 bareR1=same~30:25 bareR1=says~61:30
bareR1=sheep~1:33 bareR1=shower~26:-34,28:84,31:38,80:20 bareR1=showers~26:-47,31:44,80:61
bareR1=sink~26:46,28:-116,31:30,80:26 bareR1=sinks~0:45,26:20,28:-57,31:28 bareR1=spring~0:-53,3:33
bareR1=sprinklers~24:64 bareR1=staff~0:24 bareR1=tank~0:39,80:-51
bareR1=the~0:-57,3:44,4:23,24:43,31:44,81:29 bareR1=there~0:35 bareR1=they~0:-33,29:20
bareR1=three~0:75 bareR1=time~23:18,27:33,30:55 bareR1=toddler~0:56,80:-32
bareR1=toilet~28:38,31:-42 bareR1=toilets~26:53,28:41,31:-53 bareR1=too~0:41 bareR1=trough~0:-58
bareR1=troughs~1:50 bareR1=two~22:46,26:-23 bareR1=us~31:19 bareR1=valve~69:68 bareR1=w~0:20,44:54
bareR1=wash~31:37 bareR1=washer~26:-39,28:47 bareR1=washing~28:19,31:45 bareR1=well~0:-56,80:20
bareR1=what~0:46 bareR1=when~0:59,80:-49 bareR1=with~0:-25,26:30 bareR1=would~80:38
bareR1=|~4:46,28:41 bareR2=)~0:85,24:46,28:-39
bareR2=,~0:22,1:-56,2:40,24:17,28:-43,31:-37,44:21,46:64,56:55,80:32,81:-46
bareR2=.~1:1,5:47,16:52,25:67,26:31,31:32,44:-36,81:-37 bareR2=0~80:51,81:36
bareR2=1~1:-44,3:66,15:43,31:44,46:51 bareR2=2~1:-34,26:-43,28:37,32:-37,80:43
bareR2=3~0:67,28:29,31:-45,80:-34 bareR2=4~1:-34,3:-24,44:41,69:45,81:44
bareR2=5~5:58,25:65,26:-26,31:-57 bareR2=6~24:31 bareR2=:~0:62,26:-40,28:62,31:-45
bareR2=?~62:49,80:20 bareR2=above~0:-38 bareR2=all~80:-25 bareR2=as~0:14,32:41
bareR2=bar~0:-32,53:45 bareR2=barn~1:27 bareR2=basins~0:35 bareR2=bucket~0:55 bareR2=by~0:-46
bareR2=calves~2:16 bareR2=daily~80:26 bareR2=day~0:-56,80:73 bareR2=do~4:38 bareR2=down~81:46
bareR2=drink~3:22 bareR2=each~52:42,80:33 bareR2=evening~0:36 bareR2=facing~44:30 bareR2=four~0:-49
bareR2=from~0:41,80:-55 bareR2=ft~0:14,4:33 bareR2=garden~0:35 bareR2=goats~0:-24,2:38,80:21
bareR2=gpm~0:-48 bareR2=heifers~0:-29,2:25 bareR2=hens~0:-69,3:38 bareR2=horses~5:35
bareR2=hose~0:-61,28:33 bareR2=house~4:22,80:-47 bareR2=how~80:43 bareR2=inch~0:31
bareR2=kitchen~0:-35,26:68,31:16 bareR2=l~3:37 bareR2=line~23:56 bareR2=litres~80:85
bareR2=m~3:22,80:44 bareR2=machine~31:34 bareR2=machines~31:35 bareR2=mains~28:38 bareR2=mm~0:-44
bareR2=no~28:49 bareR2=none~1:42 bareR2=off~1:23 bareR2=one~0:58,44:51 bareR2=ones~2:49
bareR2=only~27:39 bareR2=open~0:-42 bareR2=other~0:39 bareR2=outside~31:34 bareR2=parallel~46:71
bareR2=people~0:-39,26:56 bareR2=per~0:-26,80:46 bareR2=plus~1:27 bareR2=power~0:-35,31:68
bareR2=pressure~15:42,32:42 bareR2=pump~0:46,4:-42,28:-50 bareR2=rise~1:18 bareR2=roof~0:27
bareR2=run~24:39,80:-53 bareR2=same~0:-53,27:49,29:68 bareR2=see~26:34 bareR2=series~0:-41,44:112
bareR2=seven~0:-32,28:31 bareR2=shower~26:31,80:17 bareR2=showers~28:23 bareR2=since~0:69
bareR2=sinks~80:27 bareR2=six~0:54 bareR2=solar~0:33 bareR2=spring~0:31 bareR2=string~0:-27,44:49
bareR2=strings~0:30 bareR2=tank~1:-34,26:40,89:55 bareR2=tap~26:34 bareR2=them~0:-29
bareR2=then~0:36 bareR2=there~27:36 bareR2=there's~0:-40 bareR2=three~0:46 bareR2=tilted~44:32
bareR2=time~0:-53,22:90,26:-34,27:40,29:35 bareR2=toilet~0:23
bareR2=toilets~0:32,26:-26,27:68,28:-32,80:58 bareR2=trough~3:36 bareR2=under~0:-38
bareR2=until~26:48 bareR2=up~0:34 bareR2=upstairs~80:33 bareR2=us~28:30 bareR2=use~0:33
bareR2=used~0:29 bareR2=v~80:35 bareR2=washer~26:35 bareR2=washing~0:-49,31:32
bareR2=water~3:14,26:-38 bareR2=week~0:-26,80:45 bareR2=well~0:-46,5:42,80:26 bareR2=what~0:67
bareR2=which~0:-69 bareR2=will~31:73 bareR2=without~0:-36,27:45
bareR2=|~0:22,4:33,26:37,27:49,80:-61 bareT=beds.area~0:-45,4:35,15:71,22:112,23:110,26:-24
bareT=power.amps~46:38 bareT=power.cable~44:77,46:37,80:-33 bareT=power.capacity~28:41
bareT=power.controller~0:-46,38:40,46:45 bareT=power.facing~44:85,80:45
bareT=power.limit~38:41,44:20,46:49,80:-25 bareT=power.open_voltage~0:47,3:-61,44:53,46:36
bareT=power.panel~44:121,46:97,81:-42 bareT=power.series~44:-165,46:77,80:54 bareT=power.shade~3:7
bareT=power.source~1:28,3:30,5:40,24:13,37:46,44:50,46:54,70:-44,80:-36,81:45
bareT=power.strings~0:85,1:37,44:64,46:-91 bareT=power.tilt~0:-38,37:37,38:38,44:33
bareT=power.voltage~3:-53,24:33,28:80,36:52,46:71
bareT=pump.control~1:-26,3:-59,24:50,32:37,52:63,61:52 bareT=pump.count~0:62,61:50
bareT=pump.cut_in~0:31,28:-39,32:36,54:44,61:49 bareT=pump.cut_out~53:51,61:46,80:39
bareT=pump.dry_run~80:49
bareT=pump.height~1:23,2:54,3:16,4:-31,28:-3,44:63,46:32,81:41,82:47,89:36,94:68
bareT=pump.most_flow~0:-61 bareT=pump.placement~0:29,3:-21,5:38,24:42,30:19,32:36,46:35,69:39,70:36
bareT=pump.present~0:-51,16:45,24:28,25:45,26:20,31:38,32:37,81:27
bareT=pump.set~0:32,1:-39,25:79,31:37,80:-24 bareT=pump.starts~0:-27,52:36
bareT=pump.works~0:-31,80:87 bareT=store.days~1:49 bareT=store.fills~62:44
bareT=store.hours~0:34,80:-41
bareT=store.volume~1:-54,3:-27,27:56,28:31,29:-35,46:-43,52:55,61:30,62:31
bareT=tank.level~0:23,22:39,27:23,44:55 bareT=tank.volume~3:24,37:44,44:51
bareT=water.kind~1:63,2:55,3:77,4:39,5:27,24:56,25:56,27:34,29:33,30:32,32:37,44:59,54:-37,70:21,81:58
bareT=water.level~1:-60,3:50,4:37,69:62,70:89
bareT=water.yield~0:30,2:51,16:27,27:41,28:41,29:-30,31:78,80:83,81:58
bareT=way.climb~0:40,1:39,2:40,4:20,5:18,16:44,26:42,29:23,30:70,31:58,44:-40,56:64,81:26,89:-28
bareT=way.length~1:45,2:24,4:43,22:57,23:52,24:20,25:43,27:29,28:39,29:34,30:44,31:43,52:23,81:82
bareT=way.pipe~1:40,2:33,3:26,5:73,16:34,22:63,23:49,27:39,29:41,31:-44,32:36,44:-43,52:27,53:-36,80:24,81:66
bareT=well.bore~0:40,80:45 bareT=well.depth~4:60,26:20,29:-32,31:48,56:80,80:60,82:39
bareT=well.static~0:29,29:48,31:46 bareT=well.tested~80:47 barea=~31:46,36:47 barea=,_each~0:29
barea=,_sinks~26:28,28:-38,31:35 barea=,_washing~26:27 barea=.~89:29 barea=adults_,~80:48
barea=adults_and~0:58,80:-33 barea=at_a~23:45 barea=basins_,~0:54,28:31,31:-27 barea=basins_.~28:51
barea=bathrooms_with~26:49 barea=bends_,~69:58 barea=boys_.~0:33 barea=break_pressure~16:64
barea=cow_calf~0:-29,5:63 barea=cows_and~2:27 barea=cows_in~2:42 barea=cows_with~5:65
barea=dairy_cows~2:45 barea=dry_cows~0:48 barea=dry_months~62:78 barea=elbows_.~69:34
barea=ewes_.~3:33 barea=foot_valve~0:-33,70:99 barea=goats_,~3:73 barea=goats_.~3:61
barea=goats_and~3:47 barea=head_of~1:36 barea=heifers_,~1:38 barea=hens_,~4:50 barea=hens_.~4:20
barea=hens_and~4:37 barea=horses_,~1:41 barea=horses_.~1:35 barea=horses_and~1:63
barea=hose_.~24:61 barea=hose_bibs~24:43 barea=hose_for~24:29 barea=hoses_at~25:57
barea=houses_,~0:50 barea=identical_pumps~0:-27,52:69 barea=in_series~44:45
barea=in_the~0:-45,80:62 barea=kids_and~80:28 barea=kitchen_sink~28:36 barea=laying_hens~4:31
barea=milking_cows~2:45 barea=n_.~0:-34,36:77 barea=of_them~3:40 barea=of_us~0:-10,80:143
barea=panels_of~44:60 barea=people_,~80:80 barea=people_.~80:92 barea=people_and~0:-29,80:38
barea=people_|~0:-41,80:45 barea=persons_,~0:-31,80:61 barea=persons_.~0:-40,80:74
barea=sheep_and~3:43 barea=shower_,~0:-47,26:140,31:-36 barea=shower_.~0:-32,26:81
barea=shower_1~26:79 barea=shower_and~0:-45,26:23,27:60 barea=showers_,~0:-39,26:158,80:-32
barea=showers_.~0:-54,26:139,80:-30 barea=showers_and~26:48 barea=showers_are~0:41
barea=showers_at~27:51 barea=showers_run~27:66 barea=sink_,~0:-27,28:101 barea=sink_.~0:-39,28:81
barea=sink_1~28:25 barea=sink_and~28:45 barea=sinks_,~0:30,26:-35,28:89,31:-47
barea=sinks_.~0:-21,28:76 barea=sinks_and~28:39 barea=south_.~37:56 barea=sprinklers_at~30:28
barea=starts_an~61:60 barea=starts_per~61:29 barea=strings_of~0:-23,46:37
barea=toilet_,~26:-31,31:85 barea=toilet_.~31:81 barea=toilets_,~0:-14,26:-21,28:-25,31:119
barea=toilets_.~31:83 barea=toilets_and~31:38 barea=troughs_,~81:52 barea=troughs_.~81:29
barea=wash_basins~28:27 barea=washer_.~32:53 barea=washing_machine~31:-27,32:97
barea=washing_machines~32:82 barea=wc_,~31:43 barea=zones_.~0:-38,15:56 bareb=~0:68
bareb=,_with~0:-43 bareb=._it's~0:33 bareb=._we're~80:39 bareb=1_sink~28:40 bareb=2_showers~28:41
bareb=adults_and~0:26 bareb=between_the~0:25 bareb=enough_for~0:-62
bareb=family_of~0:-31,26:-21,80:98 bareb=ft_,~0:-50 bareb=household_of~0:-29,80:54
bareb=i_have~29:28 bareb=just_the~0:-35,26:36 bareb=no_.~0:33 bareb=panels_:~0:36
bareb=people_:~26:-47,80:124 bareb=pipe_,~0:30 bareb=pump_.~28:40 bareb=shower_,~31:72
bareb=shower_and~28:36 bareb=showers_,~26:-62,28:18,31:36 bareb=showers_:~26:123,31:-47
bareb=sink_,~28:-29 bareb=sink_.~0:46,80:-35 bareb=sinks_,~28:-28,31:41 bareb=sinks_:~28:76
bareb=strings_of~44:31 bareb=tank_.~0:-23,5:31 bareb=there_are~0:12,22:52,26:59,80:-24
bareb=there_is~0:-56 bareb=to_water~5:32 bareb=toilets_,~28:37,31:-51,32:30 bareb=up_to~80:40
bareb=us_,~26:22 bareb=valve_and~69:38 bareb=w_,~44:40 bareb=water_at~82:39
bareb=we_are~0:-30,80:94 bareb=we_have~26:38 bareb=we_milk~2:25 bareb=well_is~89:31 chargeC=,~40:46
chargeC=:~40:24 chargeC=battery~0:23,40:28 chargeC=v~40:36 chargeL0=2~0:32 chargeL0=a~40:27
chargeL0=and~0:38 chargeL0=battery~40:35 chargeL0=is~40:33 chargeL0=v~0:28 chargeL1=1~0:28
chargeL1=battery~0:33 chargeL1=is~0:36 chargeM=pump~40:71 chargeR0=.~40:63 chargeR0=battery~40:39
chargeT=power.battery~40:69 chargeT=power.panel~40:53 chargeT=power.source~40:55
chargeT=power.voltage~40:82 chargeT=water.kind~40:38 chargeT=way.length~40:31 chargea=.~0:34
currentC=,~38:39 currentC=0~38:30 currentC=controller~38:42 currentL0=,~38:38 currentL1=0~38:42
currentL2=,~38:30 currentM=pump~38:43 currentR0=.~38:30 currentR2=0~38:33
currentT=power.battery~38:62 currentT=power.cable~38:30 currentT=power.capacity~38:62
currentT=power.controller~38:66 currentT=power.limit~38:35 currentT=power.panel~38:46
currentT=power.series~38:35 currentT=power.source~38:46 currentT=power.voltage~38:42
currentT=pump.placement~38:39 currentT=water.kind~38:19 dailyC=,~74:36 dailyC=2~0:50 dailyC=3~75:27
dailyC=consumption~75:31 dailyC=each~0:-30,74:-41,75:102 dailyC=garden~76:45 dailyC=need~74:32
dailyC=says~0:-38,74:57 dailyC=takes~76:29 dailyC=two~74:45 dailyC=us~74:36 dailyC=use~0:-36,74:70
dailyC=uses~75:42 dailyL0=,~74:50 dailyL0=.~74:30 dailyL0=about~74:52 dailyL0=each~75:60
dailyL0=is~74:33 dailyL0=need~74:32 dailyL0=says~0:-38,74:57 dailyL0=takes~76:29
dailyL0=the~74:24,76:31 dailyL0=use~74:82 dailyL0=uses~75:42 dailyL0=we~74:36 dailyL1=.~75:29
dailyL1=2~0:49 dailyL1=a~76:18 dailyL1=each~75:43 dailyL1=in~0:-26,75:33,76:27 dailyL1=two~74:41
dailyL2=,~74:24 dailyL2=.~76:38 dailyL2=0~76:54 dailyL2=3~0:30 dailyL2=4~76:21 dailyL2=6~0:41
dailyL2=m~76:19 dailyL2=mm~0:38 dailyL2=pump~74:32 dailyL2=water~74:31 dailyM=drip~76:42
dailyM=pump~74:38,76:42 dailyM=tank~76:27 dailyM=well~74:38 dailyR0=,~0:31
dailyR0=.~0:50,74:73,75:75 dailyR0=by~74:47 dailyR0=covers~0:23 dailyR0=each~0:58 dailyR0=in~76:22
dailyR0=is~0:41 dailyR0=it~0:38 dailyR0=meter~74:30 dailyR0=of~76:32 dailyR0=the~74:30,76:31
dailyR1=,~74:37 dailyR1=.~74:18,76:41 dailyR1=and~74:35 dailyR1=of~0:24 dailyR1=the~0:20
dailyR2=.~0:35 dailyR2=0~74:27 dailyR2=2~76:24 dailyR2=?~74:35 dailyT=beds.area~76:42
dailyT=power.battery~74:36 dailyT=power.capacity~74:36 dailyT=power.source~0:40,74:28
dailyT=power.voltage~0:23 dailyT=pump.height~0:40 dailyT=store.fills~76:23
dailyT=store.reserve~76:40 dailyT=store.volume~76:44 dailyT=tank.level~0:63
dailyT=tank.volume~75:45 dailyT=water.kind~74:55,75:55,76:38 dailyT=water.level~74:25
dailyT=way.climb~0:-29,74:21,76:36 dailyT=way.length~76:32 dailyT=well.depth~74:34
dailya=.~74:35,75:35 dailya=by_the~74:32 dailya=covers_it~0:23 dailya=each_.~0:58
dailya=in_the~76:25 eachC=,~75:53 eachC=0~0:31 eachC=2~0:33 eachL0=,~75:44 eachL0=at~0:24
eachL1=2~0:33 eachL1=a~75:40 eachL1=for~0:32 eachL2=,~75:39 eachL2=.~75:46 eachM=pump~75:67
eachM=spring~75:56 eachM=tank~75:53 eachR0=.~75:66 eachT=power.source~75:41
eachT=pump.present~75:28 eachT=tank.volume~75:38 eachT=water.kind~75:88 eachT=water.yield~75:44
eachT=way.climb~75:42 eachT=way.length~75:51 eachT=way.pipe~75:50 flowC=,~7:55,57:17,77:61
flowC=0~7:38,84:41 flowC=1~57:38 flowC=2~7:43,57:30 flowC=3~95:49 flowC=5~8:26 flowC=9~0:-35,84:27
flowC=:~0:59,93:20,95:79 flowC=after~93:19 flowC=all~77:40 flowC=apart~7:41 flowC=bar~8:32
flowC=bore~0:-30,84:67 flowC=borehole~0:38,84:49 flowC=box~0:45 flowC=cm~7:32 flowC=concrete~66:31
flowC=diaphragm~57:22 flowC=drilled~84:48 flowC=driller~0:-29,84:52 flowC=drip~0:41,7:39
flowC=drippers~7:83 flowC=each~0:27,84:-44 flowC=emitters~7:75 flowC=every~7:34
flowC=flow~0:32,8:30 flowC=ft~0:54,95:31 flowC=gives~84:60 flowC=hand~0:47 flowC=he~95:38
flowC=level~95:49 flowC=lines~7:27 flowC=makes~84:45 flowC=meter~77:41 flowC=minutes~93:42
flowC=night~77:40,84:-44 flowC=no~0:22,84:-43 flowC=one~84:-26 flowC=out~0:74
flowC=pump~8:51,57:78,84:-32,93:31 flowC=pumped~84:-50,95:27 flowC=pumping~93:23,95:29
flowC=ran~0:-28,93:36 flowC=rows~7:42 flowC=shower~0:46 flowC=spring~84:38 flowC=static~95:35
flowC=steady~0:53 flowC=stream~0:-29,84:35 flowC=take~0:31,84:-38 flowC=tank~0:-44,66:109
flowC=test~93:33 flowC=then~0:42 flowC=volt~57:38 flowC=want~0:46,84:-27 flowC=was~84:32
flowC=well~0:-24,8:33,66:42,84:91 flowC=which~66:29 flowC=wrote~84:32 flowC=yield~84:64
flowL0=,~0:-28,57:16,77:12,84:44 flowL0=.~7:36,84:52 flowL0=0~0:-21 flowL0=:~84:16,93:30
flowL0=a~84:64 flowL0=at~93:64,95:69 flowL0=bar~8:32 flowL0=bore~84:44 flowL0=borehole~84:49
flowL0=cm~7:32 flowL0=driller~84:60 flowL0=drip~0:39 flowL0=drippers~7:66 flowL0=each~0:34
flowL0=emitters~7:33 flowL0=flow~8:30 flowL0=ft~0:47,84:-38,95:32 flowL0=gives~84:32
flowL0=he~95:40 flowL0=i~77:51 flowL0=is~66:15 flowL0=it~84:48 flowL0=m~0:60 flowL0=makes~84:34
flowL0=of~7:28 flowL0=pump~8:56,57:53,84:-33 flowL0=pumped~84:-34,95:37 flowL0=spring~84:7
flowL0=tank~66:40 flowL0=test~93:35 flowL0=tested~84:46 flowL0=that~0:32 flowL0=the~66:103
flowL0=want~0:46,84:-26 flowL0=we~0:53 flowL0=well~8:36,84:25 flowL0=which~66:31 flowL0=with~7:28
flowL0=wrote~84:28 flowL0=yield~84:31 flowL1=,~0:37,7:37,77:47 flowL1=.~0:27,8:63,57:32
flowL1=1~0:-50,8:38,57:31 flowL1=2~57:20,95:52 flowL1=5~8:29 flowL1=8~84:46 flowL1=9~84:29
flowL1=a~57:47 flowL1=at~84:37 flowL1=borehole~95:47 flowL1=emitters~7:26 flowL1=every~7:42
flowL1=ft~0:-26 flowL1=i~0:37 flowL1=is~57:22,84:27 flowL1=pump~0:-31,57:48,93:40
flowL1=pumping~95:29 flowL1=tank~66:47 flowL1=the~0:55,57:45,66:34,77:27 flowL1=to~66:15
flowL1=way~57:33 flowL1=well~0:28,66:24 flowL2=,~0:-42,7:38,8:68,57:31 flowL2=.~7:40,8:31
flowL2=0~0:32,7:30,84:28 flowL2=1~84:25 flowL2=2~0:-22,7:48,84:58 flowL2=3~84:46 flowL2=5~7:33
flowL2=6~0:-73,84:37,95:64 flowL2=7~84:28 flowL2=:~84:-51,95:30 flowL2=all~77:41 flowL2=apart~7:41
flowL2=borehole~57:28 flowL2=every~8:39 flowL2=from~57:22 flowL2=ft~95:41 flowL2=ground~0:30,84:-28
flowL2=m~7:29,57:24 flowL2=mm~0:36 flowL2=need~0:53 flowL2=night~77:40 flowL2=pond~0:36
flowL2=pressure~8:50 flowL2=pump~57:72 flowL2=run~84:38 flowL2=spring~0:-40,84:50 flowL2=there~0:41
flowL2=well~95:33 flowM=cistern~66:30 flowM=creek~7:42 flowM=drip~7:125,8:113,84:-56
flowM=pump~0:53,7:48,57:75,77:42,93:61,95:36 flowM=roof~57:38 flowM=spring~84:104
flowM=tank~57:50,66:113 flowM=well~84:37,95:36 flowR0=,~7:45,57:9,93:43
flowR0=.~7:32,57:30,66:33,77:71,84:80,95:29 flowR0=0~93:56 flowR0=1~0:41 flowR0=2~0:22,93:33
flowR0=9~93:56 flowR0=a~0:43 flowR0=and~0:44,66:26,84:-29 flowR0=at~0:51,8:51,57:74,84:-53
flowR0=bar~0:36 flowR0=day~66:28 flowR0=each~7:42 flowR0=for~0:47,84:-54,93:77 flowR0=from~66:29
flowR0=how~84:39 flowR0=in~0:65 flowR0=its~0:29 flowR0=set~57:54 flowR0=spring~84:12
flowR0=the~8:75,57:-43,77:26,84:59 flowR0=water~84:49 flowR0=we~0:54 flowR1=.~0:38,66:71
flowR1=0~84:42 flowR1=8~0:42 flowR1=:~0:42 flowR1=a~77:24 flowR1=and~0:-38,93:47 flowR1=can~8:38
flowR1=i~93:20 flowR1=in~0:26 flowR1=it~0:-41 flowR1=off~93:26 flowR1=pressure~77:50
flowR1=psi~57:45 flowR1=run~0:54 flowR1=spring~0:27,84:-37 flowR1=to~95:41 flowR2=,~0:-48
flowR2=.~0:33,57:37,84:-48 flowR2=1~77:35 flowR2=5~84:51 flowR2=ft~84:-50,95:55 flowR2=hours~8:44
flowR2=level~93:26 flowR2=minute~0:52,84:-48 flowR2=pump~84:38 flowR2=run~8:43
flowT=beds.area~0:-51,7:88 flowT=power.battery~0:-32,57:47 flowT=power.capacity~0:-30,57:52
flowT=power.panel~84:34 flowT=power.series~0:32 flowT=power.source~84:63 flowT=power.tilt~84:41
flowT=power.voltage~0:-40,57:89 flowT=pump.control~77:65 flowT=pump.height~84:40,95:38
flowT=pump.placement~0:61,84:-43 flowT=pump.present~84:42 flowT=pump.set~77:66,84:38
flowT=pump.works~0:-42,57:63 flowT=store.days~84:62 flowT=store.reserve~66:67
flowT=store.volume~57:66 flowT=tank.level~0:58 flowT=tank.volume~0:75
flowT=water.kind~7:42,66:46,84:191,95:73 flowT=water.level~0:43,95:102 flowT=water.temperature~0:35
flowT=water.yield~0:118,7:35,84:-93 flowT=way.climb~84:55 flowT=way.length~0:47,57:48,84:42
flowT=way.pipe~57:47,84:48 flowT=well.bore~0:38,84:-58,93:45,95:24 flowT=well.cover~93:55
flowT=well.depth~84:38,93:52 flowT=well.pumped_for~0:-33,93:99 flowT=well.pumping~84:-68,95:95
flowT=well.static~95:75 flowa=~84:37 flowa=,_pump~0:29 flowa=,_water~84:27 flowa=.~0:87,66:31
flowa=._the~77:33 flowa=at_2~0:35 flowa=at_the~8:67 flowa=for_4~95:35 flowa=from_the~66:30
flowb=ft_at~95:32 flowb=he_pumped~95:52 flowb=m_at~0:39 flowb=pump_gives~0:37 flowb=yield_:~84:22
k=angle~33:58,36:110,47:98 k=area~0:85,6:239,63:61
k=bare~0:257,1:51,2:34,3:75,4:43,5:20,24:33,26:60,27:15,29:32,36:60,61:30,80:49 k=charge~40:189
k=current~38:46 k=daily~0:70,74:158,75:76,76:43 k=each~75:106
k=flow~0:103,7:84,8:58,57:44,66:79,77:36,84:164,93:78,95:56
k=length~0:313,10:36,13:41,14:55,35:115,39:71,53:-29,55:71,71:67,72:48,73:-24,74:-24,75:-25,80:-23,82:100,84:-26,85:80,86:57,87:177,88:77,89:53,90:48
k=pair~53:121 k=percent~0:50,45:57,58:57 k=power~0:153,43:133
k=pressure~0:149,11:56,12:35,17:40,18:58,34:43,49:120,53:75,54:70,60:105
k=temperature~19:71,33:43,83:84 k=time~0:171,9:39,64:133,65:29,79:80,91:51
k=voltage~0:64,41:44,42:33,48:195 k=volume~0:130,20:54,21:42,51:112,67:84,68:147,73:124,75:38,78:80
lengthC=)~0:-56 lengthC=,~0:-33,13:51,14:56,56:25,72:35,82:6,86:58,87:-37,89:28
lengthC=0~13:72,72:43,82:-32,85:39,86:47,87:73 lengthC=1~89:28 lengthC=2~86:-40,87:45,89:51
lengthC=3~0:14,56:-40,92:63 lengthC=4~82:-34,85:20,90:32 lengthC=5~0:45,35:-43,87:33
lengthC=6~0:-52,56:18,82:-66,92:80 lengthC=7~85:57 lengthC=8~0:22,71:-26 lengthC=9~82:-27,88:33
lengthC=:~72:54,85:39,87:-47,92:56 lengthC=?~0:-47,35:45 lengthC=above~0:45,85:-60,87:42
lengthC=all~72:27 lengthC=altimeter~85:39 lengthC=altitude~35:84 lengthC=apart~10:50
lengthC=as~0:54 lengthC=away~86:47 lengthC=barn~0:-31,86:40,87:30 lengthC=before~94:33
lengthC=below~87:32 lengthC=between~87:38 lengthC=bore~88:25,89:47 lengthC=bore's~56:29
lengthC=borehole~0:-40,56:53,72:-21,82:51,89:74 lengthC=bottom~0:-43,72:27,89:33 lengthC=box~82:27
lengthC=buried~0:36 lengthC=but~0:-37,82:47,87:54 lengthC=by~86:29
lengthC=cabin~0:-45,35:45,82:-25,85:39,87:29 lengthC=cable~39:132,87:-34 lengthC=came~94:57
lengthC=can~0:13,35:37 lengthC=cased~0:-47,88:53 lengthC=casing~0:-49,88:9,90:20
lengthC=cellar~0:50 lengthC=climb~0:-36,85:87 lengthC=climbs~0:-30,85:107,87:-27
lengthC=copper~87:43 lengthC=could~0:54 lengthC=creek~0:-26,82:55,86:27 lengthC=deep~0:-49,88:52
lengthC=depth~0:39,56:76,85:-30,89:34 lengthC=diameter~0:-67,55:82 lengthC=difference~85:31
lengthC=differences~86:35 lengthC=distance~87:60 lengthC=down~56:62,87:-40,92:36
lengthC=draws~71:42 lengthC=drilled~0:47,87:-46,89:26 lengthC=drip~10:93,14:31
lengthC=dripper~14:25 lengthC=drippers~14:99 lengthC=drop~72:38,85:-33,86:51,87:-50,90:69
lengthC=drops~85:-34,86:43 lengthC=drum~72:46 lengthC=dry~0:47 lengthC=dug~89:48
lengthC=dynamic~82:57 lengthC=each~0:-26,10:60,14:33 lengthC=elevated~72:30
lengthC=elevation~35:79,85:32 lengthC=emitters~14:38 lengthC=ends~0:36 lengthC=every~14:60
lengthC=fall~86:35 lengthC=falls~72:22,86:37 lengthC=farthest~87:27 lengthC=feet~86:45
lengthC=field~0:34,85:-42 lengthC=floor~72:32,85:40 lengthC=from~39:50,82:33,85:77,86:66,89:-67
lengthC=ft~56:-51,71:-32,72:-58,85:50,89:71,94:60 lengthC=gallons~72:46 lengthC=garden~87:27
lengthC=generator~72:41 lengthC=goes~0:22,89:25 lengthC=good~0:-27 lengthC=got~0:31
lengthC=gpm~0:32,92:77 lengthC=greenhouse~0:51 lengthC=grid~0:26 lengthC=ground~0:-27,86:32
lengthC=h~14:38 lengthC=half~86:37 lengthC=hand~89:35 lengthC=hanging~0:25,82:-26
lengthC=hangs~56:24 lengthC=he~0:35 lengthC=head~0:23 lengthC=height~72:25,85:50 lengthC=here~35:29
lengthC=hey~0:47,82:-53 lengthC=hi~0:55 lengthC=higher~87:43 lengthC=highest~85:42
lengthC=hill~72:37,85:-42 lengthC=hit~82:31 lengthC=hole~89:37 lengthC=hose~71:47,87:30
lengthC=hours~92:73 lengthC=house~56:-56,85:64,86:52,87:79,89:-49 lengthC=hundred~85:32
lengthC=hung~90:75 lengthC=hut~35:36 lengthC=i've~0:54 lengthC=inside~88:41
lengthC=intake~71:65,86:32 lengthC=it's~87:18 lengthC=its~0:42 lengthC=jet~87:29
lengthC=kitchen~85:40 lengthC=l~14:37 lengthC=last~0:34,85:-28 lengthC=length~87:45
lengthC=level~56:-34,82:34,89:-42,92:89,94:48 lengthC=lies~85:39
lengthC=lift~56:-28,71:-30,82:66,85:46 lengthC=lifted~85:41 lengthC=lifts~85:23
lengthC=line~0:40,10:65,82:-40,87:43 lengthC=lines~10:60 lengthC=litres~72:62 lengthC=little~85:-47
lengthC=lower~85:-44 lengthC=lowered~56:47 lengthC=lowest~82:37 lengthC=m~82:24,86:53,88:57,92:37
lengthC=mains~0:30 lengthC=maybe~0:45 lengthC=measured~0:26 lengthC=min~0:23
lengthC=mm~0:-38,85:32,86:41,87:58 lengthC=more~85:29 lengthC=mouth~86:32 lengthC=must~85:28
lengthC=need~87:22 lengthC=neighbour~0:41 lengthC=next~87:44 lengthC=no~0:-31,82:40,87:50
lengthC=not~0:22 lengthC=npsh~59:59 lengthC=off~85:35 lengthC=okay~0:-34 lengthC=only~35:23
lengthC=ours~89:35 lengthC=out~0:-43,86:31 lengthC=outside~55:49 lengthC=panels~0:34
lengthC=pipe~0:62,71:57,72:-36,87:71,89:-51,90:61 lengthC=pit~89:-27 lengthC=plot~0:21
lengthC=pond~0:39 lengthC=power~0:28,87:-29 lengthC=pulls~82:48
lengthC=pump~55:39,56:127,82:95,86:-32,89:-43,90:49,94:-31 lengthC=pumphouse~82:39
lengthC=pumping~82:40,92:36 lengthC=push~0:40,82:-29 lengthC=pushes~72:51 lengthC=pvc~90:21
lengthC=quit~0:51 lengthC=required~59:43 lengthC=reservoir~0:-27,72:87,85:-38 lengthC=rest~94:56
lengthC=rise~85:92 lengthC=rises~85:58 lengthC=river~0:36 lengthC=road~0:64,87:-26
lengthC=roof~85:41 lengthC=room~0:28 lengthC=rows~0:-42,13:141 lengthC=run~39:31,87:66
lengthC=runs~85:33 lengthC=says~89:35 lengthC=sch~0:32 lengthC=schedule~87:27 lengthC=set~56:74
lengthC=shower~85:46 lengthC=sits~0:-38,56:33,82:27,87:26 lengthC=small~35:21
lengthC=so~56:24,89:36 lengthC=sorry~0:-40,82:22 lengthC=source~0:25,89:-30 lengthC=spacing~14:21
lengthC=spring~0:-41,72:-45,86:69,87:42 lengthC=stand~72:40 lengthC=standing~94:56
lengthC=stands~0:-46,72:1,82:66 lengthC=static~0:-36,82:79,89:-38,92:26,94:89 lengthC=stream~82:32
lengthC=sub~56:50 lengthC=submersible~56:128,82:-21,87:-48 lengthC=sucks~71:35
lengthC=suction~0:-30,71:154,82:69,85:-12 lengthC=summer~35:48 lengthC=swl~82:44,94:42
lengthC=take~86:53 lengthC=tank~0:50,72:136,82:-15,85:-52,87:82,89:-30 lengthC=tap~85:53
lengthC=taps~0:60 lengthC=test~92:43 lengthC=than~85:-38,87:37 lengthC=then~0:49,82:-35
lengthC=there~0:31 lengthC=they~82:30 lengthC=thing~0:-41 lengthC=through~71:58
lengthC=toddler~0:67 lengthC=told~72:26 lengthC=top~85:35 lengthC=tote~0:56 lengthC=tower~72:32
lengthC=towr~0:49,72:-47 lengthC=trench~0:77 lengthC=trough~0:-45,85:36 lengthC=troughs~87:53
lengthC=two~87:29 lengthC=under~82:36 lengthC=up~0:43,72:56,85:43,87:39,89:-39
lengthC=uphill~0:-32,85:58 lengthC=us~0:49 lengthC=use~82:-34 lengthC=was~56:36,87:-36
lengthC=water~0:-20,82:160,89:-43,94:75 lengthC=water's~82:42 lengthC=way~87:28 lengthC=we've~89:44
lengthC=well~0:59,56:37,87:-28,88:57,89:87 lengthC=well's~89:33 lengthC=wellhead~72:-42,85:33
lengthC=wire~39:87,87:-49 lengthC=would~0:-49,87:41 lengthC=wrote~0:43 lengthC=x~0:35
lengthL0=,~14:69,72:-56,85:36,87:22 lengthL0=.~0:-42,14:26,59:40,72:-37,89:26
lengthL0=0~0:26,72:26,85:-22 lengthL0=2~0:38,82:-36 lengthL0=3~72:33 lengthL0=4~0:28,90:21
lengthL0=8~0:26 lengthL0=:~72:50,85:40 lengthL0=?~0:-58,82:68
lengthL0=a~0:-62,39:31,71:10,87:37,88:47,89:51 lengthL0=about~87:27 lengthL0=all~0:65
lengthL0=altimeter~85:39 lengthL0=altitude~35:76 lengthL0=and~0:-27,85:36,87:19
lengthL0=are~10:43,35:26 lengthL0=at~0:-26,35:94,56:134,82:69,85:-53,87:-42,89:-59
lengthL0=away~85:33 lengthL0=barn~0:-31,87:27 lengthL0=bore~0:28,89:58
lengthL0=borehole~85:-42,89:74 lengthL0=bottom~85:30,89:28 lengthL0=box~82:28 lengthL0=buried~0:58
lengthL0=by~86:51 lengthL0=cabin~0:-34,35:29,85:27,87:45 lengthL0=cable~39:62 lengthL0=can~0:31
lengthL0=casing~0:-35,88:10 lengthL0=cellar~0:47 lengthL0=climb~0:-33,85:72
lengthL0=climbs~0:-27,85:87,87:-27 lengthL0=copper~87:25 lengthL0=creek~86:42 lengthL0=deep~88:29
lengthL0=depth~89:54 lengthL0=diameter~55:83 lengthL0=distance~87:37 lengthL0=down~82:22,92:41
lengthL0=drilled~0:36 lengthL0=drip~10:38 lengthL0=drippers~14:63 lengthL0=drop~86:33,87:-33
lengthL0=drops~0:43,85:-34,86:44 lengthL0=drum~72:46 lengthL0=dug~89:33 lengthL0=dynamic~82:44
lengthL0=each~10:48 lengthL0=elevation~35:79 lengthL0=emitters~14:21 lengthL0=ends~0:36
lengthL0=every~14:70 lengthL0=falls~72:22,86:37 lengthL0=farthest~87:27 lengthL0=field~0:53
lengthL0=floor~0:-53,72:34 lengthL0=from~56:24 lengthL0=ft~85:42,86:-27 lengthL0=garden~87:28
lengthL0=goes~89:33 lengthL0=gpm~0:28 lengthL0=gravity~0:34 lengthL0=grid~0:32
lengthL0=ground~86:34 lengthL0=h~0:35 lengthL0=hangs~56:31 lengthL0=has~87:-17,90:26
lengthL0=head~0:31 lengthL0=here~35:32 lengthL0=highest~85:43 lengthL0=hole~89:24
lengthL0=hose~71:46 lengthL0=house~0:44,39:-26,56:-22,72:29,82:-38,85:53,86:58,87:61,89:-17
lengthL0=hung~90:57 lengthL0=hut~35:38 lengthL0=i~87:61 lengthL0=in~56:-39,82:26,85:-29,88:48,89:45
lengthL0=inch~90:21 lengthL0=inside~88:41 lengthL0=intake~71:64,86:33
lengthL0=is~0:32,35:-25,39:30,72:43,82:30,85:44,86:39,88:66
lengthL0=it~0:71,56:25,72:-37,85:-37,92:70 lengthL0=it's~87:60,89:-20 lengthL0=l~72:47
lengthL0=last~0:45,85:-28 lengthL0=length~87:49 lengthL0=level~89:-32,92:56,94:59
lengthL0=lies~85:39 lengthL0=lift~0:54,82:46,85:30 lengthL0=line~0:35,10:74,71:26
lengthL0=lines~10:68 lengthL0=litres~72:27 lengthL0=lowered~56:38 lengthL0=lowest~82:32
lengthL0=m~0:39,82:-47 lengthL0=maybe~0:34 lengthL0=measured~87:51 lengthL0=mm~0:-30,87:37
lengthL0=must~85:24 lengthL0=my~86:34 lengthL0=no~87:59 lengthL0=npsh~59:59 lengthL0=of~0:42
lengthL0=on~72:8,90:67 lengthL0=only~35:22 lengthL0=our~0:28 lengthL0=ours~0:-26,82:21,89:37
lengthL0=outside~55:50 lengthL0=pipe~71:65,87:43 lengthL0=poly~87:43 lengthL0=pond~0:36
lengthL0=pump~39:49,56:104,72:-26,82:39,85:-52 lengthL0=pumping~92:43 lengthL0=push~0:29,82:-25
lengthL0=rest~94:57 lengthL0=rise~85:83 lengthL0=rises~85:70 lengthL0=roof~85:30
lengthL0=rows~13:141 lengthL0=run~39:36 lengthL0=says~89:43 lengthL0=set~56:66 lengthL0=shed~0:8
lengthL0=shower~85:39 lengthL0=small~35:34 lengthL0=sorry~0:-29,82:27 lengthL0=spacing~14:27
lengthL0=spring~72:-26,86:56 lengthL0=stand~72:39 lengthL0=standing~94:56 lengthL0=stands~0:-27
lengthL0=static~0:-16,82:52,94:79 lengthL0=stone~0:39 lengthL0=sub~56:43 lengthL0=submersible~56:73
lengthL0=suction~0:-10,71:100,82:33,85:-27 lengthL0=summer~35:26 lengthL0=surface~0:28
lengthL0=swl~82:44,94:43 lengthL0=tank~72:62,85:-47 lengthL0=tap~85:50 lengthL0=that~72:53
lengthL0=the~39:57,71:-38,72:37,87:42,89:9,94:-31 lengthL0=through~71:73
lengthL0=to~82:75,87:27,92:22 lengthL0=told~72:26 lengthL0=tower~72:32 lengthL0=up~72:59
lengthL0=uphill~0:-31,85:54 lengthL0=was~0:27 lengthL0=water~56:-57,82:94,85:-46,94:75
lengthL0=water's~82:42 lengthL0=way~87:28 lengthL0=we~35:27,86:35,87:-41
lengthL0=well~82:29,88:57,89:66,90:19 lengthL0=with~0:38,82:37,87:-49 lengthL0=x~0:35
lengthL0=yurt~0:49 lengthL0=|~0:29,82:35,86:52,87:-29 lengthL1=(~89:30
lengthL1=,~10:81,56:7,72:50,87:-32 lengthL1=.~10:35,56:48,94:40 lengthL1=0~72:73,85:21,86:31
lengthL1=1~85:39 lengthL1=2~72:40,87:-50 lengthL1=3~86:51,89:29,92:27
lengthL1=4~0:-71,82:58,86:38,87:56,89:31 lengthL1=5~0:-35,87:22 lengthL1=6~87:-30 lengthL1=8~94:54
lengthL1=9~82:-31,88:35 lengthL1=:~94:30 lengthL1=;~82:-49,85:-36 lengthL1=?~35:25,72:-33
lengthL1=a~56:36,89:49 lengthL1=above~82:-29,87:55 lengthL1=all~72:23 lengthL1=an~0:45
lengthL1=and~82:42,85:33,86:-58 lengthL1=apart~10:29 lengthL1=are~0:49,56:-26
lengthL1=at~0:-46,14:39,56:-31,59:52,85:26 lengthL1=back~89:35 lengthL1=bar~0:41
lengthL1=beds~14:26 lengthL1=below~0:-31,87:42 lengthL1=booster~0:26 lengthL1=bore~88:35
lengthL1=borehole~0:-46,90:38 lengthL1=cable~39:26 lengthL1=creek~82:32 lengthL1=deep~0:58,89:46
lengthL1=depth~0:28,94:45 lengthL1=distance~87:24 lengthL1=drilled~89:34 lengthL1=drip~14:41
lengthL1=dry~0:-43 lengthL1=feet~0:40 lengthL1=from~0:-9,39:55,56:-47,86:32,87:60,89:-35
lengthL1=ft~0:51,82:42 lengthL1=gallon~0:30 lengthL1=gallons~0:54,87:-26 lengthL1=garden~0:23
lengthL1=gpm~92:29 lengthL1=grid~0:-34 lengthL1=h~92:53 lengthL1=half~86:40 lengthL1=have~0:11
lengthL1=he~0:51 lengthL1=hill~0:30,85:-30 lengthL1=hose~0:26 lengthL1=house~39:44
lengthL1=how~89:48 lengthL1=hundred~82:-43 lengthL1=i~0:40,13:28,87:-30 lengthL1=in~0:14
lengthL1=inside~82:-24,94:24 lengthL1=is~56:26,86:-36,87:20,90:39 lengthL1=it~87:25
lengthL1=it's~85:39,89:44 lengthL1=l~72:27 lengthL1=level~0:-39,82:44 lengthL1=lift~0:-25
lengthL1=line~87:46 lengthL1=liters~0:33 lengthL1=litres~85:39 lengthL1=log~89:35
lengthL1=lower~0:53 lengthL1=m~71:32,82:51 lengthL1=makes~85:37 lengthL1=meters~0:50
lengthL1=min~0:32,85:-33 lengthL1=my~13:34,85:52,87:-48 lengthL1=never~82:44
lengthL1=of~0:-35,56:-33,72:13 lengthL1=our~0:-33 lengthL1=pe~86:59 lengthL1=pipe~90:19
lengthL1=poly~86:31,87:-22 lengthL1=psi~0:-34,82:40 lengthL1=pump~71:18,85:34 lengthL1=rows~10:37
lengthL1=run~0:-35 lengthL1=schedule~87:27 lengthL1=seconds~87:-33 lengthL1=source~0:23
lengthL1=spring~0:34,85:-40 lengthL1=stand~72:29 lengthL1=stands~0:53,72:-2,82:27
lengthL1=static~92:38 lengthL1=stream~72:52 lengthL1=submersible~0:-33,55:16,56:26
lengthL1=suction~0:47,71:27,87:-23 lengthL1=surface~0:-50 lengthL1=tank~0:60,72:50,82:-26
lengthL1=the~35:-32,39:30,71:62,89:61 lengthL1=then~0:53 lengthL1=to~0:-67,39:52,85:49,86:24
lengthL1=trench~0:47 lengthL1=under~82:35 lengthL1=up~0:35,85:31 lengthL1=water~87:32
lengthL1=we~35:29 lengthL1=well~82:13,86:-27 lengthL1=with~0:-27,82:14,87:40 lengthL1=yards~86:33
lengthL1=|~72:-38 lengthL2=(~72:25 lengthL2=,~10:56,13:52,72:57
lengthL2=.~0:32,39:23,56:66,82:-11,86:-32,87:33,92:36
lengthL2=0~0:-43,10:45,14:59,39:13,56:32,85:31,86:43,89:38
lengthL2=1~13:26,39:37,56:27,72:-70,86:27,94:27 lengthL2=2~10:55,72:-34,86:33,87:66
lengthL2=3~56:52,59:44,72:-13,87:53,92:54 lengthL2=4~13:40,39:36,72:29,82:-34,85:42,86:-54
lengthL2=5~10:40,72:16,82:-18,87:52 lengthL2=6~10:33,82:-36,94:28 lengthL2=7~0:32,87:37
lengthL2=8~0:20,72:19,89:-33,92:41 lengthL2=9~85:48,86:-48 lengthL2=:~92:48,94:39 lengthL2=;~0:-36
lengthL2=above~71:21 lengthL2=am~0:51 lengthL2=apart~10:49 lengthL2=as~0:17 lengthL2=august~89:30
lengthL2=away~85:24 lengthL2=bar~0:36 lengthL2=battery~39:52 lengthL2=beef~85:40
lengthL2=below~71:28 lengthL2=beside~85:-34,87:28 lengthL2=bore~82:-29,92:30,94:46
lengthL2=bore's~56:22 lengthL2=borehole~56:31,82:56 lengthL2=bring~85:48
lengthL2=bucket~0:80,85:-36,87:-32 lengthL2=by~0:-40,89:58 lengthL2=cabin~0:15
lengthL2=casing~0:49,87:-22,92:45 lengthL2=compensating~10:56 lengthL2=controlled~0:32
lengthL2=cows~85:34 lengthL2=creek~0:39,71:23,87:-47 lengthL2=cubic~0:60 lengthL2=deep~94:42
lengthL2=depth~56:64 lengthL2=distance~85:33 lengthL2=drip~0:-24,13:60,14:64
lengthL2=drippers~10:54,13:36 lengthL2=drop~90:23 lengthL2=dry~85:-38 lengthL2=elevated~72:30
lengthL2=fed~85:-37 lengthL2=feet~85:36,94:39 lengthL2=five~72:47 lengthL2=floor~82:-50
lengthL2=four~72:22 lengthL2=from~56:-37,72:35,89:-36,94:48 lengthL2=ft~14:40,72:-30,82:73,94:-50
lengthL2=gallon~0:41,87:-55 lengthL2=gallons~0:-45 lengthL2=garden~0:52
lengthL2=gives~0:24,86:31,87:-28 lengthL2=goes~0:25,87:-30 lengthL2=gone~0:29
lengthL2=got~0:65,82:-27 lengthL2=gpm~82:-38,87:31 lengthL2=had~0:35 lengthL2=hangs~82:26
lengthL2=hav~0:50 lengthL2=having~0:31 lengthL2=hello~0:32,82:-39 lengthL2=hens~0:-24
lengthL2=hey~0:56,82:-47 lengthL2=hi~82:44 lengthL2=higher~0:25,85:26 lengthL2=hill~0:32,85:-39
lengthL2=hose~87:30 lengthL2=hour~0:45,87:-39 lengthL2=hours~92:25
lengthL2=house~0:-26,82:-52,85:115,87:27,89:-34 lengthL2=hundred~85:37 lengthL2=i've~0:44
lengthL2=inch~0:-24,72:31,85:33,87:-42 lengthL2=into~72:70 lengthL2=jet~0:-34,82:40
lengthL2=keeps~0:46 lengthL2=l~10:28,59:49 lengthL2=lane~82:-46 lengthL2=last~89:29
lengthL2=lift~85:29 lengthL2=line~14:34 lengthL2=lines~72:38 lengthL2=liter~0:44
lengthL2=litres~0:-39 lengthL2=little~85:-48 lengthL2=log~94:38 lengthL2=lower~0:23,82:-42
lengthL2=m~14:27,59:43,85:74,89:-43,94:36 lengthL2=machine~0:21 lengthL2=max~0:31
lengthL2=maybe~85:31 lengthL2=measured~0:34 lengthL2=metres~85:-67,86:68 lengthL2=min~0:-41,59:51
lengthL2=minute~72:-34 lengthL2=mm~86:53 lengthL2=most~0:58,72:-44 lengthL2=need~0:41
lengthL2=no~0:-62,39:41,87:53,89:52 lengthL2=none~85:41 lengthL2=not~85:29 lengthL2=old~72:31
lengthL2=one~85:30,86:-50,87:-34 lengthL2=or~0:-29 lengthL2=over~0:20,87:40 lengthL2=panels~39:27
lengthL2=pipe~87:44 lengthL2=place~86:34 lengthL2=poly~85:28 lengthL2=power~87:31
lengthL2=pressure~72:51,85:-28 lengthL2=psi~0:-41,13:35
lengthL2=pump~0:43,56:83,71:16,72:-38,86:-29 lengthL2=pumphouse~82:42 lengthL2=pvc~90:23
lengthL2=rain~72:66 lengthL2=reservoir~72:72,85:-42 lengthL2=river~0:30 lengthL2=room~0:30
lengthL2=rows~10:69 lengthL2=run~87:44 lengthL2=runs~82:34,87:23 lengthL2=said~89:35
lengthL2=says~0:36 lengthL2=seconds~0:26 lengthL2=set~82:55 lengthL2=shallow~0:-20,87:43
lengthL2=shower~0:-37 lengthL2=showers~0:42 lengthL2=sits~0:-33 lengthL2=so~85:-48
lengthL2=source~0:-35,82:27,86:37 lengthL2=spring~0:55,85:-25,86:63 lengthL2=static~0:-31,82:81
lengthL2=steel~0:-41 lengthL2=submersible~87:-46,89:21 lengthL2=sun~0:34 lengthL2=switch~0:-28
lengthL2=take~86:43 lengthL2=tank~0:42,87:74,89:-34 lengthL2=ten~0:39,87:-34 lengthL2=test~92:43
lengthL2=then~94:32 lengthL2=there~0:54 lengthL2=there's~89:66 lengthL2=they~0:42,72:-48,85:24
lengthL2=toilets~0:34 lengthL2=too~0:-29,72:36 lengthL2=trees~0:30,87:-22 lengthL2=two~72:38
lengthL2=under~0:30,85:-27,87:-36 lengthL2=up~0:-33,72:27,87:40 lengthL2=upper~0:41
lengthL2=use~82:-38 lengthL2=utility~0:29 lengthL2=v~39:37 lengthL2=want~0:20,72:-31,87:36
lengthL2=was~0:-39 lengthL2=washing~0:22 lengthL2=water~0:-48,56:20,72:36,82:95,85:-42
lengthL2=water's~85:-43 lengthL2=we've~89:44 lengthL2=well~0:34,82:64,85:-55,89:49
lengthL2=wellhead~85:36 lengthL2=what~89:-32 lengthL2=which~0:19,87:-57 lengthL2=while~0:45,87:-53
lengthL2=yet~85:41 lengthL2=you~0:55 lengthL2=|~35:39 lengthM=cistern~35:31,87:32
lengthM=creek~71:34,85:51,87:-18 lengthM=drip~0:-47,10:129,13:97,14:132,82:-44
lengthM=pump~0:22,13:35,14:53,35:64,39:46,55:26,56:60,59:56,71:51,82:30,85:65,86:-97,88:27,92:50,94:52
lengthM=roof~0:29 lengthM=spring~0:51,35:45,56:-59,82:-15,85:-23,86:201,87:25
lengthM=tank~72:198,85:-29,89:17 lengthM=well~56:27,71:-37,72:-43,86:-64,87:52,88:78,89:78
lengthR0=(~85:38 lengthR0=,~13:41,14:34,56:27,89:68,94:14
lengthR0=.~10:33,14:36,35:71,39:27,56:79,72:58,82:18,88:79,89:45 lengthR0=0~87:34
lengthR0=1~0:-70,71:59,86:-36,87:45 lengthR0=2~0:25,35:18,72:33,89:-39 lengthR0=3~72:23,88:32
lengthR0=4~71:25,82:-46,85:20,87:13,89:-31,90:59 lengthR0=5~87:22 lengthR0=6~0:-56,55:42
lengthR0=8~0:28,89:-34,90:40 lengthR0=9~88:40 lengthR0=:~0:-45,85:50,87:33 lengthR0=;~82:57
lengthR0=above~0:-33,56:-28,72:94,82:57,85:79,86:34,87:-48,89:-32 lengthR0=according~89:47
lengthR0=across~0:30,88:54 lengthR0=after~0:50,82:43 lengthR0=all~0:57 lengthR0=altitude~35:33
lengthR0=an~0:40,87:-57 lengthR0=and~0:-46,56:18,82:-26,87:74,88:71,89:39
lengthR0=apart~13:63,14:37 lengthR0=at~14:35,89:26,92:65 lengthR0=away~0:47,85:-29,87:92
lengthR0=barn~0:32,72:-26 lengthR0=below~56:40,82:59,85:57,86:8,87:-39,89:-41
lengthR0=between~13:50 lengthR0=borehole~0:-50,85:35,88:48 lengthR0=bottom~0:42,87:-30,89:51
lengthR0=but~0:48 lengthR0=cabin~86:37 lengthR0=cable~39:105,87:-42 lengthR0=casing~88:75
lengthR0=climb~85:33 lengthR0=comes~0:54 lengthR0=copper~0:18 lengthR0=creek~85:29
lengthR0=deep~0:76,72:-30,82:-39,85:-22,87:-37,89:143 lengthR0=depth~0:22,89:49
lengthR0=diameter~88:45 lengthR0=down~56:109,72:-38,82:58,87:-37 lengthR0=drip~0:41
lengthR0=drop~90:42 lengthR0=elevation~35:42 lengthR0=for~0:40 lengthR0=from~0:59,87:34,89:-42
lengthR0=full~0:51,82:-39 lengthR0=garden~86:36 lengthR0=ground~56:34,82:24,85:-27
lengthR0=have~0:41 lengthR0=height~72:36,85:35 lengthR0=high~0:37
lengthR0=higher~72:48,85:74,87:-31 lengthR0=hill~85:33 lengthR0=hose~0:26,71:46
lengthR0=house~0:37,86:38,89:-30 lengthR0=hut~85:32 lengthR0=in~55:73,56:45,82:65,85:26
lengthR0=inch~71:41,87:47 lengthR0=inside~88:66 lengthR0=is~0:-49,85:-25
lengthR0=it~0:-37,72:-39,82:44 lengthR0=just~0:51,87:-26 lengthR0=level~0:53,35:31,56:-29
lengthR0=lift~85:45 lengthR0=line~0:36,71:26 lengthR0=long~0:21,10:64,71:42,89:-31
lengthR0=lower~86:100 lengthR0=my~82:35 lengthR0=of~39:76,71:120,72:-40,82:-22,87:71,89:-49,90:72
lengthR0=off~87:70 lengthR0=old~0:33 lengthR0=on~0:23 lengthR0=one~71:31 lengthR0=over~72:58
lengthR0=pe~0:-2 lengthR0=pipe~0:28,87:53 lengthR0=poly~0:60,82:-28
lengthR0=pump~0:-24,72:-35,82:66,85:32,86:-35,89:29 lengthR0=pvc~0:29 lengthR0=rim~94:25
lengthR0=rise~85:42 lengthR0=rows~0:-36,10:36,13:41 lengthR0=runs~71:24 lengthR0=sea~35:64
lengthR0=spring~86:27 lengthR0=static~0:21 lengthR0=stream~0:-37,82:43 lengthR0=submersible~0:-40
lengthR0=suction~59:28,71:44 lengthR0=summer~82:46 lengthR0=surface~82:29 lengthR0=tank~72:50,87:66
lengthR0=than~85:39,86:42 lengthR0=that~85:35
lengthR0=the~39:-50,72:22,82:44,85:45,86:72,87:64,94:57 lengthR0=then~0:58 lengthR0=there~0:-34
lengthR0=to~0:-54,39:47,72:32,87:55,89:24 lengthR0=top~86:-31,94:57 lengthR0=total~0:-30,87:12
lengthR0=under~0:-38,85:47 lengthR0=up~72:61,85:99,89:-41 lengthR0=uphill~0:-35,85:88
lengthR0=us~72:29,86:36 lengthR0=water~0:27,82:136,85:-42,87:-33 lengthR0=we~0:28
lengthR0=well~82:-37,87:15,89:41 lengthR0=when~0:41 lengthR0=where~0:-20 lengthR0=wide~0:25
lengthR0=with~0:-39,89:51 lengthR0=|~85:30 lengthR1=,~55:64,56:-26
lengthR1=.~35:42,71:26,72:59,86:31,87:31,89:59,94:35 lengthR1=0~0:-17,72:41,87:-39
lengthR1=1~10:44,82:61,86:26 lengthR1=2~82:41,89:33 lengthR1=3~0:-38,10:46,85:23,89:26
lengthR1=4~0:-44,59:57,87:-28,89:13,90:36 lengthR1=5~14:48,85:27,89:70 lengthR1=6~0:-74,72:42,94:33
lengthR1=7~0:35,56:-29 lengthR1=8~87:41,89:18 lengthR1=9~85:52,94:34 lengthR1=a~72:39,86:-36,87:38
lengthR1=along~85:42 lengthR1=and~82:34 lengthR1=any~0:26 lengthR1=around~0:52
lengthR1=at~87:-27,89:45,94:19 lengthR1=beds~35:19 lengthR1=cabin~87:23 lengthR1=casing~94:34
lengthR1=climbs~85:42 lengthR1=creek~71:24 lengthR1=deep~89:-27 lengthR1=down~82:21
lengthR1=drop~87:-25,90:47 lengthR1=feet~0:34 lengthR1=filled~0:60 lengthR1=foot~71:34,87:-39
lengthR1=from~0:-37,82:46 lengthR1=ft~0:61,56:-31 lengthR1=gives~86:48 lengthR1=got~0:43
lengthR1=gpm~0:-31,89:47 lengthR1=grid~82:30 lengthR1=ground~0:28 lengthR1=h~14:35
lengthR1=hangs~0:-25 lengthR1=has~86:43 lengthR1=hose~71:43 lengthR1=house~0:-28,72:60,85:89,87:36
lengthR1=i~85:-38,86:46 lengthR1=in~71:32 lengthR1=is~35:24,82:-61,87:-38,88:68
lengthR1=it~0:24,71:54,72:51 lengthR1=l~14:41 lengthR1=line~0:-37,86:29,87:30 lengthR1=log~0:37
lengthR1=m~0:-15,59:46,82:-43,87:25,88:35,94:34 lengthR1=measured~0:35
lengthR1=mm~0:-29,71:34,82:-20,85:48,87:57 lengthR1=of~0:38,94:24 lengthR1=one~0:35
lengthR1=out~0:41 lengthR1=pipe~85:26 lengthR1=poly~90:16 lengthR1=power~82:26
lengthR1=pump~39:28,88:31 lengthR1=pumping~94:33 lengthR1=pushes~0:-29,82:37 lengthR1=rows~14:45
lengthR1=shower~0:46 lengthR1=showers~82:27 lengthR1=so~0:21 lengthR1=stands~0:-36,88:41
lengthR1=submersible~88:52 lengthR1=suction~0:-39,71:67 lengthR1=summer~82:26 lengthR1=tap~0:37
lengthR1=that~89:39 lengthR1=the~0:-31,14:-42,39:49,71:31,72:42,82:-24,89:32 lengthR1=there~82:27
lengthR1=through~0:36 lengthR1=to~56:39,82:55,89:-44 lengthR1=trough~0:30 lengthR1=up~82:54
lengthR1=want~0:23,72:42 lengthR1=was~85:34 lengthR1=water~0:-37,82:25,89:70 lengthR1=we~85:-39
lengthR1=well~56:24,82:24,85:-28,86:22,87:-36 lengthR1=which~0:58,82:-49 lengthR1=with~85:-21,89:24
lengthR1=|~39:50 lengthR2=)~85:32 lengthR2=,~0:34,10:43,13:40,39:44,85:-9,87:34
lengthR2=.~14:40,59:47,72:26,86:66,94:50 lengthR2=0~13:33,71:33,86:49 lengthR2=1~0:-61,10:36,85:53
lengthR2=2~0:23,56:36,72:31,85:-46,86:82,94:-46 lengthR2=3~0:14,39:36,56:-21,59:24,82:-43,94:66
lengthR2=4~0:18,86:18 lengthR2=5~86:30,88:56,89:-54 lengthR2=6~0:-32,94:37
lengthR2=7~0:42,82:-49,85:50,86:-27,87:-35 lengthR2=8~0:-46,82:48,86:-37,94:64 lengthR2=above~87:23
lengthR2=after~0:38 lengthR2=apart~0:-42,10:21 lengthR2=away~0:-71,86:38 lengthR2=barn~0:56,87:-26
lengthR2=beside~0:61,89:-47 lengthR2=bottom~0:41 lengthR2=climb~0:59,87:-34 lengthR2=climbs~0:16
lengthR2=cm~13:41 lengthR2=deep~88:55 lengthR2=do~86:44 lengthR2=drop~90:40
lengthR2=end~0:27,89:-29 lengthR2=feet~56:35,87:-39,89:70 lengthR2=first~72:-25 lengthR2=foot~71:84
lengthR2=four~0:-35 lengthR2=from~85:-27,87:68 lengthR2=gallons~82:32 lengthR2=ground~89:42
lengthR2=h~0:36 lengthR2=his~0:39,85:-28 lengthR2=hose~0:64 lengthR2=house~0:-29,85:31,86:50
lengthR2=how~0:-38,72:47 lengthR2=hundred~85:39 lengthR2=hung~89:57 lengthR2=inside~0:-25,89:31
lengthR2=it's~0:-26,85:68,86:-35 lengthR2=km~94:27 lengthR2=l~82:34 lengthR2=level~0:-47
lengthR2=line~86:48 lengthR2=lines~0:45 lengthR2=liters~0:49,72:-42 lengthR2=litres~0:-41,72:26
lengthR2=long~85:-41 lengthR2=lower~0:40 lengthR2=m~56:43,86:26 lengthR2=mail~0:27,72:-25
lengthR2=metres~0:-40 lengthR2=mm~85:-19,90:37 lengthR2=never~89:50 lengthR2=off~85:40
lengthR2=one~0:-23,85:41,87:38 lengthR2=pe~0:27,85:-35 lengthR2=per~82:36 lengthR2=persons~0:37
lengthR2=pipe~85:53,90:60 lengthR2=poly~71:44 lengthR2=pump~85:6,87:-36 lengthR2=pvc~0:49,82:-57
lengthR2=runs~0:39,56:-22 lengthR2=says~0:-49 lengthR2=seven~0:32,85:-37
lengthR2=shower~85:-34,87:47 lengthR2=sink~85:-73 lengthR2=sits~0:54,89:-54
lengthR2=solar~0:-27,87:25 lengthR2=suction~0:54 lengthR2=tank~0:30,86:-25 lengthR2=then~87:-32
lengthR2=top~0:-39 lengthR2=two~0:-57,85:26 lengthR2=under~0:-39,89:36 lengthR2=v~87:36
lengthR2=valve~71:63 lengthR2=was~0:46 lengthR2=washing~82:28 lengthR2=water~0:-61,87:-32,88:52
lengthR2=which~0:46 lengthR2=will~87:37 lengthR2=yield~82:36 lengthR2=|~0:52,87:-43
lengthT=beds.area~0:-15,10:106,13:93,14:43 lengthT=power.battery~85:11 lengthT=power.cable~35:28
lengthT=power.capacity~85:22 lengthT=power.facing~39:44,87:-50 lengthT=power.limit~39:41
lengthT=power.open_voltage~39:43 lengthT=power.panel~35:34,39:61,89:-26
lengthT=power.series~39:38,72:40,89:-32
lengthT=power.source~35:24,39:69,71:-37,72:42,82:64,85:34,86:-70,88:24
lengthT=power.strings~0:-51,39:20,72:44,82:29,85:-61 lengthT=power.voltage~39:67,85:30,86:-64,87:45
lengthT=pump.control~0:32,59:44,72:-56 lengthT=pump.cut_in~0:-52,72:-41,82:24
lengthT=pump.cut_out~0:59,72:-32,82:31,85:-4 lengthT=pump.dry_lift~59:46
lengthT=pump.dry_run~55:72,82:-33,85:-30,94:46
lengthT=pump.height~0:40,39:31,55:45,56:-161,71:-45,72:26,82:48,87:-40,89:75,92:54,94:24
lengthT=pump.least_flow~0:-37 lengthT=pump.most_flow~0:-30,82:37 lengthT=pump.motor~0:-32,82:39
lengthT=pump.npsh~0:41 lengthT=pump.placement~0:29,35:57,55:81,56:59,71:48,86:-83
lengthT=pump.present~0:-19,72:20,82:-32,85:-98,86:146,87:70 lengthT=pump.relief~0:26
lengthT=pump.set~72:-41,82:16,87:44,88:30 lengthT=pump.starts~0:-27 lengthT=pump.works~0:39,87:-26
lengthT=store.days~72:44 lengthT=store.depth~0:37,87:-39
lengthT=store.volume~10:30,35:1,56:-41,82:-53,85:79,87:37,94:-47
lengthT=tank.level~0:46,35:24,72:-145,82:62,85:-65,86:-35,87:83,94:20
lengthT=tank.volume~0:39,35:40,72:144,82:-21,85:-80,86:-106
lengthT=water.kind~0:-41,13:34,35:39,39:-27,59:-38,71:15,72:-25,85:46,86:126,87:55,88:65,89:85,90:65,92:50,94:67
lengthT=water.level~0:10,35:33,56:58,59:59,71:102,72:49,82:-209,88:80,89:112,94:-32
lengthT=water.temperature~59:44 lengthT=water.yield~35:58,56:35,71:-43,86:14,87:-30
lengthT=way.climb~0:97,13:26,56:30,71:58,72:-119,82:92,85:-225,86:-137,87:206,88:17
lengthT=way.length~0:84,35:50,39:-43,56:36,71:27,72:62,82:37,85:187,86:110,87:-352,94:43
lengthT=way.pipe~39:-52,71:-54,86:114,87:133,89:-67,94:26
lengthT=well.bore~0:-21,55:91,82:-47,87:-87,88:-97,89:66,90:73,92:55,94:101
lengthT=well.cover~0:69,56:-67,82:-20
lengthT=well.depth~0:21,39:36,56:57,71:-20,86:-8,88:99,89:-231,92:48,94:118
lengthT=well.pumping~82:-35,94:47 lengthT=well.static~0:-83,86:-18,88:49,89:83,92:83,94:-73
lengthT=well.steady~0:-56 lengthT=well.tested~0:-33,82:-26,88:29,89:-27,92:89,94:71
lengtha=~82:45,87:29 lengtha=,_1~0:-28 lengtha=,_3~0:20,87:-42 lengtha=,_and~0:51
lengtha=,_pump~0:-30,82:21,89:20 lengtha=,_static~89:18 lengtha=,_water~89:29
lengtha=.~56:32,82:32,85:34,87:25,88:28,89:37 lengtha=._house~82:23 lengtha=._the~0:-84,85:38
lengtha=above_ground~72:35 lengtha=above_it~0:-64,82:48,85:82 lengtha=above_sea~35:43
lengtha=above_the~0:65,72:88,82:28,85:-28,87:-33 lengtha=according_to~89:43 lengtha=across_,~0:40
lengtha=and_the~56:35,87:-46 lengtha=apart_,~13:39 lengtha=apart_.~13:34 lengtha=away_,~87:42
lengtha=away_.~0:52,87:30 lengtha=below_ground~56:37 lengtha=below_it~85:-18,86:23
lengtha=below_the~82:58,85:30,87:-22 lengtha=between_the~13:51 lengtha=casing_,~88:29
lengtha=casing_.~0:-23,88:38 lengtha=deep_,~0:41,89:13 lengtha=deep_.~89:29
lengtha=deep_and~0:-30,89:57 lengtha=depth_.~89:29 lengtha=down_,~56:32 lengtha=down_in~56:23
lengtha=down_to~0:40 lengtha=from_the~0:78,82:-57,85:-40,87:68,89:-30 lengtha=high_.~0:25
lengtha=higher_,~85:41 lengtha=hose_.~0:43 lengtha=in_summer~82:46 lengtha=in_the~0:45
lengtha=long_,~71:33 lengtha=long_.~0:47,10:18 lengtha=lower_.~85:-68,86:76
lengtha=lower_than~85:23 lengtha=of_1~71:56,85:-15,90:17 lengtha=of_2~87:30 lengtha=of_3~87:58
lengtha=of_cable~39:59 lengtha=of_drop~90:46 lengtha=of_lift~85:50 lengtha=of_pipe~87:40
lengtha=of_rise~85:45 lengtha=of_the~82:23 lengtha=over_the~0:8,72:33,85:-32 lengtha=pe_,~0:23
lengtha=pipe_,~0:34 lengtha=to_the~0:-33,87:61 lengtha=to_water~82:53 lengtha=under_the~0:-32,85:32
lengtha=up_.~0:-28,85:50 lengtha=up_and~85:41 lengtha=up_the~85:33 lengtha=wide_.~0:30
lengthb=~35:51,39:52 lengthb=,_house~72:-40,85:34 lengthb=,_lines~10:29 lengthb=,_pump~56:21
lengthb=,_rows~13:42 lengthb=,_static~94:52 lengthb=,_uphill~85:32 lengthb=._borehole~0:30
lengthb=?_|~0:-64 lengthb=a~39:50,71:23 lengthb=a_house~85:44 lengthb=a_tank~72:33
lengthb=barn_is~85:25 lengthb=bore_is~0:41 lengthb=creek_is~82:24,85:-26 lengthb=down_to~92:48
lengthb=each_line~10:39 lengthb=floor_is~72:44,85:-27 lengthb=ft_of~0:30 lengthb=gpm_at~0:50
lengthb=hose_is~71:35 lengthb=house_and~0:67,85:-37 lengthb=house_is~0:39,82:-27,87:31
lengthb=hung_at~90:36 lengthb=hut_,~0:44,35:18 lengthb=in_a~88:47,89:40 lengthb=is_about~87:45
lengthb=is_at~82:38 lengthb=is_only~89:47 lengthb=is_to~87:-22 lengthb=it_is~72:-50,82:40
lengthb=it_stands~0:36 lengthb=level_is~0:54 lengthb=level_of~94:38 lengthb=m_of~0:47
lengthb=no_,~82:33 lengthb=on_a~0:39 lengthb=outside_diameter~55:50 lengthb=pipe_,~0:41
lengthb=pipe_is~71:35 lengthb=pump_at~56:54 lengthb=pump_hangs~0:29 lengthb=pump_is~0:-44,39:55
lengthb=pump_stands~82:32 lengthb=pumping_level~92:42 lengthb=rise_is~85:52 lengthb=set_at~56:19
lengthb=shed_is~0:29 lengthb=sorry_,~82:27 lengthb=spring_is~0:14 lengthb=spring_lies~85:65,86:-53
lengthb=stands_at~94:25 lengthb=submersible_at~56:31 lengthb=tank_is~0:84,85:-23,87:-21
lengthb=tank_it's~87:32 lengthb=the_house~87:40 lengthb=there_are~82:33 lengthb=to_house~87:32
lengthb=up_to~0:54 lengthb=water_at~82:72 lengthb=water_is~0:-26,82:55
lengthb=water_level~82:-46,94:55 lengthb=we_have~0:36,87:-37 lengthb=well~0:45
lengthb=well_and~0:-31,85:34 lengthb=well_is~0:40,82:-34 lengthb=well_it's~87:25
lengthb=|_suction~0:31 m=angle3~33:61,36:117,47:74 m=area-1~6:43 m=area0~0:-41,6:57 m=area1~0:40
m=area3~0:73,6:-36 m=area4~6:-38,63:36 m=area5~0:25,6:131 m=area7~0:-37,6:48 m=bare-1~0:86
m=bare0~0:68,1:-80,3:-74,4:-55,5:-35,24:103,25:65,26:129,28:44,29:-37,31:64,32:100,44:-31,46:27,69:-25,70:88,80:-77
m=bare1~2:-34,3:-117,4:-88,5:-19,15:64,16:21,22:46,26:40,27:22,28:47,29:61,30:52,44:100,46:38,52:69,61:-34,62:84,69:74,70:-42,80:76,81:70,82:-28
m=bare2~0:17,1:59,2:34,4:31,24:-39,28:23,29:52,32:-44,44:-29,61:56,80:75,81:25
m=bare3~0:35,1:50,2:50,3:106,4:74,5:40,24:-29,26:-46,28:-16,31:-38,36:115,56:45,61:41,81:-58
m=bare4~3:6,4:61,5:54,81:-35 m=bare5~0:-38,1:44,3:48,80:39 m=charge3~0:34 m=charge4~40:54
m=charge5~40:144 m=current3~38:37 m=daily1~0:34 m=daily4~0:35,74:-23,75:77 m=daily5~74:61
m=daily6~0:-21,74:108 m=daily7~0:40 m=each3~75:53 m=each4~75:47 m=flow-1~0:-43,7:49,77:87,84:44
m=flow0~0:42,7:51 m=flow1~0:48,7:55,66:46,84:22,95:-47 m=flow2~0:25,8:51,57:43,66:-26,84:93,95:92
m=flow3~0:23,57:46,66:41,84:-50,93:54 m=flow5~0:29 m=length-1~14:157,82:63
m=length-2~0:-39,55:139,56:-30,87:-21,88:182,89:-47 m=length-3~0:292,71:-40,85:-23,87:-41,88:-36
m=length-4~0:66 m=length0~0:103,10:-33,13:120,35:-45,72:31,82:25,85:-75,86:-31,87:-75,88:102,89:-73
m=length1~0:47,13:35,35:-76,56:-71,59:84,71:31,82:131,85:65,86:61,87:-115,89:-62,94:49
m=length2~0:-37,35:-85,39:-42,56:-35,71:167,72:79,82:146,85:169,86:109,87:-86,88:-50,94:28
m=length3~0:-53,10:89,13:-43,14:-41,35:-123,39:38,56:141,72:51,85:124,88:-73,89:85,90:58,92:79
m=length4~0:-65,10:93,35:-78,39:146,56:98,71:-55,72:-32,82:-106,85:-63,86:-35,87:220,88:-38,89:187,90:48
m=length5~72:-50,82:-45,86:-30,87:213 m=length6~0:-60,35:281,82:-40,85:-39,87:94
m=length7~0:14,35:212,56:-38,82:-36 m=pair1~53:28 m=pair3~53:92 m=percent2~45:52 m=percent4~58:61
m=power-1~0:46 m=power0~0:45 m=power1~0:36 m=power4~0:-32,43:64 m=power5~43:170
m=pressure0~11:61,12:46,49:56,60:-42 m=pressure1~17:40,34:-45,53:18,54:97,60:115
m=pressure2~0:39,18:74,34:107,50:38,54:-40,60:-49 m=pressure3~17:40,49:101,53:70,54:54,60:57
m=pressure4~0:63,18:51,49:-47,50:51 m=pressure5~60:39 m=temperature2~83:45 m=temperature3~83:49
m=temperature4~19:100,33:37,83:-33 m=time0~0:43 m=time1~0:81,9:41,64:134,65:21,91:25 m=time2~9:37
m=time3~0:36 m=time4~0:-49 m=voltage2~0:93,48:47 m=voltage3~0:35,41:-60,42:69,48:130
m=voltage4~41:73 m=voltage5~41:48,48:33 m=volume0~0:29 m=volume1~20:83 m=volume2~20:59,68:-38,84:75
m=volume3~0:78,21:44,51:142,68:-26,73:-67 m=volume4~0:-64,21:42,51:179,68:-52,75:52
m=volume5~0:29,51:-51,78:76 m=volume6~51:-34,68:70,73:69 m=volume7~51:-58,67:42,68:73,73:104
m=volume8~0:18,51:-34,68:76,73:31 m=volume9~68:68 pairC=pressure~53:32 pairC=switch~53:64
pairL0=a~53:31 pairL0=switch~53:46 pairL2=.~53:41 pairM=pump~53:54 pairM=tank~53:83
pairM=well~53:28 pairR0=,~53:42 pairR0=.~53:2 pairR2=.~53:41 pairT=pump.placement~53:6
pairT=water.kind~53:31 pairT=way.length~53:22 pairT=way.pipe~53:13 paira=.~53:33 percentC=,~0:41
percentC=1~0:45 percentC=efficiency~58:65 percentC=motor~58:72 percentC=slope~0:36 percentL0=,~0:41
percentL0=about~45:24 percentL0=i~58:32 percentL1=,~45:48 percentL1=.~0:27 percentL2=,~45:38
percentL2=0~0:38 percentL2=roof~0:40 percentL2=|~45:36 percentM=drip~0:54 percentM=pump~0:51,45:61
percentM=roof~0:44 percentR0=.~0:57,58:61 percentR0=in~45:30 percentR0=the~45:35 percentR0=to~45:24
percentR1=.~45:30 percentT=power.battery~45:35 percentT=power.cable~45:58
percentT=power.capacity~45:35 percentT=power.facing~45:57 percentT=power.panel~45:54
percentT=power.series~45:55 percentT=power.source~45:43 percentT=power.tilt~45:35
percentT=power.voltage~45:38 percentT=pump.placement~45:48 percentT=water.kind~0:19,45:26
percentT=water.level~58:51 percentT=way.length~58:41 percentT=way.pipe~58:42 powerC=,~43:42
powerC=2~43:37 powerC=4~43:29 powerC=no~31:39 powerC=one~43:32 powerC=panels~43:72
powerC=power~0:22 powerC=pump~0:49 powerC=there~31:38 powerC=two~43:29 powerC=x~43:28
powerL0=a~0:79 powerL0=are~43:18 powerL0=one~43:29 powerL0=panels~43:45 powerL0=pump~0:45
powerL0=the~0:65 powerL0=two~43:22 powerL0=x~43:28 powerL1=,~31:38 powerL1=.~0:39,43:32
powerL1=at~0:31 powerL1=is~31:39 powerL1=the~43:24 powerL2=,~0:36,43:41 powerL2=there~31:39
powerL2=water~0:40 powerM=cistern~31:38 powerM=pump~0:55,43:70 powerM=spring~31:38
powerM=tank~43:42 powerR0=,~43:37 powerR0=.~0:81 powerR0=panel~43:47 powerR0=panels~43:57
powerR0=pump~0:42 powerR1=0~0:29 powerR1=a~31:38 powerR1=and~31:39 powerR2=.~43:41
powerT=power.battery~43:37 powerT=power.capacity~43:33 powerT=power.facing~43:33
powerT=power.source~43:81 powerT=power.voltage~43:78 powerT=pump.height~0:27
powerT=pump.placement~0:35 powerT=pump.present~31:39 powerT=store.volume~0:-29,43:22
powerT=water.kind~43:71 powerT=way.length~43:36 powera=.~0:69 powerb=a~0:28 pressureC=,~17:75,50:59
pressureC=0~0:20,18:52,49:55 pressureC=1~17:29,18:51 pressureC=2~17:63 pressureC=4~0:-39,53:40
pressureC=8~0:25 pressureC=:~0:63 pressureC=above~0:33 pressureC=air~49:69
pressureC=bar~50:55,53:18 pressureC=bladder~49:47 pressureC=booster~60:85 pressureC=box~60:23
pressureC=can~0:41 pressureC=charge~49:50 pressureC=checked~49:50 pressureC=comes~53:29
pressureC=constant~60:52 pressureC=control~60:34 pressureC=controlled~60:37
pressureC=cut~53:48,54:52 pressureC=cuts~54:21 pressureC=drip~0:48
pressureC=expansion~17:136,49:-60 pressureC=filter~34:41 pressureC=frequency~60:39
pressureC=from~0:-41 pressureC=gal~0:-30 pressureC=gallon~17:52 pressureC=gauge~0:30,49:31
pressureC=gives~11:63,60:-29 pressureC=got~0:40 pressureC=gpm~11:35 pressureC=h~12:31
pressureC=heater~0:-27,17:30,18:54 pressureC=holds~0:-17,60:78 pressureC=house~60:21
pressureC=keeps~60:73 pressureC=kicks~53:29 pressureC=l~0:35 pressureC=like~0:28
pressureC=lines~11:34 pressureC=litre~0:-21,49:34 pressureC=litres~49:53 pressureC=m~0:40
pressureC=manometer~0:33 pressureC=off~54:59 pressureC=only~34:42 pressureC=out~54:88
pressureC=plastic~34:32 pressureC=point~60:25 pressureC=pre~49:35 pressureC=precharge~49:71
pressureC=precharged~49:43 pressureC=pressure~11:31,49:68,54:30 pressureC=pump~53:49,54:49,60:36
pressureC=rated~0:-42,34:25,50:78 pressureC=reads~0:26 pressureC=relief~18:67,60:-31
pressureC=run~0:37 pressureC=set~60:90 pressureC=shows~0:33 pressureC=shuts~54:34 pressureC=so~0:36
pressureC=speed~60:56 pressureC=start~53:34 pressureC=stop~54:20 pressureC=stops~54:34
pressureC=switch~49:-48,53:43,54:72,60:-38 pressureC=tank~0:-47,17:44,49:88,50:52,54:-31
pressureC=there~0:45 pressureC=valve~0:31,18:90,60:-35 pressureC=variable~60:28
pressureC=vessel~0:-57,17:57,49:73 pressureC=weakest~34:60 pressureC=well~0:-50
pressureL0=,~49:16,60:5 pressureL0=.~11:49 pressureL0=0~49:72 pressureL0=:~0:30,49:31
pressureL0=a~0:52 pressureL0=air~49:37 pressureL0=and~54:60
pressureL0=at~0:50,12:44,18:45,53:51,54:65 pressureL0=booster~0:41 pressureL0=charge~49:32
pressureL0=comes~53:24 pressureL0=cut~53:51,54:29 pressureL0=cuts~54:21 pressureL0=drip~0:46,11:17
pressureL0=for~0:-29,34:37 pressureL0=gauge~0:29 pressureL0=gives~0:25,60:-29 pressureL0=gpm~0:35
pressureL0=has~0:30,49:49 pressureL0=holds~0:-17,60:79 pressureL0=in~53:102
pressureL0=is~0:-48,34:17,49:41 pressureL0=it~0:-34,49:34,60:22 pressureL0=keeps~60:73
pressureL0=l~49:48 pressureL0=like~0:28 pressureL0=lines~11:41 pressureL0=off~54:63
pressureL0=on~53:16 pressureL0=only~34:43 pressureL0=out~54:88 pressureL0=point~60:25
pressureL0=pre~49:34 pressureL0=precharge~49:68 pressureL0=precharged~49:43
pressureL0=pressure~0:59,60:28 pressureL0=pump~0:61,60:31 pressureL0=pumped~17:32
pressureL0=rated~0:-37,34:25,50:84 pressureL0=reads~0:26 pressureL0=relief~18:32
pressureL0=says~0:-57 pressureL0=set~54:-37,60:124 pressureL0=shows~0:33 pressureL0=shuts~54:34
pressureL0=start~53:36 pressureL0=stop~54:27 pressureL0=stops~54:34 pressureL0=switch~54:33
pressureL0=the~0:74,11:71,54:-36,60:25 pressureL0=to~17:39 pressureL0=valve~18:70
pressureL1=,~17:30,54:43,60:-28 pressureL1=.~0:-85,12:49,34:40,54:44 pressureL1=0~54:42
pressureL1=1~17:35 pressureL1=2~17:49,50:47,54:41 pressureL1=3~49:24 pressureL1=5~49:36
pressureL1=6~0:27 pressureL1=8~49:22 pressureL1=a~0:-73,34:33 pressureL1=and~0:-29,53:38,60:45
pressureL1=at~11:55 pressureL1=bar~53:29 pressureL1=box~60:23 pressureL1=constant~60:48
pressureL1=cut~54:29 pressureL1=drips~18:25 pressureL1=expansion~17:37 pressureL1=h~11:45
pressureL1=house~60:38 pressureL1=is~0:-40,34:28 pressureL1=l~12:37 pressureL1=m~0:24
pressureL1=of~0:-42 pressureL1=pressure~0:-46,11:49 pressureL1=pump~53:51,54:22,60:43
pressureL1=relief~18:62 pressureL1=says~0:36 pressureL1=set~54:35
pressureL1=switch~53:40,54:38,60:-26 pressureL1=tank~49:44
pressureL1=the~0:-29,34:57,49:15,53:44,54:11 pressureL1=valve~18:38 pressureL1=with~49:33
pressureL1=|~60:50 pressureL2=,~12:40,17:27,60:51 pressureL2=.~11:40,12:41,34:12,49:27
pressureL2=0~0:-26,12:41,18:75,49:-38,50:72 pressureL2=1~0:-22,12:57,60:26
pressureL2=2~11:38,53:-34 pressureL2=3~60:44 pressureL2=4~49:40 pressureL2=5~17:55
pressureL2=6~0:-18 pressureL2=:~0:65 pressureL2=apart~12:50 pressureL2=bar~49:86 pressureL2=c~17:50
pressureL2=cistern~60:49 pressureL2=cm~12:39 pressureL2=drip~12:66
pressureL2=expansion~17:76,49:-40 pressureL2=ft~11:34 pressureL2=gives~11:47 pressureL2=ground~0:43
pressureL2=heater~18:79 pressureL2=l~60:64 pressureL2=litre~18:51 pressureL2=m~34:18
pressureL2=off~53:49 pressureL2=one~60:-47 pressureL2=people~0:52 pressureL2=pressure~49:24
pressureL2=pump~0:-40,11:38,53:27 pressureL2=room~49:43 pressureL2=set~53:36
pressureL2=tank~0:-52,49:44 pressureL2=two~60:59 pressureL2=water~18:59 pressureL2=|~0:64,60:-31
pressureM=cistern~54:22,60:30 pressureM=drip~11:117,12:63,17:69,18:72,49:-44
pressureM=pump~0:93,17:49,18:59,50:46,53:69,54:51,60:94 pressureM=spring~0:32,34:57,60:-42
pressureM=tank~17:49,18:49,49:73,50:43,60:-41 pressureR0=,~60:32
pressureR0=.~0:24,12:39,17:45,18:32,34:76,49:44,54:40,60:53 pressureR0=?~0:57
pressureR0=and~0:-52,53:23 pressureR0=at~0:34,11:44,60:42 pressureR0=begin~11:32
pressureR0=const~60:19 pressureR0=in~0:-33,49:76 pressureR0=lines~11:63 pressureR0=of~49:45
pressureR0=on~53:17 pressureR0=pressure~60:35 pressureR0=pump~60:60 pressureR0=rows~12:59
pressureR0=set~60:34 pressureR0=shower~0:20 pressureR0=switch~0:-31,49:52,53:40
pressureR0=the~0:29,11:26 pressureR0=where~11:63 pressureR1=,~0:-11,60:25
pressureR1=.~11:46,12:26,53:44 pressureR1=0~12:38,53:42 pressureR1=2~0:-57,50:58,54:38
pressureR1=3~11:27 pressureR1=5~54:25 pressureR1=6~0:24,53:38 pressureR1=8~0:47 pressureR1=?~34:40
pressureR1=and~0:26 pressureR1=bar~53:43 pressureR1=open~0:46 pressureR1=psi~0:34
pressureR1=row~11:36 pressureR1=the~0:-28,49:43 pressureR1=with~0:39 pressureR2=,~54:40
pressureR2=.~11:58,49:22 pressureR2=1~0:-41,49:40 pressureR2=5~49:-54 pressureR2=6~0:-37,34:33
pressureR2=bar~0:41 pressureR2=from~60:59 pressureR2=house~60:20 pressureR2=pressure~18:48,53:52
pressureR2=pump~49:30 pressureR2=shower~0:29 pressureT=beds.area~11:68,12:50
pressureT=power.battery~54:29 pressureT=power.capacity~54:29 pressureT=power.voltage~0:43,54:72
pressureT=pump.control~0:-64,18:50,49:39,50:65,60:55
pressureT=pump.cut_in~49:47,50:50,53:-88,54:149,60:-73
pressureT=pump.cut_out~49:45,50:49,53:160,54:-91,60:-84 pressureT=pump.most_flow~60:27
pressureT=pump.placement~49:47 pressureT=pump.present~0:53 pressureT=pump.set~0:71,60:-73
pressureT=pump.starts~50:43 pressureT=pump.works~54:49 pressureT=store.volume~54:48,60:49
pressureT=tank.level~0:42,34:37,60:-30 pressureT=water.kind~11:52,18:46,34:50,54:29
pressureT=water.level~0:30,54:21 pressureT=water.yield~60:47 pressureT=way.climb~34:47,60:66
pressureT=way.length~0:62,34:68,60:40 pressureT=way.pipe~34:67,60:27 pressureT=well.bore~60:56
pressureT=well.depth~0:9,49:29 pressureT=well.static~0:31 pressurea=~49:31,53:27,60:22
pressurea=.~34:33,49:57,53:15,60:26 pressurea=._|~0:24 pressurea=and_stops~53:32
pressurea=at_the~11:22,60:59 pressurea=in_it~49:47 pressurea=off_.~54:38
pressurea=where_lines~11:32 pressureb=cut_in~53:54 pressureb=cut_out~54:35 pressureb=gpm_at~0:35
pressureb=in_at~53:57 pressureb=it_at~60:20 pressureb=off_at~54:63 pressureb=on_at~53:32
pressureb=out_at~54:30 pressureb=pump_at~60:37 pressureb=pump_gives~0:25,60:-29
pressureb=set_to~53:24 pressureb=stops_at~54:34 range~0:63,53:223,60:-44,82:-98,84:33
temperatureC=,~33:36 temperatureC=0~19:49 temperatureC=comes~83:23 temperatureC=heater~19:65
temperatureC=set~19:41 temperatureC=up~83:28 temperatureC=water~83:109 temperatureL0=at~19:75
temperatureL0=comes~83:23 temperatureL0=is~19:36 temperatureL0=set~19:33 temperatureL0=up~83:28
temperatureL0=water~83:65 temperatureL1=,~83:35 temperatureL1=.~83:63 temperatureL1=0~19:41
temperatureL1=3~0:40 temperatureL1=heater~19:38 temperatureL1=the~33:42
temperatureL1=water~19:30,83:45 temperatureL2=,~33:37,83:59 temperatureL2=.~33:33,83:34
temperatureL2=1~83:26 temperatureL2=2~0:29 temperatureM=drip~0:53,19:36
temperatureM=pump~0:29,19:61,33:49 temperatureM=tank~19:53 temperatureM=well~19:29
temperatureR0=.~0:33,19:32,33:23,83:71 temperatureR0=|~19:28 temperatureR1=.~33:49
temperatureR1=4~0:30 temperatureR1=at~33:27 temperatureR2=.~0:29
temperatureT=power.source~33:38,83:22 temperatureT=pump.control~19:22
temperatureT=pump.placement~83:49 temperatureT=pump.set~19:27 temperatureT=store.volume~0:36
temperatureT=water.kind~0:27,19:25,33:48,83:58 temperatureT=water.level~33:41,83:43
temperatureT=way.climb~83:54 temperatureT=way.length~19:38,33:36,83:45
temperatureT=way.pipe~33:38,83:41 temperaturea=.~0:36 temperatureb=set_at~19:21
temperatureb=up_at~83:23 timeC=,~65:28 timeC=0~0:46,79:44 timeC=1~79:76,91:24 timeC=3~79:67
timeC=5~91:29 timeC=:~91:25 timeC=after~0:23 timeC=back~0:37 timeC=bucket~0:41 timeC=came~0:51
timeC=can~9:53 timeC=dry~0:31 timeC=filled~65:37 timeC=from~65:35 timeC=he~0:14 timeC=l~91:34
timeC=min~91:37 timeC=morning~79:33 timeC=pump~65:48 timeC=ran~91:43 timeC=run~9:61
timeC=runs~65:30 timeC=should~64:41 timeC=showers~0:26 timeC=spring~0:46 timeC=takes~79:33
timeC=took~0:27 timeC=want~0:-26,64:44 timeC=water~0:53,9:48 timeL0=,~65:43 timeL0=.~0:-47,9:21
timeL0=0~79:35 timeL0=a~64:29 timeL0=after~0:23 timeL0=can~9:28 timeL0=dry~0:31
timeL0=for~64:48,91:68 timeL0=gallons~79:7 timeL0=i~9:35 timeL0=in~79:107 timeL0=is~0:19
timeL0=min~91:36 timeL0=run~9:69 timeL0=runs~65:32 timeL0=the~79:26 timeL0=took~0:25
timeL0=want~0:-26,64:44 timeL1=.~0:-21,91:48 timeL1=0~79:53 timeL1=1~91:26 timeL1=5~79:20,91:30
timeL1=:~91:28 timeL1=l~91:28 timeL1=lines~9:38 timeL1=m~65:39 timeL1=the~65:58 timeL2=,~9:42
timeL2=.~9:28,64:43 timeL2=1~9:46 timeL2=2~0:-90,64:51,65:13 timeL2=3~65:24 timeL2=4~91:26
timeL2=8~0:-51 timeL2=:~0:28 timeL2=filled~65:34 timeL2=m~0:-60,9:50,91:24 timeL2=morning~79:33
timeM=drip~0:-27,9:99 timeM=pump~0:71,9:30,65:38,91:39 timeM=spring~0:26
timeM=tank~0:23,64:67,65:45 timeM=well~0:48,91:56 timeR0=,~0:41 timeR0=.~0:47,9:38,64:20,79:55
timeR0=a~9:51,65:36 timeR0=day~0:-44,9:54,65:88 timeR0=is~9:46 timeR0=of~64:54 timeR0=rain~64:28
timeR0=the~0:44 timeR0=to~0:56 timeR0=water~64:33 timeR0=without~0:-51,64:77 timeR1=0~0:34
timeR1=a~65:36 timeR1=that~0:44 timeR1=the~9:37 timeR2=.~0:22,9:24 timeR2=0~65:44 timeR2=1~65:55
timeR2=2~0:47 timeT=beds.area~9:23 timeT=power.source~65:77 timeT=pump.control~0:56
timeT=pump.cut_in~0:33 timeT=pump.cut_out~0:33 timeT=pump.placement~0:36,64:30
timeT=pump.present~0:40 timeT=store.volume~64:67 timeT=tank.level~65:30 timeT=tank.volume~65:23
timeT=water.kind~0:47,9:26,64:34,65:51,91:37 timeT=water.level~91:48
timeT=water.yield~0:-66,64:44,65:34 timeT=way.climb~9:41 timeT=way.length~0:53,65:45
timeT=way.pipe~0:51,65:26 timeT=well.bore~91:71 timeT=well.cover~0:-40,91:73 timeT=well.depth~91:57
timeT=well.static~91:44 timeT=well.steady~0:49 timea=~64:48 timea=.~0:31,79:50,91:22
timea=a_day~9:50,65:45 timea=of_water~64:33 timea=without_rain~64:28 timea=without_the~64:37
timeb=it_took~0:24 timeb=water_for~0:47 u=angle°~36:115,37:38,47:112 u=angle°C~33:75
u=areaacre~0:27,6:40 u=areaft²~0:-54,6:66 u=areaha~6:47 u=aream²~0:133,6:86,63:40
u=bare~0:294,1:65,2:39,3:84,4:55,5:26,24:42,26:64,27:19,28:49,29:37,36:62,61:34,80:66,82:-65,89:-45,94:-36
u=bareft~82:15 u=barem~0:-48,82:75 u=chargeAh~40:189 u=currentA~38:46 u=dailyL/day~74:141,75:97
u=dailygal/day~74:51,76:38 u=dailym³/day~0:91 u=eachL/day~75:72 u=eachgal/day~75:34
u=flowL/h~0:-45,7:91 u=flowL/min~0:73,7:-37,57:52,66:33,77:69,84:94,93:62 u=flowL/s~0:-30,84:71
u=flowgph~7:111 u=flowgpm~0:-17,7:-40,8:50,57:28,66:37,84:89,95:40 u=flowm³/h~0:141,8:30,84:-51
u=lengthcm~14:53 u=lengthft~35:88,71:40,72:58,82:100,85:53,86:85,87:102,88:-117,90:44
u=lengthin~0:103,14:48,55:66,71:-30,82:-25,85:-40,87:-45,88:149,89:-49 u=lengthkm~87:34
u=lengthm~10:50,14:-27,35:110,39:51,55:-32,56:28,59:52,71:79,72:49,82:75,85:85,87:61,88:-20,89:78
u=lengthmi~87:47 u=lengthmm~0:157,55:68,56:-30,72:-34,87:-36,88:81,89:-29 u=pairbar~53:29
u=pairpsi~53:92 u=percent%~0:50,45:57,58:57 u=powerW~43:181 u=powerhp~0:98,43:-26 u=powerkW~0:48
u=pressurebar~0:39,11:47,12:24,34:72,49:44,53:54,54:46,60:41 u=pressurekPa~60:30
u=pressuremwater~0:25 u=pressurepsi~0:60,18:8,49:86,53:32,54:55,60:58 u=temperature°C~19:44,83:61
u=temperature°F~19:28,33:38,83:23 u=timedays~0:19,64:218 u=timeh~9:81,64:-44,65:63,79:75,91:30
u=timemin~79:27,91:51 u=times~0:95 u=timeweeks~0:40 u=voltageV~0:64,41:44,42:33,48:195
u=volumeL~0:28,21:44,51:108,68:47,73:81,78:78,84:49 u=volumeL/day~0:-46,74:25,75:73
u=volumegal~0:56,20:52,21:31,51:90,67:55,68:63 u=volumeimpgal~73:37 u=volumem³~0:116,51:-58,68:60
voltageC=,~42:41,48:32 voltageC=0~42:38 voltageC=3~42:74 voltageC=4~48:-44 voltageC=batteries~0:41
voltageC=battery~0:18 voltageC=controller~41:88,48:-37 voltageC=each~42:58 voltageC=max~41:30
voltageC=mppt~41:64 voltageC=open~42:69 voltageC=panels~42:48 voltageC=runs~48:32
voltageC=series~42:36 voltageC=system~48:26 voltageC=voc~42:61 voltageC=voltage~42:43
voltageC=w~42:39 voltageL0=,~48:22 voltageL0=.~0:46 voltageL0=a~48:49 voltageL0=battery~0:14
voltageL0=controller~41:53 voltageL0=is~0:14,48:41 voltageL0=max~41:26 voltageL0=runs~48:28
voltageL0=system~48:31 voltageL0=the~48:39 voltageL0=voc~42:61 voltageL0=voltage~42:43
voltageL0=x~0:34 voltageL0=|~48:34 voltageL1=,~48:24 voltageL1=.~48:42 voltageL1=1~48:39
voltageL1=2~0:72 voltageL1=3~42:40 voltageL1=5~0:-39 voltageL1=controller~41:26
voltageL1=each~0:29,48:-32 voltageL1=l~0:31,48:-15 voltageL1=mppt~41:54 voltageL1=of~0:-33,42:38
voltageL1=the~0:23 voltageL1=to~0:43 voltageL2=,~41:47,42:38 voltageL2=.~0:-39,41:32,42:24,48:28
voltageL2=0~41:44 voltageL2=1~48:37 voltageL2=4~41:29 voltageL2=8~41:52 voltageL2=9~0:28,48:-23
voltageL2=ft~48:27 voltageL2=m~0:87 voltageL2=series~42:42 voltageL2=v~41:34 voltageL2=water~0:38
voltageL2=|~0:36 voltageM=cistern~48:37 voltageM=drip~48:45 voltageM=pump~41:50,48:84
voltageM=spring~48:25 voltageM=tank~41:26 voltageM=well~48:58 voltageR0=.~42:49 voltageR0=1~48:47
voltageR0=8~48:40 voltageR0=a~0:40 voltageR0=and~0:39,48:-32 voltageR0=at~48:49
voltageR0=bank~48:38 voltageR0=golf~0:42 voltageR0=pump~48:36 voltageR0=system~0:30
voltageR1=.~48:45 voltageR1=0~41:40 voltageR1=1~0:17 voltageR1=a~41:38 voltageR1=ah~48:78
voltageR1=panels~48:51 voltageR1=to~0:20 voltageR2=,~0:27 voltageR2=0~48:26 voltageR2=4~0:-33,48:47
voltageR2=w~48:40 voltageR2=|~48:33 voltageT=beds.area~48:34 voltageT=power.battery~48:33
voltageT=power.cable~41:34,42:26 voltageT=power.capacity~48:23 voltageT=power.facing~42:58
voltageT=power.limit~41:-33,42:74 voltageT=power.open_voltage~41:38
voltageT=power.panel~0:41,41:60,42:47,48:-32 voltageT=power.series~41:56,42:65,48:-57
voltageT=power.source~0:13,41:51,42:42,48:45 voltageT=power.strings~41:53,42:33
voltageT=power.tilt~41:51 voltageT=power.voltage~0:139,48:-130 voltageT=pump.cut_out~48:17
voltageT=pump.placement~0:-45,41:34,42:45,48:37 voltageT=pump.works~48:42
voltageT=store.volume~0:49,48:41 voltageT=tank.level~42:43 voltageT=tank.volume~42:44
voltageT=water.kind~41:41,42:23,48:80 voltageT=water.level~42:19 voltageT=water.yield~48:32
voltageT=way.climb~48:41 voltageT=way.length~48:72 voltageT=way.pipe~48:47 voltagea=~0:21,48:31
voltagea=system_,~0:32 voltageb=~48:34 voltageb=a~48:35 voltageb=battery_is~0:24 volumeC=(~68:51
volumeC=,~67:38,73:39,75:33 volumeC=0~20:33,73:-65 volumeC=1~20:45,73:-32 volumeC=2~0:-38
volumeC=3~68:-43 volumeC=4~68:26 volumeC=6~0:42 volumeC=:~68:21,78:35 volumeC=?~0:34,51:-40
volumeC=above~0:-40,68:51 volumeC=bar~51:35 volumeC=cistern~68:58 volumeC=creek~0:46
volumeC=day~74:63 volumeC=elevated~0:32,73:-20 volumeC=everything~73:35 volumeC=expansion~20:75
volumeC=fire~67:58 volumeC=from~0:49 volumeC=ft~68:39 volumeC=got~0:55,51:-38,73:-57
volumeC=hav~0:39 volumeC=header~73:55 volumeC=heater~20:50 volumeC=higher~0:41 volumeC=hill~73:21
volumeC=holds~0:14 volumeC=hour~78:71 volumeC=keep~67:62 volumeC=l~0:-53 volumeC=live~68:41
volumeC=loft~73:37 volumeC=morning~78:30 volumeC=need~74:40 volumeC=out~68:37 volumeC=peak~78:23
volumeC=people~75:43 volumeC=pressure~51:54,73:-35 volumeC=pump~0:-20,68:45 volumeC=rainwater~68:57
volumeC=sits~68:32 volumeC=size~68:31 volumeC=spring~68:47,84:43 volumeC=takes~0:-16,78:60
volumeC=tank~51:45,68:35,73:82 volumeC=there~0:-23,20:17 volumeC=truck~0:39 volumeC=two~0:58
volumeC=underground~68:49 volumeC=use~78:51 volumeC=vessel~20:53,51:45 volumeC=wants~67:67
volumeC=we'd~67:23 volumeL0=,~0:-77,73:62,75:36 volumeL0=.~51:51,68:16 volumeL0=:~68:27,78:36
volumeL0=a~0:39,20:41,68:59,73:71,84:28 volumeL0=about~68:61 volumeL0=an~51:31 volumeL0=at~75:28
volumeL0=cistern~0:43,68:73 volumeL0=day~74:46 volumeL0=draws~68:31 volumeL0=elevated~0:29
volumeL0=expansion~20:59 volumeL0=fire~67:33 volumeL0=from~68:35 volumeL0=got~68:39
volumeL0=has~73:-39 volumeL0=have~0:-35,73:22 volumeL0=header~73:42 volumeL0=hill~68:-39,73:31
volumeL0=holds~0:21 volumeL0=hour~78:72 volumeL0=is~0:-44,20:29,51:38,73:21 volumeL0=keep~67:62
volumeL0=loft~73:36 volumeL0=m~68:56 volumeL0=people~75:46 volumeL0=pressure~51:32
volumeL0=rain~68:34 volumeL0=rainwater~68:35 volumeL0=spring~0:-53,84:60 volumeL0=storage~68:49
volumeL0=takes~0:-37,78:60 volumeL0=tank~0:63,51:55,68:25 volumeL0=the~68:21,73:63
volumeL0=there~20:21 volumeL0=to~67:36 volumeL0=two~0:44 volumeL0=up~73:43
volumeL0=vessel~20:37,51:44 volumeL0=wants~67:67 volumeL0=we~0:-44,74:67,78:47 volumeL0=with~68:-40
volumeL0=|~0:-36 volumeL1=,~51:33,67:49,73:-28 volumeL1=.~0:18,74:44 volumeL1=0~0:37,20:41
volumeL1=2~0:-32,68:25 volumeL1=3~0:-68,51:30 volumeL1=4~0:33 volumeL1=5~0:35 volumeL1=6~73:40
volumeL1=8~0:-36 volumeL1=9~68:26 volumeL1=a~51:42,74:38 volumeL1=above~68:44
volumeL1=at~68:25,73:-30 volumeL1=bar~0:-31 volumeL1=day~68:-36,73:27 volumeL1=draws~0:31
volumeL1=everything~73:35 volumeL1=fills~73:-29 volumeL1=hour~68:57 volumeL1=hours~0:60
volumeL1=in~68:-51,73:52,78:37 volumeL1=is~73:23 volumeL1=m~0:37,68:-29,73:40 volumeL1=of~73:34
volumeL1=off~68:30 volumeL1=on~73:23 volumeL1=one~21:50,68:43 volumeL1=pressure~51:42
volumeL1=pump~0:-17,68:47 volumeL1=tank~0:-26,73:67 volumeL1=the~51:20,78:23,84:45
volumeL1=there~0:49 volumeL1=time~0:39 volumeL1=valve~0:45 volumeL1=water~0:-35 volumeL1=|~0:37
volumeL2=,~0:82,21:50,51:-26 volumeL2=.~51:11,74:68 volumeL2=0~0:-61,73:46 volumeL2=2~51:41
volumeL2=3~0:41,68:-36,78:47 volumeL2=4~51:49 volumeL2=5~0:-70,20:50,51:42,73:27
volumeL2=6~20:28,74:40 volumeL2=7~0:-46,73:47 volumeL2=9~0:32 volumeL2=bar~0:-47 volumeL2=by~73:35
volumeL2=c~20:42 volumeL2=cistern~0:-40 volumeL2=day~0:-32,68:44 volumeL2=from~68:42
volumeL2=gallons~0:-38,73:34 volumeL2=generator~0:36 volumeL2=l~0:-33 volumeL2=m~0:25,73:-31
volumeL2=off~0:-40,51:46,73:55 volumeL2=one~0:-57 volumeL2=only~0:32 volumeL2=open~51:-38
volumeL2=pressure~0:70 volumeL2=pump~68:39 volumeL2=rain~0:40 volumeL2=relief~20:37
volumeL2=says~68:45 volumeL2=set~51:42 volumeL2=showers~0:42 volumeL2=so~0:40 volumeL2=south~0:27
volumeL2=spring~68:30 volumeL2=switch~0:40 volumeL2=tank~0:-44,68:88,73:33 volumeL2=there~73:39
volumeL2=use~68:37 volumeL2=v~68:-33 volumeL2=valve~20:39 volumeL2=water~20:24 volumeL2=which~68:54
volumeL2=|~0:-40 volumeM=cistern~67:43,68:109 volumeM=drip~20:75,21:42,51:-38,68:-17,73:41
volumeM=pump~0:74,20:42,21:76,51:31,68:72,74:41 volumeM=roof~0:42 volumeM=spring~0:11,73:-37,84:60
volumeM=tank~0:-22,20:39,21:35,51:47,67:36,68:65,73:122 volumeM=well~21:55,51:29,68:-43
volumeR0=,~20:38,68:21,78:41 volumeR0=.~51:23,68:71,73:51,75:35 volumeR0=0~0:-23,75:27,78:25
volumeR0=1~21:33 volumeR0=2~51:45 volumeR0=4~78:28 volumeR0=5~0:37,68:-26,78:27
volumeR0=6~21:39,73:-36,75:28,84:63 volumeR0=9~75:27,78:27 volumeR0=:~84:37 volumeR0=a~0:44
volumeR0=above~73:45 volumeR0=and~0:-44,68:27,73:60 volumeR0=at~21:80 volumeR0=back~67:43
volumeR0=below~68:46 volumeR0=beside~68:38 volumeR0=bladder~51:42 volumeR0=bucket~0:72
volumeR0=by~0:29,20:17,73:-40 volumeR0=charged~20:38 volumeR0=cistern~68:46 volumeR0=concrete~73:54
volumeR0=each~75:48 volumeR0=expansion~20:85 volumeR0=for~67:61 volumeR0=ground~68:19
volumeR0=heater~0:-29,21:128,51:-43 volumeR0=house~68:35 volumeR0=i~0:-39,68:42 volumeR0=ibc~68:36
volumeR0=in~0:75,68:-29,78:58,84:33 volumeR0=is~68:-57,84:34 volumeR0=it~0:-56,68:45
volumeR0=kept~0:-33,21:50,67:62 volumeR0=next~68:35 volumeR0=of~67:45 volumeR0=on~73:43
volumeR0=one~0:-27 volumeR0=out~0:42 volumeR0=poly~68:36 volumeR0=pressure~51:49
volumeR0=put~0:57,51:-37 volumeR0=rainwater~68:25 volumeR0=right~68:62 volumeR0=sits~51:31,73:26
volumeR0=stands~0:33 volumeR0=storage~68:35 volumeR0=tank~0:-34,20:49,51:75,68:46,73:51
volumeR0=terrace~0:37 volumeR0=that~73:50 volumeR0=the~68:71,73:45 volumeR0=to~20:34,68:19
volumeR0=under~0:26 volumeR0=vessel~51:73 volumeR0=water~0:-40,21:82 volumeR0=which~0:31
volumeR0=|~0:-46 volumeR1=,~73:45 volumeR1=.~20:54,67:42,68:-49,73:21,78:26,84:25
volumeR1=2~0:-40,51:32 volumeR1=5~0:-46,20:37,73:38 volumeR1=8~51:53 volumeR1=a~75:54
volumeR1=above~0:27 volumeR1=after~78:32,84:36 volumeR1=and~0:52,68:-17 volumeR1=beside~68:21
volumeR1=booster~68:35 volumeR1=c~21:38 volumeR1=day~75:27 volumeR1=fire~67:44 volumeR1=for~67:28
volumeR1=from~68:24 volumeR1=ft~0:-54,73:42 volumeR1=full~84:37 volumeR1=garden~68:-29
volumeR1=hill~73:34 volumeR1=hours~78:31 volumeR1=house~0:-32,73:40 volumeR1=in~0:-30,67:31
volumeR1=is~51:-52 volumeR1=it~0:24 volumeR1=l~75:28 volumeR1=loft~73:33 volumeR1=m~0:21
volumeR1=minutes~78:24 volumeR1=of~0:-57,68:37 volumeR1=one~84:36 volumeR1=outside~68:41
volumeR1=pump~68:50,73:-28 volumeR1=relief~21:26 volumeR1=seconds~0:43,84:39 volumeR1=shed~68:33
volumeR1=spring~0:32 volumeR1=the~0:-46,51:31 volumeR1=up~68:46 volumeR1=|~0:34
volumeR2=,~0:-34,21:29,73:14 volumeR2=.~73:55,78:41 volumeR2=0~73:69 volumeR2=1~68:65
volumeR2=2~68:33 volumeR2=3~0:-50,51:51 volumeR2=6~0:-32,21:33 volumeR2=above~0:-39,68:40,73:44
volumeR2=bar~0:-34,20:29 volumeR2=beds~73:41 volumeR2=below~73:58 volumeR2=draws~68:29
volumeR2=f~21:20 volumeR2=four~0:51 volumeR2=ft~73:23 volumeR2=higher~73:29 volumeR2=m~73:27
volumeR2=min~0:39,68:-40 volumeR2=minute~84:36 volumeR2=over~0:49 volumeR2=psi~0:-26,51:31
volumeR2=pump~51:-29,68:83 volumeR2=seconds~0:32 volumeR2=stands~0:39,68:-38 volumeR2=surface~68:37
volumeR2=tank~0:43 volumeR2=taps~73:29 volumeR2=than~73:37 volumeR2=use~0:33 volumeR2=v~68:44
volumeR2=was~0:47 volumeR2=water~68:56 volumeR2=|~0:-65 volumeT=beds.area~74:53
volumeT=power.battery~0:-80,68:66 volumeT=power.cable~68:36,73:-35 volumeT=power.capacity~68:56
volumeT=power.facing~0:40,73:-31 volumeT=power.open_voltage~0:34,73:-27 volumeT=power.panel~0:22
volumeT=power.source~0:26,51:-42,68:-43,73:69,74:45 volumeT=power.tilt~68:37
volumeT=power.voltage~0:-29,68:91,73:-40 volumeT=pump.control~0:51,21:37,51:65,73:-55
volumeT=pump.cut_in~51:56,73:-41 volumeT=pump.cut_out~21:24,51:79,73:-41
volumeT=pump.height~0:54,68:-38 volumeT=pump.placement~51:36,68:10 volumeT=pump.present~0:20,73:57
volumeT=pump.set~0:36,21:31,73:-40 volumeT=pump.works~0:-41,74:35 volumeT=store.days~0:34
volumeT=store.hours~0:39,73:-36 volumeT=store.reserve~68:56
volumeT=store.volume~0:44,51:47,67:68,68:-132 volumeT=tank.level~0:37,51:-45,68:-87,73:189
volumeT=tank.volume~68:50,73:-145,74:34 volumeT=water.kind~0:24,21:50,67:42,68:66,74:41,84:41
volumeT=water.level~51:36,74:63 volumeT=water.temperature~21:44
volumeT=water.yield~0:-55,21:24,78:42 volumeT=way.climb~0:28,21:38,68:81,73:-54
volumeT=way.length~0:43,21:45,73:50 volumeT=way.pipe~0:89,73:26 volumeT=well.depth~51:35,68:-30
volumeT=well.steady~0:59 volumea=~51:57 volumea=,_filled~0:33 volumea=.~0:66,68:34
volumea=and_stands~73:43 volumea=bladder_tank~51:42 volumea=expansion_tank~20:85
volumea=in_the~0:43,68:-32 volumea=poly_tank~68:31 volumea=pressure_tank~51:70
volumea=storage_tank~68:35 volumea=tank_,~0:50 volumea=tank_on~73:35 volumea=under_the~0:29
volumea=water_heater~21:70 volumeb=,_about~68:45 volumeb=._tank~73:58 volumeb=a~0:27
volumeb=cistern~0:53,68:-43 volumeb=cistern_is~0:-23,68:35 volumeb=cistern_of~0:46
volumeb=expansion_vessel~20:40 volumeb=from_a~68:64 volumeb=have_a~73:20 volumeb=is_a~20:18
volumeb=tank_is~0:67,68:-34 volumeb=tank_of~0:53 volumeb=to_keep~67:39 volumeb=vessel_is~51:32
"""
