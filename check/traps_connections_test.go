package check_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

const (
	rf150        = "standard: flange-asme-b16-5, class: '150', facing: RF, size: "
	rf300        = "standard: flange-asme-b16-5, class: '300', facing: RF, size: "
	pn16         = "standard: flange-en-1092-1, class: PN 16, facing: B1, size: "
	pn40         = "standard: flange-en-1092-1, class: PN 40, facing: B1, size: "
	camMale      = "standard: cam-groove-en-14420-7, gender: male, size: "
	camFemale    = "standard: cam-groove-en-14420-7, gender: female, locked: yes, size: "
	truckMale    = "standard: tank-truck-en-14420-6, gender: male, size: DN 50"
	truckFemale  = "standard: tank-truck-en-14420-6, gender: female, locked: yes, size: DN 50"
	gasket       = "seal: {kind: spiral-wound-ptfe, material: PTFE, rated: 400 bar(g), evidence: data sheet}"
	camSeal      = "seal: {kind: coupling-gasket, material: FFKM, rated: 400 bar(g), evidence: data sheet}"
	tape         = "seal: {kind: thread-sealant-ptfe-tape, material: PTFE}"
	ring         = "seal: {kind: o-ring, material: FFKM, rated: 700 bar(g), evidence: data sheet}"
	noSeal       = "seal: none"
	lookAlike    = "connection/look_alike_joins"
	wrongNumber  = "connection/outlet_number_differs"
	tooWeak      = "pressure/rating_below_demand"
	keptOut      = "connection/service_excluded"
	notAssigned  = "connection/gas_not_assigned_to_outlet"
	doesNotJoin  = "connection/does_not_join"
	tooHot       = "temperature/above_limit"
	notForFluid  = "material/unsuitable_for_fluid"
	overTheLimit = "pressure/regulator_inlet_below_source"
)

func cga(number, gender string) string { return outlet("cylinder-cga-v1", number, gender, "right") }

func cgaLeft(number, gender string) string { return outlet("cylinder-cga-v1", number, gender, "left") }

func din(number, gender string) string { return outlet("cylinder-din-477-1", number, gender, "right") }

func outlet(standard, number, gender, hand string) string {
	return "standard: " + standard + ", number: '" + number + "', gender: " + gender + ", hand: " + hand
}

func thread(standard, size, gender string) string {
	return "standard: " + standard + ", size: " + size + ", gender: " + gender + ", hand: right"
}

func ends(standard, size string) (male, female string) {
	return "standard: " + standard + ", gender: male, size: " + size, "standard: " + standard + ", gender: female, size: " + size
}

// flanged is a joint of two equal flanges.
func flanged(end, material, bar, hot string) string {
	return joint{a: end, b: end, material: material, bar: bar, hot: hot, seal: gasket}.sheet()
}

func cam(size, material, bar, hot, fluid string) string {
	return joint{a: camMale + size, b: camFemale + size, material: material, bar: bar, hot: hot, fluid: fluid, seal: camSeal}.sheet()
}

// bottle is a cylinder outlet of one number against a regulator of another.
func bottle(a, b, fluid, seal string) string {
	return joint{a: a, b: b, fluid: fluid, cylinder: true, bar: "30", seal: seal}.sheet()
}

func pair(a, b, seal string) string { return joint{a: a, b: b, seal: seal}.sheet() }

