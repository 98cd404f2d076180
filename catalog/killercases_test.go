package catalog_test

import "testing"

// Pairs that have killed, or that the named document says will. Accidents: NTSB HAZ-12-01 (2009), CSB 2002-04-I-MO
// (2002), CSB 2010-6-I-WV (2010), published. Laws: 46 CFR 56, 151, 153 and 154, 49 CFR 173.315, published. Swell:
// Sandia and KSAE 2003 abstracts, published. The rest is recalled: Chlorine Institute Pamphlet 1, ASTM G63 and G94,
// HSE RR902, API RP 571 and handbooks.
func TestKnownKillers(t *testing.T) {
	amines := ids("methylamine", "dimethylamine", "trimethylamine", "ethylamine", "diethylamine", "triethylamine", "butylamine",
		"cyclohexylamine", "ethanolamine", "ethylenediamine", "morpholine", "aniline")
	barredAmines := ids("diethylamine", "triethylamine", "butylamine", "cyclohexylamine", "ethanolamine", "ethylenediamine", "morpholine")
	peroxides := ids("hydrogen-peroxide-35-50", "hydrogen-peroxide-70")
	for name, check := range map[string]func(*testing.T){
		"01 ammonia in a hose made for LPG": all(unsuitable(ids("ammonia"), ids("PET-FIBRE")), permeable("NBR", "EPDM"),
			excluded("ammonia", "en-1762-d", "en-1762-sd", "en-1762-d-lt", "en-1762-sd-lt", "us-lpg-350")),
		"02 chlorine behind a lined hose with stainless braid": all(unsuitable(ids("chlorine", "chlorine-wet"), ids("BRAID-AUS")), permeable("PTFE")),
		"03 phosgene through PTFE to a stainless braid":        all(unsuitable(ids("phosgene"), ids("BRAID-AUS")), permeable("PTFE", "FEP", "PFA")),
		"04a ammonia on copper alloys": all(unsuitable(ids("ammonia", "ammonia-water"), copperAlloys),
			barred(ids("ammonia", "ammonia-water"), copperAlloys)),
		"04b amines on copper alloys": all(unsuitable(amines, copperAlloys), barred(barredAmines, copperAlloys)),
		"05 acetylene on copper above 65 %": all(unsuitable(ids("acetylene"), ids("C11000", "C83600")),
			barred(ids("acetylene"), ids("C11000", "C83600")), neverSuitable(ids("acetylene"), ids("C36000", "C37700"))),
		"06 dry chlorine on titanium":           unsuitable(ids("chlorine"), ids("R50400")),
		"07 wet chlorine on steel or nickel":    unsuitable(ids("chlorine-wet"), ids("CS", "DI", "S30403", "S31603", "S32205", "N02200", "N04400")),
		"08 peroxide on copper, zinc, iron":     all(unsuitable(append(peroxides, "hydrogen-peroxide-100"), join(copperAlloys, zinc, ids("CS", "N04400"))), barred(peroxides, join(copperAlloys, ids("CS", "N04400")))),
		"09 methyl chloride on aluminium, zinc": all(unsuitable(ids("chloromethane"), join(aluminium, zinc)), barred(ids("chloromethane"), aluminium)),
		"10 caustic on aluminium or zinc": all(unsuitable(ids("sodium-hydroxide", "potassium-hydroxide"), join(aluminium, zinc)),
			barred(ids("sodium-hydroxide", "potassium-hydroxide"), join(aluminium, zinc))),
		"11 oxygen on rubber, polyamide, titanium": all(unsuitable(ids("oxygen", "liquid-oxygen"), ids("NBR", "EPDM", "NR", "SBR", "CR", "PA6", "PA66", "POM", "R50400")),
			neverSuitable(ids("oxygen", "liquid-oxygen"), aluminium)),
		"12 fluoro rubber in ketones, esters, amines, ammonia, steam": all(
			unsuitable(ids("acetone", "butanone", "ethyl-acetate", "butyl-acetate", "triethylamine", "ammonia"), fkm),
			neverSuitable(ids("steam"), fkm)),
		"13 fluoro rubber in dimethyl ether":         unsuitable(ids("dimethyl-ether"), fkm),
		"14 EPDM or silicone in hydrocarbons":        all(unsuitable(ids("hexane", "toluene", "jet-fuel", "gasoline-e0", "propane"), ids("EPDM", "VMQ")), unsuitable(ids("diesel", "mineral-oil"), ids("EPDM")), neverSuitable(ids("diesel", "mineral-oil"), ids("VMQ"))),
		"15 hydrogen fluoride on glass and titanium": unsuitable(ids("hydrogen-fluoride", "hydrofluoric-acid"), ids("PTFE-GF", "R50400", "R60702", "R05200")),
		"16 fuming nitric acid on titanium":          unsuitable(ids("nitric-acid-fuming"), ids("R50400")),
		"17 stainless steel in chlorides":            all(unsuitable(ids("hydrochloric-acid", "ferric-chloride", "calcium-chloride-brine"), ids("S30403", "S31603")), neverSuitable(ids("seawater"), ids("S30403", "S31603")), coolOnly("seawater", "S31603", 50)),
		"18 polyamide in chlorides and acids":        unsuitable(ids("calcium-chloride-brine", "hydrochloric-acid", "sulfuric-acid-30-50", "formic-acid"), ids("PA6", "PA66")),
		"19a PVC in ketones, esters, ethers":         unsuitable(ids("acetone", "butanone", "ethyl-acetate", "tetrahydrofuran"), pvc),
		"19b rigid PVC under compressed gas":         all(unsuitable(ids("nitrogen", "methane", "carbon-dioxide-wet"), ids("PVC-U")), neverSuitable(ids("chlorine-wet", "propane", "ammonia", "chlorine"), ids("PVC-U"))),
		"20 dry methanol on titanium":                neverSuitable(ids("methanol"), ids("R50400")),
		"21 hypochlorite on nickel, copper, iron":    all(unsuitable(ids("sodium-hypochlorite"), join(copperAlloys, ids("N02200", "N04400", "CS"))), barred(ids("sodium-hypochlorite"), copperAlloys)),
		"22 carbon steel in cryogenic liquids":       all(unsuitable(ids("liquid-nitrogen", "lng", "liquid-oxygen"), ids("CS", "DI")), neverSuitable(ids("carbon-dioxide"), ids("CS"))),
		"23 ethylene oxide on rubber and cast iron": all(unsuitable(ids("ethylene-oxide"), join(fkm, ids("NBR", "HNBR", "EPDM", "CR", "IIR", "NR", "SBR", "CSM", "VMQ", "DI"))),
			neverSuitable(ids("ethylene-oxide"), ids("FFKM")), barred(ids("ethylene-oxide"), join(copperAlloys, ids("DI")))),
		"24 iron in oleum":            unsuitable(ids("oleum"), ids("DI")),
		"25 PEEK in strong sulfuric":  unsuitable(ids("sulfuric-acid-93-98", "sulfuric-acid-100", "oleum"), ids("PEEK")),
		"26 air over flammable goods": padForbidden("air", "butanone", "ammonia", "propane", "hexane"),
	} {
		t.Run(name, check)
	}
}
