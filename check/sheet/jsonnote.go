package sheet

// schemaNotes say in an editor what each key is for.
var schemaNotes = map[string]string{
	"Line.line": "your name for the line", "Line.title": "what the line does, in a few words", "Line.as_of": "day of the job, year-month-day; today when left out",
	"Line.regimes": "laws and standards that apply, as printed, e.g. 29 CFR 1910.111", "Line.site": "where the line stands",
	"Line.fluids": "every fluid that meets the line, each under a name of your choice", "Line.vessels": "what the fluid comes from and goes to, each under a name",
	"Line.runs": "rows of parts that carry the same fluids, each under a name", "Line.nearby": "receiving points the same hose can reach",
	"Line.safeguards": "what ends or watches the transfer", "Line.change": "record of the change this sheet brings", "Line.evidence": "papers that speak for or against a material in a fluid",

	"Site.lowest": "coldest the line can get where it stands", "Site.highest": "hottest it can get", "Site.sun": "whether the sun reaches it",
	"Site.altitude": "height above sea level; may be negative", "Site.room": "free volume of the room the line runs through",

	"Fluid.fluid": "name, CAS number or id in the catalog", "Fluid.role": "what it is there for", "Fluid.concentration": "strength, e.g. 50 %",
	"Fluid.temperature": "temperatures of the fluid itself", "Fluid.exposure": "how long it meets the parts, in words", "Fluid.dryness": "whether the gas is dry",
	"Fluid.oil_free": "whether the gas is free of oil", "Fluid.conductivity": "of this liquid as delivered, when measured",
	"Fluid.vapour_pressure": "of this liquid at its highest temperature, where the catalog holds no curve; of steam, the highest pressure of its supply",
	"Fluid.evidence":        "paper that states the measured values", "Fluid.hazard_zone": "zone of a toxic gas, 49 CFR 173.116",
	"Temperatures.lowest": "coldest the fluid gets", "Temperatures.normal": "usual temperature", "Temperatures.highest": "hottest the fluid gets",

	"Vessel.kind": "what it is", "Vessel.code": "code it is built to", "Vessel.volume": "inner volume", "Vessel.filled": "share of liquid, e.g. 85 %", "Vessel.rated": "working pressure on its plate",
	"Vessel.test_pressure": "test pressure on its plate", "Vessel.vacuum": "lowest pressure it may be drawn down to", "Vessel.evidence": "plate or paper that states them", "Vessel.lowest": "coldest it may get",
	"Vessel.highest": "hottest it may get", "Vessel.relief": "relief device on it", "Vessel.vent": "whether it is open to the air", "Vessel.insulated": "whether it is insulated",
	"Vessel.discharge_limit": "highest discharge pressure marked on it", "Vessel.vent_capacity": "free gas, at 1 atm and 15 °C, that the open vent passes at the rated pressure",
	"Vessel.contains": "what it is for, when that is none of the line's own fluids",
	"Vessel.pressure": "pressure that stands in it of itself", "Vessel.material": "material of the wall", "Vessel.bonded": "whether it is bonded to earth",
	"Vessel.points": "where hoses are put on, each under a name",
	"Relief.set":    "set pressure", "Relief.area": "flow area, certified", "Relief.kdr": "certified coefficient of discharge, derated", "Relief.vacuum": "lets air or gas in from this pressure on, as a vacuum breaker does",
	"Contents.fluid": "name or id in the catalog", "Contents.concentration": "strength",

	"Run.carries": "names under fluids", "Run.source": "where the run starts: a vessel, a cylinder or a supply", "Run.to": "where it ends: the name of a vessel, or more about it",
	"Run.flow": "planned flow of the liquid", "Run.quantity": "how much is transferred", "Run.drained": "whether it is emptied after every transfer, by procedure",
	"Run.parts": "every part in the order of the flow", "Run.test": "the pressure test of the run as it is laid",
	"Test.pressure": "highest pressure of the test", "Test.fluid": "name under fluids of what it is made with; the run need not carry it",
	"Test.isolated": "ids of the parts and names of the vessels that are blanked off or taken out for it", "Test.relief": "set pressure of the relief device that limits the test",
	"Test.distance": "nobody comes nearer while the pressure is on", "Test.dried": "whether the test liquid is let out and the line dried before use",
	"Source.vessel": "name under vessels", "Source.outlet": "name under its points", "Source.cylinder": "pressure of the full cylinder", "Source.supply": "highest pressure of the supply",
	"Source.volume": "water volume of the cylinder", "Source.head": "height of the liquid level above the lowest point of the run",
	"Source.relief_fitted": "whether the cylinder has a relief device", "Source.end": "the end the run is put on",
	"Target.vessel": "name under vessels", "Target.inlet": "name under its points", "Target.end": "the end the run is put on",

	"End.standard": "connection standard, name or id in the catalog", "End.size": "e.g. DN 25, NPS 1, 1/2 in, -16", "End.class": "class, PN or series",
	"End.number": "cylinder outlet number", "End.gender": "male, female or none", "End.hand": "of the thread", "End.facing": "of the flange, e.g. RF or B1",
	"End.material": "material of this end", "End.locked": "levers pinned, ring turned", "End.keyed": "key that keeps other fluids out; none when it has none",
	"End.open": "open hatch, funnel or top", "End.entry": "how the liquid enters", "End.marked": "text of the label; none when unmarked",
	"End.padlocked": "whether a padlock keeps it shut", "End.closed_by": "what shuts a point this line does not use", "End.bolts": "how many bolts are fitted in a flanged joint", "End.seal": "the seal in this joint: one, a list, or none",
	"Seal.kind": "kind of seal, name or id in the catalog", "Seal.size": "size of the gasket", "Seal.material": "letters of ISO 1629 or the like, e.g. EPDM",
	"Seal.rated": "working pressure of its maker", "Seal.evidence": "paper that states it",

	"Nearby.vessel": "name under vessels", "Nearby.point": "name under its points", "Nearby.distance": "from the point meant",
	"Safeguards.remote_stop": "the flow can be stopped from outside the hazard zone", "Safeguards.automatic_stop": "the flow stops without a person",
	"Safeguards.attended": "someone stays with the transfer", "Safeguards.stop_tested": "day the stop was last worked",
	"Change.record": "number of the change record", "Change.what": "what is changed", "Change.in_kind": "whether it is a replacement in kind",
	"Change.authorised": "day it was authorised", "Change.until": "last day of a temporary change",
	"Change.basis": "the record states the technical basis", "Change.effects": "the record states the effects on safety and health",
	"Change.procedures": "the record states the changes to procedures, or that there are none", "Change.trained": "those who work the line were told and trained",
	"Evidence.material": "name or id in the catalog", "Evidence.fluid": "name or id in the catalog", "Evidence.rating": "what the paper says",
	"Evidence.highest": "temperature up to which it says so", "Evidence.document": "which paper, with its date",
}

func init() {
	for key, note := range partNotes {
		schemaNotes["Part."+key] = note
	}
}