// TestWorkedChecks are the worked cases of connections, on the whole engine.
func TestWorkedChecks(t *testing.T) {
	cone8, _ := ends("cone-24-light", "8 mm")
	cone6male, cone6 := ends("cone-24-heavy", "6 mm")
	flare6, flare6f := ends("flare-37", "'-6'")
	flare8, flare8f := ends("flare-37", "'-8'")
	_, other6 := ends("flare-45", "'-6'")
	_, other8 := ends("flare-45", "'-8'")
	tail := "standard: screwed-ferrule-en-14424, gender: none, size: "
	tryTraps(t, []trap{
		{"Class 150 NPS 4 to DN 100 PN 40", "ASME B16.5 drilling (published) against EN 1092-1 (recalled), computed", lookAlike,
			pair(rf150+"NPS 4", pn40+"DN 100", gasket), flanged(pn40+"DN 100", "", "5", "")},
		{"Class 150 NPS 3 to DN 80 PN 16", "ASME B16.5, 4 holes, EN 1092-1, 8 holes (published)", lookAlike,
			pair(rf150+"NPS 3", pn16+"DN 80", gasket), flanged(pn16+"DN 80", "", "5", "")},
		{"Class 150 group 2.2 at 75 C holds 17.3 bar", "ASME B16.5 Table 2-2.2, between 18.4 and 16.2 (published)", tooWeak,
			flanged(rf150+"NPS 2", "S31600", "17.35", "75"), flanged(rf150+"NPS 2", "S31600", "17.25", "75")},
		{"Class 150 group 2.3 at 50 C for 16 bar", "ASME B16.5 Table 2-2.3, 15.3 (restated)", tooWeak,
			flanged(rf150+"NPS 2", "S31603", "16", "50"), flanged(rf150+"NPS 2", "S31603", "15.2", "50")},
		{"CGA 580 with oxygen", "CGA V-1 (recalled)", notAssigned,
			bottle(cga("580", "male"), cga("580", "female"), "oxygen", noSeal), bottle(cga("580", "male"), cga("580", "female"), "nitrogen", noSeal)},
		{"CGA 580 regulator on a 680 outlet", "CGA V-1, 3000 against 5500 psi (recalled)", wrongNumber,
			bottle(cga("680", "male"), cga("580", "female"), "nitrogen", noSeal), bottle(cga("680", "male"), cga("680", "female"), "nitrogen", noSeal)},
		{"cam and groove of cast aluminium at 14 bar", "EN 14420-7 scope, 10 bar since 2013 (published)", tooWeak,
			cam("DN 50", "A03560", "14", "", ""), cam("DN 50", "A03560", "10", "", "")},
		{"cam and groove of polypropylene at 7 bar", "EN 14420-7 rates alloys (published); 100 psi for plastic halves (practice)", tooWeak,
			cam("DN 50", "PP", "7", "30", "water"), cam("DN 50", "PP", "6.8", "30", "water")},
		{"cam and groove on liquefied ammonia", "EN 14420-7 scope (published)", keptOut,
			cam("DN 50", "S31600", "14", "40", "ammonia"), cam("DN 50", "S31600", "14", "40", "nitrogen")},
		{"cam and groove DN 100 at 12 bar", "EN 14420-7 scope, 10 bar whatever the alloy (published)", tooWeak,
			cam("DN 100", "S31600", "12", "", ""), cam("DN 100", "S31600", "10", "", "")},
		{"tank-truck coupling at 20 bar", "EN 14420-6 scope, 16 bar since 2013, 25 in 2004 (published)", tooWeak,
			joint{a: truckMale, b: truckFemale, bar: "20", seal: camSeal}.sheet(), joint{a: truckMale, b: truckFemale, bar: "16", seal: camSeal}.sheet()},
		{"NPT 3/4 to G 3/4", "ASME B1.20.1 and ISO 228-1, 14 per inch both (restated)", lookAlike,
			pair(thread("thread-npt", "3/4 in", "male"), thread("thread-g", "3/4 in", "female"), tape),
			pair(thread("thread-npt", "3/4 in", "male"), thread("thread-npt", "3/4 in", "female"), tape)},
		{"24 degree cone 8 L to 6 S", "ISO 8434-1, both M14 x 1.5 (recalled)", lookAlike,
			pair(cone8, cone6, noSeal), pair(cone6male, cone6, noSeal)},
		{"37 to 45 degree flare, dash 6", "ISO 8434-2 and SAE J512, 9/16-18 against 5/8-18 (recalled)", lookAlike,
			pair(flare6, other6, noSeal), pair(flare6, flare6f, noSeal)},
		{"37 to 45 degree flare, dash 8", "ISO 8434-2 and SAE J512, 3/4-16 both (recalled)", lookAlike,
			pair(flare8, other8, noSeal), pair(flare8, flare8f, noSeal)},
		{"EN 14424 DN 32 at 20 bar", "EN 14424 scope, 16 bar, 25 to DN 25 (published)", tooWeak,
			joint{a: tail + "DN 32", b: tail + "DN 32", bar: "20", seal: noSeal}.sheet(), joint{a: tail + "DN 25", b: tail + "DN 25", bar: "20", seal: noSeal}.sheet()},
	})
}

