# METADATA
# title: A hose marked for ammonia carries LP-gas
# description: |
#   Hoses for ammonia and for LP-gas look alike and may have the same thread. The liner of one is not
#   made for the other.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_lpg]
#   needs: []
#   absent: [hoses.marked_ammonia, hoses.marked_lpg]
#   message: "{part} carries LP-gas but is marked for ammonia only"
#   action: "Take the hose off. Fit one marked for LP-gas."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(i)-(ii)"
#       standing: published
#     - document: NTSB HAZ-12-01-SUM
#       edition: ""
#       clause: "letters H-12-2 to H-12-6"
#       standing: published
package rules.service.ammonia_hose_carries_lpg

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.carries_lpg
	h.marked_ammonia == true
	h.marked_lpg == false
}
