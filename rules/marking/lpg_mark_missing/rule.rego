# METADATA
# title: A hose for liquefied petroleum gas is not marked for it
# description: |
#   The US rule wants the letters LPG or LP-Gas on every hose that is under container pressure, at least
#   every 3 m.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_lpg, "regime=29 CFR 1910.110"]
#   needs: [hoses.marked_lpg]
#   message: "{part} carries liquefied petroleum gas but is not marked LPG or LP-Gas"
#   action: "Fit a hose that its maker marked for liquefied petroleum gas."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(ii)"
#       standing: published
package rules.marking.lpg_mark_missing

report contains {"subject": h.id, "part": h.id} if {
	"29 CFR 1910.110" in input.line.regimes
	some h in input.hoses
	h.carries_lpg
	h.marked_lpg == false
}