// TestConnectionTraps are the known traps of connections, as far as a sheet can tell them.
func TestConnectionTraps(t *testing.T) {
	flare10, flare10f := ends("flare-37", "'-10'")
	port6149, port6149f := ends("port-iso-6149", "18 mm")
	_, port9974 := ends("port-iso-9974", "18 mm")
	_, cone12s := ends("cone-24-heavy", "12 mm")
	cone12l, cone12lf := ends("cone-24-light", "12 mm")
	lpg, lpgFemale := ends("acme-lpg", "1 3/4 in")
	ammonia, ammoniaFemale := ends("acme-ammonia", "1 3/4 in")
	iso2852 := "standard: clamp-iso-2852, size: 51 mm"
	bpe := "standard: clamp-asme-bpe, size: 2 in"
	clampSeal := "seal: {kind: clamp-gasket, material: EPDM, rated: 40 bar(g), evidence: data sheet}"
	tryTraps(t, []trap{
		{"01 CGA 320 thread on 326", "CGA V-1, 0.825-14 right hand both (recalled)", wrongNumber,
			bottle(cga("320", "male"), cga("326", "female"), "carbon dioxide", washer), bottle(cga("320", "male"), cga("320", "female"), "carbon dioxide", washer)},
		{"01 CGA 320 thread on G 1/2", "CGA V-1 and ISO 228-1, 20.955 mm and 14 per inch both (computed)", lookAlike,
			bottle(cga("320", "male"), thread("thread-g", "1/2 in", "female"), "carbon dioxide", washer), bottle(cga("320", "male"), cga("320", "female"), "carbon dioxide", washer)},
		{"01 CGA 330 thread on 350", "CGA V-1, 0.825-14 left hand both (recalled)", wrongNumber,
			bottle(cgaLeft("350", "male"), cgaLeft("330", "female"), "hydrogen", noSeal), bottle(cgaLeft("350", "male"), cgaLeft("350", "female"), "hydrogen", noSeal)},
		{"01 CGA 670 thread on 677", "CGA V-1, 1.030-14 left hand both (recalled)", wrongNumber,
			bottle(cgaLeft("677", "male"), cgaLeft("670", "female"), "nitrogen", washer), bottle(cgaLeft("677", "male"), cgaLeft("677", "female"), "nitrogen", noSeal)},
		{"02 liquid-oxygen outlet 440 on a 37 degree flare of dash 10", "CGA V-1, 7/8-14 both (computed)", lookAlike,
			bottle(cga("440", "male"), flare10f, "liquid oxygen", noSeal), pair(flare10, flare10f, noSeal)},
		{"03 DIN 477 number 6 does not tell the gas", "DIN 477-1: ammonia, argon and carbon dioxide share it, nitrogen does not (restated)", notAssigned,
			bottle(din("6", "male"), din("6", "female"), "nitrogen", washer), bottle(din("6", "male"), din("6", "female"), "argon", washer)},
		{"03 DIN 477 number 9 on plain G 3/4", "DIN 477-1 and ISO 228-1 (restated)", lookAlike,
			bottle(din("9", "male"), thread("thread-g", "3/4 in", "female"), "oxygen", washer), bottle(din("9", "male"), din("9", "female"), "oxygen", washer)},
		{"04 left hand and not flammable: CGA 590 is air", "CGA V-1 (recalled)", notAssigned,
			bottle(cgaLeft("590", "male"), cgaLeft("590", "female"), "hydrogen", noSeal), bottle(cgaLeft("590", "male"), cgaLeft("590", "female"), "air", noSeal)},
		{"05 Class 150 NPS 6 to DN 150 PN 16", "bolt circles 241.3 and 240 mm, computed", lookAlike,
			pair(rf150+"NPS 6", pn16+"DN 150", gasket), flanged(rf150+"NPS 6", "", "5", "")},
		{"05 Class 300 NPS 1/2 to DN 15 PN 40", "bolt circles compared, computed", lookAlike,
			pair(rf300+"NPS 1/2", pn40+"DN 15", gasket), flanged(rf300+"NPS 1/2", "", "5", "")},
		{"05 Class 300 NPS 12 to DN 300 PN 40", "bolt circles 450.9 and 450 mm, computed", lookAlike,
			pair(rf300+"NPS 12", pn40+"DN 300", gasket), flanged(rf300+"NPS 12", "", "5", "")},
		{"05 Class 300 NPS 2 to DN 50, turned", "four of eight bolts after 22.5 degrees, computed", lookAlike,
			pair(rf300+"NPS 2", pn40+"DN 50", gasket), flanged(rf300+"NPS 2", "", "5", "")},
		{"06 a PN 16 hose flange on a PN 40 tank flange, at 20 bar", "EN 1092-1, one drilling to DN 80 (published)", tooWeak,
			joint{a: pn40 + "DN 50", b: pn16 + "DN 50", bar: "20", seal: gasket}.sheet(), joint{a: pn40 + "DN 50", b: pn40 + "DN 50", bar: "20", seal: gasket}.sheet()},
		{"07 S31603 Class 150 is below 16 bar when cold", "ASME B16.5 Table 2-2.3, 15.9 at 38 C (restated)", tooWeak,
			flanged(rf150+"NPS 2", "S31603", "16", "38"), flanged(rf150+"NPS 2", "S31600", "16", "38")},
		{"07 S31603 Class 150 at 100 C holds 13.3", "ASME B16.5 Table 2-2.3 (restated)", tooWeak,
			flanged(rf150+"NPS 2", "S31603", "13.4", "100"), flanged(rf150+"NPS 2", "S31603", "13.2", "100")},
		{"07 S31600 at 19.0 is below carbon steel at 19.6", "ASME B16.5 Tables 2-1.1 and 2-2.2 (published)", tooWeak,
			flanged(rf150+"NPS 2", "S31600", "19.3", "38"), flanged(rf150+"NPS 2", "CS", "19.3", "38")},
		{"08 NPT 1/2 in R 1/2", "ASME B1.20.1 and ISO 7-1, 60 against 55 degrees (restated)", lookAlike,
			pair(thread("thread-npt", "1/2 in", "male"), thread("thread-r", "1/2 in", "female"), tape),
			pair(thread("thread-r", "1/2 in", "male"), thread("thread-r", "1/2 in", "female"), tape)},
		{"08 R male in a G female", "ISO 228-1 scope (recalled)", lookAlike,
			pair(thread("thread-r", "1/2 in", "male"), thread("thread-g", "1/2 in", "female"), tape),
			pair(thread("thread-r", "1/2 in", "male"), thread("thread-r", "1/2 in", "female"), tape)},
		{"09 24 degree cone, light on heavy", "ISO 8434-1, shared metric threads (recalled)", lookAlike,
			pair("standard: cone-24-light, gender: male, size: 10 mm", "standard: cone-24-heavy, gender: female, size: 8 mm", noSeal), pair(cone12l, cone12lf, noSeal)},
		{"09 the same size of both series", "ISO 8434-1 (recalled)", lookAlike,
			pair(cone12l, cone12s, noSeal), pair(cone12l, cone12lf, noSeal)},
		{"11 ISO 9974 stud in an ISO 6149 port", "ISO 6149 and ISO 9974, same metric thread (recalled)", lookAlike,
			pair(port6149, port9974, ring), pair(port6149, port6149f, ring)},
		{"12 an edition's old rating: tank-truck coupling at 25 bar", "EN 14420-6, 25 bar in 2004, 16 since 2013 (published)", tooWeak,
			joint{a: truckMale, b: truckFemale, bar: "25", seal: camSeal}.sheet(), joint{a: truckMale, b: truckFemale, bar: "15.9", seal: camSeal}.sheet()},
		{"13 cam and groove on steam", "EN 14420-7 scope (published)", keptOut,
			cam("DN 50", "S31600", "1", "125", "steam"), cam("DN 50", "S31600", "1", "", "water")},
		{"13 tank-truck coupling on propane", "EN 14420-6 scope (published)", keptOut,
			joint{a: truckMale, b: truckFemale, fluid: "propane", seal: camSeal}.sheet(), joint{a: truckMale, b: truckFemale, fluid: "diesel", seal: camSeal}.sheet()},
		{"13 cam and groove above 65 C", "EN 14420-7 scope (published)", tooHot,
			cam("DN 50", "S31600", "5", "66", ""), cam("DN 50", "S31600", "5", "65", "")},
		{"14 LP-gas coupling on an ammonia coupling", "ACME sizes shared (practice)", lookAlike,
			pair(ammonia, lpgFemale, camSeal), pair(ammonia, ammoniaFemale, camSeal)},
		{"14 brass in ammonia", "29 CFR 1910.111(b)(7) (published), CGA G-2 (recalled)", notForFluid,
			joint{a: ammonia, b: ammoniaFemale, material: "C36000", fluid: "ammonia", seal: camSeal}.sheet(),
			joint{a: ammonia, b: ammoniaFemale, material: "CS", fluid: "ammonia", seal: camSeal}.sheet()},
		{"16 no seal", "ISO 228-1: the joint is not made on the thread (restated)", "seal/missing",
			pair(thread("thread-g", "1/2 in", "male"), thread("thread-g", "1/2 in", "female"), noSeal),
			pair(thread("thread-g", "1/2 in", "male"), thread("thread-g", "1/2 in", "female"), washer)},
		{"16 two washers", "practice, no source", "seal/two_in_one_joint",
			pair(thread("thread-g", "1/2 in", "male"), thread("thread-g", "1/2 in", "female")+", "+washer, washer),
			pair(thread("thread-g", "1/2 in", "male"), thread("thread-g", "1/2 in", "female"), washer)},
		{"16 the seal is a wetted material", "ISO/TR 7620, natural rubber in toluene (recalled)", notForFluid,
			joint{a: rf150 + "NPS 2", b: rf150 + "NPS 2", fluid: "toluene", seal: "seal: {kind: rubber-sheet, material: EPDM, rated: 16 bar(g), evidence: data sheet}"}.sheet(),
			joint{a: rf150 + "NPS 2", b: rf150 + "NPS 2", fluid: "toluene", seal: gasket}.sheet()},
		{"19 hygienic clamps of two systems", "ISO 2852 and ASME BPE, equal ferrules, other bore (recalled)", lookAlike,
			pair(iso2852, bpe, clampSeal), pair(iso2852, iso2852, clampSeal)},
		{"14 LP-gas coupling carries propane only with its own kind", "ACME sizes shared (practice)", lookAlike,
			joint{a: lpg, b: ammoniaFemale, fluid: "propane", seal: camSeal}.sheet(), joint{a: lpg, b: lpgFemale, fluid: "propane", seal: camSeal}.sheet()},
	})
}

// TestWasherOfAnOutlet: CGA 660 takes a washer (CGA V-1, recalled); without one the joint leaks chlorine.
func TestWasherOfAnOutlet(t *testing.T) {
	v := judgeText(t, bottle(cga("660", "male"), cga("660", "female"), "chlorine", noSeal))
	assert.Contains(t, found(v), "seal/missing")
}

// An unknown pair of standards is not a pair that fits (practice, no source).
func TestUnknownPairIsNeverAccepted(t *testing.T) {
	flare, flareFemale := ends("flare-37", "'-16'")
	_, dairy := ends("union-din-11851", "DN 25")
	v := judgeText(t, pair(flare, dairy, ring))
	require.Contains(t, []report.Word{report.Unproven, report.Unfit}, v.Word)
	require.NotEmpty(t, v.Unjudged)
	assert.Empty(t, judgeText(t, pair(flare, flareFemale, noSeal)).Unjudged)
}
