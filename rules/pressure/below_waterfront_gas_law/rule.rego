# METADATA
# title: A waterfront gas hose is rated below what the law asks
# description: |
#   The US rule for liquefied hazardous gas at the waterfront fixes a least working pressure for the
#   hose, however low the pressure is on the day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_liquefied_gas, "regime=33 CFR 127.1102"]
#   needs: [hoses.rated_kpa]
#   message: >-
#     {part} has a working pressure of {have_kpa}; the law asks for {need_kpa} on liquefied gas at the
#     waterfront
#   action: "Fit a hose with at least this working pressure."
#   basis:
#     - document: 33 CFR 127.1102
#       edition: "CFR 2015 annual edition"
#       clause: "(a)"
#       standing: published
package rules.pressure.below_waterfront_gas_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.rated_kpa,
	"need_kpa": _least,
} if {
	"33 CFR 127.1102" in input.line.regimes
	some h in input.hoses
	h.carries_liquefied_gas
	h.rated_kpa < _least
}

# The law gives 1030 kPa (149.4 psig) itself.
_least := 1030
