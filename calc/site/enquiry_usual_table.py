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
L=!~0:-35 L=(~0:60,3:45 L=)~3:38,29:28,73:41
L=,~0:23,7:20,10:45,49:26,57:53,62:-48,76:14,78:27,79:-34,83:57,86:-21,95:-44,96:-32,99:-38
L=.~6:-30,8:24,11:24,18:-34,27:44,29:45,47:-30,55:14,63:32,67:-41,70:-35,73:-17,74:-40,75:41,77:-36,81:30,90:32,95:-58
L=0~0:44,1:41,3:-27,20:76,21:24,27:-43,32:-49,39:55,57:-11,58:-37,61:-49,69:-63,73:15,80:23,81:-40,83:53,86:46
L=1~4:-35,6:-35,8:30,49:32,55:52,58:25,73:-44,76:37
L=2~0:80,16:35,18:47,32:40,36:-37,55:30,73:23,74:36,82:33,83:-38,87:-37
L=3~24:59,26:23,28:-40,52:21,57:-39,73:41,76:44,97:-42
L=4~3:16,14:-52,27:19,54:47,86:-32,87:19,88:19,99:46
L=5~0:36,1:-39,8:20,15:26,39:41,50:26,74:-51,81:-39,90:53,94:20 L=6~0:51,57:51,74:33,88:-28
L=8~1:-44,72:-36,76:57,81:-27,85:46,97:46 L=9~0:35,3:-46,5:42,69:27,83:-31,85:27,89:38,95:54
L=:~25:33,36:50,50:23,79:28,81:17,85:19,86:33,91:31 L=;~11:19,46:24,69:31,83:-49
L=?~36:45,81:27,83:56
L=a~0:43,10:-25,11:23,29:-26,32:42,36:-57,41:34,45:-44,46:25,49:27,52:33,54:36,55:-43,58:22,68:-29,69:41,74:46,77:64,79:-26,83:-39,85:51,88:35,89:43,90:36,95:-34
L=about~3:58,46:24,69:44,75:40,88:32 L=above~0:-22,73:39,81:46,83:-35,88:44 L=across~0:46
L=adjusted~61:32 L=adults~0:77,27:22,32:-31 L=after~0:82,84:28,92:25,96:19 L=air~50:46
L=all~0:59,47:26,73:22,81:-34 L=allowed~62:45 L=alpacas~0:-24,82:26 L=also~3:36 L=altimeter~86:44
L=altitude~36:84 L=am~81:33 L=an~0:19 L=and~1:39,2:46,4:38,25:33,34:21,46:55,55:64,81:-39,86:40
L=apart~10:37 L=are~7:47,10:33,36:38,44:15,57:-43,73:-38,81:71 L=array~0:-34 L=as~34:25,59:34
L=at~0:26,1:-52,4:-30,11:42,12:26,20:102,29:-25,35:-37,36:84,37:48,40:-44,54:74,55:73,57:147,73:-27,74:-64,76:32,81:-29,83:75,86:-38,87:-37,88:-74,95:61,96:45,97:33,98:40,99:20
L=august~0:63 L=back~0:69,54:30,98:29 L=bar~8:22,51:51,52:41,54:42,55:106,85:-39
L=barn~0:-55,82:41,88:28 L=basins~29:-38,32:36 L=bath~0:-41,32:34 L=battery~0:67 L=be~0:61,28:51
L=beds~15:23 L=been~0:30 L=before~97:30 L=begin~11:41 L=behind~0:-32 L=below~0:-42,88:43
L=beside~0:-48 L=between~54:57,81:35,88:36 L=black~34:25 L=bladder~50:40 L=block~8:33
L=boiler~22:66 L=booster~61:42,88:-30 L=bore~85:60,86:-31,89:24,90:62,97:20
L=borehole~86:-25,87:38,90:94,93:35,99:30 L=both~0:-26 L=bottom~73:39,86:33,90:36 L=box~61:23,83:29
L=brindle~0:36 L=brings~0:29 L=bucket~0:45 L=buried~0:69 L=but~0:-37,31:58,88:41
L=by~32:40,46:27,87:45 L=cabin~29:-34,36:40,86:52,88:46 L=cabins~0:24,27:-37
L=cable~0:43,40:83,88:-30 L=call~0:49 L=came~0:33 L=campers~0:41 L=can~0:34,9:26
L=cased~0:-26,89:49 L=casing~0:-52,89:9 L=cattle~0:49 L=cellar~83:80 L=charge~50:35
L=children~27:26 L=cistern~0:31,67:31,69:69 L=cistern's~0:39 L=city~0:78 L=climb~0:-46,86:78
L=climbs~0:-27,86:87,88:-25 L=cm~0:-30,7:31,10:35 L=come~30:31 L=comes~34:27,54:23,74:28,98:28
L=constant~61:49 L=consumption~76:39 L=control~61:32 L=controller~39:29,42:76,49:-42 L=copper~88:46
L=cottage~0:-39,81:24,86:95 L=count~0:-36,78:41,81:34 L=couple~30:44 L=cover~6:31
L=cows~1:33,3:31,5:43 L=creek~0:-30,83:29,87:37 L=cut~0:-39,54:82,55:51 L=cuts~55:21 L=daily~75:39
L=dairy~2:31 L=day~1:51,69:-37,75:45 L=december~0:56 L=deep~86:-39,89:51 L=degrees~0:27
L=delivers~0:30 L=depth~57:47,90:52,97:44 L=diameter~0:-32,56:85,89:40 L=diaphragm~0:-60,58:21
L=difference~86:30 L=dishwasher~0:-21,81:30 L=distance~88:59 L=down~57:44,83:49,95:32 L=drawn~94:29
L=drilled~0:47,90:53 L=driller~0:-33,85:38,99:26 L=drinkers~82:48 L=drinks~75:16
L=drip~6:25,7:27,10:36,11:25,14:46,15:36,23:55 L=dripper~15:17 L=drippers~0:-24,7:65,11:25,15:78
L=drips~0:40,19:25 L=drop~0:29,87:29,88:-35 L=drops~0:64,30:31,86:-36,87:43 L=drum~0:-48,73:55
L=dry~63:56 L=dug~90:32 L=dynamic~83:55 L=each~10:49,15:34,49:-49,75:-44,76:93,81:22,85:-48
L=efficiency~59:65 L=eight~0:36,28:39 L=elevated~0:25 L=elevation~36:77 L=eleven~82:25
L=emitters~7:68,15:64 L=end~81:27 L=ends~0:39 L=enough~65:27 L=et~0:-29,13:72
L=every~0:21,7:46,15:59 L=everything~74:25 L=ewes~86:27 L=expansion~18:66,21:74 L=facing~0:-28
L=falls~73:43,86:-27,87:33 L=family~0:-37,81:67 L=far~0:29 L=farthest~88:25 L=fed~0:-29
L=feeds~61:29 L=feet~0:29,23:62,81:-40,90:47 L=fence~0:33 L=field~30:28 L=fifty~0:-47,27:30
L=fill~0:57 L=filled~0:29 L=fills~0:25 L=filter~35:41 L=fire~68:33 L=first~34:31 L=floats~0:46
L=floor~73:33 L=flow~0:59,8:30 L=foot~0:-67,70:35
L=for~0:32,1:60,27:46,35:33,39:39,65:51,81:31,85:34,94:63 L=four~24:30,82:39 L=frequency~61:41
L=from~40:50,73:50,74:42,87:26,90:-27 L=ft~0:-3,73:-50,81:49,82:-43,83:36,99:47 L=gal~86:24
L=gallon~0:32,5:26 L=gallons~88:-26 L=garden~0:49,6:42,77:123,88:30 L=gas~81:34 L=gauge~0:50,50:34
L=gets~34:77,67:33 L=gi~81:27 L=gives~0:54,61:-32,85:56 L=go~0:36 L=goats~3:61,4:30
L=goes~6:37,90:33 L=got~0:76,69:41 L=gph~15:38 L=gravity~74:33 L=greenhouse~0:46,75:40 L=grid~37:32
L=ground~47:50,87:36 L=group~0:25 L=guess~34:25 L=guests~0:36 L=guy~0:33 L=h~11:45,15:55
L=half~87:72 L=hallo~0:35 L=hand~34:25,90:34 L=hangs~0:-43,57:82
L=has~0:46,27:47,50:45,74:-40,88:-34,89:40,93:64 L=haul~69:40 L=hav~0:59
L=have~6:24,30:30,74:52,81:-35 L=he~0:60,85:-33,99:40 L=head~0:109,81:-21 L=header~74:37
L=heater~19:36,20:63,22:57 L=height~73:41,86:31 L=hello~0:62,45:26 L=hens~0:-60,3:37
L=higher~86:42,88:41 L=highest~0:-24,86:43 L=hill~0:68,69:-40,74:42 L=hills~0:-36 L=hillside~0:62
L=hit~0:43,83:-34 L=hiya~0:26,81:-24 L=hold~0:8,73:-23 L=holds~61:79 L=hole~90:33 L=holiday~0:-40
L=horses~0:-47,1:39,82:61 L=hose~72:40,81:23 L=hoses~0:-50,25:69,30:41 L=hot~0:28,34:17
L=hour~0:-31,79:72 L=hours~0:33
L=house~0:23,3:60,6:-40,57:-33,61:35,73:38,83:-29,86:69,88:71,90:-46 L=household~81:50
L=households~81:26 L=how~81:32,90:53 L=hundred~83:-43 L=hung~93:64 L=hut~36:51
L=i~0:70,6:26,9:42,28:56,31:37,50:35,59:27,78:44,83:-30 L=i'd~34:25,61:53 L=ibc~73:35
L=in~3:-43,14:30,39:37,47:53,54:29,69:-13,79:26,80:89,81:-28,83:82,86:-22,97:-28
L=inside~32:41,83:-34 L=intake~0:42,72:67,87:34 L=into~0:-69,69:32 L=inverter~61:31 L=iron~0:25
L=irrigation~0:-32,6:34
L=is~0:58,1:-46,13:36,28:-48,32:44,35:32,36:-33,38:19,40:36,74:26,76:-28,84:24,86:31,88:47,89:9,95:-30
L=isn't~0:43,90:21 L=it~0:32,19:45,29:-33,34:46,46:37,88:22,91:44,95:54,98:38 L=it's~88:49
L=its~81:26,86:-44 L=just~0:-56 L=keep~2:31,68:61 L=keeps~0:-25,61:78 L=kia~0:32 L=kicks~54:29
L=kids~27:31 L=km~0:33,87:34 L=l~12:44,49:-22,73:68,83:-39,94:33,95:42,98:26 L=last~0:61,86:-35
L=latitude~0:-46,37:88,38:194 L=laundry~33:44 L=least~0:33 L=length~72:66,88:44 L=let~0:-49
L=level~57:-20,83:73,90:-41,95:79,97:80 L=lies~34:53,86:42 L=lift~57:-27,83:40,86:56 L=lifted~86:34
L=lifts~86:27 L=like~0:36 L=line~0:59,10:74,73:-25,83:-27,88:20 L=lined~0:29
L=lines~9:49,10:71,11:53,88:-37 L=liters~0:46 L=lithium~0:33 L=litre~50:32,73:38
L=litres~0:-48,1:51,20:60,73:48,83:-29 L=live~81:59 L=living~0:70 L=loft~74:35 L=log~90:39
L=long~0:66 L=look~0:34 L=lose~46:29 L=low~0:34 L=lowered~57:48 L=lowest~83:26
L=m~0:26,16:39,74:54,83:26,90:43,99:18 L=machine~25:36 L=machines~33:52 L=make~81:27 L=makes~85:40
L=manometer~0:30 L=many~81:29 L=max~42:29 L=maximum~0:39 L=may~0:53,35:31 L=maybe~0:60,46:38
L=me~0:41 L=meadow~30:38 L=measured~85:32 L=meter~78:41 L=meters~0:38,81:-28 L=metre~90:56
L=micro~0:56 L=milk~0:-26,2:66 L=min~0:38,86:-31,94:37 L=minimum~0:79 L=minute~0:-46,87:27
L=minutes~96:56 L=mm~71:37,73:-37,74:31,87:55,88:50 L=month~0:-34 L=months~63:58
L=more~0:-27,35:32,86:25 L=morning~79:25 L=most~0:34,58:34 L=motor~0:-44,59:74 L=mountains~81:42
L=mppt~42:69 L=must~86:31 L=my~0:84,6:-50,45:24,87:31,88:-32 L=need~0:39,75:77 L=needs~0:48
L=neighbour~0:37 L=net~86:45 L=never~83:56 L=night~9:48 L=no~29:30,81:36,83:20,88:25 L=noon~0:45
L=north~38:63 L=not~0:-18,35:32 L=now~0:50,83:28 L=npsh~60:60
L=of~28:38,43:33,45:84,46:52,57:-25,65:16,73:13,81:45,90:35
L=off~0:-57,37:29,55:93,64:116,69:27,87:53 L=olives~0:-28,6:31
L=on~27:-31,30:32,34:37,46:30,50:-27,54:51,55:54,61:-19,73:48,74:44,81:-29,86:-42,87:-49,93:55
L=once~0:34 L=one~0:-18,46:47 L=only~31:50,35:41,36:19 L=open~43:54,49:-43 L=opens~55:40 L=ora~0:32
L=orchard~0:-21,6:27 L=our~0:46,69:-34,75:28,81:56 L=ours~90:46 L=out~34:29,55:86,91:55
L=outside~0:-45,56:50,81:35 L=over~0:30,27:29 L=own~81:28 L=panel~48:36
L=panels~44:65,47:59,48:61,88:-22 L=parallel~27:44,29:-28 L=pasture~0:33 L=pe~28:36,87:40
L=peak~79:30 L=people~27:56,76:83,81:53 L=peppers~14:35 L=per~76:45 L=persons~27:34,76:51
L=pex~0:14 L=phosphate~0:28 L=pipe~0:50,27:-32,72:55,73:-26,83:-29,88:70,90:-33,93:64 L=pit~90:-29
L=place~36:29 L=plastic~35:32 L=platform~73:39 L=please~0:47 L=plot~0:65 L=plus~4:41,77:90
L=pn~0:53 L=point~61:25 L=poly~0:40 L=pond~0:39 L=power~0:36 L=pre~50:37 L=precharge~50:62
L=precharged~50:36 L=preset~50:32
L=pressure~0:43,50:23,52:77,54:48,55:20,61:37,69:-33,74:-40,81:-26 L=psi~83:48 L=pull~57:67
L=pump~0:81,8:45,29:38,36:-26,40:29,50:-32,54:5,55:38,56:37,57:157,58:78,61:65,69:35,72:26,85:-45,88:-31,90:-27,93:45,97:-22
L=pump's~0:33,49:-26,57:44 L=pumped~0:-55,18:24,91:28,99:33 L=pumping~0:-27,83:84,95:27,96:19,99:32
L=push~83:-33 L=pushes~73:50 L=pvc~88:19 L=rain~64:28,69:47,84:28 L=rainwater~0:-31,69:60
L=raised~73:25 L=ran~94:54,96:37 L=rated~12:47,35:24,51:75 L=reach~0:32 L=read~0:72 L=reads~0:31
L=reckon~76:36 L=relief~19:92 L=required~60:42 L=reservoir~73:32 L=rest~83:-46,97:88 L=ridge~46:83
L=rings~89:32 L=rise~86:89 L=rises~86:56 L=road~0:49,88:-24 L=roof~0:-25,6:-38,64:147,81:23
L=roughly~0:-51,30:31,46:24 L=rows~0:-34,14:126,69:33 L=run~0:-31,9:63,26:39,40:30,88:40
L=runs~49:36,66:34 L=s~95:34 L=said~0:63 L=same~28:32 L=sawback~36:24 L=say~0:-39,34:24,88:86
L=says~0:71,75:50,90:28 L=sch~0:36 L=schedule~88:29 L=second~0:43 L=seconds~88:-35 L=self~0:26
L=septic~0:89,69:-20,74:-37 L=set~20:30,57:64,61:110 L=seven~0:-50 L=sheep~3:78 L=should~65:44
L=shower~29:47,32:74,81:55,83:-42,86:40 L=showers~1:-27,27:81,28:65,29:59,32:86,81:-23,82:-35
L=shuts~55:34 L=sink~0:-29,27:39,29:-27,32:17 L=sinks~0:-28,29:49,33:52 L=sit~0:24 L=sits~57:38
L=six~0:45 L=slope~0:32 L=smal~0:32 L=small~36:38,69:-31 L=so~0:15,32:39,69:85 L=solar~0:31,83:-34
L=sold~0:30 L=some~86:26 L=sorry~83:28 L=spacing~15:26 L=speed~0:54,61:42
L=spring~69:46,73:-37,74:-30,85:80,87:81 L=sprinkler~0:34,86:35 L=sprinklers~30:47 L=stable~0:-36
L=staff~81:27 L=stand~73:50 L=standing~97:57 L=stands~83:54 L=start~54:34 L=started~97:29
L=static~0:-25,83:56,90:-33,95:25,97:189 L=stock~0:-67,1:46,5:48 L=stop~55:30 L=stops~29:-33,55:75
L=storage~0:-15,65:31,69:13 L=stored~20:70 L=strainer~0:65,88:-32 L=stream~85:42
L=strings~0:-52,45:22 L=sub~57:52 L=submersible~56:13,57:108,81:-34 L=sucks~72:40
L=suction~72:135,83:21,86:-33,88:-46 L=summer~36:22,81:39,83:42 L=sun~0:35,34:52 L=sunday~0:32
L=supply~0:-35,11:42 L=switch~0:-59,52:23,54:129,55:68,61:-33,88:48 L=swl~83:41,97:44
L=system~49:30 L=take~0:66,85:-41 L=takes~0:64,46:37,79:56
L=tank~27:-40,50:49,51:60,52:54,55:-30,67:81,69:89,73:93,74:71,83:-45,85:-54,86:-50,87:-46
L=tanks~0:27 L=tap~0:58,86:27 L=taps~0:73 L=ten~0:29 L=test~96:34,99:37 L=than~0:-24
L=that~34:28,73:48,98:53 L=that's~81:39
L=the~0:115,1:-24,7:-19,10:-38,11:43,16:-25,18:-32,23:-30,25:-33,32:-46,34:57,36:-60,37:-32,47:-33,50:16,53:-25,54:26,64:90,67:54,74:38,85:35,86:46,95:38,98:-35
L=then~0:52 L=ther~0:51,81:-32 L=there~1:52,21:20,71:40 L=there's~0:-40,11:28,27:44,52:36
L=this~0:111 L=through~0:-25,72:71 L=tilt~48:59 L=tilted~48:37 L=time~28:32
L=to~4:-36,18:24,29:-34,36:-34,40:28,50:49,57:-26,68:26,69:-57,73:27,74:36,83:65,86:47,88:42,89:-46,95:37
L=together~3:38 L=toilet~0:-29,32:74 L=toilets~0:-23,29:55,33:43,81:-33 L=told~73:26
L=tomatoes~0:40 L=too~0:16 L=took~0:46,27:38,59:34,92:34 L=top~73:-34,86:35 L=total~0:-57
L=tower~73:52 L=town~0:46 L=trench~0:22 L=trough~1:40,86:14 L=troughs~0:-51,1:29,82:86,88:38
L=truck~0:40 L=turns~78:41 L=twenty~0:49 L=two~0:33,1:29,29:35,33:-36,44:25,45:25,75:38
L=underground~69:48 L=up~73:36,74:57,84:31,86:56,90:-32 L=uphill~0:-44,86:51
L=upper~0:-50,74:71,86:44 L=us~0:-34,4:16,27:45,29:35,46:24 L=use~0:-28,28:34,75:80,79:51,80:26
L=used~0:22 L=uses~0:62,76:37 L=v~27:51,39:33,40:42 L=valve~19:107,52:-31,61:-35,70:35,71:50
L=variable~61:25 L=vessel~0:-26,21:52,50:62,52:44 L=village~73:30 L=voc~43:63 L=volt~58:39
L=voltage~43:39 L=w~0:-59,43:34,45:31,47:47 L=want~31:48,65:42 L=wants~0:22,28:41,68:67
L=was~0:32,50:24,88:-31,91:23 L=wash~32:26 L=washer~0:42,25:34 L=washing~0:-34,25:32,33:39,81:40
L=water~0:35,5:31,9:39,22:31,36:-30,57:-61,83:160,84:89,87:-27,90:-22,97:97 L=water's~83:35
L=watered~0:35 L=waters~83:38 L=way~0:-42,58:33,88:27
L=we~0:123,28:-30,36:44,57:63,65:30,74:-43,75:81,79:37,81:48,83:-38,87:27 L=we're~81:28
L=we've~0:43 L=well~29:22,67:42,73:-30,83:30,85:18,87:-36,89:18,90:65,91:35,97:-56
L=well's~0:-42,90:69 L=went~0:37 L=when~0:44,29:-34 L=which~0:-38,28:35,67:32 L=wide~90:32
L=will~0:-45,28:31 L=wire~40:86,88:-50 L=with~6:31,50:51,69:-41,70:46,83:31 L=within~0:42,83:24
L=works~0:63 L=write~0:35 L=wrote~85:28 L=x~0:68,44:28 L=yard~1:35 L=yards~87:28 L=year~0:21
L=yet~81:42 L=yield~0:50,85:41 L=your~0:41,34:25 L=yurt~0:34 L=zones~24:59
L=|~3:32,27:12,32:13,49:29,73:-32,81:9,87:37 R=!~0:60 R=(~0:-40,27:54,32:14,81:32 R=)~0:102
R=,~0:47,7:25,9:-56,14:24,26:-44,28:-43,30:35,32:21,33:-22,38:82,40:-47,54:57,61:25,65:-39,68:-31,69:64,74:37,75:40,88:40,90:12,95:-43,97:48
R=.~0:115,1:-29,2:-23,5:-30,6:52,8:-44,17:-44,23:-33,26:-23,28:-36,30:-60,31:-27,34:32,36:47,42:-22,45:-39,49:-33,52:36,53:-45,54:27,61:15,67:14,75:55,76:69,81:49,84:26,85:53,91:-38,92:-42,96:-30
R=0~0:49,6:-38,12:54,42:28,45:34,49:45,69:-40,76:41,85:56,97:-36,99:-44
R=1~0:51,1:-44,22:25,25:-65,29:38,33:-62,45:13,57:41,72:27,73:-49,81:14,85:-34
R=2~27:49,29:-26,33:50,47:-32,51:46,52:43,55:30,83:27,96:21,97:-34
R=3~54:82,63:36,89:30,91:38,99:44 R=4~36:-48,60:48,72:14,73:-44,83:-28,86:15,93:74
R=5~0:55,1:-36,3:17,6:-21,30:25,69:-36,79:17,83:-32,85:-36,88:68
R=6~1:-50,3:27,22:35,56:37,76:44,83:-47,85:15,97:36,99:51 R=7~0:100,57:-32,74:32,97:63
R=8~0:64,49:52,52:56,88:41,93:53 R=9~2:51,79:26,97:30 R=:~88:32 R=;~0:57 R=?~0:104,81:66
R=a~0:21,6:-40,9:58,24:47,27:36,29:31,32:39,33:-28,42:31,52:-51,66:25,74:20,75:37,76:65,90:-45
R=about~0:-38,81:29 R=above~36:16,57:-29,69:-38,73:82,74:66,83:60,86:141,87:34,88:-39,90:-34
R=according~90:50 R=across~0:38,89:48 R=adults~0:24,81:52 R=after~0:41,16:38,79:31,80:17
R=again~0:35 R=ah~49:73 R=air~52:57,92:28 R=all~82:31,83:-43 R=along~86:35 R=alpacas~0:45
R=altitude~0:35,36:40 R=an~0:43,55:44,62:53,88:-64,96:22,97:48
R=and~0:42,2:35,3:18,27:45,28:40,29:29,49:-32,54:76,67:16,82:-52 R=apart~0:46,14:36,15:28
R=are~74:25,81:27 R=around~0:52
R=at~0:31,1:-34,3:-21,4:-31,8:36,22:44,24:93,26:67,28:79,31:54,32:-38,54:51,57:-20,58:67,61:27,74:-46,81:35,83:47,85:-59,86:-36,88:-44,90:52,95:47
R=automatic~0:-34,1:39,82:31 R=autumn~0:31 R=away~0:42,86:-24,88:90 R=back~68:45 R=bank~49:41
R=bar~52:40,54:74 R=barn~73:-26 R=barrel~74:48 R=basins~29:126 R=bath~0:20
R=bathroom~0:63,27:-34,29:-41 R=bathrooms~27:55 R=baths~0:29 R=batteries~0:48,41:38,49:24
R=battery~41:39,49:33 R=be~0:37 R=beds~36:27 R=beef~1:62 R=before~0:-23,11:29,88:26 R=begin~11:38
R=below~0:-74,57:34,69:68,73:33,83:64,86:38,87:12,88:-42,90:-48 R=bends~70:68
R=beside~3:50,69:55,74:-29 R=between~0:-32,14:31 R=bibs~25:28 R=bladder~52:42 R=boiler~21:21
R=booster~69:46 R=bore~0:-54,82:26 R=borehole~86:33,89:44 R=bottom~0:63,88:-44,90:111 R=boys~0:39
R=break~0:-28,17:63 R=brook~82:26 R=bucket~0:83,85:24 R=bulls~1:46,5:52
R=but~0:119,29:41,30:70,81:-38 R=by~0:51,6:29,53:44,75:42 R=c~22:31 R=cabin~0:-15,22:42,87:23,88:39
R=cabins~27:46 R=cable~40:87,88:-38 R=calf~5:77 R=calves~5:96 R=campers~0:-27,81:64 R=can~8:38
R=cart~0:66 R=case~0:29 R=casing~0:-38,89:73 R=cattle~1:93,3:34 R=charged~21:39
R=chickens~0:-84,4:144 R=children~0:69 R=cistern~0:-42,63:34,69:56 R=climbs~86:44 R=cm~12:34
R=comes~0:48 R=concrete~74:47 R=const~61:20 R=controller~0:39,49:-42 R=cottage~87:48 R=couple~5:32
R=covers~0:27 R=cow~5:63 R=cows~0:-95,1:119,2:162,5:61,81:-38 R=creek~72:23,86:71 R=cut~0:-28,54:44
R=dairy~2:55 R=day~0:-28,9:43,13:57,66:89,67:70,76:48 R=days~0:22
R=deep~0:56,73:-30,83:-50,86:-27,88:-20,90:140 R=delivers~0:35 R=delivery~83:44 R=depth~90:34
R=diameter~89:39 R=diesel~0:67 R=don't~0:52 R=down~57:78,73:-44,83:80,86:-47,88:-51 R=drawn~96:36
R=drilled~0:30 R=drink~1:73 R=drinkers~0:-19,82:133 R=drip~0:24,6:105,11:27,15:41,23:43
R=dripper~0:-34,15:46 R=drippers~14:30 R=drop~0:-35,88:-41,93:90 R=drops~0:66,81:-26 R=drum~74:38
R=dry~0:-43,1:74,63:70,77:103 R=each~7:32,14:34,22:35,27:66,75:-37,76:61,82:37 R=earth~0:34
R=east~5:33 R=elbows~70:62 R=electricity~0:46 R=elevation~36:37 R=else~0:-48 R=end~0:-28,83:36
R=enough~69:27 R=ewes~0:-52,3:160 R=expansion~20:79,21:84 R=feeds~0:-31,74:39 R=feet~0:35
R=field~0:30 R=fill~0:37 R=filled~0:35,69:40 R=filter~16:32 R=fine~0:12 R=fire~68:70
R=first~0:34,11:42 R=five~81:-35 R=flat~88:36 R=float~82:113 R=floats~0:-20,82:74 R=floor~69:44
R=folks~81:62 R=foot~5:53,70:58,71:87,72:37,88:-39
R=for~0:33,25:44,68:84,74:-34,75:51,82:30,85:-48,96:69 R=forty~0:41 R=four~81:-63
R=from~4:30,36:-35,69:50,88:56 R=ft~0:55,57:-30,69:22,74:38,83:-28 R=full~0:53,81:57,83:-36,85:33
R=garden~25:24,87:37,88:35 R=gets~0:39 R=gives~0:17,86:-36,87:47 R=go~90:41 R=goats~0:-80,3:184
R=goes~57:52 R=going~28:74 R=golf~0:66 R=gone~0:37 R=got~0:52 R=gpm~90:33 R=gravity~0:-48,73:51
R=greenhouse~6:34 R=grid~83:30 R=ground~57:35,69:60,83:29,86:-29 R=guests~0:42,81:57 R=h~15:39
R=hang~0:-41 R=hangs~0:-33,83:43,90:21 R=have~0:42,2:20 R=hdpe~0:35 R=he~0:70 R=head~1:60
R=header~74:22 R=heads~30:32 R=heater~0:-38,22:135,52:-43 R=heifers~1:59
R=height~83:-35,86:50,88:33 R=hens~0:-86,4:220 R=here~81:43 R=high~0:13 R=higher~73:43,86:70
R=hill~0:-37,74:45,86:36 R=holds~0:-42 R=home~0:39 R=horses~1:145,81:-31,82:-29
R=hose~0:-86,25:189,26:73,28:44,72:84 R=hoses~0:-104,25:173,26:63 R=hour~62:97,96:23
R=hours~0:31,79:31,96:13 R=house~2:73,69:56,73:47,75:17,83:-32,86:92,88:55,90:-47 R=houses~0:56
R=how~0:-33,88:43 R=hut~35:32 R=i~0:44,23:42,50:-44,86:-37,87:22,88:54,96:17 R=ibc~69:35
R=identical~0:-26,53:102
R=in~0:35,2:18,13:36,29:-28,34:46,45:66,50:68,53:49,68:28,73:-33,77:75,79:43,83:17,91:29
R=inch~0:-44,72:32,88:65 R=inside~89:78
R=is~0:51,32:-38,52:-39,69:-45,76:34,85:36,86:-37,89:33,97:44
R=it~0:19,50:2,55:50,69:25,74:-54,83:24,85:46,96:30 R=it's~0:19 R=its~27:23,83:44 R=joined~0:33
R=june~0:-61 R=just~0:47 R=kept~22:32,68:77 R=kids~0:68,3:43,27:-21,81:-31
R=kitchen~0:53,29:-47,32:34 R=l~15:50 R=laid~88:34 R=last~0:41 R=late~0:76 R=later~0:29
R=laying~4:31 R=least~0:33 R=level~69:91 R=lift~86:49 R=like~0:-31,81:29
R=line~0:70,6:-21,72:29,86:-19,87:21 R=lined~90:30 R=lines~11:61 R=litres~81:36 R=loft~74:51
R=log~0:26 R=long~0:29,10:63,72:35,90:-36 R=loo~27:35,32:59 R=loos~32:55 R=lost~46:75 R=low~0:63
R=lower~0:39,87:105 R=lowest~0:-51 R=m~0:19,60:45,74:42,83:-26,86:27,88:48,89:48 R=machine~33:58
R=machines~27:38,33:51 R=mains~25:35,83:86 R=make~46:25 R=makes~83:32 R=may~28:39 R=me~0:51,81:36
R=measured~0:50 R=members~0:23 R=meter~75:41 R=metre~15:48 R=milk~0:-38,2:123
R=milking~0:-50,2:58,79:33,80:27 R=min~79:30 R=minutes~79:20,91:43,96:51
R=mm~0:-14,72:31,83:-19,86:43,88:49 R=modules~44:35 R=months~0:-53,63:72 R=most~81:24
R=mostly~0:-39 R=moved~81:18 R=must~0:36 R=my~0:48,83:27 R=n~0:-61,37:183 R=need~0:36 R=new~0:44
R=next~49:-23,69:39 R=night~0:-25,67:31 R=no~26:35,88:41 R=none~3:29 R=north~37:93 R=not~30:42
R=now~0:-63,27:49,81:23,84:28 R=o'clock~0:42
R=of~0:33,4:-35,6:26,40:65,41:20,46:45,47:47,57:-66,64:43,65:46,68:34,72:92,73:-25,81:17,83:-47,88:44,90:-17,93:94
R=off~54:52,88:64,96:21 R=old~0:50 R=on~1:60,6:30,15:22,26:49,52:-43,54:18,69:-52,74:72,86:-43
R=once~0:-48,26:32,28:94,81:-51 R=one~29:35,72:32,83:-43,85:40 R=ones~1:29 R=only~69:33
R=open~30:20 R=or~0:41,28:73 R=other~29:34 R=our~0:32,83:49 R=out~0:33,39:41,54:75
R=outhouse~0:-21,27:33 R=outside~69:40 R=over~0:51,73:57 R=own~0:-27,27:33 R=paddocks~3:27,82:42
R=pairs~5:118 R=panel~44:55 R=panels~44:51,45:87,49:57,81:-39 R=parallel~0:-30,53:68
R=pasture~0:-41,1:28 R=pe~0:49,86:-38 R=people~27:-33,81:167,82:-29 R=per~15:38,27:-43,62:46
R=person~81:99 R=persons~27:-38,81:149 R=pex~0:28,88:26 R=phase~0:35 R=pieces~30:29 R=pigs~0:40
R=pipe~0:84,83:-32,88:63,93:52 R=plastic~90:26 R=please~0:35 R=plus~1:-41,88:32
R=poly~0:70,69:33,83:-33,88:35 R=power~0:-65,25:52,29:20 R=pre~21:23
R=pressure~0:-50,17:93,25:71,52:66,61:29,69:-33,78:47,86:55 R=psi~58:46
R=pump~18:41,26:52,29:-37,37:45,40:6,57:-29,61:44,69:53,73:-34,74:-51,83:77,85:38,87:-53,88:-32,89:52,90:48,95:21
R=pumphouse~0:58 R=pumping~97:35 R=pumps~0:-32,53:93,69:25 R=pupils~0:-32,81:80 R=pushes~83:35
R=put~0:56,87:28 R=pvc~0:55 R=rain~81:-27 R=rams~0:53 R=ran~83:-24,97:24 R=rated~0:42 R=reach~88:33
R=reaches~88:29 R=regulator~11:29 R=relief~22:27 R=reserve~65:48 R=reservoir~0:28 R=ridge~0:49
R=right~49:-27,69:57 R=rim~97:23 R=rise~86:45 R=road~0:34,86:-24 R=roof~64:40 R=rooms~0:-27,27:38
R=row~11:42 R=rows~10:61,12:48,14:68,15:71,88:-49 R=run~0:36,16:40,23:9,27:-62,28:113
R=runs~72:30,95:25 R=same~31:21,88:52 R=says~0:60,62:28 R=sea~36:57 R=seconds~0:46,85:41
R=series~45:67 R=set~58:49,61:70 R=shed~69:45 R=sheep~0:-15,1:25,3:99 R=should~0:-66,28:46
R=shower~27:188,28:48,29:34,82:-31 R=showers~0:-22,1:-32,27:191,28:111,29:-25,82:-38 R=side~53:45
R=since~0:-46 R=sink~0:-54,27:23,29:139,32:-26,81:31 R=sinks~27:33,29:155,81:-53 R=sits~52:30,74:24
R=slope~86:44 R=so~0:116,85:55,86:-42 R=solar~1:47 R=something~0:37 R=sorry~0:31
R=south~0:-31,38:112 R=spring~0:29,83:-35,87:48 R=sprinkler~0:-29,30:29
R=sprinklers~0:-40,30:167,31:71 R=staff~0:65 R=stands~0:21,89:29 R=start~55:25
R=starts~0:-47,54:63,62:81 R=static~90:46 R=steers~0:-61,1:86 R=storage~65:22 R=stream~0:-42,83:42
R=string~0:-47,47:55 R=strings~47:62 R=sub~0:37,90:-40 R=sucks~92:28
R=suction~60:29,69:-43,72:122,83:34,86:-44 R=summer~0:-45,34:21,83:73 R=supply~0:-33
R=surface~0:65,49:-27,69:-28 R=switch~0:7,50:41,54:32 R=takes~0:83
R=tank~21:46,22:-28,50:36,52:64,55:54,69:84,73:76,74:48,81:-47,83:-37,86:-36 R=tanks~0:57,17:61
R=tap~0:44,25:50 R=tape~0:-31,11:29 R=teachers~81:27 R=tents~0:46 R=terrace~0:35,69:-40 R=th~46:56
R=than~83:-27,86:32,87:45 R=that~0:6,90:32
R=the~0:53,2:-49,6:-42,8:41,11:17,22:-43,23:-38,28:42,33:-32,37:-29,45:-37,46:41,47:-37,54:-72,55:-41,58:-30,69:30,73:52,74:39,77:70,83:62,86:54,87:53,93:-44
R=them~3:46,28:54 R=then~0:26,86:-51,91:43 R=there~83:33 R=they~0:96,30:22 R=three~81:34
R=through~86:-43 R=tilt~48:28 R=time~24:64,28:26,31:43 R=times~0:32
R=to~0:32,1:-48,4:25,46:37,69:40,73:42,81:-50,83:21,86:33,87:44,88:45 R=toddler~0:48,81:-30
R=together~0:-39,25:28,26:78,27:-44,28:83 R=toilet~29:20,32:116,81:-38
R=toilets~0:-47,27:25,29:54,32:178 R=too~0:33 R=top~77:32,87:-36,97:58 R=total~88:22 R=tote~74:32
R=town~0:55,67:34 R=trailer~0:43 R=trees~0:39,46:27 R=trough~0:-36,82:134
R=troughs~0:-42,1:25,81:-44,82:160 R=ts~0:37 R=two~1:38,6:31,27:-51,47:-62,79:50,81:51
R=under~0:35,86:44,97:34 R=up~61:31,73:42,83:41,86:71,90:-39 R=uphill~0:-38,86:86
R=us~73:24,81:132,87:29 R=v~0:78 R=valve~0:-37,70:54,71:81 R=vegetables~6:22
R=vessel~0:-61,20:80,52:73 R=w~0:78,45:55 R=wait~0:67 R=want~0:11 R=was~0:26 R=wash~25:26,29:47
R=washer~0:-20,33:73 R=washers~33:59 R=washing~33:104,81:-34
R=water~13:39,22:73,27:20,32:-28,52:-40,73:-62,83:158,85:39,86:-50,87:-36,88:-38,90:63
R=waterers~0:-45,82:60 R=wc~32:72 R=wcs~0:-31,32:41 R=we~0:52,27:-55,29:23,38:97,62:41,86:-30
R=we'd~97:35 R=we've~0:35 R=week~0:26 R=well~29:-37,57:14,69:-32,86:24,87:36,89:27,90:55
R=wellhead~0:-28 R=what~0:-39,46:23,81:22,88:35 R=when~0:61,83:-39,95:41 R=where~0:-26,11:44,83:42
R=which~0:48,23:52,69:-15 R=why~81:43 R=wide~0:48 R=winter~46:29 R=wire~40:111,88:-54
R=with~5:74,27:29,69:79,81:27,82:58,83:-44,86:-29,90:56 R=without~0:-59,65:83 R=works~0:32
R=workshop~0:-33,81:33 R=would~81:35 R=x~0:38 R=yard~0:36 R=year~0:71 R=years~0:23 R=yet~61:36
R=yield~83:21 R=zones~0:-63,16:133,23:83,81:-38 R=|~27:31,81:30,97:-44 angleC=latitude~38:30
angleC=lies~34:51 angleC=panel~48:49 angleC=panels~48:102 angleC=sun~34:51 angleC=tilt~48:59
angleC=tilted~48:37 angleC=w~48:52 angleL0=at~48:42 angleL0=is~34:30 angleL0=latitude~38:30
angleL0=panels~48:42 angleL0=tilt~48:59 angleL0=tilted~48:37 angleL0=we~37:33 angleL1=the~34:69
angleL2=,~48:47 angleL2=.~38:39 angleL2=4~34:45 angleL2=mm~34:44 angleL2=panels~48:41
angleM=cistern~0:42 angleM=drip~0:37 angleM=pump~38:36 angleM=tank~38:52
angleR0=.~34:41,38:45,48:26 angleR0=and~0:41 angleR0=n~37:71 angleR0=north~37:93
angleR0=south~38:55 angleR0=tilt~48:28 angleR1=pump~37:56 angleT=power.facing~48:110
angleT=power.panel~48:88 angleT=power.series~48:50 angleT=power.source~48:131
angleT=pump.height~38:42 angleT=pump.placement~38:21 angleT=water.kind~38:37
angleT=water.level~37:53 angleT=way.pipe~34:53 anglea=.~34:23,48:20 anglea=south_.~38:52
angleb=are_at~37:33 areaC=,~6:29,64:32 areaC=0~0:-58,64:51 areaC=garden~6:41 areaC=house~0:52,6:-36
areaC=off~64:39 areaC=rain~64:40 areaC=roof~6:-38,64:57 areaL0=.~64:33 areaL0=:~6:40
areaL0=drip~6:46 areaL0=garden~0:48 areaL0=i~0:-38,6:52 areaL0=is~0:-40,6:40,64:36 areaL0=of~0:45
areaL0=roof~64:29 areaL0=the~6:18 areaL0=we~0:63 areaL1=,~0:52 areaL1=a~6:46
areaL1=garden~0:-33,6:42 areaL1=it~0:-39,6:43 areaL1=my~0:46,6:-40 areaL1=pump~0:26
areaL1=roof~0:-18,64:46 areaL1=the~0:-12,64:52 areaL2=,~64:51 areaL2=.~0:13,6:-38,64:54
areaL2=0~0:16 areaL2=1~6:56 areaL2=2~0:41 areaL2=4~0:56,6:-34 areaL2=8~0:42 areaL2=:~0:38
areaL2=ft~6:39 areaL2=l~0:44 areaL2=m~0:41,6:-40 areaM=cistern~64:31 areaM=creek~6:47
areaM=drip~0:37,6:127 areaM=pump~0:42,6:24,64:68 areaM=roof~6:-47,64:91 areaM=spring~0:60,6:-45
areaM=tank~0:37,64:31 areaR0=,~0:62 areaR0=.~0:16,6:71,64:35 areaR0=drip~6:79 areaR0=in~0:34
areaR0=of~6:47 areaR0=roof~64:40 areaR0=tomatoes~0:35 areaR0=vegetables~6:22 areaR0=with~0:35
areaR1=,~0:25 areaR1=.~0:-30,6:63 areaR1=0~0:50,6:-26 areaR1=5~0:58,6:-17 areaR1=a~6:-34,64:49
areaR1=all~0:-41,6:39 areaR1=drip~0:22,6:37 areaR1=in~6:45 areaR1=it~6:49 areaR1=on~6:39
areaR1=pump~0:63,64:-29 areaR1=the~64:26 areaR2=,~6:23 areaR2=.~0:51 areaR2=0~6:42 areaR2=1~0:37
areaR2=3~0:35 areaR2=4~0:46 areaR2=8~0:37,6:-29 areaR2=m~0:91,6:-19,64:-50 areaR2=zones~0:-41,6:47
areaT=beds.area~0:30 areaT=power.panel~6:41 areaT=power.source~0:28 areaT=pump.height~0:-29,6:45
areaT=pump.placement~6:45,64:19 areaT=pump.works~64:45 areaT=store.fills~0:-36,64:35
areaT=store.volume~0:51 areaT=water.kind~0:53,6:56,64:20 areaT=way.climb~6:25
areaT=way.length~0:75,6:16 areaT=way.pipe~0:55,6:48,64:-26 areaa=~6:63 areaa=.~0:31,64:24
areaa=of_tomatoes~0:35 areaa=of_vegetables~6:22 areaa=with_drip~0:40 areab=~0:37,6:29
areab=roof_is~64:32 bareC=(~0:-43,81:21 bareC=,~4:20,32:24,33:31,38:-31,70:43,71:28,81:1,83:52
bareC=0~1:43,29:-44,32:-35,45:37,47:34,70:40,90:41 bareC=1~2:-42,3:-40,29:71,70:28,82:45
bareC=2~0:27,1:-39,27:-4,32:23,33:20,47:27,71:34,81:-25
bareC=3~1:46,3:62,26:54,29:-28,31:72,47:49,82:-46,83:41 bareC=4~45:29,70:32,81:-53
bareC=5~0:-3,4:-37,39:35,55:28,70:46,71:30,90:45 bareC=6~5:32 bareC=7~0:-50,30:25,81:28
bareC=8~3:50,81:-57 bareC=9~5:45 bareC=:~25:34,47:53,82:54 bareC=acre~24:25 bareC=adults~0:84
bareC=agist~0:37 bareC=all~27:30,47:26,81:-27 bareC=am~0:34 bareC=array~0:-34 bareC=back~0:40
bareC=bar~55:80 bareC=barn~0:-60,1:44,82:43 bareC=basins~29:-38,32:36 bareC=bathrooms~0:-32,29:34
bareC=bed~0:36 bareC=between~0:36 bareC=blok~0:36 bareC=cabin~81:50 bareC=cabins~0:39,27:-36,81:29
bareC=call~0:41 bareC=calves~0:-27,1:50 bareC=chalet~0:43 bareC=come~30:30 bareC=comes~0:44
bareC=cottage~0:-22,81:28 bareC=couple~30:27 bareC=cows~0:-27,1:74,3:26,4:62,5:47 bareC=cut~54:35
bareC=dairy~2:32 bareC=day~0:-48,81:43 bareC=deep~57:25,83:54 bareC=drip~0:-35,23:42,24:25,25:41
bareC=dry~63:58 bareC=each~0:39 bareC=eight~28:35 bareC=eighty~0:-37 bareC=eleven~0:-50,82:24
bareC=every~0:53 bareC=ewes~1:44 bareC=family~0:-56,81:66 bareC=farm~0:68 bareC=feet~0:-71,70:44
bareC=five~33:28 bareC=foot~0:-36,70:35 bareC=four~24:31 bareC=from~81:-42 bareC=ft~71:37
bareC=gal~0:24 bareC=girls~0:33 bareC=goats~0:-33,3:52,4:79 bareC=good~39:42 bareC=gpm~0:-52
bareC=grid~37:17 bareC=group~0:25 bareC=guesthouse~0:-44,27:39,81:39 bareC=guests~0:25
bareC=half~16:50,29:-33 bareC=hallo~0:26 bareC=hav~0:43 bareC=hello~0:38 bareC=helo~0:42
bareC=hens~0:-44,3:38 bareC=hi~0:90,1:-62 bareC=horse~0:-30 bareC=horses~0:-35,25:38,82:39
bareC=hose~0:-13,31:49,81:28 bareC=hoses~0:-18,26:67,30:25 bareC=house~3:37,29:36
bareC=household~81:50 bareC=hp~0:37 bareC=hundred~81:68 bareC=if~0:35 bareC=it's~81:50
bareC=its~0:56 bareC=june~0:27 bareC=just~0:-14 bareC=l~81:22 bareC=latitude~0:-58,37:94,38:79
bareC=laundry~33:45 bareC=like~0:-56,29:56 bareC=line~0:23,70:32 bareC=live~0:-29,81:42
bareC=look~0:31 bareC=m~57:77,70:29 bareC=machine~25:38 bareC=machines~33:54 bareC=make~81:27
bareC=me~1:52 bareC=milk~0:-24,1:35,2:63 bareC=min~0:25 bareC=mm~70:48,71:39 bareC=months~63:59
bareC=mother~81:32 bareC=mppt~39:42 bareC=much~27:47 bareC=n~0:-30 bareC=night~0:42
bareC=off~37:14,55:40 bareC=one~0:29,29:37,32:50,46:49,81:-37 bareC=only~31:53 bareC=or~0:36,28:-44
bareC=over~27:38 bareC=panel~0:39 bareC=panels~0:25,45:71,47:98,81:-44
bareC=people~0:-23,3:44,4:46,5:51,81:49 bareC=pipe~0:42,71:33 bareC=plot~0:48 bareC=plus~0:-23,4:42
bareC=poly~0:-68 bareC=power~47:47 bareC=pressure~0:65,81:-32 bareC=psi~0:40
bareC=pump~27:44,45:-50,57:51,62:63 bareC=quick~0:38 bareC=right~0:-41 bareC=roof~81:30
bareC=run~0:41,26:39 bareC=runs~0:43 bareC=shade~0:31 bareC=sheep~0:-50,3:78
bareC=shower~29:53,32:55,33:48 bareC=showers~0:-54,1:-36,27:70,28:60,29:58,32:50,33:59
bareC=sink~0:-44,27:63,29:-26,32:20 bareC=sinks~0:-59,29:35,32:3,33:33 bareC=sir~0:33
bareC=sit~0:42 bareC=six~0:-44,28:23,47:33 bareC=smal~0:85,27:-39 bareC=so~81:62 bareC=solar~0:52
bareC=sorry~81:33 bareC=spring~0:29 bareC=sprinklers~0:-46,30:33,31:65 bareC=stable~0:-33
bareC=stands~0:-27 bareC=starts~62:63 bareC=static~97:74 bareC=stock~0:-40 bareC=stops~55:43
bareC=strings~45:26 bareC=sub~90:30 bareC=submersible~0:31 bareC=suction~70:81,71:44
bareC=surface~0:-33 bareC=switch~54:31 bareC=tank~0:2,82:33 bareC=teenage~0:33
bareC=there~0:-74,27:8,28:38,29:65,71:39,81:-38,82:48 bareC=thirty~1:27 bareC=three~0:44,29:-41
bareC=toilet~0:-12,32:77 bareC=toilets~0:-42,29:20,33:66 bareC=took~27:38 bareC=total~0:-31,30:59
bareC=troughs~0:-26,82:88 bareC=twenty~81:52 bareC=two~26:63,29:6,33:-35,45:22 bareC=up~81:51
bareC=us~0:-42,4:10,27:41 bareC=uses~0:35 bareC=v~39:41 bareC=valve~0:-64,70:35 bareC=volt~0:35
bareC=w~0:-14,45:81,47:51 bareC=want~0:-6,31:46 bareC=wants~28:41 bareC=was~0:46 bareC=wash~32:26
bareC=washing~25:34,33:43 bareC=water~0:-22,5:27,83:87 bareC=wc~0:57 bareC=we're~81:19
bareC=well~0:45,81:-25,83:29 bareC=which~0:-33,28:50 bareC=yard~0:-37,1:34 bareC=zones~24:59
bareL0=(~81:48 bareL0=)~0:-25,3:21 bareL0=,~0:-13,1:53,2:-42,4:41,29:36,32:48,33:35,37:42,71:27
bareL0=.~3:46,5:25,17:59,27:37,30:-43,32:52,81:71 bareL0=0~0:34,1:48,25:-32
bareL0=1~4:-30,29:61,33:38 bareL0=2~0:-35,25:48,29:21,32:-48,33:14 bareL0=3~0:38,3:19,81:-26
bareL0=4~3:56,27:39 bareL0=5~0:54,81:-54 bareL0=6~0:22 bareL0=8~81:-23
bareL0=:~0:-48,1:27,3:23,27:37,47:42,81:19 bareL0=?~0:-17,81:58 bareL0=about~3:63
bareL0=adults~0:36 bareL0=all~81:-33 bareL0=also~3:39
bareL0=and~1:41,4:63,25:22,26:50,28:-38,39:36,70:24,81:-73 bareL0=are~0:-26,63:26,81:59
bareL0=at~0:32,55:52,57:43,83:57 bareL0=august~0:26 bareL0=barn~0:-34,82:43
bareL0=basins~0:34,29:-37 bareL0=bathrooms~0:45 bareL0=beef~0:51 bareL0=between~0:36
bareL0=cattle~0:34,1:-38 bareL0=come~30:31 bareL0=cows~0:-53,1:38,5:64 bareL0=dairy~2:55
bareL0=day~0:-43,81:39 bareL0=dry~63:31 bareL0=family~0:-30,27:-26,81:98 bareL0=foot~0:-37,70:37
bareL0=four~0:-59 bareL0=ft~0:42 bareL0=garden~81:23 bareL0=goats~3:37,4:35 bareL0=gpm~0:-37
bareL0=grid~37:18 bareL0=has~0:-17,27:16,29:29 bareL0=have~0:-39,27:39 bareL0=head~0:-36
bareL0=hens~0:-47,3:40 bareL0=higher~0:-44 bareL0=horses~0:-15,82:35 bareL0=hose~0:-53,25:48,81:31
bareL0=hoses~0:-25,30:42 bareL0=house~27:40 bareL0=household~0:-26,81:72 bareL0=i~0:37,81:-32
bareL0=in~0:-47,16:37,32:36,39:39,45:-30,47:74,54:35,81:-38 bareL0=is~0:43,71:46,81:-35,90:28
bareL0=it~0:34,81:31 bareL0=it's~81:41 bareL0=keep~2:32,4:48 bareL0=kids~0:68 bareL0=kitchen~0:72
bareL0=latitude~0:-58,37:94,38:79 bareL0=laundry~33:45 bareL0=live~0:-22,81:45 bareL0=m~82:39
bareL0=machines~33:59 bareL0=make~0:-23,81:27 bareL0=may~0:40 bareL0=maybe~0:44 bareL0=milk~2:47
bareL0=months~63:32 bareL0=morning~0:21 bareL0=my~45:24 bareL0=of~4:32,45:66,81:57
bareL0=off~37:17,55:43 bareL0=on~30:43 bareL0=one~29:63,32:36,46:52 bareL0=only~31:52
bareL0=or~0:41,81:21 bareL0=our~0:27,81:22 bareL0=own~0:-31,81:30 bareL0=pairs~1:57
bareL0=panels~0:15 bareL0=people~32:-38,81:30 bareL0=pipe~0:68 bareL0=plus~4:40 bareL0=poly~0:-62
bareL0=pump~0:-54,29:34,57:62 bareL0=roof~81:18 bareL0=run~0:-35,26:43,31:29 bareL0=series~47:37
bareL0=seven~32:35 bareL0=sheep~0:-30,3:52 bareL0=shower~0:-46,25:30,29:26,32:60
bareL0=showers~27:101,32:19,81:-55 bareL0=sink~27:44,29:-13,32:36,81:-51 bareL0=sinks~29:64
bareL0=small~0:-32 bareL0=so~0:-71,81:31 bareL0=solar~0:47 bareL0=stable~1:34 bareL0=static~97:81
bareL0=stock~0:-35,5:52 bareL0=stops~0:-60,55:42 bareL0=strings~0:-17,45:39 bareL0=summer~81:45
bareL0=tank~5:30 bareL0=that~0:33 bareL0=the~27:26 bareL0=there's~27:47 bareL0=three~0:42,27:-23
bareL0=time~28:33 bareL0=to~0:75,4:-27 bareL0=toilet~32:47 bareL0=toilets~0:-43,29:25,32:76,33:45
bareL0=trough~1:43 bareL0=troughs~0:-32,82:50 bareL0=two~1:40,45:33 bareL0=us~0:-33,4:24
bareL0=v~27:42,29:-37,39:42 bareL0=valve~70:37 bareL0=w~0:-21,45:35 bareL0=want~31:53
bareL0=wants~28:41 bareL0=was~0:43 bareL0=washing~33:49 bareL0=water~0:-32,5:40,83:72
bareL0=we~0:-42,81:62 bareL0=we're~81:13 bareL0=well~0:-20,29:35,90:29 bareL0=when~0:60
bareL0=which~28:35 bareL0=with~4:18 bareL0=yard~1:37 bareL0=zones~24:43
bareL0=|~0:41,1:26,29:-33,81:58 bareL1=(~3:48,81:-45 bareL1=)~0:40
bareL1=,~1:-37,4:31,25:27,32:-28,33:46,47:53,82:6
bareL1=.~2:-39,26:51,30:47,32:42,33:44,55:37,63:52,81:-27
bareL1=0~4:-41,25:46,30:35,82:47,83:51,90:44 bareL1=1~55:45,81:41,90:47 bareL1=2~0:-42,16:47
bareL1=3~3:-37,26:42,81:30,83:52 bareL1=4~1:40,3:-36,45:43 bareL1=5~0:-28,39:35,55:30,81:19,90:45
bareL1=6~0:22 bareL1=9~5:45 bareL1=:~1:-51,25:46,32:67 bareL1=;~0:18 bareL1=a~0:7,29:-51,70:49
bareL1=about~0:49,82:31 bareL1=above~0:-33,81:32 bareL1=adults~27:38,32:-31 bareL1=and~81:39,82:56
bareL1=are~5:39 bareL1=at~1:-35,28:41,29:-22,32:36,82:59,90:55,97:42 bareL1=back~0:38
bareL1=bar~55:52,81:-21 bareL1=both~0:-32 bareL1=but~27:52,31:59 bareL1=cabin~0:90,81:-39
bareL1=concrete~0:31 bareL1=cows~3:50 bareL1=deep~0:-27,57:33 bareL1=down~0:-48 bareL1=drip~23:49
bareL1=drops~30:32 bareL1=each~0:-20,81:28 bareL1=eleven~82:25 bareL1=end~81:27
bareL1=family~27:26,81:-29 bareL1=feet~23:63,81:-37 bareL1=fifty~0:-36,27:30 bareL1=for~39:40
bareL1=four~0:51,24:32 bareL1=from~0:35,3:39 bareL1=ft~81:26,82:-33 bareL1=gallon~5:27
bareL1=generator~81:33 bareL1=ground~47:51 bareL1=guests~0:20 bareL1=half~0:28 bareL1=has~0:45
bareL1=have~0:30,27:-38 bareL1=head~0:72,81:-22 bareL1=hello~45:26 bareL1=higher~0:29
bareL1=house~3:34,29:33 bareL1=how~81:33 bareL1=i~0:-38,81:26 bareL1=in~0:-24,1:27,3:-40
bareL1=inch~0:-37 bareL1=inside~32:42 bareL1=is~0:-27,32:39,81:50 bareL1=its~81:28
bareL1=kids~27:56 bareL1=kitchen~0:-45,81:40 bareL1=l~0:-34 bareL1=latitude~0:34
bareL1=m~0:-49,82:-35 bareL1=machine~0:32 bareL1=many~81:29 bareL1=meters~81:-28 bareL1=milk~0:-29
bareL1=my~0:30 bareL1=no~29:22,81:18 bareL1=of~0:-51 bareL1=on~0:56,27:-28 bareL1=our~81:36
bareL1=over~27:30 bareL1=panels~45:26 bareL1=persons~27:41 bareL1=please~0:43
bareL1=poly~0:56,1:42,81:-34 bareL1=power~81:-33 bareL1=pump~0:17 bareL1=same~28:36
bareL1=shower~29:22 bareL1=showers~27:-19,28:34,29:31,32:68 bareL1=sink~0:-39,33:35
bareL1=sinks~0:-40,25:31,32:26,33:47 bareL1=small~0:47 bareL1=sprinklers~30:51 bareL1=stable~5:29
bareL1=staff~81:27 bareL1=stock~1:46 bareL1=strings~0:-30,81:25 bareL1=submersible~0:32,81:-33
bareL1=switch~54:32 bareL1=the~0:-72,1:-24,17:49,28:42,30:38,46:48 bareL1=there~1:49,28:44
bareL1=time~32:34 bareL1=together~3:39 bareL1=toilet~29:42 bareL1=toilets~32:-27
bareL1=two~4:25,33:-42,81:55 bareL1=under~0:42 bareL1=up~81:-31 bareL1=use~28:37 bareL1=w~47:23
bareL1=wc~0:28 bareL1=well~82:58 bareL1=when~29:-33,30:31,81:38 bareL1=which~0:-36 bareL1=with~3:33
bareL1=|~27:21,32:40,47:-37 bareL2=(~0:-34 bareL2=)~27:-27,33:48
bareL2=,~0:-32,1:42,23:-55,29:20,30:67,32:35,53:-30,62:20,71:36,81:22,97:59
bareL2=.~0:-23,1:-33,16:65,23:50,28:45,29:35,30:48,31:-63,33:50,37:-40,38:54,62:50,81:45,90:54
bareL2=0~1:25,2:-44,3:36,17:49,29:26,82:70 bareL2=1~1:54,25:58,29:34,33:31,47:-29,70:22
bareL2=2~23:57,29:-20,30:48,32:63 bareL2=3~25:-63,26:60,29:57,47:43,81:28,82:-45
bareL2=4~0:-24,26:65,45:34,47:39,62:44,63:37 bareL2=5~0:15,4:33,81:25 bareL2=6~16:61,27:48
bareL2=7~30:43,81:55 bareL2=8~82:38 bareL2=9~32:-32,81:37 bareL2=:~0:-27,1:-38,27:39,29:34
bareL2=above~0:-54,24:61,33:37,81:39 bareL2=across~0:26 bareL2=adults~32:41 bareL2=ah~39:42
bareL2=all~81:27 bareL2=away~0:75 bareL2=back~0:35 bareL2=bar~27:-44,54:48,81:41
bareL2=barn~0:-45,3:61 bareL2=bathrooms~0:-38,32:46 bareL2=baths~0:46 bareL2=booster~0:44
bareL2=borehole~57:47 bareL2=buried~28:37 bareL2=buy~0:25 bareL2=by~0:-20,63:33
bareL2=cabin~0:-36,29:40 bareL2=children~0:50 bareL2=comes~0:50 bareL2=counted~0:32,27:-31
bareL2=couple~0:29,81:-27 bareL2=cut~0:-53 bareL2=cuts~81:39 bareL2=dear~0:38 bareL2=do~28:36
bareL2=don't~30:31 bareL2=down~26:62,27:-44 bareL2=drip~0:-35,24:27 bareL2=drop~0:33
bareL2=each~81:28 bareL2=feet~0:-18 bareL2=field~81:32 bareL2=fill~81:56 bareL2=fills~0:-29,81:30
bareL2=five~0:-60,3:46,33:44 bareL2=float~0:-34,1:48 bareL2=four~32:43,81:29 bareL2=from~0:29
bareL2=ft~4:28,29:22 bareL2=full~0:24 bareL2=gal~32:-38,33:36,81:46 bareL2=gauge~0:44
bareL2=generator~0:-34 bareL2=goats~4:63 bareL2=goes~0:51 bareL2=got~0:90,81:-65
bareL2=gpm~0:-34,81:33 bareL2=grid~0:26,81:-38 bareL2=grown~0:36 bareL2=hav~0:36 bareL2=hdpe~0:-25
bareL2=height~0:30 bareL2=hello~30:28 bareL2=helo~0:49 bareL2=high~0:-60,90:30 bareL2=higher~0:-55
bareL2=holds~0:33 bareL2=horses~3:54 bareL2=hose~0:-62,71:51 bareL2=hoses~0:-39,3:39
bareL2=hot~0:30 bareL2=hour~0:-31,81:21 bareL2=house~81:71 bareL2=how~0:-46 bareL2=hundred~0:60
bareL2=husband~81:29 bareL2=i'd~81:67 bareL2=inch~28:32,29:67 bareL2=inside~0:-34
bareL2=irrigate~0:50 bareL2=it's~0:47,29:-53 bareL2=jet~0:35 bareL2=just~0:34 bareL2=kids~0:28
bareL2=km~0:-36 bareL2=l~0:-83,3:22,25:36,54:46,62:47 bareL2=lawn~31:69 bareL2=left~0:30
bareL2=level~81:-41 bareL2=line~70:33 bareL2=liters~0:37 bareL2=litre~0:-41,81:38
bareL2=litres~82:41 bareL2=live~0:-27 bareL2=long~0:-27 bareL2=lower~0:19 bareL2=lying~0:64
bareL2=m~0:-60,5:-32,23:17,26:54,33:53 bareL2=mains~0:-55,27:25 bareL2=makes~0:-25
bareL2=may~0:-34,81:46 bareL2=maybe~0:-33 bareL2=me~0:49 bareL2=meter~0:84 bareL2=meters~0:64
bareL2=min~0:-44,29:21 bareL2=mm~17:42,23:46 bareL2=moment~0:40 bareL2=morning~0:-44
bareL2=moved~0:25 bareL2=mppt~39:42 bareL2=need~0:50 bareL2=no~29:29 bareL2=north~46:56
bareL2=nothing~0:-33 bareL2=one~81:38 bareL2=out~0:-30,81:23 bareL2=outlets~28:40 bareL2=over~0:40
bareL2=panels~0:-61,27:31,47:35 bareL2=pe~0:-76,28:58 bareL2=people~27:56,29:-28,32:43
bareL2=persons~27:-33,32:42 bareL2=phase~0:-24 bareL2=pipe~17:49 bareL2=plastic~0:24
bareL2=poly~25:46 bareL2=pond~0:42 bareL2=pressure~81:28 bareL2=promised~0:55
bareL2=pump~1:-47,27:25,31:55,33:55,62:49,71:61,81:-27,82:-50,97:45 bareL2=push~27:26
bareL2=pvc~0:-32,25:60 bareL2=quarter~0:-41,24:25 bareL2=rain~63:31 bareL2=read~0:24
bareL2=roof~63:35 bareL2=run~0:24 bareL2=runs~81:39 bareL2=says~0:-36 bareL2=series~0:-26,81:27
bareL2=set~0:37,54:36 bareL2=shed~0:-45 bareL2=should~81:-30 bareL2=shower~4:39,81:66
bareL2=showers~27:-60,29:27,32:35,33:71 bareL2=sink~81:41 bareL2=sinks~81:53 bareL2=sir~0:30
bareL2=six~28:29 bareL2=smal~0:53 bareL2=sorry~0:57 bareL2=speed~0:57
bareL2=sprinklers~0:-30,31:114 bareL2=starts~29:-37,33:-34,55:41,81:30 bareL2=stop~0:28,81:-30
bareL2=stops~0:32,33:-32 bareL2=sub~90:30 bareL2=suction~70:49,71:34 bareL2=switch~55:34,81:41
bareL2=switches~0:-41,55:44 bareL2=tank~0:-47,4:32,32:31,81:78,90:26 bareL2=team~81:-25
bareL2=there~1:-41,27:25 bareL2=times~0:-33 bareL2=toilet~0:25,25:28,81:-27 bareL2=toilets~0:52
bareL2=top~5:32 bareL2=trough~0:37 bareL2=troughs~3:26 bareL2=two~4:49 bareL2=up~0:47
bareL2=uses~0:-53 bareL2=v~0:54 bareL2=volt~0:-50,81:29 bareL2=volts~82:43
bareL2=w~0:-80,1:28,27:25,45:55 bareL2=want~0:-19,30:31,81:27
bareL2=water~0:39,26:57,29:-49,57:77,71:67 bareL2=way~27:29 bareL2=we've~0:36 bareL2=well~83:32
bareL2=when~0:98,29:-44,33:-34 bareL2=which~0:-49,28:33 bareL2=who~0:-25,32:24 bareL2=wife~0:-32
bareL2=will~0:-41 bareL2=would~0:-25,4:40,27:32 bareL2=x~27:15 bareL2=yard~0:-24,82:27
bareL2=yield~81:40 bareL2=you~28:38 bareL2=yurt~0:-62 bareL2=|~0:35,3:32,25:41,32:38
bareM=cistern~1:-48,29:35,63:58,81:32 bareM=creek~82:21
bareM=drip~0:76,1:-42,15:43,16:102,23:105,24:101,27:-22,29:-38,32:-46
bareM=pump~2:16,3:24,5:44,16:68,25:46,28:19,29:56,30:4,31:48,53:53,62:24,71:60,82:78
bareM=roof~63:103 bareM=spring~0:53,3:44,5:34,17:67,29:39,30:-30,45:35,81:43
bareM=tank~1:59,16:-65,17:21,23:28,27:59,30:-22,32:57,33:35,37:-40,38:46,53:20,63:40,90:47
bareM=well~0:22,1:49,4:53,5:20,28:33,32:25,57:-36,82:-18,90:53 bareR0=(~0:-48,81:39 bareR0=)~0:80
bareR0=,~0:-34,3:10,27:78,28:-29,29:38,32:74,70:43
bareR0=.~0:-74,1:22,3:39,5:-41,27:25,28:-48,29:32,33:24,37:33,38:33,55:37,63:35,81:43,83:33
bareR0=0~0:52,30:23 bareR0=1~32:69,33:-29,47:48 bareR0=2~0:80,1:-40 bareR0=3~0:72,27:32
bareR0=4~45:46,81:58 bareR0=5~0:44 bareR0=6~0:50,3:43 bareR0=:~1:25 bareR0=?~0:35
bareR0=a~24:58,27:37,39:40 bareR0=adults~0:29,81:52 bareR0=all~82:27 bareR0=an~62:56
bareR0=and~3:25,23:50,27:24,28:37,29:17 bareR0=are~0:32 bareR0=at~24:123,26:30,28:67,31:77
bareR0=automatic~82:32 bareR0=basin~29:78 bareR0=basins~27:-24,29:165,32:-35,81:-33
bareR0=bathroom~0:86,27:-29 bareR0=bathrooms~27:66,81:-37 bareR0=baths~0:33 bareR0=beef~1:65
bareR0=bends~70:68 bareR0=bibs~25:33 bareR0=boys~0:48 bareR0=break~17:63 bareR0=bulls~1:53
bareR0=cabins~27:50 bareR0=calf~0:-27,5:65 bareR0=calves~5:62 bareR0=campers~0:-27,81:64
bareR0=cattle~1:81 bareR0=chickens~0:-44,4:153 bareR0=cow~0:-40,5:64
bareR0=cows~0:-53,1:84,2:157,3:-38,5:70,81:-39 bareR0=cut~54:35 bareR0=dairy~2:55 bareR0=drink~1:40
bareR0=drinkers~0:-38,82:146 bareR0=drip~23:47 bareR0=dripper~0:-30,15:49
bareR0=dry~0:-34,1:109,63:71 bareR0=elbows~70:64 bareR0=ewes~3:139 bareR0=five~0:31,81:-30
bareR0=float~0:-17,82:88 bareR0=floats~82:29 bareR0=flush~32:26 bareR0=foot~0:-30,71:97
bareR0=for~0:-36,25:68,82:37 bareR0=garden~25:35 bareR0=go~0:32 bareR0=goats~0:-66,3:213,81:-35
bareR0=guest~0:45 bareR0=guests~81:71 bareR0=have~2:23 bareR0=head~1:78 bareR0=heifers~1:98
bareR0=hens~0:-56,1:-31,3:-33,4:244 bareR0=horses~0:-14,1:214 bareR0=hose~0:-74,25:215,26:76
bareR0=hoses~0:-55,25:181,26:63 bareR0=hour~0:-53,62:105 bareR0=house~0:-53,81:41
bareR0=houses~0:56 bareR0=identical~0:-31,53:104 bareR0=in~0:-104,2:32,3:40,45:44,63:41,81:92
bareR0=is~0:46 bareR0=it~0:57 bareR0=joined~0:33 bareR0=kids~0:58 bareR0=kitchen~0:43
bareR0=laying~4:32 bareR0=line~0:43 bareR0=machine~32:-28,33:80 bareR0=machines~27:36,33:66
bareR0=may~28:41 bareR0=milk~2:118 bareR0=milking~2:35 bareR0=months~63:72 bareR0=n~0:-63,37:113
bareR0=now~0:-57,27:53,81:25 bareR0=o'clock~0:45 bareR0=of~28:42,45:36,47:56,81:46 bareR0=on~0:26
bareR0=once~0:-58,26:51,28:70 bareR0=one~16:34,27:30,70:31,81:59 bareR0=or~28:52
bareR0=out~0:-23,39:42,54:35 bareR0=outside~25:44 bareR0=paddocks~82:44 bareR0=pairs~0:-51,5:119
bareR0=panels~0:54,45:49 bareR0=people~27:-36,29:-28,81:207 bareR0=per~15:49,27:-41,62:47
bareR0=person~81:101 bareR0=persons~0:-20,81:160 bareR0=phase~0:35 bareR0=pieces~30:29
bareR0=pigs~0:40 bareR0=pipe~0:26 bareR0=plus~0:27 bareR0=poly~0:34 bareR0=pressure~0:-44,17:99
bareR0=pump~0:29 bareR0=pumps~53:95 bareR0=pupils~0:-32,81:80 bareR0=rooms~27:38 bareR0=rows~0:25
bareR0=run~28:59 bareR0=series~45:34 bareR0=sheep~0:-22,3:147
bareR0=shower~0:-20,27:230,28:55,29:-40,81:-38 bareR0=showers~0:-32,27:263,28:122,29:-15,81:-18
bareR0=side~53:45 bareR0=sink~0:-53,29:266,32:-77 bareR0=sinks~0:-16,29:219,32:-18,81:-25
bareR0=so~0:64 bareR0=sorry~0:30 bareR0=south~38:59 bareR0=spring~0:22 bareR0=sprinkler~0:-27,30:29
bareR0=sprinklers~0:-33,30:185,31:74 bareR0=staff~0:30 bareR0=starts~0:-30,62:82
bareR0=steers~0:-40,1:91 bareR0=stock~1:44 bareR0=string~0:-29,47:58 bareR0=strings~0:-25,47:78
bareR0=tanks~17:61 bareR0=tap~25:51 bareR0=th~46:56 bareR0=the~0:47,1:-38,28:41,29:54,32:-36
bareR0=them~0:-54 bareR0=there~81:30 bareR0=three~32:31,47:26 bareR0=time~24:45 bareR0=times~0:39
bareR0=together~0:-28,26:59,28:63 bareR0=toilet~0:-35,32:164
bareR0=toilets~0:-60,27:-25,32:243,81:-39 bareR0=trees~0:36 bareR0=trough~82:121
bareR0=troughs~0:-57,1:-28,82:203 bareR0=ts~0:37 bareR0=two~0:40,47:-52,81:46
bareR0=us~0:-16,81:151 bareR0=valve~0:-50,71:93 bareR0=was~0:44 bareR0=wash~0:-29,29:68
bareR0=washer~0:-27,29:-23,33:76 bareR0=washers~33:60 bareR0=washing~29:-37,33:132
bareR0=water~0:-33 bareR0=waterers~0:-35,82:60 bareR0=wc~32:85 bareR0=wcs~32:53
bareR0=we~0:-51,81:16 bareR0=well~0:60,29:-30 bareR0=what~0:-38,81:28
bareR0=with~0:-23,1:-37,5:92,82:82 bareR0=x~0:12 bareR0=young~1:41
bareR0=zones~0:-77,16:134,23:84,81:-37 bareR0=|~33:69,81:38 bareR1=(~27:28,29:-24 bareR1=)~29:57
bareR1=,~25:-31,53:60,81:35 bareR1=.~0:-65,1:40,2:-38,4:45,5:40,24:23,28:41,32:31,54:59
bareR1=0~1:22,2:41,29:-26,45:44,81:32 bareR1=1~0:-40,2:35,25:-56,29:38,32:-31,57:28,81:21
bareR1=2~1:38,29:-43,30:19,33:34 bareR1=3~27:-47,54:47,63:43 bareR1=4~32:40,47:17,81:-19
bareR1=5~0:-50,2:28,3:32,5:51,30:32 bareR1=6~0:38,1:-39 bareR1=7~0:19,81:-57 bareR1=8~0:-38
bareR1=9~2:56 bareR1=:~33:47 bareR1=?~0:-52,27:49,81:32,82:39 bareR1=a~1:37,29:37
bareR1=about~81:30 bareR1=all~0:31 bareR1=an~55:40 bareR1=and~0:19,5:35 bareR1=are~29:30
bareR1=at~0:-28,4:-30,5:42,23:29,26:45,81:57 bareR1=automatic~0:-28,1:39 bareR1=basin~32:27
bareR1=basins~27:46,29:-39,32:43 bareR1=bathrooms~81:34 bareR1=bore~3:49 bareR1=bottom~82:25
bareR1=bulls~5:58 bareR1=but~29:48 bareR1=chickens~0:-40,81:39 bareR1=children~0:51,81:-42
bareR1=cistern~0:-36,63:35 bareR1=cows~0:-40,2:19,3:48 bareR1=day~0:48 bareR1=drinkers~1:50
bareR1=drip~0:-28,15:49 bareR1=dry~2:72 bareR1=each~0:-46,27:26 bareR1=ewes~0:-37 bareR1=fine~27:44
bareR1=float~1:47 bareR1=floats~82:45 bareR1=foot~0:-38,5:54,70:72 bareR1=four~81:-39
bareR1=from~0:-47,4:28 bareR1=ft~0:36 bareR1=gives~0:32 bareR1=goats~81:38 bareR1=going~28:49
bareR1=guests~0:34 bareR1=h~0:32 bareR1=have~0:-64,27:35 bareR1=hens~1:66,3:33
bareR1=horses~0:67,1:-69,4:42 bareR1=hose~0:-25,28:64 bareR1=hoses~32:31 bareR1=house~0:21,81:-33
bareR1=i~16:36,23:26 bareR1=in~16:42,45:42,53:27,81:-31 bareR1=is~0:-48,82:27,97:57
bareR1=it~0:21,27:34 bareR1=it's~0:23 bareR1=its~27:24 bareR1=kids~3:35,81:-39
bareR1=kitchen~29:-55 bareR1=level~0:-38 bareR1=like~81:29 bareR1=litres~81:37 bareR1=loo~27:38
bareR1=lower~0:33 bareR1=m~30:27 bareR1=machine~32:45 bareR1=mains~25:39 bareR1=mm~81:28
bareR1=my~0:-30 bareR1=no~0:-21,26:38 bareR1=not~30:43 bareR1=of~0:23,5:29
bareR1=on~0:-44,1:18,15:48 bareR1=once~28:24 bareR1=one~82:34 bareR1=open~0:-36,30:27
bareR1=other~0:-38,29:35 bareR1=outhouse~27:31,29:62,32:-47 bareR1=own~0:-16,27:34
bareR1=panels~45:41 bareR1=parallel~0:-19,53:68 bareR1=pasture~0:-39 bareR1=persons~0:31
bareR1=pipe~5:48 bareR1=place~0:42 bareR1=plot~0:35 bareR1=power~29:21 bareR1=pressure~0:48
bareR1=pump~0:-54,26:62,29:-29,31:41 bareR1=run~23:38,28:56 bareR1=same~27:-40,31:23
bareR1=says~62:28 bareR1=sheep~1:37 bareR1=should~28:38 bareR1=shower~27:-31,29:73,81:25
bareR1=showers~27:-45,32:41,81:61 bareR1=side~53:45 bareR1=sink~25:41,27:60,29:-133,32:42,81:26
bareR1=sinks~0:55,27:26,29:-65,32:50 bareR1=spring~0:-74,3:36 bareR1=sprinklers~25:57
bareR1=staff~0:35 bareR1=tank~0:25,81:-34 bareR1=the~0:-46,4:16,15:44,25:17,32:29,82:29
bareR1=there~0:45 bareR1=they~30:22 bareR1=three~0:68 bareR1=time~24:20,28:29,31:46
bareR1=toddler~0:47,81:-30 bareR1=toilet~29:45,32:-47 bareR1=toilets~27:50,29:47,32:-65
bareR1=too~0:34 bareR1=trough~0:-44,82:13 bareR1=troughs~1:53,82:-42 bareR1=two~23:44
bareR1=valve~70:69 bareR1=w~0:12,45:56 bareR1=want~0:-30 bareR1=washer~27:-39,29:52
bareR1=washing~29:9,32:51 bareR1=water~0:29,81:-32 bareR1=we~29:32 bareR1=well~0:-64,81:19
bareR1=what~0:52 bareR1=when~0:57,81:-26 bareR1=with~0:-17,27:37 bareR1=would~81:42 bareR1=|~29:38
bareR2=(~25:29,29:22,32:-25 bareR2=)~0:77,25:44,29:-31
bareR2=,~1:-48,2:43,25:33,28:16,29:-69,32:-53,45:18,47:51,81:33,82:-51
bareR2=.~1:1,5:44,15:38,17:52,26:80,28:-39,31:40,33:31,45:-38,81:24 bareR2=0~81:54
bareR2=1~1:-45,3:70,16:34,30:52,32:32,47:55 bareR2=2~1:-25,27:-36,29:21,33:-42,53:34,81:67
bareR2=3~0:49,30:28,32:-36,81:-40 bareR2=4~1:-63,27:30,32:-25,45:42,53:43,70:45,82:35
bareR2=5~5:48,26:47,31:55,32:-57 bareR2=6~0:-25,5:17 bareR2=8~27:32,81:-29
bareR2=:~0:46,27:-37,29:62,32:-50 bareR2=;~82:58 bareR2=?~1:33,16:42,63:44 bareR2=above~0:-40
bareR2=all~81:-30 bareR2=as~0:29,33:31 bareR2=bar~0:-45,54:54 bareR2=below~3:24 bareR2=bore~0:56
bareR2=bucket~0:53 bareR2=comes~0:37 bareR2=day~0:-62,81:88 bareR2=do~0:-31,4:37,81:33
bareR2=each~3:26,47:19,53:27,81:36 bareR2=evening~0:30 bareR2=existing~5:32 bareR2=family~29:34
bareR2=field~82:23 bareR2=four~0:-53 bareR2=from~0:28,81:-67 bareR2=ft~0:21,4:34 bareR2=garden~0:30
bareR2=gives~82:32 bareR2=goats~2:38 bareR2=gpm~0:-48 bareR2=heifers~0:-32,2:31
bareR2=hens~0:-63,3:41 bareR2=horses~5:33 bareR2=hose~0:-77,29:29 bareR2=hoses~0:-24
bareR2=house~4:23,81:-32 bareR2=how~81:38 bareR2=inch~0:27 bareR2=kind~0:47 bareR2=kitchen~27:59
bareR2=lake~0:34 bareR2=last~0:-52 bareR2=line~0:-43,15:49,24:46 bareR2=litre~0:18
bareR2=litres~81:74 bareR2=m~3:38,81:57 bareR2=machine~32:51 bareR2=machines~32:33
bareR2=mains~0:31,29:33 bareR2=mm~0:-34 bareR2=no~29:41 bareR2=none~1:46 bareR2=off~1:25
bareR2=one~0:41,45:41,81:32 bareR2=ones~2:49 bareR2=only~28:39 bareR2=open~0:-33 bareR2=other~0:41
bareR2=panels~25:32 bareR2=parallel~47:67 bareR2=people~27:70,81:-29 bareR2=per~81:37
bareR2=power~0:-31,29:-30,32:60 bareR2=pressure~0:-27,16:35,33:44 bareR2=pump~4:-39,81:22
bareR2=rise~1:20 bareR2=roof~0:17 bareR2=run~25:26,81:-54 bareR2=same~0:-54,28:55,30:69
bareR2=see~27:33 bareR2=series~0:-51,45:119 bareR2=seven~0:-40,29:34 bareR2=shower~27:35
bareR2=showers~29:27 bareR2=since~0:67 bareR2=sink~27:19 bareR2=sinks~27:39,81:32 bareR2=six~0:30
bareR2=solar~0:32 bareR2=string~0:-28,45:44 bareR2=strings~0:29 bareR2=tank~1:-33,27:30,90:58
bareR2=tap~27:32 bareR2=then~0:39 bareR2=there's~0:-49 bareR2=think~0:35 bareR2=three~0:57
bareR2=tilted~45:42 bareR2=time~0:-59,23:97,28:35,30:36 bareR2=toilet~0:20
bareR2=toilets~0:47,27:-26,28:72,29:-41,81:63 bareR2=trough~3:61 bareR2=two~45:-33,81:41
bareR2=until~27:42 bareR2=up~0:26 bareR2=upstairs~81:28 bareR2=us~29:34 bareR2=use~0:25
bareR2=used~0:35 bareR2=w~47:15 bareR2=washer~27:40 bareR2=washing~0:-50,27:37,32:41
bareR2=water~27:-41 bareR2=week~0:-18,81:39 bareR2=well~0:-39,1:31,5:50,81:30 bareR2=what~0:85
bareR2=when~25:72 bareR2=which~0:-75,32:45 bareR2=will~32:60 bareR2=without~0:-42
bareR2=|~0:15,4:34,27:47,28:42,81:-57
bareT=beds.area~0:-39,4:35,16:96,23:111,24:105,25:28,27:-39,82:-35 bareT=power.amps~47:33
bareT=power.battery~29:1 bareT=power.cable~45:69,47:37,81:-41 bareT=power.capacity~29:35,81:38
bareT=power.controller~0:-39,39:40,47:49 bareT=power.facing~45:93,81:51
bareT=power.limit~39:41,45:18,47:46,81:-27 bareT=power.open_voltage~0:57,3:-70,45:57,47:34
bareT=power.panel~45:130,47:102 bareT=power.series~45:-162,47:80,81:33,82:28
bareT=power.source~1:30,3:22,5:42,16:-31,25:10,32:22,38:45,45:45,47:59,71:-36,82:26
bareT=power.strings~0:69,1:55,45:62,47:-89 bareT=power.tilt~38:41,39:39,45:38
bareT=power.voltage~3:-58,25:32,29:93,37:52,47:74
bareT=pump.control~1:-38,3:-59,4:-41,25:66,33:35,53:90,62:51 bareT=pump.count~0:63,62:51
bareT=pump.cut_in~0:27,29:-39,33:34,55:64,62:48 bareT=pump.cut_out~54:54,62:46,81:50
bareT=pump.dry_run~81:35 bareT=pump.height~1:24,2:42,29:-16,45:63,47:34,82:47,83:57,90:37,97:64
bareT=pump.most_flow~0:-63
bareT=pump.placement~0:19,2:33,3:-27,5:34,16:-37,31:41,33:20,47:39,70:36,71:42
bareT=pump.present~0:-45,17:44,25:12,26:30,27:14,28:24,32:41,82:31 bareT=pump.set~0:37,26:55,81:-23
bareT=pump.starts~0:-25,53:25 bareT=pump.works~81:88 bareT=store.days~0:-28,1:48
bareT=store.fills~32:27,63:29 bareT=store.hours~0:29,81:-43
bareT=store.volume~1:-52,28:58,29:22,31:41,47:-41,53:34,62:31,63:39,82:-17
bareT=tank.level~0:33,23:41,28:16,45:64 bareT=tank.volume~3:25,16:-48,38:37,45:53,81:40
bareT=water.kind~1:70,2:55,3:79,4:33,5:22,25:73,26:53,28:40,33:45,45:48,55:-17,82:61
bareT=water.level~1:-66,3:64,4:38,29:25,70:64,71:96,81:20
bareT=water.yield~2:31,3:1,17:24,26:-47,28:36,29:33,30:-27,32:71,81:69,82:40
bareT=way.climb~0:30,1:43,2:33,4:27,5:19,17:43,27:39,30:27,31:82,32:41,45:-39,47:-12,90:-28
bareT=way.length~1:35,2:32,3:33,4:49,23:52,24:47,25:4,26:34,28:21,29:24,30:25,31:55,53:41,71:-36,82:79
bareT=way.pipe~1:40,2:45,3:24,5:72,17:34,23:72,24:48,25:36,28:32,30:44,32:-31,45:-37,54:-36,55:-28,81:19,82:61
bareT=well.bore~0:45,81:32 bareT=well.depth~4:51,26:24,27:26,29:33,30:-31,32:48,57:95,81:57,83:38
bareT=well.static~0:31,29:-23,30:33,32:29 bareT=well.tested~81:27 barea=~32:45,37:47
barea=,_each~0:30 barea=,_sinks~27:29,29:-38 barea=,_washing~27:28 barea=.~55:22,90:29
barea=adults_and~0:68,81:-51 barea=at_a~24:45 barea=basins_,~0:50,29:41,32:-28 barea=basins_.~29:46
barea=bathrooms_with~27:49 barea=bends_,~70:60 barea=boys_.~0:35 barea=break_pressure~17:63
barea=cow_calf~0:-27,5:65 barea=cows_and~2:23 barea=cows_in~2:41 barea=cows_with~5:65
barea=dairy_cows~2:56 barea=dry_months~63:72 barea=elbows_.~70:32 barea=ewes_.~3:39
barea=float_valve~82:40 barea=flush_toilets~32:26 barea=foot_valve~0:-30,71:97 barea=goats_,~3:63
barea=goats_.~3:70 barea=goats_and~3:56 barea=guests_.~81:37 barea=head_of~1:47
barea=heifers_,~1:42 barea=hens_,~4:44 barea=hens_.~4:32 barea=hens_and~4:60 barea=horses_,~1:66
barea=horses_.~1:15 barea=horses_and~1:74 barea=hose_,~25:85 barea=hose_.~25:87
barea=hose_bibs~25:33 barea=hose_for~25:34 barea=hoses_at~26:54 barea=houses_,~0:42
barea=identical_pumps~53:52 barea=in_series~45:39 barea=in_the~0:-52,81:70 barea=kitchen_sink~29:41
barea=laying_hens~4:32 barea=milking_cows~2:43 barea=n_.~0:-32,37:76 barea=of_us~0:-11,81:151
barea=panels_,~0:37 barea=panels_of~45:53 barea=people_,~0:-17,81:84 barea=people_.~81:61
barea=people_and~0:-25,81:47 barea=people_in~81:32 barea=people_|~0:-36,81:40 barea=persons_,~81:83
barea=persons_.~81:62 barea=sheep_and~3:58 barea=shower_,~0:-55,27:162,32:-35
barea=shower_.~0:-36,27:88 barea=shower_1~27:84 barea=shower_and~0:-55,27:24,28:64
barea=shower_per~0:49 barea=showers_(~27:53 barea=showers_,~0:-46,27:180,81:-33
barea=showers_.~0:-59,27:143,81:-40 barea=showers_and~27:59 barea=showers_are~0:45
barea=showers_at~0:-33,28:51 barea=showers_run~28:44 barea=sink_,~0:-24,29:102
barea=sink_.~0:-35,29:78 barea=sink_1~29:25 barea=sink_and~29:44 barea=sinks_,~27:-32,29:92,32:-49
barea=sinks_.~29:73 barea=sinks_and~29:47 barea=south_.~38:59 barea=sprinklers_at~31:24
barea=starts_an~62:57 barea=starts_per~62:29 barea=strings_of~0:-34,47:49
barea=toilet_,~27:-30,29:-24,32:108 barea=toilet_.~32:70 barea=toilets_,~0:-21,27:-24,29:-31,32:138
barea=toilets_.~32:74 barea=toilets_and~32:54 barea=troughs_,~82:59 barea=troughs_.~82:38
barea=wash_basins~29:53 barea=washer_.~33:53 barea=washing_machine~32:-21,33:103
barea=washing_machines~33:95 barea=wc_,~32:52 barea=wcs_,~32:28 barea=zones_.~0:-47,16:84
bareb=~0:69,15:49 bareb=,_in~82:31 bareb=,_plus~1:36 bareb=,_so~0:-36,81:50 bareb=,_with~0:-43
bareb=._it's~0:45 bareb=._we're~81:42 bareb=1_shower~33:38 bareb=1_sink~29:46 bareb=2_showers~29:39
bareb=?_|~28:38 bareb=adults_and~0:20 bareb=between_the~0:28 bareb=drip_,~0:50
bareb=family_of~0:-30,27:-27,81:99 bareb=ft_,~0:-56 bareb=hens_and~3:40 bareb=horses_.~82:38
bareb=hose_,~81:37 bareb=household_of~0:-35,81:61 bareb=i_have~30:28 bareb=just_the~0:-35,27:34
bareb=machine_.~81:40 bareb=no_.~0:33 bareb=of_which~28:39 bareb=pairs_and~1:39 bareb=panels_:~0:40
bareb=people_,~27:48,81:-29 bareb=people_:~27:-55,81:127 bareb=pipe_,~0:24 bareb=pump_.~29:40
bareb=sheep_:~3:55 bareb=shower_,~25:40,32:69 bareb=shower_and~29:38
bareb=showers_,~25:41,27:-73,32:43,33:46 bareb=showers_:~27:128,32:-56 bareb=showers_and~32:45
bareb=sink_,~29:-36 bareb=sink_.~0:45,81:-33 bareb=sinks_,~29:-28,32:32 bareb=sinks_:~29:64,32:-23
bareb=strings_of~45:29 bareb=tank_.~0:-31,5:32 bareb=there_are~0:9,23:51,27:56,81:-21
bareb=there_is~0:-49,29:68 bareb=to_water~5:35 bareb=toilet_,~29:32,32:-41
bareb=toilets_,~29:41,32:-40,33:34 bareb=toilets_and~0:-26 bareb=troughs_:~82:53 bareb=up_to~81:36
bareb=valve_and~70:38 bareb=w_,~45:42 bareb=water_at~83:35 bareb=we_are~0:-36,81:97
bareb=we_have~27:41 bareb=we_keep~4:37 bareb=we_milk~2:21 bareb=well_is~90:30 chargeC=,~41:49
chargeC=1~0:18 chargeC=:~41:23 chargeC=battery~0:22,41:30 chargeL0=2~0:29 chargeL0=a~41:24
chargeL0=and~0:35 chargeL0=battery~41:35 chargeL0=is~41:28 chargeL0=v~0:24 chargeL1=1~0:26
chargeL1=battery~0:32 chargeL1=is~0:34 chargeL2=2~41:33 chargeM=pump~41:71 chargeR0=.~41:64
chargeR0=battery~41:39 chargeT=power.battery~41:72 chargeT=power.panel~41:53
chargeT=power.source~41:56 chargeT=power.voltage~41:84 chargeT=store.volume~41:32
chargeT=water.kind~41:42 chargeT=way.length~41:36 chargea=.~0:32 currentC=,~39:41 currentC=0~39:41
currentC=controller~39:38 currentL0=,~39:29 currentL1=0~39:46 currentL2=,~39:31 currentM=pump~39:45
currentR0=.~39:34 currentT=power.battery~39:66 currentT=power.capacity~39:66
currentT=power.controller~39:69 currentT=power.facing~39:22 currentT=power.limit~39:36
currentT=power.panel~39:41 currentT=power.series~39:36 currentT=power.source~39:47
currentT=power.voltage~39:45 currentT=pump.placement~39:38 currentT=water.kind~39:19 dailyC=,~75:37
dailyC=2~0:52 dailyC=8~76:36 dailyC=:~0:32 dailyC=consumption~76:34 dailyC=cows~0:66
dailyC=drinks~75:16 dailyC=each~0:-30,75:-43,76:98 dailyC=garden~77:49 dailyC=need~75:38
dailyC=says~0:-38,75:54 dailyC=takes~77:30 dailyC=two~75:47 dailyC=use~0:-32,75:66
dailyC=uses~76:38 dailyC=water~0:23 dailyL0=,~75:53 dailyL0=:~0:34 dailyL0=about~75:46
dailyL0=at~0:22 dailyL0=drinks~75:16 dailyL0=each~76:52 dailyL0=is~75:34 dailyL0=need~75:38
dailyL0=people~76:40 dailyL0=says~0:-38,75:54 dailyL0=takes~77:30 dailyL0=the~0:-25,75:44,77:31
dailyL0=use~75:83 dailyL0=uses~76:38 dailyL0=we~75:38 dailyL1=.~0:30,76:32 dailyL1=2~0:47
dailyL1=8~76:36 dailyL1=a~77:17 dailyL1=each~76:45 dailyL1=in~76:40,77:27 dailyL1=two~75:40
dailyL1=water~0:24 dailyL2=.~77:38 dailyL2=0~77:57 dailyL2=4~77:22 dailyL2=6~0:34 dailyL2=m~77:18
dailyL2=mm~0:46 dailyL2=water~75:36 dailyM=drip~0:23,77:47 dailyM=pump~75:54,77:43
dailyM=tank~77:26 dailyM=well~75:36 dailyR0=,~75:37 dailyR0=.~0:33,75:102,76:57 dailyR0=by~75:47
dailyR0=covers~0:27 dailyR0=each~0:62 dailyR0=house~75:28 dailyR0=in~77:21 dailyR0=is~0:25
dailyR0=it~0:42 dailyR0=meter~75:33 dailyR0=of~77:32 dailyR0=the~75:30,77:33 dailyR1=,~75:24
dailyR1=.~75:17,77:40 dailyR1=0~76:36 dailyR1=and~75:31 dailyR1=of~0:28 dailyR1=the~0:20
dailyR2=.~0:39 dailyR2=?~75:36 dailyT=beds.area~0:23,77:47 dailyT=power.source~0:37,75:34
dailyT=pump.height~0:41 dailyT=store.fills~77:22 dailyT=store.reserve~77:44
dailyT=store.volume~77:50 dailyT=tank.level~0:55,75:-33 dailyT=tank.volume~75:-36,76:47
dailyT=water.kind~75:57,76:53,77:42 dailyT=water.level~75:27 dailyT=way.climb~0:-32,75:25,77:40
dailyT=way.length~77:36 dailyT=way.pipe~0:41 dailyT=well.depth~75:27 dailya=.~75:19,76:41
dailya=by_the~75:34 dailya=covers_it~0:27 dailya=each_.~0:62 dailya=in_the~77:24
dailyb=people_,~76:24 eachC=,~76:46 eachC=0~0:33 eachC=2~0:34 eachL0=,~76:40 eachL0=at~0:27
eachL0=we~76:43 eachL1=2~0:34 eachL1=a~76:36 eachL1=for~0:33 eachL2=,~76:35 eachL2=.~76:42
eachM=pump~76:58 eachM=spring~76:53 eachM=tank~76:48 eachR0=.~76:78 eachT=power.source~76:35
eachT=tank.volume~76:36 eachT=water.kind~76:79 eachT=water.yield~76:44 eachT=way.climb~76:40
eachT=way.length~76:52 eachT=way.pipe~76:51 eacha=.~76:31 flowC=,~7:50,58:21,78:60 flowC=0~98:65
flowC=1~58:37 flowC=2~7:37,58:34 flowC=3~0:-26,98:67,99:42 flowC=4~99:33 flowC=5~8:27,85:37
flowC=6~99:45 flowC=8~85:48 flowC=9~0:-37,85:33 flowC=:~96:19,98:46,99:47 flowC=after~96:19
flowC=all~78:40 flowC=apart~7:39 flowC=as~85:-48 flowC=bar~8:33 flowC=bore~0:-38,85:42,99:46
flowC=borehole~0:36,85:61 flowC=box~0:37 flowC=cm~7:31 flowC=comes~98:29 flowC=concrete~67:34
flowC=diaphragm~58:21 flowC=drilled~85:43 flowC=driller~0:-31,85:38,99:29 flowC=drip~0:51,7:51
flowC=drippers~7:78 flowC=each~0:27,85:-50 flowC=emitters~7:78 flowC=every~7:36
flowC=flow~0:28,8:30 flowC=ft~0:59 flowC=gives~85:58 flowC=he~99:40 flowC=l~85:31 flowC=level~99:56
flowC=litres~98:31 flowC=m~99:52 flowC=makes~85:48 flowC=meter~78:41 flowC=min~85:31
flowC=minutes~0:-41,96:46,98:78 flowC=night~78:40 flowC=no~0:36,85:-48 flowC=one~85:-35
flowC=out~0:26 flowC=pulls~99:33 flowC=pump~8:51,58:78,85:-32 flowC=pumped~85:-48,99:21
flowC=pumping~96:19,99:19 flowC=ran~96:38 flowC=rows~7:44 flowC=shower~0:49 flowC=spring~85:28
flowC=sprinkler~0:62 flowC=static~99:31 flowC=stream~85:42 flowC=tank~0:-45,67:115
flowC=test~96:34,99:36 flowC=then~98:64 flowC=took~98:31 flowC=volt~58:39 flowC=want~0:50,85:-25
flowC=well~0:-39,8:36,67:42,85:90 flowC=which~67:31 flowC=wrote~85:30 flowC=yield~85:63
flowL0=,~0:-18,7:34,58:19,78:12,85:31 flowL0=.~7:34,85:63 flowL0=:~85:13,96:31 flowL0=a~85:68
flowL0=are~7:41 flowL0=at~0:-38,85:-53,96:59,98:57,99:43 flowL0=bar~8:33 flowL0=bore~85:47
flowL0=borehole~85:45 flowL0=cm~7:31 flowL0=comes~98:29 flowL0=driller~0:-27,85:48 flowL0=drip~0:43
flowL0=drippers~7:58 flowL0=each~0:16 flowL0=emitters~7:45 flowL0=flow~0:33,8:30
flowL0=ft~0:54,85:-33,99:32 flowL0=gives~85:32 flowL0=he~99:41 flowL0=i~78:52 flowL0=is~67:15
flowL0=it~85:38 flowL0=m~0:58 flowL0=makes~85:41 flowL0=of~7:26 flowL0=out~0:29
flowL0=pump~8:56,58:52,85:-34 flowL0=pumped~99:34 flowL0=pumping~96:22 flowL0=spring~85:5
flowL0=sprinkler~0:62 flowL0=tank~0:-16,67:44 flowL0=test~96:36 flowL0=tested~85:50
flowL0=the~0:37,67:100 flowL0=want~0:50,85:-25 flowL0=we~0:43,85:-7 flowL0=well~8:39,85:22
flowL0=which~67:33 flowL0=wrote~85:28 flowL0=yield~85:43 flowL1=,~0:29,7:31,78:46
flowL1=.~8:64,58:28,98:21 flowL1=0~85:36 flowL1=1~0:-59,8:41,58:35 flowL1=3~85:-51 flowL1=4~0:41
flowL1=5~8:29 flowL1=8~85:53 flowL1=9~85:31 flowL1=a~58:46 flowL1=and~85:39 flowL1=at~85:43
flowL1=borehole~99:33 flowL1=every~7:40 flowL1=for~85:31 flowL1=ft~0:-29,85:5 flowL1=i~0:31
flowL1=is~58:23,85:27 flowL1=it~98:51 flowL1=l~98:29 flowL1=m~99:45 flowL1=pump~58:49,96:47
flowL1=pumping~99:23 flowL1=spring~85:38 flowL1=tank~67:47 flowL1=that~85:33
flowL1=the~0:50,58:44,67:36,78:27 flowL1=to~67:14,99:20 flowL1=way~58:34 flowL1=well~67:26
flowL1=with~0:35 flowL2=,~8:66,58:34,98:14 flowL2=.~7:36,8:35 flowL2=0~98:62 flowL2=1~85:27
flowL2=2~0:-39,7:52,85:62 flowL2=3~0:-22,85:43 flowL2=6~0:-78,98:47,99:57 flowL2=7~85:35
flowL2=:~85:-73 flowL2=all~78:41 flowL2=apart~7:36 flowL2=bore~99:40 flowL2=borehole~58:29
flowL2=every~8:42 flowL2=from~58:22 flowL2=ft~99:44 flowL2=ground~0:39,85:-37 flowL2=level~99:27
flowL2=litres~98:31 flowL2=m~7:24,58:16 flowL2=need~0:59 flowL2=night~78:41 flowL2=pond~0:28
flowL2=pressure~8:49 flowL2=pulls~99:33 flowL2=pump~58:70 flowL2=rows~7:43 flowL2=run~85:36
flowL2=spring~0:-42,85:54 flowL2=there~0:41 flowL2=well~98:28,99:33 flowM=cistern~67:31
flowM=drip~7:143,8:112,85:-46 flowM=pump~0:37,7:39,58:75,78:41,96:60,99:29 flowM=roof~58:39
flowM=spring~85:117 flowM=tank~58:55,67:120,85:32 flowM=well~85:36,98:73,99:35 flowR0=,~7:50,96:43
flowR0=.~7:36,58:31,67:33,78:70,85:81,98:44,99:20 flowR0=0~96:50 flowR0=1~0:31 flowR0=2~0:28,96:33
flowR0=4~99:31 flowR0=9~96:50 flowR0=and~67:29 flowR0=at~0:51,8:53,58:77,85:-49 flowR0=bar~0:30
flowR0=day~67:31 flowR0=each~7:35 flowR0=for~85:-49,96:71 flowR0=in~0:77,85:-29 flowR0=is~85:26
flowR0=its~0:32 flowR0=level~85:28 flowR0=set~58:53 flowR0=the~8:74,58:-43,78:28,85:56
flowR0=water~85:45 flowR0=we~0:48 flowR1=,~7:14 flowR1=.~0:48,67:77 flowR1=0~85:41 flowR1=1~0:15
flowR1=3~99:52 flowR1=6~99:57 flowR1=8~0:41 flowR1=:~0:50 flowR1=a~78:25 flowR1=and~0:-36,96:39
flowR1=can~8:39 flowR1=i~96:20 flowR1=in~0:41 flowR1=line~67:33 flowR1=off~96:22
flowR1=pressure~78:50 flowR1=psi~58:47 flowR1=run~0:66 flowR1=spring~85:-32 flowR1=tank~0:40
flowR1=the~0:26 flowR1=to~99:35 flowR2=.~0:28,58:37,85:-60 flowR2=1~78:36 flowR2=5~85:54
flowR2=hours~8:46 flowR2=level~96:23 flowR2=minute~0:46,85:-43 flowR2=pump~85:61 flowR2=run~8:45
flowR2=well~0:43 flowT=beds.area~0:-67,7:98 flowT=power.battery~0:-38,58:47
flowT=power.capacity~0:-34,58:52 flowT=power.panel~85:44 flowT=power.series~0:32
flowT=power.source~85:63 flowT=power.voltage~0:-36,58:91 flowT=pump.control~78:66
flowT=pump.height~85:41,99:24 flowT=pump.placement~0:77,85:-32 flowT=pump.present~85:34
flowT=pump.set~0:-37,78:63,85:29 flowT=pump.works~0:-44,58:66 flowT=store.days~85:57
flowT=store.reserve~67:67 flowT=store.volume~58:69 flowT=tank.level~0:42 flowT=tank.volume~0:68
flowT=water.kind~0:-12,7:43,67:46,85:176,98:57,99:83 flowT=water.level~0:46,99:98
flowT=water.temperature~0:36 flowT=water.yield~0:127,7:32,85:-100 flowT=way.climb~85:66
flowT=way.length~0:51,58:46,85:43 flowT=way.pipe~58:49,85:61 flowT=well.bore~85:-65,96:39,98:61
flowT=well.cover~96:43 flowT=well.depth~96:48,99:13 flowT=well.drawn~98:55
flowT=well.drawn_for~98:55 flowT=well.pumped_for~96:96 flowT=well.pumping~85:-65,99:110
flowT=well.static~99:79 flowa=~85:34 flowa=,_water~85:40 flowa=.~0:66,67:29,99:56 flowa=._the~78:34
flowa=at_2~0:28 flowa=at_the~8:67 flowa=for_4~99:33 flowa=from_the~67:33 flowb=,_flow~8:33
flowb=drip_,~7:21 flowb=ft_at~99:26 flowb=he_pumped~99:37 flowb=m_at~0:52 flowb=pump_gives~0:31
flowb=yield_:~85:18 k=angle~34:56,37:110,38:32,48:97 k=area~0:93,6:249,64:61
k=bare~0:265,1:67,2:33,3:65,4:47,5:19,25:35,27:61,28:18,30:37,37:60,62:27,81:56 k=charge~41:192
k=current~39:47 k=daily~0:81,75:170,76:80,77:44 k=each~76:120
k=flow~0:110,7:100,8:55,58:45,67:78,78:35,85:162,96:78,98:43,99:63
k=length~0:320,14:53,15:46,36:115,40:78,54:-28,56:71,69:-24,72:56,73:47,74:-25,75:-26,76:-27,81:-23,83:103,85:-27,86:79,87:50,88:187,89:83,90:44,93:35
k=pair~54:120 k=percent~0:60,46:99,59:55 k=power~0:148,44:133
k=pressure~0:144,11:87,12:31,18:41,19:61,35:43,50:110,54:77,55:73,61:105
k=temperature~20:71,34:55,84:110 k=time~0:160,9:40,65:130,66:29,80:79,92:59,94:52
k=voltage~0:77,42:40,43:35,49:197 k=volume~0:138,21:53,22:67,52:101,68:78,69:147,74:141,79:78,91:47
lengthC=!~90:38 lengthC=)~0:-59 lengthC=,~0:-29,14:55,15:60,40:-46,57:16,83:6,87:53,88:-50,90:51
lengthC=0~13:46,14:63,73:37,83:-44,87:27,88:59,97:31 lengthC=1~93:42
lengthC=2~86:-15,88:47,90:61,95:48 lengthC=3~0:19,57:-46,73:10,89:-24,95:39,97:-26
lengthC=4~83:-56,86:35,93:49 lengthC=5~0:44,15:22,36:-44,88:50
lengthC=6~0:-57,10:22,57:11,83:-63,95:54 lengthC=7~86:72 lengthC=8~0:28,72:-29,97:30
lengthC=9~83:-42,88:38,89:36,95:42 lengthC=:~73:54,86:41,88:-50,95:53,97:42 lengthC=?~0:-53,36:51
lengthC=above~86:-38,88:61 lengthC=all~73:27 lengthC=allotment~0:28 lengthC=altimeter~86:44
lengthC=altitude~36:84 lengthC=apart~10:41 lengthC=as~0:47 lengthC=away~87:29
lengthC=barn~0:-27,87:48,88:32 lengthC=barrel~73:36 lengthC=basement~87:30 lengthC=before~97:30
lengthC=behind~73:37 lengthC=below~0:-34,83:54,88:36 lengthC=between~88:37
lengthC=bore~86:-28,89:22,90:58,97:51 lengthC=bore's~57:28
lengthC=borehole~0:-41,57:53,73:-24,83:69,87:36,90:71 lengthC=bottom~0:-46,73:45,90:34
lengthC=box~83:29 lengthC=buried~0:7 lengthC=but~0:-37,88:21 lengthC=by~87:24
lengthC=cabin~0:-43,36:50,86:37,88:30 lengthC=cable~40:129,88:-37 lengthC=came~97:45
lengthC=can~0:27,36:38 lengthC=cased~0:-39,89:49 lengthC=casing~0:-54,89:9 lengthC=cellar~0:54
lengthC=climb~0:-42,86:89 lengthC=climbs~0:-30,86:105,88:-25 lengthC=copper~88:40
lengthC=could~0:56 lengthC=creek~0:-23,83:45,87:24 lengthC=deep~0:-37,83:18,89:54,97:29
lengthC=depth~0:35,57:77,86:-29,90:40 lengthC=diameter~0:-63,56:85,89:43 lengthC=difference~86:35
lengthC=differences~87:29 lengthC=distance~88:54 lengthC=down~57:64,88:-26,95:31
lengthC=draws~72:36 lengthC=drilled~0:31,88:-46,90:34 lengthC=drip~10:87,14:54,15:25
lengthC=dripper~15:26 lengthC=drippers~15:117 lengthC=drop~73:44,86:-35,87:47,88:-54,93:76
lengthC=drops~0:27,86:-36,87:44 lengthC=drum~0:-33,73:55 lengthC=dry~0:44 lengthC=dug~90:40
lengthC=dynamic~83:55 lengthC=each~10:55,15:32 lengthC=elevation~36:77,86:28 lengthC=emitters~15:35
lengthC=ends~0:35 lengthC=et~0:-29,13:72 lengthC=every~15:49 lengthC=fall~87:41
lengthC=falls~73:20,87:48 lengthC=farthest~88:25 lengthC=feet~87:43 lengthC=field~0:42,86:-41,87:32
lengthC=floor~73:33,86:41 lengthC=from~40:53,83:34,86:81,87:64,90:-62
lengthC=ft~57:-47,73:-43,86:54,90:93,97:46 lengthC=gallons~73:45 lengthC=garden~88:32
lengthC=goes~0:28,90:32 lengthC=good~0:-23 lengthC=got~0:54 lengthC=gph~15:37
lengthC=gpm~0:35,95:66 lengthC=greenhouse~0:41 lengthC=grid~0:22 lengthC=ground~0:-9,87:32
lengthC=h~15:44 lengthC=half~87:70 lengthC=hand~90:25 lengthC=hanging~0:29 lengthC=hangs~57:29
lengthC=hav~0:45,73:-47 lengthC=he~0:38 lengthC=head~0:20 lengthC=height~73:39,86:50,88:-29
lengthC=hey~0:57,83:-59 lengthC=hi~0:66,57:-24 lengthC=higher~88:44 lengthC=highest~86:43
lengthC=hill~73:43,86:-50 lengthC=hole~90:33 lengthC=hose~72:46,88:31 lengthC=hours~95:60
lengthC=house~57:-55,86:56,87:58,88:94,90:-55 lengthC=hundred~86:30 lengthC=hung~93:64
lengthC=hut~36:51 lengthC=i've~0:68 lengthC=ibc~73:35 lengthC=intake~0:-23,72:69,87:33
lengthC=it's~88:33,90:41 lengthC=its~0:48,88:-34 lengthC=kitchen~0:-32,86:37,88:39
lengthC=km~0:32,87:49 lengthC=l~15:42,95:43 lengthC=last~0:33 lengthC=length~88:39
lengthC=level~57:-26,83:40,90:-44,95:83,97:51 lengthC=lies~86:42
lengthC=lift~57:-27,72:-29,83:64,86:45 lengthC=lifted~86:30 lengthC=line~0:36,10:72,83:-32,88:43
lengthC=lines~10:67 lengthC=litres~73:64 lengthC=little~86:-41 lengthC=lower~86:-44
lengthC=lowered~57:48 lengthC=lowest~83:35 lengthC=m~83:21,87:29,89:61,95:34 lengthC=main~88:43
lengthC=mains~0:32 lengthC=maybe~0:40 lengthC=measured~0:27 lengthC=meters~83:36 lengthC=min~0:26
lengthC=mm~0:-36,86:56,87:42,88:49 lengthC=more~86:26 lengthC=mouth~86:-26,87:31 lengthC=must~86:28
lengthC=need~88:26 lengthC=neighbour~0:38 lengthC=next~88:50 lengthC=no~0:-30,83:43,88:52
lengthC=not~90:40 lengthC=npsh~60:60 lengthC=off~86:26 lengthC=only~36:20 lengthC=ours~90:44
lengthC=out~0:-43,87:34 lengthC=outside~56:50 lengthC=panels~0:23,40:32,88:-24
lengthC=pipe~0:59,72:49,73:-32,83:-25,88:64,90:-49,93:64 lengthC=pit~90:-31 lengthC=place~36:30
lengthC=platform~73:39 lengthC=plot~0:30 lengthC=poly~86:34 lengthC=pond~0:51
lengthC=power~0:32,88:-28 lengthC=pulls~83:44
lengthC=pump~56:39,57:139,72:44,83:95,87:-21,90:-35,93:59,97:-37 lengthC=pump's~57:44
lengthC=pumphouse~83:53 lengthC=pumping~83:36,95:28 lengthC=push~0:33,83:-35 lengthC=pushes~73:48
lengthC=put~73:51 lengthC=pvc~93:22 lengthC=quit~0:42 lengthC=raised~73:25 lengthC=required~60:42
lengthC=reservoir~0:-21,73:83,86:-36 lengthC=rest~97:82 lengthC=rings~0:-31,89:30
lengthC=rise~86:92 lengthC=rises~86:56 lengthC=river~0:39 lengthC=road~0:67,88:-28
lengthC=roof~86:54 lengthC=room~0:28 lengthC=rows~0:-39,14:144 lengthC=run~40:29,83:-43,88:72
lengthC=s~95:33 lengthC=sawback~36:24 lengthC=says~90:34 lengthC=sch~0:39 lengthC=schedule~88:30
lengthC=set~57:79 lengthC=shower~0:44,86:46 lengthC=sits~0:-38,57:37,83:39,88:24
lengthC=solar~83:-41 lengthC=sorry~0:-41,83:19 lengthC=source~0:26,90:-37 lengthC=spacing~15:26
lengthC=spring~0:-34,73:-41,86:37,87:65,88:50 lengthC=standing~97:57
lengthC=stands~0:-54,83:49,88:23 lengthC=static~0:-37,83:80,86:-35,90:-40,95:12,97:106
lengthC=stream~83:26 lengthC=sub~57:42 lengthC=submersible~56:12,57:125,88:-50 lengthC=sucks~72:41
lengthC=suction~0:-17,72:147,83:73 lengthC=summer~36:40,83:35 lengthC=swl~83:41,97:44
lengthC=take~87:56 lengthC=tank~0:44,73:136,83:-19,86:-72,88:91,90:-30 lengthC=tap~86:54
lengthC=taps~0:58 lengthC=tent~86:52 lengthC=than~86:-42,88:38 lengthC=then~0:45,83:-38
lengthC=they~0:-29,83:29 lengthC=thing~0:-43 lengthC=through~72:53 lengthC=toddler~0:60
lengthC=told~73:26 lengthC=top~86:35 lengthC=tote~0:61 lengthC=tower~73:51 lengthC=towr~0:55,73:-51
lengthC=trench~0:72 lengthC=trough~0:-43,86:45 lengthC=troughs~88:43 lengthC=two~0:25,88:35
lengthC=under~83:42 lengthC=up~0:34,73:60,86:32,88:56,90:-34 lengthC=uphill~0:-28,86:56
lengthC=us~0:47 lengthC=use~0:27,83:-34 lengthC=village~0:-25,73:30 lengthC=was~57:32,88:-59
lengthC=water~0:-35,83:142,90:-47,97:75 lengthC=water's~83:35 lengthC=way~88:27 lengthC=we've~90:38
lengthC=well~0:55,88:-50,89:65,90:76,95:19 lengthC=wellhead~86:34 lengthC=when~83:-41
lengthC=wire~40:89,88:-54 lengthC=within~83:24 lengthC=would~0:-44,88:39 lengthC=wrote~0:51
lengthC=x~0:42 lengthC=yards~87:29 lengthC=zones~10:66
lengthL0=,~14:42,15:75,36:-8,73:-26,86:43,88:44,97:-21
lengthL0=.~0:-37,15:24,60:38,73:-45,88:14,90:26 lengthL0=0~13:51,73:37 lengthL0=1~90:42
lengthL0=2~0:35,83:-33 lengthL0=3~73:34,86:-20 lengthL0=4~0:50,93:22 lengthL0=8~0:23
lengthL0=:~73:48,86:30 lengthL0=;~86:33 lengthL0=?~0:-50,83:71
lengthL0=a~0:-55,40:32,72:13,73:70,86:49,88:20,89:44,90:58 lengthL0=all~0:61
lengthL0=altimeter~86:44 lengthL0=altitude~36:75 lengthL0=and~86:34,87:13,88:33
lengthL0=are~10:52,36:26
lengthL0=at~0:-13,36:101,57:135,72:-29,83:72,86:-55,87:-35,88:-39,90:-65,97:21 lengthL0=away~86:32
lengthL0=barn~0:-31,86:21,88:27 lengthL0=bore~0:28,90:55 lengthL0=borehole~86:-34,90:73
lengthL0=bottom~86:27 lengthL0=box~83:30 lengthL0=buried~0:61 lengthL0=by~0:39,87:52
lengthL0=cabin~0:-36,36:25,83:-25,86:41,88:52 lengthL0=cable~40:57 lengthL0=can~0:34
lengthL0=cased~0:-26,89:49 lengthL0=casing~0:-36,89:9 lengthL0=cellar~0:51
lengthL0=climb~0:-39,86:77 lengthL0=climbs~0:-28,86:87,88:-25 lengthL0=copper~88:24
lengthL0=creek~87:40 lengthL0=deep~89:22 lengthL0=depth~90:58 lengthL0=diameter~0:-32,56:85
lengthL0=distance~88:34 lengthL0=down~57:34,83:39,95:37 lengthL0=drilled~0:31
lengthL0=drip~10:44,14:26 lengthL0=dripper~15:18 lengthL0=drippers~15:67 lengthL0=drop~87:27,88:-33
lengthL0=drops~0:35,86:-36,87:44 lengthL0=drum~0:-31,73:56 lengthL0=dug~90:25
lengthL0=dynamic~83:40 lengthL0=each~10:49 lengthL0=elevation~36:77 lengthL0=emitters~15:32
lengthL0=ends~0:35 lengthL0=et~0:-29,13:72 lengthL0=every~15:68 lengthL0=falls~73:20,87:48
lengthL0=farthest~88:25 lengthL0=feet~0:-22,90:28 lengthL0=field~0:54 lengthL0=floor~0:-55,73:34
lengthL0=from~57:22 lengthL0=ft~86:31,87:-33 lengthL0=gallons~73:50 lengthL0=garden~88:36
lengthL0=goes~90:34 lengthL0=gpm~0:29 lengthL0=grid~0:32 lengthL0=ground~87:37 lengthL0=h~0:40
lengthL0=hangs~57:34 lengthL0=has~93:27 lengthL0=head~0:38 lengthL0=highest~86:40
lengthL0=hole~90:22 lengthL0=hose~72:46
lengthL0=house~0:53,40:-25,57:-25,73:20,83:-41,86:68,87:57,88:54,90:-14 lengthL0=hung~93:49
lengthL0=hut~36:40 lengthL0=i~88:69 lengthL0=in~14:27,57:-40,83:35,86:-28,89:60,90:46
lengthL0=inch~0:-29,93:23 lengthL0=intake~72:68,87:34
lengthL0=is~0:35,13:47,36:-30,40:25,73:37,83:23,86:29,89:55,90:30
lengthL0=it~0:68,57:21,86:-28,95:53 lengthL0=it's~83:12,88:58 lengthL0=l~73:38 lengthL0=last~0:47
lengthL0=length~88:44 lengthL0=level~57:-23,90:-35,95:67,97:61 lengthL0=lies~86:42
lengthL0=lift~0:50,57:-25,83:49,86:25 lengthL0=line~0:36,10:83,72:32 lengthL0=lines~10:80
lengthL0=litres~73:32 lengthL0=lowered~57:39 lengthL0=lowest~83:40 lengthL0=m~0:26,83:-38
lengthL0=mains~0:38 lengthL0=maybe~0:29 lengthL0=mm~88:45 lengthL0=must~86:23 lengthL0=my~87:29
lengthL0=no~88:54 lengthL0=now~83:29 lengthL0=npsh~60:60 lengthL0=of~0:77
lengthL0=on~14:34,73:33,93:67 lengthL0=only~36:21 lengthL0=our~0:32 lengthL0=ours~0:-35,83:26,90:42
lengthL0=outside~56:51 lengthL0=pipe~72:65,88:43 lengthL0=poly~88:48 lengthL0=pond~0:47
lengthL0=pump~40:47,57:103,73:-25,83:29,86:-62 lengthL0=pumping~95:37 lengthL0=push~0:29,83:-32
lengthL0=rest~97:65 lengthL0=rise~86:83 lengthL0=rises~86:69 lengthL0=rows~14:151
lengthL0=run~40:37,88:9 lengthL0=sawback~36:24 lengthL0=says~90:47 lengthL0=set~57:71
lengthL0=shed~0:24 lengthL0=shower~86:42 lengthL0=small~36:36 lengthL0=some~86:26
lengthL0=sorry~0:-30,83:25 lengthL0=spacing~15:33 lengthL0=spring~87:59 lengthL0=stand~73:35
lengthL0=standing~97:57 lengthL0=stands~0:-33,73:36 lengthL0=static~0:-13,83:44,97:90
lengthL0=sub~57:36 lengthL0=submersible~57:75 lengthL0=sucks~72:39
lengthL0=suction~72:98,83:34,86:-28 lengthL0=summer~36:25 lengthL0=surface~0:47
lengthL0=swl~83:41,97:44 lengthL0=tank~73:58 lengthL0=tap~86:49 lengthL0=that~73:46
lengthL0=the~40:57,72:-32,73:39,88:51,90:22,93:30,97:-36 lengthL0=there~86:40
lengthL0=through~72:74 lengthL0=to~83:75,88:20,95:54 lengthL0=told~73:27 lengthL0=tote~0:46
lengthL0=tower~0:-33,73:51 lengthL0=up~73:67,86:25 lengthL0=uphill~0:-26,86:52 lengthL0=was~0:23
lengthL0=water~57:-68,72:33,83:101,86:-39,88:-27,97:91 lengthL0=water's~83:38 lengthL0=way~88:28
lengthL0=we~36:27,87:30,88:-37 lengthL0=well~83:20,89:52,90:68 lengthL0=with~0:30,83:33,88:-37
lengthL0=within~83:24 lengthL0=x~0:44 lengthL0=yurt~0:41 lengthL0=|~0:35,87:50,88:-29
lengthL1=(~90:32 lengthL1=,~10:66,36:-37,57:21,73:54,97:50 lengthL1=.~13:38,57:45,97:41
lengthL1=0~73:70,86:36,87:31,89:-42 lengthL1=1~86:43
lengthL1=2~0:-35,15:27,73:24,88:-54,90:16,95:25 lengthL1=3~87:39,90:31
lengthL1=4~0:-64,72:36,83:47,87:32,88:56,90:27 lengthL1=5~0:-30,15:21 lengthL1=6~88:-41
lengthL1=8~97:53 lengthL1=9~0:44,83:-28,89:40,95:56 lengthL1=:~97:48
lengthL1=;~0:19,83:-49,86:-33,87:30 lengthL1=?~36:29,73:-30 lengthL1=a~0:20,57:43,86:-37,90:48
lengthL1=above~83:-31,88:54 lengthL1=all~73:24 lengthL1=an~0:27 lengthL1=and~83:38,87:-54,93:56
lengthL1=apart~10:29 lengthL1=are~0:53,57:-26 lengthL1=at~0:-42,15:38,57:-29,60:53,86:25,95:33
lengthL1=back~90:37 lengthL1=bar~0:44 lengthL1=beds~15:28 lengthL1=below~0:-31,88:42
lengthL1=booster~0:30,88:-30 lengthL1=bore~86:-37,89:27,97:24 lengthL1=borehole~0:-46,93:39
lengthL1=cable~40:26 lengthL1=creek~83:34 lengthL1=deep~0:45,57:-35 lengthL1=depth~0:32
lengthL1=distance~88:25 lengthL1=drip~0:-20,15:44 lengthL1=dry~0:-52 lengthL1=dug~89:40
lengthL1=emitters~15:33 lengthL1=every~10:38 lengthL1=feet~0:34
lengthL1=from~0:-5,40:59,57:-47,87:34,88:58,90:-22 lengthL1=ft~0:48,83:55,87:44
lengthL1=gallon~0:54 lengthL1=gallons~0:50,88:-27 lengthL1=garden~0:28 lengthL1=gpm~95:22
lengthL1=h~0:-47,15:47 lengthL1=half~87:72 lengthL1=have~0:21 lengthL1=he~0:49
lengthL1=hill~0:31,86:-29 lengthL1=hose~0:31 lengthL1=house~40:38,87:-31 lengthL1=how~90:54
lengthL1=hundred~83:-42 lengthL1=i~0:34,88:-39 lengthL1=in~0:28 lengthL1=inch~0:48,87:46
lengthL1=inside~83:-23,97:23 lengthL1=is~57:22,88:20,93:22 lengthL1=it~88:25
lengthL1=it's~86:35,90:39 lengthL1=l~83:-31,95:45 lengthL1=level~83:44 lengthL1=lift~0:-25
lengthL1=lifts~86:27 lengthL1=line~88:51 lengthL1=liters~0:42 lengthL1=litres~0:-13,86:37
lengthL1=log~90:35 lengthL1=lower~0:51 lengthL1=m~0:-27,83:49 lengthL1=makes~86:42
lengthL1=meters~0:42 lengthL1=min~0:34,86:-36 lengthL1=minute~87:19 lengthL1=mm~87:30
lengthL1=my~88:-51 lengthL1=never~83:37 lengthL1=of~0:-29,73:15,88:53 lengthL1=our~0:-42
lengthL1=over~0:34 lengthL1=pe~87:48 lengthL1=pipe~93:19 lengthL1=poly~88:-33
lengthL1=psi~0:-37,83:35 lengthL1=pump~0:-31,86:6 lengthL1=rows~10:38 lengthL1=s~95:34
lengthL1=schedule~88:29 lengthL1=seconds~88:-34 lengthL1=sheet~0:44 lengthL1=solar~83:-33
lengthL1=source~0:33 lengthL1=spring~86:-50,87:17 lengthL1=stands~0:43,83:27 lengthL1=static~95:33
lengthL1=stream~73:51 lengthL1=submersible~0:-36,56:14,57:35 lengthL1=suction~0:45,72:37,88:-23
lengthL1=summer~83:43 lengthL1=surface~0:-49 lengthL1=tank~0:73,73:47,83:-23
lengthL1=the~0:-42,36:-43,40:20,72:50,90:64,95:36 lengthL1=then~0:44
lengthL1=to~0:-44,40:51,86:59,87:33 lengthL1=total~88:29 lengthL1=tote~73:30 lengthL1=trench~0:40
lengthL1=under~83:42 lengthL1=up~0:36,86:34 lengthL1=water~83:19,86:36,88:35
lengthL1=we~73:29,88:33 lengthL1=well~83:17,87:-29 lengthL1=with~0:-34,88:36,95:27
lengthL1=yards~87:28 lengthL1=|~73:-34 lengthL2=(~73:32 lengthL2=,~10:64,14:47,73:40
lengthL2=.~0:33,10:39,13:53,57:69,83:-12,88:37,95:40
lengthL2=0~0:-41,10:44,15:57,40:7,57:22,86:37,95:-39 lengthL2=1~40:27,57:25,73:-63,87:32,95:28
lengthL2=2~10:47,73:-32,87:30,88:63 lengthL2=3~13:51,57:41,60:41,73:-18,88:57,89:-36
lengthL2=4~73:41,86:21,87:-63 lengthL2=5~10:43,73:34,88:39 lengthL2=6~10:35,83:-31,87:24
lengthL2=7~0:23 lengthL2=8~0:40,73:18,90:-35 lengthL2=9~86:41,87:-53 lengthL2=:~95:61
lengthL2=;~0:-50,86:38 lengthL2=above~72:23 lengthL2=after~83:34 lengthL2=allotment~0:28
lengthL2=am~0:63 lengthL2=apart~10:48 lengthL2=august~0:-38 lengthL2=bar~0:57
lengthL2=barn~0:-32,87:23 lengthL2=basement~87:30 lengthL2=battery~40:43 lengthL2=beef~86:38
lengthL2=below~72:32 lengthL2=beside~86:-37,88:29 lengthL2=bore~0:-42,83:-39,90:24,95:39,97:49
lengthL2=bore's~57:22 lengthL2=borehole~83:55 lengthL2=bring~86:40
lengthL2=bucket~0:73,86:-52,88:-35 lengthL2=by~0:-53,90:57 lengthL2=cabin~0:38,87:-28
lengthL2=casing~0:53 lengthL2=cistern~0:36 lengthL2=cm~13:43 lengthL2=compensating~10:40
lengthL2=count~0:43 lengthL2=creek~0:44,72:24,88:-37 lengthL2=cubic~0:46 lengthL2=day~36:52
lengthL2=deep~0:-41,97:36 lengthL2=depth~57:67 lengthL2=distance~86:25 lengthL2=does~0:25,73:-23
lengthL2=drip~14:37,15:69 lengthL2=drippers~10:55 lengthL2=drop~0:-32,93:23 lengthL2=dry~86:-36
lengthL2=electric~40:45,86:-26 lengthL2=fed~0:40,86:-31 lengthL2=feet~0:-21,86:44,97:39
lengthL2=fills~73:33 lengthL2=five~73:48 lengthL2=floor~83:-41 lengthL2=four~73:32
lengthL2=from~57:-39,73:38,90:-39,97:50 lengthL2=ft~15:41,73:-31,83:85,97:-49 lengthL2=gal~88:31
lengthL2=gallon~0:22,88:-41 lengthL2=gallons~0:-38 lengthL2=garden~0:53 lengthL2=gave~95:34
lengthL2=gives~87:30,88:-26 lengthL2=goes~88:-41 lengthL2=got~0:58 lengthL2=gpm~83:-39,88:33
lengthL2=ground~0:42 lengthL2=had~0:41 lengthL2=hav~0:48,73:-47 lengthL2=having~0:30
lengthL2=hello~0:44,83:-47 lengthL2=hey~0:54,83:-50 lengthL2=higher~0:41 lengthL2=hit~83:59
lengthL2=hose~88:33 lengthL2=hour~0:41,88:-46 lengthL2=house~83:-40,86:125,88:23,90:-29
lengthL2=hundred~86:35 lengthL2=i've~0:46 lengthL2=inch~0:-32,86:24,88:-42 lengthL2=inches~97:41
lengthL2=into~73:66 lengthL2=jet~0:-35,72:41,83:40 lengthL2=kitchen~0:-38,88:30
lengthL2=l~10:32,60:47 lengthL2=lane~83:-33 lengthL2=last~90:31 lengthL2=level~0:21
lengthL2=line~15:28 lengthL2=lines~73:38 lengthL2=liter~0:41 lengthL2=litres~0:-36
lengthL2=little~86:-43 lengthL2=log~97:41 lengthL2=lower~0:32,83:-40
lengthL2=m~0:-44,60:40,86:50,90:-43,97:19 lengthL2=machine~0:26 lengthL2=max~0:37
lengthL2=maybe~86:28 lengthL2=measured~0:37 lengthL2=metres~86:-55,87:69 lengthL2=min~0:-35,60:50
lengthL2=minute~73:-35 lengthL2=mm~0:-41,87:41 lengthL2=most~0:37,73:-49 lengthL2=next~73:-42
lengthL2=no~0:-52,40:41,88:52,90:41 lengthL2=none~86:38 lengthL2=not~90:24
lengthL2=one~86:34,87:-56,88:-45 lengthL2=only~86:48 lengthL2=or~0:-23 lengthL2=over~88:31
lengthL2=panels~40:28 lengthL2=pipe~0:-20,88:52 lengthL2=place~87:29 lengthL2=poly~86:24,88:42
lengthL2=pond~0:37,86:-27 lengthL2=power~88:39 lengthL2=pressure~0:-28,73:56,86:-14
lengthL2=psi~0:-35,14:43 lengthL2=pump~0:59,57:85,72:26,87:-32 lengthL2=pumphouse~83:44
lengthL2=pvc~93:24 lengthL2=rain~73:47 lengthL2=reservoir~73:72,86:-44 lengthL2=right~0:-34
lengthL2=roof~73:45 lengthL2=room~0:27 lengthL2=rows~10:72 lengthL2=run~88:42 lengthL2=runs~83:38
lengthL2=said~90:36 lengthL2=says~0:39 lengthL2=seconds~86:-28 lengthL2=set~0:-26,83:61
lengthL2=shallow~0:-22,88:50 lengthL2=shower~0:-46 lengthL2=showers~0:42 lengthL2=sits~0:-26
lengthL2=so~86:-40,90:28 lengthL2=source~0:-37,83:18,87:37 lengthL2=spring~0:50,86:-30,87:71
lengthL2=static~0:-30,83:85 lengthL2=steel~0:-41 lengthL2=submersible~88:-42,90:19
lengthL2=sun~0:31,88:-29 lengthL2=take~87:46 lengthL2=tank~0:50,87:-27,88:71,90:-32
lengthL2=ten~0:39,88:-34 lengthL2=tent~86:52 lengthL2=test~95:50 lengthL2=than~0:30
lengthL2=then~97:31 lengthL2=there~0:50,86:-35 lengthL2=there's~90:62
lengthL2=they~0:31,73:-51,86:23 lengthL2=too~0:-26,73:34 lengthL2=trees~0:45,88:-27
lengthL2=two~73:50 lengthL2=under~0:38,88:-36 lengthL2=up~0:-29,73:13,86:30,88:34
lengthL2=upper~0:33 lengthL2=use~83:-37 lengthL2=utility~0:28 lengthL2=v~40:33,88:29
lengthL2=want~0:27,73:-45 lengthL2=was~0:-55 lengthL2=washing~0:27
lengthL2=water~0:-37,57:23,73:23,83:106,86:-44,95:33 lengthL2=water's~86:-51 lengthL2=we've~90:47
lengthL2=well~0:34,83:40,86:-49,90:55 lengthL2=wellhead~86:35 lengthL2=what~90:-35
lengthL2=which~0:23,88:-59 lengthL2=while~0:46,88:-50 lengthL2=yet~86:38 lengthL2=you~0:49
lengthL2=|~36:31 lengthM=cistern~36:46,88:34 lengthM=creek~72:26,86:55,88:-18
lengthM=drip~0:-20,10:130,13:51,14:117,15:120,83:-43,89:-29
lengthM=pump~15:60,36:67,40:54,56:27,57:60,60:56,72:39,83:47,86:84,87:-101,95:45,97:35
lengthM=roof~0:30,83:-37 lengthM=spring~0:45,36:49,57:-66,83:-23,86:-45,87:206
lengthM=tank~73:175,86:-25,90:-3
lengthM=well~57:47,72:-42,73:-42,87:-46,88:67,89:84,90:85,93:41,95:41 lengthR0=(~86:40
lengthR0=,~14:45,15:35,57:31,73:36,90:70
lengthR0=.~10:37,15:14,36:77,40:18,57:73,73:40,83:30,89:77,90:45,95:40 lengthR0=0~88:33
lengthR0=1~0:-85,40:57,72:66,83:-35,86:34,88:50 lengthR0=2~0:16,73:46,90:-40
lengthR0=3~0:24,88:36,89:29 lengthR0=4~72:27,83:-45,88:10,90:-38,93:52 lengthR0=5~0:24,88:21
lengthR0=6~0:-53,56:45,88:35 lengthR0=8~0:20,90:-42,93:38 lengthR0=:~0:-46,86:44,88:38
lengthR0=;~0:-32,83:44 lengthR0=a~0:-43,13:37
lengthR0=above~0:-21,36:17,57:-28,73:86,83:65,86:72,87:37,88:-48,90:-31 lengthR0=according~90:50
lengthR0=across~0:34,89:49 lengthR0=after~0:43,83:45 lengthR0=all~0:56 lengthR0=altitude~36:26
lengthR0=an~0:38,88:-61 lengthR0=and~83:-34,88:63,89:65,90:37,97:53 lengthR0=apart~14:54,15:30
lengthR0=at~15:46,57:-21,86:-27,90:34,95:60 lengthR0=away~0:48,86:-26,88:90
lengthR0=barn~0:27,73:-25 lengthR0=below~57:37,83:57,86:76,87:13,88:-38,90:-46
lengthR0=between~14:32 lengthR0=borehole~0:-51,86:38,89:46 lengthR0=bottom~0:41,88:-36,90:66
lengthR0=but~0:51 lengthR0=cabin~87:33 lengthR0=cable~40:101,88:-38 lengthR0=casing~89:82,90:-21
lengthR0=comes~0:52 lengthR0=copper~0:22 lengthR0=creek~86:37 lengthR0=day~13:59
lengthR0=deep~0:79,73:-29,83:-49,86:-26,88:-35,90:140 lengthR0=depth~0:30,90:50
lengthR0=diameter~89:39 lengthR0=down~57:102,73:-42,83:63,88:-39 lengthR0=drip~0:52
lengthR0=drop~93:45 lengthR0=each~14:32 lengthR0=elevation~36:40 lengthR0=for~0:28
lengthR0=from~0:58,36:-30,88:43,90:-41 lengthR0=full~0:47,83:-31 lengthR0=garden~87:38
lengthR0=ground~57:36,83:12,86:-28 lengthR0=have~0:46 lengthR0=hdpe~0:23
lengthR0=height~73:34,86:43 lengthR0=high~0:31 lengthR0=higher~73:45,86:83 lengthR0=hill~86:37
lengthR0=hose~0:37,72:44 lengthR0=house~0:29,87:37,90:-25 lengthR0=i~88:34
lengthR0=in~13:47,56:75,57:45,83:75,86:36,88:-30 lengthR0=inch~72:38,88:49 lengthR0=inside~89:78
lengthR0=is~0:-43 lengthR0=it~0:-11,83:42,86:36 lengthR0=just~0:53,88:-28 lengthR0=kitchen~73:37
lengthR0=level~0:44,36:29,57:-26 lengthR0=lift~0:-37,86:55 lengthR0=line~72:30 lengthR0=lined~90:26
lengthR0=long~0:12,10:64,72:51,90:-36 lengthR0=lower~83:-35,87:112 lengthR0=lowest~0:-24
lengthR0=my~83:36 lengthR0=of~40:90,72:123,73:-49,83:-34,88:66,90:-49,93:82 lengthR0=off~88:66
lengthR0=old~0:27 lengthR0=on~0:47,86:-25 lengthR0=one~72:29 lengthR0=our~83:27
lengthR0=over~0:14,73:58 lengthR0=pe~0:8 lengthR0=pex~0:29 lengthR0=pipe~0:19,88:51,93:43
lengthR0=poly~0:64,83:-23 lengthR0=pump~0:-27,73:-27,83:55,86:29,87:-35,90:16,95:27
lengthR0=pvc~0:27 lengthR0=rim~97:23 lengthR0=rise~86:46 lengthR0=rows~0:-45,14:83
lengthR0=runs~72:25 lengthR0=sea~36:57 lengthR0=spring~0:37 lengthR0=stand~73:22
lengthR0=static~0:21 lengthR0=stream~0:-39,83:43 lengthR0=submersible~0:-33
lengthR0=suction~60:30,72:51,86:-25 lengthR0=summer~83:50 lengthR0=surface~83:34
lengthR0=tank~73:48,86:-24,88:57 lengthR0=than~86:36,87:45 lengthR0=that~86:46
lengthR0=the~0:34,40:-45,73:12,83:41,86:46,87:79,88:57,97:68 lengthR0=then~0:72
lengthR0=there~0:-27 lengthR0=to~0:-36,40:32,73:35,88:52 lengthR0=top~87:-35,97:58
lengthR0=total~0:-38,88:23 lengthR0=under~0:-32,86:49 lengthR0=up~73:59,86:95,90:-36
lengthR0=uphill~0:-32,86:86 lengthR0=us~73:29,87:35 lengthR0=water~0:29,83:136,86:-28,88:-35
lengthR0=we~0:20 lengthR0=well~0:-35,83:-31,89:34,90:26 lengthR0=when~0:29,83:-32,95:42
lengthR0=wide~0:35 lengthR0=wire~40:53,88:-36 lengthR0=with~0:-39,90:44 lengthR0=|~86:21
lengthR1=,~56:67,57:-28,86:15 lengthR1=.~15:36,36:46,72:32,73:75,87:30,88:44,90:56,95:13
lengthR1=0~0:-19,73:35,86:13,87:21,88:-45 lengthR1=1~10:40,83:58,87:28 lengthR1=2~83:31,90:17
lengthR1=3~0:-28,86:37,90:19 lengthR1=4~0:-43,60:58,86:29,88:-23,90:18,93:32 lengthR1=5~15:53,90:66
lengthR1=6~0:-60,73:63,97:38 lengthR1=7~0:26,57:-26 lengthR1=8~0:39,88:36,90:15
lengthR1=9~86:39,97:37 lengthR1=;~88:31 lengthR1=a~88:41 lengthR1=along~86:37
lengthR1=already~86:48 lengthR1=and~83:19 lengthR1=any~0:35 lengthR1=around~0:57
lengthR1=at~88:-26,90:39,97:29 lengthR1=by~0:32 lengthR1=cabin~88:20 lengthR1=climbs~86:45
lengthR1=creek~72:25 lengthR1=deep~89:43,90:-29 lengthR1=down~83:20 lengthR1=drop~88:-22,93:44
lengthR1=electricity~0:33 lengthR1=feet~0:37 lengthR1=filled~0:46 lengthR1=foot~72:32,88:-38
lengthR1=from~0:-19,73:9,83:38 lengthR1=ft~0:56,57:-28 lengthR1=gives~86:-36,87:48
lengthR1=got~0:34 lengthR1=gpm~0:-30,90:36 lengthR1=grid~83:31 lengthR1=ground~0:28
lengthR1=h~15:40 lengthR1=hangs~0:-23 lengthR1=has~87:46 lengthR1=hose~72:43
lengthR1=house~0:-24,73:52,86:84,88:30 lengthR1=i~86:-46,87:38 lengthR1=in~72:30
lengthR1=is~83:-57,88:-41,89:55 lengthR1=it~0:38,73:42,86:-27 lengthR1=l~15:51
lengthR1=line~0:-42,87:32,88:25 lengthR1=log~0:44 lengthR1=long~0:27
lengthR1=m~60:48,83:-34,86:41,89:52,90:33,97:42 lengthR1=measured~0:36,86:-24 lengthR1=metres~0:37
lengthR1=mm~0:-17,72:32,83:-18,86:50,88:50 lengthR1=of~0:34 lengthR1=one~0:49 lengthR1=only~73:23
lengthR1=out~0:57 lengthR1=pex~88:32 lengthR1=pipe~83:-25 lengthR1=poly~93:13 lengthR1=power~83:29
lengthR1=pump~40:17,89:40 lengthR1=pushes~0:-30,83:35 lengthR1=put~87:29 lengthR1=runs~95:26
lengthR1=shower~0:42 lengthR1=showers~83:29 lengthR1=slope~86:45 lengthR1=so~0:11
lengthR1=stands~0:-32,89:30 lengthR1=submersible~89:44 lengthR1=suction~0:-47,72:71
lengthR1=summer~83:26 lengthR1=tank~88:-24 lengthR1=tap~0:41 lengthR1=that~90:40
lengthR1=the~0:-7,15:-50,40:36,72:31,73:64 lengthR1=then~86:-41 lengthR1=there~83:24
lengthR1=through~0:39 lengthR1=to~83:31,90:-40 lengthR1=trough~0:34 lengthR1=up~83:49
lengthR1=want~0:20 lengthR1=water~0:-40,13:43,83:24,90:69 lengthR1=we~86:-31
lengthR1=well~0:34,57:25,83:22,86:-24,87:35,88:-43 lengthR1=where~83:35 lengthR1=which~0:58,83:-41
lengthR1=wire~40:58 lengthR1=with~86:-24 lengthR1=|~40:43 lengthR2=!~0:24 lengthR2=)~86:31
lengthR2=,~0:22,10:56,14:30,83:-22,88:37,90:29
lengthR2=.~15:43,60:47,73:35,86:-30,87:76,88:35,97:36 lengthR2=0~72:27,87:44
lengthR2=1~0:-39,10:40,86:34,88:25,89:40 lengthR2=2~73:37,86:-51,87:71,97:-49
lengthR2=3~40:36,60:26,83:-36,97:64 lengthR2=4~87:12 lengthR2=5~0:-24,86:51,87:29,90:-52
lengthR2=6~87:-25,97:31 lengthR2=7~0:51,83:-37,86:51,88:-45 lengthR2=8~0:-56,83:37,87:-41,97:65
lengthR2=above~83:28,88:18 lengthR2=apart~0:-49,10:28 lengthR2=away~0:-64,73:43,87:31
lengthR2=barn~0:52,88:-21 lengthR2=beside~0:51,90:-44 lengthR2=bottom~0:38
lengthR2=climb~0:51,88:-29 lengthR2=comes~0:-38,86:40 lengthR2=deep~89:55 lengthR2=do~87:48
lengthR2=drop~93:39 lengthR2=end~0:34,90:-34 lengthR2=feet~57:31,83:-28,88:-42,90:60
lengthR2=first~73:-23 lengthR2=foot~72:84 lengthR2=four~0:-35 lengthR2=from~0:-34,86:-37,88:63
lengthR2=ft~83:25 lengthR2=gallons~83:41 lengthR2=ground~90:43 lengthR2=h~0:32
lengthR2=his~0:39,86:-27 lengthR2=hose~0:63 lengthR2=house~0:-46,86:34,87:54
lengthR2=how~0:-36,73:51 lengthR2=hundred~86:54 lengthR2=hung~90:55 lengthR2=inch~0:-39,86:58
lengthR2=inside~0:-24,90:34 lengthR2=it's~86:64,87:-31 lengthR2=km~97:25 lengthR2=l~83:33
lengthR2=level~0:-42 lengthR2=line~86:-44,87:40 lengthR2=lines~0:33 lengthR2=liters~0:55,73:-45
lengthR2=litres~0:-39 lengthR2=long~86:-49 lengthR2=lower~0:43 lengthR2=m~0:-23,57:47,83:15,87:34
lengthR2=machine~83:31 lengthR2=mail~0:23,73:-23 lengthR2=meters~0:-28 lengthR2=metres~0:-53
lengthR2=mm~86:-22,93:36 lengthR2=never~90:47 lengthR2=nothing~0:41 lengthR2=one~88:32
lengthR2=pe~86:-30 lengthR2=per~83:35 lengthR2=persons~0:35 lengthR2=pipe~86:46,93:60
lengthR2=poly~0:-9,57:-29,72:49,86:46 lengthR2=pump~40:34,57:-33,73:29,88:-52,97:34
lengthR2=pvc~0:52,83:-55 lengthR2=runs~0:40,57:-22 lengthR2=says~0:-40 lengthR2=seven~86:-35
lengthR2=shower~0:25,86:-32,88:56 lengthR2=since~88:-43 lengthR2=sink~86:-69,88:40
lengthR2=sits~0:55,90:-53 lengthR2=solar~88:25 lengthR2=suction~0:51 lengthR2=tank~87:-36
lengthR2=then~88:-33 lengthR2=top~0:-40 lengthR2=two~0:-58 lengthR2=under~0:-37,90:34
lengthR2=v~88:40 lengthR2=valve~72:67 lengthR2=was~0:49 lengthR2=washing~83:30
lengthR2=water~0:-62,88:-28,89:50,90:31 lengthR2=when~83:-36 lengthR2=where~97:42
lengthR2=which~0:40 lengthR2=|~0:47,88:-50 lengthT=beds.area~0:-46,10:99,13:53,14:82,15:43,87:-36
lengthT=power.battery~40:20,86:35 lengthT=power.cable~36:28,87:-35,90:32
lengthT=power.capacity~40:19,86:40 lengthT=power.facing~40:50 lengthT=power.limit~40:42
lengthT=power.open_voltage~40:46 lengthT=power.panel~36:43,40:59,90:-32
lengthT=power.series~40:33,73:38,90:-41
lengthT=power.source~36:35,40:77,73:54,83:62,86:44,87:-52,89:34,90:37
lengthT=power.strings~0:-34,40:14,73:52,83:32,86:-64
lengthT=power.voltage~40:62,73:-39,86:20,87:-79,88:34 lengthT=pump.control~0:21,60:43,73:-58
lengthT=pump.count~0:35 lengthT=pump.cut_in~0:-54,73:-41,83:16
lengthT=pump.cut_out~0:59,73:-39,83:25,86:-30 lengthT=pump.dry_lift~60:48
lengthT=pump.dry_run~56:75,83:-37,90:25,97:39
lengthT=pump.height~0:33,40:17,56:49,57:-159,72:-47,73:29,83:42,87:46,88:-40,90:67,95:50,97:21
lengthT=pump.least_flow~0:-30 lengthT=pump.most_flow~0:-25,83:34 lengthT=pump.motor~0:-32,83:39
lengthT=pump.npsh~0:33 lengthT=pump.placement~0:49,36:56,40:24,56:79,57:58,72:50,87:-100
lengthT=pump.present~0:-19,73:43,83:-52,86:-118,87:172,88:67 lengthT=pump.relief~0:24
lengthT=pump.set~72:55,73:-37,88:32 lengthT=pump.starts~0:-30 lengthT=pump.works~0:37,88:-31
lengthT=store.days~0:44,73:57 lengthT=store.depth~0:35,88:-37
lengthT=store.volume~10:32,36:11,57:-36,83:-43,86:76,88:36,97:-46
lengthT=tank.level~0:69,36:30,73:-138,83:71,86:-57,87:-49,88:87,90:35
lengthT=tank.volume~0:36,36:44,73:160,83:-29,86:-83,87:-82
lengthT=water.kind~0:-55,14:36,36:38,40:-26,60:-37,72:13,73:-30,86:41,87:121,88:48,89:64,90:85,93:56,95:56,97:83
lengthT=water.level~0:22,36:34,57:54,60:61,72:103,73:45,83:-226,89:79,90:102,95:-59
lengthT=water.temperature~60:46 lengthT=water.yield~36:56,57:30,72:-52,87:-9
lengthT=way.climb~0:94,57:31,72:50,73:-106,83:105,86:-225,87:-138,88:212,89:35,90:13
lengthT=way.length~0:104,36:49,57:49,72:29,73:51,83:51,86:202,87:104,88:-354,90:39
lengthT=way.pipe~40:-63,72:-57,87:114,88:129,90:-91,97:39
lengthT=well.bore~0:-16,56:94,83:-34,88:-73,89:-103,90:84,93:37,95:38,97:94
lengthT=well.cover~0:84,57:-62,83:-22
lengthT=well.depth~0:29,40:42,57:60,83:28,87:-10,89:118,90:-244,97:128
lengthT=well.pumping~83:-46,93:59,97:75 lengthT=well.static~0:-78,87:-18,89:63,90:78,95:92,97:-68
lengthT=well.tested~0:-39,83:-45,90:-37,93:58,95:119,97:65 lengtha=~83:43,88:23 lengtha=,_1~0:-24
lengtha=,_3~88:-49 lengtha=,_and~0:38 lengtha=,_pump~0:-36,90:27 lengtha=,_static~90:18
lengtha=.~83:15,86:35,88:27,90:53 lengtha=._the~0:-86 lengtha=a_day~13:38
lengtha=above_ground~73:26 lengtha=above_it~0:-63,83:49,86:79 lengtha=above_sea~36:38
lengtha=above_the~0:72,73:94,86:-29,88:-33 lengtha=according_to~90:47 lengtha=across_,~0:42
lengtha=and_the~57:52,88:-51 lengtha=apart_,~14:26 lengtha=apart_.~14:44 lengtha=away_,~88:47
lengtha=away_.~0:43,88:31 lengtha=below_ground~57:39 lengtha=below_the~83:58,86:30,88:-21
lengtha=between_the~14:42 lengtha=casing_,~0:-25,89:29 lengtha=casing_.~0:-32,89:45
lengtha=deep_,~0:37,90:22 lengtha=deep_.~0:33,90:30 lengtha=deep_and~0:-33,90:57
lengtha=depth_.~90:31 lengtha=down_,~57:31 lengtha=down_in~57:23 lengtha=down_to~0:64
lengtha=from_the~0:79,83:-51,86:-34,88:71,90:-37 lengtha=high_.~0:25 lengtha=higher_,~86:25
lengtha=hose_.~0:43 lengtha=in_summer~83:49 lengtha=in_the~0:30 lengtha=inside_.~89:41
lengtha=long_,~72:39 lengtha=long_.~0:45,10:13 lengtha=lower_.~86:-66,87:66
lengtha=lower_than~86:36 lengtha=of_1~72:52,86:-24,93:14 lengtha=of_2~88:34 lengtha=of_3~88:44
lengtha=of_cable~40:57,88:-22 lengtha=of_drop~93:50 lengtha=of_lift~86:66 lengtha=of_pipe~88:48
lengtha=of_rise~86:48 lengtha=over_the~0:16,86:-30 lengtha=pe_,~0:24 lengtha=pipe_,~0:29
lengtha=rows_,~14:40 lengtha=to_the~0:-37,88:56 lengtha=to_water~83:46
lengtha=under_the~0:-27,86:31 lengtha=up_.~86:51 lengtha=up_and~86:32 lengtha=up_the~86:39
lengtha=up_to~88:20 lengtha=wide_.~0:30 lengthb=~36:50,40:42 lengthb=,_house~86:38
lengthb=,_lines~10:26 lengthb=,_pump~57:26 lengthb=,_rows~14:48 lengthb=,_static~97:53
lengthb=._borehole~0:27 lengthb=?_|~0:-60 lengthb=a~40:50,72:25 lengthb=a_house~86:40
lengthb=a_tank~73:31 lengthb=at_rest~97:39 lengthb=away_and~86:26 lengthb=barn_is~86:31
lengthb=bore_is~0:38 lengthb=cabin_is~86:23 lengthb=casing_is~89:31 lengthb=creek_is~83:30,86:-31
lengthb=down_to~95:46 lengthb=each_line~10:38 lengthb=falls_to~95:26 lengthb=floor_is~73:47
lengthb=ft_of~0:40 lengthb=gpm_at~0:48 lengthb=hole_is~90:34 lengthb=hose_is~72:32
lengthb=house_and~0:64,86:-29 lengthb=house_is~0:52,83:-27,88:25 lengthb=hut_,~0:44
lengthb=in_a~89:43,90:43 lengthb=is_about~88:47 lengthb=is_only~90:46 lengthb=is_to~88:-28
lengthb=it_is~73:-59,83:38,90:32 lengthb=it_stands~0:29 lengthb=level_is~0:51 lengthb=m_of~0:52
lengthb=no_,~83:38 lengthb=on_a~73:55 lengthb=only_,~36:25 lengthb=outside_diameter~56:51
lengthb=pipe_,~0:37 lengthb=pipe_is~72:31 lengthb=pump_at~57:52 lengthb=pump_hangs~0:28
lengthb=pump_is~0:-53,40:56 lengthb=pump_stands~83:38 lengthb=pumping_level~95:39
lengthb=rise_is~86:48 lengthb=set_at~57:15 lengthb=shed_is~0:33 lengthb=sorry_,~83:25
lengthb=spring_is~0:10 lengthb=spring_lies~86:61,87:-49 lengthb=stands_at~97:42
lengthb=submersible_at~57:36 lengthb=tank_is~0:86,88:-19 lengthb=the_house~88:37
lengthb=the_water~0:38 lengthb=to_house~88:36 lengthb=up_and~88:26 lengthb=up_to~0:60
lengthb=water_at~83:59,95:32 lengthb=water_is~0:-26,83:52 lengthb=water_level~83:-34,97:48
lengthb=we_are~87:26 lengthb=we_have~0:35,88:-35 lengthb=well~0:45 lengthb=well_,~0:19
lengthb=well_and~0:-38,86:43 lengthb=well_is~0:39 lengthb=well_it's~88:30 lengthb=|_suction~0:32
m=angle3~34:60,37:93,48:78 m=area-1~0:-30,6:62 m=area0~0:-45,6:69 m=area1~0:38 m=area3~0:73,6:-40
m=area4~0:55,6:-40,64:42 m=area5~0:31,6:124,64:22 m=area7~0:-34,6:55 m=bare-1~0:91
m=bare0~0:62,1:-76,3:-78,4:-51,5:-32,15:40,25:104,26:62,27:123,29:43,30:-35,32:70,33:103,45:-31,47:26,70:-24,71:97,81:-75,82:44
m=bare1~2:-21,3:-117,4:-88,5:-16,16:61,17:21,23:51,27:37,28:30,29:45,30:41,31:38,37:-26,45:103,47:43,53:82,55:51,62:-34,63:72,70:74,71:-39,81:80,82:86,83:-26
m=bare2~0:20,1:43,2:38,4:35,25:-47,29:29,30:49,33:-51,45:-32,62:56,81:85,82:49
m=bare3~0:39,1:30,2:45,3:117,4:68,5:39,25:-30,27:-44,29:-14,32:-39,33:-30,37:118,57:42,62:40,82:-55,97:37
m=bare4~4:63,5:52,82:-41 m=bare5~0:-42,1:55,3:46,81:61,82:-34 m=bare6~3:66 m=charge3~0:31
m=charge4~41:51 m=charge5~41:145 m=current3~39:40 m=daily1~0:34 m=daily2~0:42 m=daily3~76:56
m=daily4~76:78 m=daily5~75:63 m=daily6~75:103 m=daily7~0:44 m=each3~76:70 m=each4~76:41
m=flow-1~7:38,78:88,85:48 m=flow0~7:48,99:39 m=flow1~0:41,7:88,67:46,85:31,96:44,99:-46
m=flow2~0:23,8:53,58:42,67:-29,85:103,98:33,99:74 m=flow3~0:39,58:45,67:45,85:-36,96:57
m=flow5~0:26 m=length-1~10:-37,14:-30,15:149,83:62
m=length-2~0:-20,56:140,57:-26,86:-25,88:-23,89:189,90:-45
m=length-3~0:301,72:-44,86:-25,88:-43,89:-35 m=length-4~0:51 m=length-5~13:50
m=length0~0:101,10:-35,14:136,36:-48,73:33,83:31,86:-73,87:-30,88:-77,89:126,90:-75
m=length1~0:43,10:-28,14:53,36:-78,57:-73,60:85,72:33,73:69,83:155,86:77,87:69,88:-116,90:-73,97:41
m=length2~0:-49,36:-87,40:-44,57:-37,72:169,73:84,83:160,86:168,87:109,88:-86,89:-61,95:-30
m=length3~0:-58,10:89,14:-52,15:-40,36:-124,40:30,57:154,73:59,86:125,89:-73,90:85,93:31,95:102,97:14
m=length4~0:-67,10:100,36:-78,40:162,57:109,72:-62,73:-31,83:-110,86:-60,87:-26,88:211,89:-41,90:179,93:72
m=length5~0:19,73:-47,83:-55,87:-27,88:212 m=length6~0:-60,36:288,83:-37,86:-37,88:91
m=length7~36:227,57:-39,83:-39 m=pair1~54:30 m=pair3~54:90 m=percent2~46:40 m=percent3~46:93
m=percent4~59:61 m=power-1~0:47 m=power0~0:46,32:32,44:-32 m=power1~0:37 m=power4~0:-36,44:67
m=power5~44:171 m=pressure0~11:95,12:58,50:42,54:24,61:-42
m=pressure1~18:39,35:-45,50:28,55:93,61:113 m=pressure2~0:39,19:76,35:108,51:38,55:-36,61:-52
m=pressure3~18:37,50:97,54:66,55:55,61:60 m=pressure4~0:56,19:51,50:-46,51:51 m=pressure5~61:37
m=temperature2~84:80 m=temperature3~34:38,84:48 m=temperature4~20:103,34:40,84:-47 m=time0~0:56
m=time1~0:101,9:45,65:124,66:20,94:22 m=time2~0:48,9:44 m=time3~92:88 m=time4~0:-45
m=voltage2~0:85,49:52 m=voltage3~42:-58,43:68,49:125 m=voltage4~42:67 m=voltage5~42:50,49:35
m=volume0~0:30 m=volume1~21:84 m=volume2~0:28,21:59,69:-27,85:78
m=volume3~0:65,22:43,52:136,69:-20,74:-22 m=volume4~0:-68,22:40,52:179,69:-53,76:54
m=volume5~0:9,22:68,52:-43,74:-21,79:75,91:33 m=volume6~0:-14,52:-41,69:69,74:53,91:50
m=volume7~52:-61,68:42,69:79,74:100 m=volume8~0:19,52:-30,69:76,74:26 m=volume9~69:70
pairC=pressure~54:35 pairC=switch~54:60 pairL0=a~54:34 pairL0=switch~54:47 pairL2=.~54:43
pairL2=0~54:52 pairM=pump~54:52 pairM=tank~54:87 pairM=well~54:27 pairR0=,~54:42 pairR0=.~54:7
pairR0=switch~54:-3 pairR2=.~54:46 pairT=pump.placement~54:14 pairT=water.kind~54:32
pairT=way.length~54:18 pairT=way.pipe~54:10 paira=.~54:29 percentC=1~0:49 percentC=efficiency~59:65
percentC=lose~46:29 percentC=motor~59:74 percentC=panels~46:43 percentC=slope~0:34
percentL0=.~59:39 percentL0=about~46:28 percentL0=i~59:32 percentL0=lose~46:29 percentL0=the~0:27
percentL0=we~0:32 percentL1=,~46:34 percentL1=the~46:32 percentL2=.~46:16 percentL2=0~0:57
percentL2=m~0:34 percentL2=panels~46:30 percentL2=pump~46:17 percentL2=shade~46:35
percentL2=south~46:36 percentM=drip~0:63 percentM=pump~0:58,46:47 percentR0=.~0:55,46:12,59:59
percentR0=in~46:44 percentR0=of~0:49 percentR0=the~46:30 percentR0=to~46:47 percentR1=.~46:48
percentR1=the~0:42 percentR2=.~0:56 percentT=power.amps~46:42 percentT=power.battery~46:35
percentT=power.cable~46:43 percentT=power.capacity~46:35 percentT=power.controller~46:29
percentT=power.facing~0:-36,46:53 percentT=power.panel~46:39 percentT=power.series~46:34
percentT=power.source~0:22,46:79 percentT=power.voltage~46:37 percentT=water.kind~0:26
percentT=water.level~59:52 percentT=way.length~59:40 percentT=way.pipe~59:41 percenta=of_the~0:52
powerC=,~44:53 powerC=2~44:36 powerC=4~44:26 powerC=no~32:32 powerC=one~44:38 powerC=panels~44:72
powerC=power~0:26 powerC=pump~0:45 powerC=there~32:32 powerC=two~44:30 powerC=x~44:28
powerL0=,~32:31 powerL0=a~0:91 powerL0=are~44:19 powerL0=panels~44:49 powerL0=pump~0:39
powerL0=the~0:59 powerL0=two~44:22 powerL0=x~44:28 powerL1=,~32:32 powerL1=.~0:42,44:30
powerL1=a~32:31 powerL1=at~0:26 powerL1=is~32:32 powerL1=the~44:30 powerL2=,~0:44,44:34
powerL2=.~44:32 powerL2=there~32:32 powerL2=water~0:42 powerM=cistern~32:32 powerM=pump~0:54,44:71
powerM=spring~32:32 powerM=tank~44:42 powerR0=,~44:36 powerR0=.~0:91 powerR0=panel~44:56
powerR0=panels~44:61 powerR0=pump~0:42 powerR1=,~32:31 powerR1=0~0:28 powerR1=a~32:32
powerR1=and~32:32 powerR2=.~44:35 powerT=power.battery~44:40 powerT=power.capacity~44:36
powerT=power.facing~44:34 powerT=power.source~0:26,44:71 powerT=power.voltage~0:-26,44:82
powerT=pump.height~0:26 powerT=pump.placement~0:35 powerT=pump.present~32:32
powerT=store.volume~0:-30,32:31,44:32 powerT=water.kind~44:73 powerT=water.level~44:35
powerT=water.yield~32:32 powerT=way.climb~44:17 powerT=way.length~44:26 powera=.~0:69 powerb=a~0:28
pressureC=,~18:76,50:8,51:58 pressureC=0~0:9,11:-38,19:52,50:49 pressureC=1~18:37,19:53
pressureC=2~18:63 pressureC=4~0:-33,50:26,54:42 pressureC=5~12:33 pressureC=6~0:15 pressureC=8~0:28
pressureC=:~0:54,50:14 pressureC=above~0:37 pressureC=air~50:64 pressureC=all~0:40
pressureC=bar~51:51 pressureC=bladder~50:41 pressureC=booster~61:83 pressureC=box~61:24
pressureC=can~0:41 pressureC=charge~50:53 pressureC=checked~50:57 pressureC=comes~54:31
pressureC=constant~61:49 pressureC=control~61:32 pressureC=controlled~61:38
pressureC=cut~54:47,55:49 pressureC=cuts~55:22 pressureC=drip~0:37
pressureC=expansion~18:139,50:-73 pressureC=filter~35:41 pressureC=frequency~61:41
pressureC=from~0:-40 pressureC=gal~0:-35 pressureC=gallon~18:45 pressureC=gauge~0:33,50:36
pressureC=gives~11:49 pressureC=got~0:41 pressureC=h~12:47 pressureC=heater~0:-26,18:32,19:55
pressureC=holds~0:-19,61:78 pressureC=house~61:34 pressureC=i'd~0:-26,61:61 pressureC=keeps~61:78
pressureC=kicks~54:29 pressureC=l~0:37,11:-42,12:36,50:40 pressureC=like~0:34 pressureC=lines~11:42
pressureC=litre~50:31 pressureC=litres~50:52 pressureC=m~0:36 pressureC=manometer~0:30
pressureC=off~55:54 pressureC=only~35:42 pressureC=out~55:87 pressureC=plastic~35:32
pressureC=point~61:25 pressureC=pre~50:37 pressureC=precharge~50:70 pressureC=precharged~50:37
pressureC=preset~50:32 pressureC=pressure~50:79,55:28 pressureC=pump~54:52,55:49,61:47
pressureC=pumped~18:25 pressureC=rated~0:-46,35:25,51:75 pressureC=reads~0:29
pressureC=relief~19:67,61:-31 pressureC=run~0:39 pressureC=set~61:85 pressureC=shows~0:35
pressureC=shuts~55:34 pressureC=so~0:41 pressureC=speed~61:55 pressureC=stop~55:21
pressureC=stops~55:33 pressureC=switch~50:-45,54:38,55:73,61:-37
pressureC=tank~0:-48,18:40,50:98,51:53,55:-33 pressureC=there~0:45 pressureC=there's~11:26
pressureC=valve~0:39,19:92,61:-43 pressureC=variable~61:27 pressureC=vessel~0:-60,18:59,50:83
pressureC=weakest~35:59 pressureC=well~0:-49 pressureL0=,~50:10 pressureL0=.~11:46
pressureL0=0~50:71 pressureL0=:~0:35,50:31 pressureL0=a~11:40 pressureL0=air~50:30
pressureL0=and~55:54 pressureL0=at~0:32,12:43,19:42,54:51,55:63 pressureL0=charge~50:34
pressureL0=comes~54:26 pressureL0=cut~54:50,55:30 pressureL0=cuts~55:22 pressureL0=drip~0:55
pressureL0=for~0:-32,35:38 pressureL0=gauge~0:23 pressureL0=gives~0:33,61:-31 pressureL0=gpm~0:37
pressureL0=has~0:31,50:48 pressureL0=holds~0:-18,61:80 pressureL0=in~0:-27,54:97
pressureL0=is~0:-46,35:19,50:37 pressureL0=it~0:-38,50:34,61:26 pressureL0=keeps~61:78
pressureL0=l~50:53 pressureL0=like~0:27 pressureL0=lines~11:48 pressureL0=of~61:35
pressureL0=off~55:62 pressureL0=on~54:24 pressureL0=only~35:42 pressureL0=out~55:93
pressureL0=point~61:25 pressureL0=pre~50:35 pressureL0=precharge~50:63 pressureL0=precharged~50:37
pressureL0=preset~50:32 pressureL0=pressure~0:60,61:36 pressureL0=pump~0:59 pressureL0=pumped~18:25
pressureL0=rated~0:-41,35:25,51:81 pressureL0=reads~0:29 pressureL0=relief~19:31
pressureL0=says~0:-62 pressureL0=set~55:-34,61:125 pressureL0=shows~0:35 pressureL0=shuts~55:34
pressureL0=start~54:32 pressureL0=stop~55:30 pressureL0=stops~55:33 pressureL0=switch~55:34
pressureL0=tank~0:-22,50:17 pressureL0=the~0:66,11:68,55:-34,61:28 pressureL0=to~0:40,18:33
pressureL0=valve~19:71 pressureL0=with~11:20 pressureL1=,~18:24,55:44
pressureL1=.~0:-76,12:53,35:43,55:33 pressureL1=0~12:32,55:36 pressureL1=1~18:35
pressureL1=2~18:54,51:46,55:33 pressureL1=3~11:41 pressureL1=5~50:36 pressureL1=6~0:34
pressureL1=;~11:20 pressureL1=a~0:-55,35:34,54:40 pressureL1=and~0:-34,54:37,61:51
pressureL1=at~11:68 pressureL1=bar~54:29 pressureL1=box~61:24 pressureL1=constant~61:45
pressureL1=cut~55:32 pressureL1=drippers~11:26 pressureL1=drips~19:25 pressureL1=expansion~18:40
pressureL1=h~0:-39,11:66 pressureL1=house~61:39 pressureL1=i~18:26 pressureL1=is~0:-41,35:28
pressureL1=l~12:35 pressureL1=m~11:42 pressureL1=of~0:-38 pressureL1=pressure~0:-46,11:47,55:19
pressureL1=pump~54:49,55:22,61:38 pressureL1=relief~19:61 pressureL1=says~0:35 pressureL1=set~55:37
pressureL1=switch~54:41,55:38,61:-24 pressureL1=tank~50:39
pressureL1=the~0:-26,11:32,35:56,50:14,54:43,55:19 pressureL1=two~0:44 pressureL1=valve~19:38
pressureL1=vessel~50:27 pressureL1=with~50:33 pressureL2=,~12:31,18:34,61:51
pressureL2=.~12:43,35:16,50:32 pressureL2=0~12:37,19:78,51:74 pressureL2=1~12:44,61:30
pressureL2=2~11:51,54:-33 pressureL2=3~61:39 pressureL2=4~50:41 pressureL2=5~18:52,55:-45
pressureL2=6~0:-16 pressureL2=8~51:33 pressureL2=:~0:52 pressureL2=apart~12:44 pressureL2=bar~50:76
pressureL2=c~18:49 pressureL2=cistern~61:49 pressureL2=cm~12:39 pressureL2=diaphragm~55:34
pressureL2=drip~12:58 pressureL2=expansion~18:71,50:-42 pressureL2=ft~11:43 pressureL2=gives~11:39
pressureL2=ground~0:44 pressureL2=heater~19:78 pressureL2=l~61:58 pressureL2=litre~19:49
pressureL2=m~35:19 pressureL2=machine~0:27 pressureL2=off~54:51 pressureL2=people~0:46
pressureL2=pressure~50:46 pressureL2=pump~0:-42,11:33,54:37 pressureL2=room~50:38
pressureL2=set~54:38 pressureL2=tank~0:-55,50:45 pressureL2=two~61:50 pressureL2=water~19:57
pressureL2=|~0:62,61:-29 pressureM=cistern~55:22,61:29
pressureM=drip~0:-50,11:164,12:62,18:64,19:71,50:-46,54:-32
pressureM=pump~0:101,18:52,19:62,51:51,54:66,55:58,61:98 pressureM=roof~61:35
pressureM=spring~0:37,35:60 pressureM=tank~11:-40,18:49,19:48,50:77,51:46,61:-38
pressureR0=,~12:25,61:32 pressureR0=.~0:34,18:40,19:33,35:78,50:55,55:34,61:43 pressureR0=3~54:30
pressureR0=?~0:43 pressureR0=a~0:-32 pressureR0=and~0:-42,54:20 pressureR0=at~0:31,61:44
pressureR0=const~61:20 pressureR0=each~0:36 pressureR0=from~0:30 pressureR0=i~0:30,50:-41
pressureR0=in~0:-30,50:78 pressureR0=it~50:-1 pressureR0=lines~11:44 pressureR0=off~54:19
pressureR0=on~54:16 pressureR0=pressure~61:33 pressureR0=pump~61:36 pressureR0=rows~12:49
pressureR0=run~0:28 pressureR0=set~0:-37,61:73 pressureR0=shower~0:18
pressureR0=switch~0:-36,50:47,54:44 pressureR0=the~0:46,11:25 pressureR0=when~0:39
pressureR0=where~11:44 pressureR1=,~0:-20,61:28 pressureR1=.~11:28,12:38,54:44,61:31
pressureR1=0~12:44,54:38 pressureR1=2~0:-60,51:59,55:48 pressureR1=5~55:31 pressureR1=6~0:27,54:43
pressureR1=8~0:48 pressureR1=?~0:23,35:40 pressureR1=and~0:26 pressureR1=bar~54:54
pressureR1=open~0:39 pressureR1=psi~0:33 pressureR1=row~11:42 pressureR1=the~0:-37,50:55,61:18
pressureR1=they~0:26 pressureR1=with~0:40 pressureR2=,~55:46 pressureR2=.~11:72,50:16,61:-33
pressureR2=0~61:28 pressureR2=1~0:-38,50:47 pressureR2=6~0:-38,35:37 pressureR2=bar~0:49
pressureR2=feet~0:28 pressureR2=from~61:56 pressureR2=pressure~0:-36,19:46,54:48
pressureR2=there~0:27 pressureR2=|~0:-35 pressureT=beds.area~11:74,12:57
pressureT=power.battery~55:23 pressureT=power.capacity~55:21 pressureT=power.voltage~0:46,55:71
pressureT=pump.control~0:-52,19:49,50:30,51:66,61:58
pressureT=pump.cut_in~50:55,51:49,54:-94,55:137,61:-75
pressureT=pump.cut_out~50:44,51:49,54:159,55:-97,61:-88 pressureT=pump.most_flow~61:19
pressureT=pump.placement~50:52,54:45,61:30 pressureT=pump.present~0:49,61:-34
pressureT=pump.set~0:73,61:-73 pressureT=pump.starts~51:44 pressureT=pump.works~55:46
pressureT=store.volume~55:47,61:51 pressureT=tank.level~0:47,35:32,61:-35
pressureT=tank.volume~35:28 pressureT=water.kind~11:35,12:26,19:46,35:52,55:36
pressureT=water.level~0:34 pressureT=water.yield~61:29 pressureT=way.climb~35:50,61:63
pressureT=way.length~0:56,35:67,61:48 pressureT=way.pipe~35:67,61:13 pressureT=well.bore~61:54
pressureT=well.depth~0:14,50:22 pressurea=~50:33,54:28,61:21
pressurea=.~11:31,35:30,50:61,54:17,61:34 pressurea=and_stops~54:34 pressurea=at_the~61:37
pressurea=in_it~0:-25,50:43 pressurea=off_.~55:34 pressureb=cut_in~54:54 pressureb=cut_out~55:36
pressureb=gpm_at~0:37 pressureb=in_at~54:55 pressureb=it_at~61:23 pressureb=off_at~55:62
pressureb=on_at~54:29 pressureb=out_at~55:32 pressureb=pump_at~61:40
pressureb=pump_gives~0:33,61:-31 pressureb=set_for~61:39 pressureb=set_to~54:28
pressureb=stops_at~55:33 range~0:68,54:225,61:-41,83:-87,85:34 temperatureC=,~34:56
temperatureC=0~20:48 temperatureC=heater~20:64 temperatureC=hot~34:18 temperatureC=poly~34:46
temperatureC=set~20:40 temperatureC=up~84:34 temperatureC=water~84:96 temperatureL0=,~34:36
temperatureL0=at~20:77 temperatureL0=is~20:42,84:43 temperatureL0=set~20:33 temperatureL0=up~84:34
temperatureL0=water~84:65 temperatureL1=,~84:30 temperatureL1=.~84:39 temperatureL1=0~20:38
temperatureL1=3~0:43 temperatureL1=and~34:24 temperatureL1=heater~20:39 temperatureL1=hot~34:25
temperatureL1=the~0:-32,84:28 temperatureL1=water~20:35,84:32 temperatureL2=,~34:48,84:52
temperatureM=drip~0:68,20:45 temperatureM=pump~0:41,20:66,34:54 temperatureM=spring~84:39
temperatureM=tank~20:49 temperatureM=well~20:32 temperatureR0=.~20:30,34:42,84:103
temperatureR0=in~34:41 temperatureR0=summer~34:23 temperatureR0=|~20:28 temperatureR1=.~34:44
temperatureR1=at~34:25 temperatureT=beds.area~0:76 temperatureT=power.voltage~0:28
temperatureT=pump.control~20:21 temperatureT=pump.placement~84:55 temperatureT=pump.set~20:29
temperatureT=store.volume~0:38 temperatureT=water.kind~20:23,34:45,84:97
temperatureT=water.level~84:39 temperatureT=way.climb~84:29
temperatureT=way.length~20:42,34:33,84:29 temperatureT=way.pipe~34:34,84:34
temperaturea=.~0:38,84:21 temperaturea=in_summer~34:23 temperatureb=set_at~20:22 timeC=,~9:36,66:27
timeC=0~80:35 timeC=1~80:68,94:21 timeC=3~80:70 timeC=5~94:26 timeC=:~94:18 timeC=after~92:25
timeC=back~0:41 timeC=bucket~0:49 timeC=came~0:37 timeC=can~9:50 timeC=dry~0:22 timeC=every~0:30
timeC=filled~66:39 timeC=from~66:35 timeC=gallon~0:30 timeC=he~0:14 timeC=l~94:36 timeC=min~94:39
timeC=morning~80:30 timeC=night~9:48 timeC=pump~66:48 timeC=ran~94:54 timeC=run~9:60
timeC=runs~66:33 timeC=should~65:44 timeC=spring~0:49 timeC=takes~80:30 timeC=test~94:24
timeC=took~92:34 timeC=want~0:-23,65:43 timeC=water~9:39 timeL0=,~66:46 timeL0=.~0:-58
timeL0=0~80:37 timeL0=5~0:31 timeL0=a~65:31 timeL0=after~92:25 timeL0=can~9:29 timeL0=dry~0:22
timeL0=for~0:24,65:55,94:68 timeL0=gallons~80:19 timeL0=i~9:22 timeL0=in~80:105 timeL0=is~0:16
timeL0=it~0:40 timeL0=min~94:39 timeL0=run~9:72 timeL0=runs~66:35 timeL0=the~80:26 timeL0=to~65:24
timeL0=took~92:35 timeL0=want~0:-23,65:43 timeL1=.~94:59 timeL1=0~0:-22,80:47,92:63 timeL1=1~94:23
timeL1=5~80:22,94:29 timeL1=:~94:22 timeL1=l~94:28 timeL1=lines~9:49 timeL1=m~0:-33,66:38
timeL1=the~66:62 timeL1=we~65:24 timeL2=,~9:28 timeL2=.~9:31,65:45 timeL2=1~9:37
timeL2=2~0:-110,65:53 timeL2=3~66:28 timeL2=filled~66:32 timeL2=m~9:42 timeL2=morning~80:30
timeL2=tank~66:21 timeL2=test~94:24 timeM=drip~9:111 timeM=pump~0:47,9:38,66:39,92:56,94:42
timeM=roof~65:34 timeM=spring~0:47 timeM=tank~0:23,65:69,66:45 timeM=well~92:82,94:55 timeR0=,~0:66
timeR0=.~0:59,9:47,65:31,80:51 timeR0=a~9:41,66:39 timeR0=day~0:-46,9:44,66:91 timeR0=it~92:52
timeR0=of~65:50 timeR0=pump~0:-40 timeR0=the~0:49 timeR0=to~0:49 timeR0=water~65:37
timeR0=without~0:-52,65:83 timeR1=,~0:22 timeR1=.~0:22 timeR1=0~0:17 timeR1=a~0:-37,66:37
timeR1=no~0:27 timeR1=the~9:25 timeR1=water~0:27 timeR2=.~0:43,9:19 timeR2=0~0:-45,66:41
timeR2=1~66:51 timeR2=2~0:47 timeT=beds.area~9:56 timeT=power.source~66:74 timeT=power.voltage~0:39
timeT=pump.control~0:59 timeT=pump.cut_in~0:40 timeT=pump.cut_out~0:40 timeT=pump.height~0:38
timeT=pump.placement~0:30,92:20 timeT=pump.present~0:47 timeT=store.volume~0:21,65:59
timeT=tank.level~66:30 timeT=tank.volume~66:25 timeT=water.kind~9:24,65:40,66:50,92:68,94:39
timeT=water.level~94:52 timeT=water.yield~0:-62,65:47,66:35 timeT=way.climb~0:27,9:45
timeT=way.length~0:57,9:33,66:45 timeT=way.pipe~0:71,9:36,66:27 timeT=well.bore~92:58,94:73
timeT=well.cover~94:79 timeT=well.depth~94:62 timeT=well.drawn~92:79 timeT=well.static~94:43
timeT=well.steady~92:89 timea=~65:52 timea=.~80:47,94:22 timea=a_day~0:-15,9:37,66:49
timea=of_water~65:37 timea=without_rain~65:36 timea=without_the~65:31 timeb=~65:35
timeb=water_for~0:41 u=angle°~37:114,38:36,48:112 u=angle°C~34:73 u=areaacre~0:60,6:21
u=areaft²~0:-61,6:67,64:30 u=areaha~0:-25,6:56 u=aream²~0:120,6:104,64:36
u=bare~0:306,1:78,2:38,3:78,4:56,5:26,25:44,27:65,28:22,29:54,30:44,32:74,37:62,62:31,81:72,83:-60,90:-40,97:-35
u=bareft~83:19 u=barem~0:-43,83:82 u=chargeAh~41:192 u=currentA~39:47 u=dailyL/day~75:126,76:108
u=dailygal/day~0:-37,75:72,77:41 u=dailym³/day~0:92 u=eachL/day~76:89 u=eachgal/day~76:31
u=flowL/h~7:95 u=flowL/min~0:67,7:-43,58:53,67:34,78:69,85:93,96:72,98:33
u=flowL/s~0:-54,85:46,99:73 u=flowgph~7:131 u=flowgpm~7:-49,8:52,58:29,67:34,85:105,99:48
u=flowm³/h~0:172,7:-27,8:28,85:-53 u=lengthcm~15:65
u=lengthft~36:102,40:49,72:39,73:70,83:97,86:67,87:95,88:103,89:-124,90:42,93:46
u=lengthin~0:99,15:51,56:68,72:-37,83:-25,86:-39,88:-45,89:149,90:-46 u=lengthkm~88:41
u=lengthm~10:60,15:-22,36:107,40:43,56:-32,57:22,60:53,72:80,73:43,83:84,86:82,88:66,90:92,95:51,97:25
u=lengthmi~88:58 u=lengthmm~0:152,13:79,56:66,57:-28,73:-42,86:-28,88:-44,89:76,90:-32
u=pairbar~54:31 u=pairpsi~54:90 u=percent%~0:60,46:99,59:55 u=powerW~0:3,44:185
u=powerhp~0:96,44:-29 u=powerkW~0:50 u=pressurebar~0:31,11:68,12:29,35:71,50:39,54:60,55:46,61:46
u=pressuremwater~0:28 u=pressurepsi~0:57,19:10,50:86,54:31,55:54,61:62 u=temperature°C~20:47,84:82
u=temperature°F~20:24,34:39 u=timedays~0:24,65:218 u=timeh~9:91,65:-45,66:64,80:77,94:28
u=timemin~80:24,92:86,94:53 u=times~0:106 u=timeweeks~0:51 u=voltageV~0:77,42:40,43:35,49:197
u=volumeL~22:75,52:108,69:54,74:60,79:71,85:48,91:56 u=volumeL/day~0:-51,75:29,76:79
u=volumegal~0:38,21:50,22:30,52:77,68:53,69:60 u=volumeimpgal~74:36
u=volumem³~0:147,52:-57,68:25,69:56 voltageC=,~43:41,49:27 voltageC=0~43:39 voltageC=3~43:70
voltageC=4~49:-42 voltageC=battery~0:15 voltageC=circuit~43:36 voltageC=controller~42:85,49:-45
voltageC=each~43:56 voltageC=max~42:32 voltageC=mppt~42:70 voltageC=open~43:55
voltageC=panels~43:47 voltageC=pump~49:27 voltageC=runs~49:41 voltageC=series~43:37
voltageC=system~49:24 voltageC=voc~43:63 voltageC=voltage~43:39 voltageC=w~43:41 voltageL0=,~49:26
voltageL0=.~0:48 voltageL0=a~49:54 voltageL0=at~0:47 voltageL0=battery~0:21
voltageL0=controller~42:60 voltageL0=is~0:22,49:36 voltageL0=max~42:29 voltageL0=open~43:35
voltageL0=runs~49:36 voltageL0=system~49:30 voltageL0=the~0:-29,49:49 voltageL0=voc~43:63
voltageL0=voltage~43:39 voltageL0=x~0:24 voltageL0=|~49:35 voltageL1=.~49:56 voltageL1=1~49:34
voltageL1=2~0:67 voltageL1=3~43:40 voltageL1=5~0:-40 voltageL1=and~0:47 voltageL1=each~0:31,49:-35
voltageL1=l~0:44,49:-26 voltageL1=mppt~42:56 voltageL1=of~0:-42,43:38 voltageL1=the~0:8,42:31
voltageL1=to~0:54 voltageL2=,~42:56,43:37 voltageL2=.~0:-31,49:30 voltageL2=0~42:48
voltageL2=1~49:22 voltageL2=4~42:35 voltageL2=8~42:56 voltageL2=9~0:45,49:-25 voltageL2=m~0:81
voltageL2=v~42:45 voltageL2=|~0:26 voltageM=cistern~49:43 voltageM=drip~49:42
voltageM=pump~42:47,49:95 voltageM=tank~42:34 voltageM=well~49:58 voltageR0=)~0:39
voltageR0=.~43:45 voltageR0=1~49:42 voltageR0=8~49:40 voltageR0=and~0:34,49:-26 voltageR0=at~49:47
voltageR0=bank~49:38 voltageR0=batteries~49:21 voltageR0=cart~0:45 voltageR0=golf~0:45
voltageR0=pump~49:45 voltageR0=two~0:30 voltageR1=,~49:36 voltageR1=.~49:35 voltageR1=0~42:41
voltageR1=1~0:21 voltageR1=a~42:37 voltageR1=ah~49:68 voltageR1=to~0:27 voltageR1=w~0:34
voltageR2=0~49:21 voltageR2=4~0:-42,49:50 voltageR2=ah~0:21 voltageR2=w~49:34 voltageR2=|~49:38
voltageT=beds.area~49:31 voltageT=power.battery~49:32 voltageT=power.cable~43:28
voltageT=power.capacity~49:24 voltageT=power.controller~42:32 voltageT=power.facing~43:61
voltageT=power.limit~42:-31,43:68 voltageT=power.open_voltage~42:39
voltageT=power.panel~0:51,42:59,43:49 voltageT=power.series~42:58,43:67,49:-51
voltageT=power.source~42:49,43:44,49:33 voltageT=power.strings~42:53,43:31
voltageT=power.tilt~42:42 voltageT=power.voltage~0:137,49:-139 voltageT=pump.placement~42:33,43:36
voltageT=store.volume~0:41,49:57 voltageT=tank.level~42:43,43:44 voltageT=tank.volume~43:43
voltageT=water.kind~42:37,43:24,49:85 voltageT=water.level~43:22 voltageT=water.yield~49:30
voltageT=way.climb~49:35 voltageT=way.length~0:-36,49:74 voltageT=way.pipe~49:45
voltagea=~0:23,49:30 voltagea=golf_cart~0:45 voltageb=~49:27 voltageb=a~49:34
voltageb=battery_is~0:27 volumeC=(~69:45 volumeC=,~68:32,76:40 volumeC=0~21:40,74:-48
volumeC=1~21:52,69:14,74:-37 volumeC=3~69:-55 volumeC=4~69:27 volumeC=5~52:30 volumeC=6~0:37
volumeC=:~69:19,79:36,91:39 volumeC=?~52:-45 volumeC=above~0:-25,69:62 volumeC=allotment~69:38
volumeC=bar~52:41 volumeC=boiler~22:64 volumeC=cistern~69:62 volumeC=comes~74:37 volumeC=day~75:62
volumeC=elevated~0:25 volumeC=everything~74:26 volumeC=expansion~21:74 volumeC=fed~0:-22,74:21
volumeC=fire~68:54 volumeC=from~0:44,74:36 volumeC=ft~69:18 volumeC=gallon~69:41
volumeC=got~0:34,52:-34 volumeC=hav~0:54 volumeC=header~74:54 volumeC=heater~21:54,22:44
volumeC=hi~52:-29 volumeC=higher~0:31 volumeC=hill~74:30 volumeC=holds~0:29 volumeC=hour~79:74
volumeC=keep~68:61 volumeC=loft~74:35 volumeC=morning~79:25 volumeC=need~75:42 volumeC=out~91:57
volumeC=peak~79:26 volumeC=people~76:49 volumeC=pressure~52:61,74:-28 volumeC=pump~69:46
volumeC=pumped~91:48 volumeC=rain~69:21 volumeC=rainwater~69:57 volumeC=sits~69:33
volumeC=size~69:29 volumeC=spring~69:55,85:45 volumeC=storage~69:14 volumeC=submersible~0:24
volumeC=takes~0:-27,79:58 volumeC=tank~52:43,69:35,74:94 volumeC=there~21:20 volumeC=there's~69:-45
volumeC=truck~0:41 volumeC=two~0:48 volumeC=underground~69:48 volumeC=up~74:38 volumeC=use~79:52
volumeC=vessel~21:53,52:45 volumeC=wants~68:67 volumeC=was~91:23 volumeC=water~22:37
volumeC=well~91:40 volumeC=which~0:49,74:-46 volumeL0=,~0:-66,74:73,76:42 volumeL0=.~52:44
volumeL0=:~69:21,79:38 volumeL0=;~69:33 volumeL0=a~0:46,21:44,69:45,74:96,85:30
volumeL0=about~0:-28,69:53 volumeL0=an~52:29 volumeL0=at~76:29 volumeL0=boiler~22:66
volumeL0=cistern~0:40,69:72,74:-23 volumeL0=day~75:48 volumeL0=elevated~0:21
volumeL0=expansion~21:62 volumeL0=fire~68:33 volumeL0=from~69:32 volumeL0=got~69:46
volumeL0=has~74:-39 volumeL0=have~0:-42,74:36 volumeL0=header~74:37 volumeL0=heater~22:46
volumeL0=hill~69:-39,74:35 volumeL0=holds~0:31 volumeL0=hour~79:74 volumeL0=in~0:24
volumeL0=into~74:54 volumeL0=is~0:-40,21:28,52:37 volumeL0=it~91:19 volumeL0=keep~68:62
volumeL0=loft~74:35 volumeL0=m~0:-32,69:34 volumeL0=of~0:38 volumeL0=out~91:34
volumeL0=people~76:51 volumeL0=pressure~52:44 volumeL0=rain~69:45 volumeL0=rainwater~69:32
volumeL0=spring~0:-53,85:60 volumeL0=storage~69:43 volumeL0=takes~0:-36,79:58
volumeL0=tank~0:54,52:56,69:29 volumeL0=the~69:28,74:58 volumeL0=there~21:23 volumeL0=to~68:33
volumeL0=two~0:42 volumeL0=up~74:33 volumeL0=vessel~21:40,52:44 volumeL0=wants~68:67
volumeL0=water~22:51 volumeL0=we~75:63,79:46 volumeL0=with~52:37,69:-30 volumeL0=|~0:-36
volumeL1=,~52:43,68:43,74:-36 volumeL1=.~0:15,75:48 volumeL1=0~21:40 volumeL1=2~0:-53,74:51
volumeL1=3~0:-37,52:30 volumeL1=4~0:49 volumeL1=5~0:62 volumeL1=6~74:38 volumeL1=8~0:-53
volumeL1=9~69:30 volumeL1=a~0:15,52:27,75:39 volumeL1=at~0:37,69:17,74:-48 volumeL1=bar~0:-33
volumeL1=day~69:-38 volumeL1=everything~74:26 volumeL1=fills~74:-24 volumeL1=for~69:43
volumeL1=ft~0:-29 volumeL1=hour~69:57 volumeL1=hours~0:56 volumeL1=in~0:-35,69:-49,74:66,79:37
volumeL1=inch~0:56 volumeL1=is~74:18 volumeL1=m~0:55,69:-36 volumeL1=mm~74:33 volumeL1=of~74:42
volumeL1=on~74:32 volumeL1=one~22:50,69:44 volumeL1=out~91:22 volumeL1=pressure~52:41
volumeL1=pump~69:47,74:-48 volumeL1=rainwater~69:28 volumeL1=runs~69:44 volumeL1=tank~0:-20,74:65
volumeL1=the~52:16,74:9,79:22,85:45 volumeL1=there~0:52 volumeL1=time~0:47 volumeL1=to~74:28
volumeL1=valve~0:36 volumeL1=|~0:52 volumeL2=,~0:72,22:39,52:-36,68:32 volumeL2=.~75:69,91:30
volumeL2=0~0:-54,74:62 volumeL2=2~52:58 volumeL2=3~0:40,69:-53,79:50 volumeL2=4~52:45
volumeL2=5~0:-41,21:49,52:42 volumeL2=6~21:30,75:41 volumeL2=7~0:-37,74:38 volumeL2=8~0:45
volumeL2=9~0:25 volumeL2=after~69:-29 volumeL2=bar~0:-33,69:34 volumeL2=by~74:45 volumeL2=c~21:41
volumeL2=cistern~0:-37 volumeL2=day~0:-36,69:44 volumeL2=every~0:-35,69:29
volumeL2=from~0:37,69:43,74:-30 volumeL2=gallon~69:42 volumeL2=gallons~0:-35,74:36
volumeL2=generator~0:33 volumeL2=house~74:37 volumeL2=l~0:-36 volumeL2=litres~74:25
volumeL2=m~74:-39 volumeL2=off~0:-55,52:55,74:46 volumeL2=one~0:-64 volumeL2=only~0:31
volumeL2=open~52:-38 volumeL2=pressure~0:68 volumeL2=pump~69:41 volumeL2=rain~0:40
volumeL2=relief~21:37 volumeL2=runs~74:-32 volumeL2=says~69:47 volumeL2=set~52:41
volumeL2=showers~0:50 volumeL2=so~0:40 volumeL2=spring~69:41 volumeL2=submersible~52:-31
volumeL2=switch~0:40 volumeL2=tank~0:-39,69:83,74:28 volumeL2=there~74:56 volumeL2=use~69:36
volumeL2=v~69:-30,74:36 volumeL2=valve~21:33 volumeL2=water~21:26 volumeL2=which~69:53
volumeL2=|~0:-24 volumeM=cistern~52:31,68:37,69:107,74:-25 volumeM=creek~74:35
volumeM=drip~0:-25,21:75,22:28,52:-31,74:39 volumeM=pump~0:51,21:44,22:75,52:30,69:65,75:41,91:32
volumeM=roof~0:37 volumeM=spring~0:17,74:-42,85:61
volumeM=tank~0:-36,21:43,52:55,68:40,69:52,74:110 volumeM=well~22:57,52:31,69:-46,91:90
volumeR0=,~0:-6,21:38,69:30,79:45 volumeR0=.~22:29,52:31,69:68,74:41,76:41 volumeR0=0~0:-29,79:26
volumeR0=2~52:35 volumeR0=3~0:28 volumeR0=4~79:24 volumeR0=5~79:24 volumeR0=6~22:28,74:-34,85:66
volumeR0=9~79:29 volumeR0=:~0:-31,85:35 volumeR0=a~0:74 volumeR0=above~69:-29,74:47
volumeR0=and~0:-35,69:19,74:50 volumeR0=at~22:64 volumeR0=back~68:46 volumeR0=barrel~74:48
volumeR0=below~69:44 volumeR0=beside~0:17,69:37,74:-26 volumeR0=bladder~52:42 volumeR0=bucket~0:67
volumeR0=by~0:60,74:-30 volumeR0=charged~21:39 volumeR0=cistern~0:21,69:52 volumeR0=concrete~74:47
volumeR0=drum~74:38 volumeR0=each~22:38,76:50 volumeR0=expansion~21:85 volumeR0=for~68:62
volumeR0=ground~69:26 volumeR0=heater~22:135,52:-43 volumeR0=house~0:-25,69:42
volumeR0=i~0:-37,69:43 volumeR0=ibc~69:35 volumeR0=in~0:52,22:16,69:-25,79:56,85:32
volumeR0=is~69:-48,85:34 volumeR0=it~0:-52,69:35,85:31 volumeR0=kept~0:-24,22:32,68:61
volumeR0=next~69:34 volumeR0=of~68:44 volumeR0=on~74:63 volumeR0=one~0:-29 volumeR0=poly~69:35
volumeR0=pre~21:23 volumeR0=pressure~52:54,69:-35 volumeR0=put~0:61,52:-38 volumeR0=right~69:60
volumeR0=sits~52:31,74:20 volumeR0=stands~0:41,69:-37 volumeR0=tank~0:-40,21:49,52:72,69:62,74:45
volumeR0=terrace~0:37,69:-27 volumeR0=that~74:46 volumeR0=the~69:82,74:37,91:38
volumeR0=to~21:35,69:15 volumeR0=tote~74:32 volumeR0=under~0:23 volumeR0=up~74:31
volumeR0=vessel~52:76 volumeR0=water~0:-35,22:80 volumeR0=we~69:-38 volumeR0=which~0:19
volumeR0=|~0:-32 volumeR1=(~0:42 volumeR1=,~74:55 volumeR1=.~21:53,22:15,68:39,74:40,79:21,85:25
volumeR1=1~52:37 volumeR1=2~52:36 volumeR1=5~0:-36,21:39,74:35 volumeR1=8~52:62
volumeR1=?~0:-41,52:56 volumeR1=a~74:29,76:54 volumeR1=after~0:-34,79:33,85:35
volumeR1=and~0:49,69:-17 volumeR1=booster~69:41 volumeR1=c~22:31 volumeR1=day~76:29
volumeR1=fire~68:43 volumeR1=floor~69:44 volumeR1=for~68:26 volumeR1=from~69:38
volumeR1=ft~0:-50,69:24,74:40 volumeR1=full~85:35 volumeR1=hill~74:35 volumeR1=hours~79:32
volumeR1=house~74:41 volumeR1=in~68:31 volumeR1=is~52:-56 volumeR1=it~0:22,74:-42
volumeR1=loft~74:38 volumeR1=m~0:25 volumeR1=minutes~79:21,91:43 volumeR1=of~0:-44,69:45,74:30
volumeR1=one~85:32 volumeR1=outside~69:40 volumeR1=psi~52:31 volumeR1=pump~69:55,74:-31
volumeR1=relief~22:27 volumeR1=roof~74:33 volumeR1=seconds~0:46,85:41 volumeR1=shed~69:30
volumeR1=stand~74:25 volumeR1=the~52:30 volumeR1=up~69:51 volumeR1=|~0:32 volumeR2=,~0:-31,22:35
volumeR2=.~74:68,79:40 volumeR2=0~74:66 volumeR2=1~69:57 volumeR2=3~0:-36,52:43 volumeR2=6~22:36
volumeR2=above~0:-37,69:36,74:43 volumeR2=bar~21:27,52:37 volumeR2=beds~74:37 volumeR2=below~74:68
volumeR2=draws~69:30 volumeR2=f~22:26 volumeR2=four~0:57 volumeR2=from~68:31 volumeR2=higher~74:33
volumeR2=house~69:38 volumeR2=l~69:-35 volumeR2=m~74:33 volumeR2=min~0:28,69:-42
volumeR2=minute~0:-39,85:35 volumeR2=or~0:36 volumeR2=over~0:44,69:-28 volumeR2=plot~69:26
volumeR2=psi~52:35 volumeR2=pump~0:-27,52:-32,69:85 volumeR2=seconds~0:38
volumeR2=stands~0:28,69:-35 volumeR2=surface~69:36 volumeR2=tank~0:41 volumeR2=taps~74:27
volumeR2=than~74:42 volumeR2=there~74:-38 volumeR2=use~0:43 volumeR2=v~69:42 volumeR2=water~69:60
volumeR2=|~0:-62 volumeT=beds.area~75:52 volumeT=power.battery~0:-57,69:57
volumeT=power.capacity~69:40 volumeT=power.facing~0:47,74:-54 volumeT=power.open_voltage~0:30
volumeT=power.series~74:35 volumeT=power.source~0:44,52:-27,74:63,75:48
volumeT=power.voltage~0:-24,69:104,74:-41 volumeT=pump.control~0:66,22:54,52:62,74:-62
volumeT=pump.cut_in~52:64,74:-55 volumeT=pump.cut_out~52:79,74:-55 volumeT=pump.height~0:52,69:-40
volumeT=pump.most_flow~0:40 volumeT=pump.placement~52:47,69:28 volumeT=pump.present~0:39,74:58
volumeT=pump.set~0:18,22:34,74:-47 volumeT=pump.works~0:-37,75:35 volumeT=store.days~0:43
volumeT=store.hours~0:49,74:-46 volumeT=store.reserve~69:52
volumeT=store.volume~0:58,52:46,68:66,69:-136,74:-34 volumeT=tank.level~0:43,52:-44,69:-96,74:193
volumeT=tank.volume~69:43,74:-146,75:34 volumeT=water.kind~0:18,22:50,68:36,69:55,75:40,85:42,91:66
volumeT=water.level~52:32,75:65 volumeT=water.yield~0:-62,22:40,79:45
volumeT=way.climb~0:40,22:38,69:71,74:-34 volumeT=way.length~0:57,22:42,74:51
volumeT=way.pipe~0:75,74:36 volumeT=well.bore~91:63 volumeT=well.depth~0:-26,52:34,69:-23,91:34
volumeT=well.drawn_for~91:88 volumeT=well.static~0:19 volumeT=well.steady~91:77 volumea=~52:59
volumea=,_filled~0:30 volumea=.~0:74,69:37 volumea=._the~69:-35 volumea=and_stands~74:43
volumea=bladder_tank~52:42 volumea=by_the~0:28 volumea=expansion_tank~21:85
volumea=in_the~0:43,69:-43 volumea=poly_tank~69:32 volumea=pressure_tank~52:70
volumea=under_the~0:25 volumea=water_heater~22:73 volumeb=~74:26 volumeb=,_about~0:-27,69:44
volumeb=._cistern~69:33 volumeb=._tank~74:47 volumeb=a~0:29 volumeb=bucket_of~85:34
volumeb=cistern~0:49,69:-41 volumeb=cistern_is~0:-26,69:38 volumeb=cistern_of~0:32
volumeb=expansion_vessel~21:43 volumeb=from_a~69:48 volumeb=have_a~74:35 volumeb=is_a~21:20
volumeb=tank_is~0:65,69:-39 volumeb=tank_of~0:46 volumeb=to_keep~68:35 volumeb=vessel_is~52:34
volumeb=water_heater~22:40
"""
