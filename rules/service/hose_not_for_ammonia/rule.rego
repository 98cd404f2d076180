# METADATA
# title: A hose that is not marked for ammonia carries ammonia
# description: |
#   Ammonia goes through the liner and destroys reinforcements that other gases leave alone. Only a hose
#   made and marked for anhydrous ammonia is built for it. Where the US rule does not apply this is good
#   practice.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia]
#   needs: [hoses.marked_ammonia]
#   message: "{part} carries ammonia but is not marked for anhydrous ammonia"
#   action: "Take the hose off. Fit one marked for anhydrous ammonia, with its working pressure, maker and year."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(i), (b)(8)(v)"
#       standing: published
#     - document: NTSB HAZ-12-01-SUM
#       edition: ""
#       clause: "letters H-12-2 to H-12-6"
#       standing: published
package rules.service.hose_not_for_ammonia

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.carries_ammonia
	h.marked_ammonia == false
}
