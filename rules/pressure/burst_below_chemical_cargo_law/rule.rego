# METADATA
# title: A chemical cargo hose bursts below what ship law asks
# description: |
#   The US rule for chemical cargo ships fixes a least burst pressure for the cargo hose beside its
#   working pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 153.940"]
#   needs: [hoses.burst_kpa]
#   message: "{part} bursts at {have_kpa}; the ship rule asks for {need_kpa}"
#   action: "Fit a cargo hose with at least this burst pressure."
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "burst pressure"
#       standing: published
package rules.pressure.burst_below_chemical_cargo_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.burst_kpa, "need_kpa": _least} if {
	"46 CFR 153.940" in input.line.regimes
	some h in input.hoses
	h.burst_kpa < _least
}

# The law gives 5152 kPa (about 750 psig) itself.
_least := 5152
