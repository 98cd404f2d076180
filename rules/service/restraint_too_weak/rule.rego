# METADATA
# title: A whip restraint is rated below the force of the hose
# description: |
#   A gas hose that parts throws its end with the thrust of the jet, and all at once. A restraint that
#   tears adds another thing that flies.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: releases
#   scope: []
#   needs: []
#   absent: [releases.restraint_n, releases.whip_n]
#   message: >-
#     The weakest whip restraint of run {run} holds {have_n}; a gas hose that parts pulls with {need_n}
#   action: "Fit restraints rated for the force, anchored to something that holds it too."
#   basis:
#     - document: API RP 520 Part II
#       edition: ""
#       clause: "reaction forces"
#       standing: recalled
#     - document: 30 CFR 56.13021
#       edition: "CFR 2015 annual edition"
#       clause: ""
#       standing: published
package rules.service.restraint_too_weak

report contains {"subject": r.id, "run": r.id, "have_n": r.restraint_n, "need_n": r.whip_n} if {
	some r in input.releases
	r.restraint_n < r.whip_n
}
