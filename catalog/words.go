package catalog

import "slices"

// formWords are the service words that follow from the form and the hazards of a fluid; no file states them.
var formWords = []string{"liquid", "chemicals", "gas", "vapour", "cryogenic", "liquefied-gas", "flammable"}

// serviceWords are the words by which a hose standard or a law includes or excludes a service. One fluid is
// written fluid:<id>.
var serviceWords = slices.Concat(formWords, []string{"acetylene", "air", "ammonia", "aviation-fuel", "drinking-water", "food", "fuel",
	"fuel-gas", "hot-water", "hydraulic", "inert-gas", "lpg", "oil", "oxygen", "steam", "water"})

// constituents are what a legal bar can name in a material.
var constituents = []string{"aluminium", "copper", "zinc", "magnesium", "silver", "mercury", "lead", "nickel", "titanium", "iron",
	"chromium", "carbon-steel", "cast-iron", "acetylide-former"}

// reactionGroups are the groups of hazards.reaction_groups and of tables/reactions.yaml.
var reactionGroups = []string{"acid", "strong-acid", "base", "hypochlorite", "oxidiser", "amine", "isocyanate", "epoxide", "cyanide",
	"sulfide", "water", "organic", "reducing", "acetylide-former", "ammonia", "halogen", "flammable-gas", "alcohol", "chlorinated",
	"peroxide", "water-reactive"}

// words are the closed lists, by the type and key that hold them. They are what rules and resolving match
// on, so a word outside them would silently never match.
var words = map[string][]string{
	"fluidFile.form":                {"liquid", "liquefied-gas", "compressed-gas", "cryogenic-liquid", "dissolved-gas", "vapour"},
	"fluidFile.services":            serviceWords,
	"Exclusion.service":             serviceWords,
	"Hose.only_for":                 serviceWords,
	"Electrical.conductivity_class": {"low", "medium", "high"},
	"Hazards.reaction_groups":       reactionGroups,
	"Reaction.a":                    reactionGroups,
	"Reaction.b":                    reactionGroups,
	"Equation.equation": {"wagner-25", "wagner-36", "dippr-101", "antoine", "dippr-116", "dippr-105", "costald", "point", "kell",
		"dippr-101-viscosity", "perry-9", "viswanath-3", "exp-quadratic"},
	"Row.rating":                {"suitable", "limited", "unsuitable"},
	"Bar.contains":              constituents,
	"Material.family":           {"elastomer", "plastic", "metal", "gasket", "reinforcement"},
	"Material.contains":         constituents,
	"Material.storage_group":    {"A", "B", "C"},
	"Hose.electrical_grades":    {"M", "Ohm", "M/T", "Ohm/T", "discontinuous", "none"},
	"Layer.role":                {"liner", "reinforcement", "cover"},
	"Connection.kind":           {"flange", "thread", "tube-end", "port", "coupling", "cylinder-outlet", "hygienic", "hose-tail"},
	"Connection.sized_by":       {"nps", "dn", "inch", "dash", "tube-od", "metric", "number"},
	"Connection.hand":           {"right", "left"},
	"Connection.classed_by":     {"class", "pn", "series"},
	"Mate.verdict":              {"fits", "stop", "no-fit"},
	"Thread.hand":               {"right", "left"},
	"OutletNumber.hand":         {"right", "left"},
	"OutletNumber.valve_thread": {"external", "internal"},
	"Seal.kind":                 {"gasket", "o-ring", "washer", "ring-joint", "sealant", "bonded-seal"},
	"Source.via":                {"law", "abstract", "excerpt", "report", "restated", "dataset", "memory"},
}
