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
L=(~0:44,3:45 L=)~3:38,86:31
L=,~0:21,13:29,28:-55,38:-39,47:26,57:-49,58:-40,64:25,72:50,74:29,75:-34,78:-42,79:35,90:-32
L=.~3:30,6:-21,11:21,16:-31,25:15,27:32,30:37,35:-47,45:-30,54:-32,63:-43,66:-33,69:-22,71:47,73:-31,77:6,80:23,83:-40,86:28,89:-44
L=0~0:51,1:30,4:-35,18:36,25:-34,30:-44,37:51,65:-46,69:23,76:30,79:38,81:15,82:38
L=1~4:-33,53:75,57:-33
L=2~0:59,14:53,16:41,25:42,30:37,31:36,43:-41,49:35,57:-40,65:11,69:25,72:-38,78:26,79:-37,83:-44
L=3~0:19,48:20,55:-48,65:-41,69:36,72:73,86:25,91:-43 L=4~3:16,25:26,41:36,69:-30,84:22
L=5~0:50,37:44,48:22,50:17,70:-48,77:-33,84:43,86:39,88:24 L=6~0:89,70:46
L=8~1:-47,3:39,81:42,91:39 L=9~0:39,5:45,65:21,79:-47,81:19 L=:~23:44,34:43,75:24,77:31,81:28,82:53
L=;~65:28,79:-41,82:-29 L=?~77:26,79:52
L=a~0:69,6:38,27:-31,28:32,34:-38,39:33,43:-40,47:41,52:44,53:-41,65:34,70:42,75:-27,77:42,81:72,84:26,85:23,86:40
L=about~0:40,3:35,65:63,71:46 L=above~0:-21,69:32,77:54,79:-33,84:38 L=across~0:52 L=adjusted~57:27
L=adults~0:70 L=after~0:137,90:20 L=air~48:49 L=all~0:59,45:36,77:-32 L=allowed~58:33 L=also~3:31
L=altimeter~82:44 L=altitude~34:86 L=an~0:18 L=and~1:47,4:39,23:31,34:-41,53:99,82:18 L=apart~10:31
L=are~0:-45,10:31,34:33,35:24,42:13,77:71 L=array~0:-37,43:26
L=at~0:14,1:-35,11:34,18:68,25:-49,26:49,27:-31,34:75,35:47,38:-35,46:11,52:61,53:90,55:122,69:-34,70:-45,79:84,80:24,82:-26,83:-38,84:-62,90:48,92:26
L=august~0:57 L=away~77:28,83:36 L=back~0:52,52:27 L=bar~25:36,49:45,52:33,53:97,81:-37
L=barn~0:-53,84:31 L=basins~0:34,27:-40 L=bath~0:-44,30:49 L=battery~0:82 L=be~0:49,26:58
L=beds~6:36 L=before~91:35 L=behind~0:-36 L=below~0:-56,84:38 L=beside~0:-63,82:26
L=between~52:48,77:54,84:31 L=bladder~48:44 L=booster~0:43,84:-29 L=bore~81:55,82:-47,85:28,86:60
L=borehole~0:-14,83:40,86:87 L=both~0:-13 L=bottom~69:22,82:33,86:49 L=box~57:26,79:30
L=brings~0:36 L=bucket~0:40 L=buried~0:55 L=but~29:61,84:37 L=by~30:65,83:36
L=cabin~34:30,82:43,84:31 L=cabins~0:18,25:-36 L=cable~0:37,38:96,84:-31 L=calf~0:-30 L=call~0:55
L=came~0:47 L=can~0:54,9:24 L=casing~0:-51,85:19 L=cattle~0:49 L=charge~48:31 L=checked~48:42
L=cistern~0:30,63:29,65:60 L=city~0:83 L=climb~0:-31,82:61 L=climbs~82:83 L=cm~0:-31,7:33,10:27
L=comes~52:26,80:24 L=constant~57:48 L=consumption~72:37 L=control~57:32 L=controller~40:82
L=copper~84:53 L=cottage~0:-25,82:96 L=count~74:39 L=couple~28:49 L=cows~1:30,3:26,5:50
L=creek~79:37,83:44 L=cut~0:-42,52:80,53:56 L=cuts~53:26 L=daily~71:48 L=day~65:-30,71:42
L=december~0:52 L=deep~0:24,82:-39,85:43,86:32 L=degrees~0:35 L=depth~0:23,86:44 L=diameter~54:57
L=difference~82:27 L=distance~84:60 L=down~79:47 L=drawn~88:29 L=drilled~0:56,86:50
L=driller~0:-30,81:58 L=drip~0:48,6:27,10:23,21:50 L=drippers~7:69,13:55 L=drips~17:21
L=drop~0:38,83:28,84:-31 L=drops~0:39,82:-35,83:35 L=drum~69:46 L=dug~86:31 L=dynamic~79:42
L=each~10:39,13:33,47:-52,71:-40,72:94,81:-35 L=elevated~0:41 L=elevation~34:64
L=emitters~7:59,13:71 L=end~77:30 L=ends~0:44 L=english~12:22 L=enough~61:22
L=every~0:29,7:38,13:55 L=everything~70:33 L=ewes~82:37 L=expansion~16:50,19:66 L=falls~69:40
L=family~0:-30,77:53 L=feeds~57:25 L=feet~0:39,21:59,77:-43 L=fence~0:36 L=field~0:49,28:24
L=fill~0:28 L=floor~69:35 L=flow~0:25 L=foot~0:-40,66:41 L=for~1:41,33:34,37:36,61:46,88:64
L=four~22:30 L=frequency~57:40 L=from~0:25,38:56,55:-31,69:52,83:35,84:35,86:-39
L=ft~0:-8,69:-55,77:25,78:-34,79:36,92:43 L=full~0:29 L=gal~82:34 L=gallon~5:24 L=gallons~84:-28
L=galvanised~70:25 L=garden~0:33,6:44,73:47,84:22 L=gauge~0:46 L=gets~32:87,63:32 L=gi~77:44
L=gives~0:57,8:20,81:54 L=goats~3:61,4:21,6:-34 L=goes~86:23 L=got~0:81 L=gph~13:31 L=gravity~70:25
L=greenhouse~0:63 L=grid~34:49,35:19 L=ground~45:42,83:29 L=guess~32:26 L=guests~0:47 L=guy~0:40
L=h~0:35,11:37,13:47 L=half~83:39 L=hallo~0:30 L=hand~0:43,32:26,86:39 L=hangs~55:80
L=has~0:51,25:39,32:18,48:42,70:-37 L=haul~65:31 L=hav~0:44 L=have~3:43,11:21,28:31,33:24,77:-35
L=he~0:40,92:42 L=head~0:69 L=header~70:43 L=heater~17:44,18:61,20:47 L=height~69:39 L=held~0:58
L=hello~0:48 L=hens~0:-55,78:28 L=here~34:27 L=higher~82:40 L=highest~82:43
L=hill~0:54,65:-40,70:30 L=hills~0:-54 L=hold~0:20,69:-26 L=holding~70:25 L=holds~57:77,65:21
L=hole~86:39 L=horses~0:-56,1:44,78:37 L=hose~23:37,68:30 L=hoses~0:-39,28:48 L=hot~0:37
L=hour~0:-52,75:71 L=hours~0:48
L=house~0:23,3:75,6:-37,27:21,55:-32,57:29,69:40,79:-23,82:60,84:54,86:-48 L=household~77:49
L=how~77:35,86:41 L=hundred~79:-43 L=hut~34:38
L=i~0:85,6:14,9:24,11:24,28:19,29:38,48:43,74:44,79:-28 L=i'd~32:25,57:50
L=in~3:-37,32:23,37:40,45:45,52:29,71:-29,75:28,76:88,77:-30,79:94,82:5 L=inches~7:30
L=inside~79:-31,85:49 L=intake~68:62,83:27 L=into~0:-69,70:37 L=inverter~57:33
L=irrigation~0:-31,6:32
L=is~0:49,1:-43,6:19,30:47,34:-16,36:39,38:32,47:27,69:23,70:29,72:-31,82:46,84:32
L=it~0:46,17:49,32:64,55:31,57:14,84:25,89:47 L=it's~84:43 L=its~77:29,82:-47 L=just~0:-33
L=keep~2:37,64:52,77:-34 L=keeps~0:-31,57:76 L=kia~0:44 L=kicks~52:33 L=kitchen~84:23 L=km~83:30
L=l~47:-26,69:74,88:32 L=lake~0:41 L=last~0:65 L=latitude~0:-69,35:87,36:193 L=laundry~31:40
L=least~0:37 L=length~68:68,84:39 L=level~79:46,86:-30,89:74,91:74 L=lies~32:44,82:39
L=lift~79:44,82:65 L=lifted~82:39 L=like~0:16 L=line~0:61,10:60,79:-31,84:25
L=lines~9:37,10:58,11:56 L=liters~0:32 L=litre~0:-48,48:32,69:43 L=litres~48:42,69:31 L=live~77:62
L=loft~70:26 L=log~86:32 L=long~0:73 L=look~0:27 L=lowered~55:46 L=lowest~79:27
L=m~0:34,14:24,70:32,77:29,79:25,86:43 L=machine~23:36 L=machines~31:39 L=make~77:34
L=makes~81:37,82:37 L=manometer~0:37 L=many~77:31 L=max~40:27 L=maximum~0:48 L=may~0:53,33:26
L=maybe~0:67 L=me~0:52,8:22 L=meadow~28:29 L=measured~81:46 L=measures~60:21 L=meter~71:35,74:39
L=meters~0:23,77:-27 L=milk~2:52 L=min~0:31,88:36 L=minimum~0:81 L=minute~0:-24 L=minutes~90:53
L=mm~67:38,69:-34,84:61 L=more~0:-33,33:26,82:31 L=morning~4:21,75:27 L=most~56:35 L=mother~0:-33
L=mountains~77:46 L=mppt~40:73 L=must~0:32,82:30 L=my~0:115,6:-37,12:31,43:22,83:40,84:-36
L=need~0:34,71:83 L=net~82:39 L=never~79:75 L=no~6:-26,77:48,79:26,84:23 L=noon~0:51 L=north~77:36
L=not~0:-41,33:26 L=now~0:27 L=of~1:-19,7:19,41:30,43:68,52:70,55:-25,61:14,77:41
L=off~0:-45,35:16,53:59,60:108,65:33 L=olives~0:-31,6:34
L=on~25:-36,28:58,32:46,48:-42,52:33,53:35,70:36,77:-40,82:-27,83:-38,87:42 L=once~0:32
L=one~0:-18,44:58 L=only~9:29,29:57,33:41,34:19 L=open~41:65 L=opens~17:24,52:-27,53:45 L=or~77:23
L=ora~0:44 L=orchard~0:-23,6:28 L=our~0:44,71:33 L=ours~86:35 L=out~53:90
L=outside~0:-54,54:61,77:48 L=over~0:27,25:31 L=own~77:33 L=pairs~1:33 L=panel~46:45
L=panels~42:62,45:41,46:59 L=parallel~25:42,27:-32 L=pe~83:56 L=peak~75:27 L=people~72:20,77:57
L=per~72:43 L=person~0:-30 L=persons~25:17,72:87 L=pipe~0:40,25:-39,68:53,79:-34,84:64,86:-36,87:65
L=pit~86:-26 L=plastic~0:30 L=plot~0:42 L=plus~4:38 L=pn~0:50 L=point~57:24 L=poly~0:45,65:-48
L=polyethylene~0:41 L=pond~0:55,8:26 L=power~0:66 L=pre~48:33 L=precharge~48:62 L=precharged~48:35
L=pressure~48:35,50:85,52:40,57:25,65:-39,70:-33
L=pump~0:65,6:-28,8:39,27:31,30:-23,38:40,48:-30,52:-6,53:44,55:155,56:84,57:60,65:38,68:33,81:-38,86:-22
L=pump's~0:29,47:-27 L=pumped~81:-31,92:31 L=pumping~79:58,90:23 L=push~0:26 L=pushes~69:43
L=pvc~66:33 L=rain~60:48 L=rainwater~0:-40,65:56 L=ran~0:-38,88:44,90:32 L=rated~33:39,49:71
L=reach~0:34 L=reads~0:24 L=relief~17:70 L=reservoir~69:37 L=rest~91:58 L=ridge~0:33 L=right~82:-27
L=rise~82:91 L=rises~82:54 L=road~0:55,84:-25 L=roof~0:-32,6:-40,60:135,77:37,82:26 L=rows~12:120
L=run~0:-31,9:58,24:52,29:28,84:41 L=runs~47:31,62:36 L=said~0:67 L=say~0:-52,84:108
L=says~0:77,71:26,86:24 L=sch~0:33 L=schedule~84:25 L=second~0:42 L=seconds~0:34,84:-33
L=septic~0:87,70:-31 L=set~18:26,55:55,57:95 L=settled~89:33 L=shed~0:11 L=sheep~0:-39,3:67
L=should~61:38 L=shower~27:52,30:71,77:43,82:31,84:-29 L=showers~25:75,26:59,27:40,30:93,77:-60
L=shows~0:37 L=shuts~53:40 L=sink~0:-35,25:43,27:-32,30:27 L=sinks~0:-62,27:53 L=sit~0:19
L=slope~0:27 L=smal~0:31 L=small~34:32 L=so~0:35,30:39,65:92 L=solar~0:26 L=sorry~79:29
L=speed~0:40,57:30 L=spring~65:45,69:-39,81:94,83:77 L=sprinkler~0:33 L=sprinklers~28:51
L=staff~77:32 L=stand~69:40 L=standing~0:-25,91:63 L=stands~79:45 L=started~91:31
L=static~0:-31,79:57,91:170 L=stock~0:-53,5:50 L=stops~53:113 L=storage~61:30 L=stream~81:34
L=strings~0:-58,43:22 L=sub~55:45 L=submersible~0:-21,54:18,55:107,77:-32 L=sucks~68:32
L=suction~68:119,82:-22,84:-46 L=summer~34:23 L=sun~32:44 L=sunday~0:46
L=switch~0:-52,50:27,52:130,53:54,57:-36,84:40 L=swl~79:43,91:43 L=system~47:31 L=take~0:61,81:-39
L=takes~0:53,75:56 L=tank~48:45,49:54,50:56,63:76,65:92,69:86,70:72,79:-51,81:-45,82:-45,83:-38
L=tap~0:41,82:38 L=taps~0:71 L=ten~0:43 L=test~90:34 L=than~0:-31,33:17 L=that~0:28,69:56
L=that's~77:36
L=the~0:118,1:-41,7:-23,10:-35,16:-29,21:-28,30:-61,32:51,34:-60,35:-33,52:18,60:87,63:52,70:35,81:33,82:31,83:20,92:-28
L=then~0:69 L=ther~0:47,77:-26 L=there~19:16,65:-39 L=there's~0:-45,50:33 L=they~86:29 L=this~0:79
L=through~0:-35,68:64 L=tilt~46:60 L=tilted~46:36 L=time~30:37
L=to~4:-38,27:-30,34:-32,38:40,48:38,57:27,68:-32,69:30,70:66,79:55,82:44,84:33 L=together~3:33
L=toilet~30:74 L=toilets~27:38,30:37,31:46 L=too~0:17 L=took~0:67,25:39 L=top~82:25 L=total~0:-66
L=tote~0:56 L=town~0:48 L=trench~0:27 L=trickle~0:45 L=troughs~0:-40,1:25,78:63 L=truck~0:42
L=turns~74:39 L=twenty~0:49 L=two~1:29,27:32,42:23,71:43 L=underground~65:53,70:-22 L=until~0:35
L=up~69:31,80:22,82:44,86:-32 L=uphill~0:-43,82:40 L=upper~0:-43,70:72,82:47 L=us~4:21,25:44,71:35
L=use~0:-60,71:75,75:50,76:23 L=used~0:26 L=uses~0:48,72:34 L=v~25:43,37:38,38:59
L=valve~0:-43,17:89,66:42 L=vegetable~6:30 L=vessel~0:-59,19:49,48:41,50:63 L=village~69:37
L=voc~41:54 L=volt~56:28 L=voltage~41:47 L=w~0:-52,41:29,43:34,45:45 L=want~29:47,61:45
L=wants~0:38,26:40,64:48 L=was~0:40 L=washing~31:40
L=water~5:27,9:47,34:-26,55:-51,79:146,80:91,86:-24,91:103 L=water's~79:36 L=watered~0:36
L=way~0:-28,56:33,84:30 L=we~0:138,2:26,34:46,35:26,61:44,65:29,71:73,75:38,77:62,79:-40,83:40
L=we're~77:39 L=we've~0:-50 L=well~27:18,63:36,69:-35,79:44,81:22,82:21,83:-36,85:34,86:71,91:-57
L=well's~0:-48,86:81 L=went~0:37 L=what~0:24 L=when~0:52,27:-39 L=which~0:-38,26:42,63:30
L=with~6:30,7:24,30:59,48:63,65:-33,66:41,67:44,72:61,79:23 L=within~0:39 L=works~0:46 L=write~0:40
L=x~0:46,42:23 L=yards~83:42 L=year~0:42 L=yield~0:41,81:26 L=your~0:31,32:26 L=zones~22:56
L=|~0:15,3:35,25:18,30:27,47:28,69:-35 R=!~0:55 R=(~0:-44,25:34,30:26,77:29,82:20 R=)~0:98
R=,~0:37,7:30,9:-54,24:-41,26:-49,28:35,30:42,31:-26,52:42,57:40,64:-35,67:-31,70:7,71:38,77:10,86:28,89:-49,91:48,92:-47
R=.~0:123,2:-26,5:-23,6:31,8:-34,15:-48,21:-31,24:-12,26:-30,28:-54,31:-31,32:25,34:38,38:-25,40:-22,43:-19,44:-31,45:-20,48:18,49:-10,51:-44,52:25,63:15,71:41,72:88,77:35,79:52,81:47,84:39,86:18
R=0~0:59,6:-34,43:48,52:17,65:-36,69:28,81:46
R=1~0:45,1:-43,4:-29,20:31,23:-58,27:37,31:-67,68:31,77:20,84:15
R=2~25:34,27:-32,45:-27,49:41,50:45,52:39,90:19,91:-39 R=3~0:16,52:65,82:16
R=4~0:16,43:25,68:36,69:-35,77:36,82:33 R=5~0:46,13:36,19:33,20:21,65:-5,72:31,79:-26,81:-38,84:66
R=6~0:-21,3:25,20:22,52:21,79:-27,81:20,86:31,91:34 R=7~0:94,84:33 R=8~0:55,47:38,50:45,84:52
R=9~2:60,75:25,91:33 R=:~81:46,84:17 R=;~0:62,79:24 R=?~0:46,25:53,77:79
R=a~9:38,22:46,27:40,30:49,50:-40,62:26,68:-32,71:56,72:57,86:-35 R=about~0:-36,77:26
R=above~55:-28,65:-42,69:78,70:65,79:48,82:146,83:35,84:-27,86:-37 R=according~86:45 R=acid~0:41
R=across~0:49,85:50 R=adults~0:21 R=after~14:49,75:30,76:3 R=afternoon~44:27 R=ah~47:71 R=air~50:54
R=all~78:36 R=alpacas~0:59 R=altitude~34:40 R=altogether~71:53 R=an~0:55,58:58,84:-63,90:26,91:38
R=and~0:37,2:30,5:22,25:53,26:33,27:49,30:71,47:-36,52:78,63:13,68:-38,78:-36 R=apart~12:44,13:36
R=are~70:28,77:35 R=around~0:43
R=at~0:53,4:-28,5:25,8:34,20:38,22:98,24:47,26:69,27:-39,29:25,30:-35,52:48,55:-37,56:68,57:19,70:-46,77:31,78:-31,81:-40,82:-30,84:-55,86:40,89:58
R=automatic~78:24 R=autumn~0:47 R=away~0:32,84:85 R=bank~47:41 R=bar~0:-28,50:26,52:85
R=barn~69:-28 R=basins~27:117,77:-31 R=bath~0:49 R=bathroom~0:65,25:-33,27:-44,69:38
R=bathrooms~25:43 R=baths~0:26 R=batteries~39:36,47:29 R=battery~39:37,47:34 R=beds~34:29
R=beef~1:76 R=before~84:30 R=begin~11:50 R=below~0:-61,65:54,79:69,82:20,84:-43,86:-43
R=bends~66:62 R=beside~65:48 R=between~12:19 R=bibs~23:40 R=bladder~50:42 R=booster~65:44
R=bore~0:-33 R=borehole~0:-42,77:39,82:28 R=both~23:37 R=bottom~0:59,84:-41,86:105 R=boys~0:40
R=break~0:-38,15:59 R=brother~0:-28 R=bucket~0:90 R=bulls~0:-33,1:38,5:51 R=but~0:82,27:37,28:72
R=by~0:38,71:45 R=c~20:29 R=cabin~83:38,84:33 R=cabins~25:26 R=cable~38:102,84:-46 R=calf~5:78
R=calves~5:96 R=campers~77:41 R=can~8:47 R=cart~0:62 R=casing~0:-40,54:36,85:61 R=cattle~3:38
R=chickens~0:-68,4:125 R=children~0:61 R=cistern~0:-25,59:56,65:61 R=climbs~82:38
R=comes~0:53,86:-24 R=compensating~7:23 R=constant~57:51 R=controller~0:53 R=couple~5:30 R=cow~5:59
R=cows~0:-115,1:102,2:149,5:63,77:-34 R=creek~68:20,82:67 R=dairy~2:50
R=day~0:-45,9:51,62:86,63:69,72:22 R=days~0:31 R=deep~0:70,79:-34,82:-24,86:123 R=delivery~0:-34
R=depending~77:22 R=depth~0:28,86:37 R=diameter~85:42 R=diesel~0:71 R=don't~0:65
R=down~55:64,79:74,82:-40,84:-37 R=drawn~90:34 R=drilled~0:45 R=drink~1:46,3:28
R=drinkers~0:-33,78:142 R=drip~6:91,21:39 R=drippers~6:33 R=drop~87:47 R=drops~0:32
R=dry~0:-57,1:71,59:64,73:42 R=each~0:27,7:34,12:38,25:50,72:71 R=earth~0:33 R=elbows~66:55
R=electricity~0:36 R=elevation~34:50 R=emitters~10:33 R=end~0:-36,79:33 R=ewes~0:-61,3:163
R=expansion~19:89 R=feeds~70:31 R=feet~0:58 R=fill~0:46 R=filled~0:39 R=fire~0:-38,64:74
R=first~0:49,82:-56 R=five~77:-42 R=float~0:-11,78:114 R=floats~0:-33,78:50 R=flooded~0:40
R=flow~0:29 R=foot~5:51,66:62,67:79,68:38,84:-37 R=for~23:35,64:77,71:56,78:37,81:-50,90:70
R=forty~0:45 R=four~77:-60,79:26 R=from~0:-30,4:33,65:42,79:49,84:55,86:-37 R=ft~0:50,55:-32,70:42
R=full~0:42,77:50,79:-33 R=garden~23:39,65:-23,83:30,84:38 R=gives~0:44,83:51 R=go~86:37
R=goats~0:-51,3:176 R=goes~55:36 R=going~26:40 R=golf~0:62 R=gone~0:24 R=got~0:73 R=gpm~86:37
R=gravity~84:98 R=greenhouse~6:31 R=grid~79:27 R=ground~55:33,65:21,79:32,82:-32
R=guests~0:48,77:47 R=h~13:29 R=half~0:22 R=hangs~0:-43,79:50,86:26 R=have~0:31 R=he~0:52
R=head~0:25,1:58 R=header~70:27 R=heater~0:-40,20:136,50:-40 R=heifers~0:-34,1:78
R=height~69:39,82:51 R=hens~0:-79,4:208 R=here~77:33 R=higher~82:64 R=hill~0:-23,70:38,77:26,82:37
R=holds~0:-51 R=home~0:55 R=horse~0:42 R=horses~1:170,4:26,77:-34
R=hose~0:-83,23:169,26:35,68:93,77:-26 R=hoses~0:-108,12:21,23:168,24:65 R=hour~0:-42,58:97,90:27
R=hours~0:41,75:30,90:8 R=house~2:80,65:52,69:55,70:15,79:-33,82:101,84:48,86:-45 R=houses~0:34
R=hut~33:26 R=i~0:31,21:31,82:-37,83:28,84:70,90:18 R=identical~0:-52,51:117
R=in~0:33,2:19,27:-29,43:61,48:63,51:55,54:47,75:48,84:-38 R=inch~0:-55,68:48,79:-28,84:43
R=inside~85:62 R=is~0:39,30:-34,44:67,50:-64,55:50,59:40,72:52,81:65,82:-59,85:31,86:35,91:60
R=it~0:29,81:32,90:26 R=it's~0:30 R=its~25:31 R=just~0:41 R=kept~0:18,20:30,64:62
R=kids~0:46,3:39,25:-17 R=kitchen~0:69,27:-50,30:30 R=l~6:24,13:36 R=late~0:68 R=later~0:35
R=lead~0:40 R=least~0:32 R=level~65:95 R=lifepo~47:45 R=line~63:31,68:26,82:-24 R=lined~86:36
R=lines~11:56 R=lining~85:25 R=litres~77:34 R=loft~70:46 R=long~0:40,10:52,68:31,82:-26,86:-29
R=loo~25:42,30:42 R=lost~44:94 R=lower~83:86 R=m~0:32,55:48,70:60,79:-39,84:44,86:17
R=machine~31:53 R=machines~25:38,31:57 R=mains~0:-49,23:42 R=makes~79:27 R=may~26:58 R=me~0:37
R=measured~0:27 R=members~0:29 R=meter~71:38 R=metre~0:27 R=milk~0:-43,2:125
R=milking~0:-29,2:68,75:31,76:24 R=min~75:27 R=minimum~0:94 R=minutes~0:40,75:21,90:59
R=mm~0:-22,68:21,82:35,84:43 R=modules~42:36 R=months~0:-43,59:67 R=most~0:-38,77:38 R=mostly~0:-39
R=must~0:29 R=my~0:65 R=n~0:-55,35:182 R=next~47:-25,65:17 R=night~0:-27,63:28
R=no~24:40,31:46,32:24,84:34 R=none~3:30 R=north~35:88 R=now~0:-44,77:30
R=of~0:22,4:-32,6:33,38:47,39:21,45:49,55:-53,61:48,64:47,68:85,69:-26,77:31,78:-32,79:-26,82:-29,84:39,86:-20,87:52
R=off~52:45,84:49,90:25 R=old~0:52 R=on~0:39,1:47,6:23,24:51,52:23,65:-50,70:42,78:35,82:-51
R=once~0:-63,24:29,26:58,77:-50 R=one~14:37,68:31,81:41 R=ones~1:43 R=only~55:38 R=open~28:20
R=other~14:33,27:29 R=our~0:32,64:47 R=out~0:21,37:42,52:63 R=outhouse~0:-25,25:32,27:41
R=outside~65:56 R=over~0:75,69:45 R=own~25:36 R=pairs~5:117 R=panel~42:59
R=panels~42:50,43:86,47:60 R=parallel~0:-26,51:72 R=part~0:-38 R=pasture~0:-27,5:30
R=pe~0:36,82:-45,84:45 R=people~25:-32,77:168,82:33 R=per~58:43,72:25 R=person~77:102
R=persons~25:-37,77:117 R=pex~0:19 R=pieces~28:25 R=pigs~0:34 R=pipe~0:54,79:-31,84:58,86:-27,87:43
R=plastic~86:31 R=plus~84:23 R=poly~0:79,65:34,79:-39,84:38 R=power~0:-65,23:48,77:45,79:23
R=pressure~0:-43,15:94,25:38,50:74,74:44,82:43 R=psi~56:39
R=pump~16:51,24:75,27:-43,29:39,38:19,47:24,50:37,55:-30,65:61,69:-41,70:-42,79:96,81:36,83:-53,84:-24,86:36
R=pumping~0:40,91:28 R=pumps~0:-36,51:71,65:33 R=pupils~77:70 R=pvc~0:49 R=question~0:26
R=rain~61:29,77:-31 R=rainwater~65:30 R=ran~79:-25,91:27 R=reach~84:42 R=relief~20:26
R=reserve~61:46 R=right~47:-29 R=rim~91:24 R=rise~82:41 R=road~0:37 R=roof~60:46
R=rooms~0:-29,25:39 R=rows~10:70,13:63 R=run~21:10,25:-51,26:137 R=runs~0:40,68:26
R=same~29:24,84:42 R=says~0:37 R=sea~34:64 R=seconds~81:34 R=series~43:71 R=set~56:50 R=shade~44:33
R=shed~65:37 R=sheep~0:-16,3:89 R=should~0:-58 R=shower~25:175,26:46,27:51,78:-25
R=showers~0:-59,25:176,26:92,27:1 R=since~0:-69 R=sink~0:-57,27:133,30:-40,56:36,77:23
R=sinks~27:147,77:-32 R=sits~0:-45,50:29,70:37 R=slope~82:45 R=so~0:122,82:-43 R=something~0:44
R=sorry~0:37 R=south~0:-27,36:106 R=spring~79:-38,81:7,83:49 R=sprinkler~0:-32,28:26
R=sprinklers~0:-49,28:130,29:74 R=staff~0:50 R=stands~0:55,85:33 R=starts~58:88 R=static~86:54
R=steers~0:-51,1:66 R=stream~79:30 R=string~0:-47,45:54 R=strings~45:70 R=sub~0:55,86:-39
R=suction~0:38,65:-31,68:114,79:34,82:-45 R=summer~0:-73,79:79 R=supply~0:-36 R=surface~0:50,47:-28
R=switch~48:49,52:34 R=system~0:23 R=takes~0:45
R=tank~0:-48,19:47,48:31,50:62,53:46,65:73,69:72,70:32,77:-65,82:-33 R=tanks~0:72,15:57 R=tap~23:52
R=taps~69:24 R=terrace~0:47,65:-52 R=th~44:65 R=than~82:33,83:39 R=that~82:24,86:28
R=the~0:49,2:-50,6:-36,8:55,21:-39,23:33,24:-37,25:-46,26:53,43:-32,44:70,45:-37,52:-65,65:17,69:60,70:40,71:26,73:35,79:61,81:30,82:51,83:29
R=them~0:-34,1:35,3:39 R=then~0:51,82:-46 R=there~79:45 R=they~0:32,6:-31,28:22 R=three~82:44
R=through~69:40,82:-42 R=tilt~46:29 R=time~0:-23,22:60,26:21,29:50
R=to~0:46,4:33,65:55,69:42,77:-60,82:39,83:47,84:35 R=toddler~0:49,77:-28
R=together~0:-43,24:71,26:72 R=toilet~0:-22,27:27,30:99,77:-31 R=toilets~0:-20,25:26,30:151
R=tomatoes~0:28 R=too~0:20 R=top~73:35,83:-30,91:49 R=total~0:-55,84:23 R=town~63:32 R=trailer~0:64
R=trees~0:42 R=trough~78:111 R=troughs~0:-58,1:44,78:168 R=tunnels~0:22 R=two~1:57,75:51,77:49
R=under~82:48,91:31 R=until~23:31 R=up~57:30,69:44,79:43,82:62,86:-39 R=uphill~0:-42,82:91
R=us~69:25,77:126 R=v~0:49 R=valve~0:-64,66:59,67:76,68:26 R=vessel~0:-80,50:68
R=w~0:26,43:61,45:47 R=want~69:35 R=was~0:21 R=wash~27:39 R=washer~31:53 R=washing~31:106
R=water~20:70,25:22,50:-37,61:26,69:-53,79:147,81:44,82:-56,83:-29,84:-45,86:77 R=water's~0:-41
R=waterers~0:-43,78:33 R=wc~30:59 R=we~0:37,27:33,36:107,58:48,82:-38 R=we'd~91:66 R=week~0:24
R=weekends~77:46 R=well~27:-31,55:31,82:16,83:33,85:45,86:44 R=what~77:40,84:38 R=when~0:45
R=where~0:-32,11:56 R=which~0:52,21:50 R=why~77:40 R=wide~0:29 R=will~0:52 R=wire~38:44,84:-27
R=with~5:71,25:42,78:78,79:-39,86:61 R=without~0:-54,61:74 R=worst~0:26 R=would~0:47 R=x~0:27
R=yard~0:45 R=year~0:36 R=years~0:35 R=yet~0:-31,57:33 R=you~25:52
R=zones~0:-40,11:28,14:95,21:85,77:-37 R=|~18:18,31:47,77:32,84:43,91:-38 angleC=3~32:23
angleC=6~32:24 angleC=panel~46:46 angleC=panels~46:104 angleC=tilt~46:61 angleC=tilted~46:36
angleL0=,~46:31 angleL0=and~32:23 angleL0=at~46:55 angleL0=panels~46:42 angleL0=tilt~46:61
angleL0=tilted~46:36 angleL1=in~32:22 angleL1=the~32:61 angleL2=,~46:54 angleL2=3~32:23
angleL2=mm~32:63 angleM=pump~36:34,46:34 angleM=tank~36:39 angleR0=.~32:19,46:42
angleR0=north~35:88 angleR0=south~36:38 angleR0=tilt~46:29 angleR1=2~36:40 angleR2=.~36:41
angleR2=m~36:39 angleT=power.facing~46:110 angleT=power.panel~46:66 angleT=power.source~46:91
angleT=pump.placement~36:38 angleT=water.kind~36:35 angleT=way.pipe~32:61 anglea=.~46:23
areaC=,~6:14 areaC=0~0:-54 areaC=beds~6:37 areaC=cistern~0:26 areaC=garden~0:23,6:37
areaC=house~0:50,6:-30 areaC=measures~60:21 areaC=off~60:31 areaC=rain~60:45 areaC=roof~6:-39,60:42
areaC=vegetable~6:30 areaL0=:~6:50 areaL0=a~6:28 areaL0=beds~6:37 areaL0=drip~0:-33,6:53
areaL0=garden~0:34 areaL0=i~0:-30,6:44 areaL0=is~0:-28,6:36,60:33 areaL0=it~60:20
areaL0=measures~60:21 areaL0=of~0:39 areaL0=roof~60:15 areaL0=the~6:28,60:28 areaL0=vegetable~6:30
areaL0=we~0:67 areaL1=,~0:51,6:-25 areaL1=.~60:26 areaL1=garden~0:-25,6:33 areaL1=it~6:41
areaL1=pump~0:36 areaL1=rain~60:25 areaL1=roof~60:27 areaL1=the~60:53 areaL2=,~60:39 areaL2=.~60:55
areaL2=1~0:-31,6:51 areaL2=2~0:57 areaL2=4~0:28 areaL2=rain~0:33 areaM=cistern~60:27
areaM=drip~6:112 areaM=pump~0:39,6:25,60:65 areaM=roof~6:-41,60:84 areaM=spring~0:42
areaM=tank~0:59,60:31 areaR0=,~0:62 areaR0=.~6:64,60:45 areaR0=all~0:30 areaR0=drip~6:59
areaR0=in~0:30 areaR0=of~0:-31,6:60 areaR0=on~6:23 areaR0=roof~60:46 areaR0=with~0:42 areaR1=,~0:63
areaR1=.~6:33 areaR1=0~0:34 areaR1=5~0:57 areaR1=8~0:29 areaR1=a~60:55 areaR1=drip~6:43
areaR1=in~6:47 areaR1=lines~0:29 areaR1=the~0:33 areaR2=,~6:36 areaR2=3~0:46 areaR2=4~0:41,6:-24
areaR2=6~6:37 areaR2=8~0:51,6:-39 areaR2=m~0:70 areaR2=one~0:41 areaR2=zones~6:44
areaT=power.panel~6:47 areaT=power.source~6:38 areaT=pump.height~6:47 areaT=pump.placement~6:59
areaT=pump.present~0:18,6:-40 areaT=pump.set~0:21 areaT=store.volume~0:51
areaT=water.kind~0:69,6:35,60:26 areaT=way.climb~6:57 areaT=way.length~0:81,6:17
areaT=way.pipe~0:30,6:57 areaa=~6:62 areaa=.~0:30,60:23 areaa=._the~0:26 areaa=on_drip~6:31
areaa=with_drip~0:38 areab=~6:61 bareC=)~0:-31 bareC=,~4:27,30:26,66:33,67:19,79:37
bareC=0~1:14,14:7,27:-45,43:34,45:36,66:48,86:51 bareC=1~27:60,66:44,78:41
bareC=2~0:17,25:-32,30:23,31:61,67:26,77:-45 bareC=3~3:66,24:67,27:-34,43:35,45:30,78:-13
bareC=4~25:47,66:43,77:-36,91:69 bareC=5~0:-11,37:37,66:40,67:29 bareC=6~1:26,3:-32,5:36,77:33
bareC=7~77:41 bareC=8~77:-60 bareC=9~5:43 bareC=:~23:43,45:43 bareC=acre~22:20 bareC=adults~0:86
bareC=after~0:23 bareC=agist~0:38 bareC=all~0:34,45:36 bareC=array~0:-35,43:26
bareC=barn~0:-47,1:41,78:54 bareC=basins~27:-42,30:58 bareC=bathrooms~0:-24,27:22
bareC=between~0:34 bareC=blok~0:34 bareC=cabin~0:-23,77:32 bareC=calf~0:-30 bareC=call~0:49
bareC=calves~1:29 bareC=comes~0:47 bareC=couple~28:34 bareC=cows~0:-38,1:57,3:18,4:63,5:48
bareC=day~0:-36,77:27 bareC=deep~79:48 bareC=den~77:26 bareC=dobr~77:26
bareC=drip~0:-36,21:46,22:18,23:43 bareC=each~0:38 bareC=every~0:53 bareC=everything~0:26
bareC=family~0:-47,77:52 bareC=feet~0:-60 bareC=foot~0:-45,66:42 bareC=four~22:31 bareC=ft~67:38
bareC=gal~0:33 bareC=girls~0:39 bareC=goats~0:-10,3:54,4:65 bareC=good~37:43 bareC=gpm~0:-32
bareC=grid~35:19 bareC=guesthouse~0:-46,25:39,77:40 bareC=guests~0:33 bareC=hav~0:46
bareC=hello~0:33 bareC=helo~0:44 bareC=hens~0:-48 bareC=hi~0:45 bareC=horses~0:-47,78:51
bareC=hose~29:50 bareC=hoses~28:33 bareC=house~27:48,77:30 bareC=household~77:49 bareC=it's~77:28
bareC=just~0:-24 bareC=latitude~0:-51,35:91,36:60 bareC=laundry~31:41 bareC=like~0:-53
bareC=line~0:15 bareC=live~0:-26,77:51 bareC=lodge~0:-32,77:33 bareC=look~0:33 bareC=m~14:30,86:22
bareC=machine~0:24,23:40 bareC=machines~31:42 bareC=make~77:34 bareC=me~1:56 bareC=meadow~28:27
bareC=milk~1:20,2:48 bareC=mm~66:46,67:40 bareC=morning~0:34 bareC=mother~0:-31 bareC=mppt~37:43
bareC=n~0:-52 bareC=need~0:39 bareC=night~0:39 bareC=off~35:15 bareC=one~27:12,30:35,44:60,77:-47
bareC=only~29:58 bareC=over~25:38 bareC=pairs~1:33 bareC=panels~43:58,45:77,77:-40
bareC=people~0:-31,3:30,5:55,77:60 bareC=person~0:-28 bareC=pipe~0:33,67:40 bareC=plot~0:63
bareC=plus~0:-44,4:39 bareC=poly~0:-69 bareC=pressure~0:72,77:-36 bareC=psi~0:32
bareC=pump~25:48,43:-51,52:40,58:61 bareC=pvc~66:31 bareC=quick~0:33 bareC=roof~77:26
bareC=run~0:44,24:52,29:28 bareC=runs~0:57 bareC=series~45:22 bareC=sheep~0:-34,3:67
bareC=shower~0:-46,27:51,30:43 bareC=showers~0:-68,1:-40,25:55,26:57,27:70,30:64,31:83,77:-18
bareC=sink~0:-26,25:47,27:-32,30:29 bareC=sinks~0:-50,25:44,27:35 bareC=sir~0:33 bareC=sit~0:44
bareC=six~0:-42,45:29 bareC=smal~0:71 bareC=so~77:58 bareC=solar~0:38 bareC=sorry~77:36
bareC=sprinklers~0:-56,28:47,29:67 bareC=stands~0:-55 bareC=starts~58:65 bareC=static~91:72
bareC=stock~0:-38 bareC=strings~43:25 bareC=sub~86:30 bareC=suction~66:65,67:39 bareC=surface~0:-46
bareC=switch~52:25 bareC=tank~0:9,77:-41 bareC=taps~23:34 bareC=teenage~0:39
bareC=there~0:-35,25:17,27:72,30:18,77:-39 bareC=there's~0:-28 bareC=third~0:-28 bareC=thirty~1:39
bareC=three~0:18,23:27 bareC=toilet~30:77 bareC=toilets~0:-20,27:15,31:76 bareC=took~25:38
bareC=troughs~0:-20,1:27,78:62 bareC=twenty~77:53 bareC=two~4:13,27:4 bareC=up~77:34
bareC=us~0:-40,4:11,25:45 bareC=v~37:42 bareC=valve~0:-50,66:41 bareC=village~0:33 bareC=volt~0:45
bareC=w~43:79,45:52 bareC=want~29:47 bareC=wants~26:41 bareC=was~0:48 bareC=washing~23:33,31:46
bareC=water~0:-37,5:19,79:89 bareC=we're~3:32,77:29 bareC=well~0:56,77:-17,79:26 bareC=what~0:-56
bareC=which~26:74 bareC=zones~22:56 bareL0=)~3:30
bareL0=,~0:-19,1:56,4:53,27:29,29:-40,30:45,35:48,67:27,86:45 bareL0=.~3:52,15:75,25:32,29:39,77:79
bareL0=0~1:69 bareL0=1~27:38,31:39 bareL0=2~4:48,31:25 bareL0=3~3:31,77:-41 bareL0=4~3:64,25:43
bareL0=5~0:69,77:-50 bareL0=8~77:-20 bareL0=:~0:-66,25:44 bareL0=?~0:-25,77:41 bareL0=a~77:35
bareL0=about~3:40 bareL0=adults~0:53 bareL0=all~77:-30 bareL0=also~3:32
bareL0=and~1:40,4:82,23:29,30:37,37:38,66:35,77:-64 bareL0=are~77:65 bareL0=at~0:30,77:-33,79:81
bareL0=barn~0:-30 bareL0=bathrooms~0:45 bareL0=between~0:29 bareL0=bore~0:36 bareL0=cattle~78:60
bareL0=cows~0:-66,1:51,5:62 bareL0=dairy~2:37 bareL0=day~0:-36 bareL0=family~0:-25,77:87
bareL0=five~0:43 bareL0=foot~0:-38,66:45 bareL0=four~0:-39,25:42 bareL0=goats~3:35,4:27
bareL0=has~0:-34,25:24 bareL0=have~0:-14,1:27,25:21 bareL0=hens~0:-50 bareL0=horses~0:-21,78:36
bareL0=hose~0:-48,23:42 bareL0=hoses~28:48 bareL0=house~30:38 bareL0=household~0:-33,77:60
bareL0=i~0:47 bareL0=in~14:30,30:29,37:40,45:67,77:-27 bareL0=is~0:42,77:-28,86:28
bareL0=it's~77:30 bareL0=keep~2:38,4:41 bareL0=kitchen~0:53 bareL0=latitude~0:-51,35:91,36:60
bareL0=laundry~31:41 bareL0=live~0:-18,77:38 bareL0=machine~23:24 bareL0=machines~31:43
bareL0=may~0:46 bareL0=maybe~0:37 bareL0=milk~2:58 bareL0=my~43:24 bareL0=of~1:-32,4:44,43:60,77:39
bareL0=off~35:19 bareL0=on~0:-27,28:72 bareL0=one~27:67,30:41,44:62 bareL0=only~29:59
bareL0=or~77:23 bareL0=our~0:32 bareL0=pairs~1:36 bareL0=people~4:44,77:38 bareL0=pipe~0:73
bareL0=plus~4:35 bareL0=pump~0:-37 bareL0=run~0:-24,24:56,29:33 bareL0=series~45:30
bareL0=sheep~0:-30,3:39 bareL0=shower~0:-24,27:24,30:51 bareL0=showers~25:106,77:-48
bareL0=sink~25:39,30:41,77:-41,78:48 bareL0=sinks~27:66 bareL0=so~0:-60 bareL0=solar~0:53
bareL0=static~91:72 bareL0=stock~0:-30,5:57 bareL0=stops~0:-61 bareL0=strings~43:39
bareL0=tank~5:30 bareL0=the~25:41,27:20 bareL0=there~0:-40 bareL0=three~0:48,25:-22
bareL0=time~26:37 bareL0=to~0:58,5:28 bareL0=toilet~30:61 bareL0=toilets~0:-35,30:72
bareL0=two~1:52,43:32 bareL0=us~4:33,25:30 bareL0=v~25:41,27:-40,37:42 bareL0=valve~66:44
bareL0=w~43:32 bareL0=want~29:52 bareL0=wants~26:41 bareL0=was~0:46 bareL0=washing~31:51
bareL0=water~0:-22,5:35,79:78 bareL0=we~0:-37,77:53 bareL0=we're~77:30
bareL0=well~0:-11,27:33,86:29 bareL0=when~0:46 bareL0=with~4:24 bareL0=zones~22:39
bareL0=|~0:46,1:37,23:27,25:26,27:-36,77:48 bareL1=(~3:47,77:-32
bareL1=,~4:28,23:39,27:40,28:-33,29:48,30:-33,31:54,45:62 bareL1=.~1:45,25:31,26:19,28:32,30:24
bareL1=0~4:-27,23:58,30:-29,36:35,86:57 bareL1=1~77:55 bareL1=2~14:68,30:28,31:27,78:21
bareL1=3~3:-36,24:36,77:39,79:44 bareL1=4~1:63 bareL1=5~37:38,77:22,86:22 bareL1=6~0:45,1:36
bareL1=8~1:-40,3:44 bareL1=9~5:47 bareL1=:~0:-53,1:-34,23:58,30:77,77:19 bareL1=a~0:14,27:-41,28:36
bareL1=about~0:54 bareL1=above~77:37 bareL1=adults~25:39 bareL1=and~0:-22,77:21 bareL1=are~26:44
bareL1=at~26:69,78:57,86:71 bareL1=bar~25:31 bareL1=below~55:49 bareL1=both~0:-35 bareL1=but~29:62
bareL1=by~30:63 bareL1=cabin~0:81,77:-42 bareL1=down~25:34 bareL1=each~0:-33,77:35 bareL1=end~77:31
bareL1=family~25:33,77:-33 bareL1=feet~21:60,77:-41 bareL1=for~37:41 bareL1=four~0:51,22:32
bareL1=from~3:43 bareL1=ft~77:23,78:-28 bareL1=gallon~5:24 bareL1=ground~45:43,55:49
bareL1=guests~0:38 bareL1=half~0:38 bareL1=have~0:65,25:-49 bareL1=higher~0:23
bareL1=house~3:39,27:35 bareL1=how~77:35 bareL1=i~0:-25,3:36 bareL1=in~0:-11,1:28,3:-41
bareL1=inch~0:-50,26:38 bareL1=is~0:-39,30:30,77:40 bareL1=its~77:31 bareL1=kitchen~0:-45,77:32
bareL1=l~0:-35 bareL1=lake~0:40 bareL1=m~0:-47,14:25,30:45,77:27,78:-39,86:22 bareL1=machine~0:20
bareL1=many~77:31 bareL1=meters~0:1,77:-27 bareL1=milk~0:-29,1:27 bareL1=morning~4:23
bareL1=not~0:-34 bareL1=of~0:-60 bareL1=off~27:39 bareL1=on~0:76,25:-36,77:-23 bareL1=over~25:32
bareL1=persons~25:31 bareL1=poly~0:49,77:-26 bareL1=power~0:27 bareL1=pump~0:23 bareL1=shower~27:29
bareL1=showers~25:-30,26:30,27:34,30:61 bareL1=sink~0:-37 bareL1=sinks~0:-44,23:46,30:23
bareL1=sprinklers~0:-52,28:74 bareL1=staff~77:32 bareL1=stock~1:44 bareL1=strings~0:-35
bareL1=submersible~0:32,77:-31 bareL1=switch~52:26 bareL1=the~0:-75,15:50,24:65,26:41,28:32,52:42
bareL1=there~26:54 bareL1=time~30:38 bareL1=to~0:37 bareL1=together~3:34 bareL1=toilet~27:28
bareL1=toilets~27:25,30:-35 bareL1=two~31:-44 bareL1=up~77:-27 bareL1=use~26:40
bareL1=when~0:-25,77:39 bareL1=which~0:-32 bareL1=with~3:43,66:20 bareL1=|~25:28,27:44,30:38,78:33
bareL2=(~0:-24 bareL2=)~25:-36 bareL2=,~0:-35,1:60,21:-45,27:23,28:44,30:22,58:29,67:37,78:30
bareL2=.~0:-24,1:-48,14:38,21:50,27:41,28:58,29:-55,31:44,35:-37,36:44,58:68,77:41,86:41
bareL2=0~1:41,2:-51,14:29,15:51,27:45,31:-23,78:53
bareL2=1~0:-25,23:56,27:24,28:55,31:34,51:48,66:32 bareL2=2~1:-51,14:40,21:51,28:49,30:64
bareL2=3~23:-47,27:63,45:38,78:-45 bareL2=4~0:-21,1:-58,30:-39,36:36,43:49,45:59
bareL2=5~0:27,26:21,77:45,78:35 bareL2=6~14:65,25:42 bareL2=7~77:55
bareL2=8~0:-38,1:25,30:19,31:36,45:44,78:38 bareL2=9~30:-32 bareL2=:~25:50,27:48,78:-28
bareL2=?~0:30 bareL2=above~0:-23,22:65,67:16,77:48 bareL2=adults~30:45 bareL2=again~77:37
bareL2=ah~0:-40,37:42 bareL2=away~0:51 bareL2=back~0:50 bareL2=bar~52:50,77:58
bareL2=barn~0:-35,3:36 bareL2=bathrooms~0:-25 bareL2=baths~0:53 bareL2=below~23:32
bareL2=beside~0:39 bareL2=booster~0:45 bareL2=borehole~55:49 bareL2=but~0:-42 bareL2=buy~0:26
bareL2=by~59:70 bareL2=cabin~0:-39,27:59 bareL2=children~0:47 bareL2=cistern~0:37 bareL2=cows~78:27
bareL2=dear~0:30 bareL2=depth~0:-32 bareL2=do~26:38 bareL2=down~25:-41 bareL2=drip~22:33
bareL2=drop~0:33 bareL2=field~77:37 bareL2=fills~77:30 bareL2=five~0:-39,3:44 bareL2=four~30:45
bareL2=from~0:40 bareL2=ft~28:36 bareL2=full~0:32 bareL2=gal~25:25,31:41,77:25 bareL2=gallon~0:26
bareL2=garden~0:35 bareL2=generator~0:-45,27:34 bareL2=goats~4:65 bareL2=goes~0:41
bareL2=got~0:91,77:-59 bareL2=gpm~0:-23,77:23 bareL2=grid~0:35,77:-34 bareL2=hav~0:34
bareL2=hdpe~0:-28 bareL2=height~0:29 bareL2=hello~28:24 bareL2=helo~0:54 bareL2=high~0:-56,86:31
bareL2=higher~0:-56,77:27 bareL2=hose~0:-31,67:69 bareL2=hoses~0:-25,3:32 bareL2=hot~0:53
bareL2=house~25:19,77:66 bareL2=how~0:-39 bareL2=hundred~0:40 bareL2=husband~77:26 bareL2=i'd~77:45
bareL2=inch~0:-41,1:66,27:61 bareL2=it's~0:51 bareL2=jet~0:36 bareL2=just~0:54 bareL2=kids~0:45
bareL2=l~0:-52,3:22,23:32,52:52,58:61 bareL2=lawn~29:58 bareL2=line~0:41 bareL2=liters~0:36
bareL2=litres~78:41 bareL2=live~0:-38,30:34 bareL2=lying~0:47
bareL2=m~0:-51,1:-29,24:44,25:11,31:34,78:39 bareL2=mains~0:-32 bareL2=maybe~0:-41 bareL2=me~0:45
bareL2=meter~0:74 bareL2=meters~0:72 bareL2=metres~77:39 bareL2=milking~0:38 bareL2=min~0:-38
bareL2=mm~21:49,26:29 bareL2=morning~0:-41,23:28 bareL2=mppt~37:43 bareL2=need~0:56
bareL2=north~0:-36,44:65 bareL2=nothing~0:-32,25:6 bareL2=one~77:37 bareL2=only~27:43
bareL2=out~0:-51,77:39 bareL2=outlets~26:42 bareL2=over~0:33 bareL2=panels~0:-47,25:33,45:24
bareL2=pe~0:-51,26:65 bareL2=people~0:-68,25:74,30:57,31:47 bareL2=persons~25:-34,30:44
bareL2=pipe~15:61 bareL2=please~0:-22,77:18 bareL2=poly~23:52,30:-40 bareL2=pressure~77:30
bareL2=promised~0:40 bareL2=psi~27:19 bareL2=pump~1:-42,25:27,29:53,31:35,58:53,67:70,77:-39
bareL2=pvc~0:-31 bareL2=quarter~0:-42,22:23 bareL2=read~0:28 bareL2=reference~0:28
bareL2=roof~59:79 bareL2=run~0:37 bareL2=runs~77:33 bareL2=same~77:-37 bareL2=series~0:-28,77:37
bareL2=shed~0:-50 bareL2=shower~4:41,77:36 bareL2=showers~25:-48,27:44,30:32,31:65
bareL2=sink~77:41 bareL2=sinks~77:65 bareL2=six~0:-30,26:40 bareL2=smal~0:40 bareL2=speed~0:36
bareL2=sprinklers~29:67 bareL2=stable~0:26 bareL2=starts~27:-40 bareL2=stops~0:44
bareL2=suction~66:58,67:35 bareL2=switch~0:-36,77:26 bareL2=tank~4:30,77:64,86:28
bareL2=team~77:-30 bareL2=there~25:40 bareL2=there's~0:-42 bareL2=times~0:-36
bareL2=toilet~0:43,23:37 bareL2=toilets~0:45,30:-28 bareL2=top~5:31 bareL2=trough~0:48
bareL2=troughs~3:37 bareL2=two~4:41 bareL2=up~77:-38 bareL2=use~77:27 bareL2=uses~0:-38
bareL2=v~0:45 bareL2=w~0:-78,25:28 bareL2=water~0:48,24:52,27:-41,67:74 bareL2=way~25:40
bareL2=we're~3:37 bareL2=well~79:29 bareL2=when~0:105,27:-47 bareL2=which~0:-28 bareL2=who~30:21
bareL2=wife~0:-29 bareL2=will~0:-43 bareL2=would~0:-40,4:38,25:29 bareL2=x~25:37 bareL2=yard~0:-40
bareL2=you~26:41 bareL2=your~0:-37 bareL2=yurt~0:-47 bareL2=|~0:23,3:43,23:38,25:-26,30:42
bareM=cistern~1:-43,3:-34,27:30,59:53,77:27,78:-35 bareM=creek~78:34
bareM=drip~0:43,1:-41,14:70,21:103,22:99,25:-26,27:-47,30:-40
bareM=pump~2:17,3:24,5:50,14:37,23:21,24:33,26:31,27:34,28:20,29:32,43:28,51:42,58:39,67:46,78:58
bareM=roof~0:20,59:92,77:29 bareM=spring~0:43,3:51,5:30,15:74,27:33,77:66
bareM=tank~1:74,14:-52,25:48,30:47,31:70,35:-40,52:-29,77:31
bareM=well~1:38,4:44,5:11,25:11,26:40,30:15,77:12,79:30 bareR0=(~0:-40,77:34 bareR0=)~0:88,77:-35
bareR0=,~0:-30,3:1,25:82,27:27,28:28,30:72,66:42
bareR0=.~0:-60,1:19,3:35,5:-40,26:-46,27:32,31:39,35:41,36:47,77:49,79:37 bareR0=0~0:61
bareR0=1~27:24,30:71,31:-20 bareR0=2~0:76,1:-31,77:-38 bareR0=3~0:62 bareR0=4~43:35,77:35
bareR0=5~0:39 bareR0=6~3:35 bareR0=:~1:37 bareR0=?~0:59 bareR0=a~22:54,25:50,37:41
bareR0=adults~0:31 bareR0=after~14:29 bareR0=all~0:-26,78:29 bareR0=an~58:60
bareR0=and~21:51,26:36,27:27 bareR0=are~0:25 bareR0=at~0:-22,22:128,24:34,26:56,29:43,52:32
bareR0=automatic~78:26 bareR0=basins~27:146 bareR0=bathroom~0:91,25:-28 bareR0=bathrooms~25:56
bareR0=baths~0:31 bareR0=beef~1:76 bareR0=bends~66:62 bareR0=bibs~23:43 bareR0=boys~0:45
bareR0=break~15:59 bareR0=bulls~1:47 bareR0=cabins~25:30 bareR0=calf~0:-22,5:61 bareR0=calves~5:64
bareR0=campers~77:41 bareR0=chickens~0:-36,4:129 bareR0=cow~0:-45,5:60
bareR0=cows~0:-68,1:52,2:157,3:-42,5:69,77:-32 bareR0=dairy~2:50 bareR0=drinkers~0:-53,78:152
bareR0=drip~21:42 bareR0=dry~0:-57,1:100,59:66 bareR0=elbows~66:56 bareR0=ewes~3:134
bareR0=five~0:24 bareR0=float~0:-29,78:84 bareR0=floats~78:35 bareR0=foot~0:-31,67:89
bareR0=for~0:-34,23:59,78:35 bareR0=garden~23:33 bareR0=goats~0:-57,3:199 bareR0=guests~77:63
bareR0=have~2:26 bareR0=head~1:69 bareR0=heifers~1:86 bareR0=hens~0:-48,1:-33,3:-27,4:221
bareR0=horses~0:-42,1:221 bareR0=hose~0:-67,23:185 bareR0=hoses~0:-53,23:173,24:65
bareR0=hour~0:-48,58:105 bareR0=house~0:-71,55:49,77:47 bareR0=houses~0:32 bareR0=i~0:41
bareR0=identical~0:-39,51:119 bareR0=in~0:-75,2:28,43:60,77:93 bareR0=is~0:27 bareR0=it~0:67
bareR0=kids~0:33 bareR0=kitchen~0:73 bareR0=line~0:45 bareR0=machine~30:-23,31:67
bareR0=machines~25:43,31:65 bareR0=may~26:60 bareR0=milk~2:119 bareR0=milking~2:45
bareR0=months~59:67 bareR0=n~0:-59,35:115 bareR0=now~0:-49,77:31 bareR0=of~45:62,77:51
bareR0=off~52:29 bareR0=on~0:28,78:40 bareR0=once~0:-34,24:41,26:33
bareR0=one~0:-29,14:48,25:34,77:60 bareR0=out~37:42 bareR0=pairs~0:-43,5:117
bareR0=panels~0:44,43:51 bareR0=people~25:-32,77:194 bareR0=per~58:44 bareR0=person~0:-35,77:105
bareR0=persons~77:126 bareR0=pieces~28:25 bareR0=pipe~0:52 bareR0=plus~0:36 bareR0=poly~0:40
bareR0=pressure~0:-35,15:99 bareR0=pumps~51:72 bareR0=pupils~77:70 bareR0=rooms~25:39
bareR0=rows~0:26 bareR0=run~26:74 bareR0=series~43:39 bareR0=sheep~0:-23,3:118
bareR0=shower~0:-43,25:224,26:52,30:-8,77:-43 bareR0=showers~0:-37,25:237,26:103,77:-19
bareR0=sink~0:-55,27:227,30:-60 bareR0=sinks~25:-38,27:194,77:-22 bareR0=so~0:46 bareR0=south~36:69
bareR0=spring~0:36 bareR0=sprinkler~0:-31,28:26 bareR0=sprinklers~0:-36,28:138,29:78
bareR0=staff~0:31 bareR0=starts~58:89 bareR0=stock~1:45 bareR0=string~0:-28,45:56
bareR0=strings~0:-29,45:86 bareR0=tanks~15:58 bareR0=tap~0:-25,23:54 bareR0=th~44:65
bareR0=the~0:40,26:38,27:43,30:-29 bareR0=them~1:36,3:36 bareR0=there~77:29 bareR0=three~45:24
bareR0=time~22:39 bareR0=together~26:38 bareR0=toilet~0:-29,30:129
bareR0=toilets~0:-43,27:-7,30:203,77:-39 bareR0=trees~0:30 bareR0=trough~78:71
bareR0=troughs~0:-55,78:195 bareR0=tunnels~0:22 bareR0=two~0:38,77:60 bareR0=us~0:-28,77:141
bareR0=valve~0:-40,67:87 bareR0=wash~27:62 bareR0=washer~31:55 bareR0=washing~27:-35,31:123
bareR0=waterers~78:33 bareR0=wc~30:73 bareR0=we~0:-69,77:27 bareR0=well~0:69 bareR0=what~0:-43
bareR0=with~0:-43,1:-39,5:90,78:71 bareR0=x~0:32 bareR0=zones~0:-57,14:96,21:86,77:-37
bareR0=|~31:76,77:31 bareR1=(~25:28,27:-29 bareR1=)~27:54 bareR1=,~5:26,25:44,77:25,78:41
bareR1=.~0:-62,1:38,2:-31,4:40,5:45,22:21,23:24,26:50,27:-35,30:44,31:-31,52:54,58:33,78:46
bareR1=0~43:44,45:42 bareR1=1~2:13,23:-56,27:51,30:-29,43:33,77:19 bareR1=2~1:45,25:34,28:27
bareR1=3~0:40,1:-42,52:32 bareR1=5~0:-38 bareR1=7~0:40,77:-52 bareR1=8~0:-45,1:28 bareR1=9~2:64
bareR1=?~0:-53,25:63,77:59 bareR1=a~27:36 bareR1=and~2:27,5:37 bareR1=are~27:26
bareR1=at~0:-7,5:39,21:30,77:64 bareR1=automatic~1:37 bareR1=basins~25:46,27:-29
bareR1=bathrooms~0:-26,77:27 bareR1=both~0:-33,23:37 bareR1=but~27:41 bareR1=chickens~77:39
bareR1=children~0:47,77:-36 bareR1=cistern~0:-40,59:57 bareR1=cows~0:-48,1:40,3:35 bareR1=dry~2:54
bareR1=each~0:-26,25:45 bareR1=ewes~0:-35 bareR1=float~1:57,78:29 bareR1=foot~0:-35,5:52,66:75
bareR1=from~0:-28,4:27 bareR1=ft~0:41 bareR1=garden~0:-37 bareR1=guests~0:40 bareR1=have~0:-69
bareR1=hens~0:-36,1:55,3:43 bareR1=horses~0:34,1:-51,4:39 bareR1=hose~26:44
bareR1=house~0:17,77:-21 bareR1=i~21:20,25:25 bareR1=in~0:46,51:27,77:-32
bareR1=is~0:-38,59:47,91:69 bareR1=it~0:29,25:68 bareR1=it's~0:43 bareR1=its~25:32
bareR1=kids~77:-33 bareR1=kitchen~25:20,27:-40,30:38 bareR1=litres~77:35 bareR1=loo~25:44
bareR1=m~55:48 bareR1=machine~30:60 bareR1=mains~23:43 bareR1=my~0:-24 bareR1=no~24:43
bareR1=of~0:37,5:27,77:-13 bareR1=on~0:-61,15:31,24:57,77:16 bareR1=one~0:35
bareR1=open~0:-27,28:24 bareR1=other~14:37,27:30 bareR1=outhouse~25:33,27:49
bareR1=parallel~0:-23,51:72 bareR1=pasture~0:-27,5:30 bareR1=persons~0:29 bareR1=plot~0:37
bareR1=plus~0:-38 bareR1=power~27:23 bareR1=pressure~0:45 bareR1=pump~0:-37,24:83,29:46
bareR1=run~0:-40,21:36,26:66 bareR1=same~29:25 bareR1=series~43:32
bareR1=shower~25:-47,27:86,30:36,77:23 bareR1=showers~25:-42,30:42,77:52
bareR1=sink~25:41,27:-97,77:25 bareR1=sinks~25:47,27:-47 bareR1=spring~0:-56,3:42
bareR1=sprinklers~23:67 bareR1=tank~0:31,77:-48 bareR1=the~0:-50,4:24,5:-29,23:47,30:51,78:37
bareR1=they~0:-32,28:23 bareR1=three~0:73 bareR1=time~22:22,26:25,29:51 bareR1=toddler~0:47,77:-28
bareR1=toilet~27:42,30:-29 bareR1=toilets~25:40,27:48,30:-52 bareR1=too~0:37 bareR1=trough~0:-56
bareR1=troughs~1:79 bareR1=two~21:45,25:-26 bareR1=us~30:23 bareR1=valve~66:72 bareR1=w~43:62,45:47
bareR1=washer~27:35 bareR1=washing~27:9,30:40 bareR1=we~27:40 bareR1=well~0:-51,77:33
bareR1=what~0:49 bareR1=when~0:45 bareR1=with~0:-22,25:35 bareR1=would~77:35 bareR1=|~4:55,27:35
bareR2=)~0:85,23:46,27:-39 bareR2=,~1:-46,2:29,23:22,27:-35,43:16,45:52,77:41,78:-33
bareR2=.~1:36,5:50,15:50,24:49,25:28,77:30,78:-44 bareR2=0~77:45,78:42
bareR2=1~1:-33,3:66,14:38,30:43,45:46 bareR2=2~0:37,25:-41,27:43,31:-29,51:33,67:26,77:60
bareR2=3~0:51,27:43,30:-37,77:-35 bareR2=5~0:-31,5:54,30:-52,77:37 bareR2=6~23:39
bareR2=:~0:55,25:-26,27:63,30:-36 bareR2=?~59:53,77:32 bareR2=as~0:41 bareR2=bar~0:-22,52:35
bareR2=basins~0:42 bareR2=bucket~0:51 bareR2=by~0:-50 bareR2=calves~2:16 bareR2=can~0:-28,30:34
bareR2=cattle~0:45 bareR2=daily~77:28 bareR2=day~0:-34,77:84 bareR2=do~4:38 bareR2=drink~3:29
bareR2=each~51:41,77:37 bareR2=facing~43:32 bareR2=fifty~0:-30,55:49 bareR2=from~0:43,77:-57
bareR2=ft~0:21 bareR2=garden~0:34 bareR2=goats~0:-19,2:36,77:24 bareR2=gpm~0:-34
bareR2=hens~0:-40,3:34 bareR2=horses~0:-23,5:31 bareR2=hose~0:-63,27:38 bareR2=hoses~25:25
bareR2=house~4:26 bareR2=how~77:50 bareR2=inch~0:20 bareR2=kitchen~0:-29,25:53,30:31
bareR2=line~22:51 bareR2=litres~77:99 bareR2=m~3:45,77:41 bareR2=machines~30:40 bareR2=mains~27:33
bareR2=min~0:34 bareR2=mm~0:-40,55:49 bareR2=no~25:-30,27:49 bareR2=none~1:47 bareR2=off~1:35
bareR2=one~0:49,27:28,43:34 bareR2=ones~2:46 bareR2=only~26:41 bareR2=other~0:43
bareR2=parallel~45:66 bareR2=people~0:-29,25:33 bareR2=per~77:36 bareR2=plus~0:34
bareR2=power~0:-40,30:70 bareR2=psi~0:34 bareR2=pump~0:36,4:-41,27:-47 bareR2=rise~0:-33,1:23
bareR2=run~23:36,77:-47 bareR2=same~0:-55,26:53,28:70 bareR2=see~25:37 bareR2=series~43:103
bareR2=shower~77:41 bareR2=showers~0:34,27:37 bareR2=since~0:42 bareR2=sink~30:25
bareR2=spring~0:31,1:48 bareR2=string~43:40 bareR2=strings~0:31 bareR2=tank~1:-30,30:-29
bareR2=there's~0:-54 bareR2=three~0:37 bareR2=tilted~0:-32,43:44
bareR2=time~0:-49,21:95,25:-40,26:43,28:35 bareR2=toilet~25:38
bareR2=toilets~0:36,25:-41,26:89,27:-33,77:40 bareR2=trough~3:36 bareR2=until~25:70
bareR2=upstairs~77:36 bareR2=us~27:41 bareR2=use~0:42 bareR2=v~77:30 bareR2=washer~25:33
bareR2=washing~30:48 bareR2=water~25:-46 bareR2=week~0:-30,77:52 bareR2=well~0:-37,5:39
bareR2=what~0:47 bareR2=which~0:-42 bareR2=will~30:52 bareR2=without~0:-27,26:44
bareR2=|~0:29,25:30,26:45,77:-61 bareT=beds.area~0:-52,4:27,14:59,21:113,22:106,25:-24
bareT=power.amps~0:10 bareT=power.cable~0:-43,43:74,45:49 bareT=power.controller~37:42
bareT=power.facing~43:87,45:28,77:41 bareT=power.limit~37:42,45:56
bareT=power.open_voltage~0:56,3:-55,43:51 bareT=power.panel~5:46,43:124,45:86
bareT=power.series~43:-165,45:91,77:39 bareT=power.shade~3:11,43:36
bareT=power.source~0:20,1:38,3:29,5:41,23:15,36:44,43:48,45:45,77:-38,78:39
bareT=power.strings~0:65,43:67,45:-88 bareT=power.tilt~43:44,45:43
bareT=power.voltage~3:-46,23:47,27:62,35:58,45:51,77:36
bareT=pump.control~3:-47,23:43,25:37,31:45,51:62,58:63 bareT=pump.count~0:21,58:43
bareT=pump.cut_in~0:29,27:-31,31:33,58:59,77:38 bareT=pump.cut_out~0:31,52:50,58:56,77:29
bareT=pump.height~2:58,4:-36,25:-37,27:-13,43:32,45:29,78:35,86:51 bareT=pump.most_flow~0:-73
bareT=pump.placement~0:28,3:-17,5:37,23:38,29:21,31:47,66:28,67:34,86:47
bareT=pump.present~0:-43,23:25,24:50,25:23,30:35,78:29 bareT=pump.set~0:42,24:61
bareT=pump.starts~51:38 bareT=pump.works~77:69 bareT=store.days~1:45
bareT=store.hours~0:28,25:42,77:-48 bareT=store.reserve~77:36
bareT=store.volume~1:-56,3:-45,26:62,27:42,28:-37,51:49,58:26,59:46
bareT=tank.level~0:20,21:50,26:23,43:45 bareT=tank.volume~3:38,43:28
bareT=water.kind~1:70,2:58,3:69,4:34,5:26,23:52,24:36,28:49,29:29,30:41,43:47,45:20,59:45,67:27,78:44
bareT=water.level~1:-51,3:60,4:41,30:31,66:51,67:92,77:26 bareT=water.temperature~77:-32
bareT=water.yield~2:50,26:39,30:56,77:63,78:70
bareT=way.climb~0:33,1:39,2:37,4:17,5:24,15:52,25:47,28:38,29:65,30:40,43:-36
bareT=way.length~0:32,1:50,2:28,3:33,4:53,21:55,22:49,24:48,26:33,27:31,28:19,29:44,51:27,78:72,86:-41
bareT=way.pipe~1:49,2:34,5:76,15:45,21:70,22:53,26:41,28:18,30:-22,31:44,43:-17,51:30,52:-32,77:28,78:73
bareT=well.bore~0:55,77:68 bareT=well.depth~4:67,24:37,25:27,77:57,79:36 bareT=well.drop_pipe~0:27
bareT=well.static~30:23 bareT=well.tested~77:55 barea=~30:37,35:44 barea=,_sinks~25:42,27:-36
barea=.~86:30 barea=adults_and~0:61,77:-39 barea=at_a~22:39 barea=basins_,~27:32
barea=basins_.~27:45 barea=bathrooms_,~25:25 barea=bends_,~66:51 barea=boys_.~0:34
barea=break_pressure~15:59 barea=cow_calf~0:-22,5:61 barea=cows_and~2:27 barea=cows_in~2:35
barea=cows_with~5:65 barea=dairy_cows~2:50 barea=drinkers_with~78:15 barea=dry_months~59:67
barea=ewes_.~3:43 barea=foot_valve~0:-31,67:89 barea=goats_,~3:64 barea=goats_.~3:60
barea=goats_and~3:57 barea=head_of~1:36 barea=hens_,~4:46 barea=hens_.~4:18 barea=hens_and~4:37
barea=horses_,~1:45 barea=horses_.~1:50 barea=horses_and~1:54 barea=hose_.~23:64
barea=hose_bibs~23:43 barea=hose_for~23:31 barea=identical_pumps~51:65 barea=in_series~43:46
barea=in_the~0:-45,77:64 barea=milking_cows~2:45 barea=n_.~0:-39,35:85 barea=of_them~3:38
barea=of_us~0:-21,77:142 barea=panels_of~43:54 barea=people_,~77:77 barea=people_.~77:83
barea=people_|~0:-32,77:38 barea=persons_,~0:-33,77:76 barea=persons_.~0:-30,77:64
barea=sheep_and~3:48 barea=shower_,~0:-33,25:119,30:-31 barea=shower_.~0:-24,25:74
barea=shower_1~25:60 barea=shower_and~0:-56,25:33,26:63 barea=showers_,~0:-43,25:151,77:-30
barea=showers_.~0:-55,25:143,77:-28 barea=showers_and~25:44 barea=showers_are~0:40
barea=showers_at~26:31 barea=showers_run~26:56 barea=sink_,~0:-30,27:98 barea=sink_.~0:-30,27:78
barea=sink_1~27:26 barea=sink_and~27:42 barea=sinks_,~0:33,25:-23,27:87,30:-57 barea=sinks_.~27:69
barea=sinks_and~27:44 barea=south_.~36:69 barea=sprinklers_at~29:26 barea=staff_.~0:37
barea=starts_an~58:61 barea=starts_per~58:31 barea=strings_of~45:57 barea=toilet_,~25:-36,30:77
barea=toilet_.~30:66 barea=toilets_,~0:-23,25:-27,30:129 barea=toilets_.~30:80
barea=toilets_and~30:21 barea=trough_with~78:21 barea=troughs_,~78:43 barea=troughs_.~78:31
barea=wash_basins~27:31 barea=washer_.~31:39 barea=washing_machine~30:-19,31:91
barea=washing_machines~31:91 barea=wc_,~30:36 barea=zones_.~0:-36,14:64 bareb=~0:50
bareb=._we're~77:40 bareb=1_sink~25:41,27:37 bareb=2_showers~30:26 bareb=adults_and~0:28
bareb=bar_.~0:-25 bareb=between_the~0:25 bareb=enough_for~0:-50 bareb=family_of~0:-25,25:-22,77:88
bareb=ft_,~0:-41 bareb=goats_,~4:27 bareb=goats_and~0:43 bareb=guests_and~0:35 bareb=hens_and~3:42
bareb=household_of~0:-30,77:39 bareb=i_have~28:25 bareb=just_the~0:-29,25:41 bareb=m_.~0:-19
bareb=machine_,~23:35 bareb=no_.~0:40 bareb=on_at~52:26 bareb=people_,~4:42
bareb=people_:~25:-38,77:107 bareb=pipe_,~0:39 bareb=pump_.~27:44 bareb=shower_,~0:-16,30:53
bareb=shower_and~0:-23,27:51 bareb=showers_,~25:-73,27:24,30:41 bareb=showers_:~25:121,30:-43
bareb=showers_and~30:47 bareb=sinks_,~27:-37,30:41 bareb=sinks_:~27:64 bareb=strings_of~43:30
bareb=tank_.~5:31 bareb=there_are~0:43,21:50,25:56,77:-25 bareb=there_is~0:-45 bareb=toilet_,~77:29
bareb=toilets_,~27:28,30:-52 bareb=up_to~77:33 bareb=valve_and~66:47 bareb=w_,~43:30
bareb=water_at~79:35 bareb=we_are~0:-36,77:89 bareb=we_have~25:27 bareb=we_milk~2:20
bareb=well_is~86:30 chargeC=,~39:42 chargeC=:~39:28 chargeC=battery~0:25 chargeC=v~39:37
chargeL0=2~0:31 chargeL0=a~39:30 chargeL0=and~0:37 chargeL0=battery~39:30 chargeL0=v~0:30
chargeL1=1~0:29 chargeL1=battery~0:32 chargeL1=is~0:36 chargeM=pump~39:67 chargeR0=.~39:67
chargeR0=battery~39:38 chargeT=power.battery~39:68 chargeT=power.panel~39:50
chargeT=power.source~39:52 chargeT=power.voltage~39:79 chargeT=water.kind~39:42
chargeT=way.length~39:30 chargea=.~0:32 currentC=,~37:41 currentC=0~37:35 currentC=controller~37:34
currentL0=,~37:39 currentL0=v~0:54 currentL1=0~37:37 currentL2=,~37:24 currentL2=0~37:22
currentM=pump~37:44 currentR1=v~0:53 currentT=power.battery~37:57 currentT=power.cable~37:34
currentT=power.capacity~37:57 currentT=power.controller~37:61 currentT=power.facing~37:21
currentT=power.limit~37:38 currentT=power.panel~37:44 currentT=power.series~37:38
currentT=power.shade~0:53 currentT=power.source~37:44 currentT=power.voltage~37:40
currentT=pump.placement~37:37 currentT=store.volume~37:25 currentT=water.kind~37:20 dailyC=,~71:40
dailyC=2~0:52 dailyC=3~72:19 dailyC=consumption~72:30 dailyC=each~71:-39,72:101 dailyC=garden~73:48
dailyC=meter~71:35 dailyC=need~71:36 dailyC=takes~73:32 dailyC=two~71:45 dailyC=us~71:38
dailyC=use~71:70 dailyC=uses~72:35 dailyL0=,~71:49 dailyL0=about~71:51 dailyL0=each~72:46
dailyL0=is~71:30 dailyL0=need~71:36 dailyL0=people~72:18 dailyL0=takes~73:32 dailyL0=the~73:34
dailyL0=use~71:78 dailyL0=uses~72:35 dailyL0=we~71:34 dailyL1=2~0:62 dailyL1=a~73:36
dailyL1=each~72:56 dailyL1=in~73:31 dailyL1=two~71:46 dailyL2=.~73:56 dailyL2=0~73:58
dailyL2=1~72:36 dailyL2=4~73:24 dailyL2=6~0:31 dailyL2=m~73:34 dailyL2=water~71:26
dailyM=drip~73:44 dailyM=pump~71:38,73:41 dailyM=tank~71:17,73:40 dailyM=well~71:41 dailyR0=,~71:22
dailyR0=.~0:45,71:64,72:86 dailyR0=by~71:51 dailyR0=each~0:63 dailyR0=in~73:39 dailyR0=meter~71:30
dailyR0=of~73:35 dailyR0=the~71:24,73:47 dailyR1=,~71:43 dailyR1=.~0:-37,71:23,73:48 dailyR2=.~0:29
dailyR2=2~73:41 dailyT=beds.area~73:44 dailyT=power.battery~71:32 dailyT=power.capacity~71:32
dailyT=power.source~0:40,71:27 dailyT=power.voltage~0:26 dailyT=pump.control~0:32
dailyT=pump.height~0:47 dailyT=store.fills~73:41 dailyT=store.reserve~73:55
dailyT=store.volume~73:56 dailyT=tank.level~0:77 dailyT=tank.volume~0:20
dailyT=water.kind~71:34,72:45,73:46 dailyT=water.level~71:28 dailyT=way.climb~73:35
dailyT=way.length~0:27,73:30 dailyT=way.pipe~0:33 dailyT=well.depth~71:36 dailya=.~71:47,72:36
dailya=by_the~71:30 dailya=each_.~0:63 dailya=in_the~73:41 eachC=,~72:59 eachC=0~0:33 eachC=2~0:36
eachL0=,~72:44 eachL0=at~0:35 eachL1=2~0:36 eachL1=a~72:38 eachL1=for~0:37 eachL2=,~72:25
eachL2=.~72:34 eachM=pump~72:56 eachM=spring~72:53 eachM=tank~72:41 eachM=well~72:25 eachR0=.~72:73
eachT=power.source~72:26 eachT=tank.volume~72:33 eachT=water.kind~72:90 eachT=water.yield~72:51
eachT=way.climb~72:32 eachT=way.length~72:43 eachT=way.pipe~72:43 flowC=,~7:48,74:62,81:43
flowC=0~7:43,81:28 flowC=1~56:38,92:22 flowC=2~7:43,56:34,92:32 flowC=4~0:36 flowC=5~0:26
flowC=6~92:33 flowC=8~81:43 flowC=9~81:40 flowC=:~0:41,90:17,92:78 flowC=after~90:20
flowC=all~74:39 flowC=apart~7:42 flowC=bore~81:62 flowC=borehole~0:27,81:50,92:49 flowC=box~0:49
flowC=cm~7:33 flowC=concrete~63:32 flowC=depth~81:28 flowC=driller~0:-31,81:58 flowC=drip~0:36,7:45
flowC=drippers~7:85 flowC=each~0:31,81:-40 flowC=emitters~7:73 flowC=every~7:39 flowC=flow~0:35
flowC=ft~0:48,92:18 flowC=gives~8:20,81:55 flowC=hand~0:74 flowC=he~92:39 flowC=inches~7:30
flowC=level~92:49 flowC=lines~7:28 flowC=makes~81:43 flowC=me~8:22 flowC=meter~74:39
flowC=minutes~90:41 flowC=night~74:38 flowC=one~81:-40 flowC=out~0:68 flowC=pond~8:26
flowC=pump~8:45,56:79,90:32 flowC=pumped~81:-58,92:23 flowC=pumping~90:23 flowC=ran~90:33
flowC=rows~7:42 flowC=shower~0:51 flowC=spring~81:45 flowC=static~92:25 flowC=steady~0:55
flowC=take~0:23,81:-31 flowC=tank~0:-46,63:111 flowC=test~90:33 flowC=volt~56:28
flowC=want~0:41,81:-24 flowC=was~81:32 flowC=well~0:-15,63:38,81:93 flowC=which~63:29
flowC=yield~81:54 flowL0=,~74:13 flowL0=.~81:39 flowL0=0~0:-21 flowL0=:~81:29,90:28 flowL0=a~81:33
flowL0=at~90:64,92:55 flowL0=bore~81:47 flowL0=borehole~81:53 flowL0=cm~7:33 flowL0=driller~81:63
flowL0=drip~0:31 flowL0=drippers~7:62 flowL0=each~0:40 flowL0=emitters~7:36 flowL0=flow~0:22
flowL0=ft~0:45,81:-41,92:32 flowL0=gives~8:20,81:28 flowL0=he~92:43 flowL0=i~74:51 flowL0=m~0:41
flowL0=makes~81:38 flowL0=of~7:30 flowL0=pump~8:49,56:52 flowL0=pumped~81:-30,92:31
flowL0=spring~81:25 flowL0=tank~63:39 flowL0=test~90:34 flowL0=tested~81:44 flowL0=that~0:32
flowL0=the~63:99 flowL0=want~0:41,81:-24 flowL0=we~0:46 flowL0=well~81:35 flowL0=which~63:32
flowL0=with~7:26 flowL0=yield~81:33 flowL1=,~7:36,74:47 flowL1=.~0:29,8:56,56:21 flowL1=0~81:34
flowL1=1~0:-35,56:32,92:28 flowL1=2~92:50 flowL1=3~81:-42 flowL1=8~81:48 flowL1=9~81:22
flowL1=a~56:29 flowL1=at~81:50 flowL1=emitters~7:23 flowL1=every~7:32 flowL1=ft~0:-28 flowL1=i~0:29
flowL1=pump~0:-44,56:44,90:38 flowL1=pumping~92:35 flowL1=tank~63:47
flowL1=the~0:54,56:32,63:30,74:26,81:-42 flowL1=way~56:33 flowL1=well~63:22
flowL2=,~7:44,8:92,56:36 flowL2=.~0:30,7:23 flowL2=0~0:18 flowL2=1~92:23 flowL2=2~7:49,81:51
flowL2=3~81:37 flowL2=5~0:19,8:48,81:-31 flowL2=6~0:-60,81:23,92:49 flowL2=7~0:-28,81:29
flowL2=:~92:51 flowL2=all~74:39 flowL2=borehole~56:30 flowL2=every~8:50 flowL2=from~56:22
flowL2=ft~92:36 flowL2=ground~0:35 flowL2=m~7:28,56:20 flowL2=mm~0:30 flowL2=need~0:49
flowL2=night~74:39 flowL2=pond~0:36 flowL2=pump~0:-24,56:62 flowL2=run~81:42
flowL2=spring~0:-29,81:47 flowL2=there~0:33 flowL2=well~92:31 flowM=cistern~63:28
flowM=drip~7:122,8:93,81:-32 flowM=pump~0:33,7:57,56:77,74:37,90:59,92:49 flowM=spring~81:132
flowM=tank~56:54,63:112 flowM=well~81:37,92:50 flowR0=,~7:45,90:42
flowR0=.~7:24,63:33,74:70,81:95,92:41 flowR0=0~90:58 flowR0=2~90:31 flowR0=4~92:34 flowR0=9~90:58
flowR0=and~63:26 flowR0=at~0:59,8:46,56:70,81:-52 flowR0=day~63:28 flowR0=each~7:36
flowR0=for~0:57,81:-47,90:73 flowR0=from~63:30 flowR0=how~81:36 flowR0=in~0:76 flowR0=its~0:33
flowR0=set~56:53 flowR0=the~8:85,56:-40,81:36 flowR0=water~81:52 flowR0=|~81:37 flowR1=,~7:22
flowR1=.~0:36,63:69 flowR1=0~81:31 flowR1=a~0:-36,74:21,81:30 flowR1=and~90:47 flowR1=can~8:49
flowR1=i~90:21 flowR1=it~0:-60 flowR1=off~90:26 flowR1=pressure~74:47 flowR1=psi~56:40
flowR1=run~0:46 flowR1=sink~56:37 flowR1=the~81:32 flowR2=,~0:-50 flowR2=.~0:38,56:37,74:44
flowR2=0~81:22 flowR2=1~74:31 flowR2=5~81:46 flowR2=bar~56:38 flowR2=ft~92:69 flowR2=level~90:27
flowR2=minute~0:67,81:-62 flowR2=psi~8:25 flowR2=pump~81:40 flowR2=run~8:57
flowT=beds.area~0:-60,7:65 flowT=power.battery~56:53 flowT=power.capacity~56:53
flowT=power.series~0:36 flowT=power.source~7:41,81:61 flowT=power.voltage~0:-32,56:90
flowT=pump.control~74:59 flowT=pump.height~81:50 flowT=pump.placement~0:51,81:-26
flowT=pump.present~81:21 flowT=pump.set~74:58 flowT=pump.works~0:-43,56:61 flowT=store.days~81:77
flowT=store.reserve~63:66 flowT=store.volume~56:78,81:-48 flowT=tank.level~0:76
flowT=tank.volume~0:65 flowT=water.kind~0:4,7:59,63:44,81:162,92:65
flowT=water.level~0:47,81:-39,92:95 flowT=water.temperature~0:38
flowT=water.yield~0:121,7:37,81:-96 flowT=way.climb~81:68 flowT=way.length~56:41,81:43
flowT=way.pipe~56:44,81:25 flowT=well.bore~81:-55,90:41 flowT=well.cover~90:51
flowT=well.depth~81:39,90:51 flowT=well.pumped_for~0:-32,90:99 flowT=well.pumping~81:-54,92:93
flowT=well.static~92:66 flowa=~81:41 flowa=.~0:85,63:34 flowa=._the~74:32 flowa=at_the~8:54
flowa=for_4~92:36 flowa=from_the~63:31 flowb=ft_at~92:31 flowb=he_pumped~92:51 flowb=m_at~0:28
flowb=pump_gives~0:42 flowb=tested_at~81:35 flowb=yield_:~81:34 k=angle~32:51,35:109,46:94
k=area~0:78,6:239,60:57 k=bare~0:254,1:33,2:38,3:66,4:41,23:34,25:69,26:26,35:59,77:51
k=charge~39:190 k=current~37:44 k=daily~0:37,71:159,72:70,73:56 k=each~72:96
k=flow~0:91,7:79,8:55,56:50,63:81,74:37,81:152,90:77,92:46
k=length~0:292,12:23,13:55,34:121,38:72,52:-27,54:46,68:56,69:36,70:-25,71:-24,72:-28,77:-25,79:93,81:-29,82:83,83:47,84:176,85:72,86:64
k=pair~52:119 k=percent~0:55,44:60 k=power~0:148,42:130
k=pressure~0:144,11:44,16:43,17:65,33:30,48:123,52:72,53:76,57:99 k=temperature~18:79,32:43,80:75
k=time~0:166,9:39,61:134,62:29,76:79,88:51 k=voltage~0:49,40:46,41:34,47:196
k=volume~0:102,19:51,20:44,50:123,64:57,65:153,70:119,75:84 lengthC=(~86:29 lengthC=)~0:-60
lengthC=,~0:-35,12:43,13:48,54:19,68:22,69:33,79:3,83:36,84:-44,86:30,87:44
lengthC=0~12:66,69:42,82:52,83:38,84:76 lengthC=1~79:-40,86:40,89:53 lengthC=2~69:27,84:57
lengthC=3~0:30,69:16,89:34 lengthC=4~69:-25,82:28,87:55 lengthC=5~0:20 lengthC=6~0:-45,79:-59,89:81
lengthC=7~82:36 lengthC=9~79:-20,84:19 lengthC=:~69:47,82:42,84:-55,89:44
lengthC=above~0:38,34:37,82:-57,84:52 lengthC=all~0:56 lengthC=altimeter~82:44
lengthC=altitude~34:86 lengthC=apart~10:42 lengthC=as~0:37 lengthC=away~83:50
lengthC=barn~0:-43,83:37,84:32 lengthC=basement~83:39 lengthC=before~91:35 lengthC=below~84:25
lengthC=between~84:32 lengthC=bore~85:33,86:43 lengthC=borehole~0:-43,55:39,69:-31,86:79
lengthC=bottom~69:23,86:50 lengthC=box~79:31 lengthC=buried~0:35 lengthC=but~0:-30,79:52,84:47
lengthC=by~83:21 lengthC=cabin~0:-29,34:44,79:-31,82:45,84:26 lengthC=cable~38:134,84:-38
lengthC=came~91:60 lengthC=cased~0:-44,85:57 lengthC=casing~0:-53,85:19 lengthC=cellar~0:46
lengthC=climb~0:-29,82:75 lengthC=climbs~82:107 lengthC=cm~10:24 lengthC=copper~84:49
lengthC=could~0:60 lengthC=creek~79:53,83:34 lengthC=dam~83:28 lengthC=data~0:44
lengthC=deep~0:-64,79:46,85:51 lengthC=depth~0:33,55:85,82:-35,86:37 lengthC=diameter~0:-63,54:57
lengthC=difference~82:30 lengthC=differences~83:30 lengthC=distance~84:56
lengthC=down~55:70,79:13,84:-45 lengthC=draws~68:34 lengthC=drilled~0:39,84:-47 lengthC=drip~10:70
lengthC=drippers~13:84 lengthC=drop~69:35,82:-31,83:53,84:-52,87:71 lengthC=drops~82:-35,83:35
lengthC=drum~69:47 lengthC=dry~0:46 lengthC=dug~86:49 lengthC=dynamic~79:41
lengthC=each~0:-28,10:57,13:35,84:-32 lengthC=elevated~69:31 lengthC=elevation~34:64,82:32
lengthC=emitters~13:52 lengthC=ends~0:37 lengthC=every~13:58 lengthC=fall~83:44
lengthC=falls~69:21,83:36 lengthC=feet~83:40 lengthC=field~0:34 lengthC=floor~69:34,82:48
lengthC=from~38:60,55:-47,79:64,82:89,83:53,86:-60
lengthC=ft~55:-36,68:-38,69:-55,82:59,86:56,91:72 lengthC=gallons~69:50 lengthC=garden~84:24
lengthC=generator~69:51 lengthC=goes~0:22,86:17 lengthC=good~0:-28 lengthC=gph~13:32
lengthC=gpm~0:37,89:68 lengthC=grid~0:34 lengthC=ground~0:-31,83:28 lengthC=h~13:42
lengthC=half~83:37 lengthC=hand~86:34 lengthC=hangs~55:30 lengthC=he~0:46 lengthC=head~0:25
lengthC=height~69:33,82:41 lengthC=here~34:27 lengthC=hi~0:31,79:-26 lengthC=highest~82:43
lengthC=hill~69:40,82:-45 lengthC=hit~79:29 lengthC=hole~86:39 lengthC=hose~0:-33,68:46,84:25
lengthC=hours~89:39 lengthC=house~55:-49,82:56,83:52,84:68,86:-56 lengthC=hundred~79:-49,82:42
lengthC=hut~34:38 lengthC=i've~0:49 lengthC=inside~85:49 lengthC=intake~68:63,83:26
lengthC=it's~84:35 lengthC=its~0:54,84:-42 lengthC=kitchen~82:43,84:21 lengthC=l~13:41
lengthC=last~0:28 lengthC=length~84:32 lengthC=level~79:35,86:-35,89:103,91:39 lengthC=lies~82:39
lengthC=lift~79:68,82:58 lengthC=lifted~82:36 lengthC=line~0:40,10:57,79:-40,82:-29,84:50
lengthC=lines~10:51 lengthC=litres~69:47 lengthC=lowered~55:46 lengthC=lowest~79:40
lengthC=m~79:35,83:45,85:69 lengthC=mains~0:32,84:-27 lengthC=maybe~0:31 lengthC=measured~0:14
lengthC=min~0:32 lengthC=mm~0:-42,82:35,84:58 lengthC=more~82:32 lengthC=must~82:22
lengthC=need~84:34 lengthC=next~84:45 lengthC=no~0:-48,79:36,84:51 lengthC=not~0:27
lengthC=off~82:48 lengthC=okay~0:-38 lengthC=one~83:-42,84:-33,86:31 lengthC=only~34:20
lengthC=ours~86:37 lengthC=out~0:-59,83:50 lengthC=outside~54:59 lengthC=overhead~69:26
lengthC=paced~0:41 lengthC=panels~0:31,84:-23 lengthC=pipe~0:53,68:50,69:-27,84:62,86:-46,87:66
lengthC=pit~86:-27 lengthC=plot~0:27 lengthC=poly~82:44 lengthC=pond~0:48 lengthC=power~0:31
lengthC=pump~38:15,55:137,79:72,83:-36,86:-30,91:-34 lengthC=pumping~79:57 lengthC=push~0:49,79:-36
lengthC=reservoir~0:-26,69:89,82:-40 lengthC=rest~91:49 lengthC=rise~82:95 lengthC=rises~82:54
lengthC=river~0:44 lengthC=road~0:53,84:-26 lengthC=roof~82:45 lengthC=room~0:31
lengthC=rows~10:56,12:140 lengthC=run~84:80 lengthC=runs~82:35 lengthC=says~86:32 lengthC=sch~0:33
lengthC=schedule~84:26 lengthC=set~55:68 lengthC=settled~89:33 lengthC=shower~82:42
lengthC=sits~0:-28,79:15 lengthC=small~34:21 lengthC=so~82:-10,86:39 lengthC=sorry~0:-51,79:26
lengthC=source~86:-28 lengthC=spring~0:-34,69:-49,83:81,84:49 lengthC=stand~69:41
lengthC=standing~91:63 lengthC=stands~0:-46,69:4,79:48,84:30
lengthC=static~0:-44,79:68,86:-33,91:95 lengthC=sub~55:46
lengthC=submersible~54:15,55:111,79:-26,84:-45 lengthC=sucks~68:33
lengthC=suction~0:-20,68:145,79:63,82:-18 lengthC=summer~34:24 lengthC=swl~79:43,91:43
lengthC=tank~0:42,69:127,79:-7,82:-29,83:-42,84:63,86:-25 lengthC=tap~82:52 lengthC=taps~0:55
lengthC=than~82:-49,84:44 lengthC=then~0:51,79:-34 lengthC=they~79:29 lengthC=thing~0:-37
lengthC=through~0:-23,68:50 lengthC=toddler~0:51 lengthC=told~0:50 lengthC=top~82:42
lengthC=tote~0:64 lengthC=tower~0:43 lengthC=towr~0:48,69:-45 lengthC=trench~0:72
lengthC=trough~0:-44,82:45 lengthC=troughs~84:56 lengthC=up~55:-42,69:39,82:35,84:29,86:-36
lengthC=uphill~82:46 lengthC=us~0:49 lengthC=use~79:-38 lengthC=was~55:38,84:-42
lengthC=water~0:-12,79:154,86:-39,91:74 lengthC=water's~79:39 lengthC=way~84:30 lengthC=we've~86:45
lengthC=well~0:46,55:46,84:-28,85:50,86:74 lengthC=well's~86:32 lengthC=wellhead~82:39
lengthC=wire~0:26,38:48 lengthC=zones~10:66 lengthL0=,~13:59,54:29,68:17,69:-59,84:21
lengthL0=.~0:-51,69:-16,79:40,82:61,84:13,86:28 lengthL0=0~0:34,69:26,82:-21 lengthL0=2~0:32,79:-33
lengthL0=3~0:39,69:33 lengthL0=4~0:30 lengthL0=:~38:37,69:54,82:37 lengthL0=?~0:-58,79:75
lengthL0=a~0:-49,38:31,68:14,84:38,85:36,86:44 lengthL0=all~0:53 lengthL0=altimeter~82:44
lengthL0=altitude~34:86 lengthL0=and~82:39 lengthL0=are~10:41,34:33
lengthL0=at~0:-22,34:89,55:134,79:57,82:-50,84:-39,86:-49 lengthL0=away~82:39 lengthL0=bore~86:54
lengthL0=borehole~82:-35,86:70 lengthL0=box~79:32 lengthL0=buried~0:50 lengthL0=by~0:48,83:39
lengthL0=cabin~0:-29,34:26,82:35,84:34 lengthL0=cable~38:69 lengthL0=can~0:35
lengthL0=casing~0:-33,85:19 lengthL0=cellar~0:46 lengthL0=climb~82:61 lengthL0=climbs~82:83
lengthL0=copper~84:27 lengthL0=creek~83:49 lengthL0=deep~85:29 lengthL0=depth~86:50
lengthL0=diameter~54:58 lengthL0=distance~84:32 lengthL0=down~79:38,89:47 lengthL0=drilled~0:45
lengthL0=drip~10:29 lengthL0=drippers~13:49 lengthL0=drop~83:29,84:-31 lengthL0=drops~82:-35,83:37
lengthL0=drum~69:47 lengthL0=dug~86:29 lengthL0=each~10:48 lengthL0=elevation~34:64
lengthL0=emitters~13:40 lengthL0=ends~0:37 lengthL0=every~13:64 lengthL0=falls~69:21,83:36
lengthL0=field~0:54 lengthL0=floor~0:-36,69:35 lengthL0=ft~82:43,83:-36 lengthL0=gallons~69:47
lengthL0=garden~84:22 lengthL0=goes~86:24 lengthL0=gpm~0:38 lengthL0=grid~0:35
lengthL0=ground~83:32 lengthL0=h~0:45 lengthL0=hangs~0:36,55:32 lengthL0=head~0:33
lengthL0=here~34:29 lengthL0=highest~82:42 lengthL0=hole~86:28 lengthL0=hose~0:-34,68:48
lengthL0=house~38:-27,55:-26,69:31,79:-42,82:50,83:50,84:53,86:-29 lengthL0=hut~34:40,83:-21
lengthL0=i~84:66 lengthL0=in~55:-40,79:10,82:-32,86:35 lengthL0=inside~85:50
lengthL0=intake~68:62,83:27 lengthL0=is~0:41,34:-21,38:38,69:50,82:34,83:25,85:58
lengthL0=it~0:46,55:29,79:33,82:-31 lengthL0=it's~79:-7,84:48,86:-34 lengthL0=kitchen~84:24
lengthL0=l~69:45 lengthL0=last~0:46 lengthL0=length~84:38 lengthL0=level~79:25,89:52,91:52
lengthL0=lies~82:39 lengthL0=lift~0:36,79:53 lengthL0=line~0:51,10:64,79:-28 lengthL0=lines~10:60
lengthL0=litres~69:38 lengthL0=lowered~55:38 lengthL0=m~0:66,79:-51 lengthL0=maybe~0:36
lengthL0=measured~84:46 lengthL0=mm~84:31 lengthL0=my~83:29 lengthL0=no~84:59 lengthL0=now~79:33
lengthL0=of~0:57 lengthL0=on~87:49 lengthL0=only~34:20 lengthL0=our~0:35
lengthL0=ours~0:-21,79:17,86:36 lengthL0=outside~54:61 lengthL0=pipe~68:69,84:43
lengthL0=poly~84:38 lengthL0=pond~0:27 lengthL0=pump~0:-30,38:53,55:111,69:-29,79:39,82:-45
lengthL0=pumping~79:39 lengthL0=push~0:32 lengthL0=rest~91:55 lengthL0=rise~82:90
lengthL0=rises~82:69 lengthL0=roof~82:29 lengthL0=rows~12:137 lengthL0=run~38:20,84:23
lengthL0=says~86:42 lengthL0=set~55:60 lengthL0=settled~89:33 lengthL0=shed~0:16
lengthL0=shower~82:33 lengthL0=small~34:31 lengthL0=sorry~79:32 lengthL0=spring~83:47
lengthL0=stand~69:40 lengthL0=standing~91:64 lengthL0=stands~0:-29,79:13
lengthL0=static~0:-16,79:45,91:81 lengthL0=sub~55:40 lengthL0=submersible~55:69
lengthL0=sucks~68:30 lengthL0=suction~68:102,79:37,82:-27 lengthL0=summer~34:24
lengthL0=surface~0:25 lengthL0=swl~79:43,91:44 lengthL0=tank~69:51,82:-45 lengthL0=tap~82:50
lengthL0=that~69:55 lengthL0=the~0:25,38:66,69:32,82:32,84:55,85:44,86:25,91:-35
lengthL0=through~0:-25,68:67 lengthL0=to~79:70,84:19 lengthL0=up~69:51 lengthL0=uphill~82:41
lengthL0=was~0:30 lengthL0=water~55:-43,79:87,82:-53,91:78 lengthL0=way~84:30
lengthL0=we~34:41,83:32 lengthL0=well~85:52,86:75 lengthL0=with~0:28,79:25,84:-46
lengthL0=|~0:30,79:34,83:62,84:-31 lengthL1=(~86:29 lengthL1=,~0:-36,10:66,69:34,84:-35
lengthL1=.~0:-68,55:47,91:36 lengthL1=0~69:70,82:19,83:36 lengthL1=2~13:38,69:27,84:-42
lengthL1=3~86:27 lengthL1=4~0:-49,79:58,84:50,86:35 lengthL1=5~0:-37 lengthL1=8~84:-42,91:43
lengthL1=9~79:-44 lengthL1=:~91:24 lengthL1=;~79:-40,82:-28 lengthL1=?~69:-35 lengthL1=a~86:59
lengthL1=above~79:-29,84:44 lengthL1=and~79:32,82:24,83:-47 lengthL1=apart~10:32 lengthL1=at~13:39
lengthL1=back~86:37 lengthL1=bar~0:47 lengthL1=below~84:39 lengthL1=beside~0:-32,82:27
lengthL1=booster~0:29,84:-28 lengthL1=bore~85:27 lengthL1=borehole~0:-48 lengthL1=cable~38:28
lengthL1=deep~0:37,86:32 lengthL1=depth~0:35,91:44 lengthL1=distance~84:28 lengthL1=emitters~13:33
lengthL1=feet~0:43,83:37 lengthL1=from~38:61,55:-29,69:36,83:42,84:50,86:-35 lengthL1=ft~0:41,79:44
lengthL1=gallon~0:27 lengthL1=gallons~0:66,84:-30 lengthL1=garden~0:26 lengthL1=gpm~89:37
lengthL1=grid~34:38 lengthL1=half~83:40 lengthL1=have~0:22 lengthL1=he~0:43
lengthL1=hill~0:29,82:-29 lengthL1=hose~0:41 lengthL1=house~38:40,83:-34 lengthL1=how~86:42
lengthL1=hundred~79:-43 lengthL1=i~12:23 lengthL1=in~34:24,55:64 lengthL1=inside~79:-24,91:25
lengthL1=is~55:36,83:-39,84:28,87:36 lengthL1=it~69:49,84:27 lengthL1=it's~82:45,86:38
lengthL1=l~69:34 lengthL1=line~84:50 lengthL1=liters~0:32 lengthL1=litre~69:40
lengthL1=litres~82:56 lengthL1=log~86:31 lengthL1=m~0:-36,79:38 lengthL1=makes~82:38
lengthL1=min~0:33 lengthL1=my~12:32,84:-46 lengthL1=never~79:48 lengthL1=of~0:-34,69:38
lengthL1=on~79:47 lengthL1=over~0:44 lengthL1=pe~83:63 lengthL1=poly~0:12,83:45,84:-28
lengthL1=psi~0:-33,79:41 lengthL1=pump~0:-44,54:19,82:47 lengthL1=pump's~55:40
lengthL1=right~82:-27 lengthL1=rows~10:40 lengthL1=schedule~84:25 lengthL1=seconds~84:-32
lengthL1=source~0:22 lengthL1=spring~0:31 lengthL1=stands~0:74,69:-8 lengthL1=stream~69:60
lengthL1=submersible~0:-42,54:21,55:40 lengthL1=suction~0:43,68:17,84:-22
lengthL1=surface~0:-46,79:43 lengthL1=tank~0:89,69:48,79:-31 lengthL1=the~34:-42,38:27,68:45,86:51
lengthL1=then~0:59 lengthL1=to~0:-57,38:49,82:57,83:31 lengthL1=total~84:28 lengthL1=trench~0:46
lengthL1=up~0:47,82:22 lengthL1=want~0:-46 lengthL1=water~79:18 lengthL1=well~83:-31
lengthL1=with~84:31 lengthL1=yards~83:42 lengthL1=you~0:54 lengthL1=|~0:7,69:-40 lengthL2=)~0:-25
lengthL2=,~10:70,12:64,69:41 lengthL2=.~13:30,38:31,55:72,79:-13,84:17
lengthL2=0~13:50,38:21,82:33,83:32,86:39 lengthL2=1~12:35,38:42,69:-49,83:33,91:20
lengthL2=2~10:70,69:-38,83:31,84:51,91:49 lengthL2=3~55:34,84:44,89:55 lengthL2=4~82:44,83:-47
lengthL2=5~79:-44,84:57 lengthL2=6~10:38,55:40,79:-40,83:33,91:29 lengthL2=7~0:67,84:49
lengthL2=8~0:34,82:31 lengthL2=9~82:36,83:-51,84:26 lengthL2=:~84:31,91:40 lengthL2=;~69:45
lengthL2=above~34:25,68:18 lengthL2=all~79:-24,82:31 lengthL2=am~0:62 lengthL2=apart~10:54
lengthL2=as~0:18 lengthL2=august~0:-26 lengthL2=away~82:24 lengthL2=bar~0:49 lengthL2=barn~83:35
lengthL2=basement~83:39 lengthL2=below~68:23 lengthL2=beside~0:33,82:-40 lengthL2=bore~91:62
lengthL2=borehole~55:22 lengthL2=bring~82:48 lengthL2=bucket~0:82,82:-32,84:-30 lengthL2=but~0:-43
lengthL2=by~0:-51,86:59 lengthL2=casing~0:33,84:-26,89:39 lengthL2=compensating~10:59
lengthL2=cows~82:37 lengthL2=creek~0:36,68:33,84:-48 lengthL2=cubic~0:49
lengthL2=deep~55:44,82:-32,91:43 lengthL2=depth~55:60 lengthL2=distance~82:31
lengthL2=drip~0:-35,13:56 lengthL2=drippers~10:42,12:42 lengthL2=drop~87:29 lengthL2=dry~82:-38
lengthL2=elevated~69:31 lengthL2=excuse~12:22 lengthL2=feet~82:33,91:39 lengthL2=five~69:45
lengthL2=floor~79:-51 lengthL2=four~69:33 lengthL2=from~55:-39,69:7,91:45
lengthL2=ft~13:32,69:-31,79:87,91:-48 lengthL2=gallon~0:42,84:-53 lengthL2=gallons~0:-33
lengthL2=gives~0:29,83:29,84:-25 lengthL2=goes~84:-34 lengthL2=gone~0:38 lengthL2=got~0:44,79:-27
lengthL2=gpm~79:-42 lengthL2=ground~0:23 lengthL2=had~0:33 lengthL2=hav~0:51 lengthL2=having~0:30
lengthL2=hello~0:29,79:-39 lengthL2=hens~0:-27 lengthL2=hi~79:38 lengthL2=higher~0:26,82:28
lengthL2=hill~0:26 lengthL2=hose~0:-35 lengthL2=hour~0:45,84:-37
lengthL2=house~0:-28,79:-48,82:117,84:32,86:-34 lengthL2=hundred~82:41 lengthL2=i've~0:51
lengthL2=inch~82:36,84:-54 lengthL2=into~69:75 lengthL2=jet~0:-32,79:35 lengthL2=keeps~0:42
lengthL2=line~13:27,82:-22 lengthL2=lines~0:-23,69:29 lengthL2=liter~0:54 lengthL2=litres~82:-41
lengthL2=lower~79:-45 lengthL2=m~82:66,84:33,86:-50,89:48,91:31 lengthL2=machine~0:23
lengthL2=max~0:34 lengthL2=maybe~82:34 lengthL2=measured~0:39 lengthL2=metres~82:-74,83:73
lengthL2=minute~69:-26 lengthL2=mm~0:-41,83:57 lengthL2=most~0:54,69:-45 lengthL2=need~0:37
lengthL2=next~69:-35 lengthL2=no~0:-52,38:58,84:41,86:60 lengthL2=not~82:36 lengthL2=off~79:31
lengthL2=one~13:36,82:26,83:-48 lengthL2=or~0:-35,84:18 lengthL2=over~0:30,84:28
lengthL2=panels~38:49 lengthL2=pipe~84:17 lengthL2=place~83:29 lengthL2=poly~82:16
lengthL2=power~84:26 lengthL2=pressure~69:51,82:-30 lengthL2=psi~0:-46
lengthL2=pump~0:69,55:61,68:13,69:-42,83:-31 lengthL2=pvc~87:30 lengthL2=rain~69:65
lengthL2=reservoir~69:70,82:-45 lengthL2=river~0:45 lengthL2=rows~10:77 lengthL2=run~84:37
lengthL2=says~0:36 lengthL2=seconds~0:29,82:-22 lengthL2=set~0:-28,79:47 lengthL2=shallow~84:51
lengthL2=sir~85:51 lengthL2=sits~0:-33 lengthL2=so~82:-41 lengthL2=sorry~84:28
lengthL2=source~0:-26,83:38 lengthL2=spring~83:62 lengthL2=static~79:46 lengthL2=steel~0:-38,86:42
lengthL2=submersible~84:-32,86:33 lengthL2=tank~0:38,82:-36,84:55 lengthL2=ten~0:42,84:-34
lengthL2=then~0:-49,91:34 lengthL2=there~0:43 lengthL2=there's~86:62
lengthL2=they~0:46,69:-50,82:23 lengthL2=too~0:-29,69:38 lengthL2=top~0:-29,89:44
lengthL2=trees~0:39 lengthL2=two~0:-31,69:47 lengthL2=under~0:35,82:-29,84:-39
lengthL2=up~0:-33,69:33,84:41 lengthL2=use~79:-40 lengthL2=want~69:-28 lengthL2=was~0:-48,55:34
lengthL2=washing~0:24 lengthL2=water~0:-25,79:93,82:-40 lengthL2=water's~82:-46
lengthL2=we've~86:45 lengthL2=well~0:41,55:32,79:67,82:-58,86:53 lengthL2=wellhead~82:37
lengthL2=what~86:-30 lengthL2=which~0:39,84:-61 lengthL2=while~0:46,84:-56 lengthL2=you~0:48
lengthL2=|~0:-44,34:40 lengthM=cistern~34:32,84:21 lengthM=creek~68:43,82:69
lengthM=drip~0:-64,10:135,12:88,13:119,79:-45
lengthM=pump~0:38,12:39,13:40,34:54,38:37,54:13,55:84,68:43,79:41,82:68,83:-81,89:37,91:51
lengthM=roof~0:31 lengthM=spring~0:33,34:45,55:-63,79:-23,82:-25,83:191,84:40,86:-19
lengthM=tank~69:183,82:-31,86:21
lengthM=well~54:57,55:41,68:-48,69:-37,83:-54,84:59,85:89,86:70,89:30 lengthR0=(~82:34
lengthR0=,~10:40,12:49,13:46,55:48,86:43,91:20 lengthR0=.~34:62,38:35,55:64,69:44,79:21,85:94,86:49
lengthR0=0~84:43 lengthR0=1~0:-66,68:69,84:55 lengthR0=2~69:54,86:-39 lengthR0=3~69:33
lengthR0=4~68:21,79:-43,84:17 lengthR0=5~0:36,84:30 lengthR0=8~0:15,86:-31
lengthR0=:~0:-31,82:38,84:34 lengthR0=;~79:45 lengthR0=a~55:49
lengthR0=above~0:-21,55:-27,69:83,79:53,82:76,83:38,84:-43,86:-34 lengthR0=according~86:46
lengthR0=across~85:51 lengthR0=after~0:43 lengthR0=all~0:46 lengthR0=altitude~34:27
lengthR0=an~0:46,84:-60 lengthR0=and~0:-32,79:-24,84:46,85:61,86:27 lengthR0=apart~12:64,13:37
lengthR0=at~13:30,55:-30,86:21,89:85 lengthR0=away~0:48,82:-33,84:85 lengthR0=barn~0:39,69:-27
lengthR0=beds~0:28 lengthR0=below~55:47,79:71,82:60,84:-40,86:-39 lengthR0=between~12:19
lengthR0=borehole~82:36 lengthR0=bottom~0:40,84:-33,86:47 lengthR0=but~0:36 lengthR0=cabin~83:40
lengthR0=cable~38:110,84:-46 lengthR0=casing~85:67 lengthR0=comes~0:51 lengthR0=creek~82:41
lengthR0=deep~0:65,79:-33,82:-23,84:-43,86:155 lengthR0=depth~0:33,86:54 lengthR0=diameter~85:42
lengthR0=down~55:84,79:62,84:-33 lengthR0=drop~87:48 lengthR0=elevation~34:53 lengthR0=for~0:47
lengthR0=from~0:62,84:40,86:-29 lengthR0=full~0:48,79:-33 lengthR0=garden~83:31
lengthR0=ground~55:34,79:19,82:-31 lengthR0=have~0:58 lengthR0=height~69:41,82:37
lengthR0=high~0:53 lengthR0=higher~82:70 lengthR0=hill~82:37 lengthR0=hose~0:27,68:56
lengthR0=house~0:44,83:33,86:-28 lengthR0=hut~82:40 lengthR0=in~0:25,54:58,55:45,79:49,84:-38
lengthR0=inch~68:36,84:58 lengthR0=inside~85:62 lengthR0=is~0:-35
lengthR0=it~0:-36,69:-37,79:48,82:30 lengthR0=just~0:32,84:-28 lengthR0=kitchen~69:26
lengthR0=level~34:31,79:32 lengthR0=lift~79:34 lengthR0=line~0:24,68:28 lengthR0=lining~85:25
lengthR0=long~0:28,10:52,68:38,86:-29 lengthR0=lower~83:88
lengthR0=of~38:68,68:112,69:-37,79:-16,84:64,86:-46,87:63 lengthR0=off~84:50 lengthR0=old~0:26
lengthR0=one~68:28 lengthR0=over~69:45 lengthR0=pipe~0:22,84:31,87:47 lengthR0=poly~0:41,79:-32
lengthR0=pump~69:-27,79:67,82:40,83:-34 lengthR0=rim~91:25 lengthR0=rise~82:42
lengthR0=rows~0:-17,10:48,13:28 lengthR0=runs~68:23 lengthR0=sea~34:64 lengthR0=spring~83:32
lengthR0=static~0:38 lengthR0=stream~79:30 lengthR0=submersible~0:-43 lengthR0=suction~68:50
lengthR0=summer~79:55 lengthR0=surface~79:39 lengthR0=tank~69:47,82:-32,84:54 lengthR0=taps~69:22
lengthR0=than~82:37,83:39 lengthR0=that~82:30
lengthR0=the~0:28,38:-48,69:31,79:48,82:40,83:66,84:62,91:51 lengthR0=then~0:66
lengthR0=there~0:-32 lengthR0=to~0:-49,38:36,69:41,84:58,86:36 lengthR0=top~82:34,83:-30,91:50
lengthR0=total~0:-36,84:24,86:63 lengthR0=under~0:-50,82:51 lengthR0=up~69:75,82:90,86:-31
lengthR0=uphill~0:-31,82:91 lengthR0=us~69:31,83:41 lengthR0=water~79:144,82:-52,84:-35
lengthR0=we~0:51 lengthR0=well~79:-34,82:-20,85:48,86:40 lengthR0=when~0:46 lengthR0=wide~0:14
lengthR0=with~86:45 lengthR0=|~82:30 lengthR1=,~54:57,55:-38,79:11,87:41
lengthR1=.~34:52,68:28,69:50,83:51,84:30,86:65,89:39,91:34 lengthR1=0~0:-54,69:44,84:-30
lengthR1=1~79:51,82:-16,83:39 lengthR1=2~79:39,86:31 lengthR1=3~0:-44,10:54,82:23
lengthR1=4~82:33,84:-19,85:43,86:22 lengthR1=5~13:43,34:-36,86:43
lengthR1=6~0:-63,69:37,85:28,91:29 lengthR1=8~0:62,84:36 lengthR1=9~82:39,86:28,91:38
lengthR1=:~0:28 lengthR1=a~69:55,84:34 lengthR1=already~82:53 lengthR1=and~83:21
lengthR1=at~84:-32,86:37,91:15 lengthR1=casing~79:-27,91:27 lengthR1=climbs~82:39
lengthR1=creek~68:23 lengthR1=feet~0:52 lengthR1=filled~0:59 lengthR1=foot~68:34
lengthR1=from~0:-43,79:51 lengthR1=ft~0:61,55:-31 lengthR1=gives~83:51 lengthR1=got~0:49
lengthR1=gpm~0:-30,86:40 lengthR1=grid~79:27 lengthR1=ground~0:33 lengthR1=h~13:29
lengthR1=hangs~0:-24 lengthR1=hose~68:39 lengthR1=house~0:-30,69:60,79:-25,82:79,84:33
lengthR1=i~82:-45,83:40 lengthR1=in~68:35 lengthR1=is~34:39,79:-36,82:-24,84:-39,85:56,86:42
lengthR1=it~0:39,69:44,79:-34,82:-27 lengthR1=l~13:37 lengthR1=line~0:-30,83:26,84:23
lengthR1=m~79:-26,85:50,86:27,91:24 lengthR1=measured~0:33,82:-28
lengthR1=mm~0:-8,68:22,82:40,84:44 lengthR1=of~0:43,91:25 lengthR1=one~0:42 lengthR1=out~0:54
lengthR1=pe~0:27 lengthR1=poly~84:19 lengthR1=power~79:28 lengthR1=pump~38:35,84:-29
lengthR1=pumping~91:35 lengthR1=shower~0:44 lengthR1=showers~79:30 lengthR1=so~0:14
lengthR1=stands~0:-22,85:34 lengthR1=submersible~85:47 lengthR1=suction~0:-31,68:65
lengthR1=summer~79:25 lengthR1=that~86:36 lengthR1=the~0:-13,12:32,38:49,68:36,69:45,79:-32,83:36
lengthR1=there~79:35 lengthR1=through~0:37 lengthR1=to~55:47,79:64,86:-42 lengthR1=up~79:55
lengthR1=want~69:36 lengthR1=was~82:28 lengthR1=water~79:22,85:32,86:70
lengthR1=well~55:24,82:-35,83:24 lengthR1=which~0:60,79:-49 lengthR1=with~86:26 lengthR2=!~0:35
lengthR2=)~82:32 lengthR2=,~0:45,10:54,12:35,82:-12,84:40 lengthR2=.~13:50,83:48,84:28,85:35,91:52
lengthR2=0~68:33,69:21,82:-27,83:49 lengthR2=1~0:-69,10:49,79:29,82:53,84:24,86:-29
lengthR2=2~55:27,69:24,82:-61,83:82,91:-47 lengthR2=3~0:38,69:18,79:-49,91:63
lengthR2=4~79:26,83:25 lengthR2=5~83:33,86:-54 lengthR2=6~55:-43,91:39
lengthR2=7~0:47,82:46,83:-26,84:-31 lengthR2=8~0:-34,79:57,91:66 lengthR2=after~0:31
lengthR2=apart~10:33 lengthR2=away~0:-51,83:44 lengthR2=barn~0:51,84:-29
lengthR2=beside~0:62,86:-56 lengthR2=bottom~0:48 lengthR2=climb~0:44 lengthR2=deep~0:-26,85:60
lengthR2=do~83:45 lengthR2=drip~12:21 lengthR2=each~0:-39 lengthR2=end~0:29,86:-25
lengthR2=feet~84:-34,86:61 lengthR2=first~0:20,69:-26 lengthR2=foot~68:64 lengthR2=forty~0:24
lengthR2=four~0:-23 lengthR2=from~82:-31,84:63 lengthR2=gallons~79:31 lengthR2=ground~86:36
lengthR2=higher~0:36 lengthR2=hose~0:53 lengthR2=house~0:-38,82:30,83:50 lengthR2=how~0:-32,69:42
lengthR2=hundred~82:29 lengthR2=hung~86:42 lengthR2=inside~0:-28,86:30 lengthR2=it's~82:74,83:-35
lengthR2=km~91:31 lengthR2=level~0:-30 lengthR2=line~83:44 lengthR2=litres~0:-46
lengthR2=lower~0:47 lengthR2=m~55:34,84:-28,85:17 lengthR2=mail~0:31,69:-26 lengthR2=metres~0:-37
lengthR2=mm~82:-25 lengthR2=motor~0:32 lengthR2=never~86:50 lengthR2=one~82:52,84:31
lengthR2=pe~0:16,82:-31 lengthR2=people~84:34 lengthR2=per~79:28 lengthR2=persons~0:38
lengthR2=pipe~82:55 lengthR2=poly~55:-34 lengthR2=pump~84:-34,86:38 lengthR2=pvc~0:62,79:-62
lengthR2=says~0:-49 lengthR2=seven~0:28,82:-27 lengthR2=shower~82:-44,84:49
lengthR2=sink~0:47,82:-50,84:32 lengthR2=sits~0:59,86:-62 lengthR2=suction~0:48
lengthR2=tank~0:31,83:-29 lengthR2=then~84:-33 lengthR2=two~0:-61,82:29 lengthR2=under~0:-39,86:33
lengthR2=v~84:33 lengthR2=valve~68:39 lengthR2=want~0:-42 lengthR2=washing~79:32
lengthR2=water~0:-62,85:46,86:18 lengthR2=well~84:31 lengthR2=when~0:38,79:-37 lengthR2=which~0:45
lengthR2=will~0:35 lengthR2=yield~79:31 lengthR2=|~0:42,84:-49
lengthT=beds.area~0:-29,10:114,12:89,13:60,69:-26 lengthT=power.facing~0:-30,38:22
lengthT=power.limit~0:-41,38:38,82:-29 lengthT=power.open_voltage~0:-38,38:33
lengthT=power.panel~34:32,38:27,69:32,86:-45 lengthT=power.series~38:47,69:29,79:16,82:-29,86:-33
lengthT=power.source~34:20,38:60,69:52,79:49,82:53,83:-81
lengthT=power.strings~0:-27,69:39,79:26,82:-56 lengthT=power.voltage~38:67,83:-63,84:50
lengthT=pump.control~0:56,68:37,69:-49,82:48 lengthT=pump.cut_in~0:-58,55:40,69:-42
lengthT=pump.cut_out~69:-35,82:-27 lengthT=pump.diameter~0:-31
lengthT=pump.dry_run~54:62,79:-36,87:48,91:50
lengthT=pump.height~38:55,55:-141,68:-48,69:41,79:78,84:-63,86:67,89:58,91:25
lengthT=pump.most_flow~0:-43 lengthT=pump.placement~0:55,34:56,38:45,54:85,55:43,68:41,83:-69
lengthT=pump.present~69:20,79:-35,82:-105,83:142,84:85 lengthT=pump.set~0:22,69:-35,84:57
lengthT=pump.works~0:39,84:-33 lengthT=store.days~69:47 lengthT=store.depth~0:33,84:-39
lengthT=store.volume~10:32,12:27,34:11,55:-40,79:-69,82:73,83:-27,84:42,86:-35
lengthT=tank.level~0:30,69:-128,79:42,82:-63,83:-37,84:73,87:61
lengthT=tank.volume~0:39,34:40,54:53,69:140,79:-35,82:-83,83:-94,86:-19,87:58
lengthT=water.kind~0:-49,12:44,34:19,38:-46,68:18,69:-36,82:31,83:133,84:53,85:86,86:101,89:60,91:58
lengthT=water.level~34:39,55:49,68:102,69:39,79:-218,84:35,85:63,86:112,87:56
lengthT=water.yield~34:45,55:44,68:-42,83:25,84:-39
lengthT=way.climb~0:104,12:30,34:23,38:-38,55:20,68:54,69:-98,79:101,82:-217,83:-146,84:189
lengthT=way.length~0:90,34:45,55:32,68:11,69:65,79:41,82:182,83:99,84:-342,91:36
lengthT=way.pipe~38:-36,68:-49,83:117,84:132,86:-75,91:20
lengthT=well.bore~54:87,79:-40,84:-82,85:-86,86:78,87:69,89:54,91:104
lengthT=well.cover~0:60,55:-57,79:-24
lengthT=well.depth~0:39,55:43,83:-28,84:29,85:114,86:-208,89:57,91:124
lengthT=well.pumping~79:-27,87:45,91:34 lengthT=well.static~0:-74,85:69,86:64,87:40,89:98,91:-75
lengthT=well.tested~79:-51,87:45,89:109,91:61 lengtha=~79:51,84:17 lengtha=,_3~0:18,84:-33
lengtha=,_and~0:57 lengtha=,_pump~0:-30,79:17,86:28 lengtha=,_water~55:50
lengtha=.~54:16,79:33,84:13,86:38 lengtha=._a~0:41 lengtha=._house~79:25 lengtha=._the~0:-87,82:41
lengtha=above_ground~69:30 lengtha=above_it~0:-48,79:32,82:70 lengtha=above_sea~34:37
lengtha=above_the~0:44,69:92,79:32,82:-30,83:7,84:-29 lengtha=according_to~86:41
lengtha=and_the~55:33,84:-43 lengtha=apart_,~12:41 lengtha=apart_.~12:40 lengtha=away_,~84:42
lengtha=away_.~0:30,84:35 lengtha=below_ground~55:37 lengtha=below_it~82:-26,83:25
lengtha=below_the~79:59,82:25,84:-22 lengtha=between_the~12:21 lengtha=casing_,~85:29
lengtha=casing_.~85:31 lengtha=deep_,~0:50 lengtha=deep_.~86:48 lengtha=deep_and~0:-29,86:53
lengtha=depth_.~86:28 lengtha=down_.~86:32 lengtha=from_the~0:86,82:-42,84:47,86:-28
lengtha=higher_,~82:36 lengtha=higher_.~0:40 lengtha=hose_.~0:42 lengtha=in_summer~79:55
lengtha=in_the~0:27 lengtha=lining_.~85:25 lengtha=long_,~68:22 lengtha=long_.~0:38
lengtha=lower_.~82:-38,83:60 lengtha=lower_than~82:36 lengtha=of_1~68:45 lengtha=of_2~84:40
lengtha=of_3~84:45 lengtha=of_cable~38:68,84:-31 lengtha=of_drop~87:48 lengtha=of_pipe~84:35
lengtha=of_rise~82:45 lengtha=over_the~0:23 lengtha=to_the~0:-46,82:30,84:63,86:26
lengtha=to_water~79:52 lengtha=under_the~0:-45,82:45 lengtha=up_.~0:-31,82:47 lengtha=up_the~82:37
lengtha=wide_.~0:34 lengthb=~34:50,38:49 lengthb=,_house~69:-38,82:34 lengthb=,_lines~10:26
lengthb=,_pump~55:31 lengthb=,_rows~12:52 lengthb=,_static~91:49 lengthb=,_water~79:21
lengthb=._borehole~0:26 lengthb=?_|~0:-53 lengthb=a~38:47,68:22 lengthb=a_tank~69:31
lengthb=away_and~82:30 lengthb=barn_is~82:30 lengthb=bore_is~0:43 lengthb=creek_is~79:22,82:-24
lengthb=down_to~89:50 lengthb=each_line~10:38 lengthb=floor_is~69:45 lengthb=ft_of~0:38
lengthb=gpm_at~0:52 lengthb=hose_is~68:32 lengthb=house_and~0:58,82:-33
lengthb=house_is~0:55,79:-28,84:28 lengthb=hung_at~0:44 lengthb=hut_,~0:45 lengthb=in_a~86:35
lengthb=is_at~79:45 lengthb=is_only~86:44 lengthb=is_to~84:-26 lengthb=it_is~79:28
lengthb=level_is~0:55 lengthb=level_of~91:41 lengthb=m_of~0:37 lengthb=no_,~79:26 lengthb=on_a~0:38
lengthb=outside_diameter~54:61 lengthb=pipe_,~0:33 lengthb=pipe_is~68:32 lengthb=pump_at~55:47
lengthb=pump_hangs~0:23 lengthb=pump_is~0:-30,38:49 lengthb=rise_is~82:50 lengthb=settled_at~89:33
lengthb=shed_is~0:23 lengthb=sorry_,~79:27 lengthb=spring_lies~82:52,83:-41 lengthb=stands_at~91:26
lengthb=submersible_at~55:40 lengthb=tank_is~0:66,82:-36 lengthb=tank_it's~84:33
lengthb=the_house~84:37 lengthb=the_water~0:38 lengthb=there_are~79:39 lengthb=to_house~84:25
lengthb=up_to~0:40 lengthb=water_at~79:76 lengthb=water_is~0:-27,79:61
lengthb=water_level~79:-41,91:48 lengthb=we_have~0:38 lengthb=well~0:45
lengthb=well_and~0:-34,82:39 lengthb=well_is~0:41,79:-16 lengthb=|_suction~0:31 m=angle2~36:39
m=angle3~32:52,35:113,46:93 m=area-1~6:51 m=area0~6:50 m=area1~0:54 m=area3~0:52
m=area4~6:-30,60:55 m=area5~0:43,6:122 m=area7~0:-33,6:46 m=bare-1~0:92
m=bare0~0:80,1:-74,3:-67,4:-53,5:-36,23:110,24:62,25:108,27:28,30:61,31:108,43:-30,45:27,67:93,77:-71
m=bare1~0:7,2:-38,3:-101,4:-85,5:-20,14:54,21:49,27:44,28:54,29:51,43:91,45:53,51:69,58:-30,59:70,66:71,67:-45,77:63,78:67
m=bare2~1:55,2:29,3:35,4:41,23:-39,28:51,31:-40,43:-26,45:-35,58:59,77:72
m=bare3~0:28,1:45,2:52,3:111,4:68,5:35,23:-27,25:-56,27:-21,30:-34,35:110,78:-48
m=bare4~1:57,3:35,4:56,5:55,78:-35 m=bare5~0:-40,3:68,77:37 m=charge3~0:33 m=charge4~39:51
m=charge5~39:146 m=current3~37:36 m=daily1~0:33 m=daily4~0:27,72:60 m=daily5~71:59
m=daily6~71:124,72:-25 m=each3~72:42 m=each4~72:43 m=flow-1~0:-52,7:53,74:85 m=flow0~7:37
m=flow1~0:51,7:38,63:43,81:34 m=flow2~0:21,8:25,56:45,63:-26,81:98,92:94
m=flow3~0:33,56:51,63:41,81:-41,90:53 m=flow5~0:26 m=flow7~81:32 m=length-1~0:-59,13:133
m=length-2~0:-41,54:111,55:-23,84:-26,85:192,86:-44 m=length-3~0:287,68:-33,79:-19,82:-25,84:-41
m=length-4~0:51 m=length0~0:115,10:-26,12:92,34:-39,82:-79,84:-73,85:78,86:-78
m=length1~0:53,34:-62,55:-57,68:46,69:49,79:143,82:59,83:71,84:-106,86:-63,91:40
m=length2~0:-44,34:-76,38:-43,55:-39,68:173,69:83,79:140,82:171,83:111,84:-102,85:-56,91:19
m=length3~0:-59,10:94,12:-52,13:-37,34:-108,38:37,55:139,69:59,82:125,85:-72,86:87,87:85,89:86
m=length4~0:-52,10:105,34:-62,38:137,55:79,68:-48,69:-40,79:-95,82:-55,83:-38,84:229,85:-37,86:187
m=length5~69:-44,79:-42,84:203 m=length6~0:-68,34:275,79:-38,82:-40,84:88
m=length7~34:217,55:-31,79:-46 m=pair1~52:32 m=pair3~52:86 m=percent2~44:47 m=percent4~0:43
m=power-1~0:40 m=power0~0:41 m=power1~0:40 m=power4~0:-39,42:66 m=power5~42:168
m=pressure0~11:56,48:64,57:-40 m=pressure1~33:-40,52:20,53:92,57:111
m=pressure2~0:40,17:74,33:91,57:-48 m=pressure3~16:36,48:107,52:72,53:47,57:61
m=pressure4~0:47,17:55,48:-42,49:51 m=temperature2~0:24,80:36 m=temperature3~80:50
m=temperature4~18:105,32:34 m=time0~0:45 m=time1~0:85,9:38,61:131,62:24,88:25 m=time2~9:39
m=time3~0:36 m=time4~0:-42 m=voltage2~0:82,47:51 m=voltage3~0:44,40:-63,41:69,47:117
m=voltage4~40:81 m=voltage5~40:46,47:39 m=volume1~19:85 m=volume2~19:48,65:-35,81:67
m=volume3~0:76,20:51,50:130,65:-17,70:-63 m=volume4~0:-57,20:54,50:162,65:-58
m=volume5~0:59,50:-45,75:82 m=volume6~50:-41,65:51,70:74 m=volume7~50:-52,65:68,70:124
m=volume8~50:-36,65:80,70:31 m=volume9~65:60 pairC=switch~52:69 pairL0=a~52:35 pairL0=switch~52:54
pairL2=.~52:43 pairL2=0~52:56 pairM=pump~52:56 pairM=tank~52:72 pairM=well~52:19 pairR0=,~52:42
pairR0=.~52:7 pairR2=.~52:45 pairT=pump.placement~52:13 pairT=water.kind~52:22
pairT=way.length~52:14 pairT=well.depth~52:42 percentC=efficiency~0:26 percentC=slope~0:30
percentL0=efficiency~0:26 percentL1=,~44:48 percentL1=.~0:34 percentL2=,~44:42 percentL2=0~0:27
percentL2=1~0:24 percentL2=2~0:26 percentL2=m~0:37 percentL2=|~44:33 percentM=drip~0:36
percentM=pump~0:25,44:62 percentM=tank~44:21 percentR0=.~0:82 percentR0=in~44:27
percentR0=the~44:43 percentR0=to~44:24 percentR1=.~44:29 percentT=power.battery~44:31
percentT=power.cable~44:50 percentT=power.capacity~44:31 percentT=power.facing~44:55
percentT=power.panel~44:50 percentT=power.series~44:51 percentT=power.source~44:48
percentT=power.tilt~44:37 percentT=power.voltage~44:39 percentT=pump.placement~44:52
percentT=water.kind~0:41,44:24 percentT=way.climb~0:26 percentT=way.length~0:26
percentT=way.pipe~0:26 powerC=,~42:44 powerC=2~42:42 powerC=4~42:32 powerC=no~30:51
powerC=panels~42:72 powerC=power~0:27 powerC=pump~0:40 powerC=there~30:51 powerC=two~42:30
powerC=x~42:23 powerL0=a~0:78 powerL0=are~42:17 powerL0=panels~42:42 powerL0=pump~0:37
powerL0=the~0:62 powerL0=two~42:22 powerL0=x~42:23 powerL1=,~0:-37 powerL1=.~0:49 powerL1=at~0:31
powerL1=is~30:51 powerL1=the~42:27 powerL2=,~0:51,42:39 powerL2=there~30:51 powerM=pump~0:42,42:64
powerM=tank~42:41 powerR0=,~42:40 powerR0=.~0:79 powerR0=panel~42:59 powerR0=panels~42:56
powerR0=pump~0:32 powerR1=and~30:51 powerR2=.~42:34 powerT=power.battery~42:43
powerT=power.capacity~42:42 powerT=power.facing~42:36 powerT=power.source~42:81
powerT=power.voltage~42:79 powerT=pump.height~0:39 powerT=pump.placement~0:30
powerT=pump.present~30:51 powerT=water.kind~42:67 powerT=way.length~42:43 powera=.~0:74
powerb=a~0:30 pressureC=,~16:74 pressureC=0~48:58,53:42 pressureC=1~16:27,17:49 pressureC=2~16:64
pressureC=3~49:51 pressureC=8~0:27 pressureC=:~0:72 pressureC=above~0:27 pressureC=air~48:71
pressureC=bar~49:46,52:30 pressureC=bladder~48:45 pressureC=booster~57:45 pressureC=box~57:26
pressureC=can~0:36 pressureC=charge~48:52 pressureC=checked~48:64 pressureC=comes~52:33
pressureC=constant~57:48 pressureC=control~57:32 pressureC=controlled~57:41
pressureC=cut~52:44,53:56 pressureC=cuts~53:26 pressureC=diaphragm~53:41 pressureC=drip~0:45
pressureC=expansion~16:136,48:-54 pressureC=frequency~57:40 pressureC=gal~0:-36
pressureC=gallon~16:47 pressureC=gauge~0:24 pressureC=gives~11:58 pressureC=got~0:40
pressureC=gpm~11:34 pressureC=heater~0:-29,16:31,17:65 pressureC=holds~0:-24,57:76
pressureC=house~57:21 pressureC=keeps~57:76 pressureC=kicks~52:33 pressureC=l~0:55
pressureC=like~0:22 pressureC=lines~11:39 pressureC=litre~0:-16,48:31 pressureC=litres~48:42
pressureC=m~0:35 pressureC=manometer~0:37 pressureC=off~53:61 pressureC=only~33:42
pressureC=out~53:92 pressureC=point~57:24 pressureC=pre~48:33 pressureC=precharge~48:78
pressureC=precharged~48:35 pressureC=pressure~48:59,53:26,57:19 pressureC=pump~52:62,53:49,57:41
pressureC=rated~33:41,49:72 pressureC=reads~0:20 pressureC=relief~17:52 pressureC=run~0:48
pressureC=set~57:92 pressureC=shows~0:37 pressureC=shuts~53:40 pressureC=so~0:33
pressureC=speed~57:42 pressureC=stops~53:35 pressureC=switch~52:42,53:59,57:-40
pressureC=tank~0:-57,16:47,48:84,49:50 pressureC=than~33:17 pressureC=there~0:61,57:-45
pressureC=two~57:42 pressureC=valve~0:44,17:79,57:-30 pressureC=vessel~0:-59,16:59,48:53
pressureC=well~0:-37 pressureL0=,~48:20,49:61 pressureL0=.~11:25,57:28 pressureL0=0~48:75
pressureL0=:~0:41,48:41 pressureL0=a~0:38 pressureL0=air~48:35 pressureL0=and~53:60
pressureL0=at~0:55,17:35,52:49,53:72 pressureL0=charge~48:29 pressureL0=comes~52:35
pressureL0=cut~52:48,53:32 pressureL0=cuts~53:26 pressureL0=drip~0:47 pressureL0=for~33:39
pressureL0=gauge~0:19 pressureL0=gives~0:33 pressureL0=gpm~0:34 pressureL0=has~0:25,48:45
pressureL0=holds~0:-23,57:77 pressureL0=i~11:31 pressureL0=in~0:-30,52:103
pressureL0=is~0:-37,33:48,48:29 pressureL0=it~0:-33,48:22,57:17 pressureL0=keeps~57:76
pressureL0=l~48:44 pressureL0=like~0:22 pressureL0=lines~11:51 pressureL0=off~53:67
pressureL0=only~33:42 pressureL0=out~53:92 pressureL0=point~57:24 pressureL0=pre~48:31
pressureL0=precharge~48:62 pressureL0=precharged~48:35 pressureL0=pressure~0:57,57:28
pressureL0=pump~0:64 pressureL0=pumped~16:30 pressureL0=rated~33:41,49:75 pressureL0=reads~0:20
pressureL0=relief~17:37 pressureL0=says~0:-56 pressureL0=set~53:-32,57:108 pressureL0=shows~0:37
pressureL0=shuts~53:40 pressureL0=stops~53:35 pressureL0=switch~53:35 pressureL0=tank~0:-27,49:23
pressureL0=the~0:66,11:69,57:30 pressureL0=to~16:30,57:27 pressureL0=valve~17:65
pressureL1=,~16:35,53:37 pressureL1=.~0:-58,17:17,33:34,53:46 pressureL1=0~0:47
pressureL1=2~16:39,49:47,53:34 pressureL1=3~48:28 pressureL1=4~0:-45 pressureL1=5~0:-31,48:33
pressureL1=6~0:15 pressureL1=a~0:-67,52:38,57:49 pressureL1=and~0:-26,57:39 pressureL1=at~11:71
pressureL1=bar~52:41 pressureL1=box~57:26 pressureL1=constant~57:43 pressureL1=cut~53:29
pressureL1=drips~17:21 pressureL1=h~11:38 pressureL1=house~57:32 pressureL1=of~17:23
pressureL1=pressure~0:-36,11:45,52:19 pressureL1=pump~52:40,57:37 pressureL1=relief~17:33
pressureL1=says~0:28 pressureL1=speed~57:30 pressureL1=switch~52:38,57:-26 pressureL1=tank~48:37
pressureL1=the~0:-29,11:34,17:5,33:55,48:14,52:53 pressureL1=valve~17:26 pressureL1=with~48:44
pressureL1=|~57:51 pressureL2=(~0:19 pressureL2=,~11:29,57:43 pressureL2=.~0:35,11:31,33:17,48:48
pressureL2=0~11:13,17:77,48:-34,49:66,57:45 pressureL2=1~57:35 pressureL2=2~11:38,52:-34
pressureL2=3~49:49,57:40 pressureL2=4~48:25 pressureL2=5~16:54 pressureL2=6~16:40
pressureL2=:~0:70,48:-35 pressureL2=bar~48:81 pressureL2=booster~57:42 pressureL2=c~16:56
pressureL2=cistern~57:30 pressureL2=day~57:50 pressureL2=each~11:47
pressureL2=expansion~16:83,48:-38 pressureL2=ft~11:32 pressureL2=gives~11:36 pressureL2=ground~0:51
pressureL2=heater~16:28,17:86 pressureL2=l~57:53 pressureL2=litre~17:60 pressureL2=m~33:33
pressureL2=off~52:47 pressureL2=one~57:-42 pressureL2=pressure~48:23,53:21
pressureL2=pump~0:-53,11:28,57:7 pressureL2=room~48:41 pressureL2=tank~0:-56,48:46
pressureL2=two~57:57 pressureL2=water~17:65 pressureL2=|~0:54,57:-28 pressureM=cistern~53:33,57:20
pressureM=drip~11:91,16:76,17:67,48:-39
pressureM=pump~0:66,11:42,16:58,17:54,49:45,52:52,53:30,57:85 pressureM=roof~57:41
pressureM=spring~0:28,33:52 pressureM=tank~16:44,17:42,48:75,49:52,57:-53
pressureM=well~11:19,52:44,57:33 pressureR0=,~57:49
pressureR0=.~0:28,16:43,17:28,33:66,48:49,53:34,57:51 pressureR0=?~0:50 pressureR0=and~0:-38,52:29
pressureR0=at~0:7,57:43 pressureR0=begin~11:33 pressureR0=in~0:-36,33:24,48:76
pressureR0=lines~0:-30,11:56 pressureR0=of~48:34 pressureR0=off~53:38 pressureR0=on~52:16
pressureR0=out~52:32 pressureR0=pump~57:58 pressureR0=shower~0:25
pressureR0=switch~0:-31,48:46,52:43 pressureR0=the~0:43 pressureR0=where~0:-30,11:56
pressureR1=,~0:-5,57:17 pressureR1=.~11:32,52:32,57:40 pressureR1=0~49:52,52:31
pressureR1=2~0:-72,17:52,49:53 pressureR1=4~0:42 pressureR1=6~52:31 pressureR1=8~0:48
pressureR1=?~33:38 pressureR1=and~0:37 pressureR1=bar~52:53 pressureR1=open~0:48
pressureR1=psi~0:37 pressureR1=the~0:-16,48:41 pressureR1=with~0:34 pressureR2=,~53:34
pressureR2=.~11:35,48:22 pressureR2=0~16:36 pressureR2=1~48:40 pressureR2=5~48:-43,57:28
pressureR2=6~0:-36,33:33 pressureR2=bar~0:39 pressureR2=feet~0:49
pressureR2=pressure~0:-32,17:51,52:32 pressureR2=shower~0:31 pressureT=beds.area~11:75
pressureT=power.battery~53:27 pressureT=power.capacity~53:27 pressureT=power.voltage~0:32,53:69
pressureT=pump.control~0:-72,17:37,48:45,49:63,57:58
pressureT=pump.cut_in~48:44,52:-70,53:122,57:-58
pressureT=pump.cut_out~17:52,48:47,52:137,53:-70,57:-69 pressureT=pump.most_flow~57:41
pressureT=pump.placement~48:53 pressureT=pump.present~0:50 pressureT=pump.set~0:62,57:-72
pressureT=pump.starts~49:22 pressureT=pump.works~53:57 pressureT=store.volume~53:58,57:38
pressureT=tank.level~33:30 pressureT=water.kind~11:64,33:66,48:-57,53:34
pressureT=water.level~0:47,53:33 pressureT=water.yield~11:36,57:38 pressureT=way.climb~33:52,57:38
pressureT=way.length~0:46,33:69,57:42 pressureT=way.pipe~33:71,49:30,57:27
pressureT=well.depth~0:25,48:37 pressurea=~48:31,52:26,57:27 pressurea=.~48:45,53:20,57:31
pressurea=._|~0:18 pressurea=and_stops~52:37 pressurea=at_the~0:28,57:51 pressurea=in_it~48:41
pressurea=off_.~53:33 pressurea=where_lines~11:33 pressurea=where_the~11:23 pressureb=cut_in~52:50
pressureb=cut_out~53:36 pressureb=gpm_at~0:34 pressureb=in_at~52:48 pressureb=it_at~57:25
pressureb=off_at~53:67 pressureb=out_at~53:31 pressureb=pump_gives~0:33 pressureb=pump_holds~57:25
pressureb=set_for~57:32 pressureb=set_to~52:26 pressureb=stops_at~53:35
range~52:211,57:-44,79:-87,81:30 temperatureC=,~32:36 temperatureC=0~18:51 temperatureC=comes~80:25
temperatureC=heater~18:61 temperatureC=set~18:33 temperatureC=up~80:25 temperatureC=water~80:94
temperatureL0=at~18:89 temperatureL0=comes~80:25 temperatureL0=is~18:52 temperatureL0=set~18:28
temperatureL0=up~80:25 temperatureL0=water~80:72 temperatureL1=,~80:38 temperatureL1=.~80:58
temperatureL1=0~18:37 temperatureL1=heater~18:38 temperatureL1=the~32:39
temperatureL1=water~18:44,80:26 temperatureL2=,~32:39,80:51 temperatureL2=.~32:34,80:31
temperatureL2=1~80:26 temperatureM=drip~0:54,18:51 temperatureM=pump~0:32,18:73,32:49
temperatureM=tank~18:59 temperatureM=well~18:45 temperatureR0=.~0:36,18:40,32:22,80:58
temperatureR0=|~18:26 temperatureR1=.~32:50 temperatureR1=at~32:25
temperatureT=power.source~32:38,80:20 temperatureT=pump.control~18:19
temperatureT=pump.placement~80:42 temperatureT=pump.set~18:30 temperatureT=store.volume~0:34,18:22
temperatureT=water.kind~0:29,18:26,32:48,80:49 temperatureT=water.level~32:39,80:47
temperatureT=water.yield~80:25 temperatureT=way.climb~80:71 temperatureT=way.length~32:34,80:52
temperatureT=way.pipe~32:38,80:37 temperaturea=.~0:35,80:26 temperatureb=set_at~18:19
temperatureb=up_at~80:25 timeC=,~62:26 timeC=0~0:46,76:41 timeC=1~76:73,88:23 timeC=3~76:66
timeC=5~88:30 timeC=:~88:26 timeC=after~0:18 timeC=back~0:41 timeC=bucket~0:41 timeC=came~0:52
timeC=can~9:50 timeC=dry~0:31 timeC=filled~62:34 timeC=from~62:36 timeC=he~0:14 timeC=l~88:34
timeC=min~88:37 timeC=morning~76:36 timeC=pump~62:53 timeC=ran~88:44 timeC=run~9:58
timeC=runs~62:35 timeC=should~61:38 timeC=showers~0:33 timeC=spring~0:54 timeC=takes~76:36
timeC=took~0:32 timeC=want~61:46 timeC=water~0:52,9:49 timeL0=,~62:39 timeL0=.~0:-48 timeL0=0~76:36
timeL0=a~61:29 timeL0=after~0:18 timeL0=can~9:28 timeL0=dry~0:31 timeL0=for~0:33,61:50,88:68
timeL0=gallons~76:4 timeL0=i~9:38 timeL0=in~76:106 timeL0=is~0:27 timeL0=min~88:37 timeL0=run~9:65
timeL0=runs~62:37 timeL0=the~0:-24,76:24 timeL0=want~61:46 timeL0=water~9:10 timeL1=.~0:-33,88:48
timeL1=0~0:-14,76:50 timeL1=1~88:26 timeL1=5~0:-23,76:18,88:32 timeL1=:~88:28 timeL1=from~62:27
timeL1=l~88:29 timeL1=lines~9:38 timeL1=m~62:37 timeL1=the~62:50 timeL2=,~9:42 timeL2=.~9:23,61:34
timeL2=1~9:46 timeL2=2~0:-91,9:23,61:48 timeL2=3~62:26 timeL2=4~88:25 timeL2=5~61:32 timeL2=8~0:-39
timeL2=:~0:29 timeL2=filled~62:31 timeL2=m~0:-74,9:46,88:25 timeL2=morning~76:36
timeM=drip~0:-36,9:96 timeM=pump~0:70,9:30,62:38,88:39 timeM=spring~0:20
timeM=tank~0:27,61:64,62:45 timeM=well~0:40,88:57 timeR0=,~0:43 timeR0=.~0:39,9:38,61:22,76:55
timeR0=a~9:51,62:36 timeR0=day~0:-50,9:52,62:87 timeR0=is~9:44 timeR0=of~61:53 timeR0=rain~61:29
timeR0=the~0:39 timeR0=to~0:58 timeR0=water~61:30 timeR0=without~0:-45,61:75 timeR1=,~0:36
timeR1=0~0:30 timeR1=a~62:35 timeR1=that~0:50 timeR1=the~9:33 timeR2=.~0:21,9:23 timeR2=0~62:39
timeR2=1~62:54 timeR2=2~0:46 timeT=beds.area~9:22 timeT=power.source~62:81 timeT=pump.control~0:56
timeT=pump.cut_in~0:31 timeT=pump.cut_out~0:31 timeT=pump.height~0:31 timeT=pump.placement~0:33
timeT=pump.present~0:36 timeT=store.volume~61:63 timeT=tank.level~62:34
timeT=tank.volume~0:-34,62:23 timeT=water.kind~0:38,9:25,61:40,62:51,88:38 timeT=water.level~88:49
timeT=water.yield~0:-61,61:39,62:35 timeT=way.climb~9:39 timeT=way.length~0:62,62:46
timeT=way.pipe~0:49,62:23 timeT=well.bore~88:69 timeT=well.cover~0:-43,88:73 timeT=well.depth~88:57
timeT=well.static~88:45 timeT=well.steady~0:55 timea=~61:48 timea=.~0:31,76:51,88:21
timea=a_day~9:48,62:44 timea=of_water~61:31 timea=without_rain~61:29 timea=without_the~61:33
timeb=water_for~0:43 u=angle°~35:110,46:107 u=angle°C~32:63 u=areaacre~0:21,6:48
u=areaft²~0:-46,6:56 u=areaha~6:46 u=aream²~0:122,6:90,60:39
u=bare~0:264,1:41,2:40,3:72,4:46,5:26,23:43,25:71,26:29,27:64,28:24,35:61,77:65,79:-43,91:-27
u=bareft~79:19,91:72 u=chargeAh~39:190 u=currentA~37:44 u=dailyL/day~71:122,72:91
u=dailygal/day~71:60,73:38 u=dailym³/day~0:67 u=eachL/day~72:63 u=eachgal/day~72:34
u=flowL/h~0:-56,7:88 u=flowL/min~0:77,7:-34,56:55,63:32,74:67,81:84,90:58 u=flowL/s~81:65
u=flowgph~7:89 u=flowgpm~0:-12,7:-31,8:23,56:31,63:39,81:64,92:35 u=flowm³/h~0:114,81:-32
u=lengthcm~13:75 u=lengthft~13:-24,34:83,68:27,69:43,79:88,82:49,83:80,84:104,85:-114,87:43
u=lengthin~0:111,13:34,54:59,68:-25,79:-23,82:-35,84:-46,85:139,86:-48 u=lengthkm~84:31
u=lengthm~10:55,12:28,13:-21,34:109,38:62,54:-28,55:45,68:79,69:48,79:73,82:88,84:60,85:-11,86:84,91:23
u=lengthmi~84:46 u=lengthmm~0:163,54:47,55:-24,69:-33,84:-37,85:70,86:-23 u=pairbar~52:32
u=pairpsi~52:86 u=percent%~0:55,44:60 u=powerW~0:2,42:178 u=powerhp~0:101 u=powerkW~0:45
u=pressurebar~0:40,11:28,33:60,48:48,52:63,53:40,57:43 u=pressurepsi~0:49,17:18,48:84,52:32,57:61
u=temperature°C~18:55,80:55 u=temperature°F~18:24,32:35,80:20 u=timedays~61:217
u=timeh~9:78,61:-42,62:63,76:75,88:31 u=timemin~76:26,88:48 u=times~0:88 u=timeweeks~0:37
u=voltageV~0:49,40:46,41:34,47:196 u=volumeL~20:31,50:101,65:31,70:71,75:77,81:41
u=volumegal~0:24,19:52,20:33,50:82,64:35,65:61 u=volumeimpgal~70:26
u=volumem³~0:91,50:-55,65:76,70:42 voltageC=,~41:35,47:27 voltageC=0~41:39 voltageC=3~41:67
voltageC=4~47:-43 voltageC=batteries~0:54 voltageC=battery~0:25 voltageC=controller~40:90,47:-36
voltageC=each~41:59 voltageC=max~40:32 voltageC=mppt~40:73 voltageC=open~41:66
voltageC=panels~41:48 voltageC=power~47:34 voltageC=runs~47:34 voltageC=system~47:30
voltageC=voc~41:54 voltageC=voltage~41:47 voltageC=w~41:40 voltageL0=,~47:18 voltageL0=a~47:66
voltageL0=controller~40:50 voltageL0=is~0:21,47:28 voltageL0=max~40:27 voltageL0=runs~47:32
voltageL0=system~47:31 voltageL0=the~47:31 voltageL0=voc~41:54 voltageL0=voltage~41:47
voltageL0=x~0:44 voltageL0=|~47:44 voltageL1=.~47:28 voltageL1=1~47:45 voltageL1=2~0:46
voltageL1=3~41:37 voltageL1=4~41:37 voltageL1=5~0:-36 voltageL1=battery~0:24
voltageL1=each~0:33,47:-37 voltageL1=l~0:43,47:-27 voltageL1=mppt~40:62 voltageL1=of~0:-38,41:34
voltageL1=the~0:35 voltageL1=to~0:33 voltageL2=,~40:42 voltageL2=.~0:-36,41:18,47:27
voltageL2=0~40:47 voltageL2=1~47:27 voltageL2=2~47:37 voltageL2=4~40:34 voltageL2=8~40:52,47:-45
voltageL2=9~0:29,47:-25 voltageL2=ft~47:34 voltageL2=m~0:53 voltageL2=series~41:44
voltageL2=v~40:37 voltageL2=water~0:43 voltageL2=|~0:27 voltageM=cistern~47:31 voltageM=drip~47:34
voltageM=pump~40:55,41:30,47:82 voltageM=tank~40:30 voltageM=well~47:45 voltageR0=.~41:47
voltageR0=8~47:40 voltageR0=a~0:41 voltageR0=and~0:37,47:-31 voltageR0=at~47:57
voltageR0=bank~47:37 voltageR0=golf~0:49 voltageR0=pump~47:53 voltageR0=system~0:28
voltageR1=.~47:25 voltageR1=0~40:46 voltageR1=1~0:24 voltageR1=ah~0:-38,47:67
voltageR1=panels~47:53 voltageR1=to~0:25 voltageR2=,~0:35 voltageR2=0~47:14 voltageR2=4~47:42
voltageR2=5~47:42 voltageR2=ah~0:23 voltageR2=|~47:31 voltageT=power.amps~0:36
voltageT=power.battery~47:50 voltageT=power.cable~40:39,41:30 voltageT=power.capacity~47:48
voltageT=power.facing~41:62 voltageT=power.limit~40:-32,41:71 voltageT=power.open_voltage~40:43
voltageT=power.panel~0:51,40:62,41:48,47:-51 voltageT=power.series~40:62,41:69
voltageT=power.source~0:25,40:52,41:43,47:35 voltageT=power.strings~40:53,41:22,47:-41
voltageT=power.tilt~40:46 voltageT=power.voltage~0:131,47:-117 voltageT=pump.cut_out~47:48
voltageT=pump.placement~40:44,41:41,47:38 voltageT=store.volume~0:26,47:47
voltageT=tank.level~41:49 voltageT=tank.volume~41:50 voltageT=water.kind~40:37,41:23,47:66
voltageT=water.level~47:18 voltageT=way.climb~47:49 voltageT=way.length~47:65
voltageT=way.pipe~47:37 voltagea=~0:27,47:27 voltageb=~0:27,47:24 voltageb=a~47:29
voltageb=battery_is~0:34 volumeC=(~65:55 volumeC=,~64:35,70:19 volumeC=1~65:39 volumeC=3~65:-52
volumeC=6~0:46 volumeC=9~0:31 volumeC=:~65:31,75:32 volumeC=above~65:62 volumeC=cistern~65:53
volumeC=comes~70:43 volumeC=day~71:53 volumeC=elevated~0:41 volumeC=everything~70:33
volumeC=expansion~19:67 volumeC=fed~70:33 volumeC=from~0:49 volumeC=ft~65:46
volumeC=got~0:83,50:-39 volumeC=hav~0:35 volumeC=header~70:43 volumeC=heater~19:56,20:32
volumeC=higher~0:41 volumeC=hill~70:4 volumeC=holds~0:30,65:19 volumeC=hour~75:73
volumeC=into~70:37 volumeC=keep~64:52 volumeC=loft~70:26 volumeC=m~0:28 volumeC=morning~75:28
volumeC=need~71:50 volumeC=off~0:-34 volumeC=peak~75:20 volumeC=pressure~50:65
volumeC=pump~0:-18,65:47 volumeC=rainwater~65:57 volumeC=size~65:31 volumeC=spring~65:47,81:39
volumeC=takes~0:-8,75:58 volumeC=tank~50:48,65:13,70:70 volumeC=there~19:18 volumeC=truck~0:42
volumeC=two~0:35 volumeC=vessel~0:-26,19:50,50:64 volumeC=wants~64:49 volumeL0=,~0:-57,70:58
volumeL0=.~50:65 volumeL0=:~65:28,75:33 volumeL0=a~0:55,19:42,65:32,70:63,81:22
volumeL0=about~65:67 volumeL0=an~50:35 volumeL0=cistern~0:42,65:75,70:-32 volumeL0=day~71:55
volumeL0=draws~65:36 volumeL0=elevated~0:34 volumeL0=expansion~19:56 volumeL0=has~70:-36
volumeL0=have~0:-31,70:28 volumeL0=header~70:43 volumeL0=heater~20:35 volumeL0=hill~65:-40,70:27
volumeL0=holds~0:38,65:21 volumeL0=hour~75:74 volumeL0=into~70:37
volumeL0=is~0:-58,19:20,50:40,70:28 volumeL0=keep~64:52 volumeL0=m~65:50 volumeL0=pressure~50:54
volumeL0=rainwater~65:31 volumeL0=spring~0:-36,81:51 volumeL0=storage~65:54
volumeL0=takes~0:-35,75:58 volumeL0=tank~0:61,50:53,65:25 volumeL0=the~70:57 volumeL0=there~19:20
volumeL0=two~0:49 volumeL0=vessel~0:-24,50:60 volumeL0=we~0:-34,71:45,75:49 volumeL0=with~65:-39
volumeL0=|~0:-38 volumeL1=,~64:51,70:-54 volumeL1=.~71:64 volumeL1=0~0:45,19:55,65:-37
volumeL1=2~65:27 volumeL1=3~0:-58 volumeL1=4~0:41 volumeL1=5~50:17 volumeL1=6~70:51
volumeL1=9~65:23 volumeL1=a~0:20,50:35 volumeL1=above~65:61 volumeL1=at~65:24,70:-30
volumeL1=bar~0:-20 volumeL1=cistern~70:24 volumeL1=day~65:-19,70:48 volumeL1=draws~0:30
volumeL1=everything~70:33 volumeL1=hour~65:67 volumeL1=hours~0:65 volumeL1=in~65:-67,70:54,75:40
volumeL1=inch~0:56 volumeL1=is~70:24 volumeL1=m~0:39,65:-50,70:48 volumeL1=off~65:36
volumeL1=on~70:31 volumeL1=psi~50:40 volumeL1=pump~0:-42,65:37 volumeL1=tank~0:-21,70:74
volumeL1=the~70:10,75:27,81:41 volumeL1=time~0:42 volumeL1=water~0:-17 volumeL1=we~65:25
volumeL1=|~0:38,64:32 volumeL2=,~0:67,19:44,20:38,64:44 volumeL2=.~50:24,71:61
volumeL2=0~0:-47,50:17,70:58 volumeL2=2~50:29 volumeL2=3~65:-53,75:47 volumeL2=5~0:-67,19:72,70:21
volumeL2=6~19:43 volumeL2=7~0:-41,70:42 volumeL2=8~0:39 volumeL2=9~0:35 volumeL2=bar~0:-43,65:42
volumeL2=by~70:33 volumeL2=c~19:57 volumeL2=cistern~0:-47 volumeL2=day~0:-36,65:37
volumeL2=from~65:53 volumeL2=generator~0:31 volumeL2=m~0:31 volumeL2=measured~70:41
volumeL2=off~0:-37,70:44 volumeL2=one~0:-54 volumeL2=pressure~0:46 volumeL2=pump~65:34
volumeL2=runs~0:36 volumeL2=seconds~65:33 volumeL2=set~50:48 volumeL2=so~0:48 volumeL2=south~0:31
volumeL2=spring~65:26 volumeL2=tank~0:-55,65:78,70:26 volumeL2=there~0:-31,70:55 volumeL2=v~65:-40
volumeL2=water~19:23 volumeL2=well~50:-50 volumeL2=|~0:-42 volumeM=cistern~64:37,65:106
volumeM=drip~19:75,20:39,50:-39,70:36 volumeM=pump~0:77,19:47,20:73,50:33,65:54,71:42
volumeM=roof~0:43 volumeM=spring~70:-40,81:52 volumeM=tank~19:43,20:29,50:45,65:87,70:128
volumeM=well~20:52,50:49 volumeR0=,~19:37,71:28 volumeR0=.~50:31,65:68,70:31 volumeR0=0~0:-27,75:23
volumeR0=1~20:35 volumeR0=2~50:39 volumeR0=4~75:25 volumeR0=5~75:25 volumeR0=6~20:28,70:-39,81:60
volumeR0=9~75:27 volumeR0=:~81:34 volumeR0=;~0:25 volumeR0=a~0:64 volumeR0=above~70:42
volumeR0=and~65:19,70:47 volumeR0=at~20:52 volumeR0=below~65:38 volumeR0=beside~65:30
volumeR0=bladder~50:42 volumeR0=bucket~0:74 volumeR0=by~0:19,19:14,70:-25 volumeR0=cistern~65:55
volumeR0=expansion~19:89 volumeR0=for~64:68 volumeR0=ground~65:25
volumeR0=heater~0:-36,20:136,50:-40 volumeR0=house~65:39 volumeR0=i~0:-64,65:43
volumeR0=in~0:60,65:-46,75:58,81:32 volumeR0=is~65:-56,81:32 volumeR0=it~0:-45,81:28
volumeR0=kept~20:31,64:32 volumeR0=next~65:26 volumeR0=of~64:59 volumeR0=on~70:44
volumeR0=one~0:-39 volumeR0=poly~65:36 volumeR0=pressure~50:54,65:-42 volumeR0=rainwater~65:30
volumeR0=right~65:59 volumeR0=sits~50:30,70:31 volumeR0=stands~0:51 volumeR0=storage~65:35
volumeR0=tank~0:-37,19:50,50:70,65:54,70:43 volumeR0=terrace~0:43 volumeR0=that~70:52
volumeR0=the~65:59,70:74 volumeR0=to~65:15 volumeR0=under~0:31 volumeR0=vessel~50:69
volumeR0=water~20:77 volumeR1=,~70:46 volumeR1=.~19:50,64:49,65:-34,70:25,75:28,81:26
volumeR1=1~50:41 volumeR1=2~0:-49,50:41 volumeR1=5~19:41,70:32 volumeR1=8~50:49 volumeR1=a~70:20
volumeR1=after~75:31,81:34 volumeR1=and~0:68,65:-39 volumeR1=are~70:24 volumeR1=booster~65:37
volumeR1=from~65:29 volumeR1=ft~0:-54,70:44 volumeR1=full~81:34 volumeR1=hours~75:31
volumeR1=house~0:-30,70:42 volumeR1=in~64:48 volumeR1=is~50:-60,65:28 volumeR1=it~0:32
volumeR1=loft~70:37 volumeR1=m~70:19 volumeR1=minutes~75:22 volumeR1=of~0:-63,65:45,70:50
volumeR1=one~81:33 volumeR1=outside~65:57 volumeR1=pump~65:41,70:-32 volumeR1=relief~20:26
volumeR1=seconds~81:34 volumeR1=spring~0:13 volumeR1=the~0:-28,50:36,65:26 volumeR1=water~65:46
volumeR1=|~0:35 volumeR2=,~0:-22,20:35,65:11 volumeR2=.~70:31,75:43 volumeR2=0~0:-34,70:51
volumeR2=1~65:70 volumeR2=3~0:-55,50:27 volumeR2=6~20:50 volumeR2=above~0:-37,65:29,70:46
volumeR2=bar~19:30,20:21 volumeR2=beds~70:39 volumeR2=below~70:61 volumeR2=by~65:-36
volumeR2=four~0:48 volumeR2=ft~70:26 volumeR2=min~0:49,65:-29 volumeR2=over~0:50
volumeR2=plot~65:24 volumeR2=psi~0:-38,50:40 volumeR2=pump~50:-31,65:68 volumeR2=seconds~0:35
volumeR2=stands~0:50,65:-44 volumeR2=surface~65:45 volumeR2=taps~70:32 volumeR2=than~70:47
volumeR2=there~70:-50 volumeR2=valve~20:31 volumeR2=was~0:52 volumeR2=water~0:-29,65:66
volumeR2=|~0:-63 volumeT=power.battery~0:-49,65:64 volumeT=power.cable~65:38
volumeT=power.capacity~0:-35,65:69 volumeT=power.facing~0:48,70:-50
volumeT=power.open_voltage~0:43,70:-31 volumeT=power.source~50:-21,70:70,71:53
volumeT=power.voltage~0:-19,65:95 volumeT=pump.control~0:59,50:69,70:-73
volumeT=pump.cut_in~20:26,50:51,70:-40 volumeT=pump.cut_out~20:30,50:76,70:-46
volumeT=pump.height~0:39,65:-49 volumeT=pump.placement~0:26,50:62 volumeT=pump.present~70:74
volumeT=pump.set~0:50,20:26,70:-34 volumeT=pump.works~0:-52,65:21 volumeT=store.days~0:27
volumeT=store.hours~0:24,70:-46 volumeT=store.inflow~64:43 volumeT=store.reserve~65:63
volumeT=store.volume~0:35,64:70,65:-124,70:-50 volumeT=tank.level~0:56,50:-40,65:-62,70:185
volumeT=tank.volume~0:29,65:57,70:-117 volumeT=water.kind~0:43,20:47,64:74,65:86,71:43,81:37
volumeT=water.level~50:45,71:58 volumeT=water.yield~20:38,75:47
volumeT=way.climb~0:26,20:54,64:34,65:78,70:-43 volumeT=way.length~0:47,20:42,70:43
volumeT=way.pipe~0:90,64:31,70:20 volumeT=well.bore~0:41 volumeT=well.depth~50:30,65:-28
volumeT=well.steady~0:43 volumea=~50:57 volumea=,_filled~0:23 volumea=.~0:83,65:16
volumea=and_stands~70:33 volumea=bladder_tank~50:42 volumea=bucket_at~0:29
volumea=expansion_tank~19:89 volumea=in_the~75:31 volumea=next_to~65:25 volumea=poly_tank~65:36
volumea=pressure_tank~50:80 volumea=storage_tank~65:36 volumea=tank_,~0:52 volumea=under_the~0:45
volumea=water_heater~20:66 volumeb=,_about~65:34 volumeb=._tank~70:46 volumeb=a~0:19
volumeb=bucket_of~81:33 volumeb=cistern~0:45,65:-33 volumeb=cistern_holds~65:39
volumeb=cistern_is~0:-27,65:46 volumeb=from_a~65:62 volumeb=have_a~65:-45,70:22
volumeb=into_a~70:37 volumeb=is_a~19:16 volumeb=tank_is~0:41,65:-31 volumeb=tank_of~0:35
"""
