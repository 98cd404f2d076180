# METADATA
# title: A marine vapour hose bursts below what the law asks
# description: |
#   The US rule for vapour lines between vessel and shore fixes a least burst pressure. The same hose
#   must stand 2 psi of vacuum without collapse, which the sheet does not carry.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_gas, "regime=33 CFR 154.2101"]
#   needs: [hoses.burst_kpa]
#   message: "{part} bursts at {have_kpa}; the marine vapour rule asks for {need_kpa}"
#   action: "Fit a vapour hose with at least this burst pressure, and ask its maker about vacuum."
#   basis:
#     - document: 33 CFR 154.2101
#       edition: "CFR 2015 annual edition"
#       clause: "(d)"
#       standing: published
package rules.pressure.vapour_hose_burst_below_marine_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.burst_kpa, "need_kpa": _least} if {
	"33 CFR 154.2101" in input.line.regimes
	some h in input.hoses
	h.carries_gas
	h.burst_kpa < _least
}

# 25 psig = 172.4 kPa, rounded down like the figure it is compared with.
_least := 172
