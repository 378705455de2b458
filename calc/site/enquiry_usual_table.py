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
L=!~0:-54,84:22 L=(~0:39,3:51,53:34,93:23 L=)~3:41,30:46,76:36
L=,~7:20,10:35,15:3,36:-42,40:13,51:17,60:46,65:-39,79:20,81:15,82:-38,86:44,89:-28,99:-31
L=.~6:-47,8:25,11:36,12:18,19:-33,28:31,30:48,38:-22,40:27,49:-33,52:-26,70:-40,73:-37,76:-16,77:-43,78:38,80:-36,81:-33,84:35,93:27,98:-57
L=0~0:53,1:32,4:-35,21:78,28:-36,33:-44,41:49,52:41,61:-33,64:-41,72:-34,76:18,83:32,86:65,89:68,102:29
L=1~2:-31,4:-34,8:30,57:66,61:21,64:-42,76:-35,79:50,89:35,93:26
L=2~0:65,19:44,33:22,47:-38,51:-44,57:47,76:34,77:29,85:31,86:-33,90:-46,91:-15,93:26,102:43
L=3~27:23,40:41,54:13,60:-52,72:-42,76:55,79:56,98:26,100:-47,102:17
L=4~15:-63,28:5,40:58,56:42,91:34,102:38 L=5~0:16,1:-32,41:38,52:25,84:-13,86:-23,93:27,97:18
L=6~0:54,47:-28,60:48,77:29,91:-34 L=7~82:34 L=8~28:-31,75:-39,79:59,88:40,100:29
L=9~3:-45,5:38,72:30,86:-37,88:19,92:55,98:49 L=:~0:16,6:29,26:30,37:39,52:26,82:35,88:17,94:33
L=;~0:15,28:-30,48:27,72:35,86:-59 L=?~37:46,84:24,86:45
L=a~0:39,30:-38,33:45,37:-60,43:31,47:-50,48:29,51:22,54:31,56:30,57:-49,61:23,71:-30,72:45,76:24,77:44,80:64,82:-31,86:-45,88:50,92:43,93:35,98:-29
L=about~3:45,48:29,72:51,78:43 L=above~0:-39,76:37,84:46,86:-39,91:40 L=across~0:43
L=adjusted~64:34 L=adults~0:69,33:-22 L=after~0:64,87:28,95:28,99:19 L=ah~3:35 L=air~52:58
L=all~0:61,49:35,76:20,84:-58 L=allowed~65:38 L=alpacas~0:-28,85:35 L=altimeter~89:42
L=altitude~37:87 L=am~84:30 L=an~28:25,84:-27
L=and~1:45,4:46,26:30,34:-33,35:23,48:50,57:69,60:-9,85:18,88:35,89:23,91:24 L=apart~11:31
L=are~7:38,11:31,37:33,60:-46,76:-35,84:56,91:50 L=array~0:-36 L=as~62:33
L=at~0:33,1:-44,4:-26,21:104,30:-20,36:-35,37:82,38:46,42:-43,52:-17,56:68,57:65,60:146,76:-31,77:-59,79:28,86:70,89:-37,90:-37,91:-68,98:54,99:52,101:43,102:21
L=attic~0:-34,76:48 L=august~0:58 L=back~0:59,56:23,101:29
L=bar~8:21,28:30,53:47,54:39,56:63,57:95,88:-46 L=barn~0:-46,91:34 L=basins~0:45,33:29
L=bath~0:-41,33:38 L=batteries~0:22 L=battery~0:51,43:30 L=be~0:46,29:42 L=bed~0:24 L=beds~16:22
L=beef~0:50,1:-37 L=been~0:28 L=before~100:32 L=begin~12:32 L=behind~0:-43 L=below~0:-31,91:42
L=beside~0:-46 L=between~56:66,84:45 L=bladder~52:40 L=block~8:35 L=blue~54:38 L=boiler~23:67
L=booster~64:31,91:-27 L=bore~88:60,89:-39,92:29,93:59,100:25
L=borehole~89:-18,90:37,93:92,96:34,102:35 L=both~0:-34 L=bottom~76:46,89:32,93:51
L=box~64:24,86:31 L=brings~0:29 L=budget~0:21 L=buried~0:70 L=but~28:39,32:62,91:54
L=by~0:28,33:43,48:30,90:52 L=cabin~30:-48,37:35,77:-45,89:56,91:45 L=cabins~0:22,28:-47
L=cable~0:45,42:98,91:-33 L=call~0:45 L=came~0:27 L=campers~0:38 L=can~0:42,9:27 L=captured~0:36
L=cased~0:-30,92:49 L=casing~0:-46,92:7 L=cattle~0:39,85:33,91:41 L=cellar~86:76 L=chalet~0:52
L=charge~52:33 L=checked~52:37 L=cistern~70:28,72:55 L=city~0:79 L=climb~0:-73,89:108
L=climbs~0:-30,89:82,91:-24 L=cm~0:-34,7:32,11:41,77:35 L=come~0:35,31:32
L=comes~35:27,56:15,77:32,88:-29,101:28 L=concrete~0:37 L=constant~64:48 L=consumption~79:37
L=control~64:32 L=controller~41:31,44:62,51:-42 L=copper~91:51 L=cottage~0:-41,84:27,89:93
L=count~0:-33,81:32,84:30 L=couple~31:45 L=cover~6:33 L=cows~1:44,3:28,4:36,5:43,84:-38,85:45
L=creek~0:-33,90:36 L=cut~0:-36,56:80,57:85 L=cuts~57:19 L=daily~78:35
L=day~1:48,72:-37,78:48,84:38 L=dear~92:37 L=december~0:51 L=deep~89:-41,92:56,100:29
L=degrees~0:33 L=delivers~0:47 L=depth~60:39,93:63,100:31 L=dia~0:-36,84:24
L=diameter~0:-29,58:85,92:49 L=diaphragm~0:-49,61:23 L=difference~89:30 L=dishwasher~84:26
L=distance~15:37,89:-28,91:60 L=dn~92:38 L=down~60:43,86:55,90:-33,98:32 L=drawn~97:29
L=draws~75:62,102:35 L=drilled~0:46,93:51 L=driller~0:-36,88:41,102:22 L=drinkers~85:55,89:43
L=drinks~78:14 L=drip~6:26,7:20,11:30,12:25,15:37,16:33,24:56 L=dripper~16:31
L=drippers~7:62,15:-37,16:82 L=drips~0:37,20:27 L=drop~0:35,90:27,91:-39 L=drops~0:83,89:-40,90:44
L=drum~0:-47,76:58 L=dry~59:42,66:58,86:53 L=dug~93:35 L=dynamic~86:43
L=each~0:39,11:51,16:54,28:-24,51:-46,78:-43,79:94,84:39,88:-47 L=efficiency~62:67
L=eight~0:33,29:38 L=elevated~0:33 L=elevation~37:79 L=emitters~7:68,16:68 L=end~84:29,86:35
L=ends~0:40 L=enough~68:24 L=et~0:-27,14:70 L=every~7:39,16:56 L=everything~77:34 L=ewes~89:28
L=expansion~19:66,22:73 L=facing~0:-29,84:24 L=falls~76:46,89:-30,90:32,98:20 L=family~0:-41,84:70
L=far~0:46 L=farm~0:50 L=farthest~91:35 L=fed~0:-36 L=feeds~64:31 L=feet~24:61,85:29,93:44
L=fence~0:33 L=field~0:42,31:28 L=fifty~0:-42,28:30 L=fill~0:53 L=filled~0:27 L=filter~36:41
L=fire~71:29 L=first~35:31 L=floats~0:56 L=floor~76:29 L=flow~0:67,8:29 L=foot~73:33
L=for~0:26,36:35,41:36,68:54,88:40,97:65 L=four~0:26,25:32,77:-36 L=frequency~64:43
L=from~42:46,47:-50,72:24,76:50,77:45,86:20,90:35,93:-41
L=ft~6:28,76:-50,84:37,85:-44,86:29,93:30,102:55 L=gal~89:28 L=gallon~0:27,5:29
L=gallons~76:27,91:-25 L=galvanised~77:22 L=garden~0:52,6:42,80:123,91:29 L=gas~84:32 L=gauge~0:53
L=gets~35:68,70:34 L=gives~0:72,64:-35,88:68 L=go~0:28 L=goats~3:68,4:48,6:-38
L=goes~6:29,86:27,93:29 L=got~0:70,72:32 L=gph~13:37 L=gpm~0:-32 L=gravity~77:32
L=greenhouse~6:16,78:39 L=grid~38:33 L=ground~49:49,90:32 L=group~0:26 L=guess~35:25 L=guy~0:39
L=h~12:57,13:32,16:61 L=ha~15:22 L=half~90:75 L=hallo~0:27 L=hand~35:25,93:40 L=hangs~60:91
L=has~0:51,28:42,52:42,77:-31,91:-39,92:34,96:63 L=haul~72:44 L=hav~0:60 L=have~6:28,31:31,77:51
L=having~0:-43 L=he~0:81,88:-25,102:32 L=head~0:86,84:-33,89:29 L=header~77:40
L=heater~20:38,21:64,23:61 L=height~89:43,91:43 L=hello~0:51,6:-45,47:23 L=hens~0:-58,3:36,4:34
L=higher~89:42,91:51 L=highest~89:48 L=hill~72:-45,77:36,84:31,89:-39 L=hillside~0:65
L=hit~0:38,86:-31 L=hiya~0:28 L=hold~0:15,76:-28 L=holding~77:22 L=holds~64:80 L=hole~93:26
L=horses~0:-44,1:38,85:67 L=hose~75:40,84:24 L=hoses~0:-54,26:61,31:41
L=hour~0:-28,65:35,82:68,86:28 L=hours~0:41
L=house~0:40,3:58,6:-38,30:18,60:-32,64:37,76:31,86:-34,89:68,91:70,93:-44 L=household~84:55
L=houses~89:33 L=how~84:25,93:42 L=hp~60:52 L=hundred~86:-53 L=hung~96:67 L=hut~37:47
L=i~0:67,6:37,9:45,29:54,32:37,52:48,62:26,81:43,86:-34 L=i'd~35:25,64:52 L=ibc~76:28
L=in~3:-50,15:31,17:19,41:35,49:57,56:37,72:-10,82:50,83:69,84:-40,86:76,89:-11,100:-38
L=inside~33:37,86:-32,100:17 L=intake~0:33,75:68,90:38 L=into~0:-53,72:25 L=inverter~64:31
L=iron~0:27 L=irrigation~0:-37,6:39
L=is~0:56,1:-52,14:38,33:42,36:36,37:-31,39:23,42:30,79:-29,87:32,89:26,91:53,92:2
L=isn't~0:38,93:26 L=it~0:31,20:46,30:-28,35:47,48:37,86:20,94:42,98:56,101:39 L=it's~91:44
L=its~89:-42 L=joined~72:72 L=just~0:-48 L=keep~2:36,71:72 L=keeps~0:-27,64:76 L=kia~0:35
L=kicks~56:32 L=kids~28:33 L=km~0:34,90:29
L=l~1:28,13:45,16:42,52:34,76:63,86:-41,97:32,98:33,101:26 L=last~0:49
L=latitude~0:-72,38:87,39:190,40:49 L=laundry~34:42 L=least~10:35 L=length~75:68,91:42 L=let~0:-58
L=level~60:-14,86:81,89:-9,93:-23,98:70,100:83 L=lies~35:47,89:45 L=lift~59:39,60:-27,86:49,89:55
L=lifted~89:42 L=lifts~89:28 L=like~0:44 L=line~0:32,11:78,76:-30,86:-28,91:26 L=lined~0:25
L=lines~9:38,11:82,12:53,91:-35 L=liter~0:48 L=liters~0:47 L=litre~0:-43,52:34
L=litres~1:59,19:39,21:62,76:51,83:28 L=live~84:63 L=living~0:65 L=loft~77:37 L=log~0:-36,93:41
L=long~0:32,40:31 L=longitude~40:52 L=look~0:34 L=lose~48:27 L=low~0:24 L=lowered~60:53
L=lowest~86:23 L=m~0:31,77:56,89:53,93:51 L=machine~26:42,84:34 L=machines~34:44 L=main~91:39
L=maker~0:-44,65:36 L=makes~86:-37,88:37,100:36 L=manometer~0:29 L=max~0:35 L=maximum~0:57
L=may~0:54 L=maybe~0:64,48:40 L=me~0:60 L=meadow~31:36 L=mean~0:34 L=measured~0:27,88:32
L=meter~81:75 L=meters~0:40,84:-42 L=metre~93:58 L=micro~0:54 L=milk~0:-28,2:70
L=min~0:33,89:-41,97:35 L=minimum~0:77 L=minute~0:-52,90:31 L=minutes~99:54
L=mm~6:-24,73:27,74:32,76:-31,77:34,90:64,91:58 L=month~0:-25 L=months~66:60 L=more~0:-27,89:26
L=morning~82:55 L=most~61:36 L=motor~0:-53,62:73 L=mountains~84:47 L=mppt~3:32,44:62 L=must~89:36
L=my~0:99,6:-47,47:21,90:32,91:-24 L=need~0:31,78:71 L=needs~0:29,10:37,63:28 L=neighbour~0:42
L=net~89:48 L=never~86:54 L=night~9:45 L=no~84:81,86:32,91:35 L=noon~0:52 L=north~39:58,84:24
L=not~0:-29 L=now~0:56,86:26 L=npsh~63:52
L=of~25:56,29:37,45:46,47:86,48:47,60:-23,68:17,76:14,84:37
L=off~0:-49,38:30,57:86,67:113,72:27,90:50 L=olives~0:-26,6:29
L=on~28:-33,31:31,35:34,48:30,56:68,57:50,76:53,77:52,84:-24,89:-41,90:-50,96:57 L=once~0:31
L=one~48:43 L=only~32:54,36:45,84:21 L=open~45:58,51:-51 L=opens~56:-22,57:35 L=ora~0:35
L=orchard~0:-26,6:32 L=our~0:40,72:-28,78:28,84:54 L=ours~93:47 L=out~35:29,54:-29,57:119,94:54
L=outside~0:-42,58:53,84:36 L=over~0:42,28:28 L=overhead~77:36 L=own~0:18 L=panel~50:35
L=panels~30:41,42:19,46:67,49:62,50:58,91:-28 L=paper~0:24 L=parallel~0:-36,28:35,30:-25
L=pasture~0:5 L=pe~29:36,90:43 L=peak~82:28 L=people~28:38,79:80,84:55 L=peppers~0:-23,6:20,15:27
L=per~0:15,79:45 L=persons~28:28,79:53 L=pex~0:19 L=phosphate~0:30
L=pipe~0:69,28:-37,47:22,75:64,86:-26,91:69,93:-35,96:69 L=pit~93:-26 L=place~37:30 L=plastic~36:31
L=platform~76:41 L=please~0:41 L=plot~0:71 L=plus~0:-51,4:33,80:88 L=pn~0:54 L=point~64:23
L=poly~0:39 L=pond~0:46 L=power~0:30 L=pre~52:34 L=precharge~52:64 L=precharged~52:37
L=preset~52:33 L=pressure~0:24,12:26,54:83,56:53,57:18,77:-44,84:-24 L=protection~0:-48 L=psi~86:44
L=pull~60:53
L=pump~0:86,8:47,30:33,37:-31,42:31,52:-35,56:9,57:38,58:35,60:169,61:80,63:33,64:68,72:34,75:14,88:-67,89:-27,91:-39,93:-22,96:42,100:-24
L=pump's~0:37,51:-27,60:38 L=pumped~0:-61,19:23,88:-32,94:28,102:29
L=pumping~86:72,98:26,99:18,102:38 L=push~86:-30 L=pushes~76:47 L=question~0:59
L=rain~67:26,72:58,87:28 L=rainwater~0:-41,72:60 L=raised~76:25 L=ran~0:-43,97:50,99:29
L=rated~13:54,36:28,53:76 L=reach~0:28 L=read~0:80 L=reads~0:24 L=reckon~79:25 L=reducing~0:54
L=relief~20:95 L=required~63:40 L=reservoir~76:33 L=rest~86:-51,100:95 L=ridge~48:81 L=rings~92:31
L=rise~89:93 L=rises~89:60 L=road~0:49,91:-23 L=roof~0:-16,6:-38,67:146,84:24,89:32 L=rooms~0:54
L=roughly~0:-55,31:31,48:23 L=rows~0:-34,15:118,72:34 L=run~0:-34,9:59,27:38,42:31,91:48
L=runs~0:-27,51:30,69:34,72:20 L=s~0:-51,40:33,98:34 L=said~0:64 L=same~29:36 L=sawback~37:22
L=say~91:91 L=says~0:89,78:50,93:23 L=sch~0:43 L=schedule~91:22 L=school~84:32 L=season~86:46
L=second~0:47 L=seconds~0:29,91:-30 L=septic~0:87,72:-21,77:-37 L=set~21:29,60:54,64:115
L=seven~0:-46 L=shaft~0:-37,92:48 L=sheep~3:64 L=should~68:43
L=shower~30:53,33:68,86:-37,88:-25,89:39 L=showers~1:-28,28:93,29:75,30:64,33:85,84:-34
L=shuts~57:37 L=sink~0:-29,28:32,30:-34,33:22 L=sinks~0:-30,30:59,33:9,34:34 L=sirs~92:37
L=sit~0:23 L=sits~60:36 L=six~29:47 L=slope~0:39 L=smal~0:29 L=small~37:32 L=so~0:27,33:45,72:77
L=solar~86:-38 L=sold~0:28 L=some~89:26 L=sorry~84:29,86:23 L=spacing~16:26 L=speed~0:46,64:42
L=spring~72:52,76:-43,87:22,88:84,90:89 L=sprinkler~0:27,89:35 L=sprinklers~31:48 L=stable~0:-29
L=staff~84:69 L=stand~76:51 L=standing~0:-21,100:63 L=stands~86:53 L=start~12:32,56:43
L=started~100:33 L=static~0:-21,86:44,89:-25,93:-47,100:198 L=stock~0:-34,1:47,5:44 L=stop~57:27
L=stops~30:-30,57:86 L=storage~68:32 L=stored~21:70 L=strainer~0:81,91:-36 L=strings~0:-58,47:38
L=sub~60:52,84:25 L=submersible~58:13,60:105,84:-37 L=sucks~75:40 L=suction~75:136,89:-29,91:-51
L=summer~84:35,86:33 L=sun~0:51,35:47 L=sunday~0:27 L=supply~0:-33,12:31 L=swears~0:46
L=switch~0:-47,52:-37,54:24,56:120,57:78,64:-34,91:26 L=swl~86:39,100:58 L=system~51:30
L=take~0:25,88:-35 L=takes~0:69,48:39,82:50,84:-30
L=tank~28:-44,52:51,53:68,54:57,57:-33,70:82,72:98,76:103,77:71,86:-44,88:-53,89:-48,90:-45
L=tanks~0:42 L=tap~0:66,89:26 L=taps~0:65 L=ten~0:37,84:-32 L=tent~0:41 L=tents~0:30
L=test~99:32,102:39 L=tested~0:-43 L=than~0:-26 L=that~35:29,76:48,101:54
L=the~0:96,1:-29,7:-25,11:-44,12:45,19:-32,24:-31,26:-39,33:-40,35:49,37:-69,38:-34,49:-33,53:-35,56:25,67:85,70:56,75:15,77:36,88:38,89:54,93:28,98:34,101:-36
L=then~0:49 L=ther~0:49,84:-28 L=there~1:51,18:39,22:18,74:40,85:39
L=there's~0:-42,12:35,28:40,54:24 L=think~63:28 L=this~0:92 L=three~0:13,30:-35 L=through~75:66
L=tilt~50:61 L=tilted~50:37 L=time~33:29 L=timed~88:25 L=times~56:24
L=to~4:-38,19:25,30:-34,37:-33,42:40,52:48,60:-26,72:-57,76:33,77:48,86:58,89:53,91:65,92:-40,98:37
L=toilet~33:76 L=toilets~0:-35,30:48,33:42,34:59 L=told~76:24 L=too~0:9
L=took~0:40,28:34,62:33,95:36 L=top~1:36,89:44 L=total~0:-56 L=tote~72:28,75:67
L=tower~0:-28,76:54,91:45 L=town~0:61 L=trench~0:18 L=trough~89:34 L=troughs~0:-50,1:35,85:91,91:33
L=truck~0:43 L=turns~81:32 L=twenty~0:48 L=two~0:38,30:29,34:-43,46:24,78:40 L=tyre~0:26
L=under~86:37 L=underground~72:47 L=up~76:31,77:61,87:27,89:46,93:-34 L=uphill~0:-43,89:51
L=upper~0:-63,77:75,89:48 L=us~0:-28,28:34,30:35,48:26 L=use~0:-38,29:38,78:78,82:45,83:28
L=uses~0:54,79:39 L=v~28:36,41:30,42:44 L=valve~20:102,64:-37,73:33,74:47 L=variable~64:23
L=vessel~0:-17,22:52,52:58,54:44 L=village~76:29 L=vines~6:28 L=voc~45:55 L=volt~61:37
L=voltage~45:38 L=w~0:-52,45:31,47:35,49:41 L=want~32:47,68:44 L=wanted~64:21
L=wants~0:38,29:41,71:66 L=was~0:23,52:23,91:-29,94:23 L=wash~33:29 L=washer~0:44,26:31
L=washing~0:-24,26:45,34:39
L=water~0:29,5:28,9:49,23:36,37:-31,60:-59,76:-27,86:167,87:99,88:26,90:-37,93:-32,100:96
L=water's~86:37 L=watered~0:31 L=waters~86:42 L=way~0:-47,61:36,91:35
L=we~0:116,28:25,29:-28,37:48,38:32,60:58,68:42,78:82,79:24,82:31,84:50,86:-40,90:25,93:-27
L=we're~84:31 L=we've~0:53 L=well~30:21,70:44,76:-23,86:30,88:24,90:-34,92:50,93:78,94:35
L=well's~0:-43,93:66 L=went~0:23 L=were~0:35 L=when~0:42,30:-33,98:39 L=which~0:-49,29:35,70:33
L=will~29:28 L=wire~42:88,91:-56 L=with~6:27,12:26,52:50,72:-39,73:47,74:33,86:26,92:10,100:-34
L=within~86:32 L=works~0:50 L=write~0:51 L=wrote~88:21 L=x~0:86,46:29 L=yard~1:32 L=yards~90:29
L=year~0:33,86:-33 L=yield~0:57,88:35 L=you~0:33 L=your~35:25 L=yurt~0:31 L=zones~25:57
L=|~3:27,33:20,51:40,90:39,91:-63 R=!~0:45 R=(~0:-31,28:56,33:15,84:35 R=)~0:98
R=,~0:63,4:-36,7:30,9:-49,10:-34,15:27,27:-43,29:-51,31:41,33:21,39:68,42:-34,56:47,59:-34,64:28,65:-25,68:-41,71:-32,72:65,77:59,78:44,85:17,91:42,98:-36,100:29
R=.~0:113,1:-31,2:-20,5:-32,6:48,8:-44,18:-27,24:-34,27:-25,29:-36,31:-64,32:-29,35:32,37:51,39:72,44:-27,47:-35,52:19,55:-48,56:20,64:19,78:51,79:76,84:46,87:28,88:43,89:2,93:21,94:-39,95:-47,96:-14,99:-36
R=0~0:51,6:-39,13:57,47:33,56:35,72:-35,77:-31,79:47,82:19,88:57
R=1~0:45,1:-51,26:-74,30:46,34:-60,47:21,54:25,60:34,75:46,76:-62,88:-30,91:22
R=2~28:46,34:66,49:-28,53:37,54:41,57:25,84:-23,85:-20,99:20
R=3~17:52,39:37,56:101,66:37,84:-55,89:23,92:31,94:41,100:-35,102:36
R=4~37:-44,63:45,75:26,76:-38,77:26,86:-25,89:9,96:71
R=5~0:54,1:-37,3:32,22:30,31:24,72:-32,86:-26,91:61
R=6~1:-48,3:29,23:44,58:35,79:48,86:-17,93:26,100:37,102:40 R=7~0:71,60:-46,84:-39,92:68,100:58
R=8~0:80,51:57,54:55,91:36,96:49 R=9~2:53,82:24,100:35 R=:~60:56,91:25 R=;~0:68 R=?~0:96,84:61
R=a~0:20,1:35,6:-34,9:48,25:50,28:41,30:29,33:40,44:24,54:-35,69:24,78:37,79:65
R=about~0:-32,3:34,84:26 R=above~37:24,60:-33,72:-36,76:82,77:56,86:51,89:144,91:-35,93:-36
R=according~93:48 R=across~0:45,92:44 R=adults~0:31,84:49 R=after~0:42,17:40,82:30,83:20,88:29
R=ago~0:74 R=ah~51:89 R=air~54:57,95:32 R=all~85:35 R=along~0:-37,89:34 R=alpacas~0:50
R=altitude~37:45,63:27 R=altogether~78:46 R=an~0:33,28:-20,57:44,65:53,91:-64,99:22,100:48
R=and~0:44,2:22,3:16,5:18,28:35,29:34,30:46,33:39,51:-46,56:87,70:12,85:-51,88:-39
R=apart~15:30,16:28 R=around~0:61 R=arrives~84:24
R=at~0:42,1:-37,3:-23,4:-33,5:23,8:37,23:56,25:93,27:66,29:67,32:53,33:-35,52:-32,56:29,60:-26,61:65,77:-27,84:39,88:-51,89:-57,91:-45,93:71,98:38
R=automatic~0:-32,1:36,85:29 R=autumn~0:33 R=away~0:29,89:-30,91:89 R=back~71:37 R=bank~51:42
R=bar~0:-46,22:37,54:39,56:81 R=barn~76:-30 R=barrel~0:-25,77:41 R=basin~0:29,28:-27
R=basins~30:136,84:-18 R=bathroom~0:72,28:-42,30:-46 R=bathrooms~28:57 R=baths~0:25
R=batteries~43:39,51:22 R=battery~43:41,51:34 R=be~0:33 R=beds~0:14,37:23 R=beef~0:38,1:62
R=before~29:38,91:23 R=begin~12:38 R=behind~0:38
R=below~0:-67,60:40,72:68,76:34,86:65,89:42,90:1,91:-36,93:-47 R=bends~73:69
R=beside~3:44,72:53,77:-34 R=bladder~54:36 R=boiler~22:19 R=booster~72:55 R=bore~0:-51,3:42,89:-37
R=borehole~0:-34,84:34,89:26,92:43 R=both~26:34 R=bottom~0:64,91:-43,93:99 R=boys~0:40
R=break~0:-25,18:59 R=brings~52:34 R=brook~85:35 R=bucket~0:79,88:30 R=bulls~1:50,5:58
R=but~0:133,30:44,31:71,84:-38,91:-28 R=by~0:32,55:50,77:-23,78:42 R=c~23:31
R=cabin~23:44,90:31,91:52 R=cabins~28:53 R=cable~42:100,91:-34 R=calf~5:80 R=calves~1:-33,5:90
R=campers~0:-29,84:58 R=can~8:38 R=cart~0:66 R=case~0:16 R=casing~92:68 R=cattle~1:107,3:48
R=chalet~0:25 R=charged~22:35 R=chickens~0:-79,4:133 R=children~0:61 R=cistern~3:-48,66:37,72:40
R=climb~89:39 R=climbs~89:47 R=cm~15:37 R=comes~0:55,93:-21 R=concrete~77:43 R=const~64:20
R=controller~0:35 R=cottage~90:38 R=couple~5:35 R=covers~0:27 R=cow~5:63
R=cows~0:-82,1:125,2:164,5:58,84:-45 R=creek~75:25,89:60 R=cut~56:42 R=dairy~2:55
R=day~0:-30,9:40,14:57,69:91,70:73,79:48 R=deep~0:70,76:-36,86:-50,89:-27,91:-24,93:147
R=delivers~0:25 R=delivery~86:43 R=depending~84:33 R=depth~93:48 R=diameter~92:40 R=diesel~0:62
R=distance~89:-35 R=dog~0:-16,84:17 R=don't~0:53 R=down~60:83,76:-42,86:82,89:-47,91:-48
R=drawn~99:35 R=drilled~0:25 R=driller~88:38 R=drink~1:78 R=drinkers~0:-24,85:131
R=drip~6:111,12:49,16:43,24:40 R=dripper~0:-40,15:47,16:34 R=drippers~0:22,7:21,15:54
R=drop~0:-31,90:35,91:-35,96:91 R=drops~0:58 R=drum~77:30 R=dry~0:-47,1:79,2:31,66:72,80:100
R=e~40:33 R=each~7:50,23:37,28:71,79:61,85:24 R=earth~0:33 R=east~5:31 R=elbows~73:63
R=electricity~0:34 R=elevation~37:38 R=else~0:-50 R=emitters~0:-29 R=enough~72:29 R=every~15:26
R=ewes~0:-39,3:162 R=expansion~21:77,22:85 R=fall~90:27 R=farm~0:-27 R=feeds~77:49 R=feet~0:68
R=fence~0:52 R=field~0:21 R=fill~0:53 R=filled~0:35,72:57 R=fine~0:35 R=fire~71:81
R=first~0:36,12:31 R=five~84:-38 R=flat~91:39 R=float~0:28,85:108 R=floats~0:-46,85:92
R=flush~33:27 R=folks~84:52 R=foot~5:55,73:60,74:86,75:45,91:-41
R=for~0:29,26:47,71:97,77:-42,78:47,85:35,88:-47,99:75 R=forty~0:31 R=four~84:-60,86:21
R=from~4:44,37:-36,72:34,86:2,91:79,93:-31 R=ft~0:52,60:-40,72:28,77:46,86:-23
R=full~0:34,84:73,86:-39,88:31 R=garden~26:32,89:-27,90:38,91:40 R=gauge~54:-34 R=generator~0:43
R=gets~0:32 R=gives~89:-39,90:42 R=go~93:41 R=goats~0:-59,3:182 R=goes~60:53 R=going~28:-46,29:71
R=golf~0:53 R=gone~0:35 R=got~0:72 R=gravity~0:-50,76:52 R=greenhouse~6:36 R=grooms~89:42
R=ground~60:37,72:62,86:33,89:-33 R=guest~84:39 R=guests~0:37,84:82 R=h~16:24,86:45 R=had~4:31
R=hanging~58:36 R=hangs~86:47,93:17 R=has~90:31 R=have~0:36,2:20 R=hdpe~0:36 R=he~0:51 R=head~1:68
R=heads~31:33 R=heater~0:-45,23:140,54:-40 R=heifers~1:75 R=height~76:49,86:-35,89:49,91:36
R=help~0:36 R=hens~0:-79,4:216 R=here~84:50,89:35 R=high~0:18 R=higher~76:45,89:71
R=hill~72:-50,77:32,89:43 R=holds~0:-34 R=horses~1:150,84:-28,85:-30
R=hose~0:-78,26:187,27:72,29:31,75:94,84:-11 R=hoses~0:-109,26:180,27:67 R=hour~0:-8,65:100,99:22
R=hours~0:16,82:30,99:5 R=house~2:68,72:53,76:51,86:-34,88:43,89:91,91:69,93:-59
R=household~0:-29,84:26 R=households~0:25 R=houses~0:63 R=how~0:-30,12:30,91:27 R=hut~0:-42,84:16
R=i~0:61,24:41,52:-32,89:-28,90:22,91:57,99:17 R=identical~55:100
R=in~0:35,2:17,14:38,35:51,47:84,52:60,55:38,64:-30,76:-41,80:73,82:37,84:26,86:10,94:30,100:-3
R=inch~0:-55,75:45,86:-25,91:75 R=inside~0:-26,92:66
R=is~0:49,10:31,54:-56,72:-46,88:47,89:-52,92:37 R=it~0:12,52:8,77:-61,84:-39,86:31,88:46,99:21
R=it's~0:42 R=its~28:24,86:51 R=joined~0:43 R=june~0:-55 R=just~0:45 R=kept~0:20,23:36,71:78
R=kids~0:74,3:44,84:-33 R=kind~0:34 R=kitchen~0:61,30:-64,33:38,76:31 R=l~16:39 R=laid~91:39
R=last~0:55 R=late~0:78 R=later~0:55 R=laying~4:34 R=least~10:42 R=level~59:27,72:80
R=lift~0:-25,89:47 R=like~0:-39 R=line~0:72,75:30,89:-30,90:23 R=lined~93:33 R=lines~12:91
R=litres~84:35 R=loft~77:60 R=long~0:20,11:68,75:34,89:-22,93:-33 R=loo~0:-39,28:35,33:61
R=loos~33:61 R=lost~48:69 R=low~0:52 R=lower~0:41,89:-35,90:97 R=lowest~0:-50,86:31
R=m~0:70,63:37,77:36,89:34,91:24,92:38 R=machine~34:65 R=machines~28:34,34:61 R=mains~26:33,86:88
R=make~48:28 R=may~29:42 R=me~0:54,84:44 R=measured~0:66 R=members~0:25 R=mesh~0:54 R=meter~78:41
R=metre~16:49 R=milk~0:-46,2:157 R=milking~0:-54,2:59,82:31,83:29 R=min~82:27
R=minutes~82:30,94:45,99:72 R=mm~0:-12,75:47,86:-24,89:26,91:53 R=modules~46:35 R=monks~84:31
R=months~0:-57,66:74 R=most~84:41 R=mostly~0:-34 R=motor~0:27 R=must~0:42 R=my~0:57
R=n~0:-62,38:181 R=need~10:43 R=next~72:53 R=night~0:-36,70:23 R=no~27:37,34:41,91:35 R=none~3:37
R=north~38:95 R=not~31:41 R=now~28:51,84:17,87:28 R=npsh~63:27 R=o'clock~0:40
R=of~0:38,4:-36,6:36,42:55,43:19,48:42,49:49,54:-33,60:-68,67:49,68:47,71:44,75:71,76:-34,84:15,85:-21,86:-60,90:-30,91:59,96:92
R=off~56:54,91:60,99:20 R=old~0:100 R=on~1:45,6:40,16:20,27:55,54:-38,72:-58,77:59,89:-43
R=once~0:-45,27:31,29:84,84:-51 R=one~30:40,33:46,75:36,84:20,88:27 R=ones~1:39
R=only~0:44,72:34,76:16 R=open~29:63,31:21 R=or~0:24,29:68 R=other~30:32 R=our~0:30,86:52
R=out~0:35,41:40,56:71 R=outhouse~28:28 R=over~0:61,76:53 R=own~0:-28,28:30 R=paced~91:42
R=paddock~89:36 R=paddocks~3:27,85:41 R=pairs~5:120 R=panel~46:50 R=panels~46:50,47:102,84:-41
R=paper~0:45 R=parallel~49:42,55:59 R=pasture~0:-32,1:33 R=pe~0:56,89:-43,91:30
R=people~28:-45,84:168,85:-31 R=per~16:35,28:-41,65:50 R=person~0:-30,84:124
R=persons~28:-47,84:160 R=pex~0:28 R=phase~0:44 R=pieces~31:27 R=pigs~0:47
R=pipe~0:94,86:-32,89:29,91:54,96:54 R=plastic~93:25 R=please~0:50 R=plus~1:-37,84:28,91:31
R=poly~0:69,72:39,86:-37,93:-28 R=power~0:-67,26:55,30:20
R=pressure~0:-50,18:99,26:56,34:-24,54:69,64:35,72:-32,84:-57,89:51 R=psi~54:26,61:49
R=pump~19:46,27:53,30:-41,38:45,42:16,60:-31,64:52,72:46,76:-26,77:-51,86:87,88:38,90:-45,91:-33,92:57,93:55,98:29
R=pumphouse~0:56 R=pumping~100:22 R=pumps~55:93 R=pupils~0:-35,84:82 R=pushes~0:-26,86:29
R=put~0:47,89:-30,90:30 R=pvc~0:63 R=rain~72:21 R=rams~0:54 R=ran~86:-23,100:24 R=reach~91:44
R=reaches~91:27 R=reducing~18:51 R=regulator~12:36 R=relief~23:26 R=reserve~68:48 R=reservoir~0:26
R=ridge~0:63 R=right~51:-27,52:-40,72:60 R=rim~100:21 R=rise~89:38 R=road~0:36 R=roof~67:44,77:26
R=rooms~28:30 R=row~12:31 R=rows~11:67,13:32,15:70,16:62,91:-49 R=run~0:34,24:7,28:-56,29:102
R=runs~75:29,86:-36,98:26 R=same~32:19,91:57 R=says~0:71,65:34 R=sea~37:65,59:30 R=second~91:27
R=seconds~0:68,88:41 R=series~47:78,84:-33 R=set~61:45,64:75 R=shed~72:51 R=sheep~1:27,3:109
R=should~0:-72,29:43 R=shower~28:198,29:50,30:48,85:-39 R=showers~0:-37,1:-35,28:191,29:121,85:-51
R=side~55:52 R=since~0:-44 R=sink~0:-54,28:27,30:144 R=sinks~28:30,30:157,84:-48 R=sits~54:37,77:29
R=sleep~0:-32,84:62 R=slope~89:36 R=small~0:-41,84:18 R=so~0:136,88:44,89:-37 R=solar~1:39
R=something~0:43 R=sorry~0:80 R=south~39:106 R=speed~64:33 R=spring~0:24,86:-29,90:49
R=sprinkler~0:-27,31:28 R=sprinklers~0:-34,31:168,32:71 R=staff~0:73 R=stands~77:22,92:25
R=start~57:24 R=starts~0:-64,54:43,56:55,65:85 R=static~0:26,93:42 R=steers~0:-57,1:86 R=stock~1:39
R=stops~56:17 R=strawberries~0:21 R=stream~0:-18,86:39 R=string~0:-55,49:60 R=strings~49:63
R=sub~0:45,93:-37 R=sucks~95:33 R=suction~59:66,63:25,72:-44,75:107,86:35,89:-57 R=suggest~84:34
R=summer~0:-49,35:32,86:77 R=supply~0:-34 R=surface~0:69,51:-27,72:-20 R=switch~0:-7,52:35,56:26
R=takes~0:81,88:-45
R=tank~0:-31,22:44,23:-30,52:36,54:60,57:48,72:65,76:67,77:36,84:-35,86:-29,89:-40
R=tanks~0:49,18:57 R=tap~0:60,26:47 R=tape~12:36 R=teachers~84:28 R=tent~0:-31,28:26 R=tents~28:36
R=terrace~0:37,72:-38 R=th~48:51 R=than~86:-28,89:40,90:42 R=that~0:16,93:34
R=the~0:47,2:-51,8:41,12:14,23:-45,24:-41,28:-39,29:46,30:23,34:-33,39:-32,47:-45,48:40,49:-41,56:-66,61:-26,72:34,76:51,77:27,80:68,86:53,88:26,89:45,90:62,96:-43
R=them~3:48,29:51 R=then~56:22,89:-45,94:43 R=there~86:46 R=they~0:51,6:-29,10:43,31:22
R=three~30:-45,47:-33,84:36 R=through~0:23,89:-42 R=tilt~50:27 R=time~25:67,29:26,32:43
R=times~0:35 R=to~0:26,1:-35,26:56,48:37,76:37,89:32,90:27,91:47,92:-32 R=toddler~0:44,84:-28
R=together~0:-69,26:30,27:84,28:-44,29:107 R=toilet~28:37,30:28,33:116,84:-37
R=toilets~0:-48,28:47,30:51,33:179 R=too~0:50 R=top~80:33,90:-41,100:54 R=total~86:30,91:20
R=tote~77:33 R=tower~0:-50,77:58 R=town~0:51,70:34 R=trailer~0:45 R=trees~0:41,48:27
R=trough~0:-50,85:149 R=troughs~0:-64,1:29,84:-35,85:144 R=ts~0:49
R=two~6:25,28:-46,47:42,49:-66,72:-39,82:44,84:47 R=under~0:29,89:38,100:30 R=until~0:24
R=up~64:27,76:39,86:39,89:77,93:-41 R=uphill~0:-37,89:87 R=upstairs~0:61 R=us~76:24,84:125
R=use~0:-33 R=v~72:23 R=valve~73:57,74:82 R=vessel~0:-42,21:79,54:66 R=w~0:67,47:43 R=wait~0:68
R=was~0:24,89:37 R=wash~26:28,30:50 R=washer~0:-27,34:74 R=washers~34:74
R=washing~33:24,34:110,84:-38
R=water~14:39,23:71,28:18,33:-31,54:-34,76:-64,86:161,88:37,89:-45,90:-43,91:-29,93:72
R=waterers~0:-47,85:57 R=wc~33:68 R=wcs~0:-34,33:50 R=we~0:51,4:41,28:-55,39:89,89:-34
R=we'd~100:41 R=well~3:27,30:-36,60:15,72:-35,89:18,90:47,92:22,93:52 R=wellhead~0:-28 R=what~91:43
R=when~0:64,84:-13,86:-49,98:56 R=where~12:41,86:51 R=which~0:62,24:50 R=why~84:34 R=wide~0:53
R=winter~0:58,48:31,86:-36 R=wire~0:24,42:98,91:-64
R=with~5:70,28:30,72:78,84:45,85:47,86:-40,89:-32,92:32,93:56 R=without~0:-53,68:88 R=workers~84:23
R=works~0:30 R=workshop~0:-41,84:41 R=would~84:34 R=x~0:47 R=yard~0:33 R=year~0:72 R=years~0:29
R=yet~0:-20,64:34 R=yields~0:55 R=zones~0:-68,12:31,17:134,24:85,84:-37
R=|~0:-24,28:32,42:32,84:23,91:18,100:-52 angleC=latitude~39:32 angleC=lies~35:52
angleC=panel~50:45 angleC=panels~50:111 angleC=sun~35:52 angleC=tilt~50:61 angleC=tilted~50:37
angleC=w~50:56 angleL0=,~50:35 angleL0=at~39:32,50:48 angleL0=is~35:27 angleL0=latitude~39:32
angleL0=panels~50:42 angleL0=tilt~50:61 angleL0=tilted~50:37 angleL0=we~38:33 angleL1=the~35:69
angleL2=,~39:31,50:48 angleL2=4~35:46 angleL2=mm~35:45 angleM=cistern~0:49 angleM=pump~39:35
angleM=tank~39:37 angleR0=.~35:41,39:47,50:28 angleR0=n~38:69 angleR0=north~38:95
angleR0=south~39:60 angleR0=tilt~50:27 angleR1=7~0:49 angleR1=pump~38:58 angleT=power.facing~50:114
angleT=power.panel~50:85 angleT=power.series~50:50 angleT=power.source~50:127
angleT=water.kind~39:35 angleT=water.level~38:57 angleT=water.yield~39:37 angleT=way.climb~39:27
angleT=way.pipe~35:54 anglea=.~35:25,50:20 anglea=south_.~39:64 angleb=are_at~38:33
areaC=,~6:12,67:21 areaC=0~0:-47,67:42 areaC=garden~0:18,6:50 areaC=hello~0:39,6:-35
areaC=house~0:49,6:-35 areaC=off~67:39 areaC=rain~67:38 areaC=roof~6:-38,67:55 areaC=vines~6:28
areaL0=.~67:37 areaL0=:~6:40 areaL0=drip~6:39 areaL0=garden~0:47 areaL0=i~0:-41,6:59
areaL0=is~0:-32,6:29,67:38 areaL0=of~0:34 areaL0=orchard~6:33 areaL0=roof~67:28 areaL0=we~0:53
areaL1=,~0:66 areaL1=a~6:38 areaL1=by~67:35 areaL1=garden~0:-31,6:44 areaL1=it~0:-32,6:36
areaL1=mm~0:25,6:-24 areaL1=my~0:44,6:-35 areaL1=pump~0:31 areaL1=roof~67:46 areaL1=the~0:-14,67:47
areaL2=,~67:54 areaL2=.~6:-38,67:50 areaL2=1~6:42 areaL2=2~0:40 areaL2=4~0:61 areaL2=8~0:42,6:-20
areaL2=:~0:27 areaL2=ft~0:-28,6:36 areaL2=l~0:46 areaL2=m~0:40,6:-31 areaL2=pump~0:17
areaL2=two~0:31 areaM=cistern~67:36 areaM=creek~6:36 areaM=drip~0:42,6:125
areaM=pump~0:28,6:38,67:65 areaM=roof~6:-50,67:92 areaM=spring~0:48,6:-34 areaM=tank~67:24
areaM=well~0:49 areaR0=,~0:63,6:16 areaR0=.~0:30,6:62,67:30 areaR0=drip~6:81 areaR0=in~0:46
areaR0=of~6:58 areaR0=roof~67:44 areaR1=,~0:27 areaR1=.~0:-39,6:72 areaR1=0~0:52,6:-31
areaR1=3~0:-15,6:25 areaR1=5~0:61 areaR1=a~6:-28,67:47 areaR1=all~0:-37,6:37 areaR1=drip~0:28,6:27
areaR1=in~0:-33,6:35 areaR1=is~6:31 areaR1=it~0:-29,6:42 areaR1=lines~0:25 areaR1=on~0:-20,6:32
areaR1=pump~0:63 areaR1=the~67:28 areaR2=,~6:21 areaR2=.~0:52 areaR2=3~0:45 areaR2=4~0:55
areaR2=8~0:35 areaR2=long~0:34,6:-32 areaR2=m~0:83,67:-56 areaR2=rows~0:-29,6:34 areaR2=water~6:29
areaR2=zones~0:-34,6:39 areaT=beds.area~0:35,6:-36 areaT=power.battery~0:47 areaT=power.panel~6:36
areaT=power.source~0:31 areaT=pump.height~0:-36,6:50 areaT=pump.placement~6:39,67:23
areaT=pump.works~67:45 areaT=store.fills~0:-37,67:36 areaT=store.volume~0:56
areaT=water.kind~0:56,6:60,67:21 areaT=water.level~0:40 areaT=water.yield~6:14 areaT=way.climb~6:42
areaT=way.length~0:79 areaT=way.pipe~0:49,6:66 areaa=~6:64 areaa=.~0:16,6:33,67:30
areaa=of_vegetables~6:30 areaa=with_drip~0:45,6:-36 areab=~0:36,6:33 areab=roof_is~67:30
bareC=!~84:20 bareC=(~0:-57,84:26 bareC=,~4:19,33:36,39:-32,40:39,73:41,74:26,84:-5,86:34
bareC=0~1:55,30:-34,33:-32,49:44,73:37 bareC=1~0:45,2:-37,3:-51,30:81,73:29,85:42
bareC=2~0:19,28:-16,29:-45,33:11,74:34,84:-25,93:36
bareC=3~1:44,3:60,27:57,30:-28,32:72,49:41,85:-32,86:45 bareC=4~40:64,47:33,73:33,84:-68
bareC=5~1:-42,41:34,57:21,73:46,74:29 bareC=6~5:33,33:30,89:41 bareC=7~0:-33,31:24
bareC=8~0:26,3:50,84:-87 bareC=9~5:42 bareC=:~26:40,49:57,85:40 bareC=acre~25:20 bareC=adults~0:65
bareC=after~0:25 bareC=agist~0:44 bareC=agritourism~0:38 bareC=all~0:34,49:35,84:-44
bareC=also~84:-47 bareC=am~0:37 bareC=array~0:-35 bareC=back~0:29 bareC=bar~0:-45,57:122
bareC=barn~0:-50,1:50,85:50 bareC=basins~33:32 bareC=bathrooms~0:-36,30:38 bareC=batteries~0:26
bareC=bed~0:43 bareC=beef~0:19,1:-40 bareC=between~0:44 bareC=blok~0:39 bareC=but~28:43
bareC=cabin~0:-28,84:66 bareC=cabins~0:38,28:-47,84:39 bareC=call~0:39 bareC=calves~0:-30,1:49
bareC=cattle~85:59 bareC=chalet~0:41 bareC=children~84:47 bareC=cistern~0:-39
bareC=come~31:32,84:-32 bareC=comes~0:59 bareC=cottage~0:-30,84:34 bareC=couple~31:28
bareC=cows~0:-29,1:76,3:28,4:35,5:45,84:-36 bareC=cut~56:32 bareC=dairy~2:37 bareC=day~0:-85,84:59
bareC=dear~92:37 bareC=deep~60:37,86:32 bareC=dn~92:38 bareC=do~84:-33 bareC=drinkers~89:43
bareC=drip~0:-33,24:55,25:33,26:53 bareC=dry~66:59 bareC=each~0:61,28:-25 bareC=eight~29:34
bareC=eighty~0:-42 bareC=eleven~0:-55 bareC=every~0:66 bareC=ewes~1:45 bareC=family~0:-46,84:67
bareC=farm~0:46 bareC=feet~0:-69,73:46 bareC=first~0:31 bareC=five~34:21 bareC=foot~0:-58,73:34
bareC=four~25:33 bareC=from~84:-56 bareC=ft~74:39 bareC=gal~0:30 bareC=girls~0:24
bareC=goats~0:-40,3:61,4:80 bareC=good~41:41 bareC=gpm~0:-43 bareC=grid~38:18 bareC=group~0:26
bareC=guesthouse~0:-47,28:34,84:45 bareC=guests~0:40 bareC=half~30:-25 bareC=hallo~0:26
bareC=hav~0:47 bareC=hello~0:36 bareC=helo~0:46 bareC=hens~0:-40,3:36,4:34 bareC=here~84:33
bareC=hi~0:83,1:-57 bareC=horse~0:-33 bareC=horses~0:-37,1:31,26:40,85:52
bareC=hose~0:-18,28:-44,32:48,84:26 bareC=hoses~0:-29,27:67,31:25 bareC=hour~65:36
bareC=house~30:32 bareC=household~0:-22,84:55 bareC=hp~0:41 bareC=hundred~84:65 bareC=if~0:38
bareC=it's~84:30 bareC=its~0:35 bareC=just~0:-7 bareC=l~84:20 bareC=last~0:32
bareC=latitude~0:-54,38:94,39:81 bareC=laundry~34:42 bareC=like~0:-38,30:65 bareC=line~0:15,73:33
bareC=live~0:-26,84:41 bareC=lodge~0:-28,28:26 bareC=long~40:32 bareC=longitude~40:52
bareC=look~0:35 bareC=m~60:62,73:33,93:48 bareC=machine~26:43 bareC=machines~34:46 bareC=me~1:48
bareC=milk~0:-29,1:36,2:67 bareC=min~0:33 bareC=mm~73:45,74:33 bareC=months~66:60
bareC=mother~84:39 bareC=mppt~41:41 bareC=much~28:43 bareC=n~0:-39 bareC=night~0:30
bareC=off~38:14,57:34 bareC=one~0:17,28:27,30:13,33:46,48:45,84:-38 bareC=only~32:57,84:27
bareC=or~0:40 bareC=outside~0:-32 bareC=over~28:34 bareC=panel~0:30
bareC=panels~0:35,47:71,49:107,84:-37 bareC=pe~73:31 bareC=people~0:-14,3:38,4:43,5:47,84:46
bareC=pipe~0:61,74:36 bareC=plot~0:46 bareC=plus~0:-36,4:34 bareC=poly~0:-65 bareC=power~49:49
bareC=pressure~0:57,84:-27 bareC=psi~0:51 bareC=pump~28:33,47:-53,60:57,65:65,93:18 bareC=put~85:35
bareC=question~0:31 bareC=quick~0:29 bareC=right~0:-47 bareC=roof~84:28 bareC=run~0:42,27:38
bareC=runs~0:43 bareC=s~0:-29,40:33 bareC=school~84:34 bareC=series~49:36 bareC=shade~0:28
bareC=sheep~3:64 bareC=shower~0:-19,30:60,33:43,34:41
bareC=showers~0:-61,1:-35,28:76,29:56,30:61,33:44,34:72 bareC=sink~0:-56,28:51,30:-31,33:22
bareC=sinks~0:-50,28:37,30:35,33:9,34:27 bareC=sir~0:32 bareC=sirs~92:38 bareC=sit~0:46
bareC=six~0:-45 bareC=smal~0:85,28:-40 bareC=so~84:69 bareC=solar~0:42 bareC=sorry~84:44
bareC=sprinklers~0:-47,31:37,32:66 bareC=stable~0:-27 bareC=staff~0:-30,84:70 bareC=stands~0:-34
bareC=starts~65:55 bareC=static~100:80 bareC=stock~0:-38 bareC=stops~57:48 bareC=strings~47:40
bareC=submersible~93:38 bareC=suction~73:81,74:48 bareC=surface~0:-47 bareC=switch~0:38
bareC=tank~0:-12,84:-32,85:37 bareC=teenage~0:25 bareC=tent~0:46
bareC=there~0:-64,18:39,29:29,30:66,33:22,74:38,84:-44,85:38 bareC=third~0:-30 bareC=thirty~1:26
bareC=three~0:36,30:-40 bareC=together~84:39 bareC=toilet~0:-41,33:77
bareC=toilets~0:-62,26:39,30:38,33:37,34:70 bareC=took~28:33 bareC=total~0:-51,31:69
bareC=troughs~0:-26,85:91 bareC=two~27:63 bareC=up~84:44 bareC=us~0:-41,4:23,28:49 bareC=use~26:53
bareC=uses~0:36 bareC=v~41:40 bareC=valve~0:-60,73:34 bareC=volt~84:24 bareC=w~0:-29,47:95,49:43
bareC=want~32:46 bareC=wants~29:41 bareC=was~0:43 bareC=wash~33:30 bareC=washing~26:45,34:42
bareC=water~0:-16,5:23,84:-24,86:70 bareC=wc~0:55 bareC=we're~84:18
bareC=well~0:32,84:-24,92:35,93:29 bareC=which~29:48 bareC=will~29:28 bareC=yard~0:-35,1:30
bareC=zones~25:57 bareL0=(~84:51
bareL0=,~0:-10,1:54,4:42,30:25,33:36,34:43,38:39,40:46,74:26,86:40,93:42
bareL0=.~3:31,18:58,28:38,31:-47,84:52,85:45 bareL0=0~1:46,26:-33 bareL0=1~0:-24,4:-31,30:62
bareL0=2~26:50 bareL0=3~0:41,3:19 bareL0=4~3:69,28:31,34:-37,40:45 bareL0=5~0:43,84:-42
bareL0=6~0:26 bareL0=8~0:20,84:-30 bareL0=:~0:-79,1:33,3:25,28:35,30:26,49:43,84:26
bareL0=?~0:-27,84:58 bareL0=a~85:52 bareL0=about~3:51 bareL0=adults~0:37 bareL0=all~84:-34
bareL0=also~3:43 bareL0=and~1:23,4:56,26:35,27:51,29:-38,41:35,57:10,73:22,84:-94
bareL0=are~66:27,84:66 bareL0=at~0:31,57:45,60:59,84:-30,86:51 bareL0=bathrooms~0:48
bareL0=beef~0:58,1:-36 bareL0=between~0:35 bareL0=cattle~0:41 bareL0=climb~0:-44,89:42
bareL0=come~31:32 bareL0=cows~0:-50,5:60,84:-28 bareL0=cut~56:32,57:48 bareL0=dairy~2:59
bareL0=day~0:-58,84:31 bareL0=dry~66:31 bareL0=each~28:-24 bareL0=family~0:-29,28:-24,84:104
bareL0=foot~0:-47,73:35 bareL0=for~0:21 bareL0=four~0:-67,3:56 bareL0=ft~0:59 bareL0=garden~84:25
bareL0=goats~3:59,4:23 bareL0=gpm~0:-29 bareL0=grid~38:18 bareL0=has~0:-41,28:19,30:51
bareL0=have~0:-29,3:34,28:27 bareL0=head~0:-35 bareL0=hello~84:20 bareL0=hens~0:-42,3:42,4:39
bareL0=higher~0:-38 bareL0=horses~0:-10,85:26 bareL0=hose~0:-43,26:42,84:32
bareL0=hoses~0:-25,31:42 bareL0=house~28:55 bareL0=household~0:-28,84:84 bareL0=i~0:29,84:-34
bareL0=if~0:33 bareL0=in~0:-27,17:38,28:-39,33:45,41:38,49:71,56:28,84:-50
bareL0=is~0:60,74:46,84:-23 bareL0=it~0:29,56:23 bareL0=it's~84:25 bareL0=keep~2:37,4:40
bareL0=kids~0:49 bareL0=kitchen~0:68 bareL0=latitude~0:-54,38:94,39:81 bareL0=laundry~34:42
bareL0=live~84:43 bareL0=lodge~28:27 bareL0=long~40:32 bareL0=longitude~40:52 bareL0=m~89:40
bareL0=machines~34:50 bareL0=may~0:29 bareL0=maybe~0:36 bareL0=milk~2:49 bareL0=months~66:32
bareL0=my~47:21 bareL0=of~47:72,84:60 bareL0=off~38:17,57:37 bareL0=on~0:-39,31:42,56:47
bareL0=one~30:60,48:48 bareL0=only~32:56,84:26 bareL0=our~0:29 bareL0=out~57:48 bareL0=own~0:-33
bareL0=pairs~1:59 bareL0=panels~0:25 bareL0=people~33:-40,84:41 bareL0=pex~0:32,84:-33
bareL0=pipe~0:61 bareL0=plus~4:33 bareL0=poly~0:-56 bareL0=power~49:44 bareL0=pump~60:74
bareL0=question~0:83 bareL0=run~0:-28,27:42,32:28 bareL0=series~49:37 bareL0=seven~33:23
bareL0=sheep~3:32 bareL0=shower~0:-39,26:30,30:29,33:63 bareL0=showers~28:118,84:-54
bareL0=sink~28:33,30:-19,33:44,84:-41 bareL0=sinks~30:70 bareL0=so~0:-49,84:34 bareL0=solar~0:55
bareL0=sorry~84:43 bareL0=sprinklers~0:47 bareL0=static~100:88 bareL0=stock~5:45
bareL0=stops~0:-59,57:47 bareL0=strings~47:53 bareL0=summer~84:41 bareL0=tank~5:33 bareL0=that~0:40
bareL0=the~28:30 bareL0=there~0:-49,18:42 bareL0=there's~28:44 bareL0=three~0:54,28:-34
bareL0=time~29:36 bareL0=to~0:81,4:-29,28:-56 bareL0=toilet~33:48
bareL0=toilets~0:-34,30:10,33:88,34:41 bareL0=trough~1:53 bareL0=troughs~0:-37,85:63
bareL0=two~1:48,47:31 bareL0=us~0:-30,4:32,28:27 bareL0=v~28:42,30:-31,41:40 bareL0=valve~73:35
bareL0=w~0:-23,47:38 bareL0=want~32:52 bareL0=wants~29:41 bareL0=was~0:37 bareL0=washing~34:51
bareL0=water~0:-41,5:36,86:82 bareL0=we~0:-38,84:64 bareL0=we're~84:16
bareL0=well~0:-33,30:32,92:37,93:42 bareL0=when~0:52 bareL0=which~29:35 bareL0=with~28:22
bareL0=yard~1:33 bareL0=zones~25:38 bareL0=|~0:44,1:16,30:-35,84:65 bareL1=!~0:-32,84:22
bareL1=(~3:48,84:-42 bareL1=)~0:41 bareL1=,~1:-51,30:19,31:-28,33:-27,34:58,49:39,74:31,84:30,85:33
bareL1=.~3:-23,27:46,31:40,33:47,40:61,56:37,57:26,66:55,84:-32
bareL1=0~0:-37,4:-54,17:70,26:43,28:-11,31:33,86:51 bareL1=1~57:33,84:52,93:36
bareL1=2~0:-25,17:37,93:42 bareL1=3~3:-43,27:42,40:49,86:56 bareL1=4~1:47,3:-41,40:21
bareL1=5~1:-15,41:33,57:20 bareL1=6~60:43,85:-36 bareL1=8~28:-47,84:19 bareL1=9~3:-39,5:41
bareL1=:~1:-49,26:37,33:69 bareL1=;~0:35 bareL1=a~0:7,30:-53,73:47 bareL1=about~0:83,85:39
bareL1=above~84:37 bareL1=adults~0:36,28:49,33:-20 bareL1=ah~3:35 bareL1=and~0:-30,84:35,85:45
bareL1=are~5:42 bareL1=at~3:-31,29:40,30:-13,33:42,85:66,93:48,100:49 bareL1=back~0:36
bareL1=bar~57:43,84:-19 bareL1=basins~0:40 bareL1=battery~0:-38 bareL1=both~0:-38
bareL1=but~28:48,32:64 bareL1=cabin~0:103,84:-37 bareL1=cattle~0:-39,85:28 bareL1=count~0:-25,84:31
bareL1=cows~3:48 bareL1=dear~92:37 bareL1=deep~60:37 bareL1=down~0:-45,28:29 bareL1=drinkers~89:43
bareL1=drip~24:48 bareL1=drops~31:33 bareL1=each~84:49 bareL1=end~84:29 bareL1=family~28:27,84:-33
bareL1=feet~24:62,84:-57,85:34 bareL1=fifty~0:-35,28:30 bareL1=for~41:38 bareL1=four~0:37,25:34
bareL1=from~0:44,3:47 bareL1=ft~84:22,85:-34 bareL1=gallon~5:30 bareL1=generator~84:31
bareL1=ground~49:49 bareL1=guests~0:38 bareL1=half~0:36 bareL1=has~0:38 bareL1=have~0:23,28:-52
bareL1=head~0:55,84:-33 bareL1=hello~47:23 bareL1=higher~0:39 bareL1=home~0:-38 bareL1=hour~65:36
bareL1=house~3:37,30:22,84:-30 bareL1=how~84:25 bareL1=i~0:-32
bareL1=in~0:-47,1:22,3:-42,28:14,84:15 bareL1=inch~0:-50 bareL1=inside~33:38
bareL1=is~0:-42,33:31,84:65 bareL1=it~26:31 bareL1=kids~28:47 bareL1=kitchen~0:-62,84:37
bareL1=l~1:33 bareL1=latitude~40:52 bareL1=lodge~0:27 bareL1=m~0:-58,28:35,85:-45 bareL1=many~84:34
bareL1=meter~0:20 bareL1=meters~84:-41 bareL1=milk~0:-23 bareL1=no~84:33 bareL1=of~0:-43,73:33
bareL1=on~0:56,28:-29 bareL1=our~84:40 bareL1=over~28:29 bareL1=panels~0:-16,30:46,49:25
bareL1=parallel~28:36,30:-25 bareL1=pe~47:30 bareL1=persons~28:22,33:57 bareL1=pipe~0:-32,47:25
bareL1=please~0:38 bareL1=plus~0:-19 bareL1=poly~0:65,1:44,84:-40 bareL1=power~0:33,84:-35
bareL1=pump~0:20 bareL1=same~0:-30,29:40 bareL1=shower~30:25
bareL1=showers~28:-25,29:45,30:44,33:70 bareL1=sink~0:-36,84:12
bareL1=sinks~0:-32,26:28,33:19,34:43 bareL1=sirs~92:38 bareL1=so~0:11 bareL1=sprinklers~31:52
bareL1=stable~5:30 bareL1=staff~84:40 bareL1=stock~1:49 bareL1=strings~0:-29,84:25
bareL1=submersible~0:24,84:-37 bareL1=the~0:-59,1:-33,18:35,31:31,48:44,56:45
bareL1=there~1:54,29:35 bareL1=time~33:33 bareL1=together~3:39 bareL1=toilet~30:39
bareL1=toilets~26:54,30:39,33:-46 bareL1=top~1:36 bareL1=two~4:27,34:-46,84:52 bareL1=under~0:48
bareL1=up~84:-39 bareL1=use~29:40 bareL1=v~0:-29 bareL1=w~49:29 bareL1=wc~0:33 bareL1=we~28:30
bareL1=we've~0:-26 bareL1=well~85:57 bareL1=when~30:-31,31:32,84:45 bareL1=with~3:30
bareL1=|~28:33,30:37,33:36,49:-36,85:33 bareL2=(~0:-38 bareL2=)~28:-31,34:46
bareL2=,~0:-33,1:45,24:-53,26:20,29:24,30:33,31:69,33:32,55:-36,74:30,85:34,93:-42,100:67
bareL2=.~0:-29,1:-21,17:37,24:48,29:59,30:48,31:42,32:-64,34:54,38:-39,39:55,65:57,84:46,93:40
bareL2=0~2:-39,3:41,18:31,47:-22,85:59 bareL2=1~0:-40,1:39,2:-30,26:43,34:12,47:-20,55:44,73:22
bareL2=2~1:-28,24:58,28:23,30:-26,31:41,33:66 bareL2=3~26:-73,27:59,30:47,49:38,84:21
bareL2=4~0:-31,27:60,47:35,49:47,66:39 bareL2=5~17:-38,84:26,85:22 bareL2=6~17:59,28:51
bareL2=7~31:44,84:27 bareL2=8~85:28 bareL2=9~84:35 bareL2=:~1:-40,28:26,49:37
bareL2=above~0:-43,25:59,84:45 bareL2=across~0:36 bareL2=adults~33:34 bareL2=ah~41:40
bareL2=air~0:-29 bareL2=already~0:33 bareL2=animals~0:-29,85:41 bareL2=away~0:63,33:-34
bareL2=back~0:32 bareL2=bar~28:-56,56:36,84:37 bareL2=barn~0:-50,3:55 bareL2=bathrooms~0:-37
bareL2=baths~0:47,84:-27 bareL2=booster~0:53 bareL2=borehole~60:65 bareL2=buried~29:39
bareL2=but~0:-38 bareL2=buy~0:30 bareL2=by~0:-19,66:32 bareL2=cabin~0:-38,30:43 bareL2=comes~0:39
bareL2=copper~0:-28 bareL2=counted~0:35,28:-26 bareL2=couple~0:23 bareL2=cut~0:-41 bareL2=dear~0:25
bareL2=depth~0:-33 bareL2=do~29:38 bareL2=don't~31:32 bareL2=down~27:60,28:-45 bareL2=drip~25:37
bareL2=drop~0:35 bareL2=each~84:28 bareL2=eco~0:42 bareL2=every~29:37 bareL2=family~84:-37
bareL2=fill~84:43 bareL2=fills~0:-34,84:31 bareL2=five~0:-46,3:34,34:33 bareL2=float~0:-31,1:49
bareL2=four~33:37,84:27 bareL2=from~0:36 bareL2=ft~4:32,30:35 bareL2=full~0:20
bareL2=gal~33:-25,34:33,84:38 bareL2=gauge~0:51 bareL2=generator~0:-41 bareL2=gives~84:30
bareL2=goats~4:51 bareL2=goes~0:59 bareL2=got~0:96,84:-68 bareL2=gpm~0:-56 bareL2=grid~84:-39,85:47
bareL2=grown~0:41 bareL2=hav~0:39 bareL2=hdpe~0:-24 bareL2=head~85:70 bareL2=hello~31:26
bareL2=helo~0:55 bareL2=high~0:-43 bareL2=higher~0:-58 bareL2=holds~0:38 bareL2=home~84:20
bareL2=horses~3:62 bareL2=hose~0:-68,26:23,74:44 bareL2=hoses~3:39 bareL2=hot~0:25
bareL2=hour~84:23 bareL2=house~84:75 bareL2=how~0:-36 bareL2=hundred~0:54 bareL2=i'd~84:55
bareL2=inch~29:35,30:59 bareL2=inside~0:-34 bareL2=irrigate~0:54 bareL2=it's~0:39,30:-49
bareL2=jet~0:22 bareL2=just~0:37 bareL2=kids~0:28 bareL2=km~0:-29
bareL2=l~0:-77,3:32,26:23,56:39,65:44 bareL2=lawn~32:68 bareL2=left~0:32 bareL2=level~84:-34
bareL2=line~0:23,73:34 bareL2=liters~0:35 bareL2=litre~0:-54,84:50 bareL2=litres~56:23,85:39
bareL2=live~0:-37 bareL2=lying~0:56 bareL2=m~0:-49,4:36,5:-33,24:15,27:53,34:34,49:-38
bareL2=mains~28:28 bareL2=makes~0:-18 bareL2=many~0:-58,56:24 bareL2=may~0:-33,84:43
bareL2=maybe~0:-52 bareL2=me~0:48 bareL2=meter~0:110,1:-26 bareL2=meters~0:59 bareL2=metres~84:40
bareL2=min~0:-42,30:18 bareL2=mm~24:46 bareL2=moment~0:50 bareL2=morning~0:-34 bareL2=moved~0:20
bareL2=mppt~41:40 bareL2=need~0:23 bareL2=north~0:-50,48:52 bareL2=nothing~0:-35,28:-1
bareL2=one~84:45 bareL2=opening~0:47 bareL2=out~0:-27,84:33 bareL2=outlets~29:42 bareL2=over~0:50
bareL2=panels~0:-58,28:32,49:38 bareL2=pe~0:-62,29:59 bareL2=people~28:57,30:-22,33:42
bareL2=per~28:-35 bareL2=persons~28:-31,33:46 bareL2=phase~0:-33 bareL2=pipe~18:30
bareL2=plastic~0:31 bareL2=poly~26:38 bareL2=pond~0:40 bareL2=pressure~84:10 bareL2=promised~0:36
bareL2=psi~30:9 bareL2=pump~0:24,1:-40,28:22,32:57,34:52,49:-39,74:61,84:-27,85:-48,93:14,100:52
bareL2=push~0:-39,28:39 bareL2=pvc~0:-26,26:57 bareL2=quarter~0:-36,25:22 bareL2=rain~66:32
bareL2=read~0:31 bareL2=reference~0:29 bareL2=roof~66:37 bareL2=runs~84:35 bareL2=s~84:38
bareL2=says~0:-39 bareL2=season~84:30 bareL2=series~0:-39,84:52 bareL2=set~0:35 bareL2=shed~0:-45
bareL2=should~84:-28 bareL2=shower~4:48,84:50 bareL2=showers~28:-60,29:20,30:15,33:33,34:88
bareL2=sink~84:28 bareL2=sinks~84:40 bareL2=sir~0:44 bareL2=six~29:29 bareL2=smal~0:56
bareL2=sorry~0:58 bareL2=speed~0:56 bareL2=sprinklers~0:-39,32:116
bareL2=starts~30:-35,34:-41,56:23,57:40,65:35 bareL2=stop~0:25,84:-28 bareL2=stops~34:-38,56:24
bareL2=sub~0:33 bareL2=submersible~93:40 bareL2=suction~73:54,74:32 bareL2=switch~84:21
bareL2=switches~57:40 bareL2=tank~0:-29,2:44,3:-28,4:55,33:35,84:49 bareL2=team~0:35,84:-42
bareL2=there~1:-44,33:28 bareL2=think~0:-25 bareL2=three~29:-58 bareL2=times~0:-30,65:36
bareL2=toilet~0:37 bareL2=toilets~0:35,26:24 bareL2=top~5:36 bareL2=trough~0:43 bareL2=troughs~3:28
bareL2=up~0:55,1:-34,34:44 bareL2=uses~0:-47 bareL2=usually~30:47 bareL2=v~0:65,33:28,84:-35
bareL2=volt~0:-52,84:28 bareL2=volts~85:54 bareL2=volume~0:41 bareL2=w~0:-67,1:27,3:33,28:25
bareL2=want~0:-45,1:48 bareL2=water~0:51,27:56,30:-45,60:51,74:65 bareL2=way~28:40
bareL2=we're~3:38 bareL2=we've~0:31 bareL2=well~93:15 bareL2=when~0:109,30:-39,34:-40
bareL2=which~0:-38,1:35,29:37 bareL2=who~0:-29,33:33 bareL2=wife~0:-24 bareL2=will~0:-42
bareL2=would~0:-29,4:38,28:39 bareL2=x~28:17 bareL2=yard~0:-24,85:40 bareL2=yes~0:23
bareL2=yield~84:48 bareL2=you~29:41 bareL2=yurt~0:-58 bareL2=|~0:35,3:36,26:53,33:43
bareM=cistern~0:27,1:-50,3:-60,30:45,66:63,84:20 bareM=creek~3:33,85:22
bareM=drip~0:77,3:37,16:45,17:139,24:105,25:101,28:-17,30:-43,33:-42,47:-38
bareM=pump~2:32,5:52,17:54,26:29,28:30,29:22,30:55,31:4,32:50,40:-37,55:42,65:30,74:52,84:24,85:37,93:42
bareM=roof~66:110 bareM=spring~0:48,3:52,5:36,18:67,30:17,31:-29,47:44,84:38
bareM=tank~1:53,4:12,17:-83,24:29,28:49,31:-29,33:57,34:25,38:-39,47:12,55:10,65:13,66:47
bareM=well~0:19,1:41,4:58,5:14,29:20,56:24,60:-37,93:39 bareR0=(~0:-47,84:46 bareR0=)~0:103
bareR0=,~0:-49,3:10,26:31,28:77,29:-30,30:33,33:66,73:44
bareR0=.~0:-83,3:34,5:-44,17:17,28:15,29:-56,30:20,34:26,38:33,40:26,57:59,84:30,93:55
bareR0=0~0:51,31:24 bareR0=1~33:73,34:-31 bareR0=2~0:79,1:-34,34:40,84:-23
bareR0=3~0:41,28:38,89:41 bareR0=4~47:33,84:44,86:49 bareR0=5~0:50 bareR0=6~0:48,3:46
bareR0=7~92:38 bareR0=:~0:39,1:23 bareR0=?~0:37 bareR0=a~25:54,28:34,41:39 bareR0=about~3:39
bareR0=adults~0:38,84:49 bareR0=all~85:29 bareR0=an~65:55
bareR0=and~3:22,24:53,28:35,29:33,30:25,56:29 bareR0=are~0:36
bareR0=at~0:-32,25:123,27:28,29:57,32:75 bareR0=automatic~85:33 bareR0=basin~30:69
bareR0=basins~28:-27,30:181,33:-27,84:-28 bareR0=bathroom~0:100,28:-38
bareR0=bathrooms~28:65,84:-44 bareR0=baths~0:32 bareR0=beef~1:64 bareR0=bends~73:69
bareR0=bibs~26:41 bareR0=borehole~84:32 bareR0=boys~0:50 bareR0=break~18:60 bareR0=bulls~1:59
bareR0=cabins~28:56 bareR0=calf~0:-28,5:65 bareR0=calves~5:72 bareR0=campers~0:-29,84:58
bareR0=cattle~1:98 bareR0=chickens~0:-40,4:141,84:-36 bareR0=cow~0:-40,5:64
bareR0=cows~0:-36,1:91,2:157,3:-36,5:65,84:-53 bareR0=cut~56:31 bareR0=dairy~2:55 bareR0=drink~1:47
bareR0=drinkers~0:-45,85:154 bareR0=drip~24:44 bareR0=dripper~0:-29,16:51 bareR0=drippers~0:30
bareR0=dry~0:-46,1:113,66:73 bareR0=each~28:44 bareR0=elbows~73:64 bareR0=ewes~3:139,84:-34
bareR0=five~0:35,84:-33 bareR0=float~0:-27,85:97 bareR0=floats~0:-36,85:64 bareR0=flush~33:36
bareR0=foot~0:-38,74:96 bareR0=for~0:-45,26:79,85:44 bareR0=from~0:-29 bareR0=garden~26:43
bareR0=goats~0:-53,3:221,84:-35 bareR0=golf~0:27 bareR0=guest~0:41 bareR0=guests~84:103
bareR0=have~2:23 bareR0=head~1:86 bareR0=heifers~1:109 bareR0=hens~0:-53,1:-25,3:-33,4:241,84:-32
bareR0=here~84:50 bareR0=horses~0:-18,1:219,84:-23 bareR0=hose~0:-61,26:221,27:75,28:-33,30:-24
bareR0=hoses~0:-62,26:187,27:68 bareR0=hour~0:-42,65:108 bareR0=house~0:-47,84:36
bareR0=households~0:25 bareR0=houses~0:64 bareR0=identical~0:-33,55:103
bareR0=in~0:-96,2:33,3:44,47:57,66:42,84:80 bareR0=is~0:48 bareR0=it~0:61 bareR0=joined~0:43
bareR0=kids~0:66 bareR0=kitchen~0:43 bareR0=laying~4:35 bareR0=line~0:39 bareR0=live~84:53
bareR0=machine~34:87 bareR0=machines~28:34,34:77 bareR0=may~29:43 bareR0=me~84:41
bareR0=milk~0:-25,2:143 bareR0=milking~2:38 bareR0=months~66:75 bareR0=n~0:-60,38:112
bareR0=now~0:-71,28:54,84:20 bareR0=o'clock~0:45 bareR0=of~29:35,47:32,49:58,84:43
bareR0=once~0:-53,27:51,29:63 bareR0=one~84:46 bareR0=ones~1:39 bareR0=open~29:74 bareR0=or~29:47
bareR0=out~41:41,56:28 bareR0=outside~26:38 bareR0=paddocks~85:44 bareR0=pairs~0:-58,5:121
bareR0=panels~0:54,47:63,84:-29 bareR0=parallel~49:43 bareR0=people~28:-41,30:-33,84:198
bareR0=per~16:51,28:-41,65:51 bareR0=person~0:-34,84:126 bareR0=persons~0:-24,28:-19,84:173
bareR0=phase~0:53 bareR0=pieces~0:-58,31:27 bareR0=pigs~0:46 bareR0=plus~84:25 bareR0=poly~0:30
bareR0=pressure~0:-50,18:106 bareR0=pumps~55:95 bareR0=pupils~0:-35,84:82 bareR0=rooms~28:30
bareR0=run~29:52 bareR0=series~47:45 bareR0=sheep~0:-31,3:150,84:-35
bareR0=shower~0:-21,28:233,29:56,30:-27,84:-43 bareR0=showers~0:-27,28:274,29:134,30:-20,84:2
bareR0=side~55:52 bareR0=sink~0:-45,30:267,33:-86 bareR0=sinks~0:-18,30:223,33:-16,84:-30
bareR0=so~0:49 bareR0=sorry~0:36 bareR0=south~39:49 bareR0=spring~0:32 bareR0=sprinkler~0:-24,31:28
bareR0=sprinklers~0:-25,31:183,32:75 bareR0=staff~0:37 bareR0=starts~0:-31,65:86
bareR0=steers~0:-37,1:91 bareR0=stock~1:45 bareR0=string~0:-37,49:61 bareR0=strings~0:-39,49:79
bareR0=tanks~18:58 bareR0=tap~0:-26,26:48 bareR0=tents~28:36 bareR0=th~48:51
bareR0=the~0:29,1:-42,29:35,30:30,73:43 bareR0=them~0:-51 bareR0=then~56:24 bareR0=there~84:34
bareR0=three~49:31 bareR0=time~25:39 bareR0=times~0:46 bareR0=together~0:-28,27:60,29:64
bareR0=toilet~0:-43,33:172 bareR0=toilets~0:-73,33:252,84:-38 bareR0=trees~0:48
bareR0=trough~85:129 bareR0=troughs~0:-51,1:-35,85:192 bareR0=ts~0:49 bareR0=two~0:40,49:-51,84:36
bareR0=us~0:-7,84:152 bareR0=valve~0:-52,74:96 bareR0=was~0:34 bareR0=wash~0:-35,30:72
bareR0=washer~0:-29,30:-21,34:78 bareR0=washers~34:78 bareR0=washing~0:-18,30:-43,34:141
bareR0=waterers~0:-36,85:57 bareR0=wc~0:-36,33:82 bareR0=wcs~33:58 bareR0=we~4:50
bareR0=well~0:51,30:-29 bareR0=what~0:-36 bareR0=with~0:-32,1:-42,5:87,85:93 bareR0=x~0:33
bareR0=young~1:46 bareR0=zones~0:-79,17:137,24:87,84:-36 bareR0=|~34:60,84:59 bareR1=(~28:26,30:-20
bareR1=)~30:50 bareR1=,~55:65,84:28,85:40
bareR1=.~0:-63,1:35,2:-50,4:34,5:38,25:26,29:51,33:42,56:55 bareR1=0~1:30,30:-34,47:50,84:55,92:34
bareR1=1~0:-33,2:31,26:-60,30:32,47:22,60:48 bareR1=2~0:10,1:27,30:-46,31:22,34:33,92:35
bareR1=3~17:65,28:-55,30:-20,56:53,66:44 bareR1=4~33:48,84:-39 bareR1=5~0:-48,2:20,3:49,5:56,31:31
bareR1=6~0:37,1:-40,39:38 bareR1=7~84:-38 bareR1=8~0:-46 bareR1=9~2:57 bareR1=:~34:38
bareR1=?~0:-44,28:63,84:32 bareR1=a~0:36,1:27,30:52 bareR1=about~84:34 bareR1=all~0:37
bareR1=and~0:21,5:28 bareR1=are~30:25 bareR1=at~0:-34,4:-30,5:41,24:33,27:46,84:46
bareR1=automatic~0:-26,1:37 bareR1=bar~0:-25,56:32 bareR1=basin~33:41
bareR1=basins~0:-25,28:49,30:-44,33:45 bareR1=bathrooms~0:-34,84:41 bareR1=before~29:39
bareR1=bore~3:43 bareR1=both~0:-35,26:35 bareR1=bulls~5:64 bareR1=but~30:49
bareR1=chickens~0:-39,84:32 bareR1=children~0:45,84:-37 bareR1=cistern~66:38
bareR1=cows~0:-60,2:16,3:55 bareR1=day~0:43 bareR1=do~84:36 bareR1=dog~0:-16,84:17
bareR1=drinkers~1:46 bareR1=drip~0:-23,16:51 bareR1=dry~2:75 bareR1=each~0:-32,28:30,85:23
bareR1=ewes~0:-39 bareR1=fine~28:42 bareR1=floats~85:29 bareR1=foot~0:-43,5:56,73:68 bareR1=ft~0:44
bareR1=full~84:42 bareR1=gives~0:41 bareR1=goats~3:-38,84:41 bareR1=going~29:44 bareR1=grid~84:23
bareR1=guest~84:41 bareR1=guests~0:47,84:-21 bareR1=h~0:25 bareR1=had~4:31 bareR1=have~0:-61
bareR1=hens~0:-27,1:52,3:29 bareR1=here~89:43 bareR1=horses~0:69,1:-69,4:40 bareR1=hose~0:-29,29:49
bareR1=hours~0:23 bareR1=house~0:37 bareR1=i~24:26 bareR1=in~47:50,55:39,84:-28
bareR1=is~0:-55,100:64 bareR1=it~0:19,28:33 bareR1=its~28:25 bareR1=kids~3:34,84:-33
bareR1=kitchen~30:-58 bareR1=level~0:-35 bareR1=litres~84:36 bareR1=live~89:43 bareR1=loo~28:38
bareR1=lower~0:32 bareR1=m~31:28 bareR1=machine~33:31 bareR1=mains~26:36 bareR1=mm~84:27
bareR1=my~0:-34 bareR1=no~1:-32,27:40,85:66 bareR1=not~31:42 bareR1=of~0:38,5:32
bareR1=on~0:-18,1:30,16:50 bareR1=once~29:22 bareR1=one~85:27 bareR1=open~0:-31,31:26
bareR1=other~0:-32,30:33 bareR1=outhouse~28:28,30:64,33:-44 bareR1=own~0:-21,28:31
bareR1=panels~47:42 bareR1=parallel~55:59 bareR1=pasture~0:-37,1:26 bareR1=persons~0:26
bareR1=pipe~5:46 bareR1=place~0:34 bareR1=please~0:34 bareR1=plot~0:36 bareR1=power~30:21
bareR1=pressure~0:50 bareR1=pump~0:-54,27:64,30:-33,32:44 bareR1=rain~0:77 bareR1=run~24:39,29:52
bareR1=same~32:20 bareR1=says~65:34 bareR1=sheep~1:35 bareR1=should~29:35
bareR1=shower~28:-24,30:75,84:40 bareR1=showers~28:-60,30:33,33:36,34:42,84:55 bareR1=side~55:52
bareR1=sink~28:62,30:-128,33:42,84:27 bareR1=sinks~0:38,28:16,30:-65,33:70 bareR1=spring~0:-92,3:34
bareR1=sprinklers~26:59 bareR1=staff~0:36 bareR1=tent~28:26 bareR1=the~0:-48,4:18,16:44,26:17
bareR1=they~31:23 bareR1=three~0:72 bareR1=time~25:28,29:28,32:47 bareR1=toddler~0:42,84:-28
bareR1=together~0:-36,26:15,29:43 bareR1=toilet~28:33,30:34,33:-55
bareR1=toilets~28:49,30:52,33:-72,84:26 bareR1=trough~0:-47,85:21 bareR1=troughs~1:64,85:-48
bareR1=two~24:46 bareR1=valve~73:73 bareR1=w~0:10,47:44 bareR1=want~0:-33
bareR1=washer~28:-42,30:58 bareR1=washing~33:38 bareR1=water~4:40 bareR1=we~30:29
bareR1=well~0:-61,3:35 bareR1=what~0:25 bareR1=when~0:58,84:-31 bareR1=would~84:34
bareR1=yields~0:38 bareR1=|~30:44 bareR2=(~26:29,30:25,33:-31 bareR2=)~0:78,26:45,30:-25
bareR2=,~1:-43,2:46,4:-34,26:36,29:18,30:-66,33:-41,47:33,49:56,60:46,65:23,84:28,85:-47
bareR2=.~1:6,5:52,16:40,18:34,27:86,29:-32,30:9,32:42,34:33,56:48,84:15
bareR2=0~40:40,47:21,84:42,85:26 bareR2=1~0:-17,1:-45,3:62,31:56,33:27,49:56
bareR2=2~0:29,1:-23,28:-10,55:42,84:75 bareR2=3~0:52,30:36,31:32,84:-30
bareR2=4~1:-43,28:31,33:-23,47:30,55:52,73:43,85:36 bareR2=5~5:48,27:49,32:55,33:-58,84:21
bareR2=6~0:-20,5:21 bareR2=9~18:38,84:-25 bareR2=:~0:57,28:-38,30:72,33:-29,85:-31 bareR2=;~85:74
bareR2=?~1:39,66:43 bareR2=above~0:-36 bareR2=all~84:-30 bareR2=already~89:42 bareR2=as~0:32
bareR2=bar~0:-38,56:48 bareR2=barn~1:24 bareR2=basin~28:31 bareR2=below~3:22 bareR2=booster~0:36
bareR2=bore~0:42 bareR2=borehole~1:37 bareR2=bucket~0:61,84:-33 bareR2=by~0:-23 bareR2=comes~0:63
bareR2=day~0:-70,84:91 bareR2=do~0:-25 bareR2=each~3:28,47:18,55:37 bareR2=evening~0:14
bareR2=existing~5:31 bareR2=family~0:-36,30:28 bareR2=five~30:53 bareR2=float~0:-31
bareR2=four~0:-51 bareR2=from~0:32,84:-55 bareR2=ft~0:27,4:29,84:-20 bareR2=garden~0:21
bareR2=gives~0:-40,85:36 bareR2=goats~0:-35,2:37,84:47 bareR2=gpm~0:-49 bareR2=h~31:31
bareR2=heifers~0:-34,2:34 bareR2=hens~0:-73,3:30,84:48 bareR2=horses~5:42 bareR2=hose~0:-66
bareR2=hoses~0:-28 bareR2=house~0:25,84:-38 bareR2=how~84:39 bareR2=if~0:-42 bareR2=inch~0:27
bareR2=kind~0:53 bareR2=kitchen~0:-21,28:61 bareR2=lake~0:25 bareR2=last~0:-49
bareR2=line~0:-54,16:51,25:44 bareR2=litre~0:24,84:-32 bareR2=litres~84:57 bareR2=low~33:42
bareR2=m~3:5,40:45,84:42,92:36 bareR2=machine~33:54 bareR2=machines~33:33
bareR2=mains~0:43,30:25,84:-25 bareR2=mm~0:-53 bareR2=no~30:34 bareR2=none~1:49
bareR2=one~28:18,47:42 bareR2=ones~0:-33,2:49 bareR2=only~29:60 bareR2=other~0:38
bareR2=outside~33:29 bareR2=over~0:25 bareR2=panels~26:41 bareR2=parallel~49:71
bareR2=people~28:61,84:-27 bareR2=per~84:30 bareR2=plus~1:29 bareR2=power~0:-38,30:-34,33:75
bareR2=pressure~17:62,28:18,34:45 bareR2=pump~0:47,4:-38,84:16 bareR2=rise~1:30
bareR2=run~26:27,84:-62 bareR2=same~0:-55,29:46,31:67 bareR2=see~28:30 bareR2=series~0:-47,47:110
bareR2=seven~0:-31,30:29 bareR2=shower~56:23 bareR2=showers~30:54 bareR2=since~0:75
bareR2=sink~28:19 bareR2=sinks~28:40,84:35 bareR2=six~0:31 bareR2=so~0:37,84:-22 bareR2=solar~0:34
bareR2=string~47:43 bareR2=strings~0:25 bareR2=tank~1:-35,33:-33,84:-33,93:37 bareR2=tap~28:34
bareR2=then~0:49 bareR2=there's~0:-48 bareR2=they~0:-34 bareR2=think~0:40 bareR2=three~0:68
bareR2=tilted~47:36 bareR2=time~0:-49,24:102,28:-24,29:28,31:35 bareR2=toilet~0:23,26:27
bareR2=toilets~0:47,29:65,84:63 bareR2=total~0:23 bareR2=trough~0:-22,3:54 bareR2=two~47:-36
bareR2=under~0:-26 bareR2=until~28:41 bareR2=up~0:25 bareR2=use~0:33 bareR2=used~0:43
bareR2=w~47:35 bareR2=was~4:33,84:-37 bareR2=washer~28:36 bareR2=washing~0:-40,33:38
bareR2=water~2:38,3:22,28:-45,92:36 bareR2=week~0:-26,84:49 bareR2=well~0:-20,1:32,5:54
bareR2=what~0:89,28:-27,84:-29 bareR2=when~26:64 bareR2=which~0:-78,33:41 bareR2=will~33:59
bareR2=without~0:-28 bareR2=would~30:36 bareR2=wrong~0:31 bareR2=|~0:1,4:34,28:37,29:28,84:-59
bareT=beds.area~0:-47,3:28,4:41,17:111,24:116,25:104,28:-36,85:-43 bareT=power.amps~49:33
bareT=power.battery~30:-2,41:34,84:20 bareT=power.cable~0:49,47:79,49:42,84:-60
bareT=power.capacity~30:22,41:34,84:41 bareT=power.controller~0:-46,41:37,49:49
bareT=power.facing~47:86,84:42 bareT=power.limit~41:39,49:46
bareT=power.open_voltage~0:36,3:-56,47:52,49:36 bareT=power.panel~4:44,47:146,49:102
bareT=power.series~47:-167,49:96,84:34,85:37 bareT=power.shade~47:22
bareT=power.source~0:20,1:29,5:37,39:47,47:55,49:56,74:-41,84:-22,85:35
bareT=power.strings~0:54,1:47,47:76,49:-86 bareT=power.tilt~39:34,41:37,47:31
bareT=power.voltage~3:-42,26:31,30:96,38:56,49:62
bareT=pump.control~1:-36,3:-33,26:68,34:59,55:106,65:58 bareT=pump.count~0:52,65:46
bareT=pump.cut_in~0:43,3:-31,30:-38,34:31,57:99,65:49
bareT=pump.cut_out~3:-33,56:41,57:-43,65:48,84:44 bareT=pump.dry_lift~0:28 bareT=pump.dry_run~84:46
bareT=pump.height~1:16,4:-33,47:68,49:37,85:39,86:57,93:49,100:68 bareT=pump.most_flow~0:-66
bareT=pump.placement~0:21,1:27,2:42,3:-17,4:-25,5:40,17:-53,31:20,32:45,34:26,49:39,73:38,74:46,84:-26,86:39,93:24
bareT=pump.present~0:-40,18:54,26:14,27:32,30:31,33:37,84:-31,85:18 bareT=pump.set~0:53,27:62,28:18
bareT=pump.starts~55:41 bareT=pump.works~0:-37,84:65,92:36 bareT=store.days~0:-54,1:48,3:18
bareT=store.fills~33:22,66:29 bareT=store.hours~0:34,84:-46
bareT=store.volume~1:-42,3:-44,29:52,30:23,32:44,34:29,55:32,65:38,66:48,84:29
bareT=tank.level~0:44,17:-50,24:40,29:24,47:54
bareT=tank.volume~0:-36,3:19,17:-51,39:49,47:41,84:47
bareT=water.kind~1:76,2:54,3:88,4:49,5:24,17:40,26:66,27:56,29:50,34:58,47:45,74:29,84:41,85:57
bareT=water.level~1:-58,3:60,4:29,56:-26,73:61,74:91 bareT=water.temperature~18:46
bareT=water.yield~0:26,2:86,3:14,17:77,18:43,27:-48,30:33,31:-27,33:71,84:56,85:42
bareT=way.climb~1:35,2:28,4:45,5:11,18:40,28:35,31:23,32:81,33:40,47:-46,60:46,85:21
bareT=way.length~1:42,2:30,3:31,4:48,5:26,24:47,25:43,26:13,27:33,29:20,30:21,31:28,32:54,55:22,56:-28,74:-46,85:75
bareT=way.pipe~1:31,2:41,3:19,5:69,18:33,24:71,25:46,26:30,29:26,31:45,33:-37,47:-37,56:-32,84:10,85:35
bareT=well.bore~0:16,93:42 bareT=well.depth~3:36,4:55,28:17,31:-32,60:85,84:81,86:30
bareT=well.static~0:37,31:32 bareT=well.tested~33:-24 barea=~0:-29,33:37,38:46 barea=,_cut~56:32
barea=,_sinks~28:28,30:-38,33:29 barea=,_toilets~28:66,30:33,33:-87 barea=,_washing~28:27,34:-45
barea=.~57:17,93:31 barea=._one~84:34 barea=adults_.~0:-28,84:60 barea=adults_and~0:66,84:-46
barea=at_a~25:40 barea=at_the~0:31 barea=automatic_drinkers~85:25 barea=basins_,~0:43,30:58,33:-41
barea=basins_.~30:45 barea=bathrooms_with~28:49 barea=beef_cows~1:36 barea=bends_,~73:58
barea=boys_.~0:39 barea=break_pressure~18:60 barea=chickens_.~4:46 barea=cow_calf~0:-28,5:65
barea=cows_and~2:24 barea=cows_in~2:35 barea=cows_with~5:72 barea=dairy_cows~2:55
barea=dry_months~66:75 barea=dry_ones~1:39 barea=elbows_.~73:31 barea=ewes_.~3:49
barea=float_valve~85:39 barea=flush_toilets~33:36 barea=foot_valve~0:-33,74:98
barea=goats_,~0:-21,3:59 barea=goats_.~3:41 barea=goats_and~3:57 barea=guests_at~84:42
barea=head_of~1:48 barea=heifers_,~1:40 barea=hens_,~0:-24,4:55 barea=hens_.~4:28
barea=hens_and~4:57 barea=horses_,~0:-23,1:66 barea=horses_.~0:45,1:23 barea=horses_and~1:67
barea=hose_,~26:85 barea=hose_.~26:79 barea=hose_bibs~26:41 barea=hose_for~26:46
barea=hoses_,~26:54 barea=hoses_at~27:53 barea=houses_,~0:48 barea=identical_pumps~55:43
barea=in_series~47:22 barea=in_the~0:-58,84:92 barea=kids_and~84:28 barea=kitchen_sink~0:27,30:29
barea=laying_hens~4:35 barea=milking_cows~2:46 barea=n_.~0:-31,38:76 barea=of_them~3:31
barea=of_us~0:-3,84:152 barea=panels_,~0:33 barea=panels_of~47:54 barea=people_,~0:-23,84:104
barea=people_.~84:85 barea=people_and~84:43 barea=people_in~0:-30,84:39 barea=people_|~0:-35,84:40
barea=person_,~0:-23,84:34 barea=persons_,~0:-24,84:80 barea=persons_.~84:63 barea=rooms_,~28:32
barea=sheep_.~3:53 barea=sheep_and~3:50 barea=shower_,~0:-53,28:151,33:-36
barea=shower_.~0:-37,28:82 barea=shower_1~28:102,30:-39 barea=shower_and~0:-58,28:33,29:63
barea=shower_per~0:50 barea=showers_(~28:58 barea=showers_,~0:-44,28:192,84:-38
barea=showers_.~0:-61,28:160,84:-42 barea=showers_and~28:76 barea=showers_at~0:-34,29:52
barea=showers_run~29:45 barea=sink_,~0:-27,30:102 barea=sink_.~0:-29,30:83 barea=sink_1~30:44
barea=sink_and~30:54 barea=sinks_,~28:-41,30:104,33:-44 barea=sinks_.~30:62 barea=sinks_and~30:51
barea=south_.~39:49 barea=sprinklers_at~32:23 barea=starts_an~65:56 barea=starts_per~65:35
barea=strings_of~0:-38,49:49 barea=toilet_,~0:-22,28:-40,30:-27,33:117 barea=toilet_.~33:76
barea=toilets_,~0:-22,28:-31,30:-30,33:148 barea=toilets_.~33:108 barea=toilets_and~33:46
barea=troughs_,~85:45 barea=troughs_.~85:39 barea=wash_basins~30:58 barea=washer_.~34:58
barea=washing_machine~33:-28,34:115 barea=washing_machines~34:106 barea=wc_,~33:47
barea=wcs_,~33:37 barea=with_the~84:61 barea=zones_,~17:32 barea=zones_.~0:-38,17:70
bareb=~0:63,16:50 bareb=,_and~0:62 bareb=,_in~85:37 bareb=,_longitude~40:52 bareb=,_plus~1:30
bareb=,_so~84:50 bareb=,_toilets~30:-33,33:84 bareb=,_with~0:-40 bareb=._also~1:29
bareb=._it's~0:68 bareb=._latitude~39:51 bareb=._question~0:43 bareb=._showers~28:82,33:-57
bareb=._we're~84:42 bareb=._|~0:50 bareb=1_shower~34:36 bareb=1_sink~0:-32,30:41
bareb=2_showers~30:43 bareb=?_|~29:39 bareb=bar_.~0:-26 bareb=between_the~0:33 bareb=cows_,~4:38
bareb=cut_in~56:32 bareb=drip_,~0:47 bareb=each_,~0:-32 bareb=family_of~0:-29,28:-25,84:104
bareb=ft_,~0:-48 bareb=ft_.~0:49 bareb=hens_and~0:-25,3:47 bareb=horses_.~85:27 bareb=hose_,~84:41
bareb=household_of~0:-34,84:55 bareb=i_have~31:27 bareb=just_the~0:-34,28:34 bareb=machine_.~84:33
bareb=no_.~0:32 bareb=of_which~29:37 bareb=pairs_and~1:41 bareb=panels_:~0:45
bareb=people_,~28:54,84:-32 bareb=people_:~28:-55,84:130 bareb=pipe_,~0:29 bareb=pump_.~30:32
bareb=pump_at~60:34 bareb=sheep_:~3:66 bareb=shower_,~26:43,33:79 bareb=shower_and~0:-17,30:38
bareb=showers_,~26:40,28:-84,33:47,34:53 bareb=showers_:~28:118,33:-40 bareb=showers_and~33:58
bareb=sink_,~30:-38 bareb=sink_.~0:47,84:-29 bareb=sinks_,~30:-25,33:34 bareb=sinks_:~30:78,33:-25
bareb=strings_of~47:42 bareb=tank_.~0:-32,5:35,33:32 bareb=there_are~0:17,24:50,28:60,84:-32
bareb=there_is~0:-53 bareb=to_water~5:35 bareb=toilet_,~30:51,33:-38
bareb=toilets_,~30:71,33:-76,34:33 bareb=toilets_and~30:25 bareb=troughs_:~85:54 bareb=up_to~84:27
bareb=valve_and~73:36 bareb=w_,~47:40 bareb=washing_machine~34:37 bareb=water_at~0:-25,86:49
bareb=we_are~0:-43,84:101 bareb=we_have~0:-31,28:28 bareb=we_keep~4:33 bareb=we_milk~2:24
chargeC=,~43:43 chargeC=1~0:20 chargeC=2~0:19 chargeC=4~43:37 chargeC=:~43:20
chargeC=battery~0:24,43:33 chargeC=v~0:18 chargeL0=2~0:29 chargeL0=a~43:23 chargeL0=and~0:37
chargeL0=battery~43:32 chargeL0=is~43:27 chargeL0=v~0:26 chargeL1=1~0:28 chargeL1=battery~0:32
chargeL1=is~0:37 chargeL2=2~43:32 chargeM=pump~43:66 chargeR0=.~43:63 chargeR0=battery~43:42
chargeT=power.battery~43:82 chargeT=power.panel~43:58 chargeT=power.source~43:62
chargeT=power.voltage~43:80 chargeT=store.volume~43:34 chargeT=water.kind~43:37
chargeT=way.length~43:35 chargea=.~0:34 currentC=,~41:41 currentC=0~41:37 currentC=controller~41:41
currentC=mppt~41:32 currentL0=,~41:30 currentL1=0~41:43 currentL2=,~41:35 currentL2=0~41:18
currentM=pump~41:39 currentR0=.~41:40 currentR2=0~41:34 currentT=power.battery~41:67
currentT=power.cable~41:29 currentT=power.capacity~41:67 currentT=power.controller~41:70
currentT=power.facing~41:21 currentT=power.panel~41:40 currentT=power.series~41:38
currentT=power.source~41:48 currentT=power.voltage~41:44 currentT=pump.placement~41:32
dailyC=,~78:32 dailyC=2~0:59 dailyC=8~79:39 dailyC=:~0:32 dailyC=consumption~79:33 dailyC=cows~0:71
dailyC=drinks~78:14 dailyC=each~0:-34,78:-41,79:100 dailyC=garden~80:50 dailyC=need~78:35
dailyC=says~0:-37,78:53 dailyC=takes~80:32 dailyC=two~78:51 dailyC=use~0:-30,78:64
dailyC=uses~79:40 dailyC=water~0:24 dailyL0=,~78:50 dailyL0=.~78:33 dailyL0=:~0:34
dailyL0=about~78:50 dailyL0=drinks~78:14 dailyL0=each~79:52 dailyL0=is~78:34 dailyL0=need~78:35
dailyL0=people~79:40 dailyL0=says~0:-37,78:53 dailyL0=takes~80:32 dailyL0=the~78:45,80:32
dailyL0=use~78:82 dailyL0=uses~79:40 dailyL0=we~78:41 dailyL1=.~0:23,79:33 dailyL1=2~0:54
dailyL1=8~79:39 dailyL1=a~80:17 dailyL1=each~79:47 dailyL1=in~79:44,80:27 dailyL1=two~78:40
dailyL1=water~0:25 dailyL2=,~78:18 dailyL2=.~80:36 dailyL2=0~80:57 dailyL2=4~80:21 dailyL2=6~0:34
dailyL2=m~80:17 dailyL2=mm~0:46 dailyM=drip~0:25,80:47 dailyM=pump~78:50,80:43 dailyM=tank~80:27
dailyM=well~78:44 dailyR0=,~78:44 dailyR0=.~0:42,78:97,79:55 dailyR0=by~78:47 dailyR0=covers~0:27
dailyR0=each~0:67 dailyR0=for~78:29 dailyR0=house~78:26 dailyR0=in~80:20 dailyR0=is~0:24
dailyR0=it~0:43 dailyR0=meter~78:33 dailyR0=of~80:34 dailyR0=the~78:29,80:32 dailyR1=.~78:18,80:40
dailyR1=and~78:33 dailyR1=of~0:28 dailyR1=the~0:24 dailyR2=.~0:32 dailyR2=?~78:34
dailyT=beds.area~0:25,80:47 dailyT=power.source~0:35,78:36 dailyT=power.voltage~0:20
dailyT=pump.height~0:40 dailyT=store.fills~80:22 dailyT=store.reserve~80:44
dailyT=store.volume~80:50 dailyT=tank.level~0:53,78:-39 dailyT=tank.volume~78:-40,79:49
dailyT=water.kind~78:62,79:55,80:43 dailyT=water.level~78:38 dailyT=way.climb~0:-31,78:30,80:41
dailyT=way.length~80:37 dailyT=way.pipe~0:42 dailyT=well.depth~78:26 dailya=.~78:24,79:37
dailya=by_the~78:34 dailya=covers_it~0:27 dailya=each_.~0:67 dailya=in_the~80:23
dailyb=people_,~79:21 eachC=,~79:57 eachC=0~0:30 eachC=2~0:38 eachL0=,~79:52 eachL0=at~0:31
eachL0=we~79:46 eachL1=0~0:35 eachL1=2~0:38 eachL1=a~79:32 eachL1=for~0:34 eachL2=,~79:32
eachL2=.~79:39 eachM=pump~79:57 eachM=spring~79:47 eachM=tank~79:44 eachR0=.~79:88
eachT=power.source~79:36 eachT=tank.volume~79:32 eachT=water.kind~79:74 eachT=water.yield~79:44
eachT=way.climb~79:41 eachT=way.length~79:48 eachT=way.pipe~79:48 eacha=.~79:46 flowC=(~88:48
flowC=,~7:49,61:20,81:39 flowC=0~101:69,102:35 flowC=1~61:32 flowC=2~7:35,61:34,102:45
flowC=3~0:-47,101:73,102:56 flowC=4~0:19 flowC=5~8:29 flowC=6~102:34 flowC=8~88:49
flowC=9~0:-46,88:36 flowC=:~99:16,101:49,102:39 flowC=after~99:20 flowC=all~81:32 flowC=apart~7:32
flowC=as~88:-44 flowC=bar~8:34 flowC=bore~0:-28,88:30,102:43 flowC=borehole~0:32,88:70
flowC=box~0:44 flowC=cm~7:33 flowC=comes~101:29 flowC=concrete~70:34 flowC=diaphragm~61:23
flowC=drilled~88:44 flowC=driller~0:-34,88:41,102:29 flowC=drip~0:34,7:55 flowC=drippers~7:74
flowC=drips~0:16 flowC=each~0:28,88:-48 flowC=emitters~7:73 flowC=every~7:35 flowC=flow~8:29
flowC=from~0:12 flowC=ft~0:67 flowC=gives~88:69 flowC=he~102:32 flowC=its~0:35 flowC=l~88:47
flowC=level~102:51 flowC=litres~101:34 flowC=m~0:33,7:39,102:51 flowC=makes~88:44 flowC=meter~81:75
flowC=min~88:47 flowC=minutes~99:45,101:83 flowC=mm~0:38 flowC=night~81:32 flowC=out~0:34
flowC=pump~8:54,61:84,88:-38,99:32 flowC=pumped~88:-45,102:15 flowC=pumping~99:19 flowC=ran~99:29
flowC=rows~7:50 flowC=shower~0:55,88:-23 flowC=spring~88:29 flowC=sprinkler~0:59
flowC=stream~0:-37,88:55 flowC=tank~0:-49,70:113 flowC=test~99:32,102:33 flowC=then~101:66
flowC=took~101:34 flowC=volt~61:37 flowC=want~0:56,88:-29 flowC=water~88:36
flowC=well~0:-27,8:34,70:45,88:80 flowC=which~70:33 flowC=wrote~88:34 flowC=yield~88:74
flowL0=,~7:31,61:20 flowL0=.~7:33,88:64 flowL0=:~88:26,99:28 flowL0=a~88:70 flowL0=are~7:37
flowL0=at~0:-43,99:67,101:60,102:52 flowL0=bar~8:35 flowL0=bore~88:51 flowL0=borehole~88:46
flowL0=cm~7:33 flowL0=comes~101:29 flowL0=driller~0:-27,88:47 flowL0=drip~0:39 flowL0=drippers~7:56
flowL0=emitters~7:44 flowL0=flow~0:31,8:29 flowL0=ft~0:45 flowL0=gives~88:36 flowL0=he~102:33
flowL0=i~81:50 flowL0=is~70:16 flowL0=it~88:50 flowL0=m~0:72 flowL0=makes~88:38 flowL0=of~7:31
flowL0=out~0:38 flowL0=pump~8:59,61:56,88:-45 flowL0=pumped~88:-32,102:30 flowL0=pumping~99:22
flowL0=spring~88:6 flowL0=sprinkler~0:59 flowL0=tank~0:-16,70:43 flowL0=test~99:34
flowL0=tested~88:49 flowL0=the~0:20,70:100 flowL0=want~0:56,88:-28 flowL0=we~0:45,88:-9
flowL0=well~8:37,88:26 flowL0=which~70:34 flowL0=wrote~88:21 flowL0=yield~88:32 flowL1=,~0:46
flowL1=.~8:67,61:33,101:20 flowL1=0~0:-22,88:42 flowL1=1~0:-57,8:41,61:31 flowL1=2~61:28,88:27
flowL1=3~0:-29,102:22 flowL1=4~0:27 flowL1=5~8:29 flowL1=8~88:47 flowL1=9~88:23 flowL1=a~61:47
flowL1=and~0:-24,88:38 flowL1=at~0:-33,88:71 flowL1=borehole~102:40 flowL1=every~7:37
flowL1=ft~0:-28 flowL1=i~0:26 flowL1=is~61:21,88:20 flowL1=it~101:51 flowL1=l~101:29
flowL1=m~102:55 flowL1=pump~61:50,88:-19,99:39 flowL1=spring~88:35 flowL1=tank~70:50
flowL1=test~102:32 flowL1=that~88:38 flowL1=the~0:55,61:39,70:36,81:14 flowL1=to~70:15
flowL1=way~61:36 flowL1=well~0:24,70:21 flowL2=,~7:49,8:70,61:32,81:39,101:12 flowL2=.~7:28,8:35
flowL2=0~0:12,88:27,101:66 flowL2=1~88:30 flowL2=2~0:-31,7:47,88:57 flowL2=3~0:-28,88:53
flowL2=6~0:-53,101:49,102:45 flowL2=7~88:31 flowL2=:~88:-54,102:23 flowL2=all~81:32
flowL2=apart~7:42 flowL2=bore~102:31 flowL2=borehole~0:-23,61:27 flowL2=drip~7:38 flowL2=every~8:46
flowL2=feet~0:-25,88:52 flowL2=from~61:23 flowL2=ground~0:36,88:-33 flowL2=level~102:26
flowL2=litres~101:33 flowL2=m~7:27 flowL2=need~0:57 flowL2=night~81:32 flowL2=pe~0:33
flowL2=pond~0:41 flowL2=pressure~8:49 flowL2=pump~61:76 flowL2=rows~7:34 flowL2=run~0:-31,88:47
flowL2=spring~0:-37,88:56 flowL2=well~101:30,102:48 flowM=cistern~0:-30,70:23
flowM=drip~7:148,8:112,88:-41 flowM=pump~0:33,7:43,61:70,81:54,99:64,102:24 flowM=roof~61:43
flowM=spring~88:114 flowM=tank~61:54,70:123,88:36 flowM=well~0:18,88:24,101:75,102:32
flowR0=,~7:43,99:43 flowR0=.~0:17,7:31,61:29,70:35,81:56,88:78,101:48 flowR0=1~0:35 flowR0=2~99:32
flowR0=and~0:56,70:23,88:-43 flowR0=at~0:31,8:53,61:74,88:-53 flowR0=bar~0:39 flowR0=day~70:27
flowR0=each~7:54 flowR0=for~88:-50,99:78 flowR0=from~70:33 flowR0=in~0:77 flowR0=its~0:38
flowR0=level~0:-43,88:38 flowR0=night~0:-30,70:24 flowR0=pump~88:19 flowR0=set~61:48
flowR0=spring~88:18 flowR0=the~8:75,61:-39,88:48 flowR0=to~0:-45,88:38 flowR0=water~88:45
flowR0=we~0:40 flowR1=.~0:57,70:71 flowR1=0~88:37 flowR1=3~0:-23,102:46 flowR1=4~88:36
flowR1=6~88:-41,102:47 flowR1=8~0:35 flowR1=and~99:52 flowR1=can~8:40 flowR1=i~99:21 flowR1=in~0:51
flowR1=line~70:34 flowR1=m~88:32 flowR1=off~99:22 flowR1=pressure~61:42,81:52 flowR1=psi~61:50
flowR1=run~0:57 flowR1=spring~0:24,88:-33 flowR1=tank~0:49 flowR1=the~0:26 flowR2=,~88:27
flowR2=.~0:32,61:33,88:-45 flowR2=1~81:36 flowR2=5~88:66 flowR2=7~0:36,88:-28 flowR2=hours~8:47
flowR2=level~99:22 flowR2=minute~0:52,88:-51 flowR2=run~8:46 flowR2=well~0:30
flowT=beds.area~0:-54,7:103 flowT=power.battery~0:-32,61:50 flowT=power.capacity~61:56
flowT=power.panel~88:62 flowT=power.series~0:28 flowT=power.source~88:52 flowT=power.strings~0:24
flowT=power.voltage~0:-31,61:91 flowT=pump.control~81:52 flowT=pump.cut_in~81:30
flowT=pump.cut_out~81:34 flowT=pump.height~88:49,102:33 flowT=pump.placement~0:61,81:63,88:-38
flowT=pump.present~88:22 flowT=pump.set~81:51 flowT=pump.works~0:-44,61:71
flowT=store.reserve~70:72 flowT=store.volume~61:67,81:34,88:-26 flowT=tank.level~0:28
flowT=tank.volume~0:79 flowT=water.kind~0:-14,7:49,70:44,81:44,88:170,101:59,102:79
flowT=water.level~0:47,102:114 flowT=water.temperature~0:42 flowT=water.yield~0:129,7:54,88:-102
flowT=way.climb~88:63 flowT=way.length~0:55,61:44,88:42 flowT=way.pipe~61:52,88:51
flowT=well.bore~88:-61,99:46,101:63 flowT=well.cover~99:47 flowT=well.depth~99:56,102:10
flowT=well.drawn~101:60 flowT=well.drawn_for~101:60 flowT=well.pumped_for~99:113
flowT=well.pumping~88:-70,102:136 flowT=well.static~102:95 flowa=~88:32 flowa=,_water~88:31
flowa=.~0:68,70:30,102:72 flowa=._the~81:38 flowa=at_2~0:36 flowa=at_the~8:69 flowa=for_4~102:36
flowa=from_the~70:33 flowb=,_flow~8:34 flowb=bore_gives~88:35 flowb=drip_,~7:20
flowb=he_pumped~102:41 flowb=m_at~0:47 flowb=pump_gives~0:30 flowb=yield_:~88:19
k=angle~35:57,38:111,39:29,50:96 k=area~0:100,6:247,67:63
k=bare~0:286,1:69,2:30,3:75,4:48,26:38,28:71,29:18,31:38,38:59,79:-42,84:72 k=charge~43:195
k=current~41:48 k=daily~0:83,78:171,79:81,80:45 k=each~79:133
k=flow~0:113,7:97,8:56,61:44,70:80,81:43,88:163,99:84,101:43,102:58
k=length~0:336,15:59,16:42,37:119,42:66,56:-29,58:57,72:-24,75:54,76:54,77:-24,78:-25,79:-28,84:-24,86:120,88:-28,89:66,90:51,91:188,92:82,93:49,96:37
k=pair~56:113 k=percent~0:55,48:103,62:57 k=power~0:149,46:135
k=pressure~0:140,10:41,12:90,13:33,19:38,20:57,36:43,52:116,53:40,56:78,57:70,64:104
k=temperature~21:74,35:56,87:110 k=time~0:185,9:36,68:135,69:28,83:75,95:59,97:50
k=voltage~0:98,44:46,45:48,51:191 k=volume~0:163,22:52,23:70,54:112,71:83,72:142,77:137,82:82,94:47
lengthC=(~93:28 lengthC=)~0:-28
lengthC=,~0:-21,15:59,16:62,59:40,60:20,75:48,86:-1,90:68,91:-59,93:52,100:30
lengthC=0~14:45,75:-46,76:33,86:-47,90:35,91:62,100:36 lengthC=1~96:44
lengthC=2~37:-29,90:-25,91:49,93:50,98:31 lengthC=3~0:35,76:27,92:-30,98:41,100:-36
lengthC=4~0:11,86:-36,89:32,96:56 lengthC=5~0:21,16:36,37:-41,91:48
lengthC=6~0:-55,11:36,60:10,86:-77,98:43 lengthC=7~89:57 lengthC=8~76:17,100:32
lengthC=9~86:-46,91:53,92:26,98:40 lengthC=:~76:50,86:19,89:62,91:-74,98:74,100:46
lengthC=?~0:-53,37:52,86:19 lengthC=above~37:40,89:-45,91:50 lengthC=afternoon~86:45
lengthC=all~76:28 lengthC=allotment~0:26 lengthC=altimeter~89:42 lengthC=altitude~37:87
lengthC=apart~11:43 lengthC=as~0:56 lengthC=away~90:33 lengthC=barn~90:46 lengthC=barrel~76:41
lengthC=before~100:32 lengthC=below~0:-38,86:56,91:39 lengthC=between~0:-39
lengthC=bore~0:-21,89:-37,92:22,93:67,100:38 lengthC=bore's~60:33 lengthC=bored~93:28
lengthC=borehole~0:-38,60:50,76:-26,86:84,89:-22,90:35,93:87 lengthC=bottom~0:-50,76:49,93:39
lengthC=box~86:32 lengthC=building~0:29 lengthC=buried~0:11 lengthC=by~90:31
lengthC=cabin~0:-45,37:45,89:41,91:35 lengthC=cable~42:143,91:-40 lengthC=came~100:58
lengthC=can~0:22,37:33 lengthC=captured~0:36 lengthC=cased~0:-37,92:49 lengthC=casing~0:-51,92:7
lengthC=cattle~91:46 lengthC=cellar~0:56 lengthC=climb~0:-21,89:79
lengthC=climbs~0:-32,89:105,91:-24 lengthC=cm~11:32 lengthC=copper~91:48 lengthC=could~0:60
lengthC=creek~86:50,89:-44,90:26 lengthC=deep~0:-41,86:45,92:50
lengthC=depth~0:32,60:62,86:-30,89:-32,93:46 lengthC=diameter~0:-57,58:85,92:52
lengthC=difference~89:32 lengthC=differences~90:29 lengthC=distance~15:36,91:59
lengthC=down~60:66,91:-20,98:30 lengthC=draws~75:81 lengthC=drilled~0:29,91:-45,93:42
lengthC=drip~11:85,15:57,16:30 lengthC=dripper~16:36 lengthC=drippers~16:116
lengthC=drop~76:47,89:-35,90:45,91:-58,96:79 lengthC=drops~0:18,89:-40,90:44
lengthC=drum~0:-31,76:58 lengthC=dry~59:43,86:37 lengthC=dug~93:40 lengthC=dynamic~86:43
lengthC=each~0:-19,11:57,16:48 lengthC=elevation~37:79,89:31 lengthC=emitters~16:31
lengthC=end~86:31 lengthC=ends~0:35 lengthC=et~0:-27,14:70 lengthC=every~16:43 lengthC=fall~90:39
lengthC=falls~76:22,89:-24,90:48,91:-36,98:20 lengthC=farthest~91:35 lengthC=feeds~76:-56
lengthC=feet~90:40 lengthC=field~0:38 lengthC=floor~0:-41,76:29,89:30
lengthC=from~42:44,60:-29,86:29,89:83,90:59,93:-76 lengthC=ft~60:-56,76:-45,89:46,93:89
lengthC=gallons~76:37 lengthC=garden~91:31 lengthC=generator~76:31 lengthC=goes~0:9,86:44
lengthC=good~0:-27 lengthC=got~0:55 lengthC=gph~16:47 lengthC=gpm~0:34,98:57
lengthC=greenhouse~0:56 lengthC=grid~0:35 lengthC=ground~0:-25,90:27 lengthC=h~16:50
lengthC=half~90:72 lengthC=hanging~0:36,86:-25 lengthC=hangs~60:40,92:32 lengthC=hav~0:52,76:-55
lengthC=he~0:36 lengthC=head~89:29 lengthC=height~89:53 lengthC=hey~0:66,86:-62
lengthC=hi~0:72,60:-30 lengthC=high~0:27 lengthC=higher~91:51 lengthC=highest~89:48
lengthC=hill~89:-48 lengthC=hole~93:40 lengthC=hose~75:45,91:37 lengthC=hour~86:29
lengthC=hours~98:46 lengthC=house~42:32,60:-58,86:-27,89:71,90:52,91:95,93:-50
lengthC=houses~0:-25,89:34 lengthC=hundred~89:31 lengthC=hung~96:67 lengthC=hut~37:47
lengthC=i've~0:56 lengthC=ibc~76:27 lengthC=intake~0:-37,75:68,90:37 lengthC=it's~91:38,93:36
lengthC=its~0:40,91:-57 lengthC=jet~91:34 lengthC=kitchen~0:-37,89:36,91:42 lengthC=km~0:31,90:46
lengthC=l~16:48,86:-26,98:36 lengthC=last~0:26 lengthC=length~91:37
lengthC=level~60:-24,86:63,93:-45,98:70,100:59 lengthC=lies~89:45
lengthC=lift~59:40,60:-27,75:-29,86:60,89:41 lengthC=lifts~89:28
lengthC=line~0:35,11:78,76:-1,86:-33,91:43 lengthC=lines~11:77 lengthC=litres~76:64
lengthC=little~89:-40,90:36 lengthC=log~93:32 lengthC=long~15:51 lengthC=lower~91:22
lengthC=lowered~60:53 lengthC=lowest~86:33 lengthC=m~37:-41,86:43,90:28,92:44,98:36,100:38
lengthC=main~91:38 lengthC=mains~0:37,42:45,91:-31 lengthC=maybe~0:41 lengthC=measured~0:44
lengthC=min~0:22 lengthC=mm~0:-35,76:-27,86:-27,89:43,90:41,91:42 lengthC=more~89:26
lengthC=mouth~89:-26,90:34 lengthC=must~89:41 lengthC=neighbour~0:42 lengthC=never~0:30
lengthC=next~91:54 lengthC=no~0:-31,86:39,91:43 lengthC=not~93:50 lengthC=npsh~63:53
lengthC=off~89:27 lengthC=okay~0:-38 lengthC=one~93:40 lengthC=only~93:34 lengthC=other~0:28
lengthC=ours~93:45 lengthC=out~0:-38,90:41 lengthC=outside~58:53 lengthC=panels~0:33,42:33,91:-35
lengthC=paper~0:32 lengthC=pipe~0:60,75:55,76:-32,86:-26,91:60,93:-50,96:68 lengthC=pit~93:-28
lengthC=place~37:30 lengthC=platform~76:41 lengthC=plot~0:40 lengthC=poly~89:38 lengthC=pond~0:51
lengthC=power~0:30,91:-32 lengthC=pulls~86:47
lengthC=pump~0:-19,58:35,59:49,60:147,63:36,75:52,86:82,90:-31,93:-39,96:54,100:-29
lengthC=pump's~60:38 lengthC=pumphouse~86:48 lengthC=pumping~86:28,98:28 lengthC=push~0:29,86:-34
lengthC=pushes~76:45 lengthC=put~76:55 lengthC=quit~0:41 lengthC=raised~76:25
lengthC=required~63:40 lengthC=reservoir~0:-27,76:85,89:-38 lengthC=rest~86:-13,100:89
lengthC=rings~0:-31,92:30 lengthC=rise~89:93 lengthC=rises~89:60 lengthC=river~0:33
lengthC=road~0:69,91:-26 lengthC=roof~89:49 lengthC=rows~0:-27,15:131
lengthC=run~42:32,86:-38,91:70 lengthC=s~98:34 lengthC=sawback~37:22 lengthC=say~0:31,93:-37
lengthC=says~0:43,93:29 lengthC=sch~0:49 lengthC=schedule~91:22 lengthC=season~86:46
lengthC=set~60:70 lengthC=shower~0:48,89:45 lengthC=sits~0:-37,60:36,86:27,91:23
lengthC=solar~86:-42 lengthC=sorry~0:-44,86:18 lengthC=source~0:30,93:-37 lengthC=spacing~16:25
lengthC=spring~0:-33,76:-42,90:50,91:47 lengthC=stand~76:32 lengthC=standing~100:63
lengthC=stands~0:-59,86:42 lengthC=static~0:-39,86:62,89:-26,93:-33,100:105 lengthC=stream~86:33
lengthC=sub~60:45 lengthC=submersible~58:12,60:118,91:-49 lengthC=suction~75:149,86:71,89:-24
lengthC=summer~37:45 lengthC=swl~86:39,100:58 lengthC=take~90:49
lengthC=tank~0:49,76:132,86:-25,89:-49,91:81,93:-26 lengthC=tap~89:60 lengthC=taps~0:53
lengthC=tent~89:53 lengthC=than~91:36 lengthC=then~0:44,86:-39 lengthC=they~0:-29,86:18
lengthC=thing~0:-34 lengthC=through~75:51 lengthC=toddler~0:69 lengthC=told~76:25 lengthC=top~89:28
lengthC=tote~0:51 lengthC=tower~76:54 lengthC=towr~0:55,76:-52 lengthC=trench~0:67
lengthC=trough~0:-37,89:47,90:31 lengthC=troughs~91:41 lengthC=two~91:26 lengthC=under~86:42
lengthC=up~0:43,76:46,89:31,91:47,93:-33 lengthC=uphill~89:55 lengthC=us~0:42 lengthC=use~86:-35
lengthC=village~0:-25,76:29 lengthC=was~60:34,91:-52 lengthC=water~0:-44,86:138,93:-61,98:23,100:70
lengthC=water's~86:37 lengthC=waters~86:42 lengthC=way~91:35 lengthC=we've~93:40
lengthC=well~0:51,76:-29,86:20,91:-41,92:77,93:77,98:32 lengthC=wellhead~89:28
lengthC=when~86:-35,98:39 lengthC=wire~42:91,91:-59 lengthC=within~86:32 lengthC=wrote~0:41
lengthC=x~0:45 lengthC=yards~90:29 lengthC=zones~11:62
lengthL0=,~15:65,16:54,37:-7,76:-28,89:43,91:39,100:-34
lengthL0=.~0:-50,16:28,63:64,76:-39,91:13,93:22 lengthL0=0~14:50,76:40,89:-23,91:33
lengthL0=1~93:42 lengthL0=2~0:32,86:-31 lengthL0=3~76:39,89:-26,91:24 lengthL0=4~0:43
lengthL0=5~0:28 lengthL0=:~76:49,89:39,93:28 lengthL0=;~89:50 lengthL0=?~0:-50,86:67
lengthL0=a~0:-61,42:26,76:55,86:-27,89:48,92:40,93:58 lengthL0=all~0:60 lengthL0=altimeter~89:42
lengthL0=altitude~37:81 lengthL0=and~86:-18,89:42,91:16 lengthL0=are~11:46,37:26
lengthL0=at~37:102,60:143,75:-29,86:76,89:-60,90:-35,91:-44,93:-78 lengthL0=away~89:17
lengthL0=barn~0:-39,91:31 lengthL0=between~15:30 lengthL0=bore~0:35,93:66
lengthL0=borehole~86:-27,89:-36,93:70 lengthL0=bottom~89:28 lengthL0=box~86:32 lengthL0=buried~0:58
lengthL0=by~90:57 lengthL0=cabin~0:-34,37:24,86:-26,89:45,91:49 lengthL0=cable~42:48
lengthL0=can~0:28 lengthL0=cased~0:-30,92:49 lengthL0=casing~0:-34,92:7 lengthL0=cellar~0:61
lengthL0=climb~89:65 lengthL0=climbs~0:-27,89:82,91:-24 lengthL0=copper~91:25 lengthL0=creek~90:43
lengthL0=deep~92:26 lengthL0=depth~93:62 lengthL0=diameter~0:-32,58:85 lengthL0=distance~91:37
lengthL0=down~60:29,86:36,98:36 lengthL0=drilled~0:29 lengthL0=drip~11:36,15:19
lengthL0=dripper~16:14 lengthL0=drippers~16:72 lengthL0=drop~90:27,91:-37
lengthL0=drops~0:30,89:-40,90:45 lengthL0=drum~0:-31,76:59 lengthL0=dry~59:43 lengthL0=dug~93:32
lengthL0=dynamic~86:28 lengthL0=each~11:51,16:37 lengthL0=elevation~37:79 lengthL0=emitters~16:28
lengthL0=ends~0:35 lengthL0=et~0:-27,14:70 lengthL0=every~16:65 lengthL0=falls~76:23,90:47,98:26
lengthL0=far~0:28 lengthL0=farthest~91:35 lengthL0=feet~93:35 lengthL0=field~0:53
lengthL0=floor~0:-43,76:30 lengthL0=from~60:25,86:35 lengthL0=ft~89:29,90:-36,100:33
lengthL0=gallons~76:49 lengthL0=garden~91:35 lengthL0=goes~86:36,93:30 lengthL0=gpm~0:31
lengthL0=grid~0:30 lengthL0=ground~90:34 lengthL0=h~0:40,16:27 lengthL0=hangs~60:45
lengthL0=has~96:25 lengthL0=he~0:-35 lengthL0=head~0:34,89:30 lengthL0=height~0:-40,89:18
lengthL0=highest~89:44 lengthL0=hill~0:-26 lengthL0=hole~93:28 lengthL0=hose~75:44
lengthL0=house~0:49,42:-28,60:-25,76:26,86:-28,89:66,90:66,91:49,93:-19 lengthL0=hp~60:52
lengthL0=hung~96:51 lengthL0=hut~37:36 lengthL0=i~0:-30,91:69
lengthL0=in~60:-44,86:49,89:-33,92:46,93:35 lengthL0=inch~0:-40 lengthL0=intake~75:68,90:38
lengthL0=is~0:22,14:47,37:-33,42:29,76:36,89:31,92:54,93:32
lengthL0=it~0:62,60:33,86:37,89:-35,98:53 lengthL0=it's~91:53 lengthL0=l~76:45 lengthL0=last~0:47
lengthL0=length~91:41 lengthL0=level~60:-20,86:28,89:-32,93:-40,98:76,100:65 lengthL0=lies~89:46
lengthL0=lift~0:32,59:39,60:-25,75:-34,86:48,89:25 lengthL0=line~0:21,11:88,75:31,76:-26,86:-25
lengthL0=lines~11:95 lengthL0=litres~76:33 lengthL0=lowered~60:42 lengthL0=lowest~86:44
lengthL0=m~0:23,86:-44 lengthL0=mains~0:53 lengthL0=maybe~0:28 lengthL0=mm~0:-36,90:36,91:63
lengthL0=more~89:27 lengthL0=my~90:28 lengthL0=no~91:50 lengthL0=now~86:27 lengthL0=npsh~63:52
lengthL0=of~0:64 lengthL0=on~15:22,76:19,89:-30,96:70 lengthL0=our~0:40
lengthL0=ours~0:-42,86:25,93:43 lengthL0=outside~58:53 lengthL0=pipe~75:65,91:42
lengthL0=poly~91:42 lengthL0=pond~0:36 lengthL0=pump~42:63,60:105,76:-29,86:36,89:-48,92:-35,93:-18
lengthL0=pumping~98:35 lengthL0=push~0:23,86:-29 lengthL0=rest~100:72 lengthL0=rise~89:89
lengthL0=rises~89:70 lengthL0=rows~15:153,16:-31 lengthL0=run~42:36,91:12 lengthL0=sawback~37:22
lengthL0=says~93:36 lengthL0=season~86:39 lengthL0=set~60:60 lengthL0=shed~0:22
lengthL0=shower~89:42 lengthL0=small~37:30 lengthL0=some~89:26 lengthL0=sorry~0:-29,86:25
lengthL0=spacing~16:35 lengthL0=spring~90:48 lengthL0=stand~76:36 lengthL0=standing~100:63
lengthL0=stands~0:-37 lengthL0=static~0:-17,86:59,100:78 lengthL0=sub~60:42
lengthL0=submersible~60:80 lengthL0=sucks~75:40 lengthL0=suction~75:95,86:32,89:-28
lengthL0=summer~37:31 lengthL0=surface~0:26 lengthL0=swl~86:40,100:63 lengthL0=tank~76:60,89:-34
lengthL0=tap~89:54 lengthL0=that~76:48 lengthL0=the~42:33,76:47,91:27,96:27,100:-33
lengthL0=there~89:25 lengthL0=through~75:68 lengthL0=to~86:79,91:11,92:-31,98:51
lengthL0=told~76:26 lengthL0=tote~0:38 lengthL0=tower~0:-29,76:54,91:46
lengthL0=up~76:66,86:-27,89:30 lengthL0=uphill~89:54 lengthL0=was~0:27
lengthL0=water~0:39,60:-63,86:103,89:-31,100:85 lengthL0=water's~86:39 lengthL0=way~91:36
lengthL0=we~37:25,90:28,91:-42 lengthL0=well~93:68 lengthL0=with~0:34,86:67,91:-43
lengthL0=within~86:32 lengthL0=x~0:48 lengthL0=yurt~0:41 lengthL0=|~90:49 lengthL1=(~0:-37,91:37
lengthL1=)~0:-22 lengthL1=,~11:74,37:-40,59:50,76:50,100:40 lengthL1=.~14:41,60:47,98:-26
lengthL1=0~76:72,86:24,89:24,90:47 lengthL1=1~76:-27,92:35 lengthL1=2~16:23,60:31,91:-63
lengthL1=3~76:29,90:48,98:34,100:-31 lengthL1=4~0:-61,75:38,86:55,90:44,91:41
lengthL1=5~0:-13,93:21 lengthL1=6~91:-41 lengthL1=8~100:35 lengthL1=9~0:49,86:-35,92:57,98:51
lengthL1=:~86:23,100:34 lengthL1=;~0:22,86:-48,89:-30,90:33 lengthL1=?~37:27,76:-32
lengthL1=a~0:38,60:41,93:50 lengthL1=above~86:-35,91:54 lengthL1=acre~0:22 lengthL1=all~76:22
lengthL1=an~0:39 lengthL1=and~86:29,90:-62,96:55 lengthL1=apart~11:25 lengthL1=are~0:66,60:-35
lengthL1=at~0:-34,16:41,60:-34,63:48,89:32 lengthL1=back~93:36 lengthL1=bar~0:47
lengthL1=beds~16:25 lengthL1=below~0:-36,91:43 lengthL1=booster~0:27,91:-27
lengthL1=bore~92:32,100:28 lengthL1=borehole~0:-48,96:37 lengthL1=cable~42:50 lengthL1=cattle~91:41
lengthL1=deep~0:43,60:-33,93:37,100:34 lengthL1=depth~0:42 lengthL1=distance~91:24
lengthL1=drip~0:-21,16:40 lengthL1=dry~0:-51 lengthL1=dug~92:45 lengthL1=end~86:35
lengthL1=falls~86:43 lengthL1=feet~0:47 lengthL1=for~0:-16
lengthL1=from~0:-11,42:59,60:-37,90:43,91:64 lengthL1=ft~0:40,86:42,90:38 lengthL1=gallon~0:49
lengthL1=gallons~0:56,91:-25 lengthL1=garden~0:33 lengthL1=gpm~98:28 lengthL1=guest~0:67
lengthL1=h~0:-46 lengthL1=half~90:75 lengthL1=have~0:9 lengthL1=he~0:41 lengthL1=hill~0:28,89:-26
lengthL1=hose~0:43 lengthL1=house~42:33,89:17,90:-33 lengthL1=how~93:43 lengthL1=hundred~86:-53
lengthL1=i~0:34,63:27,91:-32 lengthL1=in~0:33,60:40 lengthL1=inch~0:45,90:46
lengthL1=inside~86:-23,100:23 lengthL1=is~91:11,96:27 lengthL1=it~89:16,91:23
lengthL1=it's~89:36,93:43 lengthL1=l~86:-32,98:36 lengthL1=level~86:48 lengthL1=lift~0:-39
lengthL1=lifts~89:28 lengthL1=line~91:41 lengthL1=liters~0:45 lengthL1=litres~89:49
lengthL1=log~0:-30,93:36 lengthL1=lower~0:40 lengthL1=m~86:58 lengthL1=makes~86:-37,100:36
lengthL1=meters~0:47 lengthL1=min~0:30,89:-45 lengthL1=minute~90:21 lengthL1=my~91:-44
lengthL1=never~86:33 lengthL1=night~0:41 lengthL1=of~0:-37,60:-31,76:14,91:54,93:25
lengthL1=our~0:-39 lengthL1=over~0:46,91:-50 lengthL1=pe~90:52 lengthL1=pipe~91:28
lengthL1=poly~89:27,91:-31 lengthL1=psi~0:-46 lengthL1=pump~0:-31,75:15,89:25 lengthL1=rows~11:35
lengthL1=run~91:38 lengthL1=s~98:34 lengthL1=schedule~91:22 lengthL1=sea~89:43
lengthL1=seconds~91:-29 lengthL1=shower~0:28 lengthL1=solar~86:-36 lengthL1=source~0:33
lengthL1=spring~0:27,89:-61,90:40 lengthL1=stands~0:43,86:28 lengthL1=static~98:35
lengthL1=stream~76:52 lengthL1=submersible~0:-32,58:14,60:26 lengthL1=suction~0:47,75:41,91:-31
lengthL1=summer~86:33 lengthL1=surface~0:-46 lengthL1=tank~0:78,76:59
lengthL1=the~37:-40,42:25,75:44,93:60,100:38 lengthL1=then~0:44 lengthL1=to~0:-56,42:54,89:58,90:30
lengthL1=tote~76:28 lengthL1=trench~0:33 lengthL1=under~86:41 lengthL1=up~0:33,89:19
lengthL1=water~86:14,89:23,91:36 lengthL1=we~91:67 lengthL1=well~86:14,90:-35
lengthL1=with~0:-44,91:45,98:27 lengthL1=yards~90:29 lengthL1=year~86:-33 lengthL1=|~76:-42
lengthL2=(~76:28 lengthL2=,~11:58,15:66,76:48
lengthL2=.~14:51,42:25,59:62,60:51,86:-22,90:-26,91:27,98:35
lengthL2=0~11:47,16:50,42:27,60:33,75:-4,89:50,90:41
lengthL2=1~42:26,60:30,75:24,76:-37,90:24,98:11 lengthL2=2~11:42,76:-28,90:40,91:54
lengthL2=3~0:-37,14:53,60:40,63:42,76:-29,91:63,92:-37 lengthL2=4~76:46,86:-20,89:24,90:-49
lengthL2=5~11:39,37:-32,76:35,91:38 lengthL2=6~11:45,86:-15 lengthL2=8~0:34,42:-41,76:24
lengthL2=9~0:-32,89:28,90:-53 lengthL2=:~86:-43,90:33,98:48 lengthL2=;~86:-51
lengthL2=above~75:29,91:45 lengthL2=across~100:45 lengthL2=afternoon~86:42 lengthL2=again~89:-25
lengthL2=all~0:-37 lengthL2=allotment~0:27 lengthL2=am~0:70 lengthL2=apart~11:54 lengthL2=ask~63:28
lengthL2=august~0:-30 lengthL2=bar~0:74 lengthL2=battery~42:41 lengthL2=beef~89:36
lengthL2=below~75:17 lengthL2=beside~89:-35,91:18 lengthL2=bore~0:-27,98:35,100:34
lengthL2=bore's~60:29 lengthL2=borehole~0:-26,86:41 lengthL2=bring~89:47
lengthL2=bucket~0:63,89:-59,91:-28 lengthL2=by~0:-61,93:59 lengthL2=cabin~0:31,90:-28
lengthL2=camp~0:68 lengthL2=casing~0:63 lengthL2=clinic~0:47,93:-39 lengthL2=cm~14:41,15:35
lengthL2=compensating~11:44 lengthL2=count~0:42 lengthL2=creek~0:45,75:35,76:41,91:-41
lengthL2=cubic~0:46,91:-22 lengthL2=day~37:55 lengthL2=deep~0:-49 lengthL2=depth~60:50
lengthL2=distance~89:32 lengthL2=does~76:-28 lengthL2=drip~15:74,16:75 lengthL2=drippers~11:62
lengthL2=drop~0:-32,96:28 lengthL2=electric~42:41,89:-24 lengthL2=fed~0:47,89:-38
lengthL2=feet~0:-33,89:47,100:47 lengthL2=fills~91:-32 lengthL2=five~76:42 lengthL2=floor~86:-44
lengthL2=flow~0:30 lengthL2=found~86:49 lengthL2=from~60:-28,76:20,100:41
lengthL2=ft~0:-34,16:45,76:-33,86:81,90:-38,96:42,100:-57 lengthL2=gal~91:33
lengthL2=gallon~0:10,91:-35 lengthL2=gallons~0:-38 lengthL2=garden~0:60 lengthL2=gave~86:-52,98:31
lengthL2=generator~76:33 lengthL2=gives~90:58,91:-23 lengthL2=goes~91:-39 lengthL2=gone~0:39
lengthL2=got~0:54 lengthL2=gpm~86:-43,91:33 lengthL2=ha~16:45 lengthL2=had~0:38
lengthL2=hav~0:56,76:-55 lengthL2=having~0:23 lengthL2=he~0:-37 lengthL2=height~89:32
lengthL2=hello~0:54,86:-39 lengthL2=hey~0:57,86:-52 lengthL2=higher~0:32 lengthL2=hill~76:-38
lengthL2=hit~86:50 lengthL2=hose~91:32 lengthL2=hour~0:42,91:-42 lengthL2=hours~0:35
lengthL2=house~86:-39,89:118,91:27,93:-34 lengthL2=hundred~89:37,91:-45 lengthL2=i've~0:48
lengthL2=inch~0:-33,60:42,89:18,91:-51 lengthL2=inches~100:47 lengthL2=into~76:62
lengthL2=jet~0:-33,75:25,86:48 lengthL2=keeps~0:37 lengthL2=kitchen~0:-39
lengthL2=l~11:35,63:51,76:-39 lengthL2=lane~86:-33 lengthL2=last~93:31 lengthL2=level~0:40
lengthL2=lines~76:30 lengthL2=liter~0:36 lengthL2=litre~0:25 lengthL2=litres~0:-62,90:53
lengthL2=little~89:-41,90:36 lengthL2=live~0:27 lengthL2=lower~86:-40,91:26
lengthL2=m~16:36,63:40,89:53,93:-57,100:12 lengthL2=max~0:37 lengthL2=maybe~89:30
lengthL2=measured~0:20 lengthL2=metres~89:-59,90:70 lengthL2=min~0:-67,63:54 lengthL2=minute~76:-36
lengthL2=mm~0:-36,90:25 lengthL2=most~0:34,76:-50 lengthL2=new~93:-43 lengthL2=next~76:-39
lengthL2=no~0:-33,42:37,91:44,93:52 lengthL2=none~89:33 lengthL2=not~0:-39,93:23
lengthL2=one~42:48,89:26,90:-55,91:-44 lengthL2=only~0:-43,89:51 lengthL2=other~86:39
lengthL2=over~91:42 lengthL2=panels~42:30 lengthL2=pe~0:-27 lengthL2=people~0:79
lengthL2=pipe~90:36,91:47 lengthL2=place~90:28 lengthL2=places~89:27 lengthL2=poly~89:19,91:30
lengthL2=pond~0:38,89:-42 lengthL2=power~91:41 lengthL2=pressure~0:-25,76:57,89:-22
lengthL2=psi~15:43 lengthL2=pump~0:54,59:82,60:75,75:43,90:-30 lengthL2=pumphouse~86:37
lengthL2=pvc~96:29 lengthL2=rain~76:55 lengthL2=reservoir~76:70,89:-47 lengthL2=right~0:-28
lengthL2=roof~76:52 lengthL2=rows~11:68 lengthL2=run~91:46 lengthL2=runs~86:26
lengthL2=said~0:-26,93:38 lengthL2=says~86:43 lengthL2=september~90:36 lengthL2=set~0:-21,86:51
lengthL2=shaft~86:-25,100:24 lengthL2=shallow~91:44 lengthL2=shower~0:-33 lengthL2=showers~0:45
lengthL2=since~63:28 lengthL2=sits~0:-25 lengthL2=sixty~0:26 lengthL2=so~89:-44
lengthL2=solar~89:27 lengthL2=sorry~91:31 lengthL2=source~0:-38,86:14,90:38
lengthL2=spring~0:46,89:-27,90:71 lengthL2=static~0:-38,86:67 lengthL2=steel~0:-50
lengthL2=submersible~91:-48,93:20 lengthL2=sun~0:33,91:-32 lengthL2=surface~59:19
lengthL2=take~90:37 lengthL2=tank~0:44,76:35,90:-18,91:85,93:-33 lengthL2=ten~0:25,91:-28
lengthL2=tent~89:53 lengthL2=test~98:40 lengthL2=then~100:32 lengthL2=there~0:66
lengthL2=there's~93:53 lengthL2=they~0:37,76:-53,89:23 lengthL2=too~0:-26,76:34 lengthL2=tower~0:38
lengthL2=trees~0:30 lengthL2=two~76:60 lengthL2=under~0:25,91:-36 lengthL2=up~0:-27,76:19,89:36
lengthL2=upper~0:38 lengthL2=use~86:-37 lengthL2=v~42:47 lengthL2=want~0:20,76:-46,91:34
lengthL2=was~0:-54 lengthL2=washing~0:45 lengthL2=water~0:-39,60:27,76:28,86:105,89:-40,98:32
lengthL2=water's~89:-42 lengthL2=we've~93:51 lengthL2=well~0:39,86:48,89:-54,93:57
lengthL2=wellhead~89:35 lengthL2=what~93:-33 lengthL2=which~0:18,91:-58 lengthL2=while~0:52,91:-52
lengthL2=will~89:23 lengthL2=yet~89:33 lengthL2=you~0:44,63:26 lengthL2=|~37:30,86:-20
lengthM=cistern~37:46,91:40 lengthM=creek~0:23,75:48,89:83,91:-14
lengthM=drip~0:-7,11:129,14:50,15:124,16:119,86:-28,92:-40,100:-34
lengthM=pump~16:62,37:68,42:62,58:16,59:40,60:51,63:60,75:47,86:33,89:76,90:-97,98:45,100:35
lengthM=roof~0:33,86:-37 lengthM=spring~0:42,37:55,60:-59,86:-18,89:-30,90:206
lengthM=tank~63:17,76:160,89:-25,91:25
lengthM=well~60:48,75:-46,76:-30,90:-44,91:67,92:72,93:82,96:37,98:37 lengthR0=(~89:35
lengthR0=,~15:50,16:40,60:26,76:26,93:74
lengthR0=.~11:34,16:22,37:83,42:33,60:60,63:46,76:30,86:26,92:66,93:40 lengthR0=0~91:43
lengthR0=1~0:-99,16:40,42:48,75:93,86:-43,90:-33,91:45 lengthR0=2~37:24,76:44,93:-30
lengthR0=4~75:34,86:-45,91:18,96:48 lengthR0=5~91:20,93:-26 lengthR0=6~0:-61,58:43
lengthR0=8~93:-39,96:37 lengthR0=9~92:45 lengthR0=:~0:-44,91:42 lengthR0=;~0:-39,86:19
lengthR0=a~0:-57,14:39 lengthR0=above~0:-27,37:24,60:-32,76:85,86:56,89:74,91:-50,93:-33
lengthR0=according~93:48 lengthR0=across~0:37,92:44 lengthR0=after~0:40,86:51 lengthR0=all~0:80
lengthR0=altitude~37:31,63:27 lengthR0=an~0:44,91:-63
lengthR0=and~0:-46,86:-36,91:47,92:52,93:48,100:53 lengthR0=apart~15:51,16:30
lengthR0=at~0:-36,16:42,59:28,60:-29,89:-29,93:30,98:53 lengthR0=away~0:39,89:-32,91:89
lengthR0=barn~0:31,76:-29 lengthR0=below~60:42,86:58,89:80,90:3,91:-33,93:-44
lengthR0=borehole~0:-45,89:33,92:45 lengthR0=bottom~0:40,91:-33,93:63 lengthR0=but~0:49,91:-27
lengthR0=cabin~90:41 lengthR0=cable~42:109,91:-34 lengthR0=casing~92:78,93:-13 lengthR0=climb~89:39
lengthR0=comes~0:55,93:-21 lengthR0=copper~0:24 lengthR0=creek~89:45 lengthR0=day~14:59
lengthR0=deep~0:86,86:-48,89:-25,91:-39,93:145 lengthR0=depth~93:60 lengthR0=diameter~92:40
lengthR0=down~60:108,76:-39,86:72,91:-33,100:39 lengthR0=drip~0:66 lengthR0=dripper~15:37
lengthR0=drippers~15:40 lengthR0=drop~90:36,96:48 lengthR0=elevation~37:41 lengthR0=fall~90:27
lengthR0=fence~0:51 lengthR0=first~89:-44 lengthR0=for~0:32 lengthR0=from~0:49,37:-31,91:67,93:-43
lengthR0=full~0:47,86:-30 lengthR0=garden~90:39 lengthR0=ground~60:37,86:17,89:-33
lengthR0=have~0:55 lengthR0=height~76:51,89:41 lengthR0=high~0:34 lengthR0=higher~76:47,89:78
lengthR0=hill~89:44 lengthR0=hose~0:25,75:55 lengthR0=house~0:27,90:44,93:-35 lengthR0=hut~89:28
lengthR0=in~14:50,58:75,60:45,86:70,89:40,100:-23 lengthR0=inch~75:40,91:54 lengthR0=inside~92:69
lengthR0=is~0:-52,91:22 lengthR0=it~0:-19,86:51 lengthR0=just~0:47,91:-25 lengthR0=kitchen~76:44
lengthR0=level~37:23,59:29,60:-31 lengthR0=lift~0:-38,89:55 lengthR0=line~75:34
lengthR0=lined~93:26 lengthR0=long~0:12,11:69,75:52,89:-20,93:-32 lengthR0=lower~86:-38,90:110
lengthR0=lowest~0:-30 lengthR0=m~0:30 lengthR0=not~86:27
lengthR0=of~37:-34,42:86,75:118,76:-42,86:-34,91:54,93:-36,96:83 lengthR0=off~91:62
lengthR0=on~0:43,89:-23 lengthR0=one~75:39 lengthR0=our~86:26 lengthR0=over~0:12,76:54,90:24
lengthR0=paced~91:42 lengthR0=pe~0:8 lengthR0=pex~0:39 lengthR0=pipe~91:37,96:44
lengthR0=poly~0:63,86:-29,100:25 lengthR0=pump~0:-31,76:-29,86:64,89:29,90:-27,93:10,98:23
lengthR0=pvc~0:27 lengthR0=rim~100:23 lengthR0=rise~89:38 lengthR0=rows~0:-54,15:84
lengthR0=runs~75:27 lengthR0=sea~37:65,59:30 lengthR0=so~93:31 lengthR0=spring~0:31,89:-37
lengthR0=static~0:32 lengthR0=stream~0:-37,86:39 lengthR0=suction~63:26,75:49,89:-25
lengthR0=summer~86:45 lengthR0=surface~86:37 lengthR0=tank~76:43,89:-24,91:45
lengthR0=than~89:44,90:42 lengthR0=that~89:31
lengthR0=the~0:36,42:-40,60:-32,76:10,86:31,89:55,90:80,91:50,100:76 lengthR0=then~0:78
lengthR0=there~0:-30 lengthR0=they~0:34 lengthR0=through~0:-34 lengthR0=to~0:-29,42:39,76:40,91:36
lengthR0=top~90:-41,100:55 lengthR0=total~0:-39,86:33,91:20 lengthR0=under~0:-42,89:43
lengthR0=up~76:57,89:105,93:-33 lengthR0=uphill~0:-34,89:90 lengthR0=us~76:27,90:43
lengthR0=water~86:142,89:-38,91:-41 lengthR0=we~0:21 lengthR0=well~0:-32,92:33,93:37
lengthR0=when~0:26,86:-45,98:58 lengthR0=wide~0:37 lengthR0=wire~0:43,42:35,91:-48
lengthR0=with~0:-34,86:-27,93:40 lengthR0=|~89:32 lengthR1=,~58:66,60:-20,86:21
lengthR1=.~16:45,37:40,75:41,76:81,90:29,91:38,93:49,100:28 lengthR1=0~0:-30,76:32,89:12,91:-50
lengthR1=1~11:51,86:33,90:44,93:15 lengthR1=2~76:-14,86:42,98:35 lengthR1=3~11:45
lengthR1=4~0:-34,63:56,89:46,91:-21,96:32 lengthR1=5~16:47,91:48,93:60
lengthR1=6~0:-76,76:60,86:-27,93:29,100:59 lengthR1=7~0:21,60:-42 lengthR1=8~91:37,93:26
lengthR1=9~0:-26,89:43,100:42 lengthR1=;~91:29 lengthR1=a~89:36,91:46 lengthR1=along~89:36
lengthR1=and~86:11 lengthR1=around~0:65 lengthR1=at~91:-23,93:43,100:25 lengthR1=beds~0:-26
lengthR1=by~0:35 lengthR1=cabin~0:-36,91:25 lengthR1=climbs~89:48 lengthR1=cm~15:38
lengthR1=creek~75:27 lengthR1=deep~92:37,93:-25 lengthR1=distance~0:30 lengthR1=down~86:13
lengthR1=drop~91:-20,96:43 lengthR1=drops~0:25 lengthR1=electricity~0:48 lengthR1=feet~0:27
lengthR1=filled~0:50 lengthR1=foot~0:26,91:-40 lengthR1=from~0:-31,76:15,86:40
lengthR1=ft~0:44,60:-39,86:-22 lengthR1=gives~89:-31,90:42 lengthR1=got~0:45
lengthR1=gpm~0:-38,93:40 lengthR1=ground~0:17 lengthR1=h~16:25,86:46 lengthR1=hanging~86:25
lengthR1=hangs~0:-27 lengthR1=has~90:37 lengthR1=hose~75:42 lengthR1=house~0:-31,76:51,89:82,91:45
lengthR1=i~89:-52,90:41 lengthR1=in~75:23,89:-27 lengthR1=is~86:-55,91:-39,92:60
lengthR1=it~0:33,75:57,76:44 lengthR1=its~86:28 lengthR1=l~16:37 lengthR1=line~0:-26,90:33
lengthR1=log~0:44 lengthR1=long~0:25 lengthR1=m~0:-21,63:41,89:46,91:28,92:44,93:36,100:29
lengthR1=measured~0:61 lengthR1=metres~91:-28 lengthR1=mm~0:-27,75:48,86:-24,89:29,91:53
lengthR1=of~59:62,60:-31,93:32 lengthR1=one~0:46 lengthR1=only~0:-32,76:22 lengthR1=out~0:48
lengthR1=pe~0:50 lengthR1=pex~91:19 lengthR1=poly~96:14 lengthR1=pump~42:17,92:47
lengthR1=pushes~0:-25,86:32 lengthR1=put~89:-29,90:31 lengthR1=runs~98:27 lengthR1=shower~0:43
lengthR1=showers~86:29 lengthR1=slope~89:38 lengthR1=so~0:37 lengthR1=stands~0:-18
lengthR1=submersible~92:41 lengthR1=suction~0:-53,59:68,75:58,86:18 lengthR1=summer~86:34
lengthR1=tap~0:41 lengthR1=that~0:-29,93:41 lengthR1=the~16:-52,42:41,75:30,76:66,93:36
lengthR1=then~89:-35 lengthR1=there~86:20 lengthR1=through~0:33 lengthR1=to~86:18,93:-36
lengthR1=trough~0:32 lengthR1=up~0:-28,86:51 lengthR1=was~89:29
lengthR1=water~0:-43,14:43,86:25,93:64 lengthR1=we~89:-33
lengthR1=well~60:26,86:18,89:-32,90:33,91:-42 lengthR1=where~86:37 lengthR1=which~0:53,86:-47
lengthR1=wire~42:63 lengthR1=|~42:54 lengthR2=)~89:27
lengthR2=,~0:26,11:42,63:27,76:-22,86:-25,89:-4,91:17,93:33
lengthR2=.~16:27,76:32,90:66,92:25,100:24 lengthR2=0~42:-50,75:61,90:35
lengthR2=1~0:-37,11:30,59:51,89:34,92:45 lengthR2=2~60:24,76:33,89:-47,90:61,91:35,100:-35
lengthR2=3~42:40,86:-40,89:29,100:81 lengthR2=4~90:15 lengthR2=5~0:-37,89:42,93:-48,98:-36
lengthR2=6~86:36,90:-19 lengthR2=7~0:51,86:-51,89:53,91:-39
lengthR2=8~0:-72,16:32,86:42,90:-45,100:57 lengthR2=above~86:24 lengthR2=ah~0:43
lengthR2=apart~0:-43,11:29 lengthR2=away~0:-57,76:49,90:33 lengthR2=barn~0:49,91:-22
lengthR2=beside~0:50,93:-44 lengthR2=bottom~0:36 lengthR2=climb~0:58 lengthR2=comes~0:-38,89:40
lengthR2=deep~91:-25,92:39 lengthR2=do~90:43 lengthR2=drop~96:34 lengthR2=end~0:77,86:-37,93:-34
lengthR2=feet~60:32,91:-37,93:61 lengthR2=first~76:-29,89:40 lengthR2=foot~75:78
lengthR2=four~0:-41 lengthR2=from~0:-47,89:-32,91:67 lengthR2=ft~86:24 lengthR2=gallons~86:46
lengthR2=gpm~100:26 lengthR2=ground~93:36 lengthR2=h~0:49 lengthR2=his~0:37,89:-27
lengthR2=hose~0:59 lengthR2=house~0:-47,89:22,90:42 lengthR2=how~0:-34,76:49 lengthR2=hundred~89:55
lengthR2=hung~93:64 lengthR2=inch~0:-37,89:56 lengthR2=inside~0:-25,93:40
lengthR2=it's~0:-29,89:75,90:-40 lengthR2=km~100:28 lengthR2=l~86:37 lengthR2=line~89:-40,90:37
lengthR2=liters~0:55,76:-46 lengthR2=litres~0:-42 lengthR2=long~89:-53 lengthR2=lower~0:36
lengthR2=m~0:-19 lengthR2=machine~86:33 lengthR2=mail~0:33,76:-28 lengthR2=metres~0:-54
lengthR2=mm~89:-34,96:34 lengthR2=never~93:46 lengthR2=new~0:54 lengthR2=no~91:-27
lengthR2=nothing~0:49 lengthR2=one~91:43 lengthR2=pe~89:-39 lengthR2=per~86:35
lengthR2=persons~0:33 lengthR2=pipe~89:33,96:54 lengthR2=poly~0:-9,60:-42,75:49,89:43
lengthR2=power~91:33 lengthR2=pump~42:28,60:-31,76:29,91:-69,100:24 lengthR2=pumping~100:34
lengthR2=pvc~0:49,86:-51 lengthR2=rests~100:47 lengthR2=runs~0:47,60:-31 lengthR2=seven~89:-31
lengthR2=shower~0:30,89:-37,91:53 lengthR2=since~0:38,91:-37 lengthR2=sink~0:29,89:-70,91:47
lengthR2=sits~0:49,93:-48 lengthR2=so~0:46 lengthR2=solar~0:-29 lengthR2=suction~0:51
lengthR2=summer~0:27,86:-24 lengthR2=tank~0:35,90:-32 lengthR2=then~91:-27 lengthR2=toilets~91:35
lengthR2=top~0:-39 lengthR2=two~0:-54 lengthR2=under~0:-35,93:28 lengthR2=v~0:-34,91:35
lengthR2=valve~75:61 lengthR2=was~0:43 lengthR2=washing~86:32
lengthR2=water~0:-69,16:44,91:-25,92:52,93:29 lengthR2=when~86:-41,100:40 lengthR2=where~100:48
lengthR2=which~0:41 lengthR2=will~91:27 lengthR2=yield~86:34 lengthR2=|~0:68,91:-43
lengthT=beds.area~0:-52,11:98,14:52,15:97,16:51,75:-32,76:-16 lengthT=power.battery~42:24,89:36
lengthT=power.cable~0:-37,90:-34,93:31 lengthT=power.capacity~89:41
lengthT=power.facing~0:-41,42:48 lengthT=power.limit~42:40,89:-33 lengthT=power.open_voltage~42:38
lengthT=power.panel~37:38,42:50,100:-24 lengthT=power.series~42:27,76:30,93:-41
lengthT=power.source~37:25,42:87,75:-33,76:48,86:57,89:53,90:-47,92:33,93:30
lengthT=power.strings~0:-56,42:19,76:52,89:-40 lengthT=power.voltage~42:80,59:55,89:24,90:-89,91:27
lengthT=pump.control~60:19,63:45,75:37,76:-62,89:45 lengthT=pump.count~0:42
lengthT=pump.cut_in~60:28,76:-41,86:31 lengthT=pump.cut_out~0:57,60:20,76:-40,86:27,89:-40
lengthT=pump.dry_lift~63:38 lengthT=pump.dry_run~58:75,86:-45,93:39,100:56
lengthT=pump.height~0:38,58:43,60:-161,75:-41,76:38,86:62,91:-49,93:72,98:69,100:15
lengthT=pump.least_flow~0:-36 lengthT=pump.most_flow~86:38 lengthT=pump.motor~86:32
lengthT=pump.npsh~59:30
lengthT=pump.placement~0:47,37:56,42:18,58:76,59:49,60:54,75:39,76:-27,90:-88
lengthT=pump.present~0:-21,76:37,86:-50,89:-118,90:178,91:86 lengthT=pump.relief~0:45,89:-29
lengthT=pump.set~75:37,76:-39,91:38 lengthT=pump.starts~0:-23 lengthT=pump.works~59:68,91:-47
lengthT=store.days~0:74,76:58,93:-29 lengthT=store.depth~0:21,91:-22
lengthT=store.volume~11:28,15:54,37:18,60:-27,89:75,90:-21,91:37,100:-39
lengthT=tank.level~0:76,37:25,76:-144,86:66,89:-60,90:-51,91:76
lengthT=tank.volume~0:36,37:45,76:179,86:-28,89:-77,90:-80,91:18
lengthT=water.kind~0:-39,11:41,37:39,42:-32,58:61,63:-48,75:-4,76:-32,86:29,89:49,90:126,91:61,92:73,93:90,96:54,98:54,100:88
lengthT=water.level~0:32,37:41,59:64,60:55,63:72,75:90,76:50,86:-226,92:75,93:97,98:-43
lengthT=water.temperature~0:-29,59:28,63:62 lengthT=water.yield~16:30,37:58,60:26,75:-46,90:-5
lengthT=way.climb~0:87,60:31,75:57,76:-111,86:97,89:-240,90:-144,91:209,92:23,93:14,100:35
lengthT=way.length~0:100,37:44,60:45,75:16,76:50,86:54,89:202,90:115,91:-367,93:48,100:26
lengthT=way.pipe~42:-52,75:-71,90:119,91:147,93:-86,98:-48,100:26
lengthT=well.bore~0:-19,58:94,76:-27,86:-30,91:-79,92:-107,93:100,96:39,98:41,100:80
lengthT=well.cover~0:83,60:-51,86:-22
lengthT=well.depth~0:24,11:-27,60:67,91:29,92:135,93:-259,98:48,100:118
lengthT=well.drop_pipe~89:-41 lengthT=well.pumping~86:-49,96:55,98:-61,100:104
lengthT=well.static~0:-64,89:7,90:-20,92:61,93:69,98:130,100:-86
lengthT=well.tested~0:-58,86:-60,93:-30,96:52,98:155,100:93 lengtha=~86:41,91:23 lengtha=,_1~0:-23
lengtha=,_3~0:21,91:-39 lengtha=,_and~0:37,89:-36 lengtha=,_pump~0:-30,93:30,100:31
lengtha=,_so~93:31 lengtha=,_static~93:24 lengtha=.~86:28,89:47,91:42,93:53,98:24
lengtha=._pump~86:54 lengtha=._the~0:-84,93:21 lengtha=a_day~14:40 lengtha=above_.~89:39
lengtha=above_ground~76:29 lengtha=above_it~0:-63,86:46,89:82 lengtha=above_sea~37:44
lengtha=above_the~0:68,76:97,86:25,89:-41,91:-32 lengtha=according_to~93:45 lengtha=across_,~0:45
lengtha=altitude_.~0:22 lengtha=and_the~60:59,89:38,91:-53 lengtha=apart_,~15:21
lengtha=apart_.~15:50 lengtha=away_,~0:-25,91:60 lengtha=away_.~0:50,91:36 lengtha=away_and~91:26
lengtha=below_ground~60:42 lengtha=below_the~86:62,89:19,91:-21 lengtha=between_the~15:44
lengtha=but_i~0:28 lengtha=casing_,~0:-30,92:34 lengtha=casing_.~92:40 lengtha=deep_,~0:39,93:40
lengtha=deep_.~0:34,93:33 lengtha=deep_and~0:-27,93:49 lengtha=depth_.~93:29 lengtha=down_,~60:39
lengtha=down_in~60:24 lengtha=down_to~0:64 lengtha=from_the~0:94,89:-30,91:53,93:-26
lengtha=high_.~0:23 lengtha=higher_,~89:19 lengtha=hose_.~0:40 lengtha=in_summer~86:42
lengtha=in_the~0:26 lengtha=inside_.~92:33 lengtha=long_,~75:45 lengtha=long_.~0:44,11:12,93:-22
lengtha=lower_.~89:-73,90:59 lengtha=lower_than~89:36 lengtha=of_1~42:33,75:31,89:-24,96:13
lengtha=of_2~91:35 lengtha=of_3~91:50 lengtha=of_cable~42:67,91:-22 lengtha=of_climb~0:27
lengtha=of_drop~96:52 lengtha=of_fall~90:27 lengtha=of_lift~0:-22,89:63 lengtha=of_pipe~91:31
lengtha=of_rise~89:43 lengtha=over_the~0:14,89:-37,90:26 lengtha=pipe_,~0:32 lengtha=rows_,~15:47
lengtha=to_the~0:-50,91:58 lengtha=to_water~86:56 lengtha=under_the~0:-35,89:23
lengtha=up_.~0:-28,89:62 lengtha=up_and~89:27 lengtha=up_the~89:34 lengtha=up_to~91:23
lengtha=wide_.~0:31 lengthb=~37:46,42:31 lengthb=,_house~89:38 lengthb=,_lines~11:30
lengthb=,_pump~60:22 lengthb=,_rows~15:53 lengthb=,_static~100:46 lengthb=,_water~86:35
lengthb=._altitude~37:25 lengthb=._borehole~0:55 lengthb=?_|~0:-56 lengthb=a~42:47,75:27
lengthb=a_house~89:40 lengthb=a_tank~76:29 lengthb=at_rest~100:38 lengthb=barn_is~89:29
lengthb=bore_is~0:43 lengthb=cabin_is~89:30 lengthb=casing_is~92:28 lengthb=creek_is~86:31,89:-29
lengthb=deep_,~92:18 lengthb=down_to~86:28,98:49 lengthb=each_line~11:42 lengthb=falls_to~98:27
lengthb=floor_is~76:43 lengthb=ft_of~0:37 lengthb=gpm_at~0:44 lengthb=hill_,~89:-33,90:48
lengthb=hole_is~93:38 lengthb=hose_is~75:31 lengthb=house_and~0:65,89:-41
lengthb=house_is~0:55,91:17 lengthb=hung_at~96:32 lengthb=hut_,~0:44 lengthb=in_a~92:53,93:43
lengthb=inch_,~96:29 lengthb=is_about~91:43 lengthb=is_at~100:13 lengthb=is_only~93:43
lengthb=is_to~91:-25 lengthb=it_is~0:46,76:-62,86:22,93:37 lengthb=it_stands~0:36
lengthb=level_at~86:22 lengthb=level_is~0:48 lengthb=m_of~0:52 lengthb=no_,~86:35
lengthb=on_a~76:57 lengthb=only_,~37:31 lengthb=outside_diameter~58:53 lengthb=pipe_,~0:44
lengthb=pipe_:~0:42 lengthb=pipe_is~75:29 lengthb=pump_at~60:69 lengthb=pump_hangs~0:32
lengthb=pump_is~0:-47,42:54 lengthb=pump_stands~86:32 lengthb=pumping_level~98:35
lengthb=rise_is~89:47 lengthb=set_at~60:21 lengthb=shed_is~0:32 lengthb=sorry_,~86:23
lengthb=spring_lies~89:65,90:-55 lengthb=stands_at~100:28 lengthb=submersible_at~60:34
lengthb=tank_is~0:90,89:-24,91:-27 lengthb=the_house~91:43 lengthb=to_house~91:30
lengthb=up_and~91:29 lengthb=up_to~0:56 lengthb=water_:~86:37 lengthb=water_at~86:61,98:29
lengthb=water_is~0:-32,86:56 lengthb=water_level~86:-38,100:52 lengthb=we_are~90:27
lengthb=we_have~0:37,91:-37 lengthb=well~0:44 lengthb=well_and~0:-31,89:35 lengthb=well_is~0:33
lengthb=well_it's~91:30 lengthb=|_suction~0:36 m=angle3~35:60,38:93,50:76 m=area-1~0:-28,6:57
m=area0~0:-60,6:79 m=area1~0:44 m=area3~0:84,6:-47 m=area4~0:52,6:-37,67:43
m=area5~0:25,6:130,67:24 m=area6~6:23 m=area7~6:42 m=bare-1~0:91
m=bare0~0:66,1:-70,3:-73,4:-59,5:-31,16:42,17:-23,26:109,27:65,28:103,30:48,31:-34,33:73,34:116,47:-28,49:31,73:-25,74:93,84:-92,85:43
m=bare1~3:-109,4:-104,5:-15,17:81,18:37,24:48,29:38,30:45,31:44,32:36,38:-26,39:-24,47:108,49:45,55:74,57:74,60:-25,65:-30,66:78,73:73,74:-44,84:46,85:87,86:-28,93:-28
m=bare2~0:25,1:41,2:44,4:45,26:-48,30:34,31:46,34:-57,47:-30,48:42,49:-13,65:60,84:60,85:45
m=bare3~0:33,2:31,3:108,4:85,5:31,26:-32,28:-52,30:-23,33:-40,34:-30,38:119,40:69,60:40,65:35,85:-62,100:40
m=bare4~0:1,4:67,5:52,85:-39,93:36 m=bare5~0:-52,1:39,3:40,84:103,85:-37 m=bare6~0:-40,3:60,92:38
m=bare8~0:31 m=charge3~0:27 m=charge4~43:47 m=charge5~43:140 m=current3~41:47 m=daily1~0:32
m=daily2~0:44 m=daily3~79:56 m=daily4~79:80 m=daily5~78:65 m=daily6~78:104 m=daily7~0:37
m=each2~79:42 m=each3~79:57 m=each4~79:34 m=flow-1~0:-46,7:42,81:115,88:46 m=flow0~0:32,7:55,102:39
m=flow1~0:36,7:78,70:52,88:33,102:-66 m=flow2~8:51,61:41,70:-30,88:99,101:33,102:95
m=flow3~0:43,61:46,70:44,88:-25,99:56 m=flow5~0:27 m=flow6~88:31 m=flow7~88:33
m=length-1~15:-44,16:155,86:50,91:-35 m=length-2~0:-30,58:139,60:-26,89:-28,91:-28,92:211,93:-51
m=length-3~0:303,75:-47,86:-22,89:-26,91:-41,92:-38 m=length-4~0:64 m=length-5~14:53
m=length0~0:96,11:-35,15:126,16:44,37:-49,76:43,86:18,89:-74,90:-28,91:-93,92:133,93:-76
m=length1~0:48,11:-32,15:89,37:-80,60:-73,63:101,75:26,76:64,86:147,89:74,90:82,91:-114,93:-78,100:42
m=length2~0:-61,37:-89,42:-44,59:78,60:-50,75:159,76:85,86:135,89:166,90:108,91:-89,92:-67,98:-41
m=length3~0:-65,11:94,15:-63,16:-41,37:-124,42:29,60:153,76:56,89:124,92:-77,93:79,96:38,98:105,100:22
m=length4~0:-65,11:99,16:-24,37:-80,42:164,60:108,75:-64,76:-37,86:-104,89:-60,90:-29,91:217,92:-42,93:180,96:66
m=length5~0:28,76:-45,86:-58,90:-27,91:210 m=length6~0:-60,37:291,86:-38,89:-39,91:93
m=length7~0:13,37:238,60:-35,86:-38 m=pair3~56:95 m=percent2~48:45 m=percent3~48:91
m=percent4~0:38,62:63 m=power-1~0:43 m=power0~0:42,46:-36 m=power1~0:43 m=power4~0:-44,46:78
m=power5~46:168 m=pressure-1~10:71 m=pressure0~12:108,13:56,52:45,56:24,57:-26,64:-44
m=pressure1~0:22,19:41,36:-47,56:27,57:100,64:118
m=pressure2~0:52,20:65,36:112,53:64,56:-25,57:-43,64:-54 m=pressure3~19:39,52:90,56:64,57:52,64:66
m=pressure4~0:38,20:58,52:-39,53:48 m=pressure5~64:34 m=temperature2~87:80
m=temperature3~35:42,87:53 m=temperature4~21:107,35:38,87:-45 m=time0~0:57
m=time1~0:100,9:34,68:125,69:22,97:23 m=time2~0:43,9:50 m=time3~95:87 m=time4~0:-48
m=voltage2~0:78,51:62 m=voltage3~44:-70,45:91,51:139 m=voltage4~44:86 m=voltage5~44:49
m=volume0~0:25 m=volume1~0:45,22:84 m=volume2~0:35,22:59,72:-48,88:74
m=volume3~0:65,23:40,54:150,72:-18 m=volume4~0:-64,23:45,54:180,72:-38,79:53
m=volume5~0:30,23:71,54:-38,77:-26,82:96,94:31 m=volume6~54:-46,72:76,77:65,94:49
m=volume7~54:-61,71:48,72:90,77:106 m=volume8~54:-32,72:83,77:41 m=volume9~72:80
pairC=pressure~56:37 pairC=switch~56:68 pairL0=a~56:28 pairL0=switch~56:53 pairL2=.~56:41
pairL2=0~56:56 pairM=pump~56:47 pairM=tank~56:69 pairM=well~56:18 pairR0=.~0:55,56:7
pairR0=switch~56:6 pairR2=.~56:42 pairT=pump.control~56:53 pairT=pump.cut_in~0:79
pairT=pump.cut_out~0:79 pairT=pump.height~0:67 pairT=pump.placement~56:30 pairT=water.kind~56:23
pairT=water.level~56:16 pairT=way.length~56:26 pairT=way.pipe~56:19 paira=.~56:32 percentC=1~0:51
percentC=efficiency~62:67 percentC=lose~48:27 percentC=motor~62:73 percentC=panels~48:41
percentC=pump~0:37 percentC=slope~0:41 percentL0=.~62:39 percentL0=about~48:32 percentL0=i~62:32
percentL0=lose~48:27 percentL0=the~0:28 percentL0=we~0:39 percentL1=,~48:31 percentL1=.~0:28
percentL1=the~48:25 percentL2=.~48:28 percentL2=0~0:53 percentL2=1~0:34 percentL2=panels~48:28
percentL2=pump~48:18 percentL2=shade~48:32 percentL2=south~48:33 percentM=drip~0:63
percentM=pump~0:64,48:38 percentR0=.~0:45,48:13,62:62 percentR0=in~48:44 percentR0=of~0:47
percentR0=the~48:33 percentR0=to~48:46 percentR1=.~48:57 percentR1=the~0:44 percentR2=.~0:54
percentT=beds.area~0:30 percentT=power.amps~48:49 percentT=power.battery~48:37
percentT=power.cable~48:38 percentT=power.capacity~48:37 percentT=power.controller~48:32
percentT=power.facing~0:-32,48:48 percentT=power.panel~48:39 percentT=power.series~48:34
percentT=power.source~0:25,48:81 percentT=power.voltage~48:38 percentT=water.kind~0:41
percentT=water.level~62:52 percentT=way.climb~0:31 percentT=way.length~62:43
percentT=way.pipe~62:44 percenta=of_the~0:49 powerC=,~46:53 powerC=2~46:33 powerC=4~46:28
powerC=no~33:39 powerC=panels~46:77 powerC=power~0:23 powerC=pump~0:53 powerC=there~33:39
powerC=two~46:30 powerC=x~46:30 powerL0=,~46:28 powerL0=a~0:87 powerL0=are~46:18
powerL0=panels~46:51 powerL0=pump~0:40 powerL0=the~0:60,46:-31 powerL0=two~46:22 powerL0=x~46:30
powerL1=,~33:39 powerL1=.~0:35,46:33 powerL1=a~0:27 powerL1=at~0:25 powerL1=is~33:39
powerL1=the~46:30 powerL2=,~0:45,46:38 powerL2=.~46:38 powerL2=1~46:35 powerL2=inch~33:39
powerL2=there~33:39 powerL2=water~0:45 powerM=cistern~33:39 powerM=pump~0:54,46:71
powerM=spring~33:39 powerM=tank~46:42 powerR0=,~46:32 powerR0=.~0:91 powerR0=panel~46:50
powerR0=panels~46:59 powerR0=pump~0:43 powerR1=,~33:38 powerR1=0~0:26 powerR1=a~33:39
powerR1=and~33:39 powerR2=.~46:32 powerT=power.battery~46:48 powerT=power.capacity~46:45
powerT=power.facing~46:35 powerT=power.source~0:28,46:77 powerT=power.voltage~0:-34,46:87
powerT=pump.placement~0:40 powerT=pump.present~33:39 powerT=store.volume~46:27
powerT=water.kind~46:69 powerT=water.level~0:20 powerT=way.length~46:35 powera=.~0:70 powerb=a~0:31
pressureC=,~10:66,19:72,53:43 pressureC=0~0:27,10:33,12:-41,20:43,52:26 pressureC=1~19:34,20:40
pressureC=2~19:60 pressureC=3~53:73 pressureC=4~0:-59,52:20,56:39 pressureC=5~13:37
pressureC=6~20:48 pressureC=8~0:39 pressureC=:~0:36,52:27 pressureC=above~0:44 pressureC=air~52:80
pressureC=all~0:43 pressureC=bar~53:46 pressureC=begin~12:32 pressureC=between~56:68
pressureC=bladder~52:41 pressureC=booster~64:64 pressureC=box~64:24 pressureC=can~0:51
pressureC=charge~52:54 pressureC=checked~52:58 pressureC=city~0:32 pressureC=comes~56:26
pressureC=constant~64:48 pressureC=control~64:32 pressureC=controlled~64:45
pressureC=cut~56:48,57:39 pressureC=cuts~57:23 pressureC=drip~10:32
pressureC=expansion~19:143,52:-72 pressureC=filter~36:41 pressureC=frequency~64:43
pressureC=from~0:-53 pressureC=gal~0:-33 pressureC=gallon~19:45 pressureC=gauge~0:35
pressureC=gives~12:49,64:-33 pressureC=h~13:50 pressureC=heater~0:-22,19:36,20:53
pressureC=holds~0:-21,64:78 pressureC=house~64:30 pressureC=i'd~64:62 pressureC=keeps~64:76
pressureC=kicks~56:32 pressureC=l~0:48,12:-45,13:40,52:20,57:-25 pressureC=least~10:35
pressureC=like~0:42 pressureC=lines~10:39,12:34 pressureC=litre~52:31 pressureC=litres~52:62
pressureC=m~0:31 pressureC=manometer~0:29 pressureC=needs~10:37 pressureC=off~57:52
pressureC=only~36:46 pressureC=out~57:80 pressureC=plastic~36:30 pressureC=point~64:23
pressureC=pre~52:34 pressureC=precharge~52:74 pressureC=precharged~52:37 pressureC=preset~52:33
pressureC=pressure~52:82,57:21 pressureC=pump~56:43,57:45,64:62 pressureC=pumped~19:24
pressureC=rated~0:-54,13:35,36:27,53:76 pressureC=reads~0:22 pressureC=relief~20:70,64:-32
pressureC=run~0:49 pressureC=set~64:90 pressureC=shows~0:27 pressureC=shuts~57:37 pressureC=so~0:49
pressureC=speed~64:57 pressureC=start~12:32 pressureC=starts~56:18 pressureC=stop~57:17
pressureC=stops~57:39 pressureC=switch~56:40,57:82,64:-34
pressureC=tank~0:-30,19:40,52:95,53:61,57:-40 pressureC=there~0:42
pressureC=valve~0:44,20:86,64:-45 pressureC=variable~64:25 pressureC=vessel~0:-61,19:61,52:92
pressureC=weakest~36:61 pressureC=well~0:-55 pressureL0=(~53:37 pressureL0=,~0:-40,10:49,52:12,64:2
pressureL0=.~12:30 pressureL0=0~52:71 pressureL0=:~0:32,52:29 pressureL0=a~12:40
pressureL0=air~52:42 pressureL0=and~57:68 pressureL0=at~0:30,13:44,20:45,56:49,57:71
pressureL0=begin~12:32 pressureL0=between~56:68 pressureL0=charge~52:32 pressureL0=city~0:32
pressureL0=comes~56:23 pressureL0=cut~56:51,57:24 pressureL0=cuts~57:22 pressureL0=drip~0:40
pressureL0=for~0:-46,36:40 pressureL0=gauge~0:41 pressureL0=gives~0:32,64:-34 pressureL0=gpm~0:42
pressureL0=h~13:36 pressureL0=has~0:32,52:45 pressureL0=have~0:36 pressureL0=holds~0:-20,64:82
pressureL0=in~0:-30,56:98 pressureL0=is~36:23,52:34 pressureL0=it~0:-47,52:39,64:25
pressureL0=keeps~64:76 pressureL0=l~52:51 pressureL0=least~10:35 pressureL0=like~0:35
pressureL0=lines~12:45 pressureL0=litre~52:36 pressureL0=needs~10:37 pressureL0=off~57:60
pressureL0=on~56:25 pressureL0=only~36:46 pressureL0=out~57:83 pressureL0=point~64:23
pressureL0=pre~52:33 pressureL0=precharge~52:64 pressureL0=precharged~52:37 pressureL0=preset~52:33
pressureL0=pressure~0:33,64:42 pressureL0=pump~0:66,64:29 pressureL0=pumped~19:24
pressureL0=rated~0:-37,13:40,36:29,53:81 pressureL0=reads~0:22 pressureL0=relief~20:33
pressureL0=says~0:-64 pressureL0=set~57:-33,64:129 pressureL0=shows~0:36 pressureL0=shuts~57:37
pressureL0=start~12:29,56:41 pressureL0=starts~56:18 pressureL0=stop~57:27 pressureL0=stops~57:39
pressureL0=switch~57:28 pressureL0=tank~52:19 pressureL0=the~0:65,12:63,57:-34,64:29
pressureL0=to~0:36,19:33 pressureL0=valve~20:65 pressureL0=with~12:35
pressureL1=,~13:37,19:22,57:52,64:-31 pressureL1=.~0:-34,13:29,36:42,57:48,64:35 pressureL1=0~10:52
pressureL1=1~13:45,19:30 pressureL1=2~19:51,53:41,57:13 pressureL1=5~52:37 pressureL1=6~0:29
pressureL1=8~52:28 pressureL1=a~0:-54,36:34,56:41,64:55 pressureL1=and~0:-31,56:42,64:47
pressureL1=at~12:66,52:-43 pressureL1=bar~56:41 pressureL1=box~64:24 pressureL1=constant~64:46
pressureL1=cut~57:25 pressureL1=drip~12:27 pressureL1=drips~20:28 pressureL1=expansion~19:38
pressureL1=h~12:74 pressureL1=house~64:40 pressureL1=i~19:24 pressureL1=is~0:-30,36:27,57:19
pressureL1=on~12:24 pressureL1=pressure~0:-41,12:43,57:27 pressureL1=psi~10:35
pressureL1=pump~0:-16,56:46,57:24,64:49 pressureL1=relief~20:62 pressureL1=says~0:32
pressureL1=set~57:27 pressureL1=switch~56:23,64:-23 pressureL1=tank~52:38,53:64
pressureL1=the~12:19,36:51,52:12,56:31,57:5 pressureL1=two~0:41 pressureL1=valve~20:40
pressureL1=vessel~19:24,52:24 pressureL1=with~52:37 pressureL2=,~10:62,13:26,19:29,64:38
pressureL2=.~10:45,12:32,13:37,36:22,52:42 pressureL2=0~13:57,20:74,53:64
pressureL2=1~0:-9,10:50,13:27,64:27 pressureL2=2~12:52 pressureL2=3~53:44,64:50
pressureL2=4~0:36,52:41 pressureL2=5~19:51,57:-46 pressureL2=6~10:40,13:33 pressureL2=:~0:46
pressureL2=apart~13:29 pressureL2=bar~52:80 pressureL2=beside~64:47 pressureL2=c~19:49
pressureL2=cistern~64:41 pressureL2=cm~13:50 pressureL2=day~64:38 pressureL2=drip~13:39
pressureL2=emitters~13:69 pressureL2=expansion~19:76,52:-43 pressureL2=ft~12:45
pressureL2=gallon~19:23 pressureL2=gallons~52:36 pressureL2=gives~12:34 pressureL2=gph~10:37
pressureL2=ground~0:44 pressureL2=heater~20:76 pressureL2=l~53:47,64:51 pressureL2=litre~20:51
pressureL2=m~36:19 pressureL2=off~56:53 pressureL2=people~0:41 pressureL2=pressure~52:52
pressureL2=pump~0:-40,56:35 pressureL2=rated~10:37 pressureL2=room~52:35 pressureL2=set~56:42
pressureL2=shuts~56:19 pressureL2=tank~0:-68,52:34 pressureL2=tape~13:29 pressureL2=two~0:33,64:50
pressureL2=water~20:58 pressureL2=which~52:34 pressureL2=|~0:60,64:-32 pressureM=cistern~64:31
pressureM=drip~0:-77,10:79,12:170,13:68,19:63,20:62,52:-48,56:-29
pressureM=pump~0:95,19:54,20:55,53:60,56:73,57:66,64:97 pressureM=roof~64:38
pressureM=spring~0:39,36:59 pressureM=tank~19:49,20:54,52:72,53:44,64:-29 pressureR0=)~0:-31
pressureR0=,~13:35,64:36 pressureR0=.~0:36,19:34,20:35,36:78,52:62,57:48,64:36 pressureR0=1~10:50
pressureR0=3~56:41 pressureR0=?~0:33 pressureR0=and~0:-51,56:26 pressureR0=at~0:28,12:35,64:50
pressureR0=const~64:20 pressureR0=each~0:38 pressureR0=i~0:25 pressureR0=in~0:-29,52:72
pressureR0=is~10:40 pressureR0=it~52:6 pressureR0=lines~12:51 pressureR0=of~52:48
pressureR0=off~56:18 pressureR0=out~56:30 pressureR0=pressure~64:40 pressureR0=pump~0:54,64:37
pressureR0=right~0:43,52:-40 pressureR0=rows~13:33 pressureR0=run~0:30 pressureR0=set~0:-40,64:77
pressureR0=shower~0:19 pressureR0=stops~56:18 pressureR0=switch~52:42
pressureR0=the~0:40,10:29,12:32 pressureR0=when~0:34 pressureR0=where~12:42 pressureR0=with~52:39
pressureR1=,~0:-28,64:20 pressureR1=.~10:23,12:36,13:37,56:41,64:50 pressureR1=0~0:-23,13:53
pressureR1=2~0:-45,53:48,57:42 pressureR1=5~0:-31,57:18 pressureR1=6~0:10,56:43 pressureR1=8~0:57
pressureR1=?~0:17,36:44 pressureR1=bar~56:52 pressureR1=open~0:37 pressureR1=pump~52:28
pressureR1=row~12:31 pressureR1=the~52:44 pressureR1=they~10:43 pressureR1=up~64:33
pressureR1=with~0:46 pressureR1=zones~12:33 pressureR2=,~0:-44,57:58
pressureR2=.~0:13,12:77,53:43,64:-40 pressureR2=1~13:34,52:30 pressureR2=6~0:-38,36:43
pressureR2=bar~0:41 pressureR2=feet~0:42 pressureR2=from~64:52 pressureR2=house~64:25
pressureR2=lines~13:34 pressureR2=pressure~20:46 pressureR2=psi~57:22
pressureT=beds.area~12:81,13:54 pressureT=power.battery~57:26 pressureT=power.capacity~57:29
pressureT=power.voltage~0:34,57:68
pressureT=pump.control~0:-32,12:-34,20:52,52:33,53:32,56:34,64:52
pressureT=pump.cut_in~52:46,56:-106,57:140,64:-74 pressureT=pump.cut_out~52:47,56:154,57:-96,64:-93
pressureT=pump.most_flow~64:20 pressureT=pump.placement~52:31 pressureT=pump.present~0:40
pressureT=pump.set~0:76,20:41,64:-77 pressureT=pump.starts~53:43 pressureT=pump.works~57:53
pressureT=store.volume~57:52,64:56 pressureT=tank.level~0:59,36:34,64:-38
pressureT=tank.volume~0:30 pressureT=water.kind~0:19,12:31,13:36,20:42,36:48,57:35
pressureT=water.yield~64:51 pressureT=way.climb~36:53,64:57 pressureT=way.length~0:42,36:70,64:50
pressureT=way.pipe~0:11,36:72,64:9 pressureT=well.bore~64:45 pressureT=well.depth~0:26,52:30
pressurea=~52:38,56:25,64:22 pressurea=.~12:33,36:31,52:63,56:17,64:29 pressurea=and_stops~56:21
pressurea=at_the~12:40,64:33 pressurea=in_it~0:-23,52:40 pressurea=off_.~57:30
pressureb=,_rated~53:60 pressureb=at_least~10:35 pressureb=cut_in~56:56 pressureb=cut_out~57:31
pressureb=gpm_at~0:42 pressureb=in_at~56:56 pressureb=it_at~64:25 pressureb=off_at~57:59
pressureb=on_at~56:28 pressureb=out_at~57:33 pressureb=pump_at~64:33
pressureb=pump_gives~0:32,64:-34 pressureb=set_for~64:37 pressureb=set_to~56:24
pressureb=stops_at~57:39 range~0:64,56:225,64:-42,86:-82,88:39 temperatureC=,~35:54
temperatureC=0~21:52 temperatureC=3~0:44 temperatureC=5~35:35 temperatureC=heater~21:65
temperatureC=laid~35:37 temperatureC=line~35:39 temperatureC=mm~35:36 temperatureC=poly~35:42
temperatureC=set~21:37 temperatureC=spring~87:28 temperatureC=up~87:30 temperatureC=water~87:107
temperatureL0=,~35:37 temperatureL0=at~21:80 temperatureL0=is~21:41,87:40 temperatureL0=set~21:33
temperatureL0=up~87:30 temperatureL0=water~87:77 temperatureL1=.~0:26,87:41 temperatureL1=0~21:40
temperatureL1=3~0:41 temperatureL1=heater~21:40 temperatureL1=is~87:21
temperatureL1=the~0:-33,87:34 temperatureL1=water~21:35,87:32 temperatureL2=,~35:59,87:35
temperatureL2=.~87:39 temperatureL2=5~0:43 temperatureL2=every~0:41 temperatureL2=laid~35:37
temperatureL2=line~35:38 temperatureL2=m~87:39 temperatureM=drip~0:81,21:42,87:-48
temperatureM=pump~0:41,21:66,35:39 temperatureM=spring~87:36 temperatureM=tank~21:50
temperatureM=well~21:34 temperatureR0=.~21:32,35:50,87:92 temperatureR0=in~35:47
temperatureR0=summer~35:33 temperatureR0=|~21:28 temperatureR1=.~35:37 temperatureR1=at~35:25
temperatureR2=3~87:35 temperatureT=beds.area~0:90 temperatureT=power.source~0:52
temperatureT=pump.control~21:18 temperatureT=pump.npsh~87:32 temperatureT=pump.placement~87:52
temperatureT=pump.set~21:29 temperatureT=water.kind~21:27,35:40,87:86
temperatureT=water.level~87:35 temperatureT=water.yield~87:25 temperatureT=way.climb~0:43,87:25
temperatureT=way.length~35:34,87:18 temperatureT=way.pipe~35:35,87:19 temperaturea=.~87:23
temperaturea=in_summer~35:33 temperatureb=set_at~21:22 timeC=,~9:28,69:28 timeC=0~83:46
timeC=1~83:47,97:22 timeC=3~83:58 timeC=5~97:25 timeC=:~97:18 timeC=after~0:26,95:28
timeC=back~0:38 timeC=bucket~0:45 timeC=came~0:34 timeC=can~9:46 timeC=dry~0:26 timeC=filled~69:38
timeC=from~69:38 timeC=he~0:12 timeC=l~97:34 timeC=litres~83:30 timeC=min~97:37 timeC=morning~83:52
timeC=night~0:-28,9:44 timeC=pump~0:32,69:51 timeC=ran~97:50 timeC=run~9:56 timeC=runs~69:32
timeC=should~68:43 timeC=spring~0:47 timeC=test~97:25 timeC=took~95:37 timeC=want~0:-24,68:46
timeC=water~9:50 timeC=within~0:27 timeL0=,~69:45 timeL0=.~0:-49 timeL0=0~83:19 timeL0=5~0:38
timeL0=a~68:30 timeL0=after~0:26,95:28 timeL0=can~9:29 timeL0=dry~0:26 timeL0=for~0:30,68:59,97:70
timeL0=gallons~83:21 timeL0=in~0:32,83:84 timeL0=is~0:24 timeL0=it~0:41 timeL0=litres~83:30
timeL0=min~97:36 timeL0=run~9:64 timeL0=runs~69:35 timeL0=the~83:28 timeL0=took~95:37
timeL0=want~0:-24,68:46 timeL0=within~0:27 timeL1=.~9:29,97:56 timeL1=0~0:-28,83:67,95:61
timeL1=1~97:24 timeL1=5~83:24,97:28 timeL1=:~0:-48,83:40,97:21 timeL1=l~97:29 timeL1=lines~9:38
timeL1=m~0:-36,69:39 timeL1=the~69:61 timeL1=water~9:28 timeL2=,~9:28 timeL2=.~9:32,68:45
timeL2=1~9:23 timeL2=2~0:-93,68:54,69:19 timeL2=3~9:48,69:32 timeL2=4~97:33 timeL2=6~9:35
timeL2=filled~69:32 timeL2=h~9:46 timeL2=m~0:-43,9:37 timeL2=morning~83:52 timeL2=tank~69:21
timeL2=test~97:25 timeM=drip~9:111 timeM=pump~0:49,9:36,69:40,95:53,97:39 timeM=spring~0:54
timeM=tank~0:29,68:64,69:44 timeM=well~95:80,97:51 timeR0=,~0:69 timeR0=.~0:53,9:46,68:31,83:60
timeR0=a~9:39,69:37 timeR0=day~0:-47,9:42,69:93 timeR0=in~68:22 timeR0=it~95:52 timeR0=of~68:51
timeR0=pump~0:-34 timeR0=the~0:42 timeR0=to~0:53 timeR0=water~68:35 timeR0=without~0:-54,68:88
timeR1=.~0:31 timeR1=0~0:21 timeR1=a~69:38 timeR1=no~0:28 timeR1=water~0:25 timeR2=,~83:79
timeR2=.~0:37,9:30 timeR2=0~0:-44,69:41 timeR2=1~69:54 timeR2=2~0:45 timeT=beds.area~0:-40,9:65
timeT=power.source~69:76 timeT=power.voltage~0:43 timeT=pump.control~0:47 timeT=pump.cut_in~0:37
timeT=pump.cut_out~0:37 timeT=pump.height~0:44 timeT=pump.placement~0:38 timeT=pump.present~0:52
timeT=store.volume~0:23,68:57 timeT=tank.level~69:30 timeT=tank.volume~69:25
timeT=water.kind~9:26,68:34,69:45,95:67,97:36 timeT=water.level~97:51
timeT=water.yield~0:-57,68:47,69:36,83:76 timeT=way.climb~0:27,9:52
timeT=way.length~0:60,9:40,69:46 timeT=way.pipe~0:61,9:44,69:28 timeT=well.bore~0:-25,95:57,97:70
timeT=well.cover~97:78 timeT=well.depth~97:56 timeT=well.drawn~95:86 timeT=well.static~97:45
timeT=well.steady~95:92 timea=~68:49 timea=.~0:32,83:31,97:23 timea=a_day~0:-16,9:38,69:48
timea=of_water~68:36 timea=without_rain~68:35 timea=without_the~68:33 timeb=~68:32
timeb=water_for~0:41 u=angle°~38:114,39:35,50:110 u=angle°C~35:74 u=areaacre~0:62
u=areaft²~0:-64,6:66,67:35 u=areaha~0:-38,6:66 u=aream²~0:140,6:91,67:34
u=bare~0:311,1:90,2:34,3:89,4:57,5:26,26:46,28:75,29:22,30:61,31:47,33:93,38:62,55:28,65:40,84:90,86:-61,93:-79,100:-34
u=bareft~86:26 u=barem~0:-43,86:54,93:82 u=chargeAh~43:195 u=currentA~41:48
u=dailyL/day~78:128,79:109 u=dailygal/day~0:-35,78:75,80:41 u=dailym³/day~0:97 u=eachL/day~79:100
u=eachgal/day~79:33 u=flowL/h~7:103 u=flowL/min~0:74,7:-43,61:52,70:31,81:93,88:105,99:64,101:33
u=flowL/s~0:-58,88:53,102:75 u=flowgph~7:137 u=flowgpm~7:-52,8:52,61:26,70:37,88:120,102:56
u=flowm³/h~0:210,7:-38,8:29,88:-72,102:-33 u=lengthcm~16:67
u=lengthft~15:19,37:102,42:38,75:41,76:68,86:97,89:64,90:91,91:100,92:-123,96:45
u=lengthin~0:117,16:57,58:69,75:-42,86:-27,89:-40,91:-47,92:155,93:-56 u=lengthkm~0:35,91:50
u=lengthm~11:58,16:-27,37:114,42:43,58:-36,60:40,63:59,75:88,76:46,86:97,89:79,91:74,93:66,98:45,100:11
u=lengthmi~91:50
u=lengthmm~0:151,14:79,58:63,60:-27,75:-29,76:-34,86:-28,89:-31,91:-48,92:78,93:-31 u=pairpsi~56:95
u=percent%~0:55,48:103,62:57 u=powerW~46:190 u=powerhp~0:100,46:-29 u=powerkW~0:50
u=pressurebar~10:33,12:69,13:22,36:76,52:51,56:52,57:51,64:42 u=pressuremwater~0:27
u=pressurepsi~0:63,20:16,52:78,56:33,57:48,64:67 u=temperature°C~21:44,87:85
u=temperature°F~21:30,35:36,87:24 u=timedays~68:221 u=timeh~9:87,68:-44,69:63,83:68,97:29
u=timemin~83:43,95:85,97:49 u=times~0:138 u=timeweeks~0:45 u=voltageV~0:98,44:46,45:48,51:191
u=volumeL~23:79,54:127,72:60,77:57,82:79,88:45,94:57 u=volumeL/day~0:-41,78:26,79:77
u=volumegal~22:49,23:31,54:70,71:43,72:63 u=volumeimpgal~77:39 u=volumem³~0:166,54:-58,72:45
voltageC=,~45:40,51:27 voltageC=0~45:38 voltageC=3~45:79 voltageC=4~51:-41 voltageC=batteries~0:47
voltageC=battery~0:13 voltageC=circuit~45:43 voltageC=controller~44:84,51:-44 voltageC=each~45:60
voltageC=four~0:38 voltageC=max~44:46 voltageC=mppt~44:66 voltageC=open~45:59 voltageC=panels~45:48
voltageC=pump~51:40 voltageC=runs~51:35 voltageC=series~45:50 voltageC=system~51:22
voltageC=voc~45:55 voltageC=voltage~45:38 voltageC=w~45:34 voltageL0=,~51:43
voltageL0=2~0:44,51:-35 voltageL0=a~51:38 voltageL0=at~0:71 voltageL0=battery~0:24
voltageL0=controller~0:-43,44:63 voltageL0=is~0:28 voltageL0=runs~51:31 voltageL0=system~51:31
voltageL0=the~0:-29,51:54 voltageL0=voc~45:55 voltageL0=voltage~45:38 voltageL0=|~51:44
voltageL1=.~44:38,51:69 voltageL1=1~51:51 voltageL1=2~0:60 voltageL1=5~0:-43,51:35
voltageL1=each~0:29,51:-29 voltageL1=l~0:46,51:-30 voltageL1=mppt~44:50 voltageL1=of~0:-58,45:53
voltageL1=the~0:-5 voltageL1=to~0:60 voltageL2=,~44:46 voltageL2=.~0:-18,44:33,51:32
voltageL2=0~44:51 voltageL2=1~51:58 voltageL2=2~0:25 voltageL2=8~44:53 voltageL2=9~0:50,51:-23
voltageL2=circuit~44:38 voltageL2=m~0:98 voltageL2=v~44:41 voltageM=cistern~51:24
voltageM=drip~51:40 voltageM=pump~44:40,51:90 voltageM=tank~44:23 voltageM=well~51:62
voltageR0=)~0:41 voltageR0=,~51:54 voltageR0=.~45:50 voltageR0=1~0:-48,51:39 voltageR0=5~0:31
voltageR0=8~51:42 voltageR0=and~45:41,51:-33 voltageR0=bank~51:39 voltageR0=batteries~51:20
voltageR0=battery~51:29 voltageR0=cart~0:37 voltageR0=from~51:39 voltageR0=golf~0:37
voltageR0=in~44:50 voltageR0=mains~0:35 voltageR0=pump~51:26 voltageR1=.~0:-26,51:44
voltageR1=a~44:31 voltageR1=ah~51:83 voltageR1=m~0:15 voltageR1=panels~51:51 voltageR1=w~0:40
voltageR2=,~0:44 voltageR2=0~51:22 voltageR2=4~0:-38,51:49 voltageR2=5~51:32 voltageR2=ah~0:21
voltageR2=far~0:37 voltageR2=panels~0:-29 voltageR2=series~45:45 voltageR2=w~51:34
voltageT=power.battery~51:20 voltageT=power.cable~45:16 voltageT=power.capacity~51:21
voltageT=power.controller~44:45 voltageT=power.facing~45:63 voltageT=power.limit~44:-27,45:65
voltageT=power.open_voltage~44:37,45:-38 voltageT=power.panel~0:30,44:69,45:65
voltageT=power.series~0:-30,44:71,45:85,51:-55 voltageT=power.source~0:23,44:55,45:60,51:40
voltageT=power.strings~44:58,45:50 voltageT=power.tilt~44:31
voltageT=power.voltage~0:128,44:47,45:36,51:-145 voltageT=pump.control~51:39
voltageT=pump.cut_out~51:13 voltageT=pump.placement~44:31,51:40 voltageT=pump.works~51:54
voltageT=store.volume~0:46,51:53 voltageT=tank.level~44:49,45:46 voltageT=tank.volume~45:36
voltageT=water.kind~44:30,51:81 voltageT=way.climb~51:64 voltageT=way.length~51:65
voltageT=way.pipe~51:34 voltagea=~0:18,51:40 voltagea=golf_cart~0:37 voltageb=~0:52,51:22
voltageb=a~51:38 voltageb=battery_is~0:31 volumeC=(~72:47,77:-42 volumeC=,~79:39
volumeC=0~22:38,77:-45 volumeC=1~22:51,72:12,77:-30 volumeC=3~72:-72 volumeC=4~0:-25,72:23
volumeC=5~54:32 volumeC=6~0:64,77:-45 volumeC=7~82:36 volumeC=8~0:-35 volumeC=9~0:29
volumeC=:~82:44,94:41 volumeC=?~54:-40,72:41 volumeC=above~0:-33,72:75 volumeC=bar~54:38
volumeC=beside~0:-29 volumeC=blue~54:38 volumeC=boiler~23:66 volumeC=cistern~72:50
volumeC=comes~77:45 volumeC=day~0:-59,78:64 volumeC=elevated~0:33 volumeC=everything~77:34
volumeC=expansion~22:73 volumeC=fed~0:-35,77:31 volumeC=fire~71:52 volumeC=four~0:34,77:-26
volumeC=from~0:52,72:27 volumeC=ft~72:24 volumeC=gallon~72:44 volumeC=garden~0:27
volumeC=got~0:45,54:-30 volumeC=hav~0:54 volumeC=header~0:-23,77:49 volumeC=heater~22:56,23:48
volumeC=hi~54:-25 volumeC=hill~77:20 volumeC=holds~0:27 volumeC=hour~82:70 volumeC=keep~71:72
volumeC=l~0:-42 volumeC=loft~77:37 volumeC=m~77:35 volumeC=morning~82:56 volumeC=need~78:39
volumeC=off~0:-26 volumeC=out~0:-36,94:56 volumeC=overhead~77:36 volumeC=peak~82:22
volumeC=people~79:46 volumeC=pond~0:53 volumeC=pressure~54:59,77:-33 volumeC=pump~0:-28,72:34
volumeC=pumped~94:48 volumeC=rain~72:16 volumeC=rainwater~0:-23,72:55 volumeC=sits~72:38
volumeC=size~72:25 volumeC=spring~72:47,88:50 volumeC=submersible~0:42 volumeC=takes~0:-25,82:52
volumeC=tank~54:48,72:45,77:96 volumeC=tanks~0:27 volumeC=there~22:18 volumeC=there's~72:-34
volumeC=timed~88:25 volumeC=tower~0:27 volumeC=truck~0:47 volumeC=two~0:36
volumeC=underground~72:47 volumeC=use~82:47 volumeC=vessel~22:52,54:45 volumeC=wants~71:66
volumeC=was~94:23 volumeC=water~23:43,72:61 volumeC=well~94:38 volumeC=which~0:42,77:-42
volumeL0=,~0:-44,77:71,79:41 volumeL0=.~0:17,54:49 volumeL0=:~72:35,82:46 volumeL0=;~72:37
volumeL0=a~0:58,22:44,72:44,77:106,88:34 volumeL0=about~0:-43,72:61 volumeL0=an~54:29
volumeL0=at~79:27 volumeL0=boiler~23:67 volumeL0=by~0:23 volumeL0=cistern~72:59 volumeL0=day~78:50
volumeL0=draws~72:21 volumeL0=expansion~22:62 volumeL0=fire~71:29 volumeL0=from~72:47,77:35
volumeL0=got~72:39 volumeL0=has~77:-30 volumeL0=have~0:-59,77:42 volumeL0=header~77:40
volumeL0=heater~23:50 volumeL0=hill~0:46,72:-44,77:32 volumeL0=holds~0:33 volumeL0=hour~82:70
volumeL0=into~77:51 volumeL0=is~0:-40,22:24,54:36,77:35 volumeL0=it~94:19 volumeL0=keep~71:72
volumeL0=loft~77:37 volumeL0=m~0:-52,72:41 volumeL0=morning~82:56 volumeL0=of~0:54
volumeL0=out~94:33 volumeL0=overhead~77:36 volumeL0=people~79:49 volumeL0=pressure~54:40
volumeL0=rain~72:52 volumeL0=rainwater~72:30 volumeL0=spring~0:-57,88:60 volumeL0=storage~72:47
volumeL0=takes~0:-33,82:52 volumeL0=tank~0:41,54:56,72:31,77:21 volumeL0=the~72:46,77:50
volumeL0=there~22:21 volumeL0=to~71:39 volumeL0=two~0:56 volumeL0=vessel~22:41,54:41
volumeL0=wants~71:67 volumeL0=water~23:58 volumeL0=we~0:-51,78:61,82:40 volumeL0=with~54:29,72:-34
volumeL0=|~0:-41 volumeL1=)~0:51 volumeL1=,~54:39,71:48,77:-36 volumeL1=.~0:1,78:46
volumeL1=0~22:45 volumeL1=2~0:-42,77:45 volumeL1=3~54:21,72:-37 volumeL1=4~0:25
volumeL1=6~0:-22,77:34 volumeL1=7~82:36 volumeL1=8~0:-25 volumeL1=9~72:32
volumeL1=a~0:22,54:38,78:41 volumeL1=and~0:-45 volumeL1=at~72:25,77:-42 volumeL1=bar~0:-38
volumeL1=blue~54:38 volumeL1=day~72:-39 volumeL1=everything~77:34 volumeL1=fills~77:-41
volumeL1=for~72:47 volumeL1=ft~0:-29 volumeL1=hour~72:57 volumeL1=hours~0:60
volumeL1=in~72:-42,77:61,82:46 volumeL1=inch~0:53 volumeL1=into~72:23 volumeL1=m~0:60,72:-37,77:24
volumeL1=mm~77:36 volumeL1=on~77:39 volumeL1=one~23:59,72:32,77:-39 volumeL1=out~94:22
volumeL1=people~0:-29 volumeL1=pipe~77:29 volumeL1=pump~0:-22,72:35,77:-34 volumeL1=rainwater~72:30
volumeL1=runs~0:-32,72:36 volumeL1=small~0:28 volumeL1=spring~72:23 volumeL1=storage~77:37
volumeL1=tank~77:54 volumeL1=tanks~0:37 volumeL1=the~82:10,88:43 volumeL1=there~0:67,77:-34
volumeL1=time~0:43 volumeL1=timed~88:26 volumeL1=to~77:39 volumeL1=valve~0:36 volumeL1=we~88:26
volumeL1=well~0:-27 volumeL1=|~0:43 volumeL2=(~0:49 volumeL2=,~0:80,23:36,71:38
volumeL2=.~78:69,94:29 volumeL2=0~0:-70,77:65 volumeL2=1~77:14 volumeL2=2~54:45
volumeL2=3~0:42,72:-41,82:49 volumeL2=4~77:-33,82:44 volumeL2=5~22:56,54:38
volumeL2=6~22:32,77:-38,78:41 volumeL2=7~0:-43,77:47 volumeL2=9~0:29 volumeL2=:~0:-46
volumeL2=bar~0:-51,72:33 volumeL2=by~77:39 volumeL2=c~22:46 volumeL2=cistern~0:-33,72:18
volumeL2=cows~77:36 volumeL2=day~0:-27,72:44 volumeL2=drippers~77:34 volumeL2=every~0:-39,72:31
volumeL2=from~0:35,72:37,77:-29 volumeL2=gallons~0:-44,77:32 volumeL2=generator~0:49,77:-37
volumeL2=h~0:53,77:-46 volumeL2=hour~0:-34,77:35 volumeL2=house~77:31 volumeL2=litres~77:35
volumeL2=m~0:14,77:-44 volumeL2=meters~0:-45 volumeL2=mm~0:33 volumeL2=off~0:-43,54:54,77:45
volumeL2=one~0:-36 volumeL2=open~54:-40 volumeL2=pe~0:36,77:-25 volumeL2=pressure~0:71
volumeL2=pump~72:41 volumeL2=rain~0:57 volumeL2=relief~22:41 volumeL2=runs~77:-29
volumeL2=says~0:-32,72:45 volumeL2=seconds~72:42 volumeL2=set~0:-33,54:52
volumeL2=shower~0:-40,72:30 volumeL2=showers~0:43 volumeL2=sits~72:41 volumeL2=so~0:47
volumeL2=starts~72:44 volumeL2=switch~0:44 volumeL2=tank~0:-50,72:89,77:41 volumeL2=there~77:64
volumeL2=use~0:-30,72:38 volumeL2=v~72:-22 volumeL2=valve~22:35 volumeL2=water~22:31
volumeL2=well~54:-37,77:21 volumeL2=which~72:55 volumeL2=|~0:-30 volumeM=cistern~71:34,72:112
volumeM=creek~77:41 volumeM=drip~22:77,23:33,54:-38,77:34
volumeM=pump~0:60,22:45,23:76,54:23,72:66,78:41,94:32 volumeM=roof~77:39 volumeM=spring~88:64
volumeM=tank~0:-22,22:45,54:48,71:51,72:44,77:111 volumeM=well~23:55,54:44,72:-47,94:89
volumeR0=,~0:-26,22:43,72:17 volumeR0=.~23:21,54:42,72:42,77:29,79:39 volumeR0=2~0:-26,77:26
volumeR0=3~0:19 volumeR0=5~0:60,72:-24 volumeR0=6~0:-33,77:-38,88:63 volumeR0=9~82:27
volumeR0=:~0:-28,88:32 volumeR0=a~0:67 volumeR0=above~72:-29,77:49 volumeR0=and~0:-47,72:41,77:38
volumeR0=at~23:70 volumeR0=back~71:37 volumeR0=barrel~77:42 volumeR0=below~72:51
volumeR0=beside~0:19,72:32,77:-26 volumeR0=bladder~54:36 volumeR0=bucket~0:65
volumeR0=by~0:45,77:-38 volumeR0=charged~22:35 volumeR0=cistern~0:50,72:35 volumeR0=concrete~77:43
volumeR0=drum~77:30 volumeR0=each~23:40,79:51 volumeR0=expansion~22:86 volumeR0=for~71:68,77:-27
volumeR0=ground~72:35 volumeR0=heater~23:140,54:-40 volumeR0=house~0:-37,72:39
volumeR0=i~0:-46,72:46 volumeR0=in~0:37,23:18,82:51,88:33 volumeR0=is~72:-41,88:29
volumeR0=it~0:-72,88:28 volumeR0=kept~23:37,71:61 volumeR0=next~72:46 volumeR0=of~71:55
volumeR0=on~77:38 volumeR0=out~0:32 volumeR0=poly~72:41 volumeR0=pressure~54:67,72:-36
volumeR0=put~0:57,54:-39 volumeR0=right~72:61 volumeR0=sits~54:38,77:26 volumeR0=standing~0:38
volumeR0=stands~0:59,72:-34,77:25 volumeR0=storage~77:-42
volumeR0=tank~0:-30,22:47,54:72,72:64,77:46 volumeR0=terrace~0:30,72:-19 volumeR0=that~77:34
volumeR0=the~72:91,77:40,94:35 volumeR0=to~22:31 volumeR0=top~77:49 volumeR0=tote~77:33
volumeR0=tower~0:-28,77:33 volumeR0=two~82:29 volumeR0=vessel~54:69
volumeR0=water~0:-37,23:78,54:-30 volumeR0=which~0:8 volumeR1=(~0:34 volumeR1=,~77:28
volumeR1=.~22:54,71:45,77:46,82:25 volumeR1=0~77:-36 volumeR1=1~54:41 volumeR1=2~0:-29,54:36
volumeR1=5~0:-45,22:37,77:30 volumeR1=6~77:27 volumeR1=8~54:60 volumeR1=?~54:51
volumeR1=a~77:39,79:55 volumeR1=after~0:-27,82:32,88:32 volumeR1=and~0:42,72:-22 volumeR1=are~0:-34
volumeR1=booster~72:47 volumeR1=c~23:32 volumeR1=day~79:27 volumeR1=fill~0:56 volumeR1=fire~71:58
volumeR1=from~72:41 volumeR1=ft~0:-53,72:29,77:47 volumeR1=full~88:32 volumeR1=hill~72:-47,77:36
volumeR1=hours~82:31 volumeR1=house~77:41 volumeR1=in~0:-25 volumeR1=is~0:48,54:-62
volumeR1=it~0:31,77:-29 volumeR1=l~79:27 volumeR1=loft~77:45 volumeR1=m~77:12
volumeR1=minutes~82:31,94:45 volumeR1=on~54:-34 volumeR1=one~88:31 volumeR1=psi~54:27
volumeR1=pump~72:65,77:-31 volumeR1=pumps~72:34 volumeR1=relief~23:27 volumeR1=roof~77:27
volumeR1=seconds~0:69,88:41 volumeR1=shed~72:29 volumeR1=stand~77:29 volumeR1=the~0:-42,54:23
volumeR1=tower~77:25 volumeR1=up~72:54 volumeR1=v~72:24 volumeR1=|~0:37 volumeR2=,~23:45,72:23
volumeR2=.~77:50,82:44 volumeR2=0~77:74 volumeR2=1~72:74 volumeR2=2~0:31 volumeR2=3~54:39
volumeR2=4~0:25 volumeR2=5~0:14,77:-30 volumeR2=6~23:40 volumeR2=:~72:-43
volumeR2=above~0:-38,77:53 volumeR2=after~94:27 volumeR2=bar~22:30,54:57 volumeR2=beds~77:36
volumeR2=below~77:58 volumeR2=f~23:24 volumeR2=four~0:52 volumeR2=from~71:34 volumeR2=higher~77:27
volumeR2=house~72:25 volumeR2=m~0:15,77:33 volumeR2=min~0:26,72:-45 volumeR2=minute~0:-36,88:32
volumeR2=over~0:56 volumeR2=plot~72:34 volumeR2=psi~0:-31,54:31 volumeR2=pump~0:-27,54:-35,72:90
volumeR2=relief~23:37 volumeR2=second~0:30 volumeR2=stands~0:27,72:-34 volumeR2=taps~77:23
volumeR2=than~77:36 volumeR2=use~0:41 volumeR2=v~0:-46,72:63 volumeR2=valve~23:16
volumeR2=water~72:60 volumeR2=|~0:-55 volumeT=beds.area~0:31,78:53
volumeT=power.battery~0:-42,72:60 volumeT=power.capacity~72:34 volumeT=power.facing~0:37,77:-39
volumeT=power.panel~0:22 volumeT=power.source~0:67,77:65,78:46 volumeT=power.strings~77:20
volumeT=power.tilt~72:38,77:-26 volumeT=power.voltage~72:84,77:-43
volumeT=pump.control~0:70,23:53,54:47,77:-68 volumeT=pump.cut_in~54:59,77:-53
volumeT=pump.cut_out~54:81,77:-58 volumeT=pump.height~0:48,72:-41
volumeT=pump.placement~0:29,54:66,72:29 volumeT=pump.present~0:50,54:-26,77:43
volumeT=pump.set~0:4,23:34,77:-50 volumeT=pump.works~0:-61,72:23,78:32 volumeT=store.days~0:34
volumeT=store.fills~0:-29,72:10 volumeT=store.hours~0:28,77:-30 volumeT=store.reserve~72:61
volumeT=store.volume~0:39,54:50,71:61,72:-146,77:-35 volumeT=tank.level~54:-50,72:-109,77:205
volumeT=tank.volume~0:25,72:24,77:-144,78:32
volumeT=water.kind~0:26,23:49,71:42,72:69,78:41,88:45,94:67 volumeT=water.level~54:28,72:-24,78:62
volumeT=water.yield~23:49,82:58 volumeT=way.climb~0:40,23:41,54:31,72:74,77:-44
volumeT=way.length~0:44,23:48,77:65 volumeT=way.pipe~0:69,71:38,77:32 volumeT=well.bore~94:63
volumeT=well.depth~0:-27,54:57,72:-26,94:34 volumeT=well.drawn_for~94:89 volumeT=well.static~0:33
volumeT=well.steady~94:79 volumea=~54:54 volumea=,_filled~0:34 volumea=.~0:59,72:36
volumea=._from~72:-37 volumea=._the~72:-32 volumea=and_stands~72:-26,77:36
volumea=bladder_tank~54:36 volumea=expansion_tank~22:86 volumea=heater_,~23:45 volumea=in_2~0:45
volumea=in_the~72:-53 volumea=poly_tank~72:38 volumea=pressure_tank~54:79
volumea=storage_tank~72:30 volumea=tank_.~72:20 volumea=under_the~0:15 volumea=water_heater~23:70
volumeb=~77:30 volumeb=,_about~0:-37,72:50 volumeb=._cistern~72:32 volumeb=._tank~77:38
volumeb=a~0:28 volumeb=bucket_of~88:32 volumeb=cistern~0:44,72:-36 volumeb=cistern_is~0:-35,72:49
volumeb=cistern_of~0:48 volumeb=expansion_vessel~22:40 volumeb=from_a~72:39 volumeb=have_a~77:16
volumeb=is_a~22:18 volumeb=pressure_vessel~0:35 volumeb=tank_is~0:81,72:-34 volumeb=tank_of~0:29
volumeb=to_keep~71:42 volumeb=vessel_is~54:41 volumeb=water_heater~23:46
"""
