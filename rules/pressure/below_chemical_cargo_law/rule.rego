# METADATA
# title: A chemical cargo hose is rated below what ship law asks
# description: |
#   The US rule for chemical cargo ships fixes a least working pressure for the cargo hose, however low
#   the pressure is on the day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 153.940"]
#   needs: [hoses.rated_kpa]
#   message: "{part} has a working pressure of {have_kpa}; the ship rule asks for {need_kpa}"
#   action: "Fit a cargo hose with at least this working pressure."
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "working pressure"
#       standing: published
package rules.pressure.below_chemical_cargo_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least} if {
	"46 CFR 153.940" in input.line.regimes
	some h in input.hoses
	h.rated_kpa < _least
}

# The law gives 1030 kPa (149.4 psig) itself.
_least := 1030
