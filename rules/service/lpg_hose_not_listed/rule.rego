# METADATA
# title: An LP-gas hose is not listed by a laboratory
# description: |
#   The US LP-gas rule wants hose under the pressure of the container to be listed by a nationally
#   recognised testing laboratory.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_lpg, "!low_side", "regime=29 CFR 1910.110"]
#   needs: [hoses.listed]
#   message: "{part} is not listed by a laboratory"
#   action: "Fit a listed LP-gas hose, and enter the laboratory from its mark or paper."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(iv)"
#       standing: published
package rules.service.lpg_hose_not_listed

report contains {"subject": h.id, "part": h.id} if {
	"29 CFR 1910.110" in input.line.regimes
	some h in input.hoses
	h.carries_lpg
	not h.low_side
	h.listed == false
}
